#!/usr/bin/env bash
# Installs what a build needs and builds one preset: app/build.sh [release|dev|sanitize|coverage|tidy] [more packages...]
set -euo pipefail
cd "$(dirname "$0")/.."
preset=${1:-release}
shift || true
app/install_packages.sh g++ cmake ninja-build qt6-base-dev libqt6sql6-sqlite \
    libsqlite3-dev libboost-math-dev nlohmann-json3-dev libgtest-dev "$@"
[ -f "build/$preset/build.ninja" ] || cmake --preset "$preset" >/dev/null
cmake --build --preset "$preset"
