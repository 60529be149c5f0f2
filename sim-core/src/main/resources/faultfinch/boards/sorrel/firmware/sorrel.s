; The firmware of the Sorrel board, Marrow Lane Works.
;
; It brings the board up in steps that a bench can follow: every step has a label M_..., and a label
; is reached when the processor fetches the instruction under it. The steps that come before the
; memory has been tried use registers only. Nothing waits for ever on a part that stays silent.
;
; Rules kept throughout:
;   - no byte of memory is read before it has been written;
;   - STATUS, which clears itself when read, and the display, which cannot be read, are only reached
;     by instructions that make no extra read of the address;
;   - numbers that are no addresses are .define'd, so that the label file holds addresses only.

        .setcpu "6502"

; ---------------------------------------------------------------- the map of the board
PORT      = $2000               ; port A, data
DIRECTION = $2001               ; port A, 1 = output
TIMERLOW  = $2002               ; timer, low latch
TIMERHIGH = $2003               ; timer, high latch; writing it starts the count
CONTROL   = $2004               ; bit 0 timer reloads, bit 1 interrupt enable
STATUS    = $2005               ; bit 7 interrupt, bit 0 expired; reading clears
TONE      = $2006               ; 0 silent, n: the tone line turns over every 16 * n cycles
KEYS      = $6000               ; bits 0-3 keys 1-4, low while pressed
DISPLAY   = $A000               ; sixteen cells, written only

.define LAMP_OFF     %00000001  ; the lamp hangs between 5 V and PA0: a low lights it
.define DISPLAY_ON   %00000010
.define ROM_HIGH     $E0        ; page of the first byte of ROM
.define SHOW_HIGH    $A0        ; page of the display
.define TICK_CYCLES  24575      ; about 50 ticks a second at 1.2288 MHz
.define HALF_BLINK   25         ; ticks the lamp stays lit, and stays dark
.define PATIENCE     20         ; turns of 2560 cycles before a wait for a tick is given up
.define TONE_LOW     44         ; 38400 / 44 = 873 Hz
.define TONE_HIGH    29         ; 38400 / 29 = 1324 Hz
.define TONE_KEY     21         ; 38400 / 21 = 1829 Hz
.define TONE_ALARM   96         ; 38400 / 96 = 400 Hz
.define CELL_RESULT  8          ; where answers start
.define CELL_LAST    15

; What the two tries of a page write: the offset in the page mixed with a number of the page's own,
; then the same with every bit turned over.
.define FIRST(page)  (($35 + (page) * $2B) & $FF)
.define SECOND(page) (FIRST(page) ^ $FF)

; ---------------------------------------------------------------- variables
        .segment "ZEROPAGE"
tick:   .res 1                  ; counts interrupts of the timer
blink:  .res 1                  ; ticks left until the lamp changes
lamps:  .res 1                  ; what PORT was last given
stray:  .res 1                  ; interrupts in a row that were not the timer's
cell:   .res 2                  ; address of a display cell
where:  .res 2                  ; address for walks through memory
seen:   .res 1                  ; keys of the last look, 1 = pressed
held:   .res 1                  ; keys taken as pressed
fresh:  .res 1                  ; keys that have just gone down
count:  .res 1                  ; two decimal digits counted by key 2
good:   .res 1                  ; pages of memory that passed at power-on
passed: .res 1                  ; pages that passed again by key 4
sum:    .res 2                  ; the sum over the ROM
spare:  .res 1

        .segment "CODE"
        .org    $E000           ; absolute here and below, so that the listing shows true addresses

; ---------------------------------------------------------------- reset
M_RESET:
        sei
        cld
        ldx     #$FF
        txs

; The port latch is filled before the pins turn to outputs, so that the lamp does not flash.
M_PORTS:
        lda     #LAMP_OFF | DISPLAY_ON
        sta     PORT
        sta     DIRECTION
        lda     #0
        sta     CONTROL
        sta     TONE
        lda     STATUS

M_BLANK:
        lda     #' '
        .repeat 16, n
        sta     DISPLAY + n
        .endrepeat

; ---------------------------------------------------------------- memory sizing
; From the top page down each page is filled, compared, and filled again with every bit turned over.
; A page that does not compare is left with its first filling and so fails the second look too.
        .macro  fill page
        .local  write, compare, turned, next
        ldx     #0
write:  txa
        eor     #FIRST(page)
        sta     $100 * (page),x
        inx
        bne     write
compare:
        txa
        eor     #FIRST(page)
        cmp     $100 * (page),x
        bne     next
        inx
        bne     compare
