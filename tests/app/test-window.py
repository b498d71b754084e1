#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The window from outside: what a person or a screen reader finds in it, and what keys do."""

import json
import os
import pathlib
import re
import shutil

import gui

EXAMPLES = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples'


def begins_with_a_question(program, folder):
    with gui.App(program) as app:
        app.shown('label', r'What are you making\?')
        for thing in ['Tray', 'Bracket', 'Channel', 'Shelf', 'Box', 'My own outline']:
            app.shown('push button', thing)
        assert not app.can('win.print') and not app.can('win.save')


def a_tray_from_nothing_by_keys_alone(program, folder):
    with gui.App(program) as app:
        app.shown('label', r'What are you making\?')
        app.key('1')
        app.shown('text', 'length')
        app.key('ctrl+a')
        app.type('240')
        app.key('Tab', 'ctrl+a')
        app.type('13/2 cm')
        app.key('Tab', 'Tab', 'Tab', 'shift+Tab', 'shift+Tab', 'Return')
        app.titled('Tray (not saved)')
        app.shown(None, 'Blank and formed part')
        app.save_as(folder / 'made.benchfold')
    base = json.loads((folder / 'made.benchfold').read_text())['base']
    assert base['outline'] == [[0, 0], [240, 0], [240, 65], [0, 65]], base


def opens_a_part_and_names_its_set_up(program, folder):
    with gui.App(program, EXAMPLES / 'spoke-tray.benchfold') as app:
        app.titled('Spoke tray')
        for phrase in ['Metal: Mild steel 1.2 mm', 'Cutting: a 125 mm disc', 'Bending: over a bar',
                       'Corners: welded', 'Sizes: outside']:
            app.shown(None, phrase)
        app.shown(None, 'From flat to folded')


def a_bad_file_is_told_in_a_line(program, folder):
    bad = folder / 'bad.benchfold'
    bad.write_text('{"format": "benchfold-part", "version": 1')
    with gui.App(program, bad) as app:
        app.shown(None, r'.*bad\.benchfold was not opened\..*')
        app.shown('label', r'What are you making\?')


def a_change_is_undone_and_saved(program, folder):
    path = folder / 'tray.benchfold'
    shutil.copy(EXAMPLES / 'spoke-tray.benchfold', path)
    with gui.App(program, path) as app:
        app.click(app.shown(None, 'Corners: welded'))
        app.shown(None, 'riveted')
        app.key('Down', 'Return')
        app.shown(None, 'Corners: riveted')
        app.titled('Spoke tray (not saved)')
        app.key('ctrl+z')
        app.shown(None, 'Corners: welded')
        app.titled('Spoke tray')
        app.key('ctrl+shift+z')
        app.shown(None, 'Corners: riveted')
        app.key('ctrl+s')
        app.titled('Spoke tray')
    assert json.loads(path.read_text())['joining'] == 'riveted'


def a_thickness_is_typed_as_people_say_it(program, folder):
    with gui.App(program, EXAMPLES / 'spoke-tray.benchfold') as app:
        for words, metal in [('16 ga', '1.52 mm'), ('1/16"', '1.59 mm'), ('2', '2 mm'),
                             ('0.060 in', '1.52 mm')]:
            app.click(app.shown('push button', 'Metal: .*'))
            app.shown('text', 'Thickness')
            app.key('ctrl+a')
            app.type(words)
            app.key('Return')
            app.shown('push button', f'Metal: Mild steel {metal}')
            gui.until('the menu to close', lambda: not app.find('text', 'Thickness')
                      or not gui.has_room(app.find('text', 'Thickness')))


def the_pages_are_switched_by_keys(program, folder):
    with gui.App(program, EXAMPLES / 'spoke-tray.benchfold') as app:
        app.key('alt+2')
        app.shown('label', 'Metal, step 1 of 1')
        app.key('alt+a')
        app.shown(None, 'Page A1')
        app.shown('label', r'The template at full size takes \d+ pages of A4\.')
        app.key('alt+1')
        app.shown(None, 'From flat to folded')


def keyboard_at(app):
    return next((node.name for node in app.all()
                 if node.getState().contains(gui.pyatspi.STATE_FOCUSED)), None)


def a_page_comes_with_the_keyboard(program, folder):
    with gui.App(program, EXAMPLES / 'spoke-tray.benchfold') as app:
        app.shown(None, 'From flat to folded')
        elsewhere = (None, 'Shape', 'Make', 'Blank and formed part')
        for _ in range(2):
            app.key('alt+2')
            gui.until('the keyboard on Make', lambda: keyboard_at(app) not in elsewhere, 15)
            app.key('alt+1')
            gui.until('the keyboard on Shape', lambda: re.match(
                'Metal: |Blank and formed part', keyboard_at(app) or ''), 15)


def no_control_is_without_a_name(program, folder):
    with gui.App(program, EXAMPLES / 'spoke-tray.benchfold') as app:
        app.shown(None, 'From flat to folded')
        for page in ['alt+1', 'alt+2']:
            app.key(page)
            nameless = [node for node in app.all()
                        if node.getRoleName() in ('push button', 'text', 'slider', 'push button')
                        and (not node.name or node.name.startswith('Gtk'))
                        and gui.has_room(node)]
            assert not nameless, [(node.getRoleName(), node.name) for node in nameless]


gui.main([
    begins_with_a_question,
    a_tray_from_nothing_by_keys_alone,
    opens_a_part_and_names_its_set_up,
    a_bad_file_is_told_in_a_line,
    a_change_is_undone_and_saved,
    a_thickness_is_typed_as_people_say_it,
    the_pages_are_switched_by_keys,
    a_page_comes_with_the_keyboard,
    no_control_is_without_a_name,
])
