#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The set-up in depth: a metal, drills and a trial bend of one's own, by keys and pointer."""

import json
import math
import os
import pathlib
import shutil

import gui

EXAMPLES = pathlib.Path(os.environ['BENCHFOLD_DATA']) / 'examples'


def started(program, folder):
    path = folder / 'tray.benchfold'
    shutil.copy(EXAMPLES / 'spoke-tray.benchfold', path)
    return gui.App(program, path, env={'XDG_DATA_HOME': str(folder / 'data')}), path


def saved(app, path):
    app.key('ctrl+s')
    app.titled('Spoke tray')
    return json.loads(path.read_text())


def a_trial_bend_is_typed_and_kept(program, folder):
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Bending: over a bar'))
        app.shown(None, 'Trial bend…')
        app.key('Up', 'Return')
        app.dialogue('Trial bend')
        app.shown('text', 'length of strip 1')
        app.shown(None, r'Mild steel 1\.2 mm, bent over a bar, .*mark them out, 100 mm × 20 mm.*')
        for words in ('100', '51', '51'):
            app.type(words)
            app.key('Tab')
        app.shown(None, r'K 0\.\d+ ± 0\.\d+, from 1 strip')
        app.key('Return')
        app.focus()
        app.titled('Spoke tray (not saved)')
        app.shown(None, r'K 0\.42 → .*blank .*')
        allowance = saved(app, path)['bend']['allowance']
    assert allowance['rule'] == 'trial-bend', allowance
    # BA = 100 − 102 + 2 (R + t), R = t = 1.2: 2.8; K = (BA / (π/2) − R) / t.
    assert abs(allowance['k'] - (2.8 / 1.5707963 - 1.2) / 1.2) < 1e-6, allowance
    kept = list((folder / 'data' / 'benchfold' / 'trial-bends').iterdir())
    assert [file.stem for file in kept] == [allowance['id']], kept


def strips_are_averaged(program, folder):
    """BA of each is L − a − b + 4.8: 2.8, 2.6 and 2.9; K their mean, ± what they scatter by."""
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Bending: over a bar'))
        app.shown(None, 'Trial bend…')
        app.key('Up', 'Return')
        app.dialogue('Trial bend')
        app.shown('text', 'length of strip 1')
        found = []
        for n, lengths in enumerate((('100', '51', '51'), ('100', '51.1', '51.1'),
                                     ('100.1', '51', '51')), 1):
            for words in lengths:
                app.type(words)
                app.key('Tab')
            found.append(app.shown(None, rf'K 0\.\d+ ± 0\.\d+, from {n} strips?').name)
        app.key('alt+k')
        app.titled('Spoke tray (not saved)')
        app.focus()
        allowance = saved(app, path)['bend']['allowance']
    ks = [(ba / (math.pi / 2) - 1.2) / 1.2 for ba in (2.8, 2.6, 2.9)]
    mean = sum(ks) / 3
    assert abs(allowance['k'] - mean) < 1e-6, (allowance, found)
    off = 4.303 * math.sqrt(sum((k - mean) ** 2 for k in ks) / 2 / 3)  # Student, two degrees
    assert abs(allowance['k_error'] - off) < 1e-6, (allowance, off)
    [kept] = (folder / 'data' / 'benchfold' / 'trial-bends').iterdir()
    assert len(json.loads(kept.read_text())['strips']) == 3


def a_metal_of_ones_own_is_kept_and_used(program, folder):
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Metal: Mild steel 1.2 mm'))
        app.shown(None, 'A metal of your own…')
        app.key('shift+Tab', 'Return')
        app.dialogue('A metal of your own')
        app.shown('text', 'Name')
        app.type('Shed steel')
        app.key('Return')
        app.focus()
        app.shown(None, 'Metal: Shed steel 1.2 mm')
        metal = saved(app, path)['metal']
    assert metal['material'] == 'shed-steel', metal
    kept = json.loads((folder / 'data' / 'benchfold' / 'metals' / 'shed-steel.json').read_text())
    assert kept['density'] == 7850 and kept['like'] == 'mild-steel', kept


