#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The page Shape from outside: walls, edges and points moved by pointer and keys."""

import gui
from bench_top import (BARE, WALL, bench, click_edge, drag, has_focus, on_bench, press_here,
                       saved, walk_to, write)


def a_wall_is_dragged_in_one_step(program, folder):
    path = write(folder, WALL)
    with gui.App(program, path) as app:
        on_bench(app, 'push button', 'Tip of front, 40 mm')
        drag(app, 'Tip of front.*', 0, 40, aside=(-60, 0))
        app.titled('Plate (not saved)')
        longer = saved(app, path)['flanges'][0]['length']
        assert 50 < longer < 90 and longer == round(longer), longer
        app.key('ctrl+z')
        on_bench(app, 'push button', 'Tip of front, 40 mm')


def a_base_edge_and_a_point_are_dragged(program, folder):
    path = write(folder, BARE)
    with gui.App(program, path) as app:
        on_bench(app, 'push button', 'Base edge 2, 120 mm')
        drag(app, 'Base edge 2.*', 40, 0, aside=(0, 30))
        app.titled('Plate (not saved)')
        outline = saved(app, path)['base']['outline']
        assert outline[1][0] > 205 and outline[2][0] == outline[1][0], outline
        assert outline[1][1] == 0 and outline[2][1] == 120, outline
        app.key('Escape')
        click_edge(app, 'Base edge 2.*', 0, 30)
        on_bench(app, 'push button', 'Turn up')
        app.key('Escape')
        drag(app, 'Base point 3', 0, -45)
        app.titled('Plate (not saved)')
        moved = saved(app, path)['base']['outline']
        assert moved[2][1] > 125 and moved[:2] == outline[:2] and moved[3] == outline[3], moved


def points_are_added_and_taken_away(program, folder):
    path = write(folder, WALL)
    with gui.App(program, path) as app:
        walk_to(app, 'Base edge 2')
        app.key('Return')
        press_here(app, 'New point')
        has_focus(app, 'Base point 3')
        app.key('ctrl+Right', 'ctrl+Right')
        gui.until('the point to go', lambda: 'not saved' in app.title())
        assert saved(app, path)['base']['outline'][2] == [202, 60]
        app.key('Delete')
        gui.until('the point to be gone', lambda: not any(
            node.name == 'Base point 5' for node in gui.walk(bench(app))))
        assert len(saved(app, path)['base']['outline']) == 4


gui.main([
    a_wall_is_dragged_in_one_step,
    a_base_edge_and_a_point_are_dragged,
    points_are_added_and_taken_away,
])
