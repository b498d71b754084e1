/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-part.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "fold/checks.h"

/* A bend turned this far is a hem. */
#define HEM_RAD (G_PI - 1e-6)

/* A hollow counts as closed when what is left of its mouth comes to a slit so wide all round: that
 * is welded shut, and no vent (common practice: the gap that a bead bridges in thin metal). */
#define CLOSED_SLIT_MM 1.0

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

/* Where the first corner of the base is that water runs out of, and how many there are: all but
 * those that are folded double. */
static guint
count_open_corners (const BfLayout *layout, BfVec2 *first)
{
  guint n = 0;

  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);

      if (meeting->face >= 0 || meeting->folded)
        continue;
      if (n == 0)
        *first = meeting->vertex;
      n++;
    }
  return n;
}

static void
check_leaks (BfFold *fold)
{
  BfVec2 first = { 0.0, 0.0 };
  guint n = count_open_corners (fold->layout, &first);

  if (n > 0)
    add (fold, "will-leak", BF_SEVERITY_GOOD_TO_KNOW, first,
         /* Translators: the number of corners */
         g_strdup_printf (ngettext ("It does not hold water as it is bent: %u corner is open, to "
                                    "be welded or sealed.",
                                    "It does not hold water as it is bent: %u corners are open, to "
                                    "be welded or sealed.",
                                    n),
                          n));
}

/* ---- hollows -------------------------------------------------------------------------------- */

/* What stands between walls at some height: its outline's area and length. */
typedef struct
{
  double area_mm2, round_mm;
} Mouth;

/* How far from its drawn line a wall's inside face stands at a height over the base's inside. */
static double
inside_face_mm (const BfFlap *wall, double height_mm)
{
  double half = tan (wall->angle_rad / 2.0);

  return wall->radius_mm * half - wall->sums.setback_mm + height_mm / tan (wall->angle_rad);
}

/* Where the inside faces of the walls on the edge before a base point and after it cross. */
static BfVec2
inner_corner (const BfLayout *layout, guint at, double height_mm)
{
  guint n = bf_part_n_points (layout->part);
  const BfFlap *a = g_ptr_array_index (layout->base_edges[(at + n - 1) % n], 0);
  const BfFlap *b = g_ptr_array_index (layout->base_edges[at], 0);
  double in = inside_face_mm (a, height_mm), out = inside_face_mm (b, height_mm);
  double sine = bf_vec2_cross (a->edge_n, b->edge_n);
  BfVec2 p = bf_part_point (layout->part, at);

  if (fabs (sine) < BF_TOLERANCE_SIZE_MM)
    return bf_vec2_along (p, b->edge_n, out);
  p = bf_vec2_along (p, a->edge_e, (out - in * bf_vec2_dot (a->edge_n, b->edge_n)) / sine);
  return bf_vec2_along (p, a->edge_n, in);
}

static Mouth
mouth_at (const BfLayout *layout, double height_mm)
{
  guint n = bf_part_n_points (layout->part);
  g_autofree BfVec2 *corners = g_new (BfVec2, n);
  Mouth mouth = { 0.0, 0.0 };

  for (guint i = 0; i < n; i++)
    corners[i] = inner_corner (layout, i, height_mm);
  for (guint i = 0; i < n; i++)
    mouth.round_mm += bf_vec2_distance (corners[i], corners[(i + 1) % n]);
  mouth.area_mm2 = bf_polygon_area (corners, n);
  return mouth;
}

/* The wall of the base that a flange stands on, tip by tip or by sides. */
static const BfFlap *
wall_under (const BfLayout *layout, const BfFlap *flap)
{
  while (flap->parent >= 0)
    flap = &layout->flaps[flap->parent];
  return flap;
}

/* TRUE where it lies level with the base, over it. */
static gboolean
is_lid (const BfLayout *layout, const BfFlap *flap)
{
  BfVec2 out = wall_under (layout, flap)->edge_n;

  return flap->placed && flap->depth > 0 && fabs (flap->pose.m.z) > LEVEL_COSINE &&
         flap->pose.d.x * out.x + flap->pose.d.y * out.y < 0.0;
}

/* How high over the base's inside the inside of a lid begins. */
static double
lid_height_mm (const BfLayout *layout, const BfFlap *lid)
{
  gboolean up = wall_under (layout, lid)->flange->turn == BF_TURN_UP;
  double t = layout->thickness_mm, upper = lid->pose.origin.z + (lid->pose.m.z > 0.0 ? 0.0 : t);

  return up ? upper - t : -t - upper;
}

/* How much of the mouth lids cover, and how high the highest of them begins. */
static double
covered_mm2 (const BfFold *fold, double *height_mm)
{
  const BfLayout *layout = fold->layout;
  double area = 0.0, t = layout->thickness_mm;

  *height_mm = 0.0;
  for (guint i = 0; i < layout->n_flaps; i++)
    {
      const BfFlap *flap = &layout->flaps[i];

      if (!is_lid (layout, flap))
        continue;
      area += bf_ring_area (bf_fold_face (fold, i + 1)->outline) +
              MAX (flap->sums.outside_setback_mm - t, 0.0) * flap->edge_length_mm;
      *height_mm = MAX (*height_mm, lid_height_mm (layout, flap));
    }
  return area;
}

static void
check_hollow (BfFold *fold)
{
  double height, covered = covered_mm2 (fold, &height);
  Mouth mouth = mouth_at (fold->layout, height);

  if (fold->part->joining != BF_JOINING_WELDED || fold->openings->len > 0 ||
      covered < mouth.area_mm2 - CLOSED_SLIT_MM * mouth.round_mm)
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
