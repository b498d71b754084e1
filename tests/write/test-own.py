#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The person's own metals, as the command line finds them."""

import json
import sys

import cases

METAL = {'format': 'benchfold-metal', 'version': 1, 'name': 'shed lead', 'density': 11340,
         'yield': 10, 'tensile': 15, 'elastic': 16, 'least_radius': 0}
LEAD_TRAY = cases.tray(metal={'material': 'shed-lead', 'thickness': 1.5})


def run(folder, metal_text, part):
    metals = folder / 'data' / 'benchfold' / 'metals'
    metals.mkdir(parents=True)
    (metals / 'shed-lead.json').write_text(metal_text, encoding='utf-8')
    result = cases.run('--report', cases.put(folder, part), folder=folder,
                       environment={'XDG_DATA_HOME': str(folder / 'data')})
    assert result.returncode == 0, result.stderr
    return json.loads(result.stdout), result.stderr


def test_weighs_what_it_weighs(folder):
    report, told = run(folder, json.dumps(METAL), LEAD_TRAY)
    blank = report['blank']
    cases.near(blank['mass'], blank['area'] * 1.5 * 11340e-9, 1e-9)
    assert told == ''


def test_broken_is_named_and_leaves_the_rest(folder):
    report, told = run(folder, json.dumps({**METAL, 'density': -1}), LEAD_TRAY)
    assert report['blank']['mass'] is None and report['blank']['area'] > 0
    assert told.count('\n') == 1 and told.startswith('benchfold: '), told
    assert 'shed-lead.json: density: ' in told, told


def test_not_looked_at_without_need(folder):
    report, told = run(folder, 'broken', cases.TRAY)
    assert report['blank']['mass'] > 0 and told == ''


cases.main(sys.modules[__name__])
