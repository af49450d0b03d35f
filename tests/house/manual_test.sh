#!/usr/bin/env bash
# The check of the manual has to find what it is for: each wrong line below is written into a copy of the tree.
set -uo pipefail
house=$(cd "$(dirname "$0")" && pwd)
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT
missed=0

copy() {
    rm -rf "$tree"/*
    mkdir -p "$tree/app" "$tree/tests/house" "$tree/resources"
    cp -r "$house/../../docs" "$tree/docs"
    cp -r "$house/../../app/wording" "$house/../../app/CMakeLists.txt" "$tree/app"
    cp "$house"/forbidden_words*.txt "$tree/tests/house"
    cp -r "$house/../../resources/languages" "$tree/resources"
}

# finds LINE SAID [FOLDER]: with LINE at the end of a chapter, of another language where one is named, SAID is told.
finds() {
    copy
    printf '\n%s\n' "$1" >>"$tree/docs/manual/${3:-}printing.md"
    local told
    if told=$(python3 "$house/manual.py" "$tree") || [[ $told != *"$2"* ]]; then
        printf 'Not found: %s\nbut told: %s\n' "$1" "$told"
        missed=1
    fi
}

copy
python3 "$house/manual.py" "$tree" || missed=1
finds 'Press **Print all of it**.' 'stands nowhere on the screen'
finds 'Press **Write the**.' 'stands nowhere on the screen'
finds 'Press `Ctrl+J`.' 'is no key'
finds 'Type `rigband-file mend X`.' 'is no verb'
finds '![Nothing](pictures/none.png)' 'is not there'
finds '![The card](../pictures/rigged-today.png)' 'does not go into the program'
finds '[Nowhere](none.md)' 'is not there'
finds 'Then the joint is safe.' 'does not say'
finds 'Drücken Sie **Print**.' 'stands nowhere on the screen' de/
finds 'Drücken Sie `Strg+J`.' 'is no key' de/
finds '[Drucken](start.md)' 'leads to other chapters' de/
finds 'Alors la liaison est en bon état : **Imprimer**.' 'names, the English one' fr/
finds 'Dann ist sie einwandfrei.' 'does not say' de/

copy
printf '# Alone\n\nThe verdict decides.\n' >"$tree/docs/manual/alone.md"
told=$(python3 "$house/manual.py" "$tree")
for said in 'alone.md stands only in one' 'does not say that it is one sign only' 'does not say who prevails' \
    'alone.md does not go into the program'; do
    [[ $told == *"$said"* ]] || { printf 'Not found: %s\n' "$said"; missed=1; }
done
exit $missed
