#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The sums behind the numbers of a bend, and how true a size is to be expected."""

import os
import pathlib

from bench_top import click_edge

import gui

TRAY = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples' / 'spoke-tray.benchfold'


def from_the_details_by_keys(program, folder):
    with gui.App(program, TRAY) as app:
        app.click(app.shown(None, 'Bending: over a bar'))
        app.shown(None, 'Details: radius, K, push…')
        app.key('Up', 'Up', 'Up', 'Return')
        app.dialogue('Bending, in detail')
        app.key('alt+u')
        window = app.dialogue('The sums')
        app.shown('label', r'K = 0\.42 ± 0\.06')
        # The tray is 1.2 mm, bent to R 1.2, square: BA = π/2 (1.2 + 0.42 · 1.2) = 2.6766.
        app.shown('label', r'BA = θ \(R \+ K t\) = .* = 2\.6766 mm')
        app.wait('label', r'(?s)τ = .*S = \(R \+ t\) τ = .* = 2\.4 mm.*')
        app.wait('label', r'F = M / lever = .* N')
        assert app.find('label', '.*of what its plate allows.*') is None
        app.click(app.shown('text', 'Hand brake’s plate: thickness'), window)
        app.type('1.2')
        app.key('Tab')
        app.type('1000')
        app.key('Return')
        # As thick, mild as the plate is: the walls of the back are 310 of 1000 wide.
        app.wait('label', 'This brake takes it: 3[01] % of what its plate allows.')
        app.key('Escape')
        app.dialogue('Bending, in detail')
        app.key('Escape')
        app.focus()


def from_the_step_of_a_bend(program, folder):
    with gui.App(program, TRAY) as app:
        app.key('alt+2')
        app.shown('label', 'Metal, step 1 of 1')
        while app.find('label', 'Bend, step 2 of .*') is None:
            app.key('alt+d')
        app.click(app.shown('push button', 'Show the sum…'))
        app.dialogue('The sums')
        app.shown(None, 'front')
        app.shown('label', 'Bend allowance')
        app.key('Escape')
        app.focus()


def a_size_says_how_true_it_will_be(program, folder):
    with gui.App(program, TRAY) as app:
        click_edge(app, 'Tip of front.*')
        app.shown('label', 'expect 35 ± 1, mostly from the cutting')
        app.key('Escape')
        click_edge(app, 'Base edge 1, .*')
        app.shown('label', 'expect 310 ± 0.8, mostly from .*\nexpect 35 ± 1, .*')
        app.key('Escape')


gui.main([from_the_details_by_keys, from_the_step_of_a_bend, a_size_says_how_true_it_will_be])
