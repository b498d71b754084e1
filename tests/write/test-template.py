#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The template read back by Poppler: its lines as they are in the file, and as they are printed."""

import functools
import json
import math
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

import cases

MM = 25.4 / 72.0
SVG = '{http://www.w3.org/2000/svg}'
PAPERS = {'A4': (210, 297), 'a3': (297, 420), 'Letter': (215.9, 279.4), 'LEGAL': (215.9, 355.6),
          'tabloid': (279.4, 431.8)}  # ISO 216; ANSI/ASME Y14.1; Legal: common practice
MARGIN = 10
FOOT = 42.2  # above this there is only drawing
SIDE = 4  # and left of this, from the right margin
CROSS = 7.0  # a registration cross, arm to arm
RASTER_DPI = 254  # ten dots a millimetre
BIG = {**cases.TRAY, 'name': 'Big tray',
       'base': {'outline': [[0, 0], [430, 0], [430, 300], [0, 300]]}}

DOWN = {**cases.TRAY, 'name': 'Some down',
        'flanges': [{**flange, 'turn': turn} for flange, turn in
                    zip(cases.TRAY['flanges'], ['up', 'down', 'down', 'up'])]}


class Line:
    """A straight piece of a stroked path; millimetres from the page's lower left corner, y up."""

    def __init__(self, a, b, style, alone):
        self.a, self.b, self.alone = a, b, alone
        self.length = math.dist(a, b)
        self.width = float(style['stroke-width']) * MM
        self.dashes = [float(d) * MM for d in style.get('stroke-dasharray', '').split(',') if d]
        self.colour = tuple(round(float(c) * 2.55) for c in re.findall(r'([\d.]+)%', style['stroke']))

    def runs_along(self, p, q, within):
        """Both points lie on it: cairo draws edges of one direction in one stroke."""
        step = [e - s for s, e in zip(self.a, self.b)]

        def away(point):
            share = sum((c - s) * d for c, s, d in zip(point, self.a, step)) / (self.length ** 2 or 1)
            share = min(max(share, 0), 1)
            return math.dist(point, [s + share * d for s, d in zip(self.a, step)])

        return away(p) < within and away(q) < within

    def joins(self, p, q, within):
        return (math.dist(self.a, p) < within and math.dist(self.b, q) < within or
                math.dist(self.a, q) < within and math.dist(self.b, p) < within)


def path_lines(d, matrix, style, height):
    """The straight lines of an SVG path of M, L, C and Z."""
    def place(x, y):
        a, b, c, e, f, g = matrix
        return ((a * x + c * y + f) * MM, height - (b * x + e * y + g) * MM)

    tokens, i, at, start, lines = re.findall(r'[MLCZ]|-?[\d.]+', d), 0, None, None, []
    while i < len(tokens):
        command = tokens[i]
        n = {'M': 2, 'L': 2, 'C': 6, 'Z': 0}[command]
        values = [float(t) for t in tokens[i + 1:i + 1 + n]]
        i += 1 + n
        to = start if command == 'Z' else place(*values[-2:])
        if command == 'M':
            start = to
        elif command != 'C':
            lines.append((at, to))
        at = to
    return [Line(a, b, style, len(lines) == 1) for a, b in lines]


def page_lines(pdf, number):
    """Every straight line stroked on a page, before clipping."""
    svg = pdf.with_suffix(f'.{number}.svg')
    subprocess.run(['pdftocairo', '-svg', '-noshrink', '-nocenter', '-f', str(number),
                    '-l', str(number), pdf, svg], check=True, timeout=60)
    root = ET.parse(svg).getroot()
    height = float(root.get('height').removesuffix('pt')) * MM
    lines = []
    for path in root.iter(f'{SVG}path'):
        style = dict(item.split(':', 1) for item in path.get('style', '').split(';') if item)
        if 'rgb' not in style.get('stroke', 'none'):
            continue
        numbers = re.findall(r'-?[\d.]+', path.get('transform', 'matrix(1,0,0,1,0,0)'))
        lines += path_lines(path.get('d'), [float(v) for v in numbers], style, height)
    return lines


