#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The template read back by Poppler: its lines as they are in the file, and as they are printed."""

import fractions
import functools
import json
import math
import pathlib
import re
import subprocess
import sys
import tempfile

import cases
from pdf_lines import MM, page_lines

PAPERS = {'A4': (210, 297), 'a3': (297, 420), 'Letter': (215.9, 279.4), 'LEGAL': (215.9, 355.6),
          'tabloid': (279.4, 431.8)}  # ISO 216; ANSI/ASME Y14.1; Legal: common practice
MARGIN = 10
FOOT = 42.2  # above this there is only drawing
SIDE = 4  # and left of this, from the right margin
TICK = 1.3
CROSS = 7.0  # a registration cross, arm to arm
RASTER_DPI = 254  # ten dots a millimetre
BIG = {**cases.TRAY, 'name': 'Big tray',
       'base': {'outline': [[0, 0], [430, 0], [430, 300], [0, 300]]}}

DOWN = {**cases.TRAY, 'name': 'Some down',
        'flanges': [{**flange, 'turn': turn} for flange, turn in
                    zip(cases.TRAY['flanges'], ['up', 'down', 'down', 'up'])]}


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
        self.texts = subprocess.run(['pdftotext', self.pdf, '-'], check=True, timeout=60,
                                    capture_output=True, text=True).stdout.split('\f')

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
        # The upright bar has a column of its own, or stands in the drawing where nothing is.
        side = SIDE if any(abs(width - MARGIN - TICK - bar.a[0]) < 0.1
                           for bar in bars(self.lines[i], 1, 100.0)) else 0
        return any(MARGIN + 0.3 < x < width - MARGIN - side - 0.3 and FOOT < y < height - MARGIN - 0.3
                   for x, y in points)

    def words(self, i):
        return ' '.join(self.texts[i].split())

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
def laid_out():
    """Templates of every example on every paper of the usual printers, and of parts of other kinds;
    read once. The parts of few pages are on A4 only."""
    with tempfile.TemporaryDirectory(prefix='benchfold-') as folder:
        kinds = [(part, 'A4') for part in (cases.TRAY, DOWN, BIG)]
        kinds += [(path, paper) for path in cases.EXAMPLES
                  for paper in ('A4', 'Letter', 'A3', 'Tabloid')]
        return [Template(pathlib.Path(folder), part, '--paper', paper) for part, paper in kinds]


def bars(lines, along, length):
    """The lines of that length in the foot, or upright beside the drawing."""
    return [line for line in lines if line.alone and abs(line.length - length) < 0.05 and
            abs(line.a[1 - along] - line.b[1 - along]) < 0.001 and
            (line.b[1] < 30 if along == 0 else line.width < 0.25 and not line.dashes)]


def test_check_bars_on_every_page(folder):
    for template in laid_out():
        for lines in template.lines:
            for length in (100.0, 101.6):
                found = bars(lines, 0, length)
                assert len(found) == 1, f'{len(found)} bars of {length} mm'
                cases.near(found[0].length, length, 0.01)
                assert not found[0].dashes
            found = bars(lines, 1, 100.0)
            assert len(found) == 1, f'{len(found)} upright bars'
            cases.near(found[0].length, 100.0, 0.01)


def plain_grid(width, height, paper, foot):
    """Pages of a grid from the lower left corner, none left out, not turned."""
    across, down = (1 + max(0, math.ceil((length - window) / (window - 10))) for length, window in
                    ((width, paper[0] - 2 * MARGIN), (height, paper[1] - 2 * MARGIN - foot)))
    return across * down


def test_never_more_pages_than_a_plain_grid(folder):
    fewer = set()
    for template in laid_out():
        foot = 37.5 if any(c['severity'] == 'must-fix' for c in template.report['checks']) else 32
        blank = template.report['blank']
        plain = plain_grid(blank['width'], blank['height'], template.sizes[0], foot)
        assert len(template.pages) <= plain, (template.report['name'], len(template.pages), plain)
        if len(template.pages) < plain:
            fewer.add(template.report['name'])
        assert len({page['label'] for page in template.pages}) == len(template.pages)
    assert len(fewer) >= 2, fewer


