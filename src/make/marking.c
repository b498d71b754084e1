/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/marking.h"

#include "core/tolerance.h"
#include "fold/bar-line.h"
#include "make/drill-list.h"
#include "make/marking-strikes.h"

/* Two centres or radii no further apart than this are one mark: arcs that were cut and found again
 * are off by less. */
#define ONE_MARK_MM 0.01

/* ---- distances ---------------------------------------------------------------------------- */

static BfMarked
marked (const BfMarking *marking, double exact_mm)
{
  double steps = round (exact_mm / marking->step_mm);

  return (BfMarked){ exact_mm, steps * marking->step_mm };
}

BfMarked
bf_marking_distance (const BfMarking *marking, BfDatum from, BfVec2 p)
{
  BfVec2 corner = marking->fold->blank.box.min;

  return marked (marking, from == BF_DATUM_BOTTOM ? p.y - corner.y : p.x - corner.x);
}

BfMarkedPoint
bf_marking_point (const BfMarking *marking, BfVec2 p)
{
  return (BfMarkedPoint){ bf_marking_distance (marking, BF_DATUM_LEFT, p),
                          bf_marking_distance (marking, BF_DATUM_BOTTOM, p) };
}

/* ---- what there is to mark ---------------------------------------------------------------- */

static gboolean
drill_makes (const GArray *drilled, const BfArc *arc)
{
  for (guint i = 0; i < drilled->len; i++)
    if (bf_vec2_distance (bf_drilled (drilled, i)->at, arc->centre) < ONE_MARK_MM)
      return TRUE;
  return FALSE;
}

/* Two arcs about one centre with one radius are drawn in one go. */
static void
add_arc (BfMarking *marking, const BfArc *arc)
{
  BfMarkArc mark = { bf_marking_point (marking, arc->centre), arc->radius };

  for (guint i = 0; i < marking->arcs->len; i++)
    {
      const BfMarkArc *known = &g_array_index (marking->arcs, BfMarkArc, i);

      if (hypot (known->centre.x.exact_mm - mark.centre.x.exact_mm,
                 known->centre.y.exact_mm - mark.centre.y.exact_mm) < ONE_MARK_MM &&
          fabs (known->radius_mm - arc->radius) < ONE_MARK_MM)
        return;
    }
  g_array_append_val (marking->arcs, mark);
}

/* TRUE where a drilled arc runs on into the straight edge without a corner, at its vertex `at`. */
static gboolean
is_drilled_into (const BfRing *ring, guint arc_edge, guint at, BfVec2 along, const GArray *drilled)
{
  BfArc arc;

  return bf_ring_arc (ring, arc_edge, &arc) && drill_makes (drilled, &arc) &&
         fabs (bf_vec2_dot (along, bf_vec2_sub (bf_ring_vertex (ring, at)->p, arc.centre))) <
             ONE_MARK_MM;
}

/* The side of a slot whose ends are drilled: the two holes show it. */
static gboolean
holes_show (const BfRing *ring, guint edge, const GArray *drilled)
{
  BfVec2 along = bf_vec2_unit (
      bf_vec2_sub (bf_ring_vertex (ring, edge + 1)->p, bf_ring_vertex (ring, edge)->p));

  return is_drilled_into (ring, edge + bf_ring_size (ring) - 1, edge, along, drilled) &&
         is_drilled_into (ring, edge + 1, edge + 1, along, drilled);
}

static void
add_ring (BfMarking *marking, const BfRing *ring, const GArray *drilled, GArray *lines)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      BfMarkLine line = { bf_ring_vertex (ring, i)->p, bf_ring_vertex (ring, i + 1)->p, BF_MARK_CUT,
                          NULL };
      BfArc arc;

      if (bf_ring_arc (ring, i, &arc) && !drill_makes (drilled, &arc))
        add_arc (marking, &arc);
      else if (!bf_ring_arc (ring, i, &arc) && !holes_show (ring, i, drilled))
        g_array_append_val (lines, line);
    }
}

static void
add_bar (const BfFold *fold, const BfBendResult *bend, GArray *lines)
{
  BfBarLine bar;
  BfMarkLine line = { .kind = BF_MARK_BAR, .name = bend->flange };

  if (!bf_bend_bar_line (fold, bend, &bar))
    return;
  line.a = bar.line[0];
  line.b = bar.line[1];
  g_array_append_val (lines, line);
}

static void
add_bend (const BfVec2 ends[2], const char *name, GArray *lines)
{
  BfMarkLine line = { ends[0], ends[1], BF_MARK_BEND, name };

  if (bf_vec2_distance (line.a, line.b) > BF_TOLERANCE_SIZE_MM)
    g_array_append_val (lines, line);
}

static void
add_bends (const BfFold *fold, GArray *lines)
{
  for (guint i = 0; i < fold->bends->len; i++)
    {
      add_bend (bf_fold_bend (fold, i)->line, bf_fold_bend (fold, i)->flange, lines);
      add_bar (fold, bf_fold_bend (fold, i), lines);
    }
  for (guint i = 0; i < bf_fold_n_creases (fold); i++)
    add_bend (bf_fold_crease (fold, i)->line, bf_fold_folded_corner (fold, i / 3)->name, lines);
}

