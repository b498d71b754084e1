#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the window writes for others: the same bytes as the command line's."""

import json
import re
import subprocess

import file_manager
import gui
from make_page import EXAMPLES, TRAY, open_make, open_pages


# What is saved: the button, the dialogue's title, the suffix, the command line's option.
FILES = [
    ('Save: For a cutting machine (DXF)', 'Save the pattern', 'dxf', '--pattern'),
    ('Save: A drawing in mm (SVG)', 'Save the pattern', 'svg', '--pattern'),
    ('Save: On one page (PDF)', 'Save the pattern', 'pdf', '--pattern'),
    ('Save: Make card (PDF)', 'Save the make card', 'pdf', '--card'),
    ('Save: Marking out by hand (PDF)', 'Save the marking out', 'pdf', '--marking'),
    ('Save: Distances for marking out (CSV)', 'Save the marking out', 'csv', '--marking'),
    ('Save: Angle gauges (PDF)', 'Save the angle gauges', 'pdf', '--gauges'),
    ('Save: Card model (PDF)', 'Save the card model', 'pdf', '--model'),
    ('Save: Strips for a trial bend (PDF)', 'Save the strips for a trial bend', 'pdf', '--strip'),
]


def content(path):
    """The bytes of a file, less the second at which a PDF was made."""
    return re.sub(rb'/(Creation|Mod)Date \([^)]*\)', b'', path.read_bytes())


def saved_alike(program, folder, name, suffix, option):
    """The window's file and the command line's."""
    subprocess.run([program, TRAY, option, folder / f'line {name}.{suffix}'], check=True)
    assert content(folder / f'window {name}.{suffix}') == \
        content(folder / f'line {name}.{suffix}'), name


def saves_what_the_command_line_writes(program, folder):
    with gui.App(program, TRAY) as app:
        open_pages(app)
        app.click(app.shown('push button', 'Save as PDF…'))
        app.type_path('Save the template', folder / 'window template')
        app.shown(None, 'Saved “window template\\.pdf”\\.')
        app.focus()
        app.key('alt+s')
        for i, (button, title, suffix, _) in enumerate(FILES):
            app.focus()
            app.click(app.shown('push button', re.escape(button)))
            # The suffix is left to the program.
            app.type_path(title, folder / f'window {i}')
            app.shown(None, f'Saved “window {i}\\.{suffix}”\\.')
            app.shown('push button', 'Show in folder')
    saved_alike(program, folder, 'template', 'pdf', '--template')
    for i, (_, _, suffix, option) in enumerate(FILES):
        saved_alike(program, folder, str(i), suffix, option)


def a_service_gets_a_folder(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.key('alt+s')
        app.click(app.shown('push button', re.escape('Save: All that a service asks for (a folder)')))
        app.type_path('Make the pack', folder / 'window')
        app.shown(None, 'Saved “window”\\.')
    subprocess.run([program, TRAY, '--pack', folder / 'line'], check=True)
    names = sorted(path.name for path in (folder / 'line').iterdir())
    assert names and names == sorted(path.name for path in (folder / 'window').iterdir())
    for name in names:
        assert content(folder / 'window' / name) == content(folder / 'line' / name), name


def what_was_saved_is_shown_in_its_folder(program, folder):
    manager = file_manager.FileManager()
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.key('alt+s')
        app.click(app.shown('push button', re.escape('Save: A drawing in mm (SVG)')))
        app.type_path('Save the pattern', folder / 'a part')
        app.click(app.shown('push button', 'Show in folder'))
        gui.until('the file manager to be asked', lambda: manager.shown)
    assert manager.shown == [(folder / 'a part.svg').as_uri()], manager.shown


def kerf_and_bend_lines_are_as_asked(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.key('alt+s')
        app.shown('check box', 'Edges moved by half the kerf')
        app.key('alt+k')
        app.click(app.shown('push button', re.escape('Save: A drawing in mm (SVG)')))
        app.type_path('Save the pattern', folder / 'window')
        app.shown(None, 'Saved “window\\.svg”\\.')
    subprocess.run([program, TRAY, '--kerf', 'on', '--pattern', folder / 'line.svg'], check=True)
    assert content(folder / 'window.svg') == content(folder / 'line.svg')


def a_long_job_shows_how_far_it_is_and_stops(program, folder):
    """A blank of 50 m takes hundreds of pages: the window tells which, and Stop leaves nothing."""
    part = json.loads((EXAMPLES / 'lever-rail.benchfold').read_text())
    part['name'] = 'Long rail'
    part['base']['outline'] = [[0, 0], [50000, 0], [50000, 120], [0, 120]]
    part['flanges'], part['openings'] = [], [
        {'on': 'base', 'shape': 'round', 'at': [100 + 150 * i, 60], 'diameter': 8} for i in range(320)]
    part.pop('corners', None)
    path = folder / 'long.benchfold'
    path.write_text(json.dumps(part))
    with gui.App(program, path) as app:
        app.titled('Long rail')
        app.key('alt+2')
        app.shown('push button', r'Print all \(\d\d\d pages\)')
        app.key('alt+a')
        app.click(app.shown('push button', 'Save as PDF…'))
        app.type_path('Save the template', folder / 'stopped')
        app.dialogue('Saving')
        app.shown(None, r'Page \d+ of \d+')
        app.key('alt+s')
        app.shown(None, r'Stopped: nothing was saved\.')
        assert not (folder / 'stopped.pdf').exists()
        app.focus()


def a_file_that_is_there_is_not_written_over(program, folder):
    there = folder / 'there.svg'
    there.write_text('mine')
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.key('alt+s')
        app.click(app.shown('push button', re.escape('Save: A drawing in mm (SVG)')))
        app.type_path('Save the pattern', folder / 'there')
        app.shown(None, r'Nothing was saved: .*there\.svg is there already\.')
    assert there.read_text() == 'mine'


gui.main([
    saves_what_the_command_line_writes,
    what_was_saved_is_shown_in_its_folder,
    a_service_gets_a_folder,
    kerf_and_bend_lines_are_as_asked,
    a_long_job_shows_how_far_it_is_and_stops,
    a_file_that_is_there_is_not_written_over,
])