def knobs_of_slots_tell_at_once(program, folder):
    """Typed or stepped, what the slots come to stands below before the window is left."""
    path = folder / 'tray.benchfold'
    part = json.loads((EXAMPLES / 'spoke-tray.benchfold').read_text())
    part['bend'] = {'way': 'slots'}
    path.write_text(json.dumps(part))
    with gui.App(program, path) as app:
        app.click(app.shown(None, 'Bending: along slots'))
        app.shown(None, 'Details: radius, K, push…')
        app.key('Up', 'Up', 'Up', 'Return')
        window = app.dialogue('Bending, in detail')
        app.shown(None, r'(?s)\d+ slots in all\. The hardest push: .*metal left; push .*')
        app.click(app.shown('text', 'Slot length'), window)
        app.type('25')
        app.shown(None, r'(?s).* slots, 3\d.* mm where you cut, .* behind.*')
        app.click(app.shown('text', 'Bridge length'), window)
        app.type('14')
        app.shown(None, r'(?s).*bridges of 14 mm.*')
        app.key('Up', 'Up')
        app.shown(None, r'(?s).*bridges of 16 mm.*')
        app.key('Down')
        app.shown(None, r'(?s).*bridges of 15 mm.*')
        app.click(app.shown('text', 'Board or pliers to push on'), window)
        app.type('400')
        app.shown(None, r'(?s).*kg at 400 mm\..*')
        app.click(app.shown('spin button', 'What you can push, N'), window)
        app.key('Up')
        app.shown(None, r'(?s).*of the 21 kg you have.*')
        app.key('Escape')
        app.focus()
        made = saved(app, path)['bend']
        assert made['slots'] == {'slot': 25, 'bridge': 15}, made
        assert made['hand'] == {'limit': 210, 'lever': 400}, made
        app.key(*['ctrl+z'] * 4)  # each knob is one step, however many keys it took
        app.titled('Spoke tray (not saved)')
        assert saved(app, path)['bend']['way'] == 'slots'
        assert 'slots' not in json.loads(path.read_text())['bend']


# Each phrase, where its menu's choices begin, and what each of them makes of it.
PHRASES = {
    'Bending: over a bar': ['in a brake', None, 'along slots', 'along a score'],
    'Corners: welded': [None, 'riveted', 'screwed', 'folded', 'left open'],
    'Cutting: a 125 mm disc': ['a 115 mm disc', None, 'a 150 mm disc', 'a 180 mm disc',
                               'a 230 mm disc', 'snips', 'a cutting table', 'a service'],
    'Sizes: outside': [None, 'inside'],
}
# What has to stand below the sentence once one is chosen; the others change nothing but it.
TOLD = {'along slots': r'.*inside radius 1\.2 mm → 0\.6 mm, K 0\.42 → 0\.4, slots 0 → \d.*',
        'along a score': r'.*inside radius 1\.2 mm → 0 mm, K 0\.42 → 0\.5.*blank .*',
        'riveted': r'.*tabs 0 → 4.*', 'screwed': r'.*tabs 0 → 4.*',
        'folded': r'.*folded corners 0 → 4.*',
        'snips': r'.*kerf 1\.3 mm → 0 mm.*',
        'a cutting table': r'relief drill .* → none, kerf 1\.3 mm → 1\.5 mm, slack 0\.75 mm → 0 mm, '
                           r'corner gap 0\.5 mm → 0\.2 mm.*',
        'a service': r'.*kerf 1\.3 mm → 0 mm, slack 0\.75 mm → 0 mm.*'}


