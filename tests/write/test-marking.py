#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Marking-out read back: the table by Python's csv, the pages by Poppler."""

import csv
import json
import math
import re
import subprocess
import sys

import cases

SIXTY_FOURTH = 1 / 64


def table(folder, part, *arguments):
    cases.output(folder, part, '--marking', 'm.csv', *arguments)
    with open(folder / 'm.csv', encoding='utf-8', newline='') as file:
        return list(csv.DictReader(file))


def report(folder, part):
    return cases.json.loads(cases.output(folder, part, '--report'))


def corner(rings):
    points = [p for ring in rings for p in ring]
    return min(x for x, y in points), min(y for x, y in points)


def test_tray_by_hand(folder):
    """The acceptance figures: blank 274.692 × 194.692, drills of 6.5 mm in four corners."""
    rows = table(folder, cases.TRAY)
    start, = [r for r in rows if r['do'] == 'start']
    assert (start['x'], start['y']) == ('274.5', '194.5'), start
    drills = [r for r in rows if r['do'] == 'drill']
    assert len(drills) == 4 and {r['size'] for r in drills} == {'6.5'}, drills
    assert {r['what'] for r in rows if r['do'] == 'strike-bend'} == {'front', 'right', 'back',
                                                                    'left'}
    assert [int(r['step']) for r in rows] == sorted(int(r['step']) for r in rows)


def test_bend_lines_are_the_report_s(folder):
    told = report(folder, cases.TRAY)
    x0, y0 = corner(told['blank']['rings'])
    rows = {r['what']: r for r in table(folder, cases.TRAY) if r['do'] == 'strike-bend'}
    for bend in told['bends']:
        (ax, ay), (bx, by) = bend['line']
        row = rows[bend['flange']]
        exact = ay - y0 if abs(ay - by) < 1e-9 else ax - x0
        cases.near(float(row['distance']), exact, 0.25 + 1e-9)
        assert row['from'] == ('bottom' if abs(ay - by) < 1e-9 else 'left')


def test_bars(folder):
    """R 1.5, t 1.5: the bar's front edge 1.5 past the base's tangent, 3 inside the drawn edge."""
    told = report(folder, cases.TRAY)
    x0, y0 = corner(told['blank']['rings'])
    rows = {r['what']: r for r in table(folder, cases.TRAY) if r['do'] == 'strike-bar'}
    assert set(rows) == {'front bar', 'right bar', 'back bar', 'left bar'}
    for name, exact in [('front bar', 1.5 - y0), ('back bar', 118.5 - y0),
                        ('left bar', 1.5 - x0), ('right bar', 198.5 - x0)]:
        cases.near(float(rows[name]['distance']), exact, 0.25 + 1e-9)


def test_slot_lengths(folder):
    """What a disc of 125 mm leaves on the two faces, as the report has it."""
    part = cases.tray(bend={'way': 'slots'})
    told = report(folder, part)
    rows = table(folder, part)
    slots = [slot for bend in told['bends'] for slot in bend['slots']]
    assert slots
    for what, member in [('slot-near', 'near'), ('slot-far', 'far')]:
        found = sorted(float(r['size']) for r in rows if r['do'] == what)
        assert len(found) == len(slots)
        for a, b in zip(found, sorted(slot[member] for slot in slots)):
            cases.near(a, b)


def test_inches(folder):
    told = report(folder, cases.TRAY)
    x0, y0 = corner(told['blank']['rings'])
    rows = table(folder, cases.TRAY, '--units', 'in')
    lengths = [float(r[name]) for r in rows for name in ('distance', 'x', 'y') if r[name]]
    assert all(abs(length * 32 - round(length * 32)) < 1e-6 for length in lengths)
    for bend in told['bends']:
        (ax, ay), (_, by) = bend['line']
        row, = [r for r in rows if r['what'] == bend['flange']]
        exact = (ay - y0 if abs(ay - by) < 1e-9 else ax - x0) / 25.4
        cases.near(float(row['distance']), exact, SIXTY_FOURTH + 1e-9)


def off(told, rows):
    """The biggest difference of a bend line's distance from the report's, in the units of rows."""
    x0, y0 = corner(told['blank']['rings'])
    worst = 0.0
    for bend in told['bends']:
        (ax, ay), (_, by) = bend['line']
        row, = [r for r in rows if r['what'] == bend['flange']]
        exact = (ay - y0 if abs(ay - by) < 1e-9 else ax - x0) / 25.4
        worst = max(worst, abs(float(row['distance']) - exact))
    return worst


