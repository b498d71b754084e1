/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/fix-opening.h"

#include <string.h>

#include "core/edit.h"
#include "core/tolerance.h"
#include "fold/checks-openings.h"
#include "fold/fold-shape.h"
#include "fold/layout.h"

/* What is tried at most for one check; each try unfolds the part. */
#define TRIES_MAX 6

static const BfFix no_fix = { .kind = BF_FIX_NONE };

/* A way off something, in the blank. */
typedef struct
{
  BfVec2 along; /* unit */
  double by_mm;
} Way;

/* ---- which ways there are ----------------------------------------------------------------- */

/* The opening's least distance along a direction from a point, and its middle. */
static double
least_along (const BfRing *ring, BfVec2 from, BfVec2 along)
{
  BfBox box = bf_box_empty ();
  double least = INFINITY;

  for (guint i = 0; i < bf_ring_size (ring); i++)
    least = MIN (least, bf_vec2_dot (bf_vec2_sub (bf_ring_vertex (ring, i)->p, from), along));
  bf_ring_extend_box (ring, &box);
  /* A round hole has two vertices; its box tells how far its arcs reach. */
  if (bf_ring_size (ring) == 2)
    least = bf_vec2_dot (bf_vec2_sub (bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5), from),
                         along) -
            (box.max.x - box.min.x) / 2.0;
  return least;
}

/* The way off a bend: out along the flange that it bends up, or back along the parent. */
static gboolean
way_off_bend (const BfFold *fold, guint bend, const BfOpeningResult *opening, Way *way)
{
  const BfBendResult *b = bf_fold_bend (fold, bend);
  gboolean on_flange = b->face == opening->face;
  BfVec2 out = bf_vec2_unit (bf_vec2_sub (b->zone[3], b->zone[0]));

  if (!on_flange && bf_fold_face (fold, b->face)->parent != (int)opening->face)
    return FALSE;
  way->along = on_flange ? out : bf_vec2_scale (out, -1.0);
  way->by_mm = 2.0 * fold->layout->thickness_mm -
               least_along (opening->ring, b->zone[on_flange ? 3 : 0], way->along);
  return way->by_mm > BF_TOLERANCE_SIZE_MM;
}

/* The way off an edge: from its nearest point toward the opening's middle. */
static gboolean
way_off_edge (const BfCheck *check, const BfOpeningResult *opening, Way *way)
{
  BfBox box = bf_box_empty ();
  BfVec2 middle;

  bf_ring_extend_box (opening->ring, &box);
  middle = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
  way->along = bf_vec2_unit (bf_vec2_sub (middle, check->place));
  way->by_mm = check->needed - check->found;
  return bf_vec2_distance (middle, check->place) > BF_TOLERANCE_SIZE_MM;
}

/* The ways back onto its face: along its axes, as far as it reaches beyond and clear of the edge.
 */
static guint
ways_onto_face (const BfFold *fold, const BfCheck *check, guint face, Way ways[4])
{
  const BfFlap *flap = face > 0 ? &fold->layout->flaps[face - 1] : NULL;
  BfVec2 along = flap != NULL ? flap->flat_e : bf_vec2 (1.0, 0.0);
  BfVec2 out = flap != NULL ? flap->flat_n : bf_vec2 (0.0, 1.0);
  double by_mm = check->found + 2.0 * fold->layout->thickness_mm;

  if (isnan (check->found))
    return 0;
  ways[0] = (Way){ along, by_mm };
  ways[1] = (Way){ bf_vec2_scale (along, -1.0), by_mm };
  ways[2] = (Way){ out, by_mm };
  ways[3] = (Way){ bf_vec2_scale (out, -1.0), by_mm };
  return 4;
}

/* ---- the fix ------------------------------------------------------------------------------ */

/* A way in the blank as the opening counts it: along its face's bend and out from it. */
static BfVec2
as_asked (const BfFold *fold, guint face, BfVec2 by)
{
  const BfFlap *flap;

  if (face == 0)
    return by;
  flap = &fold->layout->flaps[face - 1];
  return bf_vec2 (bf_vec2_dot (by, flap->flat_e), bf_vec2_dot (by, flap->flat_n));
}

static guint
count_opening_checks (const BfFold *fold, const BfCheck *like)
{
  guint n = 0;

  for (guint i = 0; i < fold->checks->len; i++)
    {
      const BfCheck *check = bf_fold_check (fold, i);
      if (like != NULL)
        n += strcmp (check->code, like->code) == 0 && strcmp (check->where, like->where) == 0;
      else
        n += g_str_has_prefix (check->code, "opening-") ||
             strcmp (check->code, "strip-too-thin") == 0;
    }
  return n;
}

/* TRUE where the opening has one fault less there, and no other has come for it. */
static gboolean
helps (const BfFold *fold, const BfCheck *check, const BfFix *fix)
{
  g_autoptr (BfPart) part = bf_fix_apply (fold->asked, fix, NULL);
  g_autoptr (BfFold) after = NULL;

  if (part == NULL)
    return FALSE;
  after = bf_fold_shape (part);
  bf_checks_find_openings (after);
  return count_opening_checks (after, check) < count_opening_checks (fold, check) &&
         count_opening_checks (after, NULL) < count_opening_checks (fold, NULL);
}

static BfFix
move_by (const BfFold *fold, const BfOpeningResult *opening, const Way *way)
{
  double by = bf_fix_round_up_mm (way->by_mm, fold->part->units);
  BfVec2 at = as_asked (fold, opening->face, bf_vec2_scale (way->along, by));
  BfFix fix = { .kind = BF_FIX_OPENING_AT };

  g_ptr_array_find (fold->part->openings, opening->asked, &fix.at);
  at = bf_vec2_add (bf_opening_place_mm (opening->asked), at);
  fix.value[0] = at.x;
  fix.value[1] = at.y;
  return fix;
}

BfFix
bf_fix_opening (const BfFold *fold, const BfCheck *check)
{
  const BfOpeningResult *opening = bf_fold_opening (fold, check->fix.at);
  Way ways[TRIES_MAX];
  guint n = 0, asked_at;

  g_ptr_array_find (fold->part->openings, opening->asked, &asked_at);
  if (asked_at >= fold->asked->openings->len) /* a hole of a tab, that nobody asked for */
    return no_fix;
  if (strcmp (check->code, "opening-off-face") == 0)
    n = ways_onto_face (fold, check, opening->face, ways);
  for (guint i = 0; n < TRIES_MAX - 1 && i < fold->bends->len; i++)
    n += way_off_bend (fold, i, opening, &ways[n]) ? 1 : 0;
  if (strcmp (check->code, "opening-near-edge") == 0)
    n += way_off_edge (check, opening, &ways[n]) ? 1 : 0;
  for (guint i = 0; i < n; i++)
    {
      BfFix fix = move_by (fold, opening, &ways[i]);
      if (helps (fold, check, &fix))
        return fix;
    }
  return no_fix;
}
