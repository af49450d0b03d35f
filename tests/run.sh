#!/usr/bin/env bash
# Builds Rigband and runs every test without a screen: tests/run.sh [release|dev|sanitize]
set -euo pipefail
cd "$(dirname "$0")/.."
preset=${1:-release}
app/build.sh "$preset"
exec ctest --preset "$preset" --parallel "$(nproc)"
