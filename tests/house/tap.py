# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the scans share: the files of the project as text, and a report in TAP.

A scan is a function from {path: text} to a list of faults. Each runs twice: over the project,
where it should find nothing, and over a small made-up project with one fault planted in it, so
that a scan that has stopped seeing anything fails.
"""

import gettext
import pathlib
import subprocess
import sys
import tempfile

FOLDERS = ['src', 'tests', 'data', 'po', 'help', '.ci']
TEXT = {'.c', '.h', '.cc', '.py', '.ui', '.css', '.xml', '.build', '.page', '.md', '.json', '.in',
        '.sh', '.svg', '.po', '.benchfold', ''}


def project(root):
    """{path relative to root: text} of every text file in the project's folders."""
    root = pathlib.Path(root)
    files = {}
    paths = [path for path in root.iterdir() if path.is_file()]
    for folder in FOLDERS:
        paths += (path for path in (root / folder).rglob('*') if path.is_file())
    for path in sorted(paths):
        if path.suffix in TEXT and '__pycache__' not in path.parts:
            files[path.relative_to(root).as_posix()] = path.read_text(encoding='utf-8')
    return files


def complaints(command, folder):
    """What a tool says, run in a folder, where it is not content."""
    run = subprocess.run(command, cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE,
                         text=True)
    return run.stderr.splitlines() or ['it failed'] if run.returncode else []


def catalogue(text):
    """{English: translation} of a po file's text."""
    with tempfile.TemporaryDirectory() as name:
        path = pathlib.Path(name) / 'out.mo'
        subprocess.run(['msgfmt', '-o', path, '-'], input=text, check=True, text=True)
        with open(path, 'rb') as file:
            return gettext.GNUTranslations(file)._catalog


# Begins every po file: without it gettext takes letters for bytes.
PO_HEADER = 'msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\n"\n\n'


def run(scans):
    """scans: (name, scan, planted files that hold at least one fault). Exits with the result."""
    files = project(sys.argv[1])
    print(f'1..{2 * len(scans)}')
    number, failed = 0, False
    for name, scan, planted in scans:
        faults = scan(files)
        number += 1
        failed = failed or bool(faults)
        print(f'{"not ok" if faults else "ok"} {number} {name}')
        for fault in faults:
            print(f'# {fault}')
        number += 1
        seen = bool(scan(planted))
        failed = failed or not seen
        print(f'{"ok" if seen else "not ok"} {number} {name}: a planted fault is found')
    sys.exit(1 if failed else 0)
