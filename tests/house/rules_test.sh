#!/usr/bin/env bash
# The rules of the house can fail: each breach is put into a small tree and has to be found.
set -euo pipefail
house=$(cd "$(dirname "$0")" && pwd)
check=$house/rules.sh
. "$house/breaches.sh"

grow() {
    mkdir -p "$tree"/{core/review,app/{blocks,pages,pictures,report,theme,widgets,window,wording},tests,docs}
    cp "$house/../../docs/terms.md" "$tree/docs"
    touch "$tree"/{core,app,tests}/CMakeLists.txt
    printf '%s\n' "$2" >"$tree/$1"
}

expect nothing "a judgement made anew" core/review/a.cpp 'return judgeIn(history, reading).verdict;'
expect nothing "what was shown told on paper" app/report/record_couplings.cpp 'if (one.shown->judgement.verdict != now)'
expect found "what was shown taken for a judgement" core/review/a.cpp 'return kept.shown->judgement;'
expect found "the same through an optional" app/pages/trends/a.cpp 'const Shown& shown = *kept.shown;'
expect found "Qt in the core" core/review/a.cpp '#include <QString>'
expect found "an include that climbs" core/review/a.cpp '#include "app/theme/theme.h"'
expect found "a sentence in the core" core/review/a.cpp 'return tr("inside");'
expect found "a colour on a page" app/pages/setup/a.cpp 'QColor ink{"#102030"};'
exit $missed
