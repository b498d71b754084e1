#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""From nothing to a printed template: an open tray, by keys alone and by the pointer alone (but for
the sizes, which are typed). Prints how many actions each took."""

import pathlib
import subprocess
import time

import gui

SIZES = ['200', '120', '40']


class Counted(gui.App):
    """Counts what a person does: a key, a number typed, a click."""

    def __init__(self, program, folder):
        self.actions = 0
        self.folder = folder
        super().__init__(program, cwd=folder)

    def key(self, *keys):
        self.actions += len(keys)
        super().key(*keys)

    def type(self, words):
        self.actions += 1
        super().type(words)

    def click(self, node, window=None):
        self.actions += 1
        super().click(node, window)

    def printed(self):
        """Waits for what the toolkit's own “Print to File” writes beside the program."""
        gui.until('the printed pages', lambda: self.pages() > 0)
        return self.pages()

    def pages(self):
        path = pathlib.Path(self.folder) / 'output.pdf'
        info = subprocess.run(['pdfinfo', path], stdout=subprocess.PIPE, text=True,
                              stderr=subprocess.DEVNULL).stdout
        return int(info.split('Pages:')[1].split()[0])

    def tell(self, how, began):
        print(f'# {how}: {self.actions} actions, {time.monotonic() - began:.1f} s', flush=True)


def made_the_tray(app):
    app.titled('Tray (not saved)')
    app.shown(None, 'Blank and formed part')


def by_keys_alone(program, folder):
    with Counted(program, folder) as app:
        app.shown('label', r'What are you making\?')
        began = time.monotonic()
        app.key('1')
        app.shown('text', 'length')
        for size in SIZES:
            app.key('ctrl+a')
            app.type(size)
            app.key('Return' if size == SIZES[-1] else 'Tab')
        made_the_tray(app)
        app.key('ctrl+p')
        app.dialogue('Print')
        app.shown('push button', r'_?Print.*')
        app.key('Tab', 'Down', 'space')
        time.sleep(0.5)  # the list's row takes a moment, and tells nobody
        app.key('alt+p')
        assert app.printed() == 2
        app.tell('keys', began)


def by_pointer(program, folder):
    with Counted(program, folder) as app:
        tray = app.shown('push button', 'Tray')
        began = time.monotonic()
        app.click(tray)
        for name, size in zip(['length', 'width', 'height'], SIZES):
            app.click(app.shown('text', name))
            super(Counted, app).key('ctrl+a')
            app.type(size)
        app.click(app.shown('push button', 'Make it'))
        made_the_tray(app)
        app.click(app.shown('push button', r'Print the template.*'))
        window = app.dialogue('Print')
        app.click(app.shown(None, 'Print to File'), window)
        time.sleep(0.5)
        app.click(app.shown('push button', '_Print Print'), window)
        assert app.printed() == 2
        app.tell('pointer', began)


gui.main([by_keys_alone, by_pointer])
