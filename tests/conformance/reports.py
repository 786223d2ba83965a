#!/usr/bin/env python3
# SPDX-License-Identifier: ISC
"""Validates what `tamis check` prints for programs.
*.sarif: by the JSON schema of OASIS SARIF 2.1.0 beside this file (see
sarif.txt), and by what a schema cannot say: a rule for every result, regions
that lie in the script and hold the words of their snippet.
*.json: the episodes and findings by src/write/draft.schema.json.
  python3 tests/conformance/reports.py FILE ...
Exit status: 0 all are as they should be, 1 a fault, 2 usage."""
import json
import os
import sys
import urllib.parse

import jsonschema

HERE = os.path.dirname(os.path.abspath(__file__))
DRAFT = os.path.join(HERE, "..", "..", "src", "write", "draft.schema.json")
SARIF = os.path.join(HERE, "sarif-2.1.0.schema.json")


def load(path):
    with open(path, encoding="utf-8") as f:
        return json.load(f)


def words_at(lines, region):
    """The text of a region that has columns."""
    first, last = region["startLine"] - 1, region["endLine"] - 1
    text = lines[first:last + 1]
    text[-1] = text[-1][:region["endColumn"] - 1]
    text[0] = text[0][region["startColumn"] - 1:]
    return "".join(text)


def region_faults(physical):
    path = urllib.parse.unquote(physical["artifactLocation"]["uri"])
    region = physical.get("region")
    if not region or "snippet" not in region:
        return
    with open(path, encoding="utf-8", errors="replace", newline="") as f:
        lines = f.read().splitlines(keepends=True) + [""]
    want = region["snippet"]["text"]
    got = words_at(lines, region)
    if got != want:
        yield f"{path}:{region['startLine']}: {got!r} is not {want!r}"


def sarif_faults(validator, log):
    yield from (f"{list(e.path)}: {e.message}" for e in validator.iter_errors(log))
    for run in log["runs"]:
        rules = [rule["id"] for rule in run["tool"]["driver"]["rules"]]
        if len(set(rules)) != len(rules):
            yield "a rule stands twice"
        for result in run["results"]:
            if result["ruleId"] not in rules:
                yield f"no rule {result['ruleId']}"
            places = result["locations"] + result.get("relatedLocations", [])
            for place in places:
                index = place["physicalLocation"]["artifactLocation"]["index"]
                uri = run["artifacts"][index]["location"]["uri"]
                if uri != place["physicalLocation"]["artifactLocation"]["uri"]:
                    yield f"artifact {index} is {uri}"
                yield from region_faults(place["physicalLocation"])


def report_schema():
    """An object of episodes, each part as the draft's schema has it."""
    draft = load(DRAFT)
    episode = {
        "type": "object",
        "required": ["path", "trouble", "episode", "diagnostics", "answers",
                     "answer_problems", "findings"],
        "additionalProperties": False,
        "properties": {
            "path": {"type": "string"},
            "trouble": {"type": "null"},
            "episode": draft["properties"]["episode"],
            "diagnostics": {"type": "array"},
            "answers": {"type": ["string", "null"]},
            "answer_problems": {"type": "array"},
            "findings": draft["properties"]["findings"],
        },
    }
    return {
        "$schema": draft["$schema"],
        "$defs": draft["$defs"],
        "required": ["tamis", "episodes"],
        "properties": {
            "tamis": {"const": 1},
            "episodes": {"type": "array", "items": episode},
        },
    }


def main(names):
    if not names:
        print(__doc__, file=sys.stderr)
        return 2
    sarif = jsonschema.Draft4Validator(load(SARIF))
    report = jsonschema.Draft202012Validator(report_schema())
    found = 0
    for name in names:
        if name.endswith(".sarif"):
            faults = sarif_faults(sarif, load(name))
        else:
            errors = report.iter_errors(load(name))
            faults = (f"{list(e.path)}: {e.message}" for e in errors)
        for fault in faults:
            print(f"{name}: {fault}", file=sys.stderr)
            found += 1
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
