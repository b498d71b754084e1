#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The program as people run it: exit status, the one line on stderr, and what is on the disk."""

import json
import os
import re
import stat
import subprocess
import sys

import cases


def refused(result, status, start, part=''):
    assert result.returncode == status, f'{result.returncode}: {result.stderr}'
    assert result.stdout == ''
    lines = result.stderr.splitlines()
    assert len(lines) == 1, result.stderr
    assert lines[0].startswith(f'benchfold: {start}'), lines[0]
    assert part in lines[0], lines[0]


def refused_part(folder, part, words):
    """A part that can't be used: exit 1, and no output."""
    path = cases.put(folder, part)
    out = folder / 'out.svg'
    out.write_text('earlier')
    refused(cases.run('--report', '--pattern', out, '--template', folder / 'out.pdf', path),
            1, f'{path}: ', words)
    assert out.read_text() == 'earlier'
    assert sorted(p.name for p in folder.iterdir()) == ['out.svg', path.name]


def test_help(_folder):
    result = cases.run('--help')
    assert result.returncode == 0 and result.stderr == ''
    for word in ('--card', '--model', '--gauges', '--pack', '--report', '--template', '--pattern', '--demo', '--paper', '--units', '--version',
                 '--marks', '--guide-offset',                 'Exit status', 'A4, A3, Letter, Legal, Tabloid'):
        assert word in result.stdout, word
    assert max(map(len, result.stdout.splitlines())) <= 80
    assert not re.search(r'\bsheet\b', result.stdout)


def test_version(_folder):
    result = cases.run('--version')
    assert (result.returncode, result.stderr) == (0, '')
    assert re.fullmatch(r'Benchfold \d+\.\d+\.\d+\n', result.stdout)


def test_bad_usage(folder):
    part = cases.put(folder, cases.TRAY)
    for arguments, start, word in (
            (['--bogus', part], '--bogus: ', 'no such option'),
            (['--report'], 'FILE: ', 'must be named'),
            (['--report', part, part], f'{part}: ', 'one FILE'),
            (['--report', '--report', part], '--report: ', 'once'),
            (['--pattern', 'a.png', part], '--pattern: ', '.svg, .dxf or .pdf'),
            (['--marking', 'a.txt', part], '--marking: ', '.pdf or .csv'),
            (['--strip', 'a.svg', part], '--strip: ', '.pdf'),
            (['--strip', 'a.pdf', '--template', 'a.pdf', part], 'a.pdf: ', 'two outputs'),
            (['--report', '--paper', 'B9', part], '--paper: ', 'A4'),
            (['--report', '--units', 'ft', part], '--units: ', 'mm or in'),
            (['--template', part, part], f'{part}: ', 'replace the part'),
            (['--template', 'a.svg', '--pattern', 'a.svg', part], 'a.svg: ', 'two outputs')):
        refused(cases.run(*arguments, folder=folder), 2, start, word)
    assert [p.name for p in folder.iterdir()] == [part.name]
    assert json.loads(part.read_text()) == cases.TRAY


def test_a_file_that_is_not_there(folder):
    refused(cases.run('--report', 'none.benchfold', folder=folder), 1, 'none.benchfold: ')
    refused(cases.run('--report', folder), 1, f'{folder}: ')


def test_broken_json(folder):
    refused_part(folder, '{"format": "benchfold-part",\n "version": 1,,}', '2')
    refused_part(folder, '', '')
    refused_part(folder, '[]', '')
    refused_part(folder, '{"format": "benchfold-part", "version": 1, "base": {"outline": [[0, 0]', '')


def test_nan(folder):
    text = json.dumps(cases.TRAY)
    refused_part(folder, text.replace('"thickness": 1.5', '"thickness": NaN'), '')
    refused_part(folder, text.replace('"thickness": 1.5', '"thickness": 1e999'), '')
    refused_part(folder, text.replace('"thickness": 1.5', '"thickness": 1e6'), 'thickness')


def test_wrong_type(folder):
    refused_part(folder, cases.tray(metal={'thickness': 'abc'}), 'metal.thickness')
    refused_part(folder, cases.tray(units='furlong'), 'units')


