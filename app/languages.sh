#!/usr/bin/env bash
# Brings new and changed sentences of the source into the files that translators work on, resources/languages: each new
# one is marked unfinished there. tests/house/languages.py tells what is still to do.
set -euo pipefail
cd "$(dirname "$0")/.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
for language in de fr; do
    "$lupdate" -silent -no-obsolete -locations none app core -ts "resources/languages/rigband_$language.ts"
    # Written as they are read, so that sentences are found by searching for them.
    sed -i "s/&#xa0;/\xc2\xa0/g; s/&apos;/'/g" "resources/languages/rigband_$language.ts"
done
