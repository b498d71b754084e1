#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Make card, card model, angle gauges and the pack for a service, read back by Poppler and ezdxf."""

import json
import math
import re
import subprocess
import sys
import xml.etree.ElementTree as ET

import ezdxf

import cases

PAPERS = {'A4': (210, 297), 'Letter': (215.9, 279.4)}
POINT_MM = 25.4 / 72

EXAMPLES = [json.loads(path.read_text(encoding='utf-8')) for path in cases.EXAMPLES]
FLARED = cases.tray(name='Flared tray', flanges=[
    {'id': name, 'on': 'base', 'edge': edge, 'length': 40, 'angle': angle, 'turn': 'up'}
    for edge, (name, angle) in enumerate([('front', 60), ('right', 72.5), ('back', 60), ('left', 110)])])


def words(path, *how):
    return subprocess.run(['pdftotext', *how, path, '-'], check=True, capture_output=True,
                          encoding='utf-8').stdout


def pages(path):
    info = subprocess.run(['pdfinfo', path], check=True, capture_output=True, encoding='utf-8').stdout
    return int(re.search(r'Pages:\s+(\d+)', info).group(1))


def boxes(path):
    """Each word with its box on its page, in mm: (page, left, top, right, bottom, word)."""
    text = words(path, '-bbox')
    found, page = [], 0
    for line in text.splitlines():
        page += '<page ' in line
        m = re.search(r'xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)">(.*?)</word>', line)
        if m:
            found.append((page, *(float(m.group(i)) * POINT_MM for i in range(1, 5)), m.group(5)))
    return found


def check_on_paper(path, paper):
    """All words on the page, none over another."""
    width, height = PAPERS[paper]
    found = boxes(path)
    for page, left, top, right, bottom, word in found:
        assert 5 < left and right < width - 5 and 5 < top and bottom < height - 5, (path, word)
    for i, (page, left, top, right, bottom, word) in enumerate(found):
        for other, l, t, r, b, another in found[i + 1:]:
            over = min(right, r) - max(left, l), min(bottom, b) - max(top, t)
            assert page != other or over[0] < 0.2 or over[1] < 1.2, (path, word, another, over)


def write(folder, part, option, name, *arguments, environment=None):
    path = folder / name
    result = cases.run(option, path, *arguments, cases.put(folder, part), folder=folder,
                       environment=environment)
    assert result.returncode == 0, result.stderr
    return path


