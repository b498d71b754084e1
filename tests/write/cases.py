# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the Python tests of this folder share: cases reported in TAP, and the program run on parts."""

import copy
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import traceback

PROGRAM = os.path.abspath(sys.argv[1])
SOURCE = pathlib.Path(sys.argv[2])
EXAMPLES = sorted((SOURCE / 'data' / 'examples').glob('*.benchfold'))

# A tray of 200 × 120 × 40 outside, 1.5 mm thick.
TRAY = {
    'format': 'benchfold-part', 'version': 1, 'name': 'Tray',
    'metal': {'material': 'mild-steel', 'thickness': 1.5},
    'bend': {'way': 'bar', 'inside_radius': 1.5, 'allowance': {'rule': 'k-factor', 'k': 0.42}},
    'base': {'outline': [[0, 0], [200, 0], [200, 120], [0, 120]]},
    'flanges': [{'id': name, 'on': 'base', 'edge': edge, 'length': 40, 'angle': 90, 'turn': 'up'}
                for edge, name in enumerate(['front', 'right', 'back', 'left'])],
}


def tray(**changes):
    """The tray with members put in place of its own."""
    part = copy.deepcopy(TRAY)
    part.update(changes)
    return part


def run(*arguments, folder=None, environment=None, stdout=subprocess.PIPE):
    """The program run with no display."""
    env = {name: value for name, value in os.environ.items()
           if name not in ('DISPLAY', 'WAYLAND_DISPLAY')}
    env.update(environment or {})
    return subprocess.run([PROGRAM, *map(str, arguments)], cwd=folder, env=env, stdout=stdout,
                          stderr=subprocess.PIPE, stdin=subprocess.DEVNULL, timeout=120,
                          encoding='utf-8')


def put(folder, part, name='part.benchfold'):
    """Writes a part (or a text as it is) into the folder. Returns its path."""
    path = pathlib.Path(folder) / name
    path.write_text(part if isinstance(part, str) else json.dumps(part), encoding='utf-8')
    return path


def output(folder, part, *arguments):
    """Runs the program on a part that must do, and returns what it prints."""
    result = run(*arguments, put(folder, part), folder=folder)
    assert result.returncode == 0, f'exit {result.returncode}: {result.stderr}'
    return result.stdout


def near(found, wanted, within=1e-6):
    assert abs(found - wanted) <= within, f'{found} is not {wanted} within {within}'


def main(module):
    """Runs every function whose name begins with test_; each gets a folder of its own."""
    cases = [(name, case) for name, case in vars(module).items() if name.startswith('test_')]
    print(f'1..{len(cases)}')
    failed = False
    for number, (name, case) in enumerate(cases, 1):
        words = name[5:].replace('_', ' ')
        with tempfile.TemporaryDirectory(prefix='benchfold-') as folder:
            try:
                case(pathlib.Path(folder))
                print(f'ok {number} {words}', flush=True)
            except Exception:  # pylint: disable=broad-except
                failed = True
                print(f'not ok {number} {words}')
                for line in traceback.format_exc().splitlines():
                    print(f'# {line}', flush=True)
    sys.exit(1 if failed else 0)
