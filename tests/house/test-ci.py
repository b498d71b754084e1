#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The meters of .ci, held against samples whose figures can be counted by eye."""

import contextlib
import importlib.util
import io
import pathlib
import re
import sys
import tempfile

ROOT = pathlib.Path(sys.argv[1])

SAMPLE = '''\
G_DEFINE_QUARK (bf-sample-error, bf_sample_error)

static void
flat (void)
{
  int list[] = { 1, 2, { 3 } };
}

int
deep (int a, const char *b, void (*c) (int, int), double d[2])
{
  for (;;)
    {
      if (a)
        {
          while (b)
            {
              a++;
            }
        }
      else
        {
          a--;
        }
    }
}
'''


def load(name):
    spec = importlib.util.spec_from_file_location(name, ROOT / '.ci' / f'{name}.py')
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def functions_are_measured():
    figures = load('figures')
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / 'sample.c'
        path.write_text(SAMPLE, encoding='utf-8')
        found = sorted(one[2:] for one in figures.functions([path]))
    return found == [('deep', 17, 4, 3), ('flat', 4, 0, 0)] or found


def shares_are_taken():
    figures = load('figures')
    return figures.at([4, 1, 3, 2], .5) == 3 and figures.at([7], .9) == 7 and figures.at([], .5) == 0


def outcomes_are_counted():
    count = load('count')
    rows = [
        # stdout, result, (passed, failed, skipped)
        ('1..2\nok 1 a\nok 2 b\n', 'OK', (2, 0, 0)),
        ('1..2\nok 1 a\nnot ok 2 b\n', 'FAIL', (1, 1, 0)),
        ('1..3\nok 1 a\n', 'ERROR', (1, 1, 0)),
        ('ok 1 a # SKIP no display\nnot ok 2 b # TODO\n', 'OK', (0, 0, 2)),
        ('# ok is only a word here\n    ok 1 - indented\n', 'OK', (1, 0, 0)),
        ('validated\n', 'OK', (1, 0, 0)),
        (None, 'TIMEOUT', (0, 1, 0)),
        ('', 'SKIP', (0, 0, 1)),
    ]
    with contextlib.redirect_stdout(io.StringIO()):
        got = [count.count_test({'name': 'x', 'stdout': out, 'result': result})
               for out, result, _ in rows]
    return got == [row[2] for row in rows] or got


def nothing_run_is_a_failure():
    count = load('count')
    with contextlib.redirect_stdout(io.StringIO()) as out:
        status = count.main('/nonexistent', [])
    return status == 1 and out.getvalue().splitlines()[-1] == '0 passed, 1 failed'


def readme_has_two_commands():
    """.ci/run takes the second; each stands alone on a line and in a block of its own."""
    text = (ROOT / 'README.md').read_text(encoding='utf-8')
    blocks = re.findall(r'```sh\n(\.ci/setup && [^\n]*)\n```', text)
    return len(blocks) == 2 and len(re.findall(r'^\.ci/setup && ', text, re.M)) == 2 \
        and '--demo' in blocks[0] and 'meson test' in blocks[1]


CHECKS = [functions_are_measured, shares_are_taken, outcomes_are_counted, nothing_run_is_a_failure,
          readme_has_two_commands]
print(f'1..{len(CHECKS)}')
results = [check() for check in CHECKS]
for number, (check, result) in enumerate(zip(CHECKS, results), 1):
    print(f'{"ok" if result is True else "not ok"} {number} {check.__name__.replace("_", " ")}')
    if result is not True:
        print(f'# got {result}')
sys.exit(0 if all(result is True for result in results) else 1)
