; Stations 1 to 3, with registers only. S holds the first station that differed, 0 for none, and 20h
; more once page 0 or 1 differed.

; A and X as two hexadecimal digits, from X.
        .macro  show_x at
        lda     tens_of_hex,x
        sta     at
        lda     ones_of_hex,x
        sta     at + 1
        .endmacro

; X (0 to 255) as three decimal digits.
        .macro  show_decimal_x at
        lda     hundreds,x
        sta     at
        lda     tens,x
        sta     at + 1
        lda     ones,x
        sta     at + 2
        .endmacro

; The lines set in Y as gaps in a ribbon.
        .macro  show_ribbon_y at
        .repeat 8, n
        tya
        and     #$80 >> n
        tax
        lda     ribbon,x
        sta     at + n
        .endrepeat
        .endmacro

; If Y is not 0 this station is the first, unless there is one before it. Keeps Y.
        .macro  note_y station
        tsx
        lda     if_any,y        ; 0 or 10h
        ora     itself,x
        tax
        lda     first_of + 64 * ((station) - 1),x
        tax
        txs
        .endmacro

; 40 ms of the lower tone if Y is not 0, else of the higher: 168 or 336 Hz.
        .macro  tone_y
        lda     #0
        sta     VOICE_A
        lda     half_period,y
        sta     VOICE_A + 1
        lda     #$0A
        sta     LOUD_AB
        ldx     #0
        ldy     #43             ; turns of 1281 cycles
:       dex
        bne     :-
        dey
        bne     :-
        sty     LOUD_AB
        .endmacro

; ---------------------------------------------------------------- station 1: ROM 1
; Adds up all of it in eight bits, what is carried out coming back in at the next.
M_BENCH_ROUND:
        ldx     #0
        txs
M_STATION_1:
        lda     #ROM1CHECK
        tax
        show_x  LINE(1) + AT_WROTE
        lda     #0
        tax
        clc
@next:  .repeat 32, n
        adc     $C000 + $100 * n,x
        .endrepeat
        inx
        bne     @next
        adc     #0
        tax
        tay
        show_x  LINE(1) + AT_READ
        tya
        eor     #ROM1CHECK
        tay
        ldx     #$C0
        show_x  LINE(1) + AT_PAGE
        show_ribbon_y LINE(1) + AT_RIBBON
        lda     if_any,y
        lsr     a
        lsr     a
        lsr     a
        lsr     a
        tax
        show_decimal_x LINE(1) + AT_COUNT
        note_y  1
        tone_y

; ---------------------------------------------------------------- stations 2 and 3: pages 0 and 1
; Each byte holds its number mixed, then the same turned over.
        .macro  fill_page page, mix
        ldx     #0
:       txa
        eor     #mix
        sta     $100 * (page),x
        inx
        bne     :-
        .endmacro

; Y collects the lines that differ.
        .macro  differ_page page, mix
        ldx     #0
:       txa
        eor     #mix
        eor     $100 * (page),x
        ora     itself,y
        tay
        inx
        bne     :-
        .endmacro

        .macro  page_alone number, page, mix
        .local  next, other, both
        fill_page page, mix
        ldy     #0
        differ_page page, mix
        fill_page page, mix ^ $FF
        differ_page page, mix ^ $FF
        show_ribbon_y LINE(number) + AT_RIBBON
        note_y  number
        tone_y
        ldx     #1              ; how many of 255: byte 0 is not counted
        ldy     #0
:       txa
        eor     #mix ^ $FF
        eor     $100 * (page),x
        cmp     #1
        tya
        adc     #0
        tay
        inx
        bne     :-
        tya
        tax
        show_decimal_x LINE(number) + AT_COUNT
        ldx     #$FF            ; the lowest that differs
        ldy     #0
next:   txa
        eor     #mix ^ $FF
        eor     $100 * (page),x
        beq     other
        txa                     ; 2 + 2 + 2 + 3 cycles
        tay
        jmp     both
other:  nop                     ; 3 + 2 + 2 + 2
        nop
        nop
both:   dex
        cpx     #$FF
        bne     next
        .assert >(* - 1) = >next, error, "a branch of unequal length"
        tya
        eor     #mix ^ $FF
        tax
        show_x  LINE(number) + AT_WROTE
        ldx     $100 * (page),y
        show_x  LINE(number) + AT_READ
        ldx     #page
        show_x  LINE(number) + AT_PAGE
        .endmacro

M_STATION_2:
        page_alone 2, 0, $C6
M_STATION_3:
        page_alone 3, 1, $F3

        tsx
        txa
        and     #$20
        bne     @without
        jmp     with_memory
@without:
        jmp     without_memory
