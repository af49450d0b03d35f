#!/usr/bin/env bash
# Installs what a build needs and builds: app/build.sh [PRESET [TARGET...]]
# Without targets everything is built, and what its tests need is installed too.
set -euo pipefail
cd "$(dirname "$0")/.."
preset=${1:-release}
shift || true
packages=(g++ cmake ninja-build qt6-base-dev libsqlite3-dev libboost-math-dev nlohmann-json3-dev qt6-l10n-tools
    libgtest-dev)
[ $# -gt 0 ] || packages+=(poppler-utils python3) # pdftotext reads what was printed, python3 recomputes a chain
app/install_packages.sh "${packages[@]}"
cmake --preset "$preset" >/dev/null
cmake --build --preset "$preset" ${1:+--target "$@"}
