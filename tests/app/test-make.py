#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The page Make: the work step by step, and its pages."""

import json

import gui
from make_page import EXAMPLES, TRAY, open_make, open_pages


def ticks(app):
    return [node.name for node in app.all('check box', 'Done: .*')
            if node.getState().contains(gui.pyatspi.STATE_CHECKED)]


def steps_are_ticked_and_kept(program, folder):
    path = folder / 'tray.benchfold'
    path.write_bytes(TRAY.read_bytes())
    with gui.App(program, path) as app:
        open_make(app)
        app.shown('label', 'Metal, step 1 of 1')
        app.key('alt+d')
        app.shown('label', r'Mark, step 1 of \d+')
        app.click(app.shown('check box', 'Done: Punch the centres of all holes.*'))
        gui.until('two ticks', lambda: len(ticks(app)) == 2)
        app.key('ctrl+z')
        gui.until('one tick', lambda: len(ticks(app)) == 1)
        app.key('ctrl+shift+z')
        gui.until('two ticks again', lambda: len(ticks(app)) == 2)
        app.key('ctrl+s')
        gui.until('the file', lambda: 'metal:0' in json.loads(path.read_text()).get(
            'made', {}).get('steps', []))
    with gui.App(program, path) as app:
        open_make(app)
        gui.until('the ticks', lambda: len(ticks(app)) == 2)
        app.shown('label', r'Mark, step 1 of \d+')  # where there is something to do


