#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""DXF read back by ezdxf, an independent reader: no faults, and the same blank."""

import json
import math
import sys

import ezdxf
from ezdxf import bbox
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import bulge_to_arc

import cases

PURPOSES = {'cut-outside', 'cut-inside', 'bend-up', 'bend-down', 'slot', 'drill', 'note'}


def drawing(folder, part, *arguments):
    """The drawing and the report of a part (a dict or a path)."""
    path = cases.put(folder, part) if isinstance(part, dict) else part
    result = cases.run('--report', '--pattern', folder / 'out.dxf', *arguments, path)
    assert result.returncode == 0, result.stderr
    return ezdxf.readfile(folder / 'out.dxf'), json.loads(result.stdout)


def segment_area(start, end, bulge):
    """Area between a bulge's arc and its chord, positive where it lies right of the chord."""
    if not bulge:
        return 0.0
    angle = 4 * math.atan(bulge)
    radius = bulge_to_arc(start, end, bulge)[3]
    return radius * radius * (angle - math.sin(angle)) / 2


def entity_area(entity):
    """Signed area of a closed contour."""
    if entity.dxftype() == 'CIRCLE':
        return math.pi * entity.dxf.radius ** 2
    points = [(v.dxf.location.vec2, v.dxf.get('bulge', 0)) for v in entity.vertices]
    total = 0.0
    for (a, bulge), (b, _) in zip(points, points[1:] + points[:1]):
        total += (a.x * b.y - a.y * b.x) / 2 + segment_area(a, b, bulge)
    return total


def check(doc, report, scale=1.0):
    auditor = doc.audit()
    assert not auditor.errors, [error.message for error in auditor.errors]
    assert doc.dxfversion == 'AC1009'
    space = doc.modelspace()
    assert {entity.dxf.layer for entity in space} <= PURPOSES
    cuts = [e for e in space if e.dxf.layer.startswith('cut-') or e.dxf.layer == 'slot']
    assert all(e.dxftype() == 'CIRCLE' or (e.dxftype() == 'POLYLINE' and e.is_closed) for e in cuts)
    outside = sum(abs(entity_area(e)) for e in cuts if e.dxf.layer == 'cut-outside')
    inside = sum(abs(entity_area(e)) for e in cuts if e.dxf.layer in ('cut-inside', 'slot'))
    area = report['blank']['area'] * scale * scale
    cases.near(outside - inside, area, 1e-6 * area)


def check_extents(doc, report):
    low, high = doc.header['$EXTMIN'], doc.header['$EXTMAX']
    cases.near(high[0] - low[0], report['blank']['width'])
    cases.near(high[1] - low[1], report['blank']['height'])
    box = bbox.extents(doc.modelspace().query('*[layer=="cut-outside"]'), flatten=1e-4)
    for found, wanted in zip((*box.extmin.vec2, *box.extmax.vec2), (*low[:2], *high[:2])):
        cases.near(found, wanted, 1e-3)


def test_examples(folder):
    for path in cases.EXAMPLES:
        doc, report = drawing(folder, path, '--units', 'mm')
        check(doc, report)
        check_extents(doc, report)
        space = doc.modelspace()
        for turn in ('up', 'down'):
            lines = space.query(f'LINE[layer=="bend-{turn}"]')
            assert len(lines) == sum(bend['turn'] == turn for bend in report['bends'])


def drawn_arcs(doc):
    """Centre and radius of every arc and circle that is cut."""
    for entity in doc.modelspace():
        if entity.dxf.layer not in ('cut-outside', 'cut-inside', 'slot'):
            continue
        if entity.dxftype() == 'CIRCLE':
            yield entity.dxf.center.vec2, entity.dxf.radius
            continue
        points = [(v.dxf.location.vec2, v.dxf.get('bulge', 0)) for v in entity.vertices]
        for (a, bulge), (b, _) in zip(points, points[1:] + points[:1]):
            if bulge:
                centre, _, _, radius = bulge_to_arc(a, b, bulge)
                yield centre, radius


def test_arcs_are_the_report_s(folder):
    """As many as the report has, each with its centre and radius."""
    n = 0
    for path in cases.EXAMPLES:
        doc, report = drawing(folder, path, '--units', 'mm')
        told = [(*arc['at'], arc['radius']) for arc in report['blank']['arcs']]
        for centre, radius in drawn_arcs(doc):
            nearest = min(told, key=lambda arc: math.dist(arc, (centre.x, centre.y, radius)))
            assert math.dist(nearest, (centre.x, centre.y, radius)) < 1e-4, (path.stem, centre, radius)
            told.remove(nearest)
            n += 1
        assert not told, (path.stem, told)
    assert n > 30, n


