#!/usr/bin/env bash
# Sources of one target are compiled joined, so what one of them names at the top of an anonymous namespace no other may
# name again. Prints each name given twice and fails when there is one: joined_names.sh [ROOT]
set -euo pipefail
cd "${1:-$(dirname "$0")/../..}"

# "TARGET SOURCE" for every source listed, from the calls that make targets.
sources() {
    local room
    for room in core app tests; do
        awk -v room="$room" '
            { sub(/#.*/, "") }
            match($0, /(add_library|add_executable|rig_test)\([A-Za-z_-]+/) {
                target = substr($0, RSTART, RLENGTH)
                sub(/.*\(/, "", target)
            }
            target != "" {
                for (i = 1; i <= NF; i++)
                    if ($i ~ /\.cpp\)?$/) { one = $i; sub(/\)$/, "", one); print target, room "/" one }
            }
            /\)[[:space:]]*$/ { target = "" }' "$room/CMakeLists.txt"
    done
}

# "NAMESPACE::NAME SOURCE" of what stands at the left margin inside `namespace {`, which is where the format puts it.
names() {
    xargs awk '
        FNR == 1 { inside = 0; outer = "" }
        /^namespace [a-z:]+ \{/ { outer = $2 }
        /^namespace \{/ { inside = 1; next }
        /^\} \/\/ namespace$/ { inside = 0; next }
        !inside || !/^[A-Za-z_]/ || /^(TEST|INSTANTIATE_|namespace |public:|protected:|private:)/ { next }
        {
            line = $0
            sub(/^template <[^()]*> /, "", line)
            if (line ~ /^template / || (line ~ /^using / && line !~ /=/)) next
            if (!sub(/^(struct|enum class|class|enum|using) /, "", line)) {
                sub(/[({=;[].*/, "", line)
                sub(/ +$/, "", line)
                sub(/.*[ &*]/, "", line)
            }
            sub(/[^A-Za-z0-9_].*/, "", line)
            if (line != "" && !(FILENAME in seen && index(seen[FILENAME], " " line " "))) {
                seen[FILENAME] = seen[FILENAME] " " line " "
                print outer "::" line, FILENAME
            }
        }'
}

listed=$(sources)
twice=$(awk '
    NR == FNR { targets[$2] = targets[$2] " " $1; next }
    {
        many = split(targets[$2], each, " ")
        for (i = 1; i <= many; i++) {
            one = each[i] " " $1
            count[one]++
            where[one] = where[one] " " $2
        }
    }
    END { for (one in count) if (count[one] > 1) print one ":" where[one] }' \
    <(echo "$listed") <(echo "$listed" | cut -d' ' -f2 | sort -u | names) | sort)
[ -z "$twice" ] && exit 0
printf 'A name given twice in sources that are compiled joined:\n%s\n' "$twice"
exit 1