def plain_tray(folder):
    """As the program itself would write it, with no choice made that is not a default."""
    path = folder / 'tray.benchfold'
    walls = [{'id': name, 'on': 'base', 'edge': edge, 'length': 40}
             for edge, name in enumerate(('front', 'right', 'back', 'left'))]
    path.write_text(json.dumps({
        'format': 'benchfold-part', 'version': 1, 'name': 'Spoke tray', 'metal': {'thickness': 1.2},
        'base': {'outline': [[0, 0], [200, 0], [200, 120], [0, 120]]}, 'flanges': walls}))
    return path


def every_phrase(*phrases):
    def test(program, folder):
        path = plain_tray(folder)
        with gui.App(program, path) as app:
            app.key('ctrl+s')
            app.titled('Spoke tray')
            for phrase in phrases:
                for at, choice in enumerate(PHRASES[phrase]):
                    if choice is None:
                        continue
                    app.click(app.shown(None, phrase))
                    app.shown(None, choice)
                    app.key('Home', *['Down'] * at, 'Return')
                    app.shown(None, phrase.split(':')[0] + ': ' + choice)
                    if choice in TOLD:
                        app.shown(None, TOLD[choice])
                    app.key('ctrl+z')
                    app.shown(None, phrase)
            app.titled('Spoke tray')  # undone whole: as it was saved
    test.__name__ = 'every_choice_tells_and_is_undone_' + '_'.join(
        phrase.split(':')[0].lower() for phrase in phrases)
    return test


def a_thickness_is_typed_as_people_say_it(program, folder):
    app, path = started(program, folder)
    shown = 'Metal: Mild steel 1.2 mm'
    with app:
        for words, thickness, then, understood in (
                ('16 ga', 0.0598 * 25.4, '1.52', '= 1.519 mm, Manufacturers’ Standard Gauge for steel'),
                ('1.25', 1.25, '1.25', None),
                ('0.060 in', 0.060 * 25.4, '1.52', '= 1.524 mm'),
                ('3/64', 3 / 64 * 25.4, '1.19', '= 1.191 mm')):
            app.click(app.shown(None, shown))
            app.shown('text', 'Thickness')
            app.shown(None, r'(?s).*\d+ ga = .*Manufacturers’ Standard Gauge for steel')
            app.key('ctrl+a')
            app.type(words)
            if understood is not None:
                app.shown(None, understood)
            app.key('Return')
            shown = f'Metal: Mild steel {then} mm'
            app.shown(None, shown)
            got = saved(app, path)['metal']['thickness']
            assert abs(got - thickness) < 1e-9, (words, got)
        app.key('ctrl+z', 'ctrl+z', 'ctrl+z', 'ctrl+z')
        app.shown(None, 'Metal: Mild steel 1.2 mm')
        assert saved(app, path)['metal']['thickness'] == 1.2


def a_broken_file_is_named(program, folder):
    metals = folder / 'data' / 'benchfold' / 'metals'
    metals.mkdir(parents=True)
    (metals / 'bad.json').write_text('{')
    app, _ = started(program, folder)
    with app:
        app.click(app.shown(None, 'Metal: Mild steel 1.2 mm'))
        app.shown(None, r'A file of your own was left out\..*bad\.json.*')
        app.key('Escape')


def put_own(folder, kind, stem, **content):
    place = folder / 'data' / 'benchfold' / kind
    place.mkdir(parents=True, exist_ok=True)
    (place / f'{stem}.json').write_text(json.dumps({'version': 1, **content}))
    return place / f'{stem}.json'


def a_metal(folder):
    return put_own(folder, 'metals', 'shed-steel', format='benchfold-metal', name='Shed steel',
                   density=7850, **{'yield': 210}, tensile=340, elastic=210, least_radius=0.5)


def opened_list(app, phrase, title, *keys):
    app.click(app.shown(None, phrase))
    app.shown(None, title + '…')
    app.key(*keys)
    return app.dialogue(title)


