/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Sweeps over corners: every angle, bend, radius, thickness, join and turn together. No metal is
 * wanted twice, nothing collides; where a must-fix stands it is so: walls that lean so unlike that
 * one blank does not hold both, sides that cross before the tip, lips that reach down to the base.
 * The normal run draws one row of 16 by lot, with a fixed seed; -m thorough runs them all. */

#include "clip-areas.h"
#include "slab-overlap.h"
#include "look-up.h"
#include "make-part.h"

/* The edges at the corner. */
#define SIDE_MM 120.0

/* Deeper than this is a collision; metal may touch. */
#define DEEPEST_MM 1e-3

/* Places are rounded to 1e-8 mm along some metres of edges. */
#define ROUNDING_MM2 1e-4

/* Two pieces that share no more than an edge have less in common. */
#define LEAST_MM2 2e-6

/* One corner, and what stands at it. */
typedef struct
{
  double corner_deg, before_deg, after_deg;
  double thickness_mm, radius_of_t;
  BfJoin join;
  gboolean opposite;
  double lip_deg;       /* 0: no lips */
  guint lips;           /* deep; 1 or 2 */
  double other_lip_deg; /* 0: the wall after is bare */
  double inset_mm, taper_deg;
} Row;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (ClipPieces, clip_pieces_free)

/* How a sweep went. */
typedef struct
{
  GRand *rand;
  guint n, n_must;
} Sweep;

static const double bends[] = { 30.0, 60.0, 90.0, 120.0, 150.0 };
static const double thicknesses[] = { 0.9, 1.5, 3.0 };
static const double radii[] = { 0.0, 0.5, 1.0, 3.0 };
static const BfJoin joins[] = { BF_JOIN_OPEN, BF_JOIN_COVERS_BEFORE, BF_JOIN_COVERS_AFTER };

/* ---- the part ------------------------------------------------------------------------------ */

/* Edge 0 runs to the corner, point 1, and edge 1 away from it. */
static BfPart *
make_corner (double corner_deg)
{
  double a = bf_deg_to_rad (corner_deg), l = SIDE_MM;
  BfVec2 away = { -l * cos (a), l * sin (a) };
  const BfVec2 outside[] = { { -l, 0.0 }, { 0.0, 0.0 }, away, { away.x - l, away.y } };
  const BfVec2 inside[] = { { -l, 0.0 },           { 0.0, 0.0 },         away,
                            { 2.0 * l, -2.0 * l }, { 2.0 * l, 2.0 * l }, { -2.0 * l, l } };

  if (corner_deg < 180.0)
    return make_part (outside, G_N_ELEMENTS (outside));
  return make_part (inside, G_N_ELEMENTS (inside));
}

static void
add_lips (BfPart *part, const char *wall, double angle_deg, const Row *row)
{
  g_autofree char *lip = g_strconcat (wall, "-lip", NULL),
                  *on_lip = g_strconcat (lip, "-lip", NULL);
  BfTurn turn = bf_part_find_flange (part, wall)->turn;

  if (angle_deg <= 0.0)
    return;
  add_lip (part, lip, wall, 24.0, angle_deg)->turn = turn;
  if (row->lips > 1)
    add_lip (part, on_lip, lip, 20.0, 60.0)->turn = turn;
}

static BfPart *
make_row (const Row *row)
{
  BfPart *part = make_corner (row->corner_deg);
  BfCorner *corner = bf_corner_new ("base", 1);
  BfFlange *before = add_flange (part, "before", 0, 40.0, row->before_deg);
  BfFlange *after = add_flange (part, "after", 1, 40.0, row->after_deg);

  part->metal.thickness_mm = row->thickness_mm;
  part->bend.inside_radius_mm = row->radius_of_t * row->thickness_mm;
  corner->join = row->join;
  corner->relief = BF_RELIEF_NONE; /* nothing that goes wrong is cut away */
  g_ptr_array_add (part->corners, corner);
  after->turn = row->opposite ? BF_TURN_DOWN : BF_TURN_UP;
  before->end_mm = row->inset_mm;
  before->end_taper_deg = row->taper_deg;
  add_lips (part, "before", row->lip_deg, row);
  add_lips (part, "after", row->other_lip_deg, row);
  return part;
}

/* ---- the judge ----------------------------------------------------------------------------- */

static char *
describe (const Row *row)
{
  return g_strdup_printf (
      "corner %g, bends %g and %g%s, t %g, R %g t, join %d, lips %u: %g and %g, inset %g, taper %g",
      row->corner_deg, row->before_deg, row->after_deg, row->opposite ? " down" : "",
      row->thickness_mm, row->radius_of_t, (int)row->join, row->lips, row->lip_deg,
      row->other_lip_deg, row->inset_mm, row->taper_deg);
}

