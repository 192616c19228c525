#!/bin/sh
# Tells the desktop of what came or went, as far as it has the tools.
set -eu
for work in "update-mime-database $1/share/mime" "update-desktop-database -q $1/share/applications" \
    "gtk-update-icon-cache -q -t -f $1/share/icons/hicolor"; do
    # shellcheck disable=SC2086 # the words of a command
    if command -v "${work%% *}" >/dev/null 2>&1; then $work || true; fi
done
