; The commands that need the tape.
;
; A bit is one whole turn of the tape line, low then high: 672 cycles for 0, 1344 for 1. A block is
; 512 zeros, a one, the length (low, high), the bytes, and the sum of the bytes, high bits first.

.define SHORT_TONE   21         ; half a turn of 16 * 21 = 336 cycles
.define LONG_TONE    42
.define TAPE_MOTOR   $40        ; 1 stops it
.define LEADER_SEEN  24         ; zeros in a row that are taken for a leader
.define TURN_LIMIT   92         ; looks of 11 cycles: 1012 cycles, halfway
.define BLOCK_TRIES  8          ; times 256

; hum ADDRESS LENGTH: memory to the tape. Interrupts wait meanwhile.
M_HUM:
        jsr     read_number
        bcc     hum_bad
        jsr     number_to_target
        jsr     read_number
        bcc     hum_bad
        lda     number
        sta     left
        ora     number + 1
        beq     hum_bad
        lda     number + 1
        sta     left + 1
        jsr     start_tape
        lda     #50             ; half a second to come to speed
        sta     spare
@speed: jsr     await_tick
        dec     spare
        bne     @speed
        php
        sei
        ldy     #0              ; 512 zeros
        jsr     write_zeros
        jsr     write_zeros
        sec
        jsr     write_bit
        lda     #0
        sta     sum
        lda     left
        jsr     write_byte
        lda     left + 1
        jsr     write_byte
@next:  ldx     #0
        lda     (target,x)
        pha
        clc
        adc     sum
        sta     sum
        pla
        jsr     write_byte
        jsr     step
        bne     @next
        lda     sum
        jsr     write_byte
        clc                     ; one turn more, to end the last
        jsr     write_bit
        lda     #0
        sta     TAPE_TONE
        plp
M_HUMMED:
        jsr     stop_tape
        say     hummed
        jmp     put_count
hum_bad:
        jmp     want_number

write_zeros:
        clc
        jsr     write_bit
        iny
        bne     write_zeros
        rts

write_byte:
        sta     spare
        ldy     #8
@bit:   asl     spare
        jsr     write_bit
        dey
        bne     @bit
        rts

; One bit, the carry. What is spent between bits makes the low half a little longer.
write_bit:
        ldx     #134            ; 670 cycles
        bcs     @long
        lda     #SHORT_TONE
        sta     TAPE_TONE
        bcc     @wait           ; always
@long:  lda     #LONG_TONE
        sta     TAPE_TONE
@turn:  dex
        bne     @turn
        ldx     #134
@wait:  dex
        bne     @wait
        rts

; hear ADDRESS: the next block on the tape to memory. Interrupts go on, but for the keys once the
; leader was heard: looking at them takes half a turn.
M_HEAR:
        jsr     read_number
        bcc     hum_bad
        jsr     number_to_target
        jsr     start_tape
        lda     #0
        sta     stopped
        sta     left
        sta     sum
        lda     #BLOCK_TRIES
        sta     left + 1
hear_find:
        lda     stopped
        bne     hear_silent
        dec     left
        bne     @again
        dec     left + 1
        beq     hear_silent
@again: ldx     #LEADER_SEEN
@next:  jsr     read_turn
        beq     hear_find
        bcs     hear_find
        dex
        bne     @next
        inc     deaf
        ldx     #4              ; 1024 turns of a leader at most
@lead:  jsr     read_turn
        beq     hear_silent
        bcs     hear_block
        inc     left
        bne     @lead
        dex
        bne     @lead
hear_silent:
M_TAPE_SILENT:
        jsr     stop_tape
        say     silent_tape
        rts

hear_block:
        jsr     read_byte
        bcs     hear_silent
        sta     left
        sta     number
        jsr     read_byte
        bcs     hear_silent
        sta     left + 1
        sta     number + 1
        ora     left
        beq     hear_silent
@next:  jsr     read_byte
        bcs     hear_silent
        ldx     #0
        sta     (target,x)
        clc
        adc     sum
        sta     sum
        jsr     step
        bne     @next
        jsr     read_byte
        bcs     hear_silent
        cmp     sum
        bne     hear_spoilt
M_HEARD:
        jsr     stop_tape
        say     heard_it
        jmp     put_count
hear_spoilt:
        jsr     stop_tape
        say     spoilt
        rts

; A byte into A; the carry is set if the tape went silent. Keeps X.
read_byte:
        lda     #1              ; comes out at the other end after eight bits
        sta     spare
@bit:   jsr     read_turn
        beq     @lost
        rol     spare
        bcc     @bit
        clc
        lda     spare
        rts
@lost:  sec
        rts

; Waits for the end of a turn: the carry is its bit. Z if there was none within 2816 cycles. Keeps X.
read_turn:
        ldy     #0
@low:   iny
        beq     @lost
        bit     PORT
        bpl     @low
@high:  iny
        beq     @lost
        bit     PORT
        bmi     @high
        cpy     #TURN_LIMIT
        tya
@lost:  rts

start_tape:
        lda     rest
        and     #$FF ^ TAPE_MOTOR
        sta     rest
        sta     PORT
        rts

stop_tape:
        lda     rest
        ora     #TAPE_MOTOR
        sta     rest
        sta     PORT
        lda     #0
        sta     deaf
        rts

hummed:
        .byte   "Hummed ", 0
heard_it:
        .byte   "Heard ", 0
silent_tape:
        .byte   "The tape is silent.", 0
spoilt: .byte   "The tape's sum is another.", 0
