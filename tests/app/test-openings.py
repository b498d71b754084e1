#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holes and cut-outs on the page Shape, by pointer and keys: chosen, sized, moved, made, removed."""

import gui
from bench_top import (BARE, WALL, click_edge, drag, give_size, has_focus, on_bench, press_here,
                       saved, walk_to, write)

HOLE = {'on': 'base', 'shape': 'round', 'at': [60, 60], 'diameter': 20}
SLOT = {'on': 'front', 'shape': 'slot', 'at': [100, 20], 'length': 40, 'width': 8, 'angle': 0}
OWN = {'on': 'base', 'shape': 'outline', 'points': [[120, 40], [160, 40], [140, 80]]}


def a_hole_is_sized_beside_itself(program, folder):
    path = write(folder, {**BARE, 'openings': [HOLE]})
    with gui.App(program, path) as app:
        click_edge(app, 'Hole in the base, 20 mm')
        has_focus(app, 'Hole in the base')
        give_size(app, 'Diameter of the hole', '25')
        on_bench(app, 'push button', 'Hole in the base, 25 mm')
        app.key('Tab')
        has_focus(app, 'From the left')
        app.key('ctrl+a')
        app.type('7 cm')
        app.key('Tab')
        has_focus(app, 'From the front')
        app.key('Up')
        hole, = saved(app, path)['openings']
        assert (hole['diameter'], hole['at']) == (25, [70, 61]), hole


def a_slot_is_walked_and_nudged_by_keys(program, folder):
    path = write(folder, {**WALL, 'openings': [SLOT]})
    with gui.App(program, path) as app:
        walk_to(app, 'Slot in front, 40 mm')
        app.key('Right', 'shift+Right', 'Up')
        app.titled('Plate (not saved)')
        app.key('Return')
        has_focus(app, 'Length of the cut-out')
        app.key('Tab')
        has_focus(app, 'Width of the cut-out')
        app.key('Tab')
        has_focus(app, 'Angle of the cut-out')
        app.key('Up')
        slot, = saved(app, path)['openings']
        assert slot['at'] == [111, 19] and slot['angle'] == 1, slot
        app.key('Escape')
        walk_to(app, 'Slot in front')
        app.key('Delete')
        app.titled('Plate (not saved)')
        assert saved(app, path).get('openings', []) == []


def an_outline_of_ones_own_is_dragged_and_removed(program, folder):
    path = write(folder, {**BARE, 'openings': [OWN]})
    with gui.App(program, path) as app:
        on_bench(app, 'push button', 'Cut-out in the base')
        drag(app, 'Cut-out in the base', 60, 30)
        app.titled('Plate (not saved)')
        moved = saved(app, path)['openings'][0]['points']
        by = [(a[0] - b[0], a[1] - b[1]) for a, b in zip(moved, OWN['points'])]
        assert len(set(by)) == 1 and by[0][0] > 5 and by[0][1] < -3, moved
        click_edge(app, 'Remove the hole')
        app.titled('Plate (not saved)')
        assert saved(app, path).get('openings', []) == []
        app.key('ctrl+z')
        on_bench(app, 'push button', 'Cut-out in the base')


def a_keyhole_is_made_from_the_popover(program, folder):
    path = write(folder, BARE)
    with gui.App(program, path) as app:
        walk_to(app, 'Base edge 1')
        app.key('Menu')
        has_focus(app, 'Width of the base')
        app.key('Tab', 'Tab', 'Tab', 'Tab')
        has_focus(app, 'Hole or cut-out')
        app.key('Return')
        on_bench(app, 'push button', 'Keyhole')
        app.key('Down')
        has_focus(app, 'Round hole')
        press_here(app, 'Keyhole')
        has_focus(app, 'Keyhole in the base, 12 mm')
        keyhole, = saved(app, path)['openings']
        assert keyhole['shape'] == 'keyhole' and keyhole['at'] == [100, 12], keyhole


def an_outline_of_ones_own_is_made_point_by_point(program, folder):
    path = write(folder, WALL)
    with gui.App(program, path) as app:
        click_edge(app, 'Tip of front.*', -60)
        press_here(app, 'Hole or cut-out', stays=True)
        press_here(app, 'Own outline')
        has_focus(app, 'Cut-out in front')
        walk_to(app, 'Point 1 of the cut-out in front')
        app.key('Left')
        give_size(app, 'Out from the bend', '11')
        point = saved(app, path)['openings'][0]['points']
        assert point == [[89, 11], [110, 14], [110, 26], [90, 26]], point
        click_edge(app, 'Point 3 of the cut-out in front')
        has_focus(app, 'Point 3 of the cut-out in front')
        click_edge(app, 'New point after this one')
        on_bench(app, 'push button', 'Point 5 of the cut-out in front')
        drag(app, 'Point 4 of the cut-out in front', 0, 15)
        app.titled('Plate (not saved)')
        points = saved(app, path)['openings'][0]['points']
        assert len(points) == 5 and points[3][0] == 100 and points[3][1] > 28, points
        app.key('Delete')
        has_focus(app, 'Cut-out in front')
        assert len(saved(app, path)['openings'][0]['points']) == 4
        app.key('ctrl+z', 'ctrl+z', 'ctrl+z')
        points = saved(app, path)['openings'][0]['points']
        assert points == [[89, 11], [110, 14], [110, 26], [90, 26]], points


gui.main([
    a_hole_is_sized_beside_itself,
    a_slot_is_walked_and_nudged_by_keys,
    an_outline_of_ones_own_is_dragged_and_removed,
    a_keyhole_is_made_from_the_popover,
    an_outline_of_ones_own_is_made_point_by_point,
])
