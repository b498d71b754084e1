/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-build.h"

/* How far an edge may be off a mouth and still be taken for the same line. */
#define SAME_LINE_MM 1e-4

/* The groove's walls stand so far beyond the zone. */
static double
bevel_mm (const BfFormedBuild *build, const BfSolid *sector)
{
  const BfBendResult *bend =
      bf_fold_bend (build->fold, (guint)bf_fold_face (build->fold, sector->face)->bend);

  return (bend->groove_mm - bend->allowance_mm) / 2.0;
}

static void
add_mouth (BfFormedBuild *build, const BfSolid *sector, guint solid, gboolean at_tip)
{
  BfFormedMouth mouth = { 0 };

  mouth.sector = solid;
  mouth.face = at_tip ? sector->face : sector->on;
  mouth.from = bf_formed_sector_mouth (build, sector, at_tip);
  mouth.along = sector->frame.ex;
  mouth.width_mm = sector->width_mm;
  mouth.outward = sector->frame.ey;
  if (at_tip)
    mouth.outward = bf_vec3_cross (sector->frame.ex, bf_formed_sector_normal (sector, 1.0));
  mouth.scored = sector->skin_mm < build->thickness_mm;
  mouth.bevelled = sector->turn == BF_TURN_UP ? BF_FORMED_MARKING_SIDE : BF_FORMED_OTHER_SIDE;
  if (mouth.scored)
    mouth.bevel_mm = bevel_mm (build, sector);
  mouth.covered = g_array_new (FALSE, FALSE, sizeof (BfFormedReach));
  g_array_append_val (build->mouths, mouth);
}

void
bf_formed_build_mouths (BfFormedBuild *build, const BfFormed *formed)
{
  for (guint i = 0; i < formed->solids->len; i++)
    {
      const BfSolid *solid = bf_formed_solid (formed, i);

      if (solid->kind != BF_SOLID_SECTOR)
        continue;
      add_mouth (build, solid, i, FALSE);
      add_mouth (build, solid, i, TRUE);
    }
}

void
bf_formed_mouth_clear (gpointer mouth)
{
  g_clear_pointer (&((BfFormedMouth *)mouth)->covered, g_array_unref);
}

/* How far p lies along the mouth; NAN where it is off its line. */
static double
along_mouth (const BfFormedMouth *mouth, BfVec3 p)
{
  BfVec3 away = bf_vec3_sub (p, mouth->from);
  double x = bf_vec3_dot (away, mouth->along);
  double off = bf_vec3_length (bf_vec3_along (away, mouth->along, -x));

  return off < SAME_LINE_MM ? x : NAN;
}

static int
compare_reaches (gconstpointer a, gconstpointer b)
{
  double from_a = ((const BfFormedReach *)a)->from, from_b = ((const BfFormedReach *)b)->from;

  return from_a < from_b ? -1 : from_a > from_b;
}

/* Ends that are only a rounding error off the ends of the whole are those. */
static BfFormedReach
snapped (double from, double to, double whole)
{
  BfFormedReach reach = { from < SAME_LINE_MM ? 0.0 : from, to };

  if (to > whole - SAME_LINE_MM)
    reach.to = whole;
  return reach;
}

static void
meet (BfFormedMouth *mouth, const BfVec3 edge[2], GArray *reaches)
{
  double a = along_mouth (mouth, edge[0]), b = along_mouth (mouth, edge[1]);
  double from = fmax (fmin (a, b), 0.0), to = fmin (fmax (a, b), mouth->width_mm);
  BfFormedReach on_edge, on_mouth;

  if (isnan (a) || isnan (b) || to - from < SAME_LINE_MM)
    return;
  on_mouth = snapped (from, to, mouth->width_mm);
  on_edge = snapped (a < b ? from - a : a - to, a < b ? to - a : a - from, fabs (b - a));
  g_array_append_val (mouth->covered, on_mouth);
  g_array_sort (mouth->covered, compare_reaches);
  if (!mouth->scored)
    g_array_append_val (reaches, on_edge);
}

void
bf_formed_mouths_meet_edge (BfFormedBuild *build, guint face, const BfVec3 edge[2], GArray *reaches)
{
  for (guint i = 0; i < build->mouths->len; i++)
    {
      BfFormedMouth *mouth = &g_array_index (build->mouths, BfFormedMouth, i);

      if (mouth->face == face)
        meet (mouth, edge, reaches);
    }
  g_array_sort (reaches, compare_reaches);
}