def test_the_rule_is_as_asked(folder):
    """Each distance lies on a mark of the rule asked for, off by no more than half a mark, and the
    pages say so."""
    told = report(folder, cases.TRAY)
    for marks, parts, stated in [('1/16', 16, '1/32'), ('1/32', 32, '1/64')]:
        rows = table(folder, cases.TRAY, '--units', 'in', '--marks', marks)
        lengths = [float(r[name]) for r in rows for name in ('distance', 'begin', 'end', 'x', 'y')
                   if r[name] and r['do'] != 'cut']
        assert all(abs(length * parts - round(length * parts)) < 1e-6 for length in lengths)
        assert off(told, rows) <= 1 / parts / 2 + 1e-9
        cases.output(folder, cases.TRAY, '--units', 'in', '--marks', marks, '--marking', 'm.pdf')
        text = subprocess.run(['pdftotext', '-layout', folder / 'm.pdf', '-'],
                              stdout=subprocess.PIPE, text=True, check=True).stdout
        words = ' '.join(text.split())
        assert f'rounded to {marks} in; none is off by more than {stated} in.' in words, words
    assert off(told, table(folder, cases.TRAY, '--units', 'in', '--marks', '1/16')) > SIXTY_FOURTH
    rows = table(folder, cases.TRAY, '--marks', '1')
    assert all(float(r['distance']) == int(float(r['distance'])) for r in rows
               if r['do'].startswith('strike'))


def test_marks_of_other_units_are_refused(folder):
    result = cases.run('--marking', 'm.csv', '--marks', '1/32', cases.put(folder, cases.TRAY),
                       folder=folder)
    assert result.returncode == 2 and not (folder / 'm.csv').exists()
    assert result.stderr == 'benchfold: --marks: these are marks of inches; with mm, 1 or 0.5\n'


def test_the_guide_is_where_it_is_asked(folder):
    for arguments, words in [((), 'the disc just touches it'),
                             (('--guide-offset', '22.5'), '22.5 mm from the line'),
                             (('--guide-offset', '1in'), '25.4 mm from the line')]:
        cases.output(folder, cases.TRAY, '--marking', 'm.pdf', *arguments)
        text = subprocess.run(['pdftotext', '-raw', folder / 'm.pdf', '-'],
                              stdout=subprocess.PIPE, text=True, check=True).stdout
        assert words in ' '.join(text.split()), words


def lines_of(rows):
    """The lines that the table strikes and joins, each by its two ends; the metal's own two edges
    are there before."""
    start, = [r for r in rows if r['do'] == 'start']
    yield (0.0, 0.0), (float(start['x']), 0.0)
    yield (0.0, 0.0), (0.0, float(start['y']))
    joins = [(r['do'], (float(r['x']), float(r['y']))) for r in rows if r['do'].startswith('join-')]
    for (one, a), (other, b) in zip(joins[::2], joins[1::2]):
        assert (one, other) == ('join-from', 'join-to')
        yield a, b
    for row in rows:
        if not row['do'].startswith('strike'):
            continue
        at, begin, end = (float(row[name]) for name in ('distance', 'begin', 'end'))
        yield ((begin, at), (end, at)) if row['from'] == 'bottom' else ((at, begin), (at, end))


def covers(line, a, b, off):
    """Whether both ends of an edge lie on a line or beside it, each distance off by no more than
    that."""
    return all(min(p[k] for p in line) - off <= q[k] <= max(p[k] for p in line) + off
               for q in (a, b) for k in (0, 1)) and \
        all(min(math.dist(q, p) for p in line) <= 1.5 * off or straight(line, q, off) for q in (a, b))


def straight(line, q, off):
    """Whether q is not further beside a line than that."""
    (ax, ay), (bx, by) = line
    length = math.dist(*line)
    return length > 0 and abs((bx - ax) * (q[1] - ay) - (by - ay) * (q[0] - ax)) / length <= 1.5 * off


def test_drawn_again_from_the_table(folder):
    """From the table alone, by distances from the two edges and nothing else, every straight edge of
    the blank is there again, within half a mark of the rule, and so is every arc."""
    # Of a slot between drilled ends the two holes show the sides, which are not struck.
    for path in [p for p in cases.EXAMPLES if p.stem != 'lever-rail']:
        told = json.loads(cases.run('--report', path).stdout)['blank']
        x0, y0 = corner(told['rings'])
        for units, marks, unit, off in [('mm', '0.5', 1, 0.25), ('in', '1/32', 25.4, 25.4 / 64),
                                        ('in', '1/16', 25.4, 25.4 / 32)]:
            result = cases.run('--marking', folder / 'm.csv', '--units', units, '--marks', marks, path)
            assert result.returncode == 0, result.stderr
            with open(folder / 'm.csv', encoding='utf-8', newline='') as file:
                rows = list(csv.DictReader(file))
            lines = [tuple((x * unit, y * unit) for x, y in line) for line in lines_of(rows)]
            edges = [((ax - x0, ay - y0), (bx - x0, by - y0)) for ring in told['rings']
                     for (ax, ay), (bx, by) in zip(ring, ring[1:] + ring[:1])
                     if math.dist((ax, ay), (bx, by)) > 5]
            for a, b in edges:
                assert any(covers(line, a, b, off + 1e-6) for line in lines), (path.stem, marks, a, b)
            rounds = [(float(r['x']) * unit, float(r['y']) * unit, float(r['size']) * unit /
                       (1 if r['do'] == 'arc' else 2)) for r in rows if r['do'] in ('arc', 'drill')]
            for arc in told['arcs']:
                wanted = (arc['at'][0] - x0, arc['at'][1] - y0, arc['radius'])
                assert any(abs(x - wanted[0]) <= off + 1e-6 and abs(y - wanted[1]) <= off + 1e-6 and
                           abs(r - wanted[2]) < 0.02 for x, y, r in rounds), (path.stem, marks, arc)


