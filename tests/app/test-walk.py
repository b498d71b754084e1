#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A walk through every page by what a screen reader is told: all that can be used has a name that
reads well, can be come to by Tab, and does what it says."""

import os
import pathlib
import re

import gui

TRAY = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples' / 'spoke-tray.benchfold'
CONTROLS = {'push button', 'toggle button', 'text', 'slider', 'check box', 'combo box', 'spin button'}


def controls(app):
    return [node for node in app.all()
            if node.getRoleName() in CONTROLS and gui.has_room(node)]


def bad_names(app):
    """Names that are none, a class's, told twice, or told with the mark of a mnemonic."""
    return [(node.getRoleName(), node.name) for node in controls(app)
            if not node.name or node.name.startswith('Gtk') or node.name.startswith('_')
            or re.fullmatch(r'(.+) \1', node.name)]


def well_named(app, page):
    try:
        gui.until(f'good names on {page}', lambda: not bad_names(app), 5)
    except AssertionError:
        raise AssertionError(f'{page}: {bad_names(app)}')


def focused(app):
    return next((node.name for node in app.all()
                 if node.getState().contains(gui.pyatspi.STATE_FOCUSED)), None)


def walk_by_tab(app, wanted, most=80):
    """Tab comes to everything wanted, and does not end in a trap."""
    missing = set(wanted)
    for _ in range(most):
        app.key('Tab')
        name = focused(app)
        missing -= {pattern for pattern in missing if name and re.fullmatch(pattern, name)}
        if not missing:
            return
    raise AssertionError(f'Tab never came to {sorted(missing)}')


def the_first_page(program, folder):
    with gui.App(program) as app:
        app.shown('label', r'What are you making\?')
        well_named(app, 'the first page')
        walk_by_tab(app, ['Tray', 'My own outline', 'Metal: .*', 'Sizes: .*', 'Menu'])


def the_sizes(program, folder):
    with gui.App(program) as app:
        app.shown('label', r'What are you making\?')
        app.key('1')
        app.shown('text', 'length')
        well_named(app, 'the sizes')
        walk_by_tab(app, ['width', 'height', 'Something else', 'Make it'])


def shape_and_make(program, folder):
    with gui.App(program, TRAY) as app:
        app.titled('Spoke tray')
        app.shown(None, 'From flat to folded')
        well_named(app, 'Shape')
        walk_by_tab(app, ['Metal: .*', 'From flat to folded', 'Before you cut.*'])
        app.key('alt+2')
        app.shown('push button', r'Print all \(2 pages\)')
        well_named(app, 'Make')
        walk_by_tab(app, ['Done: Take a flat piece.*', 'Full screen', 'Done, next'])
        app.key('alt+a')
        app.shown(None, 'Page A1')
        well_named(app, 'Make, the pages')
        walk_by_tab(app, ['Save as PDF…', 'Print…', 'What the bar across measures'])
        app.key('alt+s')
        app.shown('push button', 'Save: .*DXF.*')
        well_named(app, 'Make, the files')
        walk_by_tab(app, ['Edges moved by half the kerf', 'Save: .*DXF.*'])


def what_the_menu_has(program, folder):
    """Each does something that is seen, and lets go again at Escape."""
    windows = {'win.open': 'Open a part', 'win.save-as': 'Save the part', 'win.keys': 'Keys',
               'win.print': 'Print'}
    with gui.App(program, TRAY) as app:
        app.titled('Spoke tray')
        for action, title in windows.items():
            gui.until(action, lambda: app.run(action))
            app.dialogue(title)
            app.key('Escape')
            gui.until(f'{title} to go', lambda: not app.windows(title))
            app.focus()
        for action in ['win.fit', 'win.checks', 'win.menu']:
            gui.until(action, lambda: app.run(action))
            app.key('Escape')


gui.main([
    the_first_page,
    the_sizes,
    shape_and_make,
    what_the_menu_has,
])