def test_a_member_that_is_missing(folder):
    part = cases.tray()
    del part['base']
    refused_part(folder, part, 'base')


def test_an_edge_that_is_not_there(folder):
    flanges = cases.tray()['flanges']
    flanges[1]['edge'] = 9
    refused_part(folder, cases.tray(flanges=flanges), 'edge')


def test_flanges_that_hang_on_each_other(folder):
    flanges = [{'id': a, 'on': b, 'edge': 'tip', 'length': 10, 'angle': 90, 'turn': 'up'}
               for a, b in (('one', 'two'), ('two', 'one'))]
    refused_part(folder, cases.tray(flanges=flanges), 'on')


def test_an_outline_that_crosses_itself(folder):
    outline = [[0, 0], [200, 120], [200, 0], [0, 120]]
    refused_part(folder, cases.tray(base={'outline': outline}, flanges=[]), 'outline')


def test_deep_and_large(folder):
    refused_part(folder, '[' * (10 * 1024 * 1024), '')
    refused_part(folder, '{"notes": ' + '[' * 100 + ']' * 100 + '}', '')


def test_a_newer_version(folder):
    refused_part(folder, cases.tray(version=2), 'version')


def test_outputs_that_cannot_be_written(folder):
    part = cases.put(folder, cases.TRAY)
    (folder / 'dir.svg').mkdir()
    (folder / 'good.dxf').write_text('earlier')
    for bad in (folder / 'dir.svg', folder / 'none' / 'out.svg', '/proc/out.svg'):
        result = cases.run('--report', '--pattern', folder / 'good.dxf', '--pattern', bad, '--template',
                           folder / 'new.pdf', part)
        refused(result, 3, f'{bad}: ', 'could not be written')
        assert (folder / 'good.dxf').read_text() == 'earlier'
        assert sorted(p.name for p in folder.iterdir()) == ['dir.svg', 'good.dxf', part.name]
    refused(cases.run('--template', folder / 'dir.svg', part), 3, f'{folder / "dir.svg"}: ')
    refused(cases.run('--template', '/proc/x', part), 3, '/proc/x: ')


def test_report_into_a_full_disk(folder):
    part = cases.put(folder, cases.TRAY)
    with open('/dev/full', 'w', encoding='utf-8') as full:
        result = cases.run('--report', part, stdout=full)
    assert result.returncode == 3 and len(result.stderr.splitlines()) == 1, result


def test_all_outputs_in_one_run(folder):
    part = cases.put(folder, cases.TRAY)
    result = cases.run('--pattern', 'a.svg', '--report', '--template', 't.pdf', part, '--pattern',
                       'b.DXF', '--paper', 'letter', folder=folder)
    assert (result.returncode, result.stderr) == (0, ''), result.stderr
    assert json.loads(result.stdout)['format'] == 'benchfold-report'
    assert (folder / 't.pdf').read_bytes().startswith(b'%PDF-')
    assert (folder / 't.pdf').read_bytes().rstrip().endswith(b'%%EOF')
    assert (folder / 'a.svg').read_text(encoding='utf-8').endswith('</svg>\n')
    assert (folder / 'b.DXF').read_text(encoding='ascii').endswith('EOF\n')
    assert len(list(folder.iterdir())) == 4


def test_only_files_are_silent(folder):
    part = cases.put(folder, cases.TRAY)
    result = cases.run('--pattern', folder / 'a.svg', part)
    assert (result.returncode, result.stdout, result.stderr) == (0, '', '')


def test_must_fix_is_no_failure(folder):
    flanges = cases.tray()['flanges']
    flanges[0]['length'] = 1
    part = cases.put(folder, cases.tray(flanges=flanges))
    result = cases.run('--report', '--pattern', folder / 'a.svg', '--template', folder / 'a.pdf', part)
    assert result.returncode == 0, result.stderr
    assert any(c['severity'] == 'must-fix' for c in json.loads(result.stdout)['checks'])
    assert (folder / 'a.pdf').exists()
    assert 'Do not cut yet' in (folder / 'a.svg').read_text(encoding='utf-8')


