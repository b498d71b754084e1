#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What a desktop does with our files: the type of a part file, and the icons, as it sees them."""

import pathlib
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(sys.argv[1])
ID = 'org.benchfold.Benchfold'


def part_type():
    """The type that the MIME database, built from our package alone, gives to *.benchfold."""
    with tempfile.TemporaryDirectory() as folder:
        packages = pathlib.Path(folder) / 'packages'
        packages.mkdir()
        shutil.copy(ROOT / 'data' / f'{ID}.mime.xml', packages)
        subprocess.run(['update-mime-database', folder], check=True, capture_output=True)
        globs = (pathlib.Path(folder) / 'globs2').read_text(encoding='utf-8')
        aliases = (pathlib.Path(folder) / 'subclasses').read_text(encoding='utf-8')
    kind = 'application/vnd.benchfold.part+json'
    return f':{kind}:*.benchfold\n' in globs and f'{kind} application/json\n' in aliases


def desktop_file_agrees():
    text = (ROOT / 'data' / f'{ID}.desktop.in').read_text(encoding='utf-8')
    return 'MimeType=application/vnd.benchfold.part+json;\n' in text and f'Icon={ID}\n' in text


def drawn(name, size):
    """How many of an icon's size × size pixels are not clear."""
    picture = subprocess.run(
        ['rsvg-convert', '-w', str(size), '-h', str(size), str(ROOT / 'data' / 'icons' / name)],
        check=True, capture_output=True).stdout
    alpha = subprocess.run(['convert', 'png:-', '-alpha', 'extract', '-depth', '8', 'gray:-'],
                           input=picture, check=True, capture_output=True).stdout
    assert len(alpha) == size * size, f'{name}: {len(alpha)} pixels'
    return sum(value > 32 for value in alpha)


def icon_draws():
    return 0.25 * 64 ** 2 < drawn(f'{ID}.svg', 64) < 0.95 * 64 ** 2


def symbolic_icon_draws():
    return 0.15 * 16 ** 2 < drawn(f'{ID}-symbolic.svg', 16) < 0.8 * 16 ** 2


CHECKS = [part_type, desktop_file_agrees, icon_draws, symbolic_icon_draws]
print(f'1..{len(CHECKS)}')
results = [check() for check in CHECKS]
for number, (check, fine) in enumerate(zip(CHECKS, results), 1):
    print(f'{"ok" if fine else "not ok"} {number} {check.__name__.replace("_", " ")}')
sys.exit(0 if all(results) else 1)
