#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes po/POTFILES: every file with a sentence to translate, in order. A house test fails where
it is out of date."""

import pathlib
import re

ROOT = pathlib.Path(__file__).resolve().parent.parent


def translatable(path, text):
    """Whether a file, by its path and text, holds something to translate."""
    if path.startswith('data/'):
        return path.endswith(('.desktop.in', '.metainfo.xml.in'))
    if path.endswith('.ui'):
        return bool(re.search(r'translatable="(yes|true)"', text))
    if path.endswith('.c'):
        return bool(re.search(r'\b(N?C?_|ngettext|g_dngettext|g_dpgettext2?)\s*\(\s*"', text))
    return False


def listing(files):
    """The lines that po/POTFILES should have, given {path: text} of the project."""
    return sorted(path for path, text in files.items()
                  if path.startswith(('src/', 'data/')) and translatable(path, text))


def main():
    paths = [path for folder in ('src', 'data') for path in (ROOT / folder).rglob('*')
             if path.suffix in ('.c', '.ui', '.in')]
    files = {path.relative_to(ROOT).as_posix(): path.read_text(encoding='utf-8') for path in paths}
    (ROOT / 'po' / 'POTFILES').write_text('\n'.join(listing(files)) + '\n', encoding='utf-8')


if __name__ == '__main__':
    main()
