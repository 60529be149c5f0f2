; The bench ROM of the Tamarisk board: an image for the module that takes the place of ROM 0.
;
; Ten stations write and read back. Each has a sentence on the screen: what was written and read at
; the first cell that differed (or at the station's first cell), its page, how many differed; and a
; ribbon of the eight data lines, 7 to 0, with a gap where a line differed anywhere. The page is the
; high byte of the address; pages 80-FF are the upper 32 K of the memory, seen through the window.
; After each station a tone: the higher one if nothing differed. After each round the drive lamp
; pulses, with tones, in two groups: of the first station that differed, less one, a quarter plus one
; and the rest plus one (station 7: two, three). No pulse: nothing differed.
; The return leads join side port lines 0-3 to 4-7; without them station 9 reads rest levels.
;
; Nothing here says what is to blame: a station tells what came back to it.
;
; Stations 1 to 3 and everything that reports them use registers only. If page 0 or 1 differs the
; other stations do not run; the round is as long all the same. A station takes the same number of
; cycles whether anything differs or not: what is found is chosen by tables, and where there is a
; branch on it both ways are equally long.

        .setcpu "6502"
        .include "map.inc"
        .include "macros.inc"

.define LINE(station)  PICTURE - 2 * COLUMNS + 2 * COLUMNS * station
.define AT_WROTE   17
.define AT_READ    26
.define AT_PAGE    36
.define AT_COUNT   40
.define AT_RIBBON  64

        .segment "ZEROPAGE"
first:     .res 2               ; first station that differed; the second byte is for no use
station:   .res 1
line:      .res 2               ; where its sentence is
want:      .res 1
got:       .res 1
lines:     .res 1               ; data lines that count
at_page:   .res 1
differ:    .res 1               ; 1 if the last look differed
wrong:     .res 1               ; lines that differed
count:     .res 2               ; how often, decimal
failed:    .res 1               ; 1 once a look differed
armed:     .res 1               ; 1 until the first look
wrote:     .res 2               ; of the look to report; the second byte is for no use
seen:      .res 2
where:     .res 2
cell:      .res 2
left:      .res 1

        .segment "BENCH"
M_BENCH:
        sei
        cld
        lda     #PORT_REST
        sta     PORT
        lda     #PORT_OUT
        sta     DIRECTION
        .repeat 8, n            ; latch: attributes off, all else 0
        lda     #(PORT_REST & $F0) | LATCH(n, n = ATTRIBUTES_OFF)
        sta     PORT
        eor     #LATCH_SHUT
        sta     PORT
        eor     #LATCH_SHUT
        sta     PORT
        .endrepeat
        lda     #PORT_REST
        sta     PORT
        lda     #LINK_STOP
        sta     LINK_HOW
        lda     #0
        sta     LINK_HOW
        sta     SIDE_WAY
        sta     TIMER_HOW
        sta     TAPE_TONE
        .repeat 8, n
        sta     TONE + n
        .endrepeat
        sta     TONE_HOW

M_BENCH_PICTURE:
        video   13, 0
        video   0, COLUMNS
        video   1, 3
        video   2, 3
        video   3, 2
        video   4, ROWS
        video   5, 24
        video   6, 4
        video   7, 44
        video   8, 12
        video   9, 0
        video   10, 0
        ldx     #0
@text:  lda     sentences,x
        sta     PICTURE,x
        lda     sentences + $100,x
        sta     PICTURE + $100,x
        lda     sentences + $200,x
        sta     PICTURE + $200,x
        lda     #' '
        sta     PICTURE + $300,x
        inx
        bne     @text
        lda     #1
        sta     VIDEO_HOW

        .include "bench_alone.s"
        .include "bench_stations.s"
        .include "bench_round.s"
        .include "bench_tables.s"

        .segment "VECTORS"
        .word   unmasked
        .word   M_BENCH
        .word   unmasked
