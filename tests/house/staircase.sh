#!/usr/bin/env bash
# Checks every include of core and app against the staircase. Prints each that climbs, and each folder that has
# no step; fails when there is one. With a folder as argument, that tree instead of this one.
set -uo pipefail
table=$(cd "$(dirname "$0")" && pwd)/staircase.txt
cd "${1:-$(dirname "$0")/../..}"

find core app -name '*.h' -o -name '*.cpp' | sort | xargs awk -v table="$table" '
    function folderOf(path) { sub(/\/[^\/]*$/, "", path); return path }
    function breach(what) { print FILENAME ":" FNR ": " what; breaches++ }
    BEGIN {
        while ((getline row < table) > 0)
            if (row !~ /^#/ && split(row, field, " ") == 2)
                step[field[2]] = field[1]
    }
    FNR == 1 {
        here = folderOf(FILENAME)
        if (!(here in step))
            breach("the folder " here " has no step in tests/house/staircase.txt")
    }
    /^[ \t]*#[ \t]*include[ \t]*"/ {
        split($0, parts, "\"")
        there = folderOf(parts[2])
        if (there == here || !(here in step))
            next
        if (!(there in step))
            breach(parts[2] " stands in no folder that has a step")
        else if (step[there] >= step[here])
            breach(parts[2] " is on step " step[there] ", this file on " step[here])
    }
    END { exit breaches > 0 }'
