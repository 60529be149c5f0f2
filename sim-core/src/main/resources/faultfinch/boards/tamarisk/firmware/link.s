; The link to the drive, a byte at a time. Every routine comes back with the carry set if the byte
; did not get through within about 20 ms.

; Lights the lamp, asks the drive whether it is there, and gives it the command in A.
call_drive:
        pha
        lda     rest
        ora     #LAMP_LIT
        sta     rest
        sta     PORT
        lda     #0
        sta     stopped
        lda     #DRIVE_HELLO
        jsr     send_command
        bcs     @gone
        jsr     receive
        bcs     @gone
        cmp     #DRIVE_HERE
        bne     @gone
        pla
        jmp     send_command
@gone:  pla
        sec
        rts

; Lets go of the link and darkens the lamp.
hang_up:
        lda     #LINK_STOP
        sta     LINK_HOW
        lda     #0
        sta     LINK_HOW
        lda     rest
        and     #$FF ^ LAMP_LIT
        sta     rest
        sta     PORT
        rts

; Sends A with the attention line down.
send_command:
        ldx     #LINK_ATTEND | LINK_TELL
        stx     LINK_HOW
        jsr     send
        lda     #LINK_TELL
        sta     LINK_HOW
        rts

send:
        ldx     #0
        stx     linked
        sta     LINK_BYTE

; The interrupt fills `linked`. 10 * 256 turns of 10 cycles: 19 ms.
await_link:
        ldx     #10
        ldy     #0
@look:  lda     linked
        bne     @done
        dey
        bne     @look
        dex
        bne     @look
        lda     #LINK_STOP
        sta     LINK_HOW
        sec
        rts
@done:  clc
        rts

; Receives a byte into A.
receive:
        lda     #0
        sta     linked
        lda     #LINK_RECEIVE | LINK_TELL
        sta     LINK_HOW
        jsr     await_link
        bcs     @gone
        lda     LINK_BYTE
@gone:  rts
