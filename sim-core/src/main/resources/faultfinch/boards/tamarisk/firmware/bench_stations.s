; Stations 4 to 10, with variables in page 0 and a stack in page 1, which have just passed.

        .macro  begin number, page
        lda     #number
        sta     station
        lda     #<(LINE(number))
        sta     line
        lda     #>(LINE(number))
        sta     line + 1
        lda     #page
        sta     at_page
        jsr     begin_station
        .endmacro

; Reads the register and looks whether it holds the value.
        .macro  expect register, value
        lda     #value
        sta     want
        lda     register
        jsr     look
        .endmacro

        .macro  try register, value
        lda     #value
        sta     register
        expect  register, value
        .endmacro

        .macro  count_only mask
        lda     #mask
        sta     lines
        .endmacro

with_memory:
        txa                     ; S, from X
        and     #$0F
        sta     first
        ldx     #$FF
        txs

; ---------------------------------------------------------------- pages 02-7F
; Two cells a page, the number of the page mixed and the same turned over. Written, left alone for
; 0.2 s, read.
.define CELL_1 $9C
.define CELL_2 $A3

M_STATION_4:
        begin   4, 2
        jsr     first_page
@write: jsr     write_page
        lda     at_page
        sta     cell + 1
        bpl     @write
        jsr     leave_alone
        lda     #2
        sta     at_page
        jsr     first_page
@read:  jsr     read_page
        lda     at_page
        sta     cell + 1
        bpl     @read
        .repeat 3, n            ; the cells on the screen
        lda     sentences + $100 * n + CELL_1
        sta     PICTURE + $100 * n + CELL_1
        lda     sentences + $100 * n + CELL_2
        sta     PICTURE + $100 * n + CELL_2
        .endrepeat
        jsr     report

; ---------------------------------------------------------------- pages 80-FF, by bank
M_STATION_5:
        begin   5, $80
        lda     #0
        sta     cell
@write: jsr     open_window
        jsr     write_page
        lda     at_page
        bne     @write
        jsr     leave_alone
        lda     #$80
        sta     at_page
@read:  jsr     open_window
        jsr     read_page
        lda     at_page
        bne     @read
        jsr     open_window     ; bank 0 again
        jsr     report

; ---------------------------------------------------------------- attributes
; Every second cell of all four pages. Writes go through a pointer with X = 0, as nothing else writes
; to a computed address without reading it first.
M_STATION_6:
        begin   6, >ATTRIBUTE
        count_only $0F
        lda     #0
        sta     cell
@write: jsr     mix_cell
        sta     (cell,x)
        jsr     next_cell
        bne     @write
        lda     #>ATTRIBUTE
        sta     at_page
@read:  jsr     mix_cell
        lda     (cell,x)
        jsr     look
        jsr     next_cell
        bne     @read
        jsr     report

; ---------------------------------------------------------------- video controller
M_STATION_7:
        begin   7, >VIDEO
        expect  VIDEO + 0, COLUMNS
        expect  VIDEO + 1, 3
        expect  VIDEO + 2, 3
        expect  VIDEO + 3, 2
        expect  VIDEO + 4, ROWS
        expect  VIDEO + 5, 24
        expect  VIDEO + 6, 4
        expect  VIDEO + 7, 44
        expect  VIDEO + 8, 12
        try     CURSOR_LOW, $55
        try     CURSOR_LOW, $AA
        count_only $F3
        try     CURSOR_HIGH, $51
        try     CURSOR_HIGH, $A2
        jsr     report

; ---------------------------------------------------------------- port, timer, keys let go
M_STATION_8:
        begin   8, >PORT
        try     DIRECTION, $00
        try     DIRECTION, $55
        try     DIRECTION, $2A
        try     DIRECTION, PORT_OUT
        count_only PORT_OUT
        try     PORT, $5A
        try     PORT, $55
        try     PORT, PORT_REST
        count_only $FF
        lda     #100            ; 101 cycles
        sta     TIMER_LOW
        lda     TIMER_SAYS
        lda     #0
        sta     TIMER_HIGH
        ldx     #30
@wait:  dex
        bne     @wait
        expect  TIMER_SAYS, 1
        expect  TIMER_SAYS, 0
        lda     #>KEY_COLUMNS
        sta     at_page
        expect  KEY_COLUMNS, $FF
        jsr     report

; ---------------------------------------------------------------- link controller and side port
M_STATION_9:
        begin   9, >SIDE_PINS
        lda     #0
        sta     SIDE_PINS
        try     SIDE_WAY, $00
        try     SIDE_WAY, $55
        try     SIDE_WAY, $AA
        lda     #$0F
        sta     SIDE_WAY
        .repeat 4, n            ; out at 0-3, back at 4-7
        lda     #n * 5
        sta     SIDE_PINS
        expect  SIDE_PINS, n * $55
        .endrepeat
        lda     #$F0
        sta     SIDE_WAY
        .repeat 4, n            ; out at 4-7, back at 0-3
        lda     #n * $50
        sta     SIDE_PINS
        expect  SIDE_PINS, n * $55
        .endrepeat
        lda     #0
        sta     SIDE_WAY
        sta     SIDE_PINS
        jsr     report

