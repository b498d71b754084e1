#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The help stands in every language, whole, and quotes the words that the window shows."""

import pathlib
import re
import tempfile

import tap

# Asked of translators by itstool; nobody is named.
CREDITS = 'msgctxt "_"\nmsgid "translator-credits"\nmsgstr ""\n'
# Labels that are GTK's own.
FOREIGN = {'Preview'}


def languages(files):
    return files.get('help/LINGUAS', '').split()


def write(folder, files, wanted):
    for path in wanted:
        if path in files:
            (folder / path).parent.mkdir(parents=True, exist_ok=True)
            (folder / path).write_text(files[path], encoding='utf-8')


def complete(files):
    """Nothing untranslated, nothing unsure, nothing missing."""
    pages = sorted(path for path in files if re.match(r'help/C/.*\.page$', path))
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        write(folder, files, [*pages, *(f'help/{one}/{one}.po' for one in languages(files))])
        faults = tap.complaints(['itstool', '-o', 'now.pot', *pages], folder)
        asked = (folder / 'now.pot').read_text(encoding='utf-8')
        (folder / 'now.pot').write_text(asked.replace(CREDITS, ''), encoding='utf-8')
        for one in languages(files):
            faults += [line for line in tap.complaints(
                ['msgcmp', f'help/{one}/{one}.po', 'now.pot'], folder) if ': warning: ' not in line]
    return faults


def listed(files):
    """The help speaks what the window speaks, and LINGUAS names what is there."""
    there = {path.split('/')[1] for path in files if re.match(r'help/(\w+)/\1\.po$', path)}
    window = set(files.get('po/LINGUAS', '').split())
    return [f'help/{one}/{one}.po, help/LINGUAS and po/LINGUAS disagree'
            for one in (there ^ set(languages(files))) | (there ^ window)]


def labels(window):
    """{label as the window shows it: as it shows it translated}, and what stands before a colon."""
    shown = {}
    for english, said in window.items():
        if isinstance(english, str):
            english, said = (text.replace('_', '') for text in (english, said))
            shown.setdefault(english.split(':')[0], set()).add(said.split(':')[0])
            shown.setdefault(english, set()).add(said)
    return shown


def quoted(text):
    return re.findall(r'<gui>(.*?)</gui>', text)


def misquoted(english, said, shown):
    wanted, said = quoted(english), quoted(said)
    if len(wanted) != len(said):
        return [f'{len(said)} labels where the English has {len(wanted)}: {english[:60]}']
    return [f'“{label}” is {shown.get(label, "nowhere")} in the window, and here {said}'
            for label in wanted
            if label not in FOREIGN and not shown.get(label, set()) & set(said)]


def quotes(files):
    """A label that the help names is one of the window's, in English and in translation."""
    faults = []
    for one in languages(files):
        shown = labels(tap.catalogue(files.get(f'po/{one}.po', '')))
        said = tap.catalogue(files.get(f'help/{one}/{one}.po', ''))
        faults += [f'{one}: {fault}' for english, text in said.items()
                   for fault in misquoted(english, text, shown)]
    return faults


PAGE = ('<page xmlns="http://projectmallard.org/1.0/" type="topic" id="a">'
        '<title>Press <gui>Print</gui></title></page>')


def planted(said, window='msgid "_Print"\nmsgstr "_Drucken"\n', flags=''):
    """A help of one sentence, and what one language says of it."""
    return {'po/LINGUAS': 'de', 'help/LINGUAS': 'de', 'help/C/a.page': PAGE, 'po/de.po': tap.PO_HEADER + window,
            'help/de/de.po': f'{tap.PO_HEADER}{flags}msgid "Press <gui>Print</gui>"\nmsgstr "{said}"\n'}


def main():
    tap.run([
        ('every sentence is translated', complete, planted('')),
        ('no translation is unsure', complete, planted('<gui>Drucken</gui>', flags='#, fuzzy\n')),
        ('languages are listed', listed, {'po/LINGUAS': 'de es', 'help/LINGUAS': 'de',
                                          'help/de/de.po': ''}),
        ('labels are those of the translated window', quotes, planted('<gui>Druck</gui> drücken')),
        ('labels are those of the window', quotes,
         planted('<gui>Drucken</gui> drücken', window='msgid "Save"\nmsgstr "Drucken"\n')),
    ])


if __name__ == '__main__':
    main()
