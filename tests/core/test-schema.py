#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""data/part.schema.json against files: test-schema.py DATA WRITE_PARTS.

Every example and every file that the program writes must validate; what the reader refuses by
type, range or word the schema must refuse too.
"""
import copy
import glob
import json
import os
import subprocess
import sys
import tempfile

import jsonschema

N_RANDOM = 150

# Where a valid file is spoilt: the path to a member, and what is put there.
SPOILT = [
    (["format"], "other"),
    (["version"], 2),
    (["version"], "1"),
    (["name"], 5),
    (["quantity"], 0),
    (["quantity"], 1.5),
    (["quantity"], "2"),
    (["quantity"], 10000),
    (["units"], "cm"),
    (["measure"], None),
    (["metal"], []),
    (["metal", "thickness"], "abc"),
    (["metal", "thickness"], 0),
    (["metal", "thickness"], 100001),
    (["metal", "grain"], "north"),
    (["metal", "material"], ""),
    (["cutting", "by"], "saw"),
    (["cutting", "kerf"], -1),
    (["cutting", "drills"], "list"),
    (["cutting", "drills"], [1, 0]),
    (["joining"], "glued"),
    (["bend", "way"], "roll"),
    (["bend", "inside_radius"], -1),
    (["bend", "allowance"], {"rule": "magic"}),
    (["bend", "allowance"], {"k": 1.5}),
    (["bend", "allowance"], {"k_error": -0.1}),
    (["bend", "corrected"], 31),
    (["bend", "allowance"], {"group": "firm"}),
    (["bend", "slots"], {"slot": 0}),
    (["bend", "score"], 0.6),
    (["bend", "hand"], {"limit": 0}),
    (["base", "outline"], [[0, 0], [1, 0]]),
    (["base", "outline"], [[0, 0], [1, 0], [1]]),
    (["base", "outline"], [[0, 0], [1, 0], [1, 1e6]]),
    (["base", "pinned"], 1),
    (["base", "pinned"], [-1]),
    (["base", "pinned"], ["front"]),
    (["flanges", 0, "pinned"], 1),
    (["openings"], [{"shape": "round", "at": [1, 1], "diameter": 2, "pinned": "yes"}]),
    (["base", "corners"], [{"finish": "round"}]),
    (["base", "corners"], [{"at": -1}]),
    (["base", "corners"], [{"at": 0, "finish": "fillet"}]),
    (["flanges", 0, "id"], ""),
    (["flanges", 0, "id"], "base"),
    (["flanges", 0, "edge"], "side"),
    (["flanges", 0, "edge"], -1),
    (["flanges", 0, "edge"], 1.5),
    (["flanges", 0, "length"], "abc"),
    (["flanges", 0, "length"], 0),
    (["flanges", 0, "angle"], 181),
    (["flanges", 0, "angle"], 0.5),
    (["flanges", 0, "turn"], "left"),
    (["flanges", 0, "start"], -1),
    (["flanges", 0, "start_taper"], 90),
    (["flanges", 0, "end_relief"], "slit"),
    (["flanges", 0, "bend"], {"way": "roll"}),
    (["corners"], [{"at": 0, "join": "butt"}]),
    (["corners"], [{"at": 0, "gap": -1}]),
    (["corners"], [{"at": 0, "relief": {"shape": "bone"}}]),
    (["corners"], [{"at": 0, "relief": {"diameter": 0}}]),
    (["openings"], [{"shape": "star", "at": [1, 1]}]),
    (["openings"], [{"shape": "round", "at": [1, 1]}]),
    (["openings"], [{"shape": "slot", "at": [1, 1], "length": 3}]),
    (["openings"], [{"shape": "keyhole", "at": [1, 1], "length": 3, "width": 1}]),
    (["openings"], [{"shape": "outline", "points": [[1, 1]]}]),
    (["made"], []),
    (["made"], {"blank": 1}),
    (["made"], {"steps": [1]}),
    (["notes"], None),
]

MISSING = [["format"], ["version"], ["metal"], ["metal", "thickness"], ["base"],
           ["base", "outline"], ["flanges", 0, "id"], ["flanges", 0, "edge"],
           ["flanges", 0, "length"]]


class Report:
    """Counts and prints results in the form that meson reads (TAP)."""

    def __init__(self):
        self.count = 0
        self.failed = 0

    def line(self, good, what):
        self.count += 1
        self.failed += not good
        print(f"{'ok' if good else 'not ok'} {self.count} {what}", flush=True)


def holder(part, path):
    for step in path[:-1]:
        part = part[step]
    return part


def check_files(report, validator, paths, what):
    for path in paths:
        with open(path, encoding="utf-8") as file:
            errors = list(validator.iter_errors(json.load(file)))
        for error in errors[:3]:
            print(f"# {path}: {error.json_path}: {error.message}")
        if errors:
            report.line(False, f"{what} {os.path.basename(path)}")
    report.line(len(paths) > 0, f"{what}: {len(paths)} files")


def check_spoilt(report, validator, valid):
    for path, value in SPOILT:
        part = copy.deepcopy(valid)
        holder(part, path)[path[-1]] = value
        report.line(not validator.is_valid(part), f"refuses {path} = {value!r}")
    for path in MISSING:
        part = copy.deepcopy(valid)
        del holder(part, path)[path[-1]]
        report.line(not validator.is_valid(part), f"refuses a file without {path}")


def check_unknown(report, validator, valid):
    part = copy.deepcopy(valid)
    for path in [[], ["metal"], ["cutting"], ["bend"], ["base"], ["flanges", 0]]:
        holder(part, path + ["x"])["x"] = {"anything": [1, None]}
    report.line(validator.is_valid(part), "takes members that it does not know")


def main():
    data, write_parts = sys.argv[1:3]
    report = Report()
    with open(os.path.join(data, "part.schema.json"), encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    examples = sorted(glob.glob(os.path.join(data, "examples", "*.benchfold")))
    check_files(report, validator, examples, "examples")
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([write_parts, folder, str(N_RANDOM)], check=True)
        written = sorted(glob.glob(os.path.join(folder, "*.benchfold")))
        report.line(len(written) == N_RANDOM, "all parts are written")
        check_files(report, validator, written, "written")
    with open(examples[0], encoding="utf-8") as file:
        valid = json.load(file)
    check_spoilt(report, validator, valid)
    check_unknown(report, validator, valid)
    print(f"1..{report.count}")
    return report.failed > 0


if __name__ == "__main__":
    sys.exit(main())
