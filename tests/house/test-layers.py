#!/usr/bin/python3
# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Arrows run downward: core <- fold <- make <- paint <- write <- app.

Separate libraries make most wrong includes fail to compile, but not those whose headers lie in
/usr/include, nor a header that only needs a type's name.
"""

import re

import tap

LAYERS = ['core', 'fold', 'make', 'paint', 'write', 'app']
CAIRO_LAYERS = {'paint', 'write', 'app'}


def includes(files):
    """(path, layer, what is included) for all of src."""
    for path, text in files.items():
        match = re.match(r'src/(\w+)/.*\.[ch]$', path)
        if match:
            for what in re.findall(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]', text, re.M):
                yield path, match.group(1), what


def upward(files):
    faults = []
    for path, layer, what in includes(files):
        into = what.split('/')[0]
        if into in LAYERS and '/' in what and LAYERS.index(into) > LAYERS.index(layer):
            faults.append(f'{path} includes {what}, which lies above it')
    return faults


def spelled_out(files):
    """An include of ours names its layer, so that the scan above can see it."""
    ours = {path.rsplit('/', 1)[1] for path in files if re.match(r'src/\w+/.*\.h$', path)}
    return [f'{path} includes {what} without its layer'
            for path, _, what in includes(files)
            if what.startswith('..') or ('/' not in what and what in ours)]


def toolkit(files):
    return [f'{path} includes {what}' for path, layer, what in includes(files)
            if layer != 'app' and re.match(r'(gtk|gdk|gsk)/', what)]


def toolkit_hidden(files):
    """main.c calls into src/app through a header that shows no GTK."""
    text = files.get('src/app/app.h', '')
    return ['src/app/app.h includes GTK'] if re.search(r'#\s*include\s*<(gtk|gdk)/', text) else []


def drawing(files):
    return [f'{path} includes {what}' for path, layer, what in includes(files)
            if layer not in CAIRO_LAYERS and re.match(r'(cairo|pango)', what)]


def polygons(files):
    """Polygon booleans hide behind one file of src/fold, whose header shows no GEOS type."""
    users = sorted({path for path, _, what in includes(files) if what.startswith('geos')})
    if len(users) == 1 and re.match(r'src/fold/.*\.c$', users[0]):
        return []
    return [f'GEOS should be included by one .c of src/fold, and is by: {", ".join(users) or "none"}']


def objects(files):
    """Below the window everything is a plain value."""
    return [f'{path} defines a GObject class' for path, text in files.items()
            if re.match(r'src/(core|fold|make|paint|write)/', path)
            and re.search(r'\bG_(DEFINE|DECLARE)_\w*TYPE\w*\s*\(', text)]


tap.run([
    ('no include points upward', upward,
     {'src/core/a.h': '#include "fold/fold.h"\n'}),
    ('an include names its layer', spelled_out,
     {'src/core/a.c': '#include "a.h"\n', 'src/core/a.h': ''}),
    ('GTK only in src/app', toolkit,
     {'src/paint/a.c': '#include <gtk/gtk.h>\n'}),
    ('app.h shows no GTK', toolkit_hidden,
     {'src/app/app.h': '#include <gtk/gtk.h>\n'}),
    ('cairo only in paint, write and app', drawing,
     {'src/fold/a.c': '#include <cairo.h>\n'}),
    ('GEOS in one file of fold', polygons,
     {'src/fold/a.c': '#include <geos_c.h>\n', 'src/fold/b.c': '#include <geos_c.h>\n'}),
    ('no GObject class below src/app', objects,
     {'src/core/a.h': 'G_DECLARE_FINAL_TYPE (A, a, A, A, GObject)\n'}),
])