def test_drawn_coordinates(folder):
    """Not shifted: the base's own coordinates, wherever they lie, and the bends of the report."""
    outline = [[x - 500, y + 300] for x, y in cases.TRAY['base']['outline']]
    doc, report = drawing(folder, cases.tray(base={'outline': outline}))
    lines = {(round(l.dxf.start.x, 6), round(l.dxf.start.y, 6), round(l.dxf.end.x, 6),
              round(l.dxf.end.y, 6)) for l in doc.modelspace().query('LINE')}
    assert lines == {tuple(round(c, 6) for p in bend['line'] for c in p) for bend in report['bends']}
    assert all(-500 <= x <= -300 for x, *_ in lines)


def test_layers(folder):
    doc, _ = drawing(folder, cases.TRAY)
    named = {layer.dxf.name: layer for layer in doc.layers}
    assert PURPOSES <= set(named)
    assert all(layer.color == 7 for layer in named.values())
    assert named['cut-outside'].dxf.linetype.upper() == 'CONTINUOUS'
    types = {named[name].dxf.linetype for name in ('cut-outside', 'bend-up', 'bend-down')}
    assert len(types) == 3 and all(name in doc.linetypes for name in types)


def test_scores(folder):
    """A layer of its own, in dots: the groove's two edges, as wide apart as the report says."""
    part = cases.tray(bend={'way': 'score', 'score': {'left': 0.6}})
    doc, told = drawing(folder, part)
    assert 'score' in {layer.dxf.name for layer in doc.layers}
    assert doc.layers.get('score').dxf.linetype == 'SCORE'
    lines = list(doc.modelspace().query('LINE[layer=="score"]'))
    assert len(lines) == 8
    for bend in told['bends']:
        (ax, ay), _ = bend['line']
        across = 1 if bend['flange'] in ('front', 'back') else 0
        middle = (ax, ay)[across]
        mine = [line for line in lines
                if abs(line.dxf.start[across] - line.dxf.end[across]) < 1e-6
                and abs(line.dxf.start[across] - middle) < 5]
        assert len(mine) == 2
        for line in mine:
            cases.near(abs(line.dxf.start[across] - middle), bend['score']['groove'] / 2)
    assert any('score' in text.dxf.text for text in doc.modelspace().query('TEXT'))


def test_no_scores(folder):
    doc, _ = drawing(folder, cases.TRAY)
    assert not {'score', 'bar'} & {layer.dxf.name for layer in doc.layers}


def test_holes_before_outline(folder):
    part = cases.tray(openings=[
        {'on': 'base', 'shape': 'round', 'at': [50, 60], 'diameter': 8},
        {'on': 'base', 'shape': 'slot', 'at': [120, 60], 'length': 40, 'width': 8, 'angle': 90}])
    doc, report = drawing(folder, part)
    check(doc, report)
    order = [e.dxf.layer for e in doc.modelspace() if e.dxf.layer.startswith('cut-')]
    assert order == ['cut-inside', 'cut-inside', 'cut-outside']
    circle, = doc.modelspace().query('CIRCLE[layer=="cut-inside"]')
    cases.near(circle.dxf.radius, 4)
    cases.near(circle.dxf.center.x, 50)
    slot, = doc.modelspace().query('POLYLINE[layer=="cut-inside"]')
    cases.near(abs(entity_area(slot)), 32 * 8 + math.pi * 16)
    assert sum(1 for v in slot.vertices if v.dxf.get('bulge', 0)) == 2


def test_inches(folder):
    doc, report = drawing(folder, cases.TRAY, '--units', 'in')
    check(doc, report, 1 / 25.4)
    cases.near(doc.header['$EXTMAX'][0] - doc.header['$EXTMIN'][0], report['blank']['width'] / 25.4)
    words = ' '.join(t.dxf.text for t in doc.modelspace().query('TEXT'))
    assert 'Drawn in inches' in words


def test_a_part_in_inches_is_drawn_in_inches(folder):
    doc, report = drawing(folder, cases.tray(units='in'))
    check(doc, report, 1 / 25.4)
    doc, report = drawing(folder, cases.tray(units='in'), '--units', 'mm')
    check(doc, report)


