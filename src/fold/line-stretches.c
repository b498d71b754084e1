/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/line-stretches.h"

#include "core/tolerance.h"

/* Arcs are taken as chords that stray no further than this from them. */
#define SAGITTA_MM 1e-4

/* A point as u along the line and v off it. */
static BfVec2
to_line (const BfLine *line, BfVec2 p)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (line->to, line->from));
  BfVec2 d = bf_vec2_sub (p, line->from);

  return bf_vec2 (bf_vec2_dot (along, d), bf_vec2_cross (along, d));
}

static void
take (BfRun *taken, double u)
{
  taken->from_mm = MIN (taken->from_mm, u);
  taken->to_mm = MAX (taken->to_mm, u);
}

/* What of the edge a–b lies within clear of the line, added to taken. */
static void
take_edge (BfRun *taken, BfVec2 a, BfVec2 b, double clear_mm)
{
  const double limits[] = { -clear_mm, clear_mm };

  if (fabs (a.y) <= clear_mm)
    take (taken, a.x);
  for (guint i = 0; i < G_N_ELEMENTS (limits); i++)
    if ((a.y - limits[i]) * (b.y - limits[i]) < 0.0)
      take (taken, a.x + (b.x - a.x) * (limits[i] - a.y) / (b.y - a.y));
}

/* TRUE where the ring's box shows that it takes nothing of the line. */
static gboolean
is_far (const BfLine *line, const BfRing *ring, double clear_mm)
{
  BfBox box = bf_box_empty ();
  double reach;
  BfVec2 middle;

  bf_ring_extend_box (ring, &box);
  reach = bf_vec2_distance (box.min, box.max) / 2.0;
  middle = to_line (line, bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5));
  return fabs (middle.y) > reach + clear_mm || middle.x < -reach ||
         middle.x > reach + bf_vec2_distance (line->from, line->to);
}

static BfRun
taken_by (const BfLine *line, const BfRing *ring, double clear_mm)
{
  BfRun taken = { INFINITY, -INFINITY };
  g_autoptr (GArray) points = NULL;

  if (is_far (line, ring, clear_mm))
    return taken;
  points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  bf_ring_flatten (ring, SAGITTA_MM, points);
  for (guint i = 0; i < points->len; i++)
    take_edge (&taken, to_line (line, g_array_index (points, BfVec2, i)),
               to_line (line, g_array_index (points, BfVec2, (i + 1) % points->len)), clear_mm);
  return taken;
}

static int
compare_from (gconstpointer a, gconstpointer b)
{
  double x = ((const BfRun *)a)->from_mm, y = ((const BfRun *)b)->from_mm;

  return (x > y) - (x < y);
}

GArray *
bf_line_stretches (const BfLine *line, const GPtrArray *rings, double clear_mm)
{
  double end = 0.0, length = bf_vec2_distance (line->from, line->to);
  GArray *whole = g_array_new (FALSE, FALSE, sizeof (BfRun));
  g_autoptr (GArray) taken = g_array_new (FALSE, FALSE, sizeof (BfRun));
  BfRun past = { length, length };

  for (guint i = 0; i < rings->len; i++)
    {
      BfRun one = taken_by (line, g_ptr_array_index (rings, i), clear_mm);

      if (one.from_mm < length && one.to_mm > 0.0)
        g_array_append_val (taken, one);
    }
  g_array_sort (taken, compare_from);
  g_array_append_val (taken, past);
  for (guint i = 0; i < taken->len; i++)
    {
      BfRun gap = { end, g_array_index (taken, BfRun, i).from_mm };

      if (gap.to_mm > gap.from_mm + BF_TOLERANCE_SIZE_MM)
        g_array_append_val (whole, gap);
      end = MAX (end, g_array_index (taken, BfRun, i).to_mm);
    }
  return whole;
}