def test_no_drill_centre_on_a_join(folder):
    """Where pages of a template join, the line along the join keeps off the middles of drills."""
    seen = 0
    for template in laid_out():
        drilled = [relief['at'] for relief in template.report['reliefs'] if relief['drill']]
        for i, lines in enumerate(template.lines):
            joins = [line for line in lines if line.colour == (90, 90, 90) and len(line.dashes) == 2 and
                     line.length > 50]
            for at in drilled:
                x, y = template.on_page(i, at)
                for line in joins:
                    axis = 0 if abs(line.a[0] - line.b[0]) < 0.001 else 1
                    away = abs((x, y)[axis] - line.a[axis])
                    assert away > 2.9, (template.report['name'], at, away)
                    seen += 1
    assert seen > 0


def test_edges_are_where_the_report_has_them(folder):
    for template in laid_out():
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
    for template in laid_out():
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
    for template in laid_out():
        for lines in template.lines:
            assert all(0.15 < line.width < 0.4 for line in lines)


def places_of(template):
    """Three places of every straight edge, and of every arc."""
    for a, b in template.edges():
        for share in (0.2, 0.5, 0.8):
            yield tuple(s + share * (e - s) for s, e in zip(a, b))
    for arc in template.report['blank']['arcs']:
        for share in (0.2, 0.5, 0.8):
            angle = math.radians(arc['from'] + share * (arc['to'] - arc['from']))
            yield tuple(c + arc['radius'] * f(angle) for c, f in zip(arc['at'], (math.cos, math.sin)))


def test_edges_are_printed(folder):
    """At three places of every edge and arc that a page shows, the printed page is dark; and each
    place is shown by some page."""
    for part in (BIG, *cases.EXAMPLES[-2:]):
        template = Template(folder, part, '--paper', 'A4')
        shown = {}
        for i, (width, height) in enumerate(template.sizes):
            rows = template.raster(i)
            for place in places_of(template):
                x, y = template.on_page(i, place)
                if not (MARGIN + 0.3 < x < width - MARGIN - SIDE - 0.3 and FOOT < y < height - MARGIN - 0.3):
                    continue
                column, row = int(x * 10), int((height - y) * 10)
                around = [rows[r][c] for r in (row - 1, row, row + 1)
                          for c in (column - 1, column, column + 1)]
                assert min(around) < 100, f'page {i + 1}: nothing at {place}'
                shown[place] = True
        places = len(set(places_of(template)))
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


def test_no_page_is_empty(folder):
    """On every page of every template a line of the blank is seen, and not only in its margin that
    the next page shows, too."""
    for template in laid_out():
        lines = [*template.edges(), *(bend['line'] for bend in template.report['bends'])]
        for i in range(len(template.pages)):
            assert any(template.shows(i, a, b) for a, b in lines), (template.report['name'], i)


def crosses(template, i):
    """Centres of the registration crosses of page i, on the blank."""
    arms = [line for line in template.lines[i] if abs(line.length - CROSS) < 0.01 and
            line.width < 0.25]
    flat, upright = ([[(s + e) / 2 for s, e in zip(line.a, line.b)] for line in arms
                      if abs(line.a[k] - line.b[k]) < 0.001] for k in (1, 0))
    return [template.on_blank(i, centre) for centre in flat
            if any(math.dist(centre, other) < 0.01 for other in upright)]


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


def test_each_join_says_what_to_do(folder):
    """On one page of a join the other is glued, on the other page one cuts: as often the one as the
    other in the whole template, however short the joins of shifted pages are, and named."""
    long = {**cases.TRAY, 'name': 'Long tray',
            'base': {'outline': [[0, 0], [900, 0], [900, 330], [0, 330]]}}
    for template in [*laid_out(), *(Template(folder, long, '--paper', paper)
                                    for paper in ('A4', 'Letter', 'Legal'))]:
        joins = glued = cut = 0
        for i in range(len(template.pages)):
            if "blank's left end" in template.words(i):
                continue
            named = re.findall(r'glue (\w+) here', template.words(i))
            assert len(set(named)) == len(named), named
            assert set(named) <= {page['label'] for page in template.pages}, named
            glued += len(named)
            cut += template.words(i).count('cut here')
            joins += len(crosses(template, i)) / 2
        assert glued == cut == joins / 2, (template.report['name'], template.sizes[0], glued, cut, joins)


