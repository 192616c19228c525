#!/bin/sh
# Installs Lapwright for one person, below ~/.local or $PREFIX; no administrator needed. Undo it with ./uninstall.sh.
set -eu
here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
prefix=${PREFIX:-$HOME/.local}
case $prefix in
    *[\"\\\`\$%\|\&]*) echo "install.sh: a menu entry can't name the folder $prefix; choose another one by PREFIX" >&2; exit 1 ;;
    /*) ;;
    *) echo "install.sh: PREFIX must begin with /" >&2; exit 1 ;;
esac
put() { mkdir -p "$(dirname "$prefix/$3")" && install -m "$1" "$here/$2" "$prefix/$3"; }
put 755 lapwright bin/lapwright
put 644 README.md share/doc/lapwright/README.md
put 644 copyright share/doc/lapwright/copyright
put 644 lapwright.1 share/man/man1/lapwright.1
put 644 lapwright.desktop share/applications/lapwright.desktop
put 644 lapwright.metainfo.xml share/metainfo/localhost.lapwright.Lapwright.metainfo.xml
put 644 lapwright.xml share/mime/packages/lapwright.xml
put 644 lapwright.svg share/icons/hicolor/scalable/apps/lapwright.svg
for size in 48 128 256; do put 644 "icon-$size.png" "share/icons/hicolor/${size}x$size/apps/lapwright.png"; done
sed "s|^Exec=lapwright|Exec=\"$prefix/bin/lapwright\"|" "$here/lapwright.desktop" >"$prefix/share/applications/lapwright.desktop"
"$here/refresh.sh" "$prefix"
echo "Lapwright is in $prefix/bin. Start it from the menu, or as $prefix/bin/lapwright."