def another_blank_has_nothing_ticked(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.key('alt+d')
        gui.until('a tick', lambda: len(ticks(app)) == 1)
        app.key('alt+1')
        length = app.shown('text', 'Length of front')
        app.click(length)
        app.key('ctrl+a')
        app.type('33')
        app.key('Return')
        app.key('alt+2')
        gui.until('no tick', lambda: app.find('check box', 'Done: .*') and not ticks(app))


def the_whole_screen_is_read_by_any_key(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.key('alt+m')
        app.shown('label', r'Mark, step 1 of \d+')
        app.key('alt+f')
        app.dialogue('The work, step by step')
        app.key('space', 'x', 'Return')
        gui.until('three steps on', lambda: len(app.all('label', r'Mark, step 4 of \d+')) == 2)
        app.key('BackSpace')
        gui.until('one back', lambda: len(app.all('label', r'Mark, step 3 of \d+')) == 2)
        app.key('Escape')
        gui.until('the window to go', lambda: not app.windows('The work, step by step'))
        app.focus()
        assert len(ticks(app)) == 3, ticks(app)


def where(app):
    return app.find('label', r'\w+, step \d+ of \d+').name


def go_on(app):
    """The button shows for a moment that it was pressed: one press after the other."""
    before = where(app)
    app.key('alt+d')
    gui.until('the next step', lambda: where(app) != before)


def go_on_to(app, stage):
    while not where(app).startswith(stage):
        go_on(app)


def how_many_alike_is_told_and_kept(program, folder):
    path = folder / 'tray.benchfold'
    path.write_bytes(TRAY.read_bytes())
    with gui.App(program, path) as app:
        open_make(app)
        app.key('alt+w', 'ctrl+a')
        app.type('3')
        app.key('Return')
        app.shown('list item', 'Take flat metal: .* for 3 blanks.*')
        app.shown('label', 'mass of all')
        app.key('ctrl+z')
        app.shown('list item', 'Take a flat piece.*')
        app.key('ctrl+shift+z')
        app.shown('list item', 'Take flat metal: .* for 3 blanks.*')
        app.key('ctrl+s')
        gui.until('the file', lambda: json.loads(path.read_text()).get('quantity') == 3)


def the_guide_sits_where_a_person_has_it(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        go_on_to(app, 'Cut')
        app.key('alt+g', 'ctrl+a')
        app.type('12')
        app.key('Return')
        app.shown('list item', 'Clamp a guide on the blank.s side, 12 mm from the line.*')
        go_on(app)
        go_on(app)
        app.shown('label', 'guide, from .*')


def marks_are_rounded_but_for_what_matters(program, folder):
    path = folder / 'tray.benchfold'
    path.write_bytes(TRAY.read_bytes())
    before = json.loads(path.read_text())
    with gui.App(program, path) as app:
        open_make(app)
        app.key('alt+m')
        app.shown('push button', 'Round marks…')
        app.key('alt+r')
        dialogue = app.dialogue('Round marks')
        app.shown(None, 'Off whole marks of 0.5 mm, .*')
        app.click(app.shown('check box', 'Length of front matters'), dialogue)
        app.key('alt+r')
        gui.until('the window to go', lambda: not app.windows('Round marks'))
        app.focus()
        app.key('ctrl+s')
        gui.until('the file', lambda: json.loads(path.read_text())['flanges'] != before['flanges'])
        after = json.loads(path.read_text())
        assert after['flanges'][0]['pinned'] is True, after
        assert after['flanges'][0]['length'] == before['flanges'][0]['length']
        assert after['flanges'][1]['length'] != before['flanges'][1]['length'], after
        app.key('ctrl+z')
        app.key('ctrl+s')
        gui.until('the sizes that were', lambda: json.loads(path.read_text())['flanges'][1][
            'length'] == before['flanges'][1]['length'])
        assert json.loads(path.read_text())['flanges'][0]['pinned'] is True


def inches_are_marked_as_finely_as_the_rule_is(program, folder):
    """A bracket in inches: marks of 1/16 at first, of 1/32 at a click, and kept."""
    path = folder / 'bracket.benchfold'
    path.write_bytes((EXAMPLES / 'pump-bracket.benchfold').read_bytes())
    with gui.App(program, path) as app:
        app.key('alt+2')
        app.shown('list item', 'Take a flat piece.*')
        app.key('alt+m')
        distances = lambda: [node.name for node in app.all('list item', 'Set the square to .*')]
        before = distances()
        assert not any('/32' in name for name in before), before
        app.click(app.shown('push button', 'Marks every 1/32 in'))
        gui.until('finer marks', lambda: any('/32' in name for name in distances()))
        app.key('alt+r')
        app.dialogue('Round marks')
        app.shown(None, 'Off whole marks of 1/32 in, .*')
        app.key('Escape')
        gui.until('the window to go', lambda: not app.windows('Round marks'))
        app.focus()
        app.click(app.shown('push button', 'Marks every 1/16 in'))
        gui.until('coarse marks', lambda: distances() == before)


def a_printer_that_is_off_is_corrected(program, folder):
    with gui.App(program, TRAY) as app:
        open_pages(app)
        app.shown('label', 'Of your printer: nothing to correct\\.')
        app.click(app.shown('text', 'What the bar across measures'))
        app.key('ctrl+a')
        app.type('99.2')
        app.key('Return')
        app.shown('label', 'Of your printer: pages are drawn so that they come out true\\.')
        app.key('ctrl+a')
        app.type('90')
        app.key('Return')
        app.shown('label', '.*5 %.*')


def corners_take_fewer_pages(program, folder):
    with gui.App(program, TRAY) as app:
        open_make(app)
        app.shown('push button', r'Print all \(2 pages\)')
        app.shown('push button', r'Print corners \(1 page\)')
        app.key('alt+c')
        app.shown('label', 'Corners and holes at full size take 1 page of A4; .*')
        assert len(app.all(None, 'Page .*')) == 1
        app.key('alt+a')
        gui.until('two pages', lambda: len(app.all(None, 'Page .*')) == 2)


def another_paper_lays_the_pages_out_anew(program, folder):
    with gui.App(program, TRAY) as app:
        open_pages(app)
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


gui.main([
    steps_are_ticked_and_kept,
    another_blank_has_nothing_ticked,
    the_whole_screen_is_read_by_any_key,
    how_many_alike_is_told_and_kept,
    the_guide_sits_where_a_person_has_it,
    marks_are_rounded_but_for_what_matters,
    inches_are_marked_as_finely_as_the_rule_is,
    a_printer_that_is_off_is_corrected,
    corners_take_fewer_pages,
    another_paper_lays_the_pages_out_anew,
    pages_are_looked_at_before_printing,
    keys_are_listed,
])
