#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""One vocabulary. Metal is what a part is made of, a blank is the flat part, stock is what blanks
are cut from, a page is paper: "sheet" could be any of them, so it stands only in "sheet metal".
"""

import re

import tap

STRING = r'"((?:[^"\\]|\\.)*)"'


def uncommented(text):
    return re.sub(r'/\*.*?\*/|//[^\n]*', ' ', text, flags=re.S)


def source_strings(text):
    return re.findall(STRING, re.sub(r'^\s*#\s*include.*$', '', uncommented(text), flags=re.M))


def page_text(text):
    return [re.sub(r'<[^>]*>', ' ', re.sub(r'<!--.*?-->', ' ', text, flags=re.S))]


def read_by_people(files):
    """(path, text) of what a person reads: strings, templates, help, metadata, README."""
    for path, text in files.items():
        if re.match(r'src/.*\.[ch]$', path):
            strings = source_strings(text)
        elif path.endswith(('.ui', '.page')) or re.match(r'data/.*\.(in|xml)$', path):
            strings = page_text(text)
        elif path.endswith('.benchfold') or path == 'README.md':
            strings = [text]
        else:
            continue
        for string in strings:
            yield path, string


def one_word(files):
    faults = []
    for path, text in read_by_people(files):
        for match in re.finditer(r'\b\w*sheets?\b(?![ -]metal)', text, re.I):
            if 'stylesheet' not in match.group().lower():
                around = text[max(match.start() - 30, 0):match.end() + 30].replace('\n', ' ')
                faults.append(f'{path}: "{around}"')
    return faults


def placeholders(files):
    """A function with a placeholder in a sentence tells translators what will stand there."""
    faults = []
    for path, text in files.items():
        if not re.match(r'src/.*\.c$', path):
            continue
        for match in re.finditer(r'\bN?_\s*\(\s*((?:' + STRING + r'\s*)+)', text):
            if not re.search(r'%[-+0-9.*$]*[a-zA-Z]', match.group(1).replace('%%', '')):
                continue
            if 'Translators:' not in text[:match.start()].rsplit('\n}\n', 1)[-1]:
                line = text.count('\n', 0, match.start()) + 1
                faults.append(f'{path}:{line}: no "Translators:" comment before a placeholder')
    return faults


def colours(files):
    """Cut lines are black and bend lines green or purple; the other pairing belongs to others."""
    faults = []
    for path, text in files.items():
        if re.match(r'src/(paint|write)/.*\.[ch]$', path):
            for match in re.finditer(r'#(ff0000|f00|0000ff|00f)\b', text, re.I):
                faults.append(f'{path}: {match.group()}')
    return faults


tap.run([
    ('"sheet" stands only in "sheet metal"', one_word,
     {'src/app/a.c': '_("Print this sheet")', 'src/app/b.c': '"sheet metal"'}),
    ('placeholders are explained', placeholders, {'src/app/a.c': 'x = _("%d pages");'}),
    ('no red and blue lines', colours, {'src/paint/a.c': '"#ff0000"'}),
])
