; Memory sizing. Pages 0 and 1 byte by byte, with registers only; every other page by two cells.

; What the two tries of a page write: the offset in the page mixed with a number of the page's own,
; then the same with every bit turned over.
.define FIRST(page)  (($C6 + (page) * $2D) & $FF)
.define SECOND(page) (FIRST(page) ^ $FF)

        .macro  fill page, mix
        .local  next
        ldx     #0
next:   txa
        eor     #mix
        sta     $100 * (page),x
        inx
        bne     next
        .endmacro

; Leaves with the bits that were wrong in A.
        .macro  compare page, mix
        .local  next
        ldx     #0
next:   txa
        eor     #mix
        eor     $100 * (page),x
        bne     memory_bad
        inx
        bne     next
        .endmacro

M_SIZING:
        fill    1, FIRST(1)
        fill    0, FIRST(0)
        compare 0, FIRST(0)
        compare 1, FIRST(1)
        fill    1, SECOND(1)
        fill    0, SECOND(0)
        compare 0, SECOND(0)
        compare 1, SECOND(1)
        jmp     M_STACK_GOOD
memory_bad:
        jmp     no_memory

; From here on there are variables and a stack. The two cells of a page lie where neither is: a page
; that answers in place of page 0 or 1 does no harm and is found out.
; All pages are written, the last first; so of pages that share their cells the first passes.
.define CELL_1 $9C
.define CELL_2 $A3

M_STACK_GOOD:
        lda     #0
        ldx     #$7F
@zero:  sta     $00,x
        dex
        bpl     @zero
        lda     #PORT_REST
        sta     rest
        lda     #3
        sta     bank
@banks: jsr     choose_bank
        lda     #>WINDOW + $1F
        ldx     #$20
        jsr     write_pages
        dec     bank
        bpl     @banks
        lda     #0
        sta     bank
        lda     #>WINDOW - 1
        ldx     #>WINDOW
        jsr     write_pages

M_SECOND_LOOK:
        lda     #>WINDOW - 1
        ldx     #>WINDOW
        jsr     read_pages
@banks: jsr     choose_bank
        lda     #>WINDOW + $1F
        ldx     #$20
        jsr     read_pages
        inc     bank
        lda     bank
        cmp     #4
        bne     @banks
        lda     #0
        sta     bank
        jsr     choose_bank
        jmp     M_CLEAR

; Writes the two cells of X pages, of which A is the last.
write_pages:
        stx     left
        sta     where + 1
        lda     #0
        sta     where
@page:  jsr     mix_page
        ldy     #CELL_1
        sta     (where),y
        eor     #$FF
        ldy     #CELL_2
        sta     (where),y
        dec     where + 1
        dec     left
        bne     @page
        rts

; Compares them and counts the pages that passed.
read_pages:
        stx     left
        sta     where + 1
        lda     #0
        sta     where
@page:  jsr     mix_page
        ldy     #CELL_1
        cmp     (where),y
        bne     @next
        eor     #$FF
        ldy     #CELL_2
        cmp     (where),y
        bne     @next
        inc     good
        bne     @next
        inc     good + 1
@next:  dec     where + 1
        dec     left
        bne     @page
        rts

; The number of the page in all 64 K, mixed: no two pages have the same.
mix_page:
        lda     bank
        asl     a
        asl     a
        asl     a
        asl     a
        asl     a
        clc
        adc     where + 1
        eor     #$5A
        rts

; Shows the bank in the window.
choose_bank:
        lda     bank
        lsr     a
        lda     #LATCH(BANK_LOW, 0)
        bcc     @low
        lda     #LATCH(BANK_LOW, 1)
@low:   jsr     set_latch
        lda     bank
        lsr     a
        lsr     a
        lda     #LATCH(BANK_HIGH, 0)
        bcc     set_latch
        lda     #LATCH(BANK_HIGH, 1)

; Sets one bit of the addressable latch: A is LATCH(bit, value). The scan of the keys uses the same
; lines, so it waits.
set_latch:
        php
        sei
        sta     latching
        lda     rest
        and     #$F0
        ora     latching
        sta     PORT
        eor     #LATCH_SHUT
        sta     PORT
        eor     #LATCH_SHUT
        sta     PORT
        lda     rest
        sta     PORT
        plp
        rts
