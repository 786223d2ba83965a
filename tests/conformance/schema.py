#!/usr/bin/env python3
# SPDX-License-Identifier: ISC
"""Validates drafts in JSON: by src/write/draft.schema.json, by the keys it
names (a key of tamis's own that it leaves out is a fault), and by what a
schema cannot say: order of bounds and spans, indexes in range.
  python3 tests/conformance/schema.py FILE.json ...     (- is standard input)
Exit status: 0 all are as they should be, 1 a fault, 2 usage."""
import json
import os
import sys

import jsonschema

HERE = os.path.dirname(os.path.abspath(__file__))
SCHEMA = os.path.join(HERE, "..", "..", "src", "write", "draft.schema.json")


def close(schema):
    """Forbids the keys that the schema does not name."""
    if isinstance(schema, dict):
        if "properties" in schema:
            schema["additionalProperties"] = False
        for value in schema.values():
            close(value)
    elif isinstance(schema, list):
        for value in schema:
            close(value)
    return schema


def order_faults(node, path):
    """Bounds and spans the wrong way round, anywhere."""
    if isinstance(node, list):
        for i, value in enumerate(node):
            yield from order_faults(value, f"{path}[{i}]")
        return
    if not isinstance(node, dict):
        return
    for low, high in (("min", "max"), ("min_s", "max_s"), ("start_s", "end_s")):
        a, b = node.get(low), node.get(high)
        if low != "start_s" and (low in node) and (a is None) != (b is None):
            yield f"{path}: one of {low} and {high} is null"
        if a is not None and b is not None and a > b:
            yield f"{path}: {low} {a} is over {high} {b}"
    span = node.get("span")
    if span and span[0] > span[1]:
        yield f"{path}.span: ends before it begins"
    for key, value in node.items():
        yield from order_faults(value, f"{path}.{key}")


def index_faults(draft):
    """Indexes that point at nothing."""
    dishes = draft["dishes"]
    for d, dish in enumerate(dishes):
        if dish["parts"][0]["name"] != "":
            yield f"$.dishes[{d}].parts[0]: the dish itself has a name"
        for p, part in enumerate(dish["parts"]):
            for s, step in enumerate(part["steps"]):
                if any(u >= len(part["ingredients"]) for u in step["uses"]):
                    yield f"$.dishes[{d}].parts[{p}].steps[{s}].uses: out of range"
    for i, finding in enumerate(draft["findings"]):
        at = dishes
        for key, inner in (("dish", "parts"), ("part", "steps"), ("step", None)):
            index = finding[key]
            if index is None:
                break
            if index >= len(at):
                yield f"$.findings[{i}].{key}: {index} is out of range"
                break
            at = at[index][inner] if inner else at


def faults(validator, draft):
    schema = [f"{e.json_path}: {e.message}" for e in validator.iter_errors(draft)]
    return schema or list(order_faults(draft, "$")) + list(index_faults(draft))


def main(names):
    if not names:
        print(__doc__, file=sys.stderr)
        return 2
    with open(SCHEMA, encoding="utf-8") as f:
        schema = json.load(f)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(close(schema))
    found = 0
    for name in names:
        try:
            with sys.stdin.buffer if name == "-" else open(name, "rb") as f:
                draft = json.loads(f.read().decode("utf-8"))
        except (OSError, ValueError) as e:
            print(f"{name}: {e}", file=sys.stderr)
            found += 1
            continue
        for fault in faults(validator, draft):
            print(f"{name}: {fault}", file=sys.stderr)
            found += 1
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
