; ROM 1: the commands. ROM 0 finds the mark, then calls what follows it with a line in `typed`.

        .segment "COMMANDS"
COMMANDS:
        .byte   "MLW1"

M_COMMAND:
        lda     #0
        sta     place
        jsr     skip
        beq     @nothing
        ldx     #0
@word:  ldy     place
@char:  lda     known,x
        beq     @end
        sta     spare
        lda     typed,y
        jsr     small
        cmp     spare
        bne     @past
        iny
        inx
        bne     @char           ; always
@end:   lda     typed,y
        beq     @found
        cmp     #' '
        beq     @found
@past:  lda     known,x
        beq     @next
        inx
        bne     @past           ; always
@next:  inx
        inx
        inx
        lda     known,x
        bpl     @word
        say     unknown
@nothing:
        rts
@found: sty     place
        lda     known + 1,x
        sta     where
        lda     known + 2,x
        sta     where + 1
        jmp     (where)

        .macro  command word, routine
        .byte   word, 0
        .word   routine
        .endmacro
known:  command "at", M_AT
        command "put", M_PUT
        command "page", M_PAGE
        command "tune", M_TUNE
        command "files", M_FILES
        command "fetch", M_FETCH
        command "keep", M_KEEP
        command "hum", M_HUM
        command "hear", M_HEAR
        command "sums", M_SUMS
        command "sticks", M_STICKS
        .byte   $FF

unknown:
        .byte   "That word is not known here.", 0
no_number:
        .byte   "A number in hex is wanted.", 0

; ---------------------------------------------------------------- reading the line
; To the next character that is no blank: it is in A, its index in Y; 00 (and Z) at the end.
skip:
        ldy     place
        dey
@next:  iny
        lda     typed,y
        cmp     #' '
        beq     @next
        sty     place
        lda     typed,y
        rts

; Makes a capital in A a small letter.
small:
        cmp     #'A'
        bcc     @same
        cmp     #'Z' + 1
        bcs     @same
        ora     #$20
@same:  rts

; Reads a hexadecimal number; carry set if there was one.
read_number:
        lda     #0
        sta     number
        sta     number + 1
        jsr     skip
        beq     @none
        ldx     #0
@digit: lda     typed,y
        beq     @end
        cmp     #' '
        beq     @end
        jsr     small
        sec
        sbc     #'0'
        cmp     #10
        bcc     @good
        sbc     #'a' - '0' - 10
        cmp     #10
        bcc     @none
        cmp     #16
        bcs     @none
@good:  sta     spare
        ldx     #4
@shift: asl     number
        rol     number + 1
        dex
        bne     @shift
        lda     number
        ora     spare
        sta     number
        iny
        bne     @digit          ; always
@end:   sty     place
        sec
        rts
@none:  clc
        rts

want_number:
        say     no_number
        rts

; ---------------------------------------------------------------- memory
; at ADDRESS: eight bytes.
M_AT:
        jsr     read_number
        bcc     want_number
        lda     number + 1
        jsr     put_byte
        lda     number
        jsr     put_byte
        lda     #8
        sta     left
        ldx     #0
@next:  lda     #' '
        jsr     put_glyph
        lda     (number,x)
        jsr     put_byte
        inc     number
        bne     @same
        inc     number + 1
@same:  dec     left
        bne     @next
        rts

; put ADDRESS BYTE ...
M_PUT:
        jsr     read_number
        bcc     want_number
        lda     number
        sta     target
        lda     number + 1
        sta     target + 1
        jsr     read_number
        bcc     want_number
@next:  lda     number
        ldx     #0
        sta     (target,x)
        inc     target
        bne     @same
        inc     target + 1
@same:  jsr     read_number
        bcs     @next
        rts

; ---------------------------------------------------------------- picture
; page N: shows picture page N, 0 to 3, and writes on it from now on.
M_PAGE:
        jsr     read_number
        bcc     want_number
        lda     number + 1
        bne     want_number
        lda     number
        cmp     #4
        bcs     want_number
        asl     a
        asl     a
        adc     #>PICTURE
        sta     paper
        lda     number
        lsr     a
        lda     #LATCH(PAGE_LOW, 0)
        bcc     @low
        lda     #LATCH(PAGE_LOW, 1)
@low:   jsr     set_latch
        lda     number
        lsr     a
        lsr     a
        lda     #LATCH(PAGE_HIGH, 0)
        bcc     @high
        lda     #LATCH(PAGE_HIGH, 1)
