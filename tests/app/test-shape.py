#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The page Shape from outside: edges walked, clicked, sized and worked by keys and pointer."""

import re
import subprocess

import gui
from bench_top import (BARE, WALL, click_edge, extents, give_size, has_focus, on_bench, place_here,
                       press_here, saved, walk_to, write)


def edges_are_walked_by_keys(program, folder):
    with gui.App(program, write(folder, WALL)) as app:
        walk_to(app, 'Blank and formed part')
        app.key('Tab')
        has_focus(app, 'Base edge 1, 200 mm, front wall')
        app.key('Up')
        has_focus(app, 'Tip of front, 40 mm')
        app.key('Down')
        has_focus(app, 'Base edge 1')
        app.key('Left')
        has_focus(app, 'Base point 1')
        app.key('Left')
        has_focus(app, 'Base edge 4, 120 mm')
        app.key('Escape')
        has_focus(app, 'Blank and formed part')
        walk_to(app, 'Width of the base')
        walk_to(app, 'Length of front')
        walk_to(app, 'Angle of front')


def a_wall_is_turned_up_by_the_pointer(program, folder):
    path = write(folder, BARE)
    with gui.App(program, path) as app:
        click_edge(app, 'Base edge 3, 200 mm')
        press_here(app, 'Turn up')
        on_bench(app, 'push button', 'Base edge 3, 200 mm, back wall')
        has_focus(app, 'Length of back')
        app.type('4 cm')
        app.key('Return')
        app.key('Escape')
        on_bench(app, 'push button', 'Tip of back, 40 mm')
        wall, = saved(app, path)['flanges']
        assert (wall['edge'], wall['length'], wall['turn']) == (2, 40, 'up'), wall


def a_wall_is_made_and_unmade_by_keys(program, folder):
    path = write(folder, BARE)
    with gui.App(program, path) as app:
        walk_to(app, 'Base edge 2')
        app.key('Return')
        on_bench(app, 'push button', 'Turn down')
        app.key('Escape')
        has_focus(app, 'Base edge 2')
        app.key('Menu')
        press_here(app, 'Turn down')
        on_bench(app, 'push button', 'Base edge 2, 120 mm, right wall')
        has_focus(app, 'Length of right')
        app.key('Tab')
        has_focus(app, 'Angle of right')
        app.key('Up', 'Up')
        on_bench(app, 'label', 'opening 88°, leans in')
        app.key('Escape')
        has_focus(app, 'Base edge 2')
        wall, = saved(app, path)['flanges']
        assert (wall['angle'], wall['turn']) == (92, 'down'), wall
        app.key('Delete')
        on_bench(app, 'push button', 'Base edge 2, 120 mm')
        assert saved(app, path).get('flanges', []) == []


def a_flange_hangs_on_the_side_of_a_wall(program, folder):
    path = write(folder, WALL)
    with gui.App(program, path) as app:
        walk_to(app, 'Tip of front')
        app.key('Right', 'Right')
        has_focus(app, 'End side of front, 37 mm')
        app.key('Return')
        press_here(app, 'Turn up')
        on_bench(app, 'push button', 'End side of front, .*, lip')
        has_focus(app, 'Length of lip')
        app.key('Escape')
        has_focus(app, 'End side of front')
        app.key('Up')
        has_focus(app, 'Tip of lip, 20 mm')
        app.key('Down')
        has_focus(app, 'End side of front')
        click_edge(app, 'Start side of front.*')
        press_here(app, 'Turn down')
        on_bench(app, 'push button', 'Start side of front, .*, lip 2')
        has_focus(app, 'Length of lip 2')
        app.key('Escape')
        flanges = saved(app, path)['flanges']
        assert [(f['on'], f['edge'], f['turn']) for f in flanges[1:]] == [
            ('front', 'end', 'up'), ('front', 'start', 'down')], flanges


def the_popover_keeps_what_is_done_in_it(program, folder):
    """A click on its words, and a scroll there, are not for what lies beneath; keys that hold
    everywhere hold there, too."""
    with gui.App(program, write(folder, BARE)) as app:
        click_edge(app, 'Base edge 3, 200 mm')
        on_bench(app, 'push button', 'Turn up')
        before = extents(on_bench(app, 'push button', 'Base edge 2, 120 mm'))
        gui.click_at('the title', lambda: place_here(app, 'label', 'Base edge 3, 200 mm'))
        gui.xdo('click', 4, 'click', 4)
        on_bench(app, 'push button', 'Turn up')
        assert extents(on_bench(app, 'push button', 'Base edge 2, 120 mm')) == before
        press_here(app, 'Turn up')
        on_bench(app, 'push button', 'Base edge 3, 200 mm, back wall')
        has_focus(app, 'Length of back')
        app.key('Up')
        on_bench(app, 'push button', 'Tip of back, 21 mm')
        app.key('ctrl+z')
        on_bench(app, 'push button', 'Tip of back, 20 mm')


