#!/bin/sh
# SPDX-License-Identifier: ISC
# Sees to what building (demo), testing (test), the tests of web pages (web) and
# checking (ci) need: names what is missing and installs it with apt-get, as root
# or through sudo. A machine without apt-get gets the list. Quick when all is
# there.
#   sh tests/setup.sh demo|test|web|ci
set -u

want=${1:-test}
missing=
names=

# need PACKAGE WHAT COMMAND...: PACKAGE is missing unless COMMAND succeeds.
need() {
  package=$1 what=$2
  shift 2
  "$@" >/dev/null 2>&1 && return
  missing="$missing $package"
  names="$names
  $package: $what"
}

compiles() {
  printf '#include <stdio.h>\nint main(void) { return 0; }\n' |
    "${CC:-cc}" -fsyntax-only -x c -
}

validates() {
  sh tests/conformance/python.sh
}

has_face() {
  ls /usr/share/fonts/*/*/"$1".*
}

look() {
  missing= names=
  need gcc 'a C11 compiler' command -v "${CC:-cc}"
  need libc6-dev 'the C library headers' compiles
  need make 'GNU make' command -v make
  need pkg-config 'finds the libraries' command -v pkg-config
  need libpcre2-dev 'PCRE2, matches the phrase rules' pkg-config --exists libpcre2-8
  need libutf8proc-dev 'utf8proc, normalises Unicode' pkg-config --exists libutf8proc
  need libjansson-dev 'jansson, writes JSON' pkg-config --exists jansson
  need libsqlite3-dev 'SQLite, holds the archive' pkg-config --exists sqlite3
  need zlib1g-dev 'zlib, makes it small' pkg-config --exists zlib
  [ "$want" = demo ] && return
  need libcmocka-dev 'cmocka, runs the tests' pkg-config --exists cmocka
  need python3-jsonschema 'checks JSON against its schema' validates
  [ "$want" = test ] && return
  need nodejs 'runs the tests of pages' command -v node
  need npm 'fetches what they need' command -v npm
  need chromium 'the browser they look through' command -v chromium
  need fonts-urw-base35 'a face that the pages ask for' has_face P052-Roman
  [ "$want" = web ] && return
  need clang 'a second compiler' command -v clang
  need clang-format 'the layout of the sources' command -v clang-format
}

install() {
  "$@" apt-get install -y --no-install-recommends $missing </dev/null && return
  "$@" apt-get update </dev/null &&
    "$@" apt-get install -y --no-install-recommends $missing </dev/null
}

look
[ -z "$missing" ] && exit 0

echo "tamis needs what is not here (Debian's names):$names" >&2
if ! command -v apt-get >/dev/null 2>&1; then
  echo "There is no apt-get here: install these with your system's own means, then try again." >&2
  exit 1
fi
export DEBIAN_FRONTEND=noninteractive
if [ "$(id -u)" = 0 ]; then
  install env
elif command -v sudo >/dev/null 2>&1; then
  install sudo -E
else
  echo "Neither root nor sudo: ask for apt-get install$missing" >&2
  exit 1
fi || exit 1
look
[ -z "$missing" ] && exit 0
echo "tamis: still missing after apt-get:$names" >&2
exit 1