@high:  jsr     set_latch
        jmp     fresh_page

; ---------------------------------------------------------------- sound
; tune NOTES: c to b, + before a note of the octave above, - is a rest. STOP ends it.
.define NOTE_TICKS 18
M_TUNE:
        jsr     skip
        beq     @end
        inc     place
        cmp     #'+'
        bne     @note
        jsr     skip
        beq     @end
        inc     place
        jsr     period
        lsr     spare + 1
        ror     spare
        jmp     @play
@note:  jsr     period
@play:  lda     spare
        sta     VOICE_A
        lda     spare + 1
        sta     VOICE_A + 1
        lda     #0
        sta     FOLLOW
        lda     #$0C
        sta     LOUD_AB
        lda     #NOTE_TICKS
        sta     left
        sta     playing         ; should this loop be left, the sound ends by itself
        inc     playing
        inc     playing
@wait:  jsr     await_tick
        dec     left
        bne     @wait
        lda     stopped
        beq     M_TUNE
@end:   jmp     silence

; The half period of note A in 8 cycles, 0 for a rest: 1,375,000 / 16 / Hz.
period:
        jsr     small
        sec
        sbc     #'a'
        cmp     #7
        bcc     @note
        lda     #7
@note:  tax
        lda     note_low,x
        sta     spare
        lda     note_high,x
        sta     spare + 1
        rts
; a 440.0, b 493.9, c 261.6, d 293.7, e 329.6, f 349.2, g 392.0 Hz
note_low:
        .lobytes  195, 174, 328, 293, 261, 246, 219, 0
note_high:
        .hibytes  195, 174, 328, 293, 261, 246, 219, 0

; ---------------------------------------------------------------- sums
; sums: adds up each ROM, less the two bytes that hold the sum expected.
M_SUMS:
        lda     sum_0
        sta     target
        lda     sum_0 + 1
        sta     target + 1
        lda     #'0'
        ldx     #$E0
        jsr     put_sum
        lda     sum_1
        sta     target
        lda     sum_1 + 1
        sta     target + 1
        lda     #'1'
        ldx     #$C0

; Adds up the ROM called A from page X on; target is the sum expected.
put_sum:
        stx     where + 1
        pha
        say     rom
        pla
        jsr     put_glyph
        say     adds_up
        lda     #0
        sta     where
        sta     number
        sta     number + 1
        ldx     #$20            ; pages
        tay
@next:  clc
        lda     (where),y
        adc     number
        sta     number
        bcc     @same
        inc     number + 1
@same:  iny
        bne     @next
        inc     where + 1
        dex
        bne     @next
        lda     target
        jsr     subtract
        lda     target + 1
        jsr     subtract
        lda     number + 1
        jsr     put_byte
        lda     number
        jsr     put_byte
        lda     number
        cmp     target
        bne     @other
        lda     number + 1
        cmp     target + 1
        bne     @other
        say     as_written
        jmp     new_line
@other: say     not_as_written
        jmp     new_line

; Takes A from number.
subtract:
        eor     #$FF
        sec
        adc     number
        sta     number
        bcs     @same
        dec     number + 1
@same:  rts

rom:    .byte   "ROM ", 0
adds_up:
        .byte   " adds up to ", 0
as_written:
        .byte   ", as written.", 0
not_as_written:
        .byte   ", not so.", 0

; ---------------------------------------------------------------- joysticks
; sticks: what is pressed on each, and its level, 00 to 3F.
M_STICKS:
        lda     #'1'
        ldx     #8
        jsr     put_stick
        lda     LEVEL_1
        jsr     put_level
        lda     #'2'
        ldx     #9
        jsr     put_stick
        lda     LEVEL_2
        jmp     put_level

put_stick:
        pha
        stx     spare
        say     stick
        pla
        jsr     put_glyph
        lda     rest
        and     #$F0
        ora     spare
        php
        sei
        sta     PORT
        lda     KEY_COLUMNS
        ldx     rest
        stx     PORT
        plp
        eor     #$FF
        sta     spare
        ldx     #0
@next:  lda     #' '
        jsr     put_glyph
        lda     #'-'
        lsr     spare
        bcc     @up
        lda     ways,x
@up:    jsr     put_glyph
        inx
        cpx     #5
        bne     @next
        lda     #' '
        jmp     put_glyph

put_level:
        pha
        say     level
        pla
        jsr     put_byte
        jmp     new_line

stick:  .byte   "Stick ", 0
ways:   .byte   "UDLRF"
level:  .byte   " level ", 0
