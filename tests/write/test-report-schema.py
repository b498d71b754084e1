#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The report of every example against its schema, and its geometry against itself and by hand."""

import functools
import json
import math
import pathlib
import sys

import jsonschema

import cases

SCHEMA = json.loads((pathlib.Path(__file__).parent / 'report.schema.json').read_text())


@functools.lru_cache(maxsize=None)
def report(path, *arguments):
    result = cases.run('--report', *arguments, path)
    assert result.returncode == 0, result.stderr
    return json.loads(result.stdout)


def area(ring):
    return sum(a[0] * b[1] - a[1] * b[0] for a, b in zip(ring, ring[1:] + ring[:1])) / 2


def test_examples_validate(_folder):
    assert len(cases.EXAMPLES) >= 7
    validator = jsonschema.Draft202012Validator(SCHEMA)
    for path in cases.EXAMPLES:
        for arguments in ([], ['--paper', 'A4'], ['--paper', 'Letter']):
            faults = [f'{path.stem} {fault.json_path}: {fault.message}'
                      for fault in validator.iter_errors(report(path, *arguments))]
            assert not faults, faults


def test_a_wrong_report_does_not_validate(_folder):
    """The schema must see what it is for."""
    good = report(cases.EXAMPLES[0])
    validator = jsonschema.Draft202012Validator(SCHEMA)
    for spoil in (lambda r: r.pop('checks'),
                  lambda r: r['blank'].update(width=-1),
                  lambda r: r['bends'][0].update(force='12'),
                  lambda r: r['blank']['rings'][0].append([1, None])):
        bad = json.loads(json.dumps(good))
        spoil(bad)
        assert not validator.is_valid(bad)


def test_a_lot_is_so_many_blanks(folder):
    """Of one blank the report says nothing more; of several, what they are together, and no mass
    where the metal's is not known."""
    validator = jsonschema.Draft202012Validator(SCHEMA)
    assert 'lot' not in report(cases.put(folder, cases.TRAY, 'one.benchfold'))
    for name, metal in [('steel', {'material': 'mild-steel', 'thickness': 1.5}),
                        ('unknown', {'material': 'my-own', 'thickness': 1.5})]:
        told = report(cases.put(folder, cases.tray(quantity=7, metal=metal), f'{name}.benchfold'))
        assert validator.is_valid(told)
        assert told['lot']['quantity'] == 7
        for member in ('area', 'cut_length', 'mass'):
            if name == 'unknown' and member == 'mass':
                assert told['lot'][member] is None and told['blank'][member] is None
            else:
                cases.near(told['lot'][member], 7 * told['blank'][member])


def test_rings_agree_with_area_and_box(_folder):
    for path in cases.EXAMPLES:
        blank = report(path)['blank']
        rings = blank['rings']
        # A chord's sagitta is at most 0.01 mm, so that is what the flattened area can be off by.
        length = sum(math.dist(a, b) for ring in rings for a, b in zip(ring, ring[1:] + ring[:1]))
        cases.near(sum(area(ring) for ring in rings), blank['area'], 0.01 * length)
        xs, ys = zip(*rings[0])
        cases.near(max(xs) - min(xs), blank['width'], 0.02)
        cases.near(max(ys) - min(ys), blank['height'], 0.02)
        assert area(rings[0]) > 0
        assert all(area(ring) < 0 for ring in rings[1:])
        for ring in rings:
            assert all(math.dist(a, b) > 1e-7 for a, b in zip(ring, ring[1:] + ring[:1]))


def test_points_lie_on_their_arcs(_folder):
    for path in cases.EXAMPLES:
        blank = report(path)['blank']
        for arc in blank['arcs']:
            on_arc = [p for ring in blank['rings'] for p in ring
                      if abs(math.dist(p, arc['at']) - arc['radius']) < 1e-6]
            assert len(on_arc) >= 3, (path.stem, arc)


def test_tray_by_hand(folder):
    """K-factor arithmetic: BA = 90° × (R + K t), deduction = 2 (R + t) − BA."""
    found = json.loads(cases.output(folder, cases.TRAY, '--report'))
    allowance = math.pi / 2 * (1.5 + 0.42 * 1.5)
    deduction = 2 * 3 - allowance
    cases.near(found['blank']['width'], 200 + 2 * (40 - deduction))
    cases.near(found['blank']['height'], 120 + 2 * (40 - deduction))
    assert [bend['flange'] for bend in found['bends']] == ['back', 'front', 'left', 'right']
    for bend in found['bends']:
        cases.near(bend['allowance'], allowance)
        cases.near(bend['deduction'], deduction)
        cases.near(bend['setback'], 3)
    for size, wanted in zip(found['formed']['size'], [200, 120, 40]):
        cases.near(size, wanted)
    assert len(found['seams']) == 4
    cases.near(found['blank']['mass'], found['blank']['area'] * 1.5 * 7850e-9)


def test_units_change_no_number(folder):
    part = cases.put(folder, cases.TRAY)
    plain = cases.run('--report', '--paper', 'A4', part)
    inches = cases.run('--report', '--paper', 'A4', '--units', 'in', part)
    assert plain.returncode == inches.returncode == 0
    assert plain.stdout == inches.stdout


def test_pages_only_with_paper(folder):
    assert json.loads(cases.output(folder, cases.TRAY, '--report'))['pages'] is None
    pages = json.loads(cases.output(folder, cases.TRAY, '--report', '--paper', 'A4'))['pages']
    assert len(pages) >= 2 and len({page['label'] for page in pages}) == len(pages)
    one = json.loads(cases.output(folder, cases.TRAY, '--report', '--paper', 'A3'))['pages']
    assert len(one) == 1


cases.main(sys.modules[__name__])
