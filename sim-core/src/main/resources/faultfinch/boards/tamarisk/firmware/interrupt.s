; Interrupts: the timer's tick, the frame, the link. One line is wired from all three.

.define MANY_STRAYS 100

interrupt:
        pha
        txa
        pha
        tya
        pha
        cld
        tsx
        lda     $0104,x         ; the flags as pushed
        and     #%00010000
        bne     break
        lda     TIMER_SAYS      ; this also lets go of the line
        cmp     #TIMER_DUE
        beq     M_TICK
        lda     VIDEO_SAYS
        and     #%11111110
        cmp     #%10000000
        beq     M_FRAME
        lda     LINK_SAYS
        and     #%10010011
        cmp     #%10000001
        beq     M_LINKED

; Nobody's. After many such in a row the line is taken to be held low by something, and the
; interrupted program goes on without interrupts.
        inc     strays
        lda     strays
        cmp     #MANY_STRAYS
        bcc     leave
M_MASKED:
        lda     $0104,x
        ora     #%00000100
        sta     $0104,x
        bne     leave           ; always

M_LINKED:
        lda     #1
        sta     linked
        bne     owned           ; always

; Every 16 frames the cursor comes or goes.
M_FRAME:
        dec     frames
        bne     owned
        lda     #HALF_BLINK
        sta     frames
        lda     blinking
        eor     #SHOW_PLAIN ^ SHOW_CURSOR
        sta     blinking
        sta     VIDEO_HOW
owned:  lda     #0
        sta     strays
leave:
        pla
        tay
        pla
        tax
        pla
unmasked:
        rti

; Every tick counts down the sound, every second one looks at the keys.
M_TICK:
        inc     tick
        bne     @same
        inc     tick + 1
@same:  lda     playing
        beq     @quiet
        dec     playing
        bne     @quiet
        jsr     silence
@quiet: lda     tick
        lsr     a
        bcs     owned
        lda     deaf
        bne     owned
        jsr     scan_keys
        jmp     owned

; A BRK is never meant: the program has been left, or an instruction was read as 00.
break:
M_BREAK:
        lda     #SHOW_CURSOR    ; a cursor that stands still
        sta     VIDEO_HOW
@stop:  jmp     @stop
