#!/usr/bin/env bash
# Builds Rigband and opens it on a fresh copy of the demonstration file, or on what is named: app/run.sh FILE.rigband
set -euo pipefail
here=$(cd "$(dirname "$0")/.." && pwd)
"$here/app/build.sh" release rig
[ $# -gt 0 ] || set -- --demo
exec "$here/build/release/bin/rigband" "$@"
