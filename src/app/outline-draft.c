/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/outline-draft.h"

#include "core/edit.h"
#include "core/part-file.h"
#include "core/segment.h"
#include "core/tolerance.h"

/* So near the direction of the last edge, or square to it, in radians, an edge is drawn to it. */
#define SQUARE_RAD (4.0 * G_PI / 180.0)

/* What one key of a direction is worth, in steps of the grid. */
#define STEPS_A_KEY 5.0

struct _BfOutlineDraft
{
  GArray *points; /* BfVec2 */
  double grid_mm;
  gboolean has_next;
  BfVec2 next;
  guint snaps;
  BfVec2 aligned_x, aligned_y;
};

BfOutlineDraft *
bf_outline_draft_new (double grid_mm)
{
  g_return_val_if_fail (grid_mm > 0.0, NULL);

  BfOutlineDraft *draft = g_new0 (BfOutlineDraft, 1);
  draft->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  draft->grid_mm = grid_mm;
  return draft;
}

void
bf_outline_draft_free (BfOutlineDraft *draft)
{
  g_array_unref (draft->points);
  g_free (draft);
}

guint
bf_outline_draft_n_points (const BfOutlineDraft *draft)
{
  return draft->points->len;
}

BfVec2
bf_outline_draft_point (const BfOutlineDraft *draft, guint i)
{
  g_return_val_if_fail (i < draft->points->len, bf_vec2 (0.0, 0.0));
  return g_array_index (draft->points, BfVec2, i);
}

static BfVec2
last_point (const BfOutlineDraft *draft)
{
  return g_array_index (draft->points, BfVec2, draft->points->len - 1);
}

static double
on_grid (const BfOutlineDraft *draft, double mm)
{
  return round (mm / draft->grid_mm) * draft->grid_mm;
}

/* The direction of the last edge; along x where there is none yet. */
static BfVec2
last_direction (const BfOutlineDraft *draft)
{
  if (draft->points->len < 2)
    return bf_vec2 (1.0, 0.0);
  return bf_vec2_unit (bf_vec2_sub (last_point (draft),
                                    g_array_index (draft->points, BfVec2, draft->points->len - 2)));
}

/* Draws the next corner to the line straight on or square to the last edge, its length to the
 * grid. */
static void
draw_to_square (BfOutlineDraft *draft)
{
  BfVec2 from = last_point (draft);
  BfVec2 by = bf_vec2_sub (draft->next, from);
  BfVec2 on = last_direction (draft);
  BfVec2 ways[2] = { on, { -on.y, on.x } };
  double length = bf_vec2_length (by);

  for (guint i = 0; i < 2; i++)
    {
      double along = bf_vec2_dot (by, ways[i]);
      if (length <= 0.0 || fabs (bf_vec2_cross (ways[i], by)) > length * sin (SQUARE_RAD))
        continue;
      draft->next = bf_vec2_along (from, ways[i], on_grid (draft, along));
      draft->snaps |= BF_SNAP_SQUARE;
      return;
    }
}

/* Draws one coordinate to that of a corner near it. */
static void
draw_to_corners (BfOutlineDraft *draft, double reach_mm)
{
  double reach_x = reach_mm;
  double reach_y = reach_mm;
  BfVec2 at = draft->next;

  for (guint i = 0; i < draft->points->len; i++)
    {
      BfVec2 p = bf_outline_draft_point (draft, i);
      if (fabs (at.x - p.x) < reach_x)
        {
          reach_x = fabs (at.x - p.x);
          draft->next.x = p.x;
          draft->aligned_x = p;
          draft->snaps |= BF_SNAP_X;
        }
      if (fabs (at.y - p.y) < reach_y)
        {
          reach_y = fabs (at.y - p.y);
          draft->next.y = p.y;
          draft->aligned_y = p;
          draft->snaps |= BF_SNAP_Y;
        }
    }
}

void
bf_outline_draft_aim (BfOutlineDraft *draft, BfVec2 at, double reach_mm, gboolean freely)
{
  g_return_if_fail (draft != NULL);

  draft->has_next = TRUE;
  draft->next = at;
  draft->snaps = 0;
  if (draft->points->len >= 3 &&
      bf_vec2_distance (at, bf_outline_draft_point (draft, 0)) < 1.5 * reach_mm)
    {
      draft->next = bf_outline_draft_point (draft, 0);
      draft->snaps = BF_SNAP_FIRST;
      return;
    }
  if (freely)
    return;
  draw_to_corners (draft, reach_mm);
  if ((draft->snaps & BF_SNAP_X) == 0)
    draft->next.x = on_grid (draft, at.x);
  if ((draft->snaps & BF_SNAP_Y) == 0)
    draft->next.y = on_grid (draft, at.y);
  if (draft->snaps == 0 && draft->points->len > 0)
    {
      draft->next = at;
      draw_to_square (draft);
      if (draft->snaps == 0)
        draft->next = bf_vec2 (on_grid (draft, at.x), on_grid (draft, at.y));
    }
  BfVec2 by = draft->points->len > 0 ? bf_vec2_sub (draft->next, last_point (draft)) : at;
  BfVec2 on = last_direction (draft);
  if (draft->points->len > 0 && (fabs (bf_vec2_dot (by, on)) < BF_TOLERANCE_SIZE_MM ||
                                 fabs (bf_vec2_cross (by, on)) < BF_TOLERANCE_SIZE_MM))
    draft->snaps |= BF_SNAP_SQUARE;
}

