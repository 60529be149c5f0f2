#!/bin/sh
# Builds sorrel.bin, sorrel.lbl and sorrel.lst from sorrel.s with ca65 and ld65.
# Usage: sh build.sh [output directory]; without one the outputs go beside this script.
#
# The firmware holds the sum of its own bytes, the two bytes of that sum left out. So the image is
# built once with 0 in their place, its bytes are added up, and it is built again with the sum: what
# is left out of the sum cannot change it.
set -eu
LC_ALL=C
export LC_ALL
here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
out=${1:-$here}
mkdir -p "$out"
out=$(CDPATH= cd -- "$out" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cd "$here"

assemble() { # $1: the expected sum
  ca65 -g -D "ROMSUM=$1" -l "$scratch/sorrel.lst" -o "$scratch/sorrel.o" sorrel.s
  ld65 -C sorrel.cfg -Ln "$scratch/symbols" -m "$scratch/map" -o "$scratch/sorrel.bin" \
    "$scratch/sorrel.o"
}

total() { # adds up the bytes of the image, modulo 65536
  od -An -v -tu1 "$scratch/sorrel.bin" \
    | awk '{ for (i = 1; i <= NF; i++) t = (t + $i) % 65536 } END { print t }'
}

assemble 0
sum=$(total)
assemble "$sum"
again=$(($(total) - sum % 256 - sum / 256))
again=$(((again + 65536) % 65536))
if [ "$again" -ne "$sum" ]; then
  echo "build.sh: the sum over the ROM is $again, $sum was stored" >&2
  exit 1
fi
size=$(wc -c < "$scratch/sorrel.bin")
if [ "$size" -ne 8192 ]; then
  echo "build.sh: the image has $size bytes, a 2764 takes 8192" >&2
  exit 1
fi

# Labels: one a line, address in four hexadecimal digits, a blank, the name; by address, then by name.
awk '$1 == "al" && $3 !~ /@/ && $3 != ".ROMSUM" && $3 !~ /LOCAL-MACRO/ {
  print toupper(substr($2, 3)) " " substr($3, 2)
}' "$scratch/symbols" | sort -u > "$out/sorrel.lbl"
cp "$scratch/sorrel.bin" "$out/sorrel.bin"
cp "$scratch/sorrel.lst" "$out/sorrel.lst"