turned: txa
        eor     #SECOND(page)
        sta     $100 * (page),x
        inx
        bne     turned
next:
        .endmacro

; From page 0 up each page is compared with its second filling: what a page of the same chip that
; answers to two addresses holds is the filling of the lower one. Y counts the good pages. A page that
; fails is passed over, or ends the boot where a second argument says so.
        .macro  look page, elsewhere
        .local  compare, next
        ldx     #0
compare:
        txa
        eor     #SECOND(page)
        cmp     $100 * (page),x
        .ifblank elsewhere
        bne     next
        .else
        bne     elsewhere
        .endif
        inx
        bne     compare
        iny
        tya
        ora     #'0'
        sta     DISPLAY + CELL_LAST
next:
        .endmacro

M_SIZING:
        ldy     #0
        lda     #'0'
        sta     DISPLAY + CELL_LAST
        .repeat 8, n
        fill    (7 - n)
        .endrepeat

M_SECOND_LOOK:
        look    0, low_page_bad
        look    1, low_page_bad
        jmp     M_LOW_PAGES
low_page_bad:
        jmp     memory_bad

M_LOW_PAGES:
        .repeat 6, n
        look    (n + 2)
        .endrepeat

; ---------------------------------------------------------------- variables
M_CLEAR:
        lda     #0
        tax
@next:  sta     a:$0000,x
        inx
        bne     @next
        sty     good
        lda     #SHOW_HIGH
        sta     cell + 1
        lda     #LAMP_OFF | DISPLAY_ON
        sta     lamps
        lda     #HALF_BLINK
        sta     blink

; ---------------------------------------------------------------- timer and interrupts
M_TIMER:
        lda     #<TICK_CYCLES
        sta     TIMERLOW
        lda     #%00000011      ; reload, interrupt
        sta     CONTROL
        lda     #>TICK_CYCLES
        sta     TIMERHIGH

M_INTERRUPTS:
        cli

; ---------------------------------------------------------------- two short tones
M_CHIRP:
        lda     #TONE_LOW
        jsr     sound
        lda     #TONE_HIGH
        jsr     sound

; ---------------------------------------------------------------- banner
; Six letters, the rest blank. A board short of memory says how many pages it has beside its name.
M_BANNER:
        ldy     #0
@next:  lda     banner,y
        tax
        tya
        jsr     show_at         ; character in X, cell in A
        iny
        cpy     #16
        bne     @next
        lda     good
        cmp     #8
        beq     M_READY
        jsr     show_pages

; ---------------------------------------------------------------- the working loop
M_READY:
@turn:  jsr     await_tick
        lda     KEYS
        eor     #$FF
        and     #$0F
        cmp     seen
        sta     seen
        bne     @turn           ; not the same twice running: contacts still bounce
        tax
        eor     held
        and     seen
        sta     fresh
        stx     held
        lsr     fresh
        bcs     M_KEY_1
        lsr     fresh
        bcs     M_KEY_2
        lsr     fresh
        bcs     M_KEY_3
        lsr     fresh
        bcs     to_key_4
        jmp     @turn
to_key_4:
        jmp     M_KEY_4

; Key 1: its digit and a sound.
M_KEY_1:
        lda     #'1'
        jsr     echo
        lda     #TONE_KEY
        jsr     sound
        jmp     M_READY

; Key 2: counts up, in decimal.
M_KEY_2:
        lda     #'2'
        jsr     echo
        sed
        clc
        lda     count
        adc     #1
        sta     count
        cld
        ldx     #CELL_RESULT
        jsr     show_byte
        jmp     M_READY

; Key 3: the sum over the ROM, less the two bytes that hold the sum expected.
M_KEY_3:
        lda     #'3'
        jsr     echo
        lda     #0
        sta     where
        tay
        tax                     ; X: high byte of the sum, A: low byte
        lda     #ROM_HIGH
        sta     where + 1
        lda     #0
@next:  clc
        adc     (where),y
        bcc     @same
        inx
@same:  iny
        bne     @next
        inc     where + 1       ; comes round to 00 after the last page
        bne     @next
        sec
        sbc     expected
        bcs     @low
        dex
@low:   sec
        sbc     expected + 1
        bcs     @high
        dex
@high:  sta     sum
        stx     sum + 1
M_SUMMED:
        lda     sum + 1
        ldx     #CELL_RESULT
        jsr     show_byte
        lda     sum
        ldx     #CELL_RESULT + 2
        jsr     show_byte
        lda     #'='
        ldx     sum
        cpx     expected
        bne     @other
        ldx     sum + 1
        cpx     expected + 1
        beq     @say
