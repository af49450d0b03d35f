#!/usr/bin/env bash
# second_start.sh RIGBAND RIGBAND_FILE: a second start with a file that is open ends at once, one with another file does not,
# and neither does one after the first window was killed.
set -uo pipefail
program=$1
room=$(mktemp -d)
running=()
trap 'kill -9 "${running[@]}" 2>/dev/null; wait 2>/dev/null; rm -rf "$room"' EXIT
mkdir -m 700 "$room/run"
export XDG_RUNTIME_DIR=$room/run XDG_CONFIG_HOME=$room/config TMPDIR=$room
"$2" demo "$room/one.rigband" >/dev/null || exit 1
cp "$room/one.rigband" "$room/two.rigband"
heard() { find "$room/run" -name '*.window' | wc -l; }
until_heard() { # COUNT: windows that can be called
    for _ in $(seq 200); do
        [ "$(heard)" -eq "$1" ] && return
        read -rt 0.1 <> <(:)
    done
    echo "$(heard) windows can be called, not $1"
    exit 1
}
begin() { # FILE
    "$program" "$1" 2>/dev/null &
    running+=($!)
}

begin "$room/one.rigband"
until_heard 1
timeout 20 "$program" "$room/one.rigband" || { echo "the second start with the same file ended with $?"; exit 1; }
begin "$room/two.rigband"
until_heard 2
kill -9 "${running[0]}"
wait "${running[0]}" 2>/dev/null
timeout 3 "$program" "$room/one.rigband" 2>/dev/null
[ $? -eq 124 ] || { echo "a start after the window was killed opened none"; exit 1; }