def test_words_are_ascii(folder):
    doc, _ = drawing(folder, cases.tray(name='Öse 50% %%d^J ☃\U0001f527'))
    (folder / 'out.dxf').read_bytes().decode('ascii')
    words = [decode_dxf_unicode(t.plain_text()) for t in doc.modelspace().query('TEXT')]
    assert 'Öse 50% % %d^J ☃?' in words, words
    assert any('fold up 90°' in line for line in words), words


def test_drill_centres(folder):
    doc, report = drawing(folder, cases.TRAY)
    points = sorted((round(p.dxf.location.x, 6), round(p.dxf.location.y, 6))
                    for p in doc.modelspace().query('POINT[layer=="drill"]'))
    drilled = sorted(tuple(round(c, 6) for c in relief['at']) for relief in report['reliefs']
                     if relief['drill'])
    assert drilled and points == drilled


def edges(contour):
    """Straight edges (a, b) and arcs (centre, radius, whether the metal is in the circle) of a
    contour, and its corners."""
    if contour.dxftype() == 'CIRCLE':
        return [], [(contour.dxf.center.vec2, contour.dxf.radius)], []
    points = [(v.dxf.location.vec2, v.dxf.get('bulge', 0)) for v in contour.vertices]
    lines, arcs = [], []
    for (a, bulge), (b, _) in zip(points, points[1:] + points[:1]):
        if bulge:
            centre, _, _, radius = bulge_to_arc(a, b, bulge)
            arcs.append((centre, radius))
        else:
            lines.append((a, b))
    return lines, arcs, [p for p, _ in points]


def inside(point, contour):
    """Whether a point is within a contour: its turns about the point, along chords."""
    if contour.dxftype() == 'CIRCLE':
        return math.dist(point[:2], tuple(contour.dxf.center)[:2]) < contour.dxf.radius
    chain = []
    points = [(v.dxf.location.vec2, v.dxf.get('bulge', 0)) for v in contour.vertices]
    for (a, bulge), (b, _) in zip(points, points[1:] + points[:1]):
        chain.append(a)
        if bulge:
            centre, start, end, radius = bulge_to_arc(a, b, bulge)
            turn = 4 * math.atan(bulge)
            first = math.atan2(a.y - centre.y, a.x - centre.x)
            chain += [type(a)(centre.x + radius * math.cos(first + turn * k / 40),
                              centre.y + radius * math.sin(first + turn * k / 40))
                      for k in range(1, 40)]
    crossed = False
    for a, b in zip(chain, chain[1:] + chain[:1]):
        if (a.y > point[1]) != (b.y > point[1]):
            crossed ^= point[0] < a.x + (point[1] - a.y) / (b.y - a.y) * (b.x - a.x)
    return crossed


def contours(doc, layer):
    return [e for e in doc.modelspace() if e.dxf.layer == layer and e.dxftype() in
            ('POLYLINE', 'CIRCLE')]


def check_moved(drawn, moved, half, outward):
    """Every straight edge and arc of the drawn contour that is longer than the kerf has one of the
    moved contours beside it, half the kerf to the waste's side; and arcs keep their centre."""
    lines, arcs, _ = edges(drawn)
    moved_lines, moved_arcs = ([e for m in moved for e in edges(m)[k]] for k in (0, 1))
    for a, b in lines:
        if math.dist(a, b) < 8 * half:
            continue
        normal = (b - a).normalize().orthogonal(ccw=False) * half
        middle = (a + b) * 0.5
        for side in (middle + normal, middle - normal):
            on_it = any(abs((q - p).normalize().det(side - p)) < 1e-5 and
                        -1e-5 < (q - p).normalize().dot(side - p) < math.dist(p, q) + 1e-5
                        for p, q in moved_lines)
            waste = inside(side, drawn) != outward
            assert on_it == waste, (a, b, on_it, waste)
    for centre, radius in arcs:
        near = [r for c, r in moved_arcs if math.dist(c, centre) < 1e-4]
        assert any(abs(abs(r - radius) - half) < 1e-4 for r in near), (centre, radius, near)