@other: lda     #'#'
@say:   tax
        lda     #CELL_RESULT + 4
        jsr     show_at
        jmp     M_READY

; Key 4: pages 2 to 7 once more. Every byte is turned over, compared, put back and compared.
M_KEY_4:
        lda     #'4'
        jsr     echo
        lda     #0
        sta     where
        sta     passed
        tay
        lda     #2
        sta     where + 1
@page:  lda     (where),y
        tax
        eor     #$FF
        sta     (where),y
        cmp     (where),y
        bne     @bad
        txa
        sta     (where),y
        cmp     (where),y
        bne     @bad
        iny
        bne     @page
        inc     passed
        bne     @next           ; always: at most six
@bad:   txa
        sta     (where),y
        ldy     #0
@next:  inc     where + 1
        lda     where + 1
        cmp     #8
        bne     @page
M_RETRIED:
        lda     passed
        jsr     show_pages
        jmp     M_READY

; ---------------------------------------------------------------- routines
; Waits for the next tick, or about 41 ms if none comes.
await_tick:
        lda     tick
        ldx     #PATIENCE
        ldy     #0
@look:  cmp     tick
        bne     @done
        dey
        bne     @look
        dex
        bne     @look
@done:  rts

; Sounds the tone in A for three ticks.
sound:
        sta     TONE
        jsr     await_tick
        jsr     await_tick
        jsr     await_tick
        lda     #0
        sta     TONE
        rts

; Shows the digit in A in the last cell and clears the answers of the key before.
echo:
        tax
        lda     #CELL_LAST
        jsr     show_at
        ldy     #CELL_RESULT
@next:  ldx     #' '
        tya
        jsr     show_at
        iny
        cpy     #CELL_RESULT + 6
        bne     @next
        rts

; Shows M and the number in A.
show_pages:
        ora     #'0'
        tay
        ldx     #'M'
        lda     #CELL_RESULT
        jsr     show_at
        tya
        tax
        lda     #CELL_RESULT + 1
        bne     show_at         ; always

; Shows A as two hexadecimal digits, the first in cell X.
show_byte:
        pha
        stx     spare
        lsr     a
        lsr     a
        lsr     a
        lsr     a
        tay
        ldx     digits,y
        lda     spare
        jsr     show_at
        pla
        and     #$0F
        tay
        ldx     digits,y
        lda     spare
        clc
        adc     #1

; Shows the character in X in cell A; keeps Y. The store goes through a pointer with X = 0, the one
; way to a computed address that does not read it first.
show_at:
        sta     cell
        txa
        ldx     #0
        sta     (cell,x)
        rts

; ---------------------------------------------------------------- no usable memory
; Pages 0 and 1 carry the variables and the stack: without them the board can only call for help.
; No memory is used from here on.
memory_bad:
        lda     #'M'
        sta     DISPLAY
@pulse: lda     #TONE_ALARM
        sta     TONE
        ldx     #0
        ldy     #0
@on:    dey
        bne     @on
        dex
        bne     @on             ; about 0.27 s
        stx     TONE
        lda     #3
@rest:  dey
        bne     @rest
        dex
        bne     @rest
        sec
        sbc     #1
        bne     @rest           ; about 0.8 s
        beq     @pulse          ; always

; ---------------------------------------------------------------- interrupts
interrupt:
        pha
        txa
        pha
        cld
        tsx
        lda     $0103,x         ; the flags as pushed
        and     #%00010000
        bne     break
        lda     STATUS          ; this also lets go of the interrupt line
        bmi     M_TICK

; Not the timer. After 256 such in a row the line is taken to be held low by something, and the
; interrupted program goes on without interrupts.
        inc     stray
        bne     leave
        lda     $0103,x
        ora     #%00000100
        sta     $0103,x
        bne     leave           ; always

M_TICK:
        inc     tick
        lda     #0
        sta     stray
        dec     blink
        bne     leave
        lda     #HALF_BLINK
        sta     blink
        lda     lamps
        eor     #LAMP_OFF
        sta     lamps
        sta     PORT
leave:
        pla
        tax
        pla
unmasked:
        rti

; A BRK is never meant: the program has been left, or an instruction was read as 00.
break:
        lda     #'B'
        sta     DISPLAY + 14
@stop:  jmp     @stop

; ---------------------------------------------------------------- constants
        .segment "RODATA"
        .org    $FF00
banner: .byte   "SORREL          "
digits: .byte   "0123456789ABCDEF"
expected:
        .word   ROMSUM          ; given by build.sh

        .segment "VECTORS"
        .org    $FFFA
        .word   unmasked
        .word   M_RESET
        .word   interrupt
