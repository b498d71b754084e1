/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-part.h"

#include <glib/gi18n.h>

#include "fold/checks.h"

/* A bend turned this far is a hem. */
#define HEM_RAD (G_PI - 1e-6)

/* A hollow counts as closed when so much of its mouth is covered: the gaps of welded corners are no
 * vent. */
#define CLOSED_SHARE 0.97

/* A face counts as a lid where it lies so level with the base. */
#define LEVEL_COSINE 0.985

static void
add (BfFold *fold, const char *code, BfSeverity severity, BfVec2 place, char *message)
{
  BfCheck check = {
    .code = code, .severity = severity, .found = NAN, .needed = NAN, .place = place
  };

  bf_checks_add (fold, check, "base", message);
}

/* ---- edges --------------------------------------------------------------------------------- */

/* A tip that stands free: nothing hangs on it, and it is not folded flat itself. */
static gboolean
has_raw_tip (const BfFlap *flap)
{
  return flap->placed && flap->on_tip == NULL && flap->angle_rad < HEM_RAD;
}

static void
check_edges (BfFold *fold)
{
  for (guint i = 0; i < fold->layout->n_flaps; i++)
    {
      const BfFlap *flap = &fold->layout->flaps[i];

      if (!has_raw_tip (flap))
        continue;
      add (
          fold, "sharp-edge", BF_SEVERITY_GOOD_TO_KNOW,
          bf_flap_to_blank (flap, flap->edge_length_mm / 2.0, flap->tip_w_mm),
          /* Translators: a flange's name */
          g_strdup_printf (_ ("Edges that hands take hold of, such as the tip of %s, are raw: take "
                              "the burr off with a file, or fold a hem there."),
                           flap->flange->id));
      return;
    }
}

/* ---- vessels ------------------------------------------------------------------------------- */

/* TRUE where walls of one turn stand on every edge of the base and meet at every corner. */
static gboolean
is_walled_all_round (const BfLayout *layout)
{
  guint n = bf_part_n_points (layout->part), n_met = 0;
  BfTurn turn = BF_TURN_UP;

  for (guint i = 0; i < n; i++)
    {
      const GPtrArray *edge = layout->base_edges[i];

      if (edge->len != 1)
        return FALSE;
      if (i > 0 && turn != ((const BfFlap *)g_ptr_array_index (edge, 0))->flange->turn)
        return FALSE;
      turn = ((const BfFlap *)g_ptr_array_index (edge, 0))->flange->turn;
    }
  for (guint i = 0; i < layout->meetings->len; i++)
    n_met += bf_layout_meeting (layout, i)->face < 0 ? 1 : 0;
  return n_met == n;
}

static guint
count_corner_reliefs (const BfFold *fold)
{
  guint n = 0;

  for (guint i = 0; i < fold->reliefs->len; i++)
    n += bf_fold_relief (fold, i)->kind == BF_RELIEF_KIND_CORNER ? 1 : 0;
  return n;
}

static void
check_leaks (BfFold *fold)
{
  guint n = count_corner_reliefs (fold);

  if (n > 0)
    add (fold, "will-leak", BF_SEVERITY_GOOD_TO_KNOW, bf_fold_relief (fold, 0)->at,
         /* Translators: the number of corners */
         g_strdup_printf (ngettext ("It does not hold water as it is bent: %u corner has a relief "
                                    "hole to weld or seal.",
                                    "It does not hold water as it is bent: %u corners have relief "
                                    "holes to weld or seal.",
                                    n),
                          n));
}

/* Faces that lie level with the base on the walls' side, and how much they cover. */
static double
covered_mm2 (const BfFold *fold)
{
  double area = 0.0;

  for (guint i = 0; i < fold->layout->n_flaps; i++)
    {
      const BfFlap *flap = &fold->layout->flaps[i];

      if (flap->placed && flap->depth > 0 && fabs (flap->pose.m.z) > LEVEL_COSINE)
        area += bf_ring_area (bf_fold_face (fold, i + 1)->outline) +
                flap->sums.setback_mm * flap->edge_length_mm;
    }
  return area;
}

static void
check_hollow (BfFold *fold)
{
  double mouth = bf_polygon_area ((const BfVec2 *)(gconstpointer)fold->part->outline->data,
                                  bf_part_n_points (fold->part));

  if (fold->part->joining != BF_JOINING_WELDED || fold->openings->len > 0 ||
      covered_mm2 (fold) < CLOSED_SHARE * mouth)
    return;
  add (fold, "sealed-volume", BF_SEVERITY_LOOK_AT, bf_part_point (fold->part, 0),
       g_strdup (_ ("Welded all round, this closes a hollow: its air swells with the heat and can "
                    "blow out the seam. Drill a vent hole before you weld.")));
}

void
bf_checks_find_part (BfFold *fold)
{
  check_edges (fold);
  if (!is_walled_all_round (fold->layout))
    return;
  check_leaks (fold);
  check_hollow (fold);
}
