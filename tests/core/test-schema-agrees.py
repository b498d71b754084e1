#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The schema and the reader against each other: test-schema-agrees.py DATA WRITE_PARTS JUDGE_PART.

Random parts are spoilt at random, one or two values each. What the reader takes the schema must
take; what the reader refuses the schema must refuse, but for what a schema cannot know: whether an
id is used twice, an edge or corner exists, flanges hang together.
"""
import copy
import glob
import json
import os
import random
import re
import subprocess
import sys
import tempfile

import jsonschema

SEED = 20240229
N_PARTS = 40
N_SPOILT = 1200

VALUES = [0, -1, 1, 2.5, 89, 90, 91, 180, 181, 1e5, 100001, -1e5, -100001, True, None, "", "abc",
          "base", "unknown", "tip", "round", "mm", [], {}, [0, 0], [[0, 0], [9, 0], [9, 9]], [-1],
          "square", "k-factor", "metric", "list", 1e-9]

# Faults of what members mean together.
BEYOND_SCHEMA = re.compile(
    r"expected \"base\" or a flange's id|expected a flange's id|expected two flanges, found|another flange is named|hangs on itself"
    r"|the base has \d+ edges|expected the number of an edge of the base \(0"
    r"|expected tip, start or end on a flange|there are \d+ corners|stands there twice")


def places(node, path=()):
    """The path to every value below a node."""
    items = node.items() if isinstance(node, dict) else enumerate(node)
    for key, value in list(items):
        yield path + (key,)
        if isinstance(value, (dict, list)):
            yield from places(value, path + (key,))


def spoil(rand, part):
    part = copy.deepcopy(part)
    for _ in range(rand.randint(1, 2)):
        path = rand.choice(list(places(part)))
        holder = part
        for step in path[:-1]:
            holder = holder[step]
        if rand.random() < 0.15:
            del holder[path[-1]]
        else:
            holder[path[-1]] = copy.deepcopy(rand.choice(VALUES))
    return part


def make_files(rand, write_parts, folder):
    subprocess.run([write_parts, folder, str(N_PARTS)], check=True)
    parts = []
    for path in sorted(glob.glob(os.path.join(folder, "*.benchfold"))):
        with open(path, encoding="utf-8") as file:
            parts.append(json.load(file))
    spoilt = [spoil(rand, rand.choice(parts)) for _ in range(N_SPOILT)]
    paths = []
    for number, part in enumerate(spoilt):
        paths.append(os.path.join(folder, f"spoilt-{number}.json"))
        with open(paths[-1], "w", encoding="utf-8") as file:
            json.dump(part, file)
    return spoilt, paths


def main():
    data, write_parts, judge_part = sys.argv[1:4]
    rand = random.Random(SEED)
    with open(os.path.join(data, "part.schema.json"), encoding="utf-8") as file:
        validator = jsonschema.Draft202012Validator(json.load(file))
    with tempfile.TemporaryDirectory() as folder:
        spoilt, paths = make_files(rand, write_parts, folder)
        verdicts = subprocess.run([judge_part] + paths, check=True, capture_output=True,
                                  text=True).stdout.splitlines()
    n_taken = n_refused = n_beyond = n_wrong = 0
    for part, verdict in zip(spoilt, verdicts, strict=True):
        valid = validator.is_valid(part)
        if verdict == "ok":
            n_taken += 1
            wrong = not valid
        elif BEYOND_SCHEMA.search(verdict):
            n_beyond += 1
            wrong = False
        else:
            n_refused += 1
            wrong = valid
        if wrong:
            n_wrong += 1
            why = [f"{e.json_path}: {e.message}" for e in validator.iter_errors(part)]
            print(f"# reader: {verdict}; schema: {why[:2]}")
    print(f"# {n_taken} taken, {n_refused} refused, {n_beyond} refused for what they mean")
    print(f"{'not ok' if n_wrong else 'ok'} 1 reader and schema agree")
    enough = min(n_taken, n_refused, 10 * n_beyond) > N_SPOILT // 10
    print(f"{'ok' if enough else 'not ok'} 2 some of each are tried")
    print("1..2")
    return n_wrong > 0 or not enough


if __name__ == "__main__":
    sys.exit(main())
