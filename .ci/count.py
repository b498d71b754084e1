#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""count.py LOG [NAME=STATUS …]: counts what meson's testlog.json tells, and steps run beside it.

Every TAP line counts. A program that crashed, timed out or kept no plan is a failure even where
all its lines say ok, and one that prints no TAP counts as one. The last line printed is
"N passed, N failed"; the exit status is 1 if anything failed or nothing ran.
"""

import itertools
import json
import pathlib
import re
import sys

FINE = ('OK', 'EXPECTEDFAIL', 'SKIP')


def tell_why(lines):
    """Prints the last of the remarks that stand right under a failed line."""
    remarks = list(itertools.takewhile(lambda line: line.lstrip().startswith('#'), lines))
    for remark in remarks[-12:]:
        print('  ', remark.strip())


def count_test(test):
    """(passed, failed, skipped) of one entry of the log."""
    passed = failed = skipped = 0
    lines = (test.get('stdout') or '').splitlines()
    for at, line in enumerate(lines):
        match = re.match(r'\s*(not )?ok\b(.*)', line)
        if not match:
            continue
        if re.search(r'#\s*(SKIP|TODO)', match.group(2), re.I):
            skipped += 1
        elif match.group(1):
            failed += 1
            print('FAILED', test['name'], line.strip())
            tell_why(lines[at + 1:])
        else:
            passed += 1
    if test['result'] not in FINE and not failed:
        failed = 1
        print('FAILED', test['name'], test['result'], test.get('returncode'))
    if not (passed or failed or skipped):
        passed, skipped = (0, 1) if test['result'] == 'SKIP' else (1, 0)
    return passed, failed, skipped


def main(log, steps):
    passed = failed = skipped = 0
    path = pathlib.Path(log)
    if path.exists():
        for line in path.read_text(encoding='utf-8').splitlines():
            p, f, s = count_test(json.loads(line))
            passed, failed, skipped = passed + p, failed + f, skipped + s
    else:
        print('FAILED no tests ran: there is no', log)
        failed += 1
    for step in steps:
        name, status = step.split('=')
        if status == '0':
            passed += 1
        else:
            failed += 1
            print('FAILED step', name, 'ended with', status)
    if skipped:
        print(f'{skipped} skipped')
    print(f'{passed} passed, {failed} failed')
    return 1 if failed or not passed else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1], sys.argv[2:]))
