#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The page of a trial bend, read back by Poppler: at full size, and with all that it must say."""

import json
import math
import re
import subprocess
import sys

import cases
from pdf_lines import page_lines

WITHIN = 0.05
GREEN = (0, 158, 115)


class Strip:
    def __init__(self, folder, part, *arguments):
        self.pdf = folder / 'strip.pdf'
        path = cases.put(folder, part) if isinstance(part, dict) else part
        result = cases.run('--strip', self.pdf, *arguments, path)
        assert result.returncode == 0, result.stderr
        self.lines = page_lines(self.pdf, 1)
        text = subprocess.run(['pdftotext', self.pdf, '-'], check=True, timeout=60,
                              capture_output=True, text=True).stdout
        self.words = ' '.join(text.split())
        self.info = subprocess.run(['pdfinfo', self.pdf], check=True, timeout=60,
                                   capture_output=True, text=True).stdout

    def bends(self):
        return [line for line in self.lines if line.colour == GREEN]

    def outlines(self, length, width):
        """Lower left corners of rectangles of that size, each side of which is drawn."""
        found = []
        for line in self.lines:
            x, y = (min(line.a[i], line.b[i]) for i in (0, 1))
            corners = [(x, y), (x + length, y), (x + length, y + width), (x, y + width)]
            sides = list(zip(corners, corners[1:] + corners[:1]))
            if all(any(other.joins(p, q, WITHIN) for other in self.lines) for p, q in sides):
                if not any(math.dist((x, y), known) < 1 for known in found):
                    found.append((x, y))
        return found


def with_bend(**bend):
    return cases.tray(bend={**cases.TRAY['bend'], **bend})


def test_full_size(folder):
    """Three strips of 100 × 20, a bend line across the middle of each, and the two bars."""
    strip = Strip(folder, cases.TRAY, '--paper', 'A4')
    outlines = strip.outlines(100, 20)
    assert len(outlines) == 3, outlines
    for x, y in outlines:
        middle, = [bend for bend in strip.bends() if abs(bend.a[1] - y) < 21 and
                   abs(bend.b[1] - y) < 21]
        assert middle.joins((x + 50, y), (x + 50, y + 20), WITHIN), (middle.a, middle.b)
    for length in (100.0, 101.6):
        assert [line for line in strip.lines if line.alone and abs(line.length - length) < 0.01]


def test_inches(folder):
    strip = Strip(folder, cases.TRAY, '--paper', 'Letter', '--units', 'in')
    assert len(strip.outlines(101.6, 19.05)) == 3
    assert '612 x 792 pts' in strip.info
    assert 'sizes in inches' in strip.words


def test_what_stands_on_it(folder):
    words = Strip(folder, cases.tray(name='Träy'), '--paper', 'A4').words
    for wanted in ('Träy', 'Mild steel 1.5 mm, cut by me with a 125 mm disc, bent over a bar, '
                   'corners welded, sizes outside.', 'inside radius 1.5', '0.42',
                   'print at 100 %', 'sizes in mm', '100 mm', '4 in', 'length before', 'leg 1',
                   'leg 2', 'caliper', 'Glue'):
        assert wanted in words, f'{wanted!r} is not in {words!r}'
    assert re.search(r'\b20\d\d-\d\d-\d\d\b', words)


def test_legs_that_it_foretells(folder):
    """Two legs of L less half the strip: (100 + 2 (R + t) - BA) / 2, BA = π/2 (R + K t)."""
    for radius, k in ((1.5, 0.42), (3, 0.3), (0.75, 0.5)):
        part = with_bend(inside_radius=radius, allowance={'rule': 'k-factor', 'k': k})
        leg = (100 + 2 * (radius + 1.5) - math.pi / 2 * (radius + k * 1.5)) / 2
        words = Strip(folder, part).words
        told, = re.findall(r'each leg would measure ([\d.]+)\.', words)
        cases.near(float(told), leg, 0.0051)


def test_slotted(folder):
    """One strip with a slot as long as asked, and a bridge on each side."""
    part = with_bend(way='slots', inside_radius=0.75, slots={'slot': 50, 'bridge': 12})
    strip = Strip(folder, part)
    assert len(strip.bends()) == 1
    slots = [line for line in strip.lines if abs(line.length - 50) < 0.05]
    assert len(slots) >= 2, [line.length for line in strip.lines]
    assert 'along slots' in strip.words


def word_top(pdf, word):
    """How high from the page's foot that word begins, in mm: the first there is."""
    text = subprocess.run(['pdftotext', '-bbox', pdf, '-'], check=True, timeout=60,
                          capture_output=True, text=True).stdout
    height = float(re.search(r'height="([\d.]+)"', text).group(1))
    top = float(re.search(rf'yMin="([\d.]+)"[^>]*>{word}<', text).group(1))
    return (height - top) * 25.4 / 72.0


def test_slots_leave_the_words_free(folder):
    """However long the part's own slots are: the strip's are 70 mm at most, and the steps below."""
    for disc in (100, 125, 180, 230):
        for paper in ('A4', 'Letter'):
            part = with_bend(way='slots', inside_radius=0.75)
            part['cutting'] = {'by': 'disc', 'diameter': disc}
            part['base'] = {'outline': [[0, 0], [600, 0], [600, 300], [0, 300]]}
            strip = Strip(folder, part, '--paper', paper)
            foot = min(min(bend.a[1], bend.b[1]) for bend in strip.bends())
            assert word_top(strip.pdf, 'Measure') < foot - 2, (disc, paper)
            assert word_top(strip.pdf, '3') > 30, (disc, paper)


def test_with_the_report(folder):
    result = cases.run('--strip', folder / 's.pdf', '--report', cases.put(folder, cases.TRAY))
    assert json.loads(result.stdout)['name'] == 'Tray'
    assert (folder / 's.pdf').read_bytes().rstrip().endswith(b'%%EOF')


def test_every_example(folder):
    for path in cases.EXAMPLES:
        for paper in ('A4', 'Letter', 'A3'):
            strip = Strip(folder, path, '--paper', paper)
            assert strip.bends(), (path, paper)
            assert re.search(r'Pages: +1$', strip.info, re.M)


cases.main(sys.modules[__name__])
