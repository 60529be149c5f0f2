; The commands that need the drive.

.define DRIVE_HELLO $40
.define DRIVE_LIST  $41
.define DRIVE_FETCH $42
.define DRIVE_KEEP  $43
.define DRIVE_HERE  $5A

; files: the names on the drive.
M_FILES:
        lda     #DRIVE_LIST
        jsr     call_drive
        bcs     no_answer
        lda     #0
        sta     left
        lda     #4              ; 1024 characters at most: a line that hangs must not list for ever
        sta     left + 1
@next:  jsr     receive
        bcs     no_answer
        cmp     #0
        beq     M_LISTED
        jsr     put_glyph
        lda     stopped
        bne     M_LISTED
        dec     left
        bne     @next
        dec     left + 1
        bne     @next
        beq     no_answer       ; always
M_LISTED:
        jmp     hang_up

no_answer:
M_NO_ANSWER:
        jsr     hang_up
        lda     column
        beq     @fresh
        jsr     new_line
@fresh: say     silent
        rts

no_name:
        say     name_wanted
        rts

; fetch NAME [ADDRESS]: from the workspace's first byte on if no address is given.
M_FETCH:
        jsr     read_name
        bcs     no_name
        lda     #<WORKSPACE
        sta     target
        lda     #>WORKSPACE
        sta     target + 1
        jsr     skip
        beq     @to
        jsr     read_number
        bcs     @given
        jmp     want_number
@given: jsr     number_to_target
@to:    lda     #DRIVE_FETCH
        jsr     call_drive
        bcs     no_answer
        jsr     send_name
        bcs     no_answer
        jsr     receive
        bcs     no_answer
        sta     left
        sta     number
        jsr     receive
        bcs     no_answer
        sta     left + 1
        sta     number + 1
        ora     left
        beq     fetch_empty
@next:  jsr     receive
        bcs     no_answer
        ldx     #0
        sta     (target,x)
        lda     stopped
        bne     fetch_over
        jsr     step
        bne     @next
M_FETCHED:
        say     fetched
        jsr     put_count
fetch_over:
        jmp     hang_up
fetch_empty:
        say     no_file
        jmp     hang_up

; keep NAME ADDRESS LENGTH
M_KEEP:
        jsr     read_name
        bcs     no_name
        jsr     read_number
        bcc     keep_bad
        jsr     number_to_target
        jsr     read_number
        bcc     keep_bad
        lda     number
        sta     left
        ora     number + 1
        beq     keep_bad
        lda     number + 1
        sta     left + 1
        lda     #DRIVE_KEEP
        jsr     call_drive
        bcs     keep_gone
        jsr     send_name
        bcs     keep_gone
        lda     left
        jsr     send
        bcs     keep_gone
        lda     left + 1
        jsr     send
        bcs     keep_gone
@next:  ldx     #0
        lda     (target,x)
        jsr     send
        bcs     keep_gone
        jsr     step
        bne     @next
        jsr     receive
        bcs     keep_gone
        cmp     #0
        bne     keep_refused
M_KEPT:
        say     kept
        jsr     put_count
        jmp     hang_up
keep_refused:
        say     refused
        jmp     hang_up
keep_gone:
        jmp     no_answer
keep_bad:
        jmp     want_number

; One byte is done: counts, and tells by Z whether it was the last.
step:
        inc     target
        bne     @same
        inc     target + 1
@same:  lda     left
        bne     @low
        dec     left + 1
@low:   dec     left
        lda     left
        ora     left + 1
        rts

number_to_target:
        lda     number
        sta     target
        lda     number + 1
        sta     target + 1
        rts

; Finds the name; carry set if there is none.
read_name:
        jsr     skip
        sec
        beq     @done
        sty     name
@next:  iny
        lda     typed,y
        beq     @end
        cmp     #' '
        bne     @next
@end:   sty     place
        clc
@done:  rts

; Sends the name, in capitals, and its end; carry set if nobody takes it.
send_name:
        ldy     name
@next:  lda     typed,y
        beq     @end
        cmp     #' '
        beq     @end
        sty     name
        cmp     #'a'
        bcc     @send
        cmp     #'z' + 1
        bcs     @send
        and     #$DF
@send:  jsr     send
        bcs     @done
        ldy     name
        iny
        bne     @next           ; always
@end:   lda     #KEY_ENTER
        jmp     send
@done:  rts

put_count:
        lda     number + 1
        jsr     put_byte
        lda     number
        jsr     put_byte
        say     bytes
        rts

silent: .byte   "The drive did not answer.", 0
name_wanted:
        .byte   "A name is wanted.", 0
no_file:
        .byte   "The drive has no such file.", 0
refused:
        .byte   "The drive would not keep it.", 0
fetched:
        .byte   "Fetched ", 0
kept:   .byte   "Kept ", 0
bytes:  .byte   " bytes.", 0
