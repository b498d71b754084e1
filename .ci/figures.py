#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Measures the code, a row a layer, and fails where a limit of the house is passed.

Lines of a function run from its name to its closing brace. Nesting counts the blocks within the
function's own; the formatter puts the brace of a block, and only that, on a line of its own.
"""

import json
import pathlib
import re
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
LAYERS = ['core', 'fold', 'make', 'paint', 'write', 'app']

MAX_FUNCTION_LINES = 60
MAX_ARGUMENTS = 5
MAX_NESTING = 3
MAX_FILE_LINES = 450

# Virtual functions whose arguments GTK lays down.
LAID_DOWN = re.compile(r'_measure$')


def lines_of(path):
    return path.read_text(encoding='utf-8').splitlines()


def nesting(body):
    """The deepest block within the function's own, given its lines."""
    depth = deepest = 0
    for line in body:
        if re.fullmatch(r'\{', line.strip()):
            depth += 1
            deepest = max(deepest, depth)
        elif re.match(r'\}(?!;|,|\))', line.strip()):
            depth = max(depth - 1, 0)
    return max(deepest - 1, 0)


def arguments(signature):
    inner = signature.strip()[1:-1].strip()
    if inner in ('', 'void'):
        return 0
    while re.search(r'\([^()]*\)', inner):
        inner = re.sub(r'\([^()]*\)', '', inner)
    return inner.count(',') + 1


def functions(paths):
    """(file, line, name, lines, arguments, nesting) of every function, by ctags."""
    if not paths:
        return []
    command = ['ctags', '-f', '-', '--output-format=json', '--languages=C', '--kinds-C=f',
               '--fields=+neS', '-I', 'G_GNUC_UNUSED', '-I', 'G_GNUC_WARN_UNUSED_RESULT']
    text = subprocess.run(command + [str(path) for path in paths], check=True,
                          capture_output=True, text=True).stdout
    found = []
    for tag in map(json.loads, text.splitlines()):
        # ctags takes an invocation such as G_DEFINE_QUARK (…) for a function that never ends.
        if 'end' not in tag or 'signature' not in tag:
            continue
        path = pathlib.Path(tag['path'])
        body = lines_of(path)[tag['line'] - 1:tag['end']]
        n_arguments = 0 if LAID_DOWN.search(tag['name']) else arguments(tag['signature'])
        found.append((path, tag['line'], tag['name'], len(body), n_arguments, nesting(body)))
    return found


def at(values, share):
    ordered = sorted(values)
    return ordered[min(int(share * len(ordered)), len(ordered) - 1)] if ordered else 0


def total_lines(paths):
    return sum(len(lines_of(path)) for path in paths)


def row(name, folder_src, folder_tests):
    code = sorted(folder_src.glob('*.c'))
    headers = sorted(folder_src.glob('*.h'))
    checks = [path for kind in ('*.c', '*.h', '*.py', '*.cc') for path in folder_tests.glob(kind)]
    found = functions(code)
    sizes = [len(lines_of(path)) for path in code]
    spans = [one[3] for one in found]
    source, test = total_lines(code + headers), total_lines(checks)
    print(f'{name:6} {len(code):5} {at(sizes, .5):5} {max(sizes, default=0):5}'
          f' {len(found):6} {at(spans, .5):5} {at(spans, .9):4} {max(spans, default=0):4}'
          f' {max((one[4] for one in found), default=0):5}'
          f' {max((one[5] for one in found), default=0):5}'
          f' {source:7} {test:7} {test / source if source else 0:6.2f}')
    return code, found, source, test


def main():
    print('        files  med   max    functions p90  max  args  nest  source   tests  ratio')
    faults, sources, tests = [], 0, 0
    for layer in LAYERS:
        if not (ROOT / 'src' / layer).is_dir():
            continue
        code, found, source, test = row(layer, ROOT / 'src' / layer, ROOT / 'tests' / layer)
        sources, tests = sources + source, tests + test
        for path in code:
            if len(lines_of(path)) > MAX_FILE_LINES:
                faults.append(f'{path}: {len(lines_of(path))} lines')
        for path, line, name, span, n_arguments, deep in found:
            place = f'{path.relative_to(ROOT)}:{line}: {name}'
            if span > MAX_FUNCTION_LINES:
                faults.append(f'{place}: {span} lines, at most {MAX_FUNCTION_LINES}')
            if n_arguments > MAX_ARGUMENTS:
                faults.append(f'{place}: {n_arguments} arguments, at most {MAX_ARGUMENTS}')
            if deep > MAX_NESTING:
                faults.append(f'{place}: nested {deep} deep, at most {MAX_NESTING}')
    print(f'all: {sources} lines of source, {tests} of tests, ratio {tests / max(sources, 1):.2f}')
    for fault in faults:
        print(fault)
    return 1 if faults else 0


if __name__ == '__main__':
    sys.exit(main())