def test_table_tells_what_it_is_of(folder):
    """A table found later can be used: part, how many, set-up, units, day, marks and biggest error,
    which no bend line exceeds."""
    for units, marks, worst in (('mm', 0.5, 0.25), ('in', 1 / 32, SIXTY_FOURTH)):
        rows = table(folder, cases.tray(quantity=2), '--units', units)
        facts = {r['do']: r for r in rows if r['step'] == '0'}
        assert rows[:len(facts)] == list(facts.values())
        assert facts['part']['what'] == 'Tray, 2 off' and facts['units']['what'] == units
        assert 'cut by me' in facts['set-up']['what']
        assert re.fullmatch(r'20\d\d-\d\d-\d\d', facts['date']['what'])
        cases.near(float(facts['marks']['size']), marks)
        assert worst / 2 < float(facts['off by at most']['size']) <= worst
        if units == 'in':
            assert off(report(folder, cases.TRAY), rows) <= float(facts['off by at most']['size']) + 1e-9


def test_names_with_commas(folder):
    part = cases.tray(flanges=[{'id': 'a, "b"', 'on': 'base', 'edge': 0, 'length': 40, 'angle': 90,
                                'turn': 'up'}])
    rows = table(folder, part)
    assert [r['what'] for r in rows if r['do'] == 'strike-bend'] == ['a, "b"']


def test_pages(folder):
    cases.output(folder, cases.TRAY, '--marking', 'm.pdf', '--paper', 'Letter')
    info = subprocess.run(['pdfinfo', folder / 'm.pdf'], stdout=subprocess.PIPE, text=True,
                          check=True).stdout
    assert '612 x 792 pts' in info, info
    text = subprocess.run(['pdftotext', '-layout', folder / 'm.pdf', '-'], stdout=subprocess.PIPE,
                          text=True, check=True).stdout
    for words in ('Tray', 'page 1 of', 'Mild steel 1.5 mm', 'Set the square to', 'Drill 6.5 mm: 4 holes', 'Both diagonals'):
        assert words in ' '.join(text.split()), words
    for words in ('Cutting, ', 'Clamp a guide on the line', 'on the line', 'at the right', '1 hole'):
        assert words in ' '.join(text.split()), words
    stated, = re.findall(r'none is off by more than (0\.\d+) mm', ' '.join(text.split()))[:1]
    assert 0.15 < float(stated) <= 0.25, stated


def test_cuts(folder):
    """Each cut of the tray lies on the blank's rim, once, and with its waste outside; the two edges
    that all is measured from are there already."""
    told = report(folder, cases.TRAY)
    x0, y0 = corner(told['blank']['rings'])
    width, height = told['blank']['width'], told['blank']['height']
    rows = [r for r in table(folder, cases.TRAY) if r['do'] == 'cut']
    assert len(rows) == 8 + 2, rows
    sides = {('left', 'waste left'), ('left', 'waste right'), ('bottom', 'waste above'),
             ('bottom', 'waste below')}
    assert {(r['from'], r['what']) for r in rows} == sides
    for row in rows:
        assert row['size'] == row['distance'], row
        assert float(row['distance']) > 0.5, row
    cases.near(float(rows[-1]['distance']), height, 0.25)
    cases.near(float(rows[-2]['distance']), width, 0.25)
    assert rows[-1]['what'] == 'waste above' and rows[-2]['what'] == 'waste right'
    lengths = [float(r['end']) - float(r['begin']) for r in rows]
    assert lengths == sorted(lengths), lengths
    machine = table(folder, cases.tray(cutting={'by': 'table'}))
    assert not [r for r in machine if r['do'].startswith('cut')]


def test_cuts_at_a_slant(folder):
    part = cases.tray(flanges=[], base={'outline': [[0, 0], [100, 0], [100, 40], [60, 80], [0, 80]]})
    rows = table(folder, part)
    ends = [(float(r['x']), float(r['y'])) for r in rows if r['do'] in ('cut-from', 'cut-to')]
    assert ends == [(100, 40), (60, 80)], ends


