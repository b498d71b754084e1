#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""bench-drag.py PROGRAM [PART]: drags the front wall of a part to and fro for some seconds in a
window of 1280 × 800 and prints how long the frames took."""

import os
import pathlib
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / 'app'))
import gui
from bench_top import screen_place, settled

SECONDS = 8
SETTLED_S = 2  # a window that has just opened still takes its memory from the system, frame by frame
STEP_S = 0.004


def main(program, part):
    with tempfile.NamedTemporaryFile('w+') as figures:
        # The program prints its figures where it is told to; gui starts it without a pipe.
        command = ['/bin/sh', '-c', 'exec "$0" "$@" >' + figures.name, program]
        app = gui.App(command[0], *command[1:], part)
        gui.xdo('windowsize', '--sync', app.window, 1280, 800)
        x, y = screen_place(app, settled(app, 'push button', 'Tip of front.*'), -90, 0)
        time.sleep(SETTLED_S)
        steps = int(SECONDS / STEP_S)
        words = ['mousemove', x, y, 'mousedown', 1]
        for i in range(steps):
            swing = abs((i % 120) - 60)
            words += ['mousemove', x + swing // 6, y + swing, 'sleep', STEP_S]
        subprocess.run(['xdotool', *map(str, words), 'mouseup', '1'], check=True)
        app.key('ctrl+z')
        app.key('ctrl+q')
        app.process.wait(20)
        sys.stdout = os.fdopen(int(os.environ.get('BENCHFOLD_TAP_FD', '1')), 'w')
        print(pathlib.Path(part).stem, pathlib.Path(figures.name).read_text().strip(), sep='\n')


data = pathlib.Path(os.environ['BENCHFOLD_DATA'])
main(sys.argv[1], sys.argv[2] if len(sys.argv) > 2 else data / 'examples' / 'drip-pan.benchfold')