void
bf_outline_draft_aim_along (BfOutlineDraft *draft, BfVec2 direction)
{
  g_return_if_fail (draft != NULL);

  if (draft->points->len == 0)
    return;
  BfVec2 from = last_point (draft);
  BfVec2 by = draft->has_next ? bf_vec2_sub (draft->next, from) : bf_vec2 (0.0, 0.0);
  double before = bf_vec2_dot (by, direction);
  gboolean same_way = before > 0.0 && fabs (bf_vec2_cross (by, direction)) < BF_TOLERANCE_SIZE_MM;

  draft->next =
      bf_vec2_along (from, direction, (same_way ? before : 0.0) + STEPS_A_KEY * draft->grid_mm);
  draft->has_next = TRUE;
  draft->snaps = BF_SNAP_SQUARE;
}

gboolean
bf_outline_draft_next (const BfOutlineDraft *draft, BfVec2 *next, guint *snaps)
{
  g_return_val_if_fail (draft != NULL && next != NULL && snaps != NULL, FALSE);

  *next = draft->next;
  *snaps = draft->snaps;
  return draft->has_next;
}

BfVec2
bf_outline_draft_aligned_x (const BfOutlineDraft *draft)
{
  return draft->aligned_x;
}

BfVec2
bf_outline_draft_aligned_y (const BfOutlineDraft *draft)
{
  return draft->aligned_y;
}

gboolean
bf_outline_draft_set_length (BfOutlineDraft *draft, double length_mm)
{
  g_return_val_if_fail (draft != NULL && length_mm > 0.0, FALSE);

  if (draft->points->len == 0 || !draft->has_next)
    return FALSE;
  BfVec2 from = last_point (draft);
  BfVec2 by = bf_vec2_sub (draft->next, from);
  if (bf_vec2_length (by) < BF_TOLERANCE_SIZE_MM)
    return FALSE;
  draft->next = bf_vec2_along (from, bf_vec2_unit (by), length_mm);
  draft->snaps = 0;
  return TRUE;
}

/* TRUE where an edge from the last corner to `to` would cross or touch what is drawn, but for the
 * corner it begins at. */
static gboolean
crosses (const BfOutlineDraft *draft, BfVec2 to)
{
  guint n = draft->points->len;
  BfVec2 from = last_point (draft);

  for (guint i = 0; i + 1 < n; i++)
    {
      BfVec2 a = bf_outline_draft_point (draft, i);
      BfVec2 b = bf_outline_draft_point (draft, i + 1);
      gboolean joined = i + 2 == n;
      if (bf_segment_distance (to, a, b) < BF_TOLERANCE_SIZE_MM ||
          bf_segment_distance (a, from, to) < BF_TOLERANCE_SIZE_MM)
        return TRUE;
      if (!joined && (bf_segments_cross (from, to, a, b) ||
                      bf_segment_distance (b, from, to) < BF_TOLERANCE_SIZE_MM))
        return TRUE;
    }
  return FALSE;
}

BfDraftAnswer
bf_outline_draft_put (BfOutlineDraft *draft)
{
  g_return_val_if_fail (draft != NULL, BF_DRAFT_NOTHING);

  BfVec2 next = draft->has_next ? draft->next : bf_vec2 (0.0, 0.0);
  guint n = draft->points->len;
  if ((draft->snaps & BF_SNAP_FIRST) != 0)
    return bf_outline_draft_close (draft);
  if (n > 0 &&
      (!draft->has_next || bf_vec2_distance (next, last_point (draft)) < BF_TOLERANCE_SIZE_MM))
    return BF_DRAFT_NOTHING;
  if (fabs (next.x) > BF_LENGTH_MAX_MM || fabs (next.y) > BF_LENGTH_MAX_MM)
    return BF_DRAFT_NOTHING;
  if (n > 0 && crosses (draft, next))
    return BF_DRAFT_CROSSES;
  g_array_append_val (draft->points, next);
  draft->has_next = FALSE;
  draft->snaps = 0;
  return BF_DRAFT_ADDED;
}

/* Coordinates count from the first corner. */
static BfPart *
part_of (const BfOutlineDraft *draft, const BfPart *setup)
{
  g_autoptr (BfPart) empty = setup == NULL ? bf_part_new () : NULL;
  g_autoptr (GArray) points = g_array_sized_new (FALSE, FALSE, sizeof (BfVec2), draft->points->len);

  for (guint i = 0; i < draft->points->len; i++)
    {
      BfVec2 p = bf_vec2_sub (bf_outline_draft_point (draft, i), bf_outline_draft_point (draft, 0));
      g_array_append_val (points, p);
    }
  return bf_edit_outline (setup != NULL ? setup : empty, (const BfVec2 *)(const void *)points->data,
                          points->len);
}

BfDraftAnswer
bf_outline_draft_close (const BfOutlineDraft *draft)
{
  g_return_val_if_fail (draft != NULL, BF_DRAFT_NOTHING);

  if (draft->points->len < 3)
    return BF_DRAFT_NOTHING;
  g_autoptr (BfPart) part = part_of (draft, NULL);
  return bf_part_check_outline (part, NULL) ? BF_DRAFT_CLOSED : BF_DRAFT_CROSSES;
}

gboolean
bf_outline_draft_take_back (BfOutlineDraft *draft)
{
  g_return_val_if_fail (draft != NULL, FALSE);

  draft->has_next = FALSE;
  draft->snaps = 0;
  if (draft->points->len == 0)
    return FALSE;
  g_array_set_size (draft->points, draft->points->len - 1);
  return TRUE;
}

BfPart *
bf_outline_draft_make (const BfOutlineDraft *draft, const BfPart *setup, const char *name)
{
  g_return_val_if_fail (bf_outline_draft_close (draft) == BF_DRAFT_CLOSED, NULL);

  g_autoptr (BfPart) part = part_of (draft, setup);
  return bf_edit_name (part, name);
}
