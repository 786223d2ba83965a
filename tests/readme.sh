#!/bin/sh
# SPDX-License-Identifier: ISC
# Keeps README.md true. Between "<!-- shown: COMMAND -->" and "<!-- /shown -->"
# it shows what COMMAND prints. The table of findings must be today's; other
# output that has changed is told of. Every tamis command in a block of
# sh must end with status 0 or 1. All run in BUILD/readme, beside examples/.
#   sh tests/readme.sh BUILD_FOLDER [renew]
set -u

PATH=$(cd "$1" && pwd):$PATH
top=$PWD
work=$1/readme
rm -rf "$work"
mkdir -p "$work"
ln -s "$top/examples" "$top/corpus" "$top/tests" "$work"
# What a command keeps, it keeps here.
XDG_DATA_HOME=$(cd "$work" && pwd)/data
export XDG_DATA_HOME
failed=0

# README.md as it would be today.
awk -v work="$work" '
  /^<!-- shown: .* -->$/ {
    command = $0
    sub(/^<!-- shown: /, "", command)
    sub(/ -->$/, "", command)
    print
    shown = 1
    next
  }
  shown == 1 {
    shown = 2
    if (/^```/)
      print
    gsub(/\047/, "\047\\\047\047", command)
    run = "cd " work " && sh -c \047" command "\047 2>&1"
    blank = ""
    while ((run | getline line) > 0)
      if (line == "")
        blank = blank "\n"
      else {
        print blank line
        blank = ""
      }
    close(run)
  }
  /^<!-- \/shown -->$/ {
    if (fence)
      print "```"
    shown = fence = 0
  }
  shown {
    fence = fence || /^```/
    next
  }
  {print}' README.md >"$work/README.md"

if [ "${2:-}" = renew ]; then
  cp "$work/README.md" README.md
  exit 0
fi

if ! cmp -s README.md "$work/README.md"; then
  diff README.md "$work/README.md" >"$work/diff"
  if grep -q '^[<>] | `' "$work/diff"; then
    grep '^[<>] | `' "$work/diff" >&2
    echo "readme: the table of findings in README.md is not today's: make readme" >&2
    failed=1
  else
    echo "readme: some output in README.md has changed since: make readme"
  fi
fi

awk '/^```/ {inside = /^```sh$/; next} inside && /^tamis /' README.md >"$work/commands"
[ -s "$work/commands" ] || { echo "readme: README.md shows no tamis command" >&2; exit 1; }

while read -r line; do
  (cd "$work" && sh -c "$line") </dev/null >"$work/out" 2>&1
  status=$?
  [ "$status" -le 1 ] && continue
  echo "readme: status $status: $line" >&2
  cat "$work/out" >&2
  failed=1
done <"$work/commands"
[ "$failed" = 0 ] && echo "readme: $(wc -l <"$work/commands") commands run"
exit "$failed"
