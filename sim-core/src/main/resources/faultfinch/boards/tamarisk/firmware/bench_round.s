; The end of a round.

; Page 0 or 1 did not pass: the time of the stations that need them goes by. The number of cycles is
; theirs, counted; a test compares both rounds.
.define CYCLES_WITH_MEMORY 1285209

        .macro  spend cycles
        .repeat 4
        ldx     #0
        ldy     #((cycles) - 12) / 5136
:       dex
        bne     :-
        dey
        bne     :-              ; 1284 a turn, and 3
        .endrepeat
        .repeat 4
        ldx     #(((cycles) - 12) .mod 5136 - 4) / 20
:       dex
        bne     :-              ; 5 a turn, and 1
        .endrepeat
        .if     (cycles) .mod 2
        jmp     :+              ; 3
:       .repeat ((((cycles) - 12) .mod 5136 - 4) .mod 20 - 3) / 2
        nop
        .endrepeat
        .else
        .repeat ((((cycles) - 12) .mod 5136 - 4) .mod 20) / 2
        nop
        .endrepeat
        .endif
        .endmacro

without_memory:
        spend   CYCLES_WITH_MEMORY
        tsx
        txa
        and     #$0F
        tax

; Thirteen turns of 0.1 s, of which each lights lamp and tone for its first half or does not. X is the
; first station that differed, 0 for none.
pulses:
M_BENCH_PULSES:
        lda     thirteen_times,x
        tax
        lda     #$80
        sta     VOICE_A
        lda     #0
        sta     VOICE_A + 1     ; 1,375,000 / 16 / 128 = 671 Hz
        ldy     #13
@turn:  lda     lamps,x
        sta     PORT
        and     #LAMP_LIT
        lsr     a
        lsr     a
        sta     LOUD_AB
        lda     #53             ; turns of 1286 cycles
        txs
        ldx     #0
@on:    dex
        bne     @on
        sec
        sbc     #1
        bne     @on
        sta     LOUD_AB
        lda     #PORT_REST
        sta     PORT
        lda     #53
@off:   dex
        bne     @off
        sec
        sbc     #1
        bne     @off
        tsx
        inx
        dey
        bne     @turn
        sty     VOICE_A
        jmp     M_BENCH_ROUND

unmasked:
        rti
