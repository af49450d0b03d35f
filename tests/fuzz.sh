#!/usr/bin/env bash
# Gives what comes from outside to libFuzzer, both sanitizers watching: tests/fuzz.sh [SECONDS [TARGET...]]
# Each target begins with tests/fuzz/corpus/TARGET and runs so many seconds, 60 unless told, as many of them at once as
# there are cores. What brings one down is kept in build/fuzz/found; mended, it belongs into the corpus.
set -euo pipefail
cd "$(dirname "$0")/.."
seconds=${1:-60}
shift || true
[ $# -gt 0 ] || set -- tables calculator typed_gap typed_day size_list opener
# clang 14 cannot read the ranges of libstdc++ 12.
app/install_packages.sh g++ cmake ninja-build qt6-base-dev libsqlite3-dev libboost-math-dev nlohmann-json3-dev \
    libgtest-dev clang-16 libclang-rt-16-dev
cmake --preset fuzz >/dev/null
cmake --build --preset fuzz
found=build/fuzz/found
mkdir -p "$found"

# The most bytes that are worth giving: a file has pages, a figure is short.
most_bytes() {
    case $1 in
        opener) echo 200000 ;;
        typed_*) echo 64 ;;
        size_list) echo 256 ;;
        *) echo 8192 ;;
    esac
}

fuzz() {
    local target=$1 log=$found/$1.log grown status=0
    grown=$(mktemp -d)
    build/fuzz/bin/fuzz_"$target" -max_total_time="$seconds" -max_len="$(most_bytes "$target")" \
        -rss_limit_mb=2048 -timeout=60 -print_final_stats=1 -artifact_prefix="$found/$target-" \
        "$grown" "tests/fuzz/corpus/$target" >"$log" 2>&1 || status=$?
    rm -rf "$grown"
    if [ "$status" -ne 0 ]; then
        tail -n 60 "$log"
        echo "$target: found something; the bytes that do it are in $found"
        return 1
    fi
    awk -v target="$target" '
        /stat::number_of_executed_units/ { runs = $2 }
        /stat::peak_rss_mb/ { peak = $2 }
        END { printf "%-12s %9d runs, %5d MB at the most\n", target, runs, peak }' "$log"
}
export -f fuzz most_bytes
export seconds found
printf '%s\0' "$@" | xargs -0 -n 1 -P "$(nproc)" bash -c 'fuzz "$1"' fuzz
