#!/usr/bin/env bash
# tells_of_itself.sh PROGRAM: it explains itself, says which version it is, and refuses an option that it does not know
# with a sentence and status 2, before it writes anything.
set -uo pipefail
program=$1
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
cd "$room"
mkdir here
faults=0
fault() {
    printf '%s: %s\n' "$(basename "$program")" "$1"
    sed 's/^/    /' out err
    faults=$((faults + 1))
}
ask() { # its status
    (cd here && "$program" "$@" >../out 2>../err </dev/null)
    echo $?
}

for option in --help -h; do
    [ "$(ask $option)" -eq 0 ] && [ ! -s err ] || fault "$option ends badly or complains"
    grep -q -e '--version' out || fault "$option does not name --version"
    grep -q 'Ends with 0' out || fault "$option does not tell how it ends"
done
for option in --version -v; do
    [ "$(ask $option)" -eq 0 ] && [ ! -s err ] || fault "$option ends badly or complains"
    grep -qE '^(Rigband|rigband-[a-z]+) [0-9]+\.[0-9]+\.[0-9]+$' out || fault "$option tells no version"
done
refuses() {
    local status
    status=$(ask "$@")
    [ "$status" -eq 2 ] || fault "$* ends with $status"
    [ ! -s out ] || fault "$* writes to standard output"
    grep -q 'no option.*nonsense' err || fault "$* is refused without naming the option"
}
refuses --nonsense
refuses somewhere --nonsense
[ -z "$(ls -A here)" ] || fault "it wrote something: $(ls -A here)"
[ "$faults" -eq 0 ]