def test_ticks_show_a_misfit(folder):
    """Beside crosses, ticks 3 mm apart on the one side of the join, 2.8 on the other: a slip of
    0.2 mm makes the first ones meet. Both pages show them at one place of the blank."""
    template = Template(folder, BIG, '--paper', 'A4')
    ticks = [{tuple(round(c, 2) for c in template.on_blank(i, [(s + e) / 2 for s, e in zip(l.a, l.b)]))
              for l in lines if abs(l.length - 2) < 0.001 and l.width < 0.25}
             for i, lines in enumerate(template.lines)]
    shared = [a & b for k, a in enumerate(ticks) for b in ticks[k + 1:] if a & b]
    assert shared and all(len(both) % 16 == 0 for both in shared), [len(both) for both in shared]
    both = sorted(shared[0])
    axis = 0 if len({p[0] for p in both}) < len({p[1] for p in both}) else 1
    for side in {p[axis] for p in both}:
        along = sorted(p[1 - axis] for p in both if p[axis] == side)
        steps = {round(b - a, 1) for a, b in zip(along, along[1:])}
        assert steps & {3.0, 2.8} and len(steps & {3.0, 2.8}) == 1, steps


def test_crosses_lie_in_the_overlap(folder):
    """Five millimetres inside the window of both pages that show them."""
    template = Template(folder, cases.TRAY, '--paper', 'A4')
    assert [page['label'] for page in template.pages] == ['A1', 'B1']
    for i, wanted in enumerate((210 - MARGIN - SIDE - 5, MARGIN + 5)):
        for centre in crosses(template, i):
            cases.near(template.on_page(i, centre)[0], wanted, 0.01)
        assert len(crosses(template, i)) == 2


def test_a_page_apart_is_laid_by_measuring(folder):
    """A window in the middle of a wide plate stands on a page that joins no other: a cross at round
    distances from the blank's ends says where it lies."""
    plate = {**cases.TRAY, 'name': 'Wide plate', 'flanges': [],
             'base': {'outline': [[0, 0], [910, 0], [910, 1300], [0, 1300]]},
             'openings': [{'on': 'base', 'shape': 'rectangle', 'at': [452, 650], 'length': 40,
                           'width': 30}]}
    for units, unit, round_to in (('mm', 1, 5), ('in', 25.4, 0.25)):
        template = Template(folder, plate, '--paper', 'A4', '--units', units)
        apart = [i for i in range(len(template.pages)) if "blank's left end" in template.words(i)]
        assert len(apart) == 1, apart
        found = re.search(r'cross ([\d /]+) (?:mm|in) from the blank\'s left end, '
                          r'([\d /]+) (?:mm|in) from its lower end', template.words(apart[0]))
        told = [sum(fractions.Fraction(term) for term in number.split()) for number in found.groups()]
        assert all(number % fractions.Fraction(round_to) == 0 for number in told), told
        marks = crosses(template, apart[0])
        assert len(marks) == 1 and template.pages[apart[0]]['turn'] == 0
        x, y = marks[0]  # the blank begins at 0, 0
        cases.near(x, float(told[0]) * unit, 0.01)
        cases.near(y, float(told[1]) * unit, 0.01)


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
                       page['label'], f'page {i + 1} of {len(template.pages)}',
                       'Next: check the bars, join, glue on, punch and drill, cut out, fold.'):
            assert wanted in words, f'{wanted!r} is not in {words!r}'
        assert re.search(r'\b20\d\d-\d\d-\d\d\b', words)
        assert "Don't cut" not in words
    plate = Template(folder, cases.tray(flanges=[]), '--paper', 'A4')
    assert 'Next: check the bars, glue on, cut out.' in plate.words(0), plate.words(0)
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
        assert "Don't cut yet" in template.words(i) and 'Next:' not in template.words(i)


def test_mirrored_for_the_other_face(folder):
    """x runs the other way, up is told as down, and words can still be read."""
    straight = json.loads(cases.output(folder, DOWN, '--report'))
    template = Template(folder, DOWN, '--paper', 'A4', '--mirror')
    assert template.report['blank'] == straight['blank']
    colours = {'up': (204, 121, 167), 'down': (0, 158, 115)}
    for i, page in enumerate(template.pages):
        def place(p):
            x, y = -(p[0] - page['origin'][0]), p[1] - page['origin'][1]
            return (-y, x) if page['turn'] == 90 else (x, y)
        for bend in template.report['bends']:
            p, q = map(place, bend['line'])
            found = [line for line in template.lines[i] if line.joins(p, q, 0.02)]
            inside = all(MARGIN < x < template.sizes[i][0] - MARGIN - SIDE for x, _ in (p, q))
            assert not inside or [line.colour for line in found] == [colours[bend['turn']]]
        words = template.words(i)
        assert 'For the other face, mirrored' in words and 'marking side down' in words
        assert 'Some down' in words
    turns = ' '.join(template.words(i) for i in range(len(template.pages)))
    assert 'fold up 90°' in turns and 'fold down 90°' in turns


