# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The straight lines of a PDF's pages, by Poppler."""

import math
import re
import subprocess
import xml.etree.ElementTree as ET

MM = 25.4 / 72.0
SVG = '{http://www.w3.org/2000/svg}'


class Line:
    """A straight piece of a stroked path; millimetres from the page's lower left corner, y up."""

    def __init__(self, a, b, style, alone):
        self.a, self.b, self.alone = a, b, alone
        self.length = math.dist(a, b)
        self.width = float(style['stroke-width']) * MM
        self.dashes = [float(d) * MM for d in style.get('stroke-dasharray', '').split(',') if d]
        self.colour = tuple(round(float(c) * 2.55) for c in re.findall(r'([\d.]+)%', style['stroke']))

    def runs_along(self, p, q, within):
        """Both points lie on it: cairo draws edges of one direction in one stroke."""
        step = [e - s for s, e in zip(self.a, self.b)]

        def away(point):
            share = sum((c - s) * d for c, s, d in zip(point, self.a, step)) / (self.length ** 2 or 1)
            share = min(max(share, 0), 1)
            return math.dist(point, [s + share * d for s, d in zip(self.a, step)])

        return away(p) < within and away(q) < within

    def joins(self, p, q, within):
        return (math.dist(self.a, p) < within and math.dist(self.b, q) < within or
                math.dist(self.a, q) < within and math.dist(self.b, p) < within)


def path_lines(d, matrix, style, height):
    """The straight lines of an SVG path of M, L, C and Z."""
    def place(x, y):
        a, b, c, e, f, g = matrix
        return ((a * x + c * y + f) * MM, height - (b * x + e * y + g) * MM)

    tokens, i, at, start, lines = re.findall(r'[MLCZ]|-?[\d.]+', d), 0, None, None, []
    while i < len(tokens):
        command = tokens[i]
        n = {'M': 2, 'L': 2, 'C': 6, 'Z': 0}[command]
        values = [float(t) for t in tokens[i + 1:i + 1 + n]]
        i += 1 + n
        to = start if command == 'Z' else place(*values[-2:])
        if command == 'M':
            start = to
        elif command != 'C':
            lines.append((at, to))
        at = to
    return [Line(a, b, style, len(lines) == 1) for a, b in lines]


def page_lines(pdf, number):
    """Every straight line stroked on a page, before clipping."""
    svg = pdf.with_suffix(f'.{number}.svg')
    subprocess.run(['pdftocairo', '-svg', '-noshrink', '-nocenter', '-f', str(number),
                    '-l', str(number), pdf, svg], check=True, timeout=60)
    root = ET.parse(svg).getroot()
    height = float(root.get('height').removesuffix('pt')) * MM
    lines = []
    for path in root.iter(f'{SVG}path'):
        style = dict(item.split(':', 1) for item in path.get('style', '').split(';') if item)
        if 'rgb' not in style.get('stroke', 'none'):
            continue
        numbers = re.findall(r'-?[\d.]+', path.get('transform', 'matrix(1,0,0,1,0,0)'))
        lines += path_lines(path.get('d'), [float(v) for v in numbers], style, height)
    return lines