def test_kerf_moves_every_edge_into_the_waste(folder):
    kerf = {'disc': 1.3, 'table': 1.5, 'snips': 0, 'service': 0}
    for path in cases.EXAMPLES:
        drawn, report = drawing(folder, path, '--units', 'mm', '--kerf', 'off')
        moved, _ = drawing(folder, path, '--units', 'mm', '--kerf', 'on')
        assert not moved.audit().errors
        part = json.loads(path.read_text(encoding='utf-8'))
        width = part['cutting'].get('kerf', kerf[part['cutting']['by']])
        before, after = (contours(doc, 'cut-outside') for doc in (drawn, moved))
        assert len(before) == len(after) == 1
        area = sum(abs(entity_area(e)) for e in after) - sum(abs(entity_area(e)) for e in before)
        length = report['blank']['cut_length']
        assert (area > 0) == (width > 0) and area < width / 2 * length + 10
        if not width:
            assert abs(area) < 1e-6
            continue
        # A gap that the kerf closes leaves what lies beyond it as a hole.
        check_moved(before[0], [*after, *contours(moved, 'cut-inside')], width / 2, True)
        for hole in contours(drawn, 'cut-inside'):
            shrunk = [e for e in contours(moved, 'cut-inside')
                      if inside(tuple(e.dxf.center)[:2] if e.dxftype() == 'CIRCLE'
                                else tuple(edges(e)[2][0]), hole)]
            assert len(shrunk) == 1, path
            check_moved(hole, shrunk, width / 2, False)
        low, high = drawn.header['$EXTMIN'], moved.header['$EXTMIN']
        cases.near(low[0] - high[0], width / 2, 1e-5)


def test_slots_as_wide_as_the_kerf_are_one_cut(folder):
    """A hole that the tool is too wide for is left to a drill, and told."""
    part = cases.tray(cutting={'by': 'table', 'kerf': 1.5}, openings=[
        {'on': 'base', 'shape': 'round', 'at': [50, 60], 'diameter': 1.5},
        {'on': 'base', 'shape': 'round', 'at': [90, 60], 'diameter': 8}])
    doc, _ = drawing(folder, part, '--kerf', 'on')
    assert not doc.audit().errors
    circle, = doc.modelspace().query('CIRCLE[layer=="cut-inside"]')
    cases.near(circle.dxf.radius, 3.25)
    point, = doc.modelspace().query('POINT[layer=="drill"]')
    cases.near(point.dxf.location.x, 50)
    assert '1 hole is no wider than the cut' in (folder / 'out.dxf').read_text(encoding='ascii')
    slotted = cases.EXAMPLES[2]
    doc, report = drawing(folder, slotted, '--kerf', 'on')
    cuts = doc.modelspace().query('*[layer=="slot"]')
    assert len(cuts) == sum(len(bend['slots']) for bend in report['bends'])


def test_bend_lines_out_or_as_notches(folder):
    for path in cases.EXAMPLES:
        lines_in, report = drawing(folder, path, '--units', 'mm', '--bend-lines', 'in')
        out, _ = drawing(folder, path, '--units', 'mm', '--bend-lines', 'out')
        notched, _ = drawing(folder, path, '--units', 'mm', '--bend-lines', 'notches')
        assert not out.modelspace().query('*[layer=="bend-up" | layer=="bend-down"]')
        assert len(lines_in.modelspace().query('LINE')) == len(report['bends'])
        ticks = notched.modelspace().query('LINE')
        assert all(abs(math.dist(t.dxf.start, t.dxf.end) - 2) < 1e-6 for t in ticks)
        assert not notched.audit().errors
        n_notches = 2 * len(report['bends']) - len(ticks)
        assert n_notches >= 2 * len(report['bends']) * 0.8, (path, len(ticks))
        tips = [p for layer in ('cut-outside', 'cut-inside', 'slot')
                for e in contours(notched, layer) for p in edges(e)[2]]
        on_lines = sum(any(abs((b - a).normalize().det(p - a)) < 1e-6 and
                           min(math.dist(p, a), math.dist(p, b)) < 10 for p in tips)
                       for a, b in ((l.dxf.start.vec2, l.dxf.end.vec2)
                                    for l in lines_in.modelspace().query('LINE')))
        assert on_lines == len(report['bends']) or ticks
        taken = sum(sum(abs(entity_area(e)) for e in contours(doc, 'cut-outside')) * sign
                    for doc, sign in ((lines_in, 1), (notched, -1)))
        assert 0 < taken < 1.3 * n_notches * 0.5, (path, taken, n_notches)


def test_warning(folder):
    flanges = cases.tray()['flanges']
    flanges[0]['length'] = 1
    doc, report = drawing(folder, cases.tray(flanges=flanges))
    assert any(check['severity'] == 'must-fix' for check in report['checks'])
    assert any('Do not cut' in t.dxf.text for t in doc.modelspace().query('TEXT'))


cases.main(sys.modules[__name__])
