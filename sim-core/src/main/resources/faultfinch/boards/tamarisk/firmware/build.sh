#!/bin/sh
# Builds the images of the Tamarisk board with ca65 and ld65: rom0.bin, rom1.bin, bench.bin with
# their label files, and glyphs.bin.
# Usage: sh build.sh [output directory]; without one the outputs go beside this script.
#
# ROM 0 and ROM 1 each hold the sum of their own bytes, the two bytes of that sum left out. So they
# are built once with 0 in their place, their bytes are added up, and they are built again: what is
# left out of the sums cannot change them. The bench ROM holds an eight-bit sum over all of ROM 1.
set -eu
LC_ALL=C
export LC_ALL
here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
out=${1:-$here}
mkdir -p "$out"
out=$(CDPATH= cd -- "$out" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

firmware() { # $1, $2: the expected sums of ROM 0 and ROM 1
  (cd "$here" && ca65 -g -D "ROM0SUM=$1" -D "ROM1SUM=$2" -o "$scratch/rom.o" rom.s)
  (cd "$scratch" && ld65 -C "$here/rom.cfg" -Ln symbols -o rom rom.o)
}

total() { # adds up the bytes of the image $1, modulo 65536
  od -An -v -tu1 "$scratch/$1" \
    | awk '{ for (i = 1; i <= NF; i++) t = (t + $i) % 65536 } END { print t }'
}

check() { # $1: image, $2: the sum it holds
  again=$(($(total "$1") - $2 % 256 - $2 / 256))
  again=$(((again + 65536) % 65536))
  if [ "$again" -ne "$2" ]; then
    echo "build.sh: the sum over $1 is $again, $2 was stored" >&2
    exit 1
  fi
}

# Labels: one a line, address in four hexadecimal digits, a blank, the name; by address, then by name.
labels() { # $1: label file, $2: first and $3: last address
  awk -v first="$2" -v last="$3" '$1 == "al" && $3 !~ /@/ && $3 !~ /LOCAL-MACRO|SUM$|CHECK$/ {
    address = toupper(substr($2, 3))
    if (address >= first && address <= last) print address " " substr($3, 2)
  }' "$scratch/symbols" | sort -u > "$out/$1"
}

firmware 0 0
sum0=$(total rom0.bin)
sum1=$(total rom1.bin)
firmware "$sum0" "$sum1"
check rom0.bin "$sum0"
check rom1.bin "$sum1"
{ labels low 0000 0FFF; labels high E000 FFFF; cat "$out/low" "$out/high"; } > "$out/rom0.lbl"
rm "$out/low" "$out/high"
labels rom1.lbl C000 DFFF

# The sum of station 1 of the bench ROM: byte n of each page in turn, the carry coming back in.
sum1=$(od -An -v -tu1 "$scratch/rom1.bin" | awk '
  { for (i = 1; i <= NF; i++) byte[count++] = $i }
  END {
    for (n = 0; n < 256; n++)
      for (page = 0; page < 32; page++) {
        t = t % 256 + byte[page * 256 + n] + (t > 255)
      }
    print (t % 256 + (t > 255)) % 256
  }')
(cd "$here" && ca65 -g -D "ROM1CHECK=$sum1" -o "$scratch/bench.o" bench.s)
(cd "$scratch" && ld65 -C "$here/bench.cfg" -Ln symbols -o bench bench.o)
labels bench.lbl 0000 FFFF

awk -f "$here/glyphs.awk" "$here/glyphs.txt" > "$scratch/glyphs.s"
(cd "$scratch" && ca65 -o glyphs.o glyphs.s && ld65 -t none -o glyphs.bin glyphs.o)

for image in rom0 rom1 bench glyphs; do
  size=$(wc -c < "$scratch/$image.bin")
  if [ "$size" -ne 8192 ]; then
    echo "build.sh: $image.bin has $size bytes, a 2764 takes 8192" >&2
    exit 1
  fi
  cp "$scratch/$image.bin" "$out/$image.bin"
done
