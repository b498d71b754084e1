# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The window driven as a person drives it: keys and pointer by xdotool, names and roles by AT-SPI."""

import os
import pathlib
import re
import subprocess
import sys
import tempfile
import time
import traceback

import pyatspi

TRIES = 3
PATIENCE_S = 40  # how long anything may take to show, on a slow machine and under a sanitizer


def until(what, condition, patience_s=PATIENCE_S):
    """Waits until condition gives something, and gives that back."""
    end = time.monotonic() + patience_s
    while time.monotonic() < end:
        try:
            found = condition()
        except Exception:  # what is looked at may go while it is looked at
            found = None
        if found:
            return found
        time.sleep(0.05)
    raise AssertionError(f'waited in vain for {what}')


def walk(node):
    yield node
    for child in children(node):
        if child is not None:
            yield from walk(child)


def children(node):
    try:
        return list(node)
    except Exception:  # it went while it was looked at
        return []


def give_focus(window):
    """A window that is not seen yet takes no focus: that is an error, to be tried again."""
    xdo('windowfocus', '--sync', window)
    return True


def steady(what, read):
    """What read gives, once it gives the same for a while: a window takes some frames to lay out,
    and a popover to come to its place, and under a sanitizer a frame takes its time."""
    value, since, times = None, 0.0, 0

    def stays():
        nonlocal value, since, times
        now = read()
        if times == 0 or now != value:
            value, since, times = now, time.monotonic(), 0
        times += 1
        return times >= 4 and time.monotonic() - since >= 0.2

    until(f'{what} to stay in its place', stays, 3 * PATIENCE_S)
    return value


def text_of(node):
    """What stands in it; nothing where it holds no text."""
    try:
        content = node.queryText()
        return content.getText(0, content.characterCount)
    except NotImplementedError:
        return ''


def has_room(node):
    box = node.queryComponent().getExtents(pyatspi.WINDOW_COORDS)
    return box.width > 0 and box.height > 0


def xdo(*words):
    subprocess.run(['xdotool', *map(str, words)], check=True)


def click_at(what, middle):
    """Clicks at the point of the screen that middle gives, which may move until the pointer is
    there: a popover finds its place. A hand comes by many small moves; after a single leap into a
    window the toolkit has only heard that the pointer came in, not where it is, and the click is
    lost. So the pointer goes there in two."""
    place = steady(what, middle)
    for _ in range(5):
        xdo('mousemove', '--sync', place[0] - 3, place[1] - 2)
        xdo('mousemove', '--sync', *place)
        now = steady(what, middle)
        if now == place:
            break
        place = now
    xdo('click', 1)


