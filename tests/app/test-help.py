#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""F1: the help where something shows it, in the person's language, and where it lies if not."""

import os
import pathlib

import gui

TRAY = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples' / 'spoke-tray.benchfold'


def browser(folder):
    """A browser that notes the file it is given. Returns: its environment, its note."""
    note = folder / 'asked'
    program = folder / 'browse'
    program.write_text(f'#!/bin/sh\nprintf %s "$1" > {note}.new && mv {note}.new {note}\n')
    program.chmod(0o755)
    (folder / 'applications').mkdir(exist_ok=True)
    (folder / 'applications' / 'browse.desktop').write_text(
        f'[Desktop Entry]\nType=Application\nName=Browser\nExec={program} %f\n'
        'MimeType=text/html;application/xhtml+xml;\n')
    (folder / 'mimeapps.list').write_text(
        '[Default Applications]\ntext/html=browse.desktop\napplication/xhtml+xml=browse.desktop\n')
    return {'XDG_DATA_HOME': str(folder), 'XDG_CONFIG_HOME': str(folder)}, note


def a_browser_shows_it_as_the_person_speaks(program, folder):
    environment, note = browser(folder)
    for language, title in {'de': 'Das erste Teil', 'es': 'Su primera pieza',
                            'fr:es': 'Su primera pieza', 'fr': 'Your first part'}.items():
        note.unlink(missing_ok=True)
        with gui.App(program, TRAY, env={**environment, 'LANGUAGE': language}) as app:
            app.titled('Spoke tray')
            app.key('F1')
            gui.until('the browser to be asked', note.exists)
        page = pathlib.Path(note.read_text())
        assert title in page.read_text(encoding='utf-8'), (language, page)


def it_is_told_where_it_lies(program, folder):
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
    a_browser_shows_it_as_the_person_speaks,
    it_is_told_where_it_lies,
])