static BfSeverity
worst_severity (const BfFold *fold)
{
  return fold->checks->len == 0 ? BF_SEVERITY_GOOD_TO_KNOW : bf_fold_check (fold, 0)->severity;
}

static void
add_piece (ClipPieces *pieces, const GArray *points)
{
  if (points->len >= 3)
    clip_pieces_add (pieces, &((const BfVec2 *)(gpointer)points->data)->x, points->len);
}

/* The largest area that two pieces of the blank have in common and no relief takes, by another
 * polygon library. A zone's corners run clockwise. */
static double
wanted_twice_mm2 (const BfFold *fold)
{
  g_autoptr (ClipPieces) pieces = clip_pieces_new (), reliefs = clip_pieces_new ();
  unsigned a, b;

  for (guint i = 0; i < fold->faces->len + fold->bends->len; i++)
    {
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

      if (i < fold->faces->len)
        bf_ring_flatten (bf_fold_face (fold, i)->outline, DEEPEST_MM, points);
      for (guint k = 4; i >= fold->faces->len && k-- > 0;)
        g_array_append_val (points, bf_fold_bend (fold, i - fold->faces->len)->zone[k]);
      add_piece (pieces, points);
    }
  for (guint i = 0; i < fold->reliefs->len; i++)
    {
      g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

      bf_ring_flatten (bf_fold_relief (fold, i)->ring, DEEPEST_MM, points);
      add_piece (reliefs, points);
    }
  return clip_worst_overlap (pieces, reliefs, &a, &b);
}

/* How far the flange's sides are apart at its tip, out of its outline: the points that lie farthest
 * from the bend, as the outline runs through them from start to end. */
static double
tip_width_mm (const BfFold *fold, const char *flange)
{
  const BfBendResult *bend = find_bend (fold, flange);
  const BfRing *outline = find_face (fold, flange)->outline;
  BfVec2 e = bf_vec2_unit (bf_vec2_sub (bend->zone[2], bend->zone[3]));
  BfVec2 n = { e.y, -e.x };
  double farthest = 0.0, first = NAN, last = NAN;

  for (guint i = 0; i < bf_ring_size (outline); i++)
    farthest = MAX (farthest,
                    bf_vec2_dot (n, bf_vec2_sub (bf_ring_vertex (outline, i)->p, bend->zone[3])));
  for (guint i = 0; i < bf_ring_size (outline); i++)
    {
      BfVec2 d = bf_vec2_sub (bf_ring_vertex (outline, i)->p, bend->zone[3]);

      if (bf_vec2_dot (n, d) < farthest - 1e-6)
        continue;
      first = isnan (first) ? bf_vec2_dot (e, d) : first;
      last = bf_vec2_dot (e, d);
    }
  return last - first;
}

/* What the check says is so. A flange whose sides cross lies on itself, or is parted where they do.
 * Only lips, of which two deep reach down, may collide. */
static gboolean
is_right (const BfFold *fold, const BfCheck *check, const Row *row)
{
  guint a, b;

  if (strcmp (check->code, "flange-too-narrow") == 0)
    return tip_width_mm (fold, check->where) < 0.0;
  if (find_check (fold, "flange-too-narrow", NULL) != NULL)
    return TRUE;
  if (strcmp (check->code, "blank-overlaps-itself") == 0)
    return wanted_twice_mm2 (fold) > LEAST_MM2;
  if (strcmp (check->code, "faces-collide") == 0)
    return row->lips > 1 && slab_worst_overlap (fold, &a, &b) > DEEPEST_MM;
  return FALSE;
}

static void
judge (Sweep *sweep, const Row *row)
{
  g_autoptr (BfPart) part = NULL;
  g_autoptr (BfFold) fold = NULL;
  g_autofree char *words = NULL;
  guint a = 0, b = 0;

  if (!g_test_thorough () && g_rand_int_range (sweep->rand, 0, 16) > 0)
    return;
  part = make_row (row);
  fold = bf_fold (part);
  words = describe (row);
  sweep->n++;
  if (worst_severity (fold) != BF_SEVERITY_MUST_FIX)
    {
      if (slab_worst_overlap (fold, &a, &b) > DEEPEST_MM || wanted_twice_mm2 (fold) > ROUNDING_MM2)
        g_error ("%s", words);
      return;
    }
  sweep->n_must++;
  for (guint i = 0; i < fold->checks->len; i++)
    if (bf_fold_check (fold, i)->severity == BF_SEVERITY_MUST_FIX &&
        !is_right (fold, bf_fold_check (fold, i), row))
      g_error ("%s: %s", words, bf_fold_check (fold, i)->message);
}

/* ---- the sweeps ---------------------------------------------------------------------------- */

/* The next digit of a number whose digits have their own bases: one index runs through every row.
 */
static guint
digit (guint *index, guint base)
{
  guint d = *index % base;

  *index /= base;
  return d;
}

