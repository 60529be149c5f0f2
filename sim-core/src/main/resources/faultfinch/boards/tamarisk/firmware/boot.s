; From reset to the prompt. Each step has a label M_..., reached when the processor fetches the
; instruction under it. The steps before the memory has been looked at use registers only.

        .segment "BOOT"

M_RESET:
        sei
        cld
        clv
M_STACK:
        ldx     #$FF
        txs

; The port's latch is filled before its pins turn to outputs, so that nothing on them twitches.
M_PORTS:
        lda     #PORT_REST
        sta     PORT
        lda     #PORT_OUT
        sta     DIRECTION
        lda     #LINK_STOP
        sta     LINK_HOW
        lda     #0
        sta     LINK_HOW
        sta     SIDE_WAY
        sta     TIMER_HOW
        sta     TAPE_TONE
        sta     VIDEO_HOW
        .repeat 8, n
        sta     TONE + n
        .endrepeat
        sta     TONE_HOW
        lda     TIMER_SAYS
        lda     LINK_SAYS

        .include "sizing.s"

; ---------------------------------------------------------------- clear
; What is typed, the workspace, all picture pages and all attributes.
M_CLEAR:
        lda     #0
        tax
@more:  sta     $0200,x
        .repeat 8, n
        sta     WORKSPACE + $100 * n,x
        .endrepeat
        inx
        bne     @more
        lda     #' '
@paper: .repeat 16, n
        sta     PICTURE + $100 * n,x
        .endrepeat
        inx
        bne     @paper
        jsr     plain_inks

; ---------------------------------------------------------------- video controller
M_VIDEO:
        video   13, 0
        video   0, COLUMNS      ; slots of a line: 36 + 3 + 3 + 2 = 44
        video   1, 3
        video   2, 3
        video   3, 2
        video   4, ROWS         ; lines of a frame: 20 * 12 + 24 + 4 + 44 = 312
        video   5, 24
        video   6, 4
        video   7, 44
        video   8, 12
        video   9, 0
        video   10, 0
        video   11, 0
        video   12, CURSOR_LINE
        lda     VIDEO_SAYS
        lda     #SHOW_PLAIN
        sta     blinking
        sta     VIDEO_HOW
        lda     #HALF_BLINK
        sta     frames

; ---------------------------------------------------------------- latch, all bits 0
M_PAGE_BITS:
        lda     #7
        sta     spare
@bit:   lda     spare
        jsr     set_latch
        dec     spare
        bpl     @bit
        lda     #>PICTURE
        sta     paper

; ---------------------------------------------------------------- timer and interrupts
M_TIMER:
        lda     #<TICK_CYCLES
        sta     TIMER_LOW
        lda     #3              ; reload, interrupt
        sta     TIMER_HOW
        lda     #>TICK_CYCLES
        sta     TIMER_HIGH

M_INTERRUPTS:
        cli

; ---------------------------------------------------------------- chord
; 1,375,000 / 16 / 275 = 312.5 Hz and / 165 = 520.8 Hz: 3 to 5. It dies away by itself, one step of
; sixteen in 2048 * 20 cycles: 0.48 s.
.define CHORD_A     275
.define CHORD_B     165
.define CHORD_DECAY 20
.define CHORD_TICKS 60
M_CHORD:
        lda     #<CHORD_A
        sta     VOICE_A
        lda     #>CHORD_A
        sta     VOICE_A + 1
        lda     #<CHORD_B
        sta     VOICE_B
        lda     #>CHORD_B
        sta     VOICE_B + 1
        lda     #$CC
        sta     LOUD_AB
        lda     #$30
        sta     FOLLOW
        lda     #CHORD_DECAY
        sta     DECAY
        lda     #CHORD_TICKS
        sta     playing

; ---------------------------------------------------------------- banner
M_BANNER:
        ldx     #COLUMNS - 1
@name:  lda     banner,x
        sta     PICTURE + COLUMNS,x
        lda     #GLYPH_RIBBON
        sta     PICTURE + 3 * COLUMNS,x
        dex
        bpl     @name
        jsr     banner_inks
        lda     #2
        jsr     to_row
        inc     column
        inc     column
        jsr     put_pages
        say     pages_passed
        lda     #FIRST_ROW + 1
        jsr     to_row

; ---------------------------------------------------------------- the working loop
; What is typed is taken key by key. Between keys the processor waits in a loop over two bytes of
; memory, which the interrupts fill.
M_PROMPT:
        lda     #GLYPH_PROMPT
        jsr     put_glyph
        lda     #' '
        jsr     put_glyph
        lda     #0
        sta     length
        sta     stopped
await_key:
        jsr     place_cursor
        jsr     get_key
        cmp     #KEY_ENTER
        beq     M_ENTER
        cmp     #KEY_ERASE
        beq     M_ERASE
        cmp     #KEY_ALT
        beq     M_CAPS
        cmp     #' '
        bcc     await_key
        ldy     length
        cpy     #COLUMNS - 4
        bcs     await_key
        jsr     capital
M_ECHO:
        sta     typed,y
        inc     length
        jsr     put_glyph
        jmp     await_key

M_ERASE:
        ldy     length
        beq     await_key
        dec     length
        dec     column
        ldy     column
        lda     #' '
        sta     (line),y
        bne     await_key       ; always

M_CAPS:
        lda     caps
        eor     #LATCH(0, 1)
        sta     caps
        ora     #CAPS_LAMP
        jsr     set_latch
        jmp     await_key

M_ENTER:
        ldy     length
        lda     #0
        sta     typed,y
        jsr     new_line
        lda     length
        beq     M_PROMPT
        ldx     #3
@look:  lda     COMMANDS,x      ; is there a ROM 1?
        cmp     mark,x
        bne     @none
        dex
        bpl     @look
        jsr     COMMANDS + 4
        jmp     next_prompt
@none:  say     no_commands
next_prompt:
        lda     column
        beq     @fresh
        jsr     new_line
@fresh: jmp     M_PROMPT

; Makes a small letter in A a capital while the caps lamp is lit; keeps Y.
capital:
        cmp     #'a'
        bcc     @same
        cmp     #'z' + 1
        bcs     @same
        ldx     caps
        beq     @same
        and     #$DF
@same:  rts

banner: .byte   "  Tamarisk      Marrow Lane Works   "
        .assert * - banner = COLUMNS, error, "the banner is not one row"
pages_passed:
        .byte   " pages passed", 0
no_commands:
        .byte   "ROM 1 does not answer.", 0
mark:   .byte   "MLW1"
