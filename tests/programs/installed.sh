#!/usr/bin/env bash
# installed.sh BUILD CMAKE: what an install puts into a folder is whole and says of itself what a desktop asks. Checks of
# tools that are not there are left out.
set -uo pipefail
build=$1 cmake=$2
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
"$cmake" --install "$build" --prefix "$room" >/dev/null || exit 1
cd "$room"
id=org.rigband.Rigband
faults=0
fault() {
    echo "$1"
    faults=1
}
for file in bin/rigband bin/rigband-file bin/rigband-calc share/applications/$id.desktop share/metainfo/$id.metainfo.xml \
    share/mime/packages/$id.xml share/icons/hicolor/scalable/apps/$id.svg \
    share/icons/hicolor/{16x16,22x22,24x24,32x32,48x48,64x64,128x128,256x256}/apps/$id.png \
    share/man/man1/rigband{,-file,-calc}.1.gz share/doc/rigband/{copyright,changelog.gz,Apache-2.0.txt}; do
    [ -s "$file" ] || fault "$file is not installed"
done
[ "$(ls bin | wc -l)" -eq 3 ] || fault "other programs are installed: $(ls bin)"
./bin/rigband-calc --version >/dev/null || fault "an installed program does not run"

entry=share/applications/$id.desktop
for language in '' '\[de\]' '\[fr\]'; do
    for key in Comment Keywords; do
        grep -q "^$key$language=." "$entry" || fault "the desktop entry has no $key$language"
    done
done
grep -q 'MimeType=application/x-rigband;' "$entry" || fault "the desktop entry opens no .rigband file"
grep -q 'type="application/x-rigband"' share/mime/packages/$id.xml || fault "the type of file is not described"
! grep -rq '@' share/metainfo "$entry" || fault "a placeholder was left in"
if command -v desktop-file-validate >/dev/null; then
    complaints=$(desktop-file-validate "$entry")
    [ -z "$complaints" ] || fault "$complaints"
fi
if command -v appstreamcli >/dev/null; then
    complaints=$(appstreamcli validate --no-net share/metainfo/$id.metainfo.xml) || fault "$complaints"
fi
if command -v update-mime-database >/dev/null; then
    export XDG_DATA_HOME=$room/share
    update-mime-database share/mime || fault "the description of the type of file cannot be read"
    ./bin/rigband-file demo demo.rigband >/dev/null || fault "no demonstration could be written"
    cp demo.rigband demo.bin
    if command -v gio >/dev/null; then
        for file in demo.rigband demo.bin; do # by its name, and by what stands in it
            type=$(gio info -a standard::content-type "$file" | sed -n 's/.*content-type: //p')
            [ "$type" = application/x-rigband ] || fault "$file is taken for $type"
        done
    fi
fi
exit $faults