def pages_of(folder, part, *arguments):
    """The words of each page of the marking out, spaces made one."""
    cases.output(folder, part, '--marking', 'm.pdf', '--paper', 'A4', *arguments)
    text = subprocess.run(['pdftotext', '-raw', folder / 'm.pdf', '-'], stdout=subprocess.PIPE,
                          text=True, check=True).stdout
    return [' '.join(page.split()) for page in text.split('\f')[:-1]]


def test_points_are_told_apart(folder):
    """Two distances stand side by side as fractions: each has an arrow, which is told what it is, on
    the pages of marking out and of the cuts."""
    outline = [[0, 0], [4, 0], [4, 2.8125], [2.40625, 5], [0, 5]]
    part = cases.tray(units='in', flanges=[],
                      base={'outline': [[25.4 * x, 25.4 * y] for x, y in outline]})
    for marks, across, up in [('1/16', '2 7/16', '2 13/16'), ('1/32', '2 13/32', '2 13/16')]:
        pages = [page.replace('\u00a0', ' ') for page in pages_of(folder, part, '--marks', marks)]
        for page in pages:
            assert '→' not in page or '→ is from the left edge, ↑ from the bottom edge.' in page
        assert f'→ 4 ↑ {up} to → {across} ↑ 5' in pages[-1], pages[-1]
        assert any(f'→ 4 ↑ {up}' in page for page in pages[:-1]), pages


def test_arcs_have_centre_and_radius(folder):
    """A hole that no drill makes: what the compass needs stands at each centre."""
    part = cases.tray(openings=[{'on': 'base', 'shape': 'round', 'at': [60, 70], 'diameter': 50}])
    told = report(folder, part)
    x0, y0 = corner(told['blank']['rings'])
    page, = [p for p in pages_of(folder, part) if 'with the compass' in p]
    x, y = (round(2 * (v - v0)) / 2 for v, v0 in [(60, x0), (70, y0)])
    assert f'→ {x:g} ↑ {y:g} R 25' in page.replace('\u00a0', ' '), page


def test_many_points_stand_in_a_table(folder):
    """Where distances would crowd the picture, points are numbered there and told in a table beside
    it, each with its number, on as many places as that takes."""
    for n in (4, 5, 30, 90):
        holes = [(12 + 9 * (i % 18), 20 + 13 * (i // 18)) for i in range(n)]
        part = cases.tray(flanges=[], openings=[{'on': 'base', 'shape': 'round', 'at': at,
                                                 'diameter': 4} for at in holes])
        words = ' '.join(pages_of(folder, part))
        listed = re.findall(r'\b(\d+) → ([\d.]+) ↑ ([\d.]+)(?= )', words)
        if n == 4:
            assert '→ 12 ↑ 20' in words.replace('\u00a0', ' ') and '1 → 12 ↑ 20' not in words, words
            continue
        assert sorted(int(number) for number, _, _ in listed) == list(range(1, n + 1)), listed
        assert sorted((float(x), float(y)) for _, x, y in listed) == sorted(holes), listed


def test_pages_are_numbered_and_headed(folder):
    """Pages are numbered through, and a list that goes over a page has its heads again there."""
    openings = [{'on': 'base', 'shape': 'rectangle', 'at': [80 + 130 * (i % 6), 80 + 130 * (i // 6)],
                 'length': 100, 'width': 100} for i in range(18)]
    part = cases.tray(base={'outline': [[0, 0], [820, 0], [820, 440], [0, 440]]}, openings=openings)
    pages = pages_of(folder, part)
    for number, page in enumerate(pages, 1):
        assert f'page {number} of {len(pages)},' in page, page
    listed = [page for page in pages if 'Cutting, page' in page and ' below ' in page]
    assert len(listed) > 1, len(listed)
    for page in listed:
        assert page.count('length line guide waste ends in') == 1, page


def test_quantity(folder):
    """Of two blanks each step is done to both; the pages tell how many."""
    cases.output(folder, cases.tray(quantity=2), '--marking', 'm.pdf')
    text = subprocess.run(['pdftotext', '-layout', folder / 'm.pdf', '-'], stdout=subprocess.PIPE,
                          text=True, check=True).stdout
    words = ' '.join(text.split())
    pages = text.count('\f')
    assert words.count('Tray, 2 off') == pages, pages
    assert words.count('Mark both blanks.') > 4 and 'Do both blanks.' in words


def test_every_example(folder):
    for path in cases.EXAMPLES:
        result = cases.run('--marking', folder / 'm.pdf', path)
        assert result.returncode == 0, (path, result.stderr)
        result = cases.run('--marking', folder / 'm.csv', path)
        assert result.returncode == 0, (path, result.stderr)


if __name__ == '__main__':
    cases.main(sys.modules[__name__])
