/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/marking-strikes.h"

#include "core/tolerance.h"

void
bf_strike_clear (BfStrike *strike)
{
  g_clear_pointer (&strike->stretches, g_array_unref);
  g_clear_pointer (&strike->wipes, g_array_unref);
}

/* The strike at that distance; a new one where there is none yet. */
static BfStrike *
find_strike (BfMarking *marking, BfDatum from, double marked_mm)
{
  BfStrike strike = { .from = from, .marked_mm = marked_mm };

  for (guint i = 0; i < marking->strikes->len; i++)
    {
      BfStrike *known = &g_array_index (marking->strikes, BfStrike, i);

      if (known->from == from && fabs (known->marked_mm - marked_mm) < BF_TOLERANCE_SIZE_MM)
        return known;
    }
  strike.stretches = g_array_new (FALSE, FALSE, sizeof (BfMarkStretch));
  strike.wipes = g_array_new (FALSE, FALSE, sizeof (BfRun));
  g_array_append_val (marking->strikes, strike);
  return &g_array_index (marking->strikes, BfStrike, marking->strikes->len - 1);
}

static void
add_stretch (BfMarking *marking, BfDatum from, const BfMarkLine *line)
{
  BfDatum other = from == BF_DATUM_BOTTOM ? BF_DATUM_LEFT : BF_DATUM_BOTTOM;
  double marked = bf_marking_distance (marking, from, line->a).marked_mm;
  BfMarked a = bf_marking_distance (marking, other, line->a);
  BfMarked b = bf_marking_distance (marking, other, line->b);
  BfMarkStretch stretch = { line->kind, a, b, line->name };

  if (a.exact_mm > b.exact_mm)
    {
      stretch.from = b;
      stretch.to = a;
    }
  g_array_append_val (find_strike (marking, from, marked)->stretches, stretch);
}

static void
add_join (BfMarking *marking, const BfMarkLine *line)
{
  BfMarkJoin join = { line->kind, bf_marking_point (marking, line->a),
                      bf_marking_point (marking, line->b), line->name };

  g_array_append_val (marking->joins, join);
}

static int
compare_stretches (gconstpointer a, gconstpointer b)
{
  double x = ((const BfMarkStretch *)a)->from.exact_mm;
  double y = ((const BfMarkStretch *)b)->from.exact_mm;

  return (x > y) - (x < y);
}

static int
compare_strikes (gconstpointer a, gconstpointer b)
{
  const BfStrike *x = a, *y = b;

  if (x->from != y->from)
    return (int)x->from - (int)y->from;
  return (x->marked_mm > y->marked_mm) - (x->marked_mm < y->marked_mm);
}

/* A strike is one stroke from its first line to its last; what lies between lines is wiped. */
static void
find_wipes (BfStrike *strike, double step_mm)
{
  double end = -INFINITY;

  g_array_sort (strike->stretches, compare_stretches);
  for (guint i = 0; i < strike->stretches->len; i++)
    {
      const BfMarkStretch *line = &g_array_index (strike->stretches, BfMarkStretch, i);
      BfRun wipe = { end, line->from.marked_mm };

      if (i > 0 && wipe.to_mm - wipe.from_mm > step_mm / 2.0)
        g_array_append_val (strike->wipes, wipe);
      end = MAX (end, line->to.marked_mm);
    }
}

void
bf_marking_strike_lines (BfMarking *marking, const GArray *lines)
{
  for (guint i = 0; i < lines->len; i++)
    {
      const BfMarkLine *line = &g_array_index (lines, BfMarkLine, i);

      if (fabs (line->a.y - line->b.y) < BF_TOLERANCE_SIZE_MM)
        add_stretch (marking, BF_DATUM_BOTTOM, line);
      else if (fabs (line->a.x - line->b.x) < BF_TOLERANCE_SIZE_MM)
        add_stretch (marking, BF_DATUM_LEFT, line);
      else
        add_join (marking, line);
    }
  g_array_sort (marking->strikes, compare_strikes);
  for (guint i = 0; i < marking->strikes->len; i++)
    find_wipes (&g_array_index (marking->strikes, BfStrike, i), marking->step_mm);
}
