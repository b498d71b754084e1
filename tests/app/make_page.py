#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the tests of the page Make share: the parts they open, and how they come there."""

import os
import pathlib

EXAMPLES = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples'
TRAY = EXAMPLES / 'spoke-tray.benchfold'


def open_make(app):
    app.titled('Spoke tray')
    app.key('alt+2')
    app.shown('list item', 'Take a flat piece.*')


def open_pages(app):
    open_make(app)
    app.key('alt+a')
    app.shown(None, 'Page A1')