class App:
    """One run of the program."""

    def __init__(self, program, *args, env=None, cwd=None):
        self.log = tempfile.NamedTemporaryFile('w+', suffix='.log')
        environment = {key: value for key, value in os.environ.items() if key != 'GTK_A11Y'}
        # With the accessibility bus on, GTK and the bus keep memory until the process ends; leaks
        # are looked for by the tests that run in one process, without it.
        options = environment.get('ASAN_OPTIONS', '')
        # Work that one test leaves unsaved is not offered to the next.
        self.state = tempfile.TemporaryDirectory()
        environment['XDG_STATE_HOME'] = self.state.name
        environment['ASAN_OPTIONS'] = ':'.join(filter(None, [options, 'detect_leaks=0']))
        command = [os.path.abspath(program), *map(str, args)]
        self.cwd = cwd
        self._start(command, {**environment, **(env or {})})
        try:
            self.node = until('the program on the bus', self._on_the_bus, 10)
        except AssertionError:
            # The very first program may be up before the bus's registry is, and is not seen then.
            self.process.kill()
            self.process.wait()
            self._start(command, {**environment, **(env or {})})
            self.node = until('the program on the bus', self._on_the_bus)
        until('its window', lambda: self.find('frame'))
        self.window = until('its window on the display', self._on_the_display)
        self.focus()

    def _on_the_bus(self):
        return next(app for app in pyatspi.Registry.getDesktop(0)
                    if app and app.get_process_id() == self.process.pid)

    def _on_the_display(self):
        found = subprocess.run(['xdotool', 'search', '--onlyvisible', '--pid',
                                str(self.process.pid)], stdout=subprocess.PIPE, text=True)
        return found.stdout.split()[-1]

    def all(self, role=None, name=None):
        return [node for node in walk(self.node)
                if (role is None or node.getRoleName() == role)
                and (name is None or re.fullmatch(name, node.name))]

    def find(self, role=None, name=None):
        return next((node for node in self.all(role, name)), None)

    def _start(self, command, environment):
        self.process = subprocess.Popen(command, stderr=self.log, env=environment, cwd=self.cwd)

    def wait(self, role, name):
        return until(f'{role} “{name}”', lambda: self.find(role, name))

    def shown(self, role, name):
        """As wait, but for what has been given room, not only made."""
        return until(f'{role} “{name}” to be seen', lambda: next(
            node for node in self.all(role, name) if has_room(node)))

    def title(self):
        return self.find('frame').name

    def titled(self, title):
        """Waits for the window's title: the bus hears of a change a moment after it is made."""
        until(f'the title “{title}”', lambda: self.title() == title)

    def run(self, action):
        """Runs one of the window's actions; False where it cannot be run now."""
        actions = self.find('frame').queryAction()
        names = [actions.getName(i) for i in range(actions.nActions)]
        return action in names and actions.doAction(names.index(action))

    def can(self, action):
        actions = until('the actions', lambda: self.find('frame').queryAction())
        return action in [actions.getName(i) for i in range(actions.nActions)]

    def key(self, *keys):
        xdo('key', '--delay', '40', *keys)

    def type(self, words):
        xdo('type', '--delay', '15', '--', words)

    def geometry(self, window=None):
        place = subprocess.run(['xdotool', 'getwindowgeometry', '--shell', window or self.window],
                               stdout=subprocess.PIPE, text=True, check=True).stdout
        return {key: int(value) for key, value in (line.split('=') for line in place.split())}

    def size(self):
        place = self.geometry()
        return place['WIDTH'], place['HEIGHT']

    def focus(self):
        until('the window to take the keyboard', lambda: give_focus(self.window))

    def click(self, node, window=None):
        """window: the one that the node is in, where that is not the program's own."""
        def middle():
            box = node.queryComponent().getExtents(pyatspi.WINDOW_COORDS)
            place = self.geometry(window)
            # Without a compositor the window has a border of its own that the bus does not count.
            return (place['X'] + box.x + box.width // 2 + 5,
                    place['Y'] + box.y + box.height // 2 + 5)

        click_at(node.name, middle)

    def text(self, node):
        content = node.queryText()
        return content.getText(0, content.characterCount)

    def type_path(self, title, path):
        """Gives that path to the toolkit's own file dialogue, which has that title."""
        self.dialogue(title)
        self.key('ctrl+a')
        self.type(str(path))
        self.key('Return')

    def save_as(self, path):
        self.key('ctrl+shift+s')
        self.type_path('Save the part', path)
        until(f'{path} to be written', path.exists)
        until('the part to count as saved', lambda: 'not saved' not in self.title())

    def dialogue(self, title):
        """Waits for a window of that title and gives it the focus. Returns it."""
        window = until(f'the window {title}', lambda: self.windows(title))[-1]
        until(f'{title} to take the keyboard', lambda: give_focus(window))
        return window

    def windows(self, title):
        return subprocess.run(['xdotool', 'search', '--onlyvisible', '--name', f'^{title}$'],
                              stdout=subprocess.PIPE, text=True).stdout.split()

    def end(self):
        """Ends the program by its own key, and fails where it said something on its way."""
        self.key('ctrl+q')
        self.ended()

    def ended(self):
        """Waits for the program to end, and fails where it said something on its way."""
        self.process.wait(PATIENCE_S)
        self.log.seek(0)
        said = [line for line in self.log if re.search(r'CRITICAL|WARNING|ERROR', line)]
        assert not said, said[:3]
        assert self.process.returncode == 0, self.process.returncode

    def __enter__(self):
        return self

    def __exit__(self, kind, value, trace):
        if self.process.poll() is None:
            if kind is None:
                self.end()
            else:
                self.process.kill()
                self.process.wait()


def attempt(test):
    """Runs one test in a folder of its own. Returns None, or how it failed."""
    with tempfile.TemporaryDirectory() as folder:
        try:
            test(sys.argv[1], pathlib.Path(folder))
            return None
        except Exception:
            return traceback.format_exc()


def main(tests):
    """tests: functions of (program, folder). sys.argv: the program. Reports in TAP. With
    BENCHFOLD_ONLY in the environment, those alone that have it in their name."""
    tests = [test for test in tests if os.environ.get('BENCHFOLD_ONLY', '') in test.__name__]
    # What a bus and its helpers print goes elsewhere (see run-gui), this alone is the report.
    sys.stdout = os.fdopen(int(os.environ.get('BENCHFOLD_TAP_FD', '1')), 'w')
    failed = False
    print(f'1..{len(tests)}', flush=True)
    for number, test in enumerate(tests, 1):
        name = test.__name__.replace('_', ' ')
        # On a busy machine a key or a click now and then comes to nothing. What fails every time, on
        # a program started anew, is no accident; what failed once is told all the same.
        for tried in range(1, TRIES + 1):
            trouble = attempt(test)
            if trouble is None:
                break
            for line in trouble.splitlines():
                print(f'# {name}, try {tried}: {line}', flush=True)
        failed = failed or trouble is not None
        print(f'{"not ok" if trouble else "ok"} {number} {name}', flush=True)
        for line in (trouble or '').splitlines()[-3:]:
            print(f'# {line}', flush=True)
    sys.exit(1 if failed else 0)