def test_corrected_for_the_printer(folder):
    """All that is drawn is larger by what the printer makes it smaller, on each axis."""
    factors = (0.98, 1.03)
    template = Template(folder, cases.TRAY, '--paper', 'A4', '--printer-scale', '0.98,1.03')
    seen = 0
    for i, lines in enumerate(template.lines):
        cases.near(template.sizes[i][0], 210, 0.01)
        for length in (100.0, 101.6):
            assert len(bars(lines, 0, length / factors[0])) == 1
        assert len(bars(lines, 1, 100 / factors[1])) == 1
        for a, b in template.edges():
            p, q = ([c / f for c, f in zip(template.on_page(i, end), factors)] for end in (a, b))
            found = any(line.runs_along(p, q, 0.02) for line in lines)
            seen += found
            inside = all(MARGIN + 1 < x < 210 - MARGIN - SIDE - 3 and FOOT + 7 < y < 297 - MARGIN - 2
                         for x, y in (p, q))
            assert found or not inside, (a, b)
        assert 'prints 98.00 % across, 103.00 % down' in template.words(i)
    assert seen >= len(list(template.edges()))


def test_corners_only(folder):
    """Every piece shows its edges where the report has them; the tray's are on one A4."""
    for part, most in ((cases.EXAMPLES[5], 1), (BIG, 1), (cases.EXAMPLES[6], 2)):
        template = Template(folder, part, '--paper', 'A4', '--corners-only')
        assert len(template.pages) <= most, len(template.pages)
        corners = {tuple(p) for ring in template.report['blank']['rings'] for p in ring}
        for i, page in enumerate(template.pages):
            assert page['origin'] is None and page['label'] == f'C{i + 1}'
            words = template.words(i)
            for piece in page['pieces']:
                assert f'Piece {piece["number"]}' in words
                low, high = piece['from'], piece['to']
                corners -= {p for p in corners if all(a < c < b for a, c, b in zip(low, p, high))}
                for a, b in template.edges():
                    if not all(l < c < h for p in (a, b) for l, c, h in zip(low, p, high)):
                        continue
                    p, q = ([c - o for c, o in zip(end, piece['origin'])] for end in (a, b))
                    assert any(line.runs_along(p, q, 0.01) for line in template.lines[i]), (a, b)
        assert not corners, corners


def test_corners_of_the_other_face(folder):
    """Mirrored, each piece shows the edges where the report has them, x running the other way."""
    template = Template(folder, BIG, '--paper', 'A4', '--corners-only', '--mirror')
    seen = 0
    for i, page in enumerate(template.pages):
        assert 'For the other face, mirrored' in template.words(i)
        for piece in page['pieces']:
            low, high, origin = piece['from'], piece['to'], piece['origin']
            for a, b in template.edges():
                if not all(l < c < h for p in (a, b) for l, c, h in zip(low, p, high)):
                    continue
                p, q = ((origin[0] - end[0], end[1] - origin[1]) for end in (a, b))
                assert any(line.runs_along(p, q, 0.01) for line in template.lines[i]), (a, b)
                seen += 1
    assert seen == 8, seen  # two walls meet at each corner


def test_distances_between_pieces(folder):
    template = Template(folder, BIG, '--paper', 'A4', '--corners-only')
    pieces = [piece for page in template.pages for piece in page['pieces']]
    low = [min(p[axis] for p in template.report['blank']['rings'][0]) for axis in (0, 1)]
    words = ' '.join(template.words(i) for i in range(len(template.pages)))
    assert len(pieces) == 4
    for piece in pieces:
        x, y = (round(c - l, 1) for c, l in zip(piece['cross'], low))
        assert f'{x:g} from left, {y:g} from below' in words, (x, y, words)
    nearest = min(math.dist(pieces[0]['cross'], other['cross']) for other in pieces[1:])
    assert re.search(rf'to \d: {nearest:.1f}'.replace('.0', ''), words), (nearest, words)


