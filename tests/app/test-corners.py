#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Corners and sides on the page Shape, by pointer and keys: how corners of the base and of flanges
close or are finished, with what gap and relief; how far sides are set in, and how they lean."""

import gui
from bench_top import (WALL, choose_here, click_edge, has_focus, is_there, on_bench, press_here, saved,
                       walk_to, write)


def a_corner_closes_and_another_is_finished(program, folder):
    right = {'id': 'right', 'on': 'base', 'edge': 1, 'length': 40, 'angle': 90, 'turn': 'up'}
    path = write(folder, {**WALL, 'flanges': [WALL['flanges'][0], right]})
    with gui.App(program, path) as app:
        walk_to(app, 'Base edge 2')
        app.key('Left')
        has_focus(app, 'Base point 2')
        app.key('Return')
        choose_here(app, 'right covers front')
        app.key('Escape')
        has_focus(app, 'Base point 2')
        corner, = saved(app, path)['corners']
        assert (corner['at'], corner['join']) == (1, 'covers-after'), corner
        app.key('ctrl+z')
        assert not saved(app, path).get('corners')
        app.key('ctrl+shift+z')
        walk_to(app, 'Base edge 4')
        app.key('Left')
        has_focus(app, 'Base point 4')
        app.key('Return')
        choose_here(app, 'Rounded')
        walk_to(app, 'Size of the corner')
        app.key('ctrl+a')
        app.type('12')
        app.key('Return')
        app.key('Escape')
        corner = saved(app, path)['corners'][1]
        assert (corner['at'], corner['finish'], corner['size']) == (3, 'round', 12), corner


LIPS = {**WALL, 'flanges': [
    WALL['flanges'][0],
    {'id': 'top', 'on': 'front', 'edge': 'tip', 'length': 20, 'angle': 90, 'turn': 'up'},
    {'id': 'ear', 'on': 'front', 'edge': 'start', 'length': 20, 'angle': 90, 'turn': 'up'}]}


def two_lips_close_their_corner(program, folder):
    """By the square at the end of the selected tip, and by keys."""
    path = write(folder, LIPS)
    with gui.App(program, path) as app:
        click_edge(app, 'Tip of front.*', -60)
        on_bench(app, 'text', 'Length of front')
        app.key('Escape')
        has_focus(app, 'Tip of front')
        click_edge(app, 'Start corner of front')
        on_bench(app, 'label', 'How the corner closes')
        assert not is_there(app, 'check box', 'Folded double')
        choose_here(app, 'top covers ear')
        app.key('Escape')
        has_focus(app, 'Start corner of front')
        corner, = saved(app, path)['corners']
        assert (corner['on'], corner['at'], corner['join']) == ('front', 0, 'covers-after'), corner
        app.key('Right', 'Left')
        has_focus(app, 'Start corner of front')
        app.key('Return')
        choose_here(app, 'Untrimmed')
        app.key('ctrl+z', 'ctrl+z')
        gui.until('the join to be undone', lambda: on_bench(app, 'check box', 'Like all corners')
                  .getState().contains(gui.pyatspi.STATE_CHECKED))
        app.key('Escape')
        assert not saved(app, path).get('corners')
        click_edge(app, 'Tip of ear.*')
        app.key('Escape', 'Right')
        has_focus(app, 'End corner of ear')
        app.key('Return')
        choose_here(app, 'Cut off')
        app.key('Escape')
        corner, = saved(app, path)['corners']
        assert (corner['on'], corner['at'], corner['finish']) == ('ear', 1, 'chamfer'), corner


def gap_and_relief_of_a_corner_are_typed(program, folder):
    """An empty field is the usual size, which stands in it; what a relief needs stands beside."""
    right = {'id': 'right', 'on': 'base', 'edge': 1, 'length': 40, 'angle': 90, 'turn': 'up'}
    path = write(folder, {**WALL, 'flanges': [WALL['flanges'][0], right]})
    with gui.App(program, path) as app:
        walk_to(app, 'Base edge 2')
        app.key('Left', 'Return')
        on_bench(app, 'label', r'Needs 4\.73 mm, and 1\.5 mm more for a drill that wanders\.')
        walk_to(app, 'Gap of the corner')
        app.type('0.25')
        app.key('Return')
        walk_to(app, 'Diameter of the relief')
        app.key('Up')
        gui.until('a size from the usual on',
                  lambda: app.text(on_bench(app, 'text', 'Diameter of the relief')) == '6.6')
        app.key('ctrl+a')
        app.type('8')
        app.key('Return')
        corner, = saved(app, path)['corners']
        assert corner['gap'] == 0.25, corner
        assert corner['relief'] == {'shape': 'round', 'diameter': 8}, corner
        choose_here(app, 'Square relief')
        on_bench(app, 'label', r'Needs 3\.35 mm\.')
        walk_to(app, 'Side of the relief')
        app.key('ctrl+a', 'Delete', 'Return')
        corner, = saved(app, path)['corners']
        assert corner['relief'] == {'shape': 'square'}, corner
        choose_here(app, 'No relief')
        app.key('Escape')
        has_focus(app, 'Base point 2')
        corner, = saved(app, path)['corners']
        assert corner['relief'] == {'shape': 'none'}, corner
        app.key(*['ctrl+z'] * 6)
        assert not saved(app, path).get('corners')


def sides_are_set_in_and_lean(program, folder):
    path = write(folder, WALL)
    with gui.App(program, path) as app:
        walk_to(app, 'Base edge 1')
        app.key('Return')
        press_here(app, 'Ends and sides', stays=True)
        walk_to(app, 'Inset at the start of front')
        app.key('ctrl+a')
        app.type('2 cm')
        app.key('Return')
        walk_to(app, 'Inset at the end of front')
        app.key('Up', 'Up', 'Up')
        choose_here(app, 'Notch at the end')
        walk_to(app, 'Lean of the end side of front')
        app.key('ctrl+a')
        app.type('95')
        app.key('Return')
        on_bench(app, 'label', 'A side leans by an angle from −89 to 89\\.')
        app.key('ctrl+a')
        app.type('-10')
        app.key('Return')
        app.key('Escape')
        has_focus(app, 'Base edge 1')
        wall, = saved(app, path)['flanges']
        assert (wall['start'], wall['end']) == (20, 3), wall
        assert (wall['start_taper'], wall['end_taper']) == (0, -10), wall
        assert (wall['start_relief'], wall['end_relief']) == ('hole', 'notch'), wall
        app.key('ctrl+z', 'ctrl+z', 'ctrl+z')
        wall, = saved(app, path)['flanges']
        assert (wall['start'], wall['end'], wall['end_taper']) == (20, 0, 0), wall
        click_edge(app, 'Start side of front.*')
        on_bench(app, 'text', 'Inset at the start of front')
        app.key('Return')
        has_focus(app, 'Inset at the start of front')
        app.key('ctrl+a')
        app.type('0')
        app.key('Tab')
        has_focus(app, 'Lean of the start side of front')
        app.type('15')
        app.key('Return', 'Escape')
        wall, = saved(app, path)['flanges']
        assert (wall['start'], wall['start_taper']) == (0, 15), wall


gui.main([
    a_corner_closes_and_another_is_finished,
    two_lips_close_their_corner,
    gap_and_relief_of_a_corner_are_typed,
    sides_are_set_in_and_lean,
])
