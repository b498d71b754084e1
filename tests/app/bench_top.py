#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the tests of the page Shape share: parts to begin with, and how to find, press and drag what
lies on the bench top."""

import itertools
import json
import os
import pathlib
import re
import subprocess

import pyatspi

import gui

EXAMPLES = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples'

# A base of 200 × 120 with nothing on it, and the same with a front wall.
BARE = {'format': 'benchfold-part', 'version': 1, 'name': 'Plate', 'metal': {'thickness': 1.5},
        'base': {'outline': [[0, 0], [200, 0], [200, 120], [0, 120]]}}
WALL = {**BARE, 'flanges': [{'id': 'front', 'on': 'base', 'edge': 0, 'length': 40, 'angle': 90,
                             'turn': 'up'}]}


def write(folder, part):
    path = folder / 'part.benchfold'
    path.write_text(json.dumps(part))
    return path


def saved(app, path):
    """The part as it stands in the file after it was saved."""
    app.key('ctrl+s')
    gui.until('the part to be saved', lambda: 'not saved' not in app.title())
    return json.loads(path.read_text())


def focused(app):
    bench(app)
    return next((node.name for node in itertools.chain(gui.walk(app.bench), app.all())
                 if node.getState().contains(pyatspi.STATE_FOCUSED)), None)


def has_focus(app, name):
    gui.until(f'the keyboard at “{name}”, which is at “{focused(app)}”',
              lambda: focused(app) and name in focused(app), 15)


def walk_to(app, name):
    """Presses Tab until what is called so has the keyboard."""
    for _ in range(40):
        if name in (focused(app) or ''):
            return
        before = focused(app)
        app.key('Tab')
        try:
            gui.until('the keyboard to go on', lambda: focused(app) not in (None, before), 2)
        except AssertionError:
            pass
    raise AssertionError(f'Tab does not come to {name}, but to {focused(app)}')


def extents(node):
    box = node.queryComponent().getExtents(pyatspi.WINDOW_COORDS)
    return (box.x, box.y, box.width, box.height)


def bench(app):
    """The bench top, found once: to look through the whole window takes its time."""
    if not hasattr(app, 'bench'):
        app.bench = app.shown(None, 'Blank and formed part')
    return app.bench


def on_bench(app, role, name):
    return gui.until(f'{role} “{name}” on the bench', lambda: next(
        node for node in gui.walk(bench(app))
        if node.getRoleName() == role and re.fullmatch(name, node.name) and gui.has_room(node)))


def settled(app, role, name):
    """What is called so, once it stays in its place."""
    node = on_bench(app, role, name)
    gui.steady(f'“{name}”', lambda: extents(node))
    return node


def geometry(window):
    words = subprocess.run(['xdotool', 'getwindowgeometry', '--shell', window],
                           stdout=subprocess.PIPE, text=True, check=True).stdout
    place = dict(line.split('=') for line in words.split())
    return tuple(int(place[key]) for key in ('X', 'Y', 'WIDTH', 'HEIGHT'))


def popover_place(app):
    """Where the popover is on the display. Of the windows beside the main one it is the largest: a
    tooltip is one, too."""
    found = subprocess.run(['xdotool', 'search', '--onlyvisible', '--pid', str(app.process.pid)],
                           stdout=subprocess.PIPE, text=True).stdout.split()
    return max((geometry(window) for window in found if window != app.window),
               key=lambda place: place[2] * place[3])


def is_there(app, role, name):
    return any(node.getRoleName() == role and re.fullmatch(name, node.name) and gui.has_room(node)
               and node.getState().contains(pyatspi.STATE_SHOWING) for node in gui.walk(bench(app)))


def place_here(app, role, name):
    """Where the middle of something in the popover at an edge is on the display. The popover is a
    window of its own, which a slow display may still be moving."""
    node = on_bench(app, role, name)
    top = node
    while top.getRoleName() != 'filler' or top.parent.name != 'Blank and formed part':
        top = top.parent
    left, up = popover_place(app)[:2]
    x, y, width, height = extents(node)
    from_x, from_y = extents(top)[:2]
    return left + x - from_x + width // 2, up + y - from_y + height // 2


def press_here(app, name, stays=False):
    """Clicks a button of the popover at an edge, one that is gone once it has been pressed, unless it
    stays."""
    for _ in range(3):
        gui.click_at(name, lambda: place_here(app, 'push button', name))
        if stays:
            return
        try:
            gui.until(f'“{name}” to be gone', lambda: not is_there(app, 'push button', name), 6)
            return
        except AssertionError:
            pass
    raise AssertionError(f'“{name}” cannot be pressed')


def choose_here(app, name):
    """Ticks one of several choices of the popover at an edge."""
    for _ in range(3):
        gui.click_at(name, lambda: place_here(app, 'check box', name))
        try:
            gui.until(f'“{name}” to be chosen', lambda: on_bench(app, 'check box', name).getState()
                      .contains(gui.pyatspi.STATE_CHECKED), 6)
            return
        except AssertionError:
            pass
    raise AssertionError(f'“{name}” cannot be chosen')


def screen_place(app, node, dx=0, dy=0):
    """The middle of a node on the screen, dx and dy pixels away from it."""
    # Without a compositor the window has a border of its own that the bus does not count.
    left, up = geometry(app.window)[:2]
    x, y, width, height = extents(node)
    return left + x + width // 2 + 5 + dx, up + y + height // 2 + 5 + dy


def click_edge(app, name, dx=0, dy=0):
    """dx: aside of what stands in the edge's middle."""
    node = on_bench(app, 'push button', name)
    gui.click_at(name, lambda: screen_place(app, node, dx, dy))


def drag(app, name, dx, dy, aside=(0, 0)):
    x, y = screen_place(app, settled(app, 'push button', name), *aside)
    gui.xdo('mousemove', '--sync', x, y, 'mousedown', 1)
    for i in range(1, 11):
        gui.xdo('mousemove', '--sync', x + dx * i // 10, y + dy * i // 10)
    gui.xdo('mouseup', 1)


def give_size(app, name, words):
    node = on_bench(app, 'text', name)
    gui.click_at(name, lambda: screen_place(app, node))
    has_focus(app, name)
    app.key('ctrl+a')
    app.type(words)
    app.key('Return')
