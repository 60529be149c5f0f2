; The keyboard: seven rows of eight, read one row at a time.

; Finds the first key that is down. The same key twice running counts; a key that has just gone down
; is queued.
scan_keys:
        lda     #0
        sta     shift
        ldy     #1              ; number of the row's first key
        ldx     #0
@row:   txa
        eor     rest
        eor     #$0F            ; the low bits of rest are all 1
        sta     PORT
        lda     KEY_COLUMNS
        eor     #$FF
        beq     @next
        cpx     #0
        bne     @find
        lsr     a               ; SHIFT is no key of its own
        rol     shift
        asl     a
        beq     @next
@find:  dey
@bit:   iny
        lsr     a
        bcc     @bit
        bcs     @found          ; always
@next:  clc
        tya
        adc     #8
        tay
        inx
        cpx     #7
        bne     @row
        ldy     #0
@found: lda     rest
        sta     PORT
        cpy     scanned
        sty     scanned
        bne     @done           ; not the same twice running: contacts still bounce
        cpy     held
        beq     @done
        sty     held
        tya
        beq     @done
        lda     shift
        beq     @plain
        tya
        clc
        adc     #56
        tay
@plain: lda     codes - 1,y
        beq     @done
        cmp     #KEY_STOP
        bne     @queue
        sta     stopped
@queue: ldy     keys_in
        sta     queue,y
        iny
        tya
        and     #$07
        cmp     keys_out
        beq     @done           ; the queue is full
        sta     keys_in
@done:  rts

; The next key, waited for in a short loop over memory.
get_key:
        lda     keys_out
@wait:  cmp     keys_in
        beq     @wait
        tay
        iny
        tya
        and     #$07
        ldy     keys_out
        sta     keys_out
        lda     queue,y
        rts

codes:  .byte   KEY_SHIFT, KEY_ALT, ' ', KEY_ENTER, KEY_ERASE, KEY_UP, KEY_DOWN, KEY_STOP
        .byte   "aeimquy3"
        .byte   "bfjnrvz4"
        .byte   "cgkosw15"
        .byte   "dhlptx26"
        .byte   "7890.,-+"
        .byte   ";:/*=()'"
; the same with SHIFT
        .byte   KEY_SHIFT, KEY_ALT, ' ', KEY_ENTER, KEY_ERASE, KEY_UP, KEY_DOWN, KEY_STOP
        .byte   "AEIMQUY#"
        .byte   "BFJNRVZ$"
        .byte   "CGKOSW!%"
        .byte   "DHLPTX", $22, "&"
        .byte   "?@[]><_^"
        .byte   $5C, "|{}~`)'"
        .assert * - codes = 112, error, "a key has no code"
