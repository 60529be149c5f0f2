; Pages 0 and 1 carry the variables and the stack: without them the board can only call for help.
; No variable and no stack is used from here on. The picture is tried all the same: whoever looks
; sees what the memory makes of it. A holds the bits that were wrong.

.define ALARM_NOTE 430          ; 1,375,000 / 16 / 430 = 199.9 Hz

no_memory:
M_NO_MEMORY:
        tax
        txs                     ; the one register left
        video   0, COLUMNS
        video   1, 3
        video   2, 3
        video   3, 2
        video   4, ROWS
        video   5, 24
        video   6, 4
        video   7, 44
        video   8, 12
        ldx     #0
@blank: lda     #' '
        .repeat 4, n
        sta     PICTURE + $100 * n,x
        .endrepeat
        lda     #INKS_OF_TEXT
        .repeat 4, n
        sta     ATTRIBUTE + $100 * n,x
        .endrepeat
        inx
        bne     @blank
        ldx     #plea_end - plea - 1
@word:  lda     plea,x
        sta     PICTURE + COLUMNS + 2,x
        dex
        bpl     @word
        .repeat 8, n            ; a ribbon of eight bits, a gap where one was wrong
        tsx
        txa
        ldx     #GLYPH_RIBBON
        and     #$80 >> n
        beq     :+
        ldx     #GLYPH_GAP
:       stx     PICTURE + 2 * COLUMNS + 2 + n
        .endrepeat
        lda     #1
        sta     VIDEO_HOW
        lda     #<ALARM_NOTE
        sta     VOICE_A
        lda     #>ALARM_NOTE
        sta     VOICE_A + 1
M_ALARM:
@pulse: lda     #PORT_REST | LAMP_LIT
        sta     PORT
        lda     #$0C
        sta     LOUD_AB
        ldx     #0
        ldy     #0
@on:    dey
        bne     @on
        dex
        bne     @on             ; 0.24 s
        lda     #PORT_REST
        sta     PORT
        stx     LOUD_AB
        lda     #2
@off:   dey
        bne     @off
        dex
        bne     @off
        sec
        sbc     #1
        bne     @off            ; 0.48 s
        beq     @pulse          ; always

plea:   .byte   "Memory does not hold these lines:"
plea_end:
