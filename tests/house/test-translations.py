#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every sentence of the sources stands in every language, whole, with the same placeholders."""

import pathlib
import tempfile

import tap

# What a terminal shows without breaking lines.
TERMINAL_COLUMNS = 80

# The keywords of meson's preset "glib", as far as the sources use them.
XGETTEXT = ['xgettext', '--from-code=UTF-8', '--keyword=_', '--keyword=N_', '--keyword=C_:1c,2',
            '--keyword=NC_:1c,2', '--keyword=ngettext:1,2', '--keyword=g_dngettext:2,3',
            '--keyword=g_dpgettext2:2c,3', '-f', 'po/POTFILES', '-o', 'now.pot']


def languages(files):
    return files.get('po/LINGUAS', '').split()


def unpack(files, folder):
    """The files that the translations are about, as files."""
    wanted = files.get('po/POTFILES', '').split()
    for path in [*wanted, 'po/POTFILES', *(f'po/{language}.po' for language in languages(files))]:
        if path in files:
            (folder / path).parent.mkdir(parents=True, exist_ok=True)
            (folder / path).write_text(files[path], encoding='utf-8')


def each_language(files, command):
    """Runs a tool for each language; command: from a language to its words."""
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        unpack(files, folder)
        faults = tap.complaints(XGETTEXT, folder)
        for language in languages(files):
            faults += [f'{language}: {line}' for line in tap.complaints(command(language), folder)]
        return faults


def complete(files):
    """Nothing untranslated, nothing unsure, nothing missing."""
    return each_language(files, lambda language: ['msgcmp', f'po/{language}.po', 'now.pot'])


def placeholders(files):
    return each_language(files, lambda language: ['msgfmt', '--check', '-o', 'out.mo',
                                                  f'po/{language}.po'])


def listed(files):
    """A language is built if LINGUAS names it, and LINGUAS names what is there."""
    there = {path[len('po/'):-len('.po')] for path in files
             if path.startswith('po/') and path.endswith('.po')}
    return [f'po/{language}.po and po/LINGUAS disagree'
            for language in there ^ set(languages(files))]


def usage_fits(files):
    """What --help prints fits a terminal."""
    faults = []
    for language in languages(files):
        texts = tap.catalogue(files.get(f'po/{language}.po', ''))
        faults += [f'{language}: too long: {line}' for english, text in texts.items()
                   if isinstance(english, str) and english.startswith('Usage:')
                   for line in text.splitlines() if len(line) > TERMINAL_COLUMNS]
    return faults


def planted(said, english='%s is cut'):
    """A project of one sentence, and what one language says of it."""
    return {'po/LINGUAS': 'de', 'po/POTFILES': 'src/a.c',
            'src/a.c': 'char *a (void) { return f (_ ("%s is cut"), b); }',
            'po/de.po': f'{tap.PO_HEADER}#, c-format\nmsgid "{english}"\nmsgstr "{said}"\n'}


def main():
    tap.run([
        ('every sentence is translated', complete, planted('', '%s is bent')),
        ('placeholders are kept', placeholders, planted('%d wird geschnitten')),
        ('languages are listed', listed, {'po/LINGUAS': 'de es', 'po/de.po': ''}),
        ('the usage fits a terminal', usage_fits, planted('x' * 81, 'Usage:')),
    ])


if __name__ == '__main__':
    main()
