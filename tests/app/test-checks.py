#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The line "Before you cut": what it says, where its rows lead, what their buttons change."""

import json
import subprocess

import gui

# What there is to know of any part that bends: its edges are raw.
KNOW = r'\d good to know'

SOUND = {'format': 'benchfold-part', 'version': 1, 'name': 'Tray',
         'metal': {'thickness': 1.5},
         'base': {'outline': [[0, 0], [200, 0], [200, 120], [0, 120]]},
         'flanges': [{'id': 'front', 'on': 'base', 'edge': 0, 'length': 40, 'angle': 90,
                      'turn': 'up'},
                     {'id': 'right', 'on': 'base', 'edge': 1, 'length': 40, 'angle': 90,
                      'turn': 'up'}]}


def part(folder, **changes):
    """A file with a part: SOUND, and of its front flange what is given."""
    made = json.loads(json.dumps(SOUND))
    made['flanges'][0].update(changes.pop('front', {}))
    made.update(changes)
    path = folder / 'part.benchfold'
    path.write_text(json.dumps(made))
    return path


def two_faults(folder):
    """Its front has too little flat, and its corner has no relief."""
    return part(folder, front={'length': 4},
                corners=[{'on': 'base', 'at': 1, 'relief': {'shape': 'none'}}])


def line(app, says):
    return app.shown(None, f'Before you cut: {says}')


def push(app, name):
    """By its action: the bus counts a popover's places from the popover's own corner."""
    app.shown('push button', name).queryAction().doAction(0)


def saved(app, path):
    app.key('ctrl+s')
    app.titled('Tray')
    return json.loads(path.read_text())


def says_so_where_nothing_is_wrong(program, folder):
    with gui.App(program, part(folder, flanges=[])) as app:
        line(app, 'nothing to look at')
        app.key('ctrl+b')
        app.shown('label', 'Nothing to fix, and nothing to look at.')
        app.key('Escape')


def counts_by_severity_and_opens(program, folder):
    # 2 is less than the bend takes: its set-back is 3.
    with gui.App(program, part(folder, front={'length': 2})) as app:
        app.click(line(app, r'\d to fix.*'))
        app.shown(None, r'Must fix: front is too short: .* use up 3 mm\. Make it at least 6 mm\.')
        app.shown('push button', 'Make front 6 mm long')
        app.key('Escape')
        gui.until('the list to close', lambda: not sees_button(app, 'Make front 6 mm long'))


def a_fix_is_one_step_with_a_name(program, folder):
    path = two_faults(folder)
    with gui.App(program, path) as app:
        app.click(line(app, f'2 to look at, {KNOW}'))
        push(app, 'Make front 6 mm long')
        line(app, f'1 to look at, {KNOW}')
        push(app, 'Add a round relief')
        line(app, KNOW)
        app.key('Escape')
        made = saved(app, path)
        assert made['flanges'][0]['length'] == 6, made['flanges']
        assert made['corners'][0]['relief'] == {'shape': 'round'}, made['corners']
        app.key('ctrl+z')
        line(app, f'1 to look at, {KNOW}')
        app.key('ctrl+z')
        line(app, f'2 to look at, {KNOW}')
        app.key('ctrl+shift+z')
        line(app, f'1 to look at, {KNOW}')


def keys_alone_do_it(program, folder):
    path = two_faults(folder)
    with gui.App(program, path) as app:
        line(app, f'2 to look at, {KNOW}')
        app.key('alt+2')  # the list opens from the other page too
        app.shown('push button', 'Mark by hand')
        app.key('ctrl+b')
        app.shown('push button', 'Make front 6 mm long')
        app.key('Down', 'Tab', 'Return')  # the second row's button
        line(app, f'1 to look at, {KNOW}')
        app.key('Up', 'Tab', 'Return')  # the row that came to its place has the focus
        line(app, KNOW)
        app.key('Escape')
        assert saved(app, path)['flanges'][0]['length'] == 6


def picture(app):
    """What the window shows once it has come to rest."""
    def still():
        one, two = (subprocess.run(['import', '-window', app.window, '-depth', '8', 'rgb:-'],
                                   stdout=subprocess.PIPE, check=True).stdout for _ in range(2))
        return one if one == two else None
    return gui.until('the window to rest', still)


def sees_button(app, name):
    return any(gui.has_room(node) for node in app.all('push button', name))


def a_row_flies_to_its_place(program, folder):
    with gui.App(program, two_faults(folder)) as app:
        line(app, f'2 to look at, {KNOW}')
        before = picture(app)
        app.key('ctrl+b')
        app.shown('push button', 'Add a round relief')
        app.key('Down', 'Return')
        gui.until('the list to close', lambda: not sees_button(app, 'Add a round relief'))
        gui.until('another picture', lambda: picture(app) != before)
        near = picture(app)
        app.key('ctrl+0')
        gui.until('all in sight again', lambda: picture(app) != near)


# A kind of check, what its row says, and a part that brings it out first.
KINDS = {
    'an opening': ('Must fix: An opening in the base reaches 2 mm beyond the metal.*',
                   {'flanges': [], 'openings': [{'on': 'base', 'shape': 'round', 'at': [199, 60],
                                                 'diameter': 6}]}),
    'two faces': ('Must fix: right runs 1.5 mm into front.*',
                  {'corners': [{'on': 'base', 'at': 1, 'join': 'untrimmed'}]}),
    'a bend': ('Must fix: front needs a push .*',
               {'front': {'bend': {'way': 'slots', 'hand': {'limit': 40, 'lever': 40}}}}),
}


def rows_of_all_kinds_fly(program, folder):
    for kind, (says, changes) in KINDS.items():
        with gui.App(program, part(folder, **json.loads(json.dumps(changes)))) as app:
            line(app, '1 to fix.*')
            before = picture(app)
            app.key('ctrl+b')
            app.shown(None, says)
            app.key('Return')
            gui.until(f'the list to close on {kind}',
                      lambda: not [node for node in app.all(None, says) if gui.has_room(node)])
            gui.until(f'{kind} to be seen near by', lambda: picture(app) != before)


def speaks_what_the_person_speaks(program, folder):
    for language, says in {'de': 'Vor dem Schneiden: nichts anzusehen',
                           'es': 'Antes de cortar: nada que mirar'}.items():
        with gui.App(program, part(folder, flanges=[]), env={'LANGUAGE': language}) as app:
            app.shown(None, says)


gui.main([
    says_so_where_nothing_is_wrong,
    counts_by_severity_and_opens,
    a_fix_is_one_step_with_a_name,
    keys_alone_do_it,
    a_row_flies_to_its_place,
    rows_of_all_kinds_fly,
    speaks_what_the_person_speaks,
])
