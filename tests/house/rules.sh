#!/usr/bin/env bash
# The rules of the house that a script can see. Prints every breach and fails when there is one.
set -uo pipefail
house=$(cd "$(dirname "$0")" && pwd)
cd "${1:-$house/../..}" # another tree, in the test of these rules
breaches=0

# forbid WHAT PATTERN GREP-OPTIONS-AND-FOLDERS...   A folder that is not there any more is a breach too.
forbid() {
    local what=$1 pattern=$2 found folder
    shift 2
    for folder; do
        [[ $folder == -* || -e $folder ]] && continue
        printf '%s: there is no %s to look in\n\n' "$what" "$folder"
        breaches=$((breaches + 1))
    done
    found=$(grep -rnE --include='*.h' --include='*.cpp' "$pattern" "$@" 2>/dev/null)
    [ -z "$found" ] && return
    printf '%s:\n%s\n\n' "$what" "$found"
    breaches=$((breaches + 1))
}

core_without_qt=$(find core -mindepth 1 -maxdepth 1 ! -name store -print)
forbid "Qt in the core outside the store" '#include <Q|QString' $core_without_qt
forbid "User text in the core" '\btr\(' core
forbid "SQL outside the store" '"(SELECT|INSERT|UPDATE|DELETE|PRAGMA|CREATE) ' app $core_without_qt
forbid "A colour outside the theme" '#[0-9a-fA-F]{6}\b|Qt::(red|green|blue|yellow|black|white|gray)\b' \
    app/pages app/widgets app/report app/pictures app/window app/wording
# It is told as evidence, in these files alone; everybody else judges anew (docs/decisions).
forbid "What was shown at the time used as input" '(\.|->)shown(->|\.value\()|\*[A-Za-z_.>-]+(\.|->)shown\b' \
    /dev/null $(find core app -name '*.h' -o -name '*.cpp' | grep -vE '^core/store/|^core/review/saved_oddly\.cpp$|^app/report/review_file\.cpp$|^core/exchange/review_tables\.cpp$|^app/report/record_couplings\.cpp$|^app/report/review_outside\.cpp$|^app/wording/review_story_words\.cpp$')
forbid "A spin box that turns 0,30 into 3" 'QDoubleSpinBox' app
forbid "A box that the wheel changes" '(new |public )Q(ComboBox|SpinBox|DateEdit|TimeEdit|DateTimeEdit|Slider)\b' app
forbid "A sleep in a test" '\b(sleep|usleep|sleep_for|qSleep|qWait)\(' tests
# The store stands on a lower step than these, and is none of their business.
forbid "The store reached from below the pages" '#include "core/store' app/theme app/wording app/pictures app/blocks app/widgets

# One list of forbidden words: here, in the tests that read screens and paper, and told to readers in docs/terms.md.
words=$house/forbidden_words.txt
forbid "Words the program never says" "tr\(.*\b($(paste -sd'|' "$words"))\b" -i app
untold=$(while read -r word; do
    sed -n '/^## Words that are not used/,/^## What/p' docs/terms.md | tr '\n' ' ' | grep -qi "\b$word\b" || echo "$word"
done <"$words")
if [ -n "$untold" ]; then
    printf 'Words that docs/terms.md does not name as unused:\n%s\n\n' "$untold"
    breaches=$((breaches + 1))
fi

if ! climbs=$("$house/staircase.sh" .); then
    printf 'An include against the staircase:\n%s\n\n' "$climbs"
    breaches=$((breaches + 1))
fi

# Two types of one name in one namespace become one at the link, whatever their members.
twice=$(find core app -name '*.h' | xargs awk '
    FNR == 1 { space = "" }
    /^namespace / { space = $2 }
    /^(struct|class|enum class) [A-Z][A-Za-z]*( : .*)?$/ {
        name = $1 == "enum" ? $3 : $2
        count[space "::" name]++
        where[space "::" name] = where[space "::" name] " " FILENAME
    }
    END { for (one in count) if (count[one] > 1) print one ":" where[one] }')
if [ -n "$twice" ]; then
    printf 'A type name given twice:\n%s\n\n' "$twice"
    breaches=$((breaches + 1))
fi

# Sources are compiled joined; and a rule that finds nothing where two share a name would be none.
if ! "$house/joined_names.sh" .; then
    breaches=$((breaches + 1))
fi
sample=$(mktemp -d)
trap 'rm -rf "$sample"' EXIT
mkdir "$sample"/{core,app,tests}
touch "$sample"/{app,tests}/CMakeLists.txt
printf 'add_library(one STATIC\n    a.cpp\n    b.cpp\n)\n' >"$sample/core/CMakeLists.txt"
for source in a b; do
    printf 'namespace rig {\n\nnamespace {\n\nint halved(int all)\n{\n}\n\n} // namespace\n\n}\n' >"$sample/core/$source.cpp"
done
if [[ $("$house/joined_names.sh" "$sample") != *"one rig::halved: core/a.cpp core/b.cpp" ]]; then
    printf 'joined_names.sh does not see a name that two sources share\n\n'
    breaches=$((breaches + 1))
fi

echo "Files over 400 lines, for a second look:"
find core app tests -name '*.h' -o -name '*.cpp' | xargs wc -l | awk '$1 > 400 && $2 != "total"'
[ "$breaches" -eq 0 ] || exit 1
