#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""An outline of one's own, drawn by clicks, by keys alone, and taken back."""

import json

import gui
from bench_top import on_bench, screen_place


def begin(app):
    app.shown('push button', 'My own outline')
    app.key('6')
    app.shown('status bar', 'Click for the first corner.*')
    return app.shown(None, 'The outline that is being drawn')


def outline_of(app, path):
    app.shown(None, 'Blank and formed part')
    app.save_as(path)
    return json.loads(path.read_text())['base']['outline']


def drawn_by_keys_alone(program, folder):
    with gui.App(program) as app:
        begin(app)
        app.key('Return', 'Right')
        app.type('120')
        app.key('Return')
        app.shown('status bar', '2 corners, the last edge 120 mm.*')
        app.key('Up')
        app.type('200/4')
        app.key('Return', 'Left')
        app.type('4 cm')
        app.key('Return')
        app.shown('status bar', '4 corners, the last edge 40 mm.*')
        app.key('Return')
        outline = outline_of(app, folder / 'own.benchfold')
        assert outline == [[0, 0], [120, 0], [120, 50], [80, 50]], outline


def refused_and_taken_back(program, folder):
    with gui.App(program) as app:
        begin(app)
        app.key('Return', 'Right')
        app.type('100')
        app.key('Return')
        app.shown('status bar', '2 corners.*')
        app.key('Return')
        app.shown('status bar', 'Three corners at least make an outline.')
        app.key('Left')
        app.type('60')
        app.key('Return')
        app.shown('status bar', 'That edge would cross or touch one that is drawn.*')
        app.key('Up')
        app.type('wide')
        app.type('5x')
        app.key('Return')
        app.shown('status bar', '.*(unit|number).*')
        app.key('Escape')
        app.shown('status bar', '2 corners.*')
        app.key('BackSpace')
        app.shown('status bar', '1 corner.*')
        app.key('Escape')
        app.shown('label', r'What are you making\?')


def drawn_by_clicks(program, folder):
    with gui.App(program) as app:
        page = begin(app)
        gui.until('room for the drawing', lambda: gui.has_room(page))
        places = []

        def stays():
            places.append(screen_place(app, page))
            return len(places) > 4 and len(set(places[-4:])) == 1

        gui.until('the drawing to stay in its place', stays)
        x, y = places[-1]
        corners = [(-200, 120), (200, 123), (198, -100), (-60, -97), (-203, 30), (-199, 121)]
        for number, (dx, dy) in enumerate(corners, 1):
            gui.xdo('mousemove', '--sync', x + dx - 7, y + dy - 3, 'mousemove', '--sync', x + dx,
                    y + dy, 'click', 1)
            if number < len(corners):
                app.shown('status bar', f'{number} corner.*')
        outline = outline_of(app, folder / 'own.benchfold')
        assert len(outline) == 5, outline
        # Drawn to the height and the side of other corners, and to whole steps.
        assert outline[0][1] == outline[1][1] and outline[1][0] == outline[2][0], outline
        assert outline[2][1] == outline[3][1] and outline[4][0] == outline[0][0], outline
        assert all(value % 5 == 0 for point in outline for value in point), outline
        on_bench(app, 'push button', r'Base edge 5, .*')


gui.main([
    drawn_by_keys_alone,
    refused_and_taken_back,
    drawn_by_clicks,
])
