/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/ring-path.h"

void
bf_ring_path (const BfRing *ring, cairo_t *cr)
{
  guint n = bf_ring_size (ring);
  BfVec2 first = n > 0 ? bf_ring_vertex (ring, 0)->p : bf_vec2 (0.0, 0.0);

  if (n < 2)
    return;
  cairo_move_to (cr, first.x, first.y);
  for (guint i = 0; i < n; i++)
    {
      BfVec2 next = bf_ring_vertex (ring, i + 1)->p;
      BfArc arc;
      if (!bf_ring_arc (ring, i, &arc))
        cairo_line_to (cr, next.x, next.y);
      else if (arc.sweep > 0.0)
        cairo_arc (cr, arc.centre.x, arc.centre.y, arc.radius, arc.from, arc.from + arc.sweep);
      else
        cairo_arc_negative (cr, arc.centre.x, arc.centre.y, arc.radius, arc.from,
                            arc.from + arc.sweep);
    }
  cairo_close_path (cr);
}
