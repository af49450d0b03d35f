#!/usr/bin/env bash
# Makes the Debian package of what a user needs, and says where it lies.
set -euo pipefail
cd "$(dirname "$0")/.."
app/install_packages.sh dpkg-dev file gzip
app/build.sh release rig rigband-file rigband-calc
cpack -G DEB --config build/release/CPackConfig.cmake >build/release/cpack.log || {
    cat build/release/cpack.log >&2
    exit 1
}
ls build/release/package/*.deb