def sizes_are_typed_beside_their_edges(program, folder):
    path = write(folder, WALL)
    with gui.App(program, path) as app:
        give_size(app, 'Width of the base', '250')
        on_bench(app, 'push button', 'Base edge 1, 250 mm, front wall')
        give_size(app, 'Length of front', '200/3')
        on_bench(app, 'push button', 'Tip of front, 66.7 mm')
        give_size(app, 'Length of front', 'long')
        on_bench(app, 'label', r'“long” is no number.*|.*number.*')
        app.key('Escape')
        gui.until('the old size', lambda: app.text(on_bench(app, 'text', 'Length of front')) == '66.7')
        give_size(app, 'Angle of front', '105')
        part = saved(app, path)
        assert part['base']['outline'] == [[0, 0], [250, 0], [250, 120], [0, 120]], part['base']
        assert abs(part['flanges'][0]['length'] - 200 / 3) < 1e-9 and \
            part['flanges'][0]['angle'] == 105, part['flanges']
        app.key('ctrl+z', 'ctrl+z')
        on_bench(app, 'push button', 'Tip of front, 40 mm')


def decimal_comma(folder, language):
    """The environment of somebody whose numbers have a comma."""
    subprocess.run(['localedef', '-i', 'de_DE', '-f', 'UTF-8', folder / 'de_DE.UTF-8'],
                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
    return {'LOCPATH': str(folder), 'LC_ALL': 'de_DE.UTF-8', 'LANGUAGE': language}


def a_decimal_comma_is_taken(program, folder):
    path = write(folder, WALL)
    with gui.App(program, path, env=decimal_comma(folder, 'en')) as app:
        give_size(app, 'Length of front', '62,5')
        on_bench(app, 'push button', 'Tip of front, 62,5 mm')
        assert saved(app, path)['flanges'][0]['length'] == 62.5
        assert '62.5' in path.read_text()


def said(app):
    """All that the window says, to eyes and to screen readers."""
    for node in app.all():
        yield from (node.name, node.description)
        text = gui.text_of(node)
        if text:
            yield text


def a_german_reads_no_decimal_point(program, folder):
    wall = {**WALL['flanges'][0], 'length': 40.5, 'angle': 72.5}
    flanges = [{**wall, 'id': f'w{edge}', 'edge': edge} for edge in range(4)]
    opening = {'on': 'base', 'shape': 'round', 'at': [60.5, 60.5], 'diameter': 6.5}
    path = write(folder, {**WALL, 'flanges': flanges, 'openings': [opening]})
    with gui.App(program, path, env=decimal_comma(folder, 'de')) as app:
        app.bench = app.shown(None, 'Zuschnitt und gebogenes Teil')
        on_bench(app, 'push button', 'Freie Kante von w0, 40,5 mm')
        walk_to(app, 'Freie Kante von w0')
        app.key('Return')
        on_bench(app, 'label', 'Öffnung 107,5°.*')
        on_bench(app, 'push button', 'Loch: die Grundfläche, 6,5 mm')
        words = set(said(app))
        app.key('Escape')
        has_focus(app, 'Freie Kante von w0')
        app.key('Right', 'Right', 'Right')
        has_focus(app, 'Grundpunkt 2')
        app.key('Return')
        on_bench(app, 'label', 'Braucht [0-9]+,[0-9]+ mm.*')
        words.update(said(app))
        app.key('Escape', 'alt+2')
        app.shown('list item', '.*5,5 mm.*|.*6,5 mm.*')
        words.update(said(app))
        assert any('40,5' in line for line in words)
        points = [line for line in words if re.search(r'[0-9][.][0-9]', line)]
        assert not points, points


gui.main([
    edges_are_walked_by_keys,
    a_wall_is_turned_up_by_the_pointer,
    a_wall_is_made_and_unmade_by_keys,
    a_flange_hangs_on_the_side_of_a_wall,
    the_popover_keeps_what_is_done_in_it,
    sizes_are_typed_beside_their_edges,
    a_decimal_comma_is_taken,
    a_german_reads_no_decimal_point,
])
