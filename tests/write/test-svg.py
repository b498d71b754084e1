#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""SVG read as XML and drawn by librsvg."""

import json
import math
import re
import struct
import subprocess
import sys
import xml.etree.ElementTree as ET

import cases

SVG = '{http://www.w3.org/2000/svg}'
PURPOSES = ['note', 'bend-up', 'bend-down', 'drill', 'slot', 'cut-inside', 'cut-outside']
NUMBER = r'-?\d+(?:\.\d+)?'


def drawing(folder, part, *arguments):
    path = cases.put(folder, part) if isinstance(part, dict) else part
    result = cases.run('--report', '--pattern', folder / 'out.svg', *arguments, path)
    assert result.returncode == 0, result.stderr
    return ET.parse(folder / 'out.svg').getroot(), json.loads(result.stdout)


def groups(root):
    return {group.get('id'): group for group in root.findall(f'{SVG}g')}


def path_area(d):
    """Signed area, y down, of a path of M, L, A and Z."""
    tokens = re.findall(rf'[MLAZ]|{NUMBER}', d)
    total, i, start, at = 0.0, 0, None, None

    def line(to):
        return (at[0] * to[1] - at[1] * to[0]) / 2

    while i < len(tokens):
        command = tokens[i]
        n = {'M': 2, 'L': 2, 'A': 7, 'Z': 0}[command]
        values = [float(t) for t in tokens[i + 1:i + 1 + n]]
        i += 1 + n
        to = start if command == 'Z' else tuple(values[-2:])
        if command == 'M':
            start = to
        else:
            total += line(to)
        if command == 'A':
            r, chord = values[0], math.dist(at, to)
            angle = 2 * math.asin(min(1.0, chord / (2 * r)))
            angle = 2 * math.pi - angle if values[3] else angle
            total += (1 if values[4] else -1) * r * r * (angle - math.sin(angle)) / 2
        at = to
    return total


def group_area(group):
    return (sum(abs(path_area(p.get('d'))) for p in group.findall(f'{SVG}path')) +
            sum(math.pi * float(c.get('r')) ** 2 for c in group.findall(f'{SVG}circle')))


def check_librsvg(folder, root):
    """librsvg draws the file, at its own aspect."""
    subprocess.run(['rsvg-convert', '-w', '600', '-b', 'white', '-o', folder / 'out.png',
                    folder / 'out.svg'], check=True, timeout=60)
    _, _, width, height = map(float, root.get('viewBox').split())
    wide, high = struct.unpack('>II', (folder / 'out.png').read_bytes()[16:24])
    assert wide == 600
    cases.near(high, 600 * height / width, 1.01)


def test_examples(folder):
    for path in cases.EXAMPLES:
        root, report = drawing(folder, path)
        check_librsvg(folder, root)
        blank, parts = report['blank'], groups(root)
        assert list(parts) == [name for name in PURPOSES if name in parts], list(parts)
        assert all(len(group) for group in parts.values())
        cases.near(float(root.get('width').removesuffix('mm')), blank['width'])
        cases.near(float(root.get('height').removesuffix('mm')), blank['height'])
        inside = sum(group_area(parts[name]) for name in ('cut-inside', 'slot') if name in parts)
        cases.near(group_area(parts['cut-outside']) - inside, blank['area'], 1e-6 * blank['area'])


def test_view_is_the_blank_with_y_down(folder):
    root, report = drawing(folder, cases.TRAY)
    x, y, width, height = map(float, root.get('viewBox').split())
    rings = report['blank']['rings']
    cases.near(x, min(p[0] for p in rings[0]))
    cases.near(y, -max(p[1] for p in rings[0]))
    cases.near(width, report['blank']['width'])
    cases.near(height, report['blank']['height'])


def test_not_mirrored(folder):
    """A hole near the front left corner is drawn at the lower left."""
    part = cases.tray(openings=[{'on': 'base', 'shape': 'round', 'at': [30, 20], 'diameter': 8}])
    root, _ = drawing(folder, part)
    circle = groups(root)['cut-inside'].find(f'{SVG}circle')
    cases.near(float(circle.get('cx')), 30)
    cases.near(float(circle.get('cy')), -20)
    cases.near(float(circle.get('r')), 4)


def test_pens(folder):
    flanges = cases.tray()['flanges'][:2]
    flanges[1]['turn'] = 'down'
    parts = groups(drawing(folder, cases.tray(flanges=flanges))[0])
    assert parts['cut-outside'].get('stroke') == '#000000'
    assert parts['cut-outside'].get('stroke-dasharray') is None
    assert parts['bend-up'].get('stroke') == '#009E73'
    assert parts['bend-down'].get('stroke') == '#CC79A7'
    up, down = (parts[name].get('stroke-dasharray').split() for name in ('bend-up', 'bend-down'))
    assert len(up) == 2 and len(down) == 6
    assert len(parts['bend-up']) == len(parts['bend-down']) == 1


def test_bend_lines_are_the_report_s(folder):
    root, report = drawing(folder, cases.TRAY)
    lines = {tuple(round(float(line.get(name)), 6) + 0.0 for name in ('x1', 'y1', 'x2', 'y2'))
             for line in groups(root)['bend-up']}
    assert lines == {(round(a[0], 6) + 0.0, round(-a[1], 6) + 0.0, round(b[0], 6) + 0.0,
                      round(-b[1], 6) + 0.0) for a, b in (bend['line'] for bend in report['bends'])}


def test_kerf_and_view(folder):
    """The outline grows by half the kerf on every side, and the view with it; librsvg draws it."""
    root, report = drawing(folder, cases.TRAY, '--kerf', 'on', '--bend-lines', 'notches')
    _, _, width, height = map(float, root.get('viewBox').split())
    cases.near(width, report['blank']['width'] + 1.3, 1e-5)
    cases.near(height, report['blank']['height'] + 1.3, 1e-5)
    check_librsvg(folder, root)
    assert 'half the kerf of 1.3 mm' in root.find(f'{SVG}desc').text
    assert not {'bend-up', 'bend-down'} & set(groups(root))
    grown = group_area(groups(root)['cut-outside']) - report['blank']['area']
    assert 0 < grown < 0.65 * report['blank']['cut_length'] + 10


def test_words(folder):
    root, _ = drawing(folder, cases.tray(name='A & B <tray> "x"'))
    assert root.find(f'{SVG}title').text == 'A & B <tray> "x"'
    about = root.find(f'{SVG}desc').text
    assert 'mm' in about and 'Mild steel' in about and re.search(r'\d{4}-\d\d-\d\d', about)
    notes = [text.text for text in groups(root)['note']]
    assert 'A & B <tray> "x"' in notes


def test_control_characters_in_a_name(folder):
    root, _ = drawing(folder, cases.tray(name='a\x01b\ufffec\nd'))
    assert root.find(f'{SVG}title').text == 'a bc d'


def test_stays_mm_with_units_in(folder):
    root, report = drawing(folder, cases.TRAY, '--units', 'in')
    cases.near(float(root.get('width').removesuffix('mm')), report['blank']['width'])
    assert 'Drawn in mm' in root.find(f'{SVG}desc').text


cases.main(sys.modules[__name__])