def test_rolls_and_one_whole_page(folder):
    big = Template(folder, BIG, '--paper', 'whole')
    assert len(big.pages) == 1
    cases.near(big.sizes[0][0], big.report['blank']['width'] + 1 + 2 * MARGIN + SIDE, 0.1)
    roll = Template(folder, BIG, '--paper', 'roll')
    assert len(roll.pages) == 1
    cases.near(roll.sizes[0][0], 610, 0.01)
    narrow = Template(folder, BIG, '--paper', 'roll-300')
    assert len(narrow.pages) == 2
    assert all(abs(width - 300) < 0.01 for width, _ in narrow.sizes)
    for template in (big, roll, narrow):
        for a, b in template.edges():
            assert any(line.runs_along(template.on_page(i, a), template.on_page(i, b), 0.01)
                       for i, lines in enumerate(template.lines) for line in lines)


def test_pattern_on_one_page(folder):
    """As large as the blank and a margin, everything where the report has it."""
    for part in (cases.EXAMPLES[5], cases.EXAMPLES[3]):
        pdf = folder / 'pattern.pdf'
        result = cases.run('--report', '--pattern', pdf, part)
        assert result.returncode == 0, result.stderr
        report = json.loads(result.stdout)
        info = subprocess.run(['pdfinfo', pdf], check=True, timeout=60, capture_output=True, text=True)
        assert re.search(r'Pages: +1$', info.stdout, re.M)
        wide, high = (float(v) * MM for v in re.search(r'size: +([\d.]+) x ([\d.]+)', info.stdout).groups())
        cases.near(wide, report['blank']['width'] + 10, 0.01)
        cases.near(high, report['blank']['height'] + 10, 0.01)
        ring = report['blank']['rings'][0]
        low = [min(p[axis] for p in ring) - 5 for axis in (0, 1)]
        lines = page_lines(pdf, 1)
        for a, b in zip(ring, ring[1:] + ring[:1]):
            if math.dist(a, b) > 5:
                p, q = ([c - l for c, l in zip(end, low)] for end in (a, b))
                assert any(line.runs_along(p, q, 0.01) for line in lines), (a, b)
        for bend in report['bends']:
            p, q = ([c - l for c, l in zip(end, low)] for end in bend['line'])
            assert any(line.joins(p, q, 0.01) and line.dashes for line in lines), bend['flange']


def test_own_pens(folder):
    """Pens of the data folder are drawn with; a broken file is named, and the usual pens are used."""
    data = folder / 'data' / 'benchfold'
    data.mkdir(parents=True)
    environment = {'XDG_DATA_HOME': str(folder / 'data')}
    head = '{"format": "benchfold-pens", "version": 1, '
    part = cases.put(folder, cases.TRAY)
    for text, blamed, colour, width in (
            (head + '"cut": {"colour": "#0072B2", "width": 0.5}}', '', (0, 114, 178), 0.5),
            (head + '"cut": {"colour": "blue"}}', 'pens.json: cut.colour: ', (0, 0, 0), 0.35)):
        (data / 'pens.json').write_text(text, encoding='utf-8')
        result = cases.run('--template', folder / 'pens.pdf', '--paper', 'A3', part,
                           environment=environment)
        assert result.returncode == 0 and blamed in result.stderr
        assert len(result.stderr.splitlines()) == (1 if blamed else 0), result.stderr
        lines = page_lines(folder / 'pens.pdf', 1)
        assert any(line.colour == colour and abs(line.width - width) < 0.01 and line.length > 100
                   for line in lines)


def test_metadata(folder):
    info = Template(folder, cases.tray(name='Träy “2”'), '--paper', 'A4').info
    assert re.search(r'^Title: +Träy “2”$', info, re.M)
    assert re.search(r'^Creator: +Benchfold$', info, re.M)
    assert re.search(r'^Subject: +Mild steel 1.5 mm, ', info, re.M)


def test_slots_end_on_both_faces(folder):
    """A disc's slot is drawn as it counts, with a line across where it ends on either face."""
    part = {**cases.TRAY, 'bend': {'way': 'slots'}, 'cutting': {'by': 'disc', 'diameter': 125},
            'flanges': [{'id': 'wall', 'on': 'base', 'edge': 0, 'length': 60}]}
    template = Template(folder, part, '--paper', 'A3')
    slots = template.report['bends'][0]['slots']
    assert len(template.lines) == 1 and slots
    for slot in slots:
        for face, long in (('near', 2), ('far', 1)):
            ends = [tuple((s + e) / 2 for s, e in zip(line.a, line.b)) for line in template.lines[0]
                    if abs(line.length - long * slot['width']) < 0.01]
            assert any(abs(math.dist(p, q) - slot[face]) < 0.02 for p in ends for q in ends), face
        assert slot['near'] > slot['length'] + 1 > slot['far'] + 2, slot


cases.main(sys.modules[__name__])