class Template:
    """A part's template and report, read back."""

    def __init__(self, folder, part, *arguments):
        self.pdf = folder / 'out.pdf'
        path = cases.put(folder, part) if isinstance(part, dict) else part
        result = cases.run('--report', '--template', self.pdf, *arguments, path)
        assert result.returncode == 0, result.stderr
        self.report = json.loads(result.stdout)
        self.pages = self.report['pages']
        self.lines = [page_lines(self.pdf, i + 1) for i in range(len(self.pages))]
        self.info = subprocess.run(['pdfinfo', '-f', '1', '-l', str(len(self.pages)), self.pdf],
                                   check=True, timeout=60, capture_output=True, text=True).stdout
        self.sizes = [(float(w) * MM, float(h) * MM) for w, h in
                      re.findall(r'Page +\d+ size: +([\d.]+) x ([\d.]+) pts', self.info)]
        assert len(self.sizes) == len(self.pages)
        self.texts = [self.read_words(i) for i in range(len(self.pages))]

    def on_page(self, i, p):
        """A point of the blank on page i."""
        page = self.pages[i]
        x, y = p[0] - page['origin'][0], p[1] - page['origin'][1]
        return (-y, x) if page['turn'] == 90 else (x, y)

    def on_blank(self, i, p):
        page = self.pages[i]
        x, y = (p[1], -p[0]) if page['turn'] == 90 else p
        return (x + page['origin'][0], y + page['origin'][1])

    def shows(self, i, a, b):
        """Whether a line of the blank runs through what page i shows: others are not drawn."""
        width, height = self.sizes[i]
        points = (self.on_page(i, [s + k / 50 * (e - s) for s, e in zip(a, b)]) for k in range(51))
        return any(MARGIN + 0.3 < x < width - MARGIN - SIDE - 0.3 and FOOT < y < height - MARGIN - 0.3
                   for x, y in points)

    def words(self, i):
        return self.texts[i]

    def read_words(self, i):
        text = subprocess.run(['pdftotext', '-f', str(i + 1), '-l', str(i + 1), self.pdf, '-'],
                              check=True, timeout=60, capture_output=True, text=True).stdout
        return ' '.join(text.split())

    @functools.cache
    def raster(self, i):
        """Page i in grey: rows of bytes, from the top, ten dots a millimetre."""
        out = subprocess.run(['pdftoppm', '-gray', '-r', str(RASTER_DPI), '-f', str(i + 1), '-l',
                              str(i + 1), self.pdf], check=True, timeout=60, capture_output=True).stdout
        magic, size, most, dots = out.split(b'\n', 3)
        width, height = map(int, size.split())
        assert magic == b'P5' and most == b'255' and len(dots) == width * height
        return [dots[row * width:(row + 1) * width] for row in range(height)]

    def edges(self):
        """The blank's straight edges: chords of arcs are shorter."""
        for ring in self.report['blank']['rings']:
            for a, b in zip(ring, ring[1:] + ring[:1]):
                if math.dist(a, b) > 5:
                    yield a, b


@functools.cache
def on_a4():
    """Templates of parts of all kinds, read once."""
    with tempfile.TemporaryDirectory(prefix='benchfold-') as folder:
        return [Template(pathlib.Path(folder), part, '--paper', 'A4')
                for part in (*cases.EXAMPLES, cases.TRAY, DOWN, BIG)]


def test_check_bars_on_every_page(folder):
    for template in on_a4():
        for lines in template.lines:
            for length in (100.0, 101.6):
                bars = [line for line in lines if line.alone and abs(line.length - length) < 0.01 and
                        abs(line.a[1] - line.b[1]) < 0.001 and line.b[1] < 30]
                assert len(bars) == 1, f'{len(bars)} bars of {length} mm'


def test_edges_are_where_the_report_has_them(folder):
    for template in on_a4():
        seen = set()
        for i, lines in enumerate(template.lines):
            for a, b in template.edges():
                if not template.shows(i, a, b):
                    continue
                p, q = template.on_page(i, a), template.on_page(i, b)
                assert any(line.runs_along(p, q, 0.01) for line in lines), f'no edge {a} to {b}'
                seen.add((*a, *b))
        unseen = {(*a, *b) for a, b in template.edges()} - seen
        assert not unseen, (template.report['name'], unseen, template.pages)


def test_bends_have_their_place_colour_and_dash(folder):
    colours = {'up': (0, 158, 115), 'down': (204, 121, 167)}
    for template in on_a4():
        seen = set()
        for bend in template.report['bends']:
            for i, lines in enumerate(template.lines):
                if not template.shows(i, *bend['line']):
                    continue
                p, q = (template.on_page(i, end) for end in bend['line'])
                found = [line for line in lines if line.joins(p, q, 0.01)]
                assert [line.colour for line in found] == [colours[bend['turn']]], bend['flange']
                assert len(found[0].dashes) == (2 if bend['turn'] == 'up' else 6)
                seen.add(bend['flange'])
        assert len(seen) == len(template.report['bends'])


def test_lines_can_be_followed(folder):
    """Wide enough to see, thin enough to cut along either edge of to 0.2 mm."""
    for template in on_a4():
        for lines in template.lines:
            assert all(0.15 < line.width < 0.4 for line in lines)


def test_edges_are_printed(folder):
    """At three places of every edge that a page shows, the printed page is dark; and each place
    is shown by some page."""
    for part in (BIG, *cases.EXAMPLES[-2:]):
        template = Template(folder, part, '--paper', 'A4')
        shown = {}
        for i, (width, height) in enumerate(template.sizes):
            rows = template.raster(i)
            for a, b in template.edges():
                for share in (0.2, 0.5, 0.8):
                    place = tuple(s + share * (e - s) for s, e in zip(a, b))
                    x, y = template.on_page(i, place)
                    if not (MARGIN + 0.3 < x < width - MARGIN - SIDE - 0.3 and FOOT < y < height - MARGIN - 0.3):
                        continue
                    column, row = int(x * 10), int((height - y) * 10)
                    around = [rows[r][c] for r in (row - 1, row, row + 1)
                              for c in (column - 1, column, column + 1)]
                    assert min(around) < 100, f'page {i + 1}: nothing at {place}'
                    shown[place] = True
        places = 3 * sum(1 for _ in template.edges())
        assert len(shown) >= 0.9 * places, f'{len(shown)} of {places} places are shown'


