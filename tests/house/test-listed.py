#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""No dead weight: what lies in the tree is built, tested, translated and licensed."""

import importlib.util
import pathlib
import re
import sys

import tap

SPDX = ('SPDX-FileCopyrightText: Benchfold contributors', 'SPDX-License-Identifier: GPL-3.0-or-later')
SPDX_SUFFIXES = ('.c', '.h', '.cc', '.py', '.sh')


def builds(files, under):
    return {path: text for path, text in files.items()
            if path.startswith(under) and path.endswith('meson.build')}


def named_by(path, texts):
    """Whether a build file at or above the file's folder names it (by name or relative path)."""
    parts = path.split('/')
    for i in range(len(parts)):
        text = texts.get('/'.join(parts[:i] + ['meson.build']), '')
        if f"'{'/'.join(parts[i:])}'" in text:
            return True
        # Tests are often listed by stem, in a foreach: 'test-ring' or just 'ring'.
        stem = '/'.join(parts[i:]).rsplit('.', 1)[0]
        if path.startswith('tests/') and re.search(rf"'({stem}|{stem.removeprefix('test-')})'", text):
            return True
    return False


def sources(files):
    texts = builds(files, 'src')
    return [f'{path} is built by no meson.build' for path in files
            if re.match(r'src/.*\.c$', path) and not named_by(path, texts)]


def headers(files):
    """A header that nobody includes is of no use."""
    used = set()
    for path, text in files.items():
        if path.endswith(('.c', '.h', '.cc')):
            used |= set(re.findall(r'#\s*include\s*"([^"]+)"', text))
    return [f'{path} is included by nothing' for path in files
            if re.match(r'src/.*\.h$', path) and path[len('src/'):] not in used]


def tests(files):
    texts = builds(files, 'tests')
    return [f'{path} is run by no meson.build' for path in files
            if re.match(r'tests/.*/test-[^/]*\.(c|py|sh)$', path) and not named_by(path, texts)]


def templates(files):
    listed = ''.join(text for path, text in files.items() if path.endswith('.gresource.xml'))
    return [f'{path} is in no gresource' for path in files
            if path.startswith('src/') and path.endswith(('.ui', '.css'))
            and path.rsplit('/', 1)[1] not in listed]


def listing(files):
    """What .ci/potfiles.py would write."""
    spec = importlib.util.spec_from_file_location(
        'potfiles', pathlib.Path(sys.argv[1]) / '.ci' / 'potfiles.py')
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module.listing(files)


def potfiles(files):
    listed, wanted = files.get('po/POTFILES', '').split(), listing(files)
    faults = [f'{path} has strings and is not in po/POTFILES: run .ci/potfiles.py'
              for path in wanted if path not in listed]
    faults += [f'po/POTFILES names {path}, which has no strings: run .ci/potfiles.py'
               for path in listed if path not in wanted]
    if listed != sorted(listed):
        faults.append('po/POTFILES is not in order: run .ci/potfiles.py')
    return faults


def licences(files):
    return [f'{path} lacks the two SPDX lines at its top' for path, text in files.items()
            if (path.endswith(SPDX_SUFFIXES) or text.startswith('#!'))
            and any(line not in '\n'.join(text.splitlines()[:4]) for line in SPDX)]


def examples(files):
    """An example that no meson.build installs would not reach a person. One line installs all."""
    names = [path for path in files if path.startswith('data/examples/')]
    installed = "install_subdir('examples'" in files.get('data/meson.build', '')
    return [] if installed and len(names) >= 7 else ['seven examples, installed, are expected']


tap.run([
    ('every source is built', sources, {'src/core/meson.build': "'b.c'", 'src/core/a.c': ''}),
    ('every header is used', headers, {'src/core/a.h': ''}),
    ('every test is run', tests, {'tests/core/test-a.c': ''}),
    ('every template is in a gresource', templates, {'src/app/a.ui': ''}),
    ('every string can be translated', potfiles,
     {'src/app/a.c': '_("Print")', 'po/POTFILES': ''}),
    ('every source has its licence', licences, {'src/core/a.c': '/* nothing */\n'}),
    ('every example is installed', examples, {'data/meson.build': ''}),
])
