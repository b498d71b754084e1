#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""bench-start.py PROBE BARE PROGRAM PART [ROUNDS]: time to the first frame and peak memory, of the
program with nothing and with a part, against an empty window of GTK 4. On a busy machine the processor's time says more.

Ratios alone mean something, and only within one run: the programs take turns, the first round does
not count, and the middle of all rounds is taken. Run it on a release build and a calm machine, under
xvfb-run and dbus-run-session.
"""

import os
import statistics
import subprocess
import sys
import tempfile
import time


def start(command, probe, home):
    environment = {**os.environ, 'HOME': home, 'XDG_STATE_HOME': home, 'XDG_DATA_HOME': home,
                   'LD_PRELOAD': probe,
                   'BENCH_START': str(time.clock_gettime_ns(time.CLOCK_MONOTONIC))}
    out = subprocess.run(command, env=environment, stdout=subprocess.PIPE, text=True, timeout=60)
    line = next(line for line in out.stdout.splitlines() if line.startswith('first-frame'))
    ms, processor_ms, kb = line.split()[1:]
    return float(ms), float(processor_ms), int(kb) / 1024


def main(probe, bare, program, part, rounds='15'):
    runs = {'empty window': [bare], 'another one': [bare], 'nothing open': [program],
            'a part open': [program, part]}
    measured = {name: [] for name in runs}
    with tempfile.TemporaryDirectory() as home:
        for turn in range(int(rounds) + 1):
            for name, command in runs.items():
                result = start(command, probe, home)
                if turn > 0:
                    measured[name].append(result)
    middle = {name: [statistics.median(column) for column in zip(*results)]
              for name, results in measured.items()}
    base = middle['empty window']
    for name, row in middle.items():
        ratios = [value / first for value, first in zip(row, base)]
        print(f'{name:13} {row[0]:7.1f} ms ({ratios[0]:.2f})  processor {row[1]:6.1f} ms '
              f'({ratios[1]:.2f})  {row[2]:5.1f} MiB ({ratios[2]:.2f})')


main(*sys.argv[1:])
