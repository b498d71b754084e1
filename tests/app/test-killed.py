#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""test-killed.py DRIVER [KILLS]: the power goes, again and again, at any moment of somebody's work.

Whatever was done more than two seconds before has to be there afterwards, in the file or in what
was kept aside, and no file may ever be half of one. Prints how much work was lost.
"""

import json
import os
import pathlib
import random
import signal
import subprocess
import sys
import tempfile
import time


WITHIN_S = 2.0
FIRST_UM = 1000
PATIENCE_S = 60


def number_in(path):
    """The number of the change that a part file holds. Half a file is an error here."""
    return round(json.loads(path.read_text())['metal']['thickness'] * 1000) - FIRST_UM


def changes(log):
    """(number, time in s) of every change that was begun."""
    lines = log.read_text().split('\n')[:-1]
    return [(int(number), int(hour) / 1e6) for number, hour in map(str.split, lines)]


def run_and_kill(driver, folder, after_s, seed):
    """Lets the driver work for that long and kills it; gives back when that was."""
    log = folder / 'log'
    environment = {**os.environ, 'XDG_STATE_HOME': str(folder / 'state')}
    with log.open('wb') as out:
        process = subprocess.Popen([driver, folder / 'saved.benchfold', str(seed)], stdout=out,
                                   env=environment)
        end = time.monotonic() + PATIENCE_S
        while not log.stat().st_size and time.monotonic() < end:
            time.sleep(0.01)
        time.sleep(after_s)
        killed = time.monotonic()
        process.kill()
        assert process.wait() == -signal.SIGKILL, process.returncode
    return killed


def lost_s(folder, killed):
    """How long before the kill the first change was made that is gone; 0 if none is."""
    kept = list((folder / 'state').glob('benchfold/kept/*/part.benchfold'))
    there = [number_in(path) for path in kept + list(folder.glob('saved.benchfold'))]
    newest = max(there, default=-1)
    gone = [hour for number, hour in changes(folder / 'log') if number > newest]
    return max(killed - min(gone), 0) if gone else 0


def main(driver, kills):
    rand = random.Random(20240229)
    losses, n_changes = [], 0
    print('1..1', flush=True)
    for _ in range(kills):
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            killed = run_and_kill(driver, folder, rand.uniform(0, 4), rand.randrange(2**31))
            losses.append(lost_s(folder, killed))
            n_changes += len(changes(folder / 'log'))
    losses.sort()
    print(f'# {kills} kills, {n_changes} changes; lost at most {losses[-1]:.2f} s, '
          f'half of the time at most {losses[len(losses) // 2]:.2f} s')
    good = losses[-1] <= WITHIN_S
    print(f'{"" if good else "not "}ok 1 nothing older than {WITHIN_S:g} s is lost')
    return 0 if good else 1


sys.exit(main(sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 8))
