#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The page Make, what the window writes, and what it tells about itself."""

import os
import pathlib
import re
import subprocess

import gui

EXAMPLES = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples'
TRAY = EXAMPLES / 'spoke-tray.benchfold'


def open_make(app):
    app.titled('Spoke tray')
    app.key('alt+2')
    app.shown(None, 'Page A1')


KINDS = ['pdf', 'svg', 'dxf']  # as they follow each other in the menu


def choose(app, kind):
    app.click(app.shown('push button', 'Save as'))
    app.shown(None, r'For a cutting machine \(DXF\)…')
    app.key(*['Down'] * KINDS.index(kind), 'Return')


def content(path):
    """The bytes of a file, less the second at which a PDF was made."""
    return re.sub(rb'/(Creation|Mod)Date \([^)]*\)', b'', path.read_bytes())


def saves_what_the_command_line_writes(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        for kind in KINDS:
            app.focus()
            choose(app, kind)
            # The suffix is left to the program.
            title = 'Save the template' if kind == 'pdf' else 'Save the pattern'
            app.type_path(title, folder / f'window {kind}')
            app.shown(None, f'Saved “window {kind}\\.{kind}”\\.')
            app.shown('push button', 'Show in folder')
    for kind in KINDS:
        option = '--template' if kind == 'pdf' else '--pattern'
        subprocess.run([program, TRAY, option, folder / f'line.{kind}'], check=True)
        assert content(folder / f'window {kind}.{kind}') == content(folder / f'line.{kind}'), kind


def a_file_that_is_there_is_not_written_over(program, folder):
    there = folder / 'there.svg'
    there.write_text('mine')
    with gui.App(program, TRAY) as app:
        open_make(app)
        choose(app, 'svg')
        app.type_path('Save the pattern', folder / 'there')
        app.shown(None, r'Nothing was saved: .*there\.svg is there already\.')
    assert there.read_text() == 'mine'


def another_paper_lays_the_pages_out_anew(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.shown('label', r'The template at full size takes 2 pages of A4\.')
        app.click(app.shown(None, 'Paper'))
        app.shown(None, 'Tabloid')
        app.key('Down', 'Return')
        app.shown('label', r'The template at full size takes \d+ pages? of A3\.')


def pages_are_looked_at_before_printing(program, folder):
    with gui.App(program, TRAY, cwd=folder) as app:
        app.titled('Spoke tray')
        app.key('ctrl+p')
        dialogue = app.dialogue('Print')
        app.click(app.shown(None, 'Print to File'), dialogue)
        gui.until('the preview', lambda: press_preview(app, dialogue))
        app.dialogue('Pages as they will come out')
        app.shown(None, 'Page A2')
        app.key('Escape')
        gui.until('the pages to go', lambda: not app.windows('Pages as they will come out'))
        app.focus()


def press_preview(app, dialogue):
    """The button takes clicks a moment after a printer is chosen."""
    if not app.windows('Pages as they will come out'):
        app.click(app.find('push button', 'Pre_view Preview'), dialogue)
        gui.time.sleep(1)
    return app.windows('Pages as they will come out')


def keys_are_listed(program, folder):
    with gui.App(program, TRAY) as app:
        app.titled('Spoke tray')
        app.key('ctrl+question')
        app.dialogue('Keys')
        app.shown('label', 'Print the template')
        app.key('Escape')
        gui.until('the list to go', lambda: not app.find('label', 'On the bench'))
        app.focus()


def help_tells_where_it_is(program, folder):
    """There is no viewer and no browser here: nothing that opens a page of help."""
    environment = {'XDG_DATA_DIRS': str(folder), 'XDG_CONFIG_DIRS': str(folder),
                   'XDG_DATA_HOME': str(folder), 'XDG_CONFIG_HOME': str(folder)}
    with gui.App(program, TRAY, env=environment) as app:
        app.titled('Spoke tray')
        app.key('F1')
        app.dialogue('No program was found that shows help')
        place = app.shown('label', r'The help begins in .*').name
        assert pathlib.Path(place.removeprefix('The help begins in ')).is_file(), place
        app.key('Return')
        gui.until('the message to go', lambda: not app.find('label', r'The help begins in .*'))
        app.focus()


gui.main([
    saves_what_the_command_line_writes,
    a_file_that_is_there_is_not_written_over,
    another_paper_lays_the_pages_out_anew,
    pages_are_looked_at_before_printing,
    keys_are_listed,
    help_tells_where_it_is,
])
