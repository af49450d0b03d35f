#!/usr/bin/env bash
# Draws the icon anew at every size, after a change to rigband.svg. Takes rsvg-convert (librsvg2-bin).
set -euo pipefail
cd "$(dirname "$0")"
for size in 16 22 24 32 48 64 128 256; do
    rsvg-convert --width "$size" --height "$size" rigband.svg --output "rigband-$size.png"
done
