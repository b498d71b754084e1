#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The set-up in depth: a metal, drills and a trial bend of one's own, by keys and pointer."""

import json
import os
import pathlib
import shutil

import gui

EXAMPLES = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples'


def started(program, folder):
    path = folder / 'tray.benchfold'
    shutil.copy(EXAMPLES / 'spoke-tray.benchfold', path)
    return gui.App(program, path, env={'XDG_DATA_HOME': str(folder / 'data')}), path


def saved(app, path):
    app.key('ctrl+s')
    app.titled('Spoke tray')
    return json.loads(path.read_text())


def a_trial_bend_is_typed_and_kept(program, folder):
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Bending: over a bar'))
        app.shown(None, 'Trial bend…')
        app.key('Up', 'Return')
        app.dialogue('Trial bend')
        app.shown('text', 'length of strip 1')
        for words in ('100', '51', '51'):
            app.type(words)
            app.key('Tab')
        app.shown(None, r'K 0\.\d+ ± 0\.\d+, from 1 strip')
        app.key('Return')
        app.focus()
        app.titled('Spoke tray (not saved)')
        app.shown(None, r'K 0\.42 → .*blank .*')
        allowance = saved(app, path)['bend']['allowance']
    assert allowance['rule'] == 'trial-bend', allowance
    # BA = 100 − 102 + 2 (R + t), R = t = 1.2: 2.8; K = (BA / (π/2) − R) / t.
    assert abs(allowance['k'] - (2.8 / 1.5707963 - 1.2) / 1.2) < 1e-6, allowance
    kept = list((folder / 'data' / 'benchfold' / 'trial-bends').iterdir())
    assert [file.stem for file in kept] == [allowance['id']], kept


def a_metal_of_ones_own_is_kept_and_used(program, folder):
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Metal: Mild steel 1.2 mm'))
        app.shown(None, 'A metal of your own…')
        app.key('shift+Tab', 'Return')
        app.dialogue('A metal of your own')
        app.shown('text', 'Name')
        app.type('Shed steel')
        app.key('Return')
        app.focus()
        app.shown(None, 'Metal: Shed steel 1.2 mm')
        metal = saved(app, path)['metal']
    assert metal['material'] == 'shed-steel', metal
    kept = json.loads((folder / 'data' / 'benchfold' / 'metals' / 'shed-steel.json').read_text())
    assert kept['density'] == 7850 and kept['like'] == 'mild-steel', kept


def a_broken_file_is_named(program, folder):
    metals = folder / 'data' / 'benchfold' / 'metals'
    metals.mkdir(parents=True)
    (metals / 'bad.json').write_text('{')
    app, _ = started(program, folder)
    with app:
        app.click(app.shown(None, 'Metal: Mild steel 1.2 mm'))
        app.shown(None, r'A file of your own was left out\..*bad\.json.*')
        app.key('Escape')


gui.main([a_trial_bend_is_typed_and_kept, a_metal_of_ones_own_is_kept_and_used,
          a_broken_file_is_named])