def speaking(folder, language):
    """The environment of somebody who reads that language; any locale but C will do."""
    subprocess.run(['localedef', '-i', 'de_DE', '-f', 'UTF-8', folder / 'de_DE.UTF-8'], check=True,
                   timeout=120, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return {'LOCPATH': str(folder), 'LC_ALL': 'de_DE.UTF-8', 'LANGUAGE': language}


def check_pages(folder, part, environment, *how):
    for option in ('--card', '--model', '--gauges'):
        path = write(folder, part, option, 'o.pdf', *how, environment=environment)
        check_on_paper(path, how[1])
        assert pages(path) <= (2 if option == '--card' else 1), (part['name'], option)
        assert part['name'] in words(path).replace('\n', ' ')


def test_all_pages_fit(folder):
    """Nothing cut off, nothing over anything, on both papers, in mm and inches."""
    for i, part in enumerate([*EXAMPLES, FLARED]):
        check_pages(folder, part, {}, '--paper', ('A4', 'Letter')[i % 2], '--units',
                    ('mm', 'in')[i // 2 % 2])


def test_all_pages_fit_in_other_languages(folder):
    for language, word in (('de', 'Maße in Zoll.'), ('es', 'Medidas en pulgadas.')):
        environment = speaking(folder, language)
        for part in [*EXAMPLES, FLARED]:
            check_pages(folder, part, environment, '--paper', 'Letter', '--units', 'in')
            assert word in re.sub(r'\s+', ' ', words(folder / 'o.pdf')), language


def test_nothing_is_cut_short(folder):
    """Words that find no room end in dots: none do on the papers of the examples, in any language, in
    mm or inches, also where the guide sits off the line."""
    for language in ('C', 'de', 'es'):
        environment = speaking(folder, language) if language != 'C' else None
        for part in EXAMPLES:
            for units, offset in (('mm', '38mm'), ('in', '1-1/2in')):
                for option, more in (('--template', ()), ('--marking', ('--guide-offset', offset)),
                                     ('--card', ())):
                    text = words(write(folder, part, option, 'o.pdf', '--paper', 'A4', '--units', units,
                                       *more, environment=environment))
                    assert '…' not in text, (language, part.stem, option, units, re.findall(
                        r'[^\n]*…', text))


def test_marking_fits(folder):
    """The distances of points that crowd stand beside each other."""
    for part in EXAMPLES:
        for paper in PAPERS:
            check_on_paper(write(folder, part, '--marking', 'm.pdf', '--paper', paper), paper)


def test_card_says_all(folder):
    text = re.sub(r'\s+', ' ', words(write(folder, cases.TRAY, '--card', 'c.pdf'), '-layout'))
    report = json.loads(cases.output(folder, cases.TRAY, '--report'))
    for word in ('Metal', 'Mark', 'Drill', 'Cut', 'Bend', 'Join', 'Finish', 'Name', 'Class',
                 'Sizes in mm', 'Mild steel 1.5 mm', 'Over all: 200 × 120 × 40'):
        assert word in text, word
    assert f"{report['blank']['width']:.1f} mm" in text
    assert text.count('bend it up, square') == len(report['bends']) == 4
    assert len(re.findall(r'Seam \d of 4', text)) == len(report['seams'])
    assert re.search(r'base width: 200 ± [\d.]+', text)
    for caution in ('Guard on', 'does not glow', 'load rating', 'Fingers off', 'Deburr', 'Clamp the metal'):
        assert text.count(caution) == 1, caution


def test_who_decides(folder):
    """Where there are cautions, it is said on each page that they are but a reminder."""
    says = 'The tool’s own manual, local codes and licensed practice decide.'
    for option in ('--card', '--marking'):
        path = write(folder, cases.TRAY, option, 'd.pdf')
        for page in range(1, pages(path) + 1):
            assert says in ' '.join(words(path, '-f', str(page), '-l', str(page)).split()), option


def test_card_says_where_k_is_from(folder):
    for allowance, says in (({'rule': 'k-factor', 'k': 0.42}, 'K 0.42 ± 0.06, a rule of thumb'),
                            ({'rule': 'k-factor', 'k': 0.3}, 'K 0.3 ± 0.06, as you set it'),
                            ({'rule': 'din-6935'}, 'K 0.325 ± 0.06, by DIN 6935'),
                            ({'rule': 'handbook', 'group': 'medium'}, 'by the handbook'),
                            ({'rule': 'trial-bend', 'id': 'shed', 'k': 0.4, 'k_error': 0.03},
                             'K 0.4 ± 0.03, by a trial bend')):
        part = cases.tray(bend={'way': 'bar', 'inside_radius': 1.5, 'allowance': allowance})
        shown = ' '.join(words(write(folder, part, '--card', 'k.pdf')).split())
        assert says in shown, (says, shown[:300])


def test_every_output_says_what_it_is(folder):
    """So that a paper found in a drawer can be used: the part, the whole set-up, the day."""
    says = ('Mild steel 1.5 mm, cut by me with a 125 mm disc, bent over a bar, corners welded, '
            'sizes outside.')
    part = cases.tray(flanges=[{**flange, 'angle': 80} for flange in cases.TRAY['flanges']],
                      cutting={'by': 'disc', 'diameter': 125}, joining='welded')
    for option, name in (('--card', 'c.pdf'), ('--model', 'm.pdf'), ('--gauges', 'g.pdf'),
                         ('--strip', 's.pdf'), ('--marking', 'k.pdf'), ('--template', 't.pdf'),
                         ('--pattern', 'p.pdf'), ('--pattern', 'p.svg'), ('--pattern', 'p.dxf')):
        path = write(folder, part, option, name)
        shown = ' '.join((words(path) if path.suffix == '.pdf' else path.read_text()).split())
        assert says in shown, (option, name)
        assert part['name'] in shown, (option, name)
        assert re.search(r'\b20\d\d-\d\d-\d\d\b', shown), (option, name)


def test_card_in_order(folder):
    """The bends stand in the order in which they can be made: a lip before its wall."""
    part = cases.tray(name='Lipped')
    part['flanges'].append({'id': 'a-lip', 'on': 'right', 'edge': 'tip', 'length': 12, 'angle': 90,
                            'turn': 'up'})
    text = words(write(folder, part, '--card', 'c.pdf'), '-layout')
    order = re.findall(r'^\s*(\S+): bend it up', text, re.M)
    assert sorted(order) == ['a-lip', 'back', 'front', 'left', 'right'], order
    assert order.index('a-lip') < order.index('right')


def test_card_warns(folder):
    part = cases.tray()
    part['flanges'][0]['length'] = 2
    assert "Don't cut yet" in words(write(folder, part, '--card', 'c.pdf'))


def svg_paths(folder, path):
    """The paths of a page as lists of points in mm, from what Poppler draws of it."""
    out = folder / 'page.svg'
    subprocess.run(['pdftocairo', '-svg', path, out], check=True)
    for element in ET.parse(out).iter('{http://www.w3.org/2000/svg}path'):
        numbers = re.findall(r'([MLHVCZ])|(-?[\d.]+)', element.get('d', ''))
        if any(letter in 'CHV' for letter, number in numbers if letter):
            continue
        values = [float(number) for letter, number in numbers if number]
        shift = re.match(r'matrix\((.*)\)', element.get('transform', 'matrix(1,0,0,1,0,0)'))
        a, b, c, d, e, f = (float(v) for v in shift.group(1).split(','))
        yield [((a * x + c * y + e) * POINT_MM, (b * x + d * y + f) * POINT_MM)
               for x, y in zip(values[::2], values[1::2])]


def opening_of(points):
    """Of a wedge of four corners (tip, leg's end, other leg's end, tip): the angle between its legs."""
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = points[:4]
    one, two = math.atan2(by - ay, bx - ax), math.atan2(cy - dy, cx - dx)
    return abs(math.degrees(math.remainder(one - two, math.tau)))


def test_gauges_are_true(folder):
    path = write(folder, FLARED, '--gauges', 'g.pdf')
    found = sorted(opening_of(p) for p in svg_paths(folder, path)
                   if len(p) >= 4 and math.dist(p[1], p[2]) > 20)
    assert len(found) == 3, found
    for angle, wanted in zip(found, (70, 107.5, 120)):
        cases.near(angle, wanted, 0.05)
    text = re.sub(r'\s+', ' ', words(path))
    for word in ('opening 120°', 'turned by 60°, leans out: back, front', 'opening 70°',
                 'turned by 110°, leans in: left', 'opening 107.5°', 'turned by 72.5°'):
        assert word in text, word


def test_no_gauge_needed(folder):
    path = write(folder, cases.TRAY, '--gauges', 'g.pdf')
    assert 'a square is all you need' in re.sub(r'\s+', ' ', words(path))


def test_model_says_its_scale(folder):
    """As large as it fits, from the usual scales."""
    for size, scale in ((60, '1'), (200, '2'), (2000, '15')):
        part = cases.tray(base={'outline': [[0, 0], [size, 0], [size, size], [0, size]]})
        text = words(write(folder, part, '--model', 'm.pdf', '--paper', 'A4')).replace('\xa0', ' ')
        assert re.search(rf'1 : {scale}\.\s', text), (size, text)


def test_model_tells_which_way_folds_go(folder):
    """Up or down, and the angle where it is not square, along each crease."""
    turns, angles = ['up', 'down', 'down', 'up'], [90, 60, 90, 45]
    part = cases.tray(joining='none', flanges=[
        {**flange, 'turn': turn, 'angle': angle}
        for flange, turn, angle in zip(cases.TRAY['flanges'], turns, angles)])
    text = words(write(folder, part, '--model', 'm.pdf', '--paper', 'A4'))
    for turn, angle in zip(turns, angles):
        assert f'fold {turn} {angle}°' in text, (turn, angle, text)
    assert 'Up is toward you.' in text


def test_model_is_true(folder):
    """The bend lines of a tray in paper stand as far apart as its walls, by the scale."""
    part = cases.tray(base={'outline': [[0, 0], [100, 0], [100, 60], [0, 60]]})
    path = write(folder, part, '--model', 'm.pdf', '--paper', 'A4')
    lengths = sorted(math.dist(p[0], p[1]) for p in svg_paths(folder, path) if len(p) == 2)
    # Two of each: the base less half a paper's thickness at either end.
    assert sum(99 < length < 100.01 for length in lengths) >= 2, lengths
    assert sum(59 < length < 60.01 for length in lengths) >= 2, lengths


def pack(folder, part, *arguments):
    result = cases.run('--pack', folder / 'pack', *arguments, cases.put(folder, part), folder=folder)
    assert result.returncode == 0, result.stderr
    return {p.suffix: p for p in (folder / 'pack').iterdir()}


def test_pack(folder):
    files = pack(folder, cases.tray(name='Spoke tray'))
    assert {p.name for p in files.values()} == {
        'Spoke tray, 1 off, mild steel 1.5 mm' + suffix for suffix in ('.dxf', '.svg', '.pdf', '.txt')}
    report = json.loads(cases.output(folder, cases.TRAY, '--report'))
    drawing = ezdxf.readfile(files['.dxf'])
    assert not drawing.audit().errors
    points = [v.dxf.location for e in drawing.modelspace() if e.dxftype() == 'POLYLINE'
              and e.dxf.layer == 'cut-outside' for v in e.vertices]
    cases.near(max(p.x for p in points) - min(p.x for p in points), report['blank']['width'], 1e-6)
    note = files['.txt'].read_text(encoding='utf-8')
    assert 'DXF unit: mm' in note and f"Width: {round(report['blank']['width'], 4)} mm" in note
    assert 'Least hole: none' in note
    assert pages(files['.pdf']) == 1
    check_on_paper(files['.pdf'], 'A4')
    assert f"{report['blank']['width']:.1f} mm" in words(files['.pdf'])


def test_pack_in_inches(folder):
    files = pack(folder, cases.TRAY, '--units', 'in')
    report = json.loads(cases.output(folder, cases.TRAY, '--report'))
    assert files['.dxf'].name == 'Tray, 1 off, mild steel 0.0591 in.dxf'
    points = [v.dxf.location for e in ezdxf.readfile(files['.dxf']).modelspace()
              if e.dxftype() == 'POLYLINE' and e.dxf.layer == 'cut-outside' for v in e.vertices]
    cases.near(max(p.x for p in points) - min(p.x for p in points),
               report['blank']['width'] / 25.4, 1e-6)
    assert 'DXF unit: in' in files['.txt'].read_text(encoding='utf-8')


def test_pack_checks(folder):
    """A hole narrower than the metal is thick, and a bridge of 2 mm."""
    part = cases.tray(openings=[
        {'on': 'base', 'shape': 'round', 'at': [50, 50], 'diameter': 1.2},
        {'on': 'base', 'shape': 'rectangle', 'at': [100, 60], 'length': 20, 'width': 10, 'angle': 0},
        {'on': 'base', 'shape': 'rectangle', 'at': [100, 72], 'length': 20, 'width': 10, 'angle': 0}])
    note = pack(folder, part)['.txt'].read_text(encoding='utf-8')
    assert 'Least hole: 1.2 mm\nLeast hole needed: 1.5 mm\nLeast hole: TOO SMALL' in note, note
    assert 'Least bridge: 2 mm\nLeast bridge needed: 3 mm\nLeast bridge: TOO SMALL' in note, note


def test_names_that_no_disk_takes(folder):
    for name, begins in (('a/b\\c:d*e?f"g<h>i|j', 'a-b-c-d-e-f-g-h-i-j, 1 off'), ('', 'Part, 1 off'),
                         ('..', 'Part, 1 off'), ('.x', 'x, 1 off'), ('é' * 200, 'é' * 40 + ', 1 off')):
        for path in pack(folder, cases.tray(name=name)).values():
            assert path.name.startswith(begins), path.name
            path.unlink()


def test_pack_whole_or_not_there(folder):
    (folder / 'file').write_text('kept', encoding='utf-8')
    result = cases.run('--pack', folder / 'file', cases.put(folder, cases.TRAY), folder=folder)
    assert result.returncode == 3 and 'file: ' in result.stderr, result.stderr
    assert (folder / 'file').read_text(encoding='utf-8') == 'kept'
    result = cases.run('--pack', folder / 'new', '--card', folder / 'no' / 'c.pdf',
                       cases.put(folder, cases.TRAY), folder=folder)
    assert result.returncode == 3
    assert not (folder / 'new').exists() or not list((folder / 'new').iterdir())


if __name__ == '__main__':
    cases.main(sys.modules[__name__])
