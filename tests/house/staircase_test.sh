#!/usr/bin/env bash
# The check of the staircase can fail: each kind of breach is put into a small tree and has to be found.
set -euo pipefail
house=$(cd "$(dirname "$0")" && pwd)
check=$house/staircase.sh
. "$house/breaches.sh"

# FILE includes what is named.
grow() { printf '#include "%s"\n' "$2" >"$tree/$1"; }

expect nothing "one step down" core/review/a.cpp core/judgement/judge.h
expect nothing "many steps down" app/window/a.cpp core/measure/gap.h
expect nothing "its own folder" app/wording/a.cpp app/wording/b.h
expect found "the core reaching up" core/review/a.cpp app/theme/theme.h
expect found "wording that includes a picture" app/wording/a.h app/pictures/trend.h
expect found "a baseline that judges" core/baseline/a.cpp core/judgement/judge.h
expect found "one page that includes another" app/pages/trends/a.cpp app/pages/annual/annual_view.h
expect found "a neighbour on the same step" core/store/a.cpp core/views/trend_series.h
expect found "a folder that is not in the table" core/attic/a.cpp core/clock.h
expect found "something from a folder that is not in the table" core/review/a.cpp core/attic/b.h
expect found "a header that names no folder" core/review/a.cpp judge.h
expect found "the program that includes a test" app/window/a.cpp tests/support/must.h
exit $missed
