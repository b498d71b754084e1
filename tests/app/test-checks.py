#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The line "Before you cut": what it says, where its rows lead, what their buttons change."""

import json
import re
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


FRONT = {'id': 'front', 'on': 'base', 'edge': 0, 'length': 40}


def walls(*edges):
    return [{'id': name, 'on': 'base', 'edge': edge, 'length': 40}
            for edge, name in enumerate(('front', 'right', 'back', 'left')) if edge in edges]


def hole(x, y):
    return {'on': 'base', 'shape': 'round', 'at': [x, y], 'diameter': 6}


def outline(*points):
    return {'outline': [list(point) for point in points]}


def corner(**members):
    return {'flanges': walls(0, 1), 'corners': [{'on': 'base', 'at': 1, **members}]}


def front(**members):
    return {'flanges': [{**FRONT, **members}]}


# Every check that there is: what its row says, and a part that brings it out.
ROWS = [
    ('The base.s outline crosses.*',
     {'base': outline((0, 0), (200, 0), (0, 120), (200, 130)), 'flanges': []}),
    ('front is too short.*', front(length=2)),
    ('front has 0 mm of edge left.*', front(start=150, end=60)),
    ('one and two want the same metal.*',
     {'base': outline((0, 0), (200, 0), (200, 120), (120, 120), (120, 60), (80, 60), (80, 120),
                      (0, 120)),
      'flanges': [{**FRONT, 'id': 'one', 'edge': 3}, {**FRONT, 'id': 'two', 'edge': 5}]}),
    ('right runs 1.5 mm into front.*', corner(join='untrimmed')),
    ('front bends to an inside radius of.*',
     {'metal': {'material': 'aluminium-6061-t6', 'thickness': 1.5},
      **front(bend={'inside_radius': 0.5})}),
    ('This corner has no relief.*', corner(relief={'shape': 'none'})),
    ('The corner relief is 2 mm wide.*', corner(relief={'shape': 'round', 'diameter': 2})),
    ('An opening in the base is 1.5 mm from the bend.*',
     {**front(), 'openings': [hole(100, 7.5)]}),
    ('An opening in the base is 1 mm from the edge.*',
     {'flanges': [], 'openings': [hole(100, 116)]}),
    ('An opening in the base reaches 2 mm.*', {'flanges': [], 'openings': [hole(199, 60)]}),
    ('The bridges between the slots of front.*',
     front(bend={'way': 'slots', 'slots': {'slot': 50, 'bridge': 5}})),
    ('The slots of front are .*', front(bend={'way': 'slots', 'slots': {'slot': 20, 'bridge': 12}})),
    ('front needs a push of.*', front(bend={'way': 'slots', 'hand': {'limit': 40, 'lever': 40}})),
    ('front is bent 10° off the grain.*', {'metal': {'thickness': 1.5, 'grain': 10}, **front()}),
    ('The blank, 3500 mm by 120 mm, is larger.*',
     {'base': outline((0, 0), (3500, 0), (3500, 120), (0, 120)), 'flanges': []}),
    ('Between two cuts only 1 mm.*', {'flanges': [], 'openings': [hole(100, 60), hole(107, 60)]}),
    ('Edges that hands take hold of.*', front()),
    ('Welded all round, this closes a hollow.*',
     {'flanges': walls(0, 1, 2, 3) + [{'id': 'lid', 'on': 'front', 'edge': 'tip', 'length': 119}]}),
    ('It does not hold water.*', {'flanges': walls(0, 1, 2, 3)}),
    ('front cannot be clamped.*',
     {'base': outline((0, 0), (200, 0), (200, 12), (0, 12)),
      'flanges': [{**FRONT, 'length': 60}, {**FRONT, 'id': 'back', 'edge': 2, 'length': 60}]}),
]
SEVERITIES = '(Must fix|Look at|Good to know): '


def fly(program, folder, says, changes):
    """Opens the list, goes down to the row by keys, and sees the picture come nearer."""
    with gui.App(program, part(folder, **json.loads(json.dumps(changes)))) as app:
        line(app, r'\d.*')
        before = picture(app)
        app.key('ctrl+b')
        app.shown(None, SEVERITIES + says)
        rows = [node.name for node in app.all(None, SEVERITIES + '.*')]
        at = next(i for i, name in enumerate(rows) if re.fullmatch(SEVERITIES + says, name))
        app.key(*['Down'] * at, 'Return')
        gui.until(f'the list to close on {says}', lambda: not [
            node for node in app.all(None, SEVERITIES + says) if gui.has_room(node)])
        gui.until(f'{says} to be seen near by', lambda: picture(app) != before)


def fly_some(share):
    def test(program, folder):
        assert len(ROWS) == 21
        for says, changes in ROWS[share::4]:
            fly(program, folder, says, changes)
    test.__name__ = f'every_check_flies_to_its_place_{share + 1}_of_4'
    return test


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
    *[fly_some(share) for share in range(4)],
    speaks_what_the_person_speaks,
])