; ---------------------------------------------------------------- tone generator
; The loudness while the voices stand, the voices without loudness.
M_STATION_10:
        begin   10, >TONE
        lda     #0
        sta     VOICE_A
        sta     VOICE_A + 1
        try     LOUD_AB, $33
        try     LOUD_AB, $CC
        lda     #0
        sta     LOUD_AB
        try     VOICE_A, $55
        try     VOICE_A, $AA
        try     VOICE_B, $55
        try     VOICE_B, $AA
        lda     #0
        sta     VOICE_A
        sta     VOICE_B
        count_only $0F
        try     VOICE_A + 1, $05
        try     VOICE_A + 1, $0A
        lda     #0
        sta     VOICE_A + 1
        jsr     report
        ldx     first
        jmp     pulses

; ---------------------------------------------------------------- routines
begin_station:
        lda     #0
        sta     wrong
        sta     count
        sta     count + 1
        sta     failed
        lda     #$FF
        sta     lines
        lda     #1
        sta     armed
        rts

; Compares A with what was wanted. No branch: what is not to be reported goes to a byte of no use.
look:
        and     lines
        sta     got
        eor     want
        and     lines
        tay
        ora     wrong
        sta     wrong
        lda     if_any,y
        lsr     a
        lsr     a
        lsr     a
        lsr     a
        sta     differ
        sed
        clc
        adc     count
        sta     count
        lda     count + 1
        adc     #0
        sta     count + 1
        cld
        lda     failed
        eor     #1
        and     differ
        ora     armed
        eor     #1
        tax
        lda     want
        sta     wrote,x
        lda     got
        sta     seen,x
        lda     at_page
        sta     where,x
        lda     failed
        ora     differ
        sta     failed
        ldx     #0
        stx     armed
        rts

; Fills in the station's sentence, notes the first that differed, and sounds its tone.
report:
        ldy     #AT_WROTE
        ldx     wrote
        jsr     put_hex
        ldy     #AT_READ
        ldx     seen
        jsr     put_hex
        ldy     #AT_PAGE
        ldx     where
        jsr     put_hex
        ldy     #AT_COUNT
        ldx     count + 1
        lda     ones_of_hex,x
        sta     (line),y
        iny
        ldx     count
        jsr     put_hex
        lda     wrong
        sta     left
        ldy     #AT_RIBBON
@line:  lda     #0
        asl     left
        rol     a
        adc     #GLYPH_RIBBON   ; the carry is clear
        sta     (line),y
        iny
        cpy     #AT_RIBBON + 8
        bne     @line
        ldx     first
        lda     if_any,x
        lsr     a
        lsr     a
        lsr     a
        lsr     a
        sta     left
        lda     failed
        eor     #1
        ora     left
        tax
        lda     station
        sta     first,x
        ldy     wrong
        tone_y
        rts

; X as two hexadecimal digits at Y of the sentence.
put_hex:
        lda     tens_of_hex,x
        sta     (line),y
        iny
        lda     ones_of_hex,x
        sta     (line),y
        rts

; 0.2 s.
leave_alone:
        ldx     #0
        ldy     #214            ; turns of 1284 cycles
@wait:  dex
        bne     @wait
        dey
        bne     @wait
        rts

first_page:
        lda     #0
        sta     cell
        lda     at_page
        sta     cell + 1
        rts

; Shows page at_page in the window: bits 5 and 6 are the bank.
open_window:
        lda     at_page
        and     #$1F
        ora     #>WINDOW
        sta     cell + 1
        lda     at_page
        and     #$20
        lsr     a
        lsr     a
        ora     #BANK_LOW
        jsr     set_bit
        lda     at_page
        and     #$40
        lsr     a
        lsr     a
        lsr     a
        ora     #BANK_HIGH
; Gives the latch LATCH(bit, value) in A.
set_bit:
        ora     #PORT_REST & $F0
        sta     PORT
        eor     #LATCH_SHUT
        sta     PORT
        eor     #LATCH_SHUT
        sta     PORT
        lda     #PORT_REST
        sta     PORT
        rts

write_page:
        lda     at_page
        eor     #$5A
        ldy     #CELL_1
        sta     (cell),y
        eor     #$FF
        ldy     #CELL_2
        sta     (cell),y
        inc     at_page
        rts

read_page:
        lda     at_page
        eor     #$5A
        sta     want
        ldy     #CELL_1
        lda     (cell),y
        jsr     look
        lda     want
        eor     #$FF
        sta     want
        ldy     #CELL_2
        lda     (cell),y
        jsr     look
        inc     at_page
        rts

; What attribute cell `cell` of page at_page is to hold; X = 0.
mix_cell:
        lda     at_page
        sta     cell + 1
        lda     cell
        lsr     a
        sta     want
        lsr     a
        lsr     a
        lsr     a
        lsr     a
        eor     want
        eor     at_page
        and     #$0F
        sta     want
        ldx     #0
        rts

; Two cells on; Z after the last of the four pages.
next_cell:
        clc
        lda     cell
        adc     #2
        sta     cell
        lda     at_page
        adc     #0
        sta     at_page
        cmp     #>ATTRIBUTE + 4
        rts
