#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Work and choices outlive the program: whether it is told to end, or killed."""

import json
import os
import pathlib
import shutil
import signal

import gui

EXAMPLES = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples'
OFFER = r'Work on “Spoke tray” from .* was kept\.'


def kept(folder):
    return list(folder.glob('state/benchfold/kept/*/part.benchfold'))


def joining_kept(folder):
    return [json.loads(path.read_text())['joining'] for path in kept(folder)]


def start(program, folder, *args):
    """A run of the program whose choices and work are found by the next one."""
    return gui.App(program, *args, env={
        'GSETTINGS_BACKEND': 'keyfile', 'XDG_CONFIG_HOME': str(folder / 'config'),
        'XDG_STATE_HOME': str(folder / 'state')})


def change_corners(app):
    app.titled('Spoke tray')
    app.click(app.shown(None, 'Corners: welded'))
    app.shown(None, 'riveted')
    app.key('Down', 'Return')
    app.shown(None, 'Corners: riveted')


def open_copy(program, folder):
    path = folder / 'tray.benchfold'
    shutil.copy(EXAMPLES / 'spoke-tray.benchfold', path)
    return start(program, folder, path)


def killed_and_gone_on_with(program, folder):
    with open_copy(program, folder) as app:
        change_corners(app)
        gui.until('the work to be kept', lambda: joining_kept(folder) == ['riveted'])
        app.process.kill()
        app.process.wait()
    with start(program, folder) as app:
        app.shown(None, OFFER)
        app.click(app.shown('push button', 'Open it'))
        app.titled('Spoke tray (not saved)')
        app.shown(None, 'Corners: riveted')
        app.key('ctrl+s')
        app.titled('Spoke tray')
        gui.until('nothing to be kept any more', lambda: not kept(folder))
    assert json.loads((folder / 'tray.benchfold').read_text())['joining'] == 'riveted'


def no_question_stands_before_quitting(program, folder):
    with open_copy(program, folder) as app:
        change_corners(app)
    assert joining_kept(folder) == ['riveted']
    with start(program, folder) as app:
        app.shown(None, OFFER)
        app.click(app.shown('push button', 'Not now'))
    assert joining_kept(folder) == ['riveted']


def thrown_away_and_brought_back(program, folder):
    with open_copy(program, folder) as app:
        change_corners(app)
    with start(program, folder) as app:
        app.click(app.shown('push button', 'Throw it away'))
        app.click(app.shown('push button', 'Bring it back'))
        app.shown(None, OFFER)
        app.click(app.shown('push button', 'Throw it away'))
        app.shown('push button', 'Bring it back')
    assert not kept(folder)


def told_to_end(program, folder):
    for number in (signal.SIGTERM, signal.SIGHUP):
        with open_copy(program, folder) as app:
            change_corners(app)
            app.process.send_signal(number)
            app.ended()
        assert 'riveted' in joining_kept(folder)
        shutil.rmtree(folder / 'state')


def two_runs_keep_to_their_own(program, folder):
    with open_copy(program, folder) as app:
        change_corners(app)
        gui.until('the work to be kept', lambda: kept(folder))
        with start(program, folder) as other:
            other.shown('label', r'What are you making\?')
            assert not other.find(None, OFFER)
        app.focus()
        assert joining_kept(folder) == ['riveted']


def choices_outlive_the_run(program, folder):
    with start(program, folder) as app:
        app.click(app.shown(None, 'Corners: welded'))
        app.shown(None, 'riveted')
        app.key('Down', 'Return')
        app.shown(None, 'Corners: riveted')
        app.key('Escape')
        app.click(app.shown('push button', 'Tray'))
        app.click(app.shown('push button', 'Make it'))
        app.titled('Tray (not saved)')
        gui.xdo('windowsize', '--sync', app.window, 900, 650)
    with start(program, folder) as app:
        app.shown(None, 'Corners: riveted')
        size = app.size()
        assert abs(size[0] - 900) <= 10 and abs(size[1] - 650) <= 10, size


gui.main([
    killed_and_gone_on_with,
    no_question_stands_before_quitting,
    thrown_away_and_brought_back,
    told_to_end,
    two_runs_keep_to_their_own,
    choices_outlive_the_run,
])
