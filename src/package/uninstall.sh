#!/bin/sh
# Takes away what install.sh put below ~/.local or $PREFIX. Jobs, preferences and vehicles of your own stay.
set -eu
here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
prefix=${PREFIX:-$HOME/.local}
rm -f "$prefix/bin/lapwright" "$prefix/share/doc/lapwright/README.md" "$prefix/share/doc/lapwright/copyright" \
    "$prefix/share/man/man1/lapwright.1" "$prefix/share/applications/lapwright.desktop" \
    "$prefix/share/metainfo/localhost.lapwright.Lapwright.metainfo.xml" "$prefix/share/mime/packages/lapwright.xml" \
    "$prefix/share/icons/hicolor/scalable/apps/lapwright.svg"
for size in 48 128 256; do rm -f "$prefix/share/icons/hicolor/${size}x$size/apps/lapwright.png"; done
if [ -d "$prefix/share/doc/lapwright" ]; then rmdir "$prefix/share/doc/lapwright"; fi
"$here/refresh.sh" "$prefix"
