; Text on the picture page in use.

; Prints the text at A (low) and X (high), which ends with 00.
put_text:
        sta     words
        stx     words + 1
@next:  ldy     #0
        lda     (words),y
        beq     @done
        jsr     put_glyph
        inc     words
        bne     @next
        inc     words + 1
        bne     @next           ; always
@done:  rts

; Puts A at the cursor and goes on; 0Dh goes to the next row. Keeps X.
put_glyph:
        cmp     #KEY_ENTER
        beq     new_line
        ldy     column
        sta     (line),y
        inc     column
        cpy     #COLUMNS - 1
        beq     new_line
        rts

; To the next row; on the last row all rows below the banner move up. Keeps X.
new_line:
        lda     #0
        sta     column
        ldy     row
        iny
        cpy     #ROWS
        beq     scroll
        sty     row
        clc
        lda     line
        adc     #COLUMNS
        sta     line
        bcc     @same
        inc     line + 1
@same:  rts

; Rows FIRST_ROW + 1 to the last move up by one, a row a turn; the last is blanked.
scroll: txa
        pha
        lda     #FIRST_ROW
        jsr     to_row
@row:   lda     line
        sta     target
        lda     line + 1
        sta     target + 1
        jsr     new_line
        ldy     #COLUMNS - 1
@cell:  lda     (line),y
        sta     (target),y
        dey
        bpl     @cell
        lda     row
        cmp     #ROWS - 1
        bne     @row
        pla
        tax
; Blanks the row in use. Keeps X.
blank_row:
        ldy     #COLUMNS - 1
        lda     #' '
@cell:  sta     (line),y
        dey
        bpl     @cell
        rts

; To the start of row A.
to_row:
        sta     row
        tay
        lda     row_low,y
        sta     line
        lda     row_high,y
        ora     paper
        sta     line + 1
        lda     #0
        sta     column
        rts

; Blanks the rows below the banner and goes to the first of them.
fresh_page:
        lda     #ROWS - 1
@row:   jsr     to_row
        jsr     blank_row
        ldy     row
        dey
        tya
        cmp     #FIRST_ROW - 1
        bne     @row
        lda     #FIRST_ROW
        bne     to_row          ; always

; Gives the video controller the cell of the cursor.
place_cursor:
        clc
        lda     line
        adc     column
        sta     CURSOR_LOW
        lda     line + 1
        adc     #0
        and     #$03
        ora     #CURSOR_LINE
        sta     CURSOR_HIGH
        rts

; Prints A as two hexadecimal digits. Keeps X.
put_byte:
        pha
        lsr     a
        lsr     a
        lsr     a
        lsr     a
        tay
        lda     digits,y
        jsr     put_glyph
        pla
        and     #$0F
        tay
        lda     digits,y
        jmp     put_glyph

; Prints the number of good pages in decimal, three digits: 256 at most.
put_pages:
        ldx     #'0'
        ldy     good
        lda     good + 1
        beq     @small
        ldx     #'2'            ; 256
        ldy     #56
@small: tya
@next:  cmp     #100
        bcc     @tens
        sbc     #100
        inx
        bne     @next           ; always
@tens:  sta     spare
        cpx     #'0'
        beq     @none
        txa
        jsr     put_glyph
@none:  ldx     #'0'
        lda     spare
@ten:   cmp     #10
        bcc     @ones
        sbc     #10
        inx
        bne     @ten            ; always
@ones:  sta     spare
        txa
        jsr     put_glyph
        lda     spare
        ora     #'0'
        jmp     put_glyph

; ---------------------------------------------------------------- attributes
; The stores go through a pointer with X = 0: the one way to a computed address that does not read
; it first.

; All cells as plain text.
plain_inks:
        lda     #<ATTRIBUTE
        sta     cells
        lda     #>ATTRIBUTE
        sta     cells + 1
        ldx     #0
        lda     #INKS_OF_TEXT
@cell:  sta     (cells,x)
        inc     cells
        bne     @cell
        inc     cells + 1
        ldy     cells + 1
        cpy     #>ATTRIBUTE + 4
        bne     @cell
        rts

; The name in yellow, its maker in cyan, and under both a ribbon of seven inks, five columns each.
banner_inks:
        ldy     #COLUMNS - 1
@cell:  clc
        tya
        adc     #COLUMNS
        sta     cells
        lda     #>ATTRIBUTE
        sta     cells + 1
        ldx     #0
        lda     #3
        cpy     #14
        bcc     @name
        lda     #6
@name:  sta     (cells,x)
        clc
        lda     cells
        adc     #2 * COLUMNS
        sta     cells
        lda     ribbon,y
        sta     (cells,x)
        dey
        bpl     @cell
        rts

ribbon: .repeat 7, n
        .byte   n + 1, n + 1, n + 1, n + 1, n + 1
        .endrepeat
        .byte   7
digits: .byte   "0123456789ABCDEF"
row_low:
        .repeat ROWS, n
        .byte   <(n * COLUMNS)
        .endrepeat
row_high:
        .repeat ROWS, n
        .byte   >(n * COLUMNS)
        .endrepeat