def a_metal_is_removed_and_put_back(program, folder):
    path = a_metal(folder)
    was = path.read_bytes()
    app, _ = started(program, folder)
    with app:
        opened_list(app, 'Metal: Mild steel 1.2 mm', 'Your metals', 'shift+Tab', 'Up', 'Return')
        app.shown('push button', 'Remove: Shed steel')
        app.key('Tab', 'Return')
        app.shown('push button', 'Put back: Shed steel')
        assert not path.exists()
        app.shown(None, 'What was removed can be put back until this is closed.')
        app.key('Return')
        app.shown('push button', 'Remove: Shed steel')
        assert path.read_bytes() == was
        app.key('Return')
        app.dialogue('A metal of your own')
        app.shown('text', 'Name')
        app.key('ctrl+a')
        app.type('Barn steel')
        app.key('Return')
        app.shown('push button', 'Remove: Barn steel')
        app.dialogue('Your metals')
        assert json.loads(path.read_text())['name'] == 'Barn steel'
        app.key('Escape')
        app.focus()
        app.titled('Spoke tray')


def a_trial_bend_is_changed_and_the_part_follows(program, folder):
    trial = put_own(folder, 'trial-bends', 'shed', format='benchfold-trial-bend',
                    material='mild-steel', thickness=1.2, way='bar', inside_radius=1.2,
                    date='2026-01-31', measured_to=0.1, k=0.4, k_error=0.02,
                    strips=[{'length': 100, 'legs': [51, 51], 'angle': 90}])
    path = folder / 'tray.benchfold'
    part = json.loads((EXAMPLES / 'spoke-tray.benchfold').read_text())
    part['bend']['allowance'] = {'rule': 'trial-bend', 'id': 'shed', 'k': 0.4}
    path.write_text(json.dumps(part))
    with gui.App(program, path, env={'XDG_DATA_HOME': str(folder / 'data')}) as app:
        opened_list(app, 'Bending: over a bar', 'Your trial bends', 'Up', 'Up', 'Return')
        app.shown(None, r'Mild steel 1\.2 mm, bent over a bar, inside radius 1\.2 mm: K 0\.4 ± .*')
        app.key('Return')
        app.dialogue('Trial bend')
        app.shown('text', 'leg 1 of strip 1')
        app.key('Tab', 'ctrl+a')
        app.type('51.2')
        app.key('Return')
        app.shown(None, r'Mild steel 1\.2 mm, .*: K 0\.379 ± .*')
        app.dialogue('Your trial bends')
        app.key('Escape')
        app.focus()
        app.titled('Spoke tray (not saved)')
        allowance = saved(app, path)['bend']['allowance']
    # BA = 100 − 102.2 + 4.8 = 2.6; K = (2.6 / (π/2) − 1.2) / 1.2.
    assert abs(allowance['k'] - (2.6 / 1.5707963 - 1.2) / 1.2) < 1e-6, allowance
    assert json.loads(trial.read_text())['strips'][0]['legs'] == [51.2, 51]


def a_box_of_drills_is_made_and_changed(program, folder):
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Cutting: a 125 mm disc'))
        app.shown(None, 'Kerf, slack…')
        app.key('Up', 'Up', 'Right')
        app.shown(None, 'A box of your own…')
        app.key('Up', 'Return')
        app.dialogue('A box of drills of your own')
        app.type('Red box')
        app.key('Tab')
        app.type('4..10 + 2')
        app.shown(None, '4 drills, from 4 to 10 mm')
        app.key('Return')
        app.titled('Spoke tray (not saved)')
        app.focus()
        assert saved(app, path)['cutting']['drills'] == [4, 6, 8, 10]
        app.click(app.shown(None, 'Cutting: a 125 mm disc'))
        app.shown(None, 'Kerf, slack…')
        app.key('Up', 'Up', 'Right')
        app.shown(None, 'Your boxes of drills…')
        app.key('Up', 'Up', 'Return')
        app.dialogue('Your boxes of drills')
        app.shown('push button', 'Change…: Red box: 4 drills, from 4 to 10 mm')
        app.key('Return')
        app.dialogue('A box of drills of your own')
        app.key('Tab', 'End')
        app.type('; 12')
        app.key('Return')
        app.shown('push button', 'Change…: Red box: 5 drills, from 4 to 12 mm')
        app.dialogue('Your boxes of drills')
        app.key('Escape')
        app.focus()
        assert saved(app, path)['cutting']['drills'] == [4, 6, 8, 10, 12]


