#!/bin/sh
# Tells the desktop of what came or went below a folder, as far as it has the tools.
set -eu
try() {
    if command -v "$1" >/dev/null 2>&1 && [ -d "$folder" ]; then "$@" "$folder" || true; fi
}
folder=$1/share/mime try update-mime-database
folder=$1/share/applications try update-desktop-database -q
folder=$1/share/icons/hicolor try gtk-update-icon-cache -q -t -f
