#!/usr/bin/env bash
# Gives what comes from outside to libFuzzer, both sanitizers watching: tests/fuzz.sh [quick | SECONDS [TARGET...]]
# Each target begins with tests/fuzz/corpus/TARGET and runs so many seconds, 60 unless told, as many of them at once as
# there are cores. What brings one down is kept in build/PRESET/found; mended, it belongs into the corpus. `quick` is for
# every change: 15 seconds each, compiled without optimising, which takes a third of the time. A target that did fewer
# runs than it is known to do at the least fails too: it tried nothing.
set -euo pipefail
cd "$(dirname "$0")/.."
preset=fuzz seconds=60
case ${1:-} in
    quick) preset=fuzz-quick seconds=15 ;;
    ?*) seconds=$1 ;;
esac
shift || true
[ $# -gt 0 ] || set -- opener tables calculator typed_gap typed_day size_list
# clang 14 cannot read the ranges of libstdc++ 12.
app/install_packages.sh g++ cmake ninja-build qt6-base-dev libsqlite3-dev libboost-math-dev nlohmann-json3-dev \
    libgtest-dev clang-16 libclang-rt-16-dev
begun=$SECONDS
cmake --preset "$preset" >/dev/null
cmake --build --preset "$preset"
echo "Fuzzing: built in $((SECONDS - begun)) s; $seconds s for each target"
found=build/$preset/found
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

# Runs in ten seconds that a slow core beside another busy one still does, with room to spare. A whole file is opened,
# read and salvaged some ten times a second: each opening reads the layout of sixty tables anew.
fewest_runs() {
    case $1 in
        opener) echo 15 ;;
        tables) echo 30 ;;
        calculator) echo 100 ;;
        *) echo 5000 ;;
    esac
}

fuzz() {
    local target=$1 log=$found/$1.log grown status=0
    grown=$(mktemp -d)
    # No leak is looked for after each run, and few of the freed bytes are held back: both cost more than the run.
    ASAN_OPTIONS=malloc_context_size=4:quarantine_size_mb=16 \
        build/"$preset"/bin/fuzz_"$target" -max_total_time="$seconds" -max_len="$(most_bytes "$target")" \
        -rss_limit_mb=2048 -timeout=60 -print_final_stats=1 -artifact_prefix="$found/$target-" \
        "$grown" "tests/fuzz/corpus/$target" >"$log" 2>&1 || status=$?
    rm -rf "$grown"
    if [ "$status" -ne 0 ]; then
        tail -n 60 "$log"
        echo "$target: found something; the bytes that do it are in $found"
        return 1
    fi
    awk -v target="$target" -v fewest="$(($(fewest_runs "$target") * seconds / 10))" '
        /stat::number_of_executed_units/ { runs = $2 }
        /stat::peak_rss_mb/ { peak = $2 }
        END {
            printf "%-12s %9d runs, %5d MB at the most\n", target, runs, peak
            if (runs < fewest) {
                printf "%s: fewer runs than %d, so it tried nothing\n", target, fewest
                exit 1
            }
        }' "$log"
}
export -f fuzz most_bytes fewest_runs
export seconds found preset
printf '%s\0' "$@" | xargs -0 -n 1 -P "$(nproc)" bash -c 'fuzz "$1"' fuzz
