#!/bin/sh
# SPDX-License-Identifier: ISC
# Prints the first Python that has the jsonschema library; fails without one.
for python in python3 /usr/bin/python3; do
  if "$python" -c 'import jsonschema' 2>/dev/null; then
    echo "$python"
    exit 0
  fi
done
exit 1