/* Open, both covers, and opposite turns. */
static void
set_join (Row *row, guint k)
{
  row->join = k < G_N_ELEMENTS (joins) ? joins[k] : BF_JOIN_OPEN;
  row->opposite = k >= G_N_ELEMENTS (joins);
}

#define N_BENDS G_N_ELEMENTS (bends)
#define N_JOINS (G_N_ELEMENTS (joins) + 1)
#define N_METALS (G_N_ELEMENTS (thicknesses) * G_N_ELEMENTS (radii))

static void
set_metal (Row *row, guint k)
{
  row->thickness_mm = thicknesses[k % G_N_ELEMENTS (thicknesses)];
  row->radius_of_t = radii[k / G_N_ELEMENTS (thicknesses)];
}

static Row
corner_row (guint i)
{
  Row row = { .before_deg = bends[digit (&i, N_BENDS)], .after_deg = bends[digit (&i, N_BENDS)] };

  set_metal (&row, digit (&i, N_METALS));
  set_join (&row, digit (&i, N_JOINS));
  row.corner_deg = 50.0 + 10.0 * i;
  return row;
}

static Row
inside_row (guint i)
{
  Row row = { .before_deg = bends[digit (&i, N_BENDS)], .after_deg = bends[digit (&i, N_BENDS)] };

  set_metal (&row, digit (&i, N_METALS));
  set_join (&row, 2 + digit (&i, 2));
  row.corner_deg = 210.0 + 10.0 * i;
  return row;
}

/* The last of a wall's neighbours has no lip. */
static Row
lip_row (guint i)
{
  static const double walls[][2] = {
    { 30.0, 60.0 }, { 60.0, 90.0 }, { 90.0, 90.0 }, { 120.0, 120.0 }
  };
  guint wall = digit (&i, G_N_ELEMENTS (walls)), other;
  Row row = { .before_deg = walls[wall][0],
              .after_deg = walls[wall][1],
              .thickness_mm = 1.5,
              .radius_of_t = 1.0,
              .lip_deg = bends[digit (&i, N_BENDS)] };

  other = digit (&i, N_BENDS + 1);
  row.other_lip_deg = other < N_BENDS ? bends[other] : 0.0;
  row.lips = 1 + digit (&i, 2);
  set_join (&row, digit (&i, N_JOINS));
  row.corner_deg = 50.0 + 10.0 * i;
  return row;
}

static Row
own_row (guint i)
{
  static const double insets[] = { 0.0, 0.5, 1.0, 2.0, 3.0, 5.0, 10.0 };
  Row row = { .before_deg = bends[digit (&i, N_BENDS)],
              .after_deg = bends[digit (&i, N_BENDS)],
              .thickness_mm = 1.5,
              .radius_of_t = 1.0,
              .inset_mm = insets[digit (&i, G_N_ELEMENTS (insets))],
              .taper_deg = 15.0 * digit (&i, 4) };

  set_join (&row, digit (&i, N_JOINS));
  row.corner_deg = 50.0 + 20.0 * i;
  return row;
}

/* A hem before or after a wall, or another hem. */
static Row
hem_row (guint i)
{
  guint k = digit (&i, N_BENDS + 1);
  double other = k < N_BENDS ? bends[k] : 180.0;
  gboolean first = digit (&i, 2) == 0;
  Row row = { .before_deg = first ? 180.0 : other, .after_deg = first ? other : 180.0 };

  set_metal (&row, digit (&i, N_METALS));
  set_join (&row, digit (&i, N_JOINS));
  row.corner_deg = 50.0 + 10.0 * i;
  return row;
}

/* Rows of one kind until the corner is past the last angle, and the most of them that may have a
 * must-fix. */
typedef struct
{
  const char *path;
  Row (*row) (guint i);
  double last_deg;
  double most_must;
} Kind;

static const Kind kinds[] = {
  { "/sweep/corners", corner_row, 150.0, 0.10 },
  { "/sweep/inside-corners", inside_row, 310.0, 0.0 },
  { "/sweep/lips", lip_row, 150.0, 0.15 },
  { "/sweep/insets-tapers", own_row, 310.0, 0.08 },
  { "/sweep/hems", hem_row, 150.0, 0.0 },
};

static void
test_sweep (gconstpointer data)
{
  const Kind *kind = data;
  g_autoptr (GRand) rand = g_rand_new_with_seed (1);
  Sweep sweep = { rand, 0, 0 };
  Row row;

  for (guint i = 0; row = kind->row (i), row.corner_deg < kind->last_deg + 1.0; i++)
    judge (&sweep, &row);
  g_test_message ("%u rows, %u with a must-fix that is right", sweep.n, sweep.n_must);
  g_assert_cmpuint (sweep.n, >, 300);
  g_assert_cmpfloat (sweep.n_must, <=, kind->most_must * sweep.n);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    g_test_add_data_func (kinds[i].path, &kinds[i], test_sweep);
  return g_test_run ();
}
