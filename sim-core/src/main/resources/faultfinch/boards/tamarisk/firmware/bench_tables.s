; What stands for branches: tables over a byte.

        .segment "TABLES"
itself: .repeat 256, n
        .byte   n
        .endrepeat
tens_of_hex:
        .repeat 256, n
        .byte   (n / 16) + '0' + 7 * (n / 16 > 9)
        .endrepeat
ones_of_hex:
        .repeat 256, n
        .byte   (n .mod 16) + '0' + 7 * (n .mod 16 > 9)
        .endrepeat
hundreds:
        .repeat 256, n
        .byte   n / 100 + '0'
        .endrepeat
tens:   .repeat 256, n
        .byte   (n / 10) .mod 10 + '0'
        .endrepeat
ones:   .repeat 256, n
        .byte   n .mod 10 + '0'
        .endrepeat
ribbon: .byte   GLYPH_RIBBON
        .repeat 255
        .byte   GLYPH_GAP
        .endrepeat
if_any: .byte   0
        .repeat 255
        .byte   $10
        .endrepeat
half_period:                    ; high byte, in 8 cycles
        .byte   1
        .repeat 255
        .byte   2
        .endrepeat

; For stations 1, 2 and 3: what was noted before, 10h more if this one differed, to what is noted now.
first_of:
        .repeat 3, s
        .repeat 64, n
        .byte   (n & $23) | $20 * ((n & $10) * s > 0) | (s + 1) * ((n & $13) = $10)
        .endrepeat
        .endrepeat


        .align  $100
thirteen_times:
        .repeat 11, n
        .byte   13 * n
        .endrepeat
; First group a pulse for the station less one, by four, and one more; second for the rest and one.
lamps:  .repeat 13
        .byte   PORT_REST
        .endrepeat
        .repeat 10, n
        .repeat 13, t
        .byte   PORT_REST + LAMP_LIT * ((t <= n / 4) || (t >= 5 && t - 5 <= n .mod 4))
        .endrepeat
        .endrepeat

        .macro  sentence number, of
        .byte   "Station ", number, " wrote   , read    at page"
        .byte   "  :     of ", of, " differ.              "
        .endmacro
sentences:
        sentence "01", "001"
        sentence "02", "255"
        sentence "03", "255"
        sentence "04", "252"
        sentence "05", "256"
        sentence "06", "512"
        sentence "07", "013"
        sentence "08", "010"
        sentence "09", "011"
        sentence "10", "008"
        .assert * - sentences = COLUMNS * ROWS, error, "the sentences do not fill the screen"
        .res    768 - COLUMNS * ROWS, ' '
