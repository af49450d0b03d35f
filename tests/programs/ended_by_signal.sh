#!/usr/bin/env bash
# ended_by_signal.sh RIGBAND: the end of a session, of a terminal and Ctrl+C close the program as a press would: it ends
# well, and takes its copy of the demonstration away.
set -uo pipefail
program=$1
room=$(mktemp -d)
running=0
trap '[ $running -eq 0 ] || kill -9 $running 2>/dev/null; wait 2>/dev/null; rm -rf "$room"' EXIT
mkdir -m 700 "$room/run"
mkdir "$room/temporary"
export XDG_RUNTIME_DIR=$room/run XDG_CONFIG_HOME=$room/config TMPDIR=$room/temporary
copies() { find "$room/temporary" -name 'rigband-demo-*' | wc -l; }
for signal in TERM HUP INT; do
    "$program" --demo 2>/dev/null &
    running=$!
    for _ in $(seq 300); do # it hears signals once its window is shown
        caught=$((16#$(sed -n 's/^SigCgt:[[:space:]]*//p' /proc/$running/status)))
        [ $((caught >> 14 & 1)) -eq 1 ] && break # SIGTERM is 15
        read -rt 0.1 <> <(:)
    done
    [ "$(copies)" -eq 1 ] || { echo "no demonstration was opened"; exit 1; }
    kill -$signal $running
    wait $running
    ended=$?
    running=0
    [ $ended -eq 0 ] || { echo "$signal ended the program with $ended"; exit 1; }
    [ "$(copies)" -eq 0 ] || { echo "$signal left a copy of the demonstration"; exit 1; }
done
