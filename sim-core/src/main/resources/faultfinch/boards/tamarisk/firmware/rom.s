; The firmware of the Tamarisk board, Marrow Lane Works: ROM 0 (boot) and ROM 1 (commands).
;
; Rules kept throughout:
;   - no byte of memory is used before it has been written, and no address is read where nothing
;     answers, not even by an instruction's extra read;
;   - nothing waits for ever on a part that may stay silent;
;   - the machine comes up without port-and-timer controller, link controller, tone generator,
;     attribute memory or ROM 1: what it needs of them is what they do when they are not there.

        .setcpu "6502"
        .include "map.inc"
        .include "variables.inc"
        .include "macros.inc"
        .include "boot.s"
        .include "no_memory.s"
        .include "screen.s"
        .include "keys.s"
        .include "sound.s"
        .include "interrupt.s"

        .segment "SUM0"
sum_0:  .word   ROM0SUM         ; given by build.sh

        .segment "VECTORS"
        .word   unmasked
        .word   M_RESET
        .word   interrupt

        .include "commands.s"
        .include "files.s"
        .include "link.s"
        .include "tape.s"

        .segment "SUM1"
sum_1:  .word   ROM1SUM