def pens_are_kept(program, folder):
    app, _ = started(program, folder)
    with app:
        app.run('win.pens')
        window = app.dialogue('Pens of the template')
        app.click(app.shown(None, 'width of cuts in mm'), window)
        app.key('ctrl+a')
        app.type('0.5')
        app.key('Tab', 'shift+Tab', 'shift+Tab', 'space', 'Down', 'Return')
        app.key('alt+k')
        pens = folder / 'data' / 'benchfold' / 'pens.json'
        gui.until('the pens', pens.exists)
        cut = json.loads(pens.read_text())['cut']
        assert cut == {'colour': '#0072B2', 'width': 0.5}, cut
        app.focus()


def a_scored_bend_is_tried_by_its_skin(program, folder):
    path = folder / 'tray.benchfold'
    part = json.loads((EXAMPLES / 'spoke-tray.benchfold').read_text())
    part['bend'] = {'way': 'score'}
    path.write_text(json.dumps(part))
    with gui.App(program, path, env={'XDG_DATA_HOME': str(folder / 'data')}) as app:
        app.click(app.shown(None, 'Bending: along a score'))
        app.shown(None, 'Trial bend…')
        app.key('Up', 'Return')
        app.dialogue('Trial bend')
        app.shown(None, '.*K says nothing here.*')
        app.type('0.6')
        app.shown(None, r'(?s)The hardest push: .*leave 0\.6 mm; half of the metal left; push .*')
        app.key('Down')
        app.shown(None, '(?s).*leave 0.5 mm; .*')
        app.key('Up')
        app.key('Return')
        app.titled('Spoke tray (not saved)')
        app.key('Escape')
        app.focus()
        assert saved(app, path)['bend']['score'] == {'left': 0.6}


def what_holds_already_is_no_change(program, folder):
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Bending: over a bar'))
        app.shown(None, 'in a brake')
        app.key('Home', 'Down', 'Return')
        app.click(app.shown(None, 'Sizes: outside'))
        app.shown(None, 'in inches')
        app.key('Home', 'Return')
        app.shown(None, 'Sizes: outside')
        assert not app.can('win.undo')
        app.titled('Spoke tray')


def the_grain_is_told(program, folder):
    app, path = started(program, folder)
    with app:
        app.click(app.shown(None, 'Metal: Mild steel 1.2 mm'))
        app.shown(None, 'Grain')
        app.key('shift+Tab', 'Up', 'Right')
        app.shown(None, 'along the blank’s width')
        app.key('Up', 'Up', 'Return')
        app.titled('Spoke tray (not saved)')
        app.shown(None, r'Before you cut: \d to look at.*')
        assert saved(app, path)['metal']['grain'] == 0


gui.main([every_phrase('Bending: over a bar', 'Corners: welded'),
          every_phrase('Cutting: a 125 mm disc', 'Sizes: outside'),
          what_holds_already_is_no_change, knobs_of_slots_tell_at_once, a_trial_bend_is_typed_and_kept, strips_are_averaged, a_metal_of_ones_own_is_kept_and_used,
          a_thickness_is_typed_as_people_say_it, a_broken_file_is_named, a_metal_is_removed_and_put_back,
          a_trial_bend_is_changed_and_the_part_follows, a_box_of_drills_is_made_and_changed,
          pens_are_kept, a_scored_bend_is_tried_by_its_skin,
          the_grain_is_told])
