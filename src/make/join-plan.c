/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/join-plan.h"

#include "core/tolerance.h"

/* A tack is about so long (common practice). */
#define TACK_MM 5.0

guint
bf_join_n_tacks (double length_mm)
{
  if (length_mm < TACK_MM)
    return 1;
  return 1 + (guint)ceil (length_mm / BF_TACK_PITCH_MM - BF_TOLERANCE_SIZE_MM);
}

/* TRUE where the seam's corner got its tab: on the end wall, whichever that is. */
static gboolean
has_tab (const BfFold *fold, const BfSeam *seam)
{
  for (guint i = 0; i < bf_part_n_flanges (fold->part); i++)
    {
      const BfFlange *flange = bf_part_flange (fold->part, i);
      const char *wall = flange->edge == BF_EDGE_END     ? seam->before
                         : flange->edge == BF_EDGE_START ? seam->after
                                                         : "";

      if (flange->is_tab && strcmp (flange->on, wall) == 0)
        return TRUE;
    }
  return FALSE;
}

static gboolean
is_joined (const BfFold *fold, const BfSeam *seam)
{
  BfJoining joining = fold->part->joining;

  if (seam->length_mm < BF_TOLERANCE_SIZE_MM)
    return FALSE;
  return (joining != BF_JOINING_RIVETED && joining != BF_JOINING_SCREWED) || has_tab (fold, seam);
}

/* Where a seam is, roughly, in the blank: between the bends of its two walls. */
static BfVec2
place_of (const BfFold *fold, const BfSeam *seam)
{
  const char *ids[] = { seam->before, seam->after };
  BfVec2 nearest[2] = { { 0.0, 0.0 }, { 0.0, 0.0 } };
  const BfBendResult *bends[2];
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < 2; i++)
    {
      const BfFace *face = bf_fold_face_called (fold, ids[i]);

      if (face == NULL || face->bend < 0)
        return nearest[0];
      bends[i] = bf_fold_bend (fold, (guint)face->bend);
    }
  for (guint i = 0; i < 4; i++)
    {
      BfVec2 a = bends[0]->line[i / 2], b = bends[1]->line[i % 2];

      if (bf_vec2_distance (a, b) >= least)
        continue;
      least = bf_vec2_distance (a, b);
      nearest[0] = a;
      nearest[1] = b;
    }
  return bf_vec2_scale (bf_vec2_add (nearest[0], nearest[1]), 0.5);
}

/* How far a place is from the nearest of those before it. */
static double
apart (const GArray *places, const GArray *seams, guint i)
{
  double least = G_MAXDOUBLE;

  for (guint k = 0; k < seams->len; k++)
    least = MIN (
        least, bf_vec2_distance (g_array_index (places, BfVec2, i),
                                 g_array_index (places, BfVec2, g_array_index (seams, guint, k))));
  return least;
}

static gboolean
is_taken (const GArray *seams, guint i)
{
  for (guint k = 0; k < seams->len; k++)
    if (g_array_index (seams, guint, k) == i)
      return TRUE;
  return FALSE;
}

void
bf_join_order (const BfFold *fold, GArray *seams)
{
  g_autoptr (GArray) places = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  guint n = 0;

  for (guint i = 0; i < fold->seams->len; i++)
    {
      BfVec2 place = place_of (fold, bf_fold_seam (fold, i));

      g_array_append_val (places, place);
      n += is_joined (fold, bf_fold_seam (fold, i)) ? 1 : 0;
    }
  while (seams->len < n)
    {
      guint best = 0;
      double furthest = -1.0;

      for (guint i = 0; i < fold->seams->len; i++)
        if (is_joined (fold, bf_fold_seam (fold, i)) && !is_taken (seams, i) &&
            apart (places, seams, i) > furthest + BF_TOLERANCE_SIZE_MM)
          {
            furthest = apart (places, seams, i);
            best = i;
          }
      g_array_append_val (seams, best);
    }
}
