; Sound on the tone generator.

silence:
        lda     #0
        .repeat 8, n
        sta     TONE + n
        .endrepeat
        rts

; Waits for the next tick, or about 40 ms if none comes. Keeps A.
.define PATIENCE 22             ; turns of 2560 cycles
await_tick:
        pha
        lda     tick
        ldx     #PATIENCE
        ldy     #0
@look:  cmp     tick
        bne     @done
        dey
        bne     @look
        dex
        bne     @look
@done:  pla
        rts
