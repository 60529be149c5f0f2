# Turns the drawn glyphs into bytes for the assembler: 16 lines a glyph, of which 12 are drawn; codes
# 00-7F, the same with a rule under them, then both again with every dot turned over.
function fail(why) {
  print "glyphs.txt:" FNR ": " why > "/dev/stderr"
  failed = 1
  exit 1
}

function value(drawn,    i, v, dot) {
  if (length(drawn) != 8) fail("found '" drawn "', a line of a glyph has 8 dots")
  for (i = 1; i <= 8; i++) {
    dot = substr(drawn, i, 1)
    if (dot != "#" && dot != ".") fail("found '" dot "', a dot is # or .")
    v = v * 2 + (dot == "#")
  }
  return v
}

/^;/ || NF == 0 { next }

$1 == "=" {
  if (count && line != 12) fail("found " line " lines above, a glyph has 12")
  count = NF - 1
  line = 0
  next
}

{
  if (NF != count) fail("found " NF " glyphs side by side, " count " are named")
  if (line == 12) fail("found a thirteenth line")
  for (i = 1; i <= NF; i++) dots[first + i - 1, line] = value($i)
  if (++line == 12) first += count
}

END {
  if (failed) exit 1
  if (first != 128) fail("found " first " glyphs, 128 are wanted")
  for (set = 0; set < 2; set++)
    for (rule = 0; rule < 2; rule++)
      for (code = 0; code < 128; code++) {
        text = "        .byte "
        for (line = 0; line < 16; line++) {
          v = line > 11 ? 0 : dots[code, line]
          if (rule && line == 11) v = 255
          if (set && line < 12) v = 255 - v
          text = text (line ? ", " : "") v
        }
        print text
      }
}
