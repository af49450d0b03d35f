#!/usr/bin/env bash
# Builds Rigband and runs its tests without a screen: tests/run.sh [release|dev|sanitize [PROGRAM...]]
# PROGRAM: core, store, page and so on, as the targets are named without _tests; without any, all of them.
set -euo pipefail
cd "$(dirname "$0")/.."
preset=${1:-release}
shift || true
app/build.sh "$preset" "${@/%/_tests}"
# What a test saves is flushed to the disk as in life, and waiting for the disk is most of what a test does.
readonly memory=/dev/shm wanted_kib=524288
if [ -w "$memory" ] && [ "$(df --output=avail "$memory" | tail -1)" -ge "$wanted_kib" ]; then
    TMPDIR=$(mktemp -d "$memory/rigband-tests.XXXXXX")
    chmod 755 "$TMPDIR" # some tests step down to another user
    export TMPDIR
    trap 'rm -rf "$TMPDIR"' EXIT
fi
programs=$(IFS='|'; echo "$*")
ctest --preset "$preset" --parallel "$(nproc)" ${programs:+--label-regex "^($programs)_tests\$"}