def test_new_files_get_the_usual_mode(folder):
    part = cases.put(folder, cases.TRAY)
    mask = os.umask(0o027)
    try:
        assert cases.run('--pattern', folder / 'a.svg', part).returncode == 0
    finally:
        os.umask(mask)
    assert stat.S_IMODE((folder / 'a.svg').stat().st_mode) == 0o640


def test_same_part_same_files(folder):
    part = cases.put(folder, cases.TRAY)
    for name in ('a', 'b'):
        assert cases.run('--pattern', folder / f'{name}.svg', '--pattern', folder / f'{name}.dxf',
                         part).returncode == 0
    assert (folder / 'a.svg').read_bytes() == (folder / 'b.svg').read_bytes()
    assert (folder / 'a.dxf').read_bytes() == (folder / 'b.dxf').read_bytes()


def test_a_locale_with_a_decimal_comma(folder):
    """Words for people follow the locale; numbers in files never do."""
    subprocess.run(['localedef', '-i', 'de_DE', '-f', 'UTF-8', folder / 'de_DE.UTF-8'],
                   check=True, timeout=120, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    part = cases.put(folder, cases.TRAY)
    comma = {'LOCPATH': str(folder), 'LC_ALL': 'de_DE.UTF-8', 'LANGUAGE': 'C'}
    found = {}
    for name, environment in (('point', {}), ('comma', comma)):
        paths = [folder / f'{name}.svg', folder / f'{name}.dxf']
        result = cases.run('--report', '--pattern', paths[0], '--pattern', paths[1], part,
                           environment=environment)
        assert result.returncode == 0, result.stderr
        found[name] = result.stdout, *(path.read_text(encoding='utf-8') for path in paths)
    for point, with_comma in zip(found['point'], found['comma']):
        assert without_word_sizes(point) == without_word_sizes(with_comma)
    assert 'Mild steel 1.5 mm' in found['point'][1]
    assert 'Mild steel 1,5 mm' in found['comma'][1]


def without_word_sizes(text):
    """The text without the decimal signs of sizes told to people, "1.5 mm"."""
    return re.sub(r'(?<=\d)[.,](?=\d mm)', ' ', text)


def test_names_that_look_like_options(folder):
    cases.put(folder, cases.TRAY, '--report')
    result = cases.run('--report', '--', '--report', folder=folder)
    assert result.returncode == 0, result.stderr


def test_demo(folder):
    result = cases.run('--demo', 'new/demo', folder=folder)
    assert (result.returncode, result.stderr) == (0, ''), result.stderr
    names = {'spoke-tray' + tail for tail in ('.benchfold', '-template.pdf', '-report.json',
                                              '-pattern.svg', '-pattern.dxf',
                                              '-marking.pdf')}
    assert names <= {p.name for p in (folder / 'new' / 'demo').iterdir()}
    for name in names:
        assert f'new/demo/{name}' in result.stdout
    assert 'display' in result.stdout
    report = json.loads((folder / 'new/demo/spoke-tray-report.json').read_text(encoding='utf-8'))
    again = cases.run('--report', 'new/demo/spoke-tray.benchfold', folder=folder)
    assert json.loads(again.stdout)['blank'] == report['blank']
    assert report['pages']
    # Once more into the same folder.
    assert cases.run('--demo', 'new/demo', folder=folder).returncode == 0


def test_demo_that_cannot_be_written(folder):
    (folder / 'file').write_text('earlier')
    refused(cases.run('--demo', 'file', folder=folder), 3, 'file: ')
    refused(cases.run('--demo', 'file/demo', folder=folder), 3, 'file/demo: ')
    refused(cases.run('--demo', '/proc/demo', folder=folder), 3, '/proc/demo: ')
    assert (folder / 'file').read_text() == 'earlier'


def test_demo_without_its_part(folder):
    result = cases.run('--demo', 'demo', folder=folder,
                       environment={'BENCHFOLD_DATA': str(folder / 'none')})
    refused(result, 1, str(folder / 'none'))
    assert not (folder / 'demo').exists()


def test_the_window_without_a_display(folder):
    result = cases.run(cases.put(folder, cases.TRAY))
    assert result.returncode != 0 and 'display' in result.stderr
    assert len(result.stderr.splitlines()) == 1, result.stderr


cases.main(sys.modules[__name__])
