#!/bin/sh
# SPDX-License-Identifier: ISC
# Installs what tests/FOLDER/package.json names into BUILD/npm/FOLDER, by its
# lock file, and runs no install scripts. Quick when all is there. Prints the
# folder, which ends in a slash.
#   sh tests/npm.sh BUILD FOLDER
set -eu

from=tests/$2
mkdir -p "$1/npm/$2"
to=$(cd "$1/npm/$2" && pwd)
if ! cmp -s "$from/package-lock.json" "$to/installed"; then
  cp "$from/package.json" "$from/package-lock.json" "$to"
  (cd "$to" && npm ci --ignore-scripts --no-audit --no-fund --loglevel=error >&2)
  cp "$from/package-lock.json" "$to/installed"
fi
echo "$to/"
