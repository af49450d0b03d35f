#!/usr/bin/env bash
# man_page.sh PROGRAM PAGE: every option that --help lists stands in the manual page, and the other way round; the page
# has the sections a reader looks for, and nothing that the formatter complains about.
set -uo pipefail
program=$1 page=$2
options() { grep -oE -e '--[a-z][a-z0-9-]*' | sort -u; }

faults=0
told=$("$program" --help | options) || exit 1
[ -n "$told" ] || { echo "$program --help lists no option"; exit 1; }
if ! different=$(diff <(echo "$told") <(sed 's/\\-/-/g' "$page" | options)); then
    printf 'Only in --help (<), only in %s (>):\n%s\n' "$(basename "$page")" "$(grep '^[<>]' <<<"$different")"
    faults=1
fi
for section in NAME SYNOPSIS DESCRIPTION OPTIONS 'EXIT STATUS' FILES; do
    grep -qx "\.SH $section" "$page" || { echo "$(basename "$page") has no section $section"; faults=1; }
done
if command -v groff >/dev/null; then
    complaints=$(groff -man -Tutf8 -ww "$page" 2>&1 >/dev/null)
    [ -z "$complaints" ] || { echo "$complaints"; faults=1; }
fi
exit $faults