def test_no_ink_in_the_margin_and_no_empty_page(folder):
    for part, papers in ((BIG, ('A4', 'Letter')), (cases.EXAMPLES[0], ('A4',))):
        for paper in papers:
            template = Template(folder, part, '--paper', paper)
            for i, (_, height) in enumerate(template.sizes):
                rows = template.raster(i)
                edge = 10 * MARGIN - 3
                assert all(min(row) > 200 for row in rows[:edge] + rows[-edge:])
                assert all(min(row[:edge] + row[-edge:]) > 200 for row in rows)
                drawing = rows[10 * MARGIN:int(10 * (height - FOOT))]
                assert any(min(row) < 100 for row in drawing), f'page {i + 1} is empty'


def crosses(template, i):
    """Centres of the registration crosses of page i, on the blank."""
    flat = [line for line in template.lines[i] if abs(line.length - CROSS) < 0.01 and
            line.width < 0.25 and abs(line.a[1] - line.b[1]) < 0.001]
    return [template.on_blank(i, [(s + e) / 2 for s, e in zip(line.a, line.b)]) for line in flat]


def test_crosses_of_neighbours_agree(folder):
    """Each cross stands on two pages at one place of the blank, two crosses a join."""
    for part in (BIG, cases.TRAY):
        template = Template(folder, part, '--paper', 'A4')
        marks = [(i, centre) for i in range(len(template.pages)) for centre in crosses(template, i)]
        assert len(marks) >= 4
        for i, centre in marks:
            twins = [other for k, other in marks if k != i and math.dist(centre, other) < 1]
            assert len(twins) == 1, f'{len(twins)} twins of {centre}'
            assert math.dist(centre, twins[0]) < 0.01


def test_crosses_lie_in_the_overlap(folder):
    """Five millimetres inside the window of both pages that show them."""
    template = Template(folder, cases.TRAY, '--paper', 'A4')
    assert [page['label'] for page in template.pages] == ['A1', 'B1']
    for i, wanted in enumerate((210 - MARGIN - SIDE - 5, MARGIN + 5)):
        for centre in crosses(template, i):
            cases.near(template.on_page(i, centre)[0], wanted, 0.01)
        assert len(crosses(template, i)) == 2


def test_a_part_on_one_page_has_no_joins(folder):
    template = Template(folder, cases.TRAY, '--paper', 'A3')
    assert len(template.pages) == 1
    assert not crosses(template, 0)
    assert 'here' not in template.words(0)


def test_papers(folder):
    for name, (width, height) in PAPERS.items():
        template = Template(folder, cases.TRAY, '--paper', name)
        for wide, high in template.sizes:
            cases.near(wide, width, 0.01)
            cases.near(high, height, 0.01)


def test_words_on_every_page(folder):
    template = Template(folder, cases.TRAY, '--paper', 'A4')
    for i, page in enumerate(template.pages):
        words = template.words(i)
        for wanted in ('Tray', 'Mild steel 1.5 mm, cut by me with a 125 mm disc, bent over a bar, '
                       'corners welded, sizes outside.', 'marking side up', 'sizes in mm',
                       'print at 100 %', '100 mm', '4 in', 'cut', 'fold up 90°', 'drill',
                       page['label'], f'page {i + 1} of {len(template.pages)}'):
            assert wanted in words, f'{wanted!r} is not in {words!r}'
        assert re.search(r'\b20\d\d-\d\d-\d\d\b', words)
        assert "Don't cut" not in words
    assert 'glue B1 here' in template.words(0) and 'cut here' in template.words(1)


def test_words_in_inches(folder):
    words = Template(folder, cases.TRAY, '--paper', 'A4', '--units', 'in').words(0)
    assert 'sizes in inches' in words and 'disc' in words and '125 mm' not in words


def test_must_fix_is_told_on_every_page(folder):
    part = cases.tray(flanges=[{**cases.TRAY['flanges'][0], 'length': 1}, *cases.TRAY['flanges'][1:]])
    template = Template(folder, part, '--paper', 'A4')
    found = [check['message'] for check in template.report['checks'] if check['severity'] == 'must-fix']
    assert found
    for i in range(len(template.pages)):
        assert "Don't cut yet" in template.words(i)


def test_metadata(folder):
    info = Template(folder, cases.tray(name='Träy “2”'), '--paper', 'A4').info
    assert re.search(r'^Title: +Träy “2”$', info, re.M)
    assert re.search(r'^Creator: +Benchfold$', info, re.M)
    assert re.search(r'^Subject: +Mild steel 1.5 mm, ', info, re.M)


cases.main(sys.modules[__name__])