static void
add_slots (BfMarking *marking, const BfBendResult *bend)
{
  for (guint i = 0; i < bend->slots->len; i++)
    {
      const BfBendSlot *slot = bf_bend_slot (bend, i);
      BfVec2 along = bf_vec2 (cos (slot->angle_rad), sin (slot->angle_rad));
      BfMarkSlot mark = {
        bend->flange,
        bf_marking_point (marking, bf_vec2_along (slot->at, along, -slot->near_mm / 2.0)),
        bf_marking_point (marking, bf_vec2_along (slot->at, along, slot->near_mm / 2.0)),
        slot->near_mm,
        slot->far_mm,
      };

      g_array_append_val (marking->slots, mark);
    }
}

static void
add_holes (BfMarking *marking, const GArray *drilled)
{
  for (guint i = 0; i < drilled->len; i++)
    {
      const BfDrilled *hole = bf_drilled (drilled, i);
      BfMarkHole mark = { bf_marking_point (marking, hole->at), hole->diameter_mm, hole->drill };

      g_array_append_val (marking->holes, mark);
    }
}

static void
find_marks (BfMarking *marking)
{
  const BfFold *fold = marking->fold;
  g_autoptr (GArray) drilled = bf_drill_list (fold);
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof (BfMarkLine));

  for (guint i = 0; i < fold->blank.rings->len; i++)
    if (!bf_fold_ring_is_slot (fold, i))
      add_ring (marking, bf_blank_ring (&fold->blank, i), drilled, lines);
  add_bends (fold, lines);
  bf_marking_strike_lines (marking, lines);
  for (guint i = 0; i < fold->bends->len; i++)
    add_slots (marking, bf_fold_bend (fold, i));
  add_holes (marking, drilled);
}

/* ---- the biggest error -------------------------------------------------------------------- */

static void
count_error (BfMarking *marking, BfMarked distance)
{
  marking->worst_mm = MAX (marking->worst_mm, fabs (distance.exact_mm - distance.marked_mm));
}

static void
count_point (BfMarking *marking, BfMarkedPoint p)
{
  count_error (marking, p.x);
  count_error (marking, p.y);
}

static void
count_lines (BfMarking *marking)
{
  const BfFold *fold = marking->fold;

  for (guint i = 0; i < fold->blank.rings->len; i++)
    for (guint k = 0;
         !bf_fold_ring_is_slot (fold, i) && k < bf_ring_size (bf_blank_ring (&fold->blank, i)); k++)
      count_point (marking, bf_marking_point (
                                marking, bf_ring_vertex (bf_blank_ring (&fold->blank, i), k)->p));
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);
      BfBarLine bar;
      gboolean has_bar = bf_bend_bar_line (fold, bend, &bar);

      for (guint k = 0; k < 2; k++)
        {
          count_point (marking, bf_marking_point (marking, bend->line[k]));
          if (has_bar)
            count_point (marking, bf_marking_point (marking, bar.line[k]));
        }
    }
  for (guint i = 0; i < 2 * bf_fold_n_creases (fold); i++)
    count_point (marking, bf_marking_point (marking, bf_fold_crease (fold, i / 2)->line[i % 2]));
}

static void
find_worst (BfMarking *marking)
{
  count_lines (marking);
  for (guint i = 0; i < marking->holes->len; i++)
    count_point (marking, g_array_index (marking->holes, BfMarkHole, i).centre);
  for (guint i = 0; i < marking->arcs->len; i++)
    count_point (marking, g_array_index (marking->arcs, BfMarkArc, i).centre);
  for (guint i = 0; i < marking->slots->len; i++)
    {
      count_point (marking, g_array_index (marking->slots, BfMarkSlot, i).from);
      count_point (marking, g_array_index (marking->slots, BfMarkSlot, i).to);
    }
}

BfMarking *
bf_marking_new (BfFold *fold, double step_mm)
{
  BfMarking *marking;
  BfVec2 size;

  g_return_val_if_fail (fold != NULL && step_mm > 0.0, NULL);
  marking = g_new0 (BfMarking, 1);
  marking->fold = bf_fold_ref (fold);
  marking->step_mm = step_mm;
  marking->strikes = g_array_new (FALSE, FALSE, sizeof (BfStrike));
  g_array_set_clear_func (marking->strikes, (GDestroyNotify)bf_strike_clear);
  marking->joins = g_array_new (FALSE, FALSE, sizeof (BfMarkJoin));
  marking->arcs = g_array_new (FALSE, FALSE, sizeof (BfMarkArc));
  marking->holes = g_array_new (FALSE, FALSE, sizeof (BfMarkHole));
  marking->slots = g_array_new (FALSE, FALSE, sizeof (BfMarkSlot));
  if (fold->blank.rings->len == 0)
    return marking;

  size = bf_vec2_sub (fold->blank.box.max, fold->blank.box.min);
  marking->width = marked (marking, size.x);
  marking->height = marked (marking, size.y);
  marking->diagonal_mm = bf_vec2_length (size);
  find_marks (marking);
  find_worst (marking);
  return marking;
}

void
bf_marking_free (BfMarking *marking)
{
  if (marking == NULL)
    return;
  g_array_unref (marking->strikes);
  g_array_unref (marking->joins);
  g_array_unref (marking->arcs);
  g_array_unref (marking->holes);
  g_array_unref (marking->slots);
  bf_fold_unref (marking->fold);
  g_free (marking);
}
