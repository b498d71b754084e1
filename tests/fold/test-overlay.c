/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Cutting true arcs out of outlines by an overlay that knows only chords: areas against closed
 * formulas, and every arc back on its circle. */

#include "fold/overlay.h"
#include "ring-valid.h"

#define AREA_MM2 1e-6
#define ON_ARC_MM 1e-9

#define WIDTH_MM 100.0
#define HEIGHT_MM 60.0
#define WHOLE_MM2 (WIDTH_MM * HEIGHT_MM)

typedef struct
{
  BfVec2 centre;
  double radius;
} Disc;

static BfRing *
disc_ring (const Disc *disc)
{
  BfRing *ring = bf_ring_new ();

  bf_ring_add (ring, bf_vec2 (disc->centre.x + disc->radius, disc->centre.y), 1.0);
  bf_ring_add (ring, bf_vec2 (disc->centre.x - disc->radius, disc->centre.y), 1.0);
  return ring;
}

static BfRing *
polygon (const BfVec2 *points, guint n)
{
  BfRing *ring = bf_ring_new ();

  for (guint i = 0; i < n; i++)
    bf_ring_add (ring, points[i], 0.0);
  return ring;
}

static BfRing *
rectangle (double x0, double y0, double x1, double y1)
{
  const BfVec2 points[] = { { x0, y0 }, { x1, y0 }, { x1, y1 }, { x0, y1 } };
  return polygon (points, G_N_ELEMENTS (points));
}

static GPtrArray *
new_rings (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
}

/* The rectangle of WIDTH_MM by HEIGHT_MM less the discs. */
static GPtrArray *
cut_discs (const Disc *discs, guint n, guint *n_outer)
{
  g_autoptr (GPtrArray) outlines = new_rings (), tools = new_rings ();

  g_ptr_array_add (outlines, rectangle (0.0, 0.0, WIDTH_MM, HEIGHT_MM));
  for (guint i = 0; i < n; i++)
    g_ptr_array_add (tools, disc_ring (&discs[i]));
  return bf_overlay_cut (outlines, tools, n_outer);
}

static double
area_of (const GPtrArray *rings)
{
  double area = 0.0;

  for (guint i = 0; i < rings->len; i++)
    area += bf_ring_area (g_ptr_array_index (rings, i));
  return area;
}

/* How far an arc, by its ends and its middle, strays from that circle. */
static double
off_disc (const BfRing *ring, guint i, const BfArc *arc, const Disc *disc)
{
  double middle = arc->from + arc->sweep / 2.0;
  BfVec2 points[] = { bf_ring_vertex (ring, i)->p, bf_ring_vertex (ring, i + 1)->p,
                      bf_vec2_along (arc->centre, bf_vec2 (cos (middle), sin (middle)),
                                     arc->radius) };
  double off = 0.0;

  for (guint k = 0; k < G_N_ELEMENTS (points); k++)
    off = MAX (off, fabs (bf_vec2_distance (points[k], disc->centre) - disc->radius));
  return off;
}

static guint
check_arcs (const GPtrArray *rings, const Disc *discs, guint n_discs)
{
  guint n = 0;

  for (guint r = 0; r < rings->len; r++)
    {
      const BfRing *ring = g_ptr_array_index (rings, r);

      for (guint i = 0; i < bf_ring_size (ring); i++)
        {
          double off = G_MAXDOUBLE;
          BfArc arc;

          if (!bf_ring_arc (ring, i, &arc))
            continue;
          for (guint d = 0; d < n_discs; d++)
            off = MIN (off, off_disc (ring, i, &arc, &discs[d]));
          g_assert_cmpfloat (off, <, ON_ARC_MM);
          n++;
        }
    }
  return n;
}

static void
check_valid (const GPtrArray *rings, guint n_outer)
{
  g_autofree char *fault = why_not_valid (rings, n_outer);

  g_assert_cmpstr (fault, ==, NULL);
}

/* ---- closed formulas ----------------------------------------------------------------------- */

/* The part of a disc beyond a chord at a distance from its centre. */
static double
segment (double radius, double distance)
{
  return radius * radius * acos (distance / radius) -
         distance * sqrt (radius * radius - distance * distance);
}

/* What two discs of one radius have in common. */
static double
lens (double radius, double apart)
{
  return 2.0 * segment (radius, apart / 2.0);
}

/* x under the circle's upper half from its centre to x. */
static double
under_arc (double radius, double x)
{
  return (x * sqrt (radius * radius - x * x) + radius * radius * asin (x / radius)) / 2.0;
}

typedef struct
{
  const char *what;
  Disc discs[4];
  guint n, n_outer, n_rings;
  double cut_mm2;
} Case;

static void
check_cases (const Case *cases, guint n_cases)
{
  for (guint i = 0; i < n_cases; i++)
    {
      const Case *c = &cases[i];
      guint n_outer;
      g_autoptr (GPtrArray) rings = cut_discs (c->discs, c->n, &n_outer);

      g_test_message ("%s", c->what);
      g_assert_cmpfloat_with_epsilon (WHOLE_MM2 - area_of (rings), c->cut_mm2, AREA_MM2);
      g_assert_cmpuint (n_outer, ==, c->n_outer);
      g_assert_cmpuint (rings->len, ==, c->n_rings);
      g_assert_true (check_arcs (rings, c->discs, c->n) > 0 || c->cut_mm2 <= 0.0);
    }
}

static void
test_edges (void)
{
  const double whole = G_PI * 25.0, half = whole / 2.0;
  const Case cases[] = {
    { "half a disc", { { { 50, 0 }, 5 } }, 1, 1, 1, half },
    { "less than half", { { { 50, -2 }, 5 } }, 1, 1, 1, segment (5, 2) },
    { "more than half", { { { 50, 2 }, 5 } }, 1, 1, 1, whole - segment (5, 2) },
    { "off the grid", { { { 100.1, 100.0 / 3 }, 5 } }, 1, 1, 1, segment (5, 0.1) },
    { "two that overlap",
      { { { 40, 0 }, 5 }, { { 46, 0 }, 5 } },
      2,
      1,
      1,
      whole - lens (5, 6) / 2 },
    { "wide and shallow",
      { { { 50, -990 }, 1000 } },
      1,
      1,
      1,
      2.0 * under_arc (1000, 50) - 990.0 * WIDTH_MM },
    { "touches from outside", { { { 50, -5 }, 5 } }, 1, 1, 1, 0.0 },
    { "misses", { { { 50, -50 }, 5 } }, 1, 1, 1, 0.0 },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
test_corners (void)
{
  const double whole = G_PI * 25.0, half = whole / 2.0;
  const Case cases[] = {
    { "a quarter", { { { 0, 0 }, 5 } }, 1, 1, 1, whole / 4 },
    { "through the vertex", { { { 3, 4 }, 5 } }, 1, 1, 1, whole - segment (5, 3) - segment (5, 4) },
    { "through the vertex, from outside", { { { -3, 4 }, 5 } }, 1, 1, 1, segment (5, 3) },
    /* A quarter, a strip along each axis, and the rectangle between the two. */
    { "round the vertex",
      { { { 2, 1 }, 5 } },
      1,
      1,
      1,
      whole / 4 + (half - segment (5, 2)) / 2 + (half - segment (5, 1)) / 2 + 2 },
    { "at the last vertex", { { { WIDTH_MM, HEIGHT_MM }, 5 } }, 1, 1, 1, whole / 4 },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

static void
test_holes (void)
{
  const double whole = G_PI * 25.0;
  const Case cases[] = {
    { "one", { { { 50, 30 }, 5 } }, 1, 1, 2, whole },
    { "tiny", { { { 50, 30 }, 0.1 } }, 1, 1, 2, G_PI * 0.01 },
    { "two apart", { { { 20, 30 }, 5 }, { { 60, 30 }, 5 } }, 2, 1, 3, 2 * whole },
    { "two that overlap",
      { { { 40, 30 }, 5 }, { { 46, 30 }, 5 } },
      2,
      1,
      2,
      2 * whole - lens (5, 6) },
    { "overlap aslant",
      { { { 40.1, 30.3 }, 5 }, { { 43.7, 35.1 }, 5 } },
      2,
      1,
      2,
      2 * whole - lens (5, 6) },
    { "the same twice", { { { 40, 30 }, 5 }, { { 40, 30 }, 5 } }, 2, 1, 2, whole },
    { "one in another", { { { 40, 30 }, 5 }, { { 41, 30 }, 2 } }, 2, 1, 2, whole },
    { "a row across parts it in two",
      { { { 50, 0 }, 12 }, { { 50, 20 }, 12 }, { { 50, 40 }, 12 }, { { 50, 60 }, 12 } },
      4,
      2,
      2,
      3 * G_PI * 144 - 3 * lens (12, 20) },
  };

  check_cases (cases, G_N_ELEMENTS (cases));
}

/* A disc that touches an edge from inside: a hole, or a bay that meets the edge at a point. */
static void
test_tangent (void)
{
  const Disc discs[] = { { { 50, 5 }, 5 }, { { 95, 30 }, 5 }, { { 33.3, 55 }, 5 } };

  for (guint i = 0; i < G_N_ELEMENTS (discs); i++)
    {
      guint n_outer;
      g_autoptr (GPtrArray) rings = cut_discs (&discs[i], 1, &n_outer);

      g_assert_cmpfloat_with_epsilon (WHOLE_MM2 - area_of (rings), G_PI * 25.0, AREA_MM2);
      g_assert_cmpuint (n_outer, ==, 1);
      check_arcs (rings, &discs[i], 1);
    }
}

/* A whole hole comes back as the circle that it is. */
static void
test_circle (void)
{
  const Disc disc = { { 50.1, 30.7 }, 4.3 };
  guint n_outer;
  g_autoptr (GPtrArray) rings = cut_discs (&disc, 1, &n_outer);
  BfVec2 centre;
  double radius;

  g_assert_cmpuint (rings->len, ==, 2);
  g_assert_true (bf_ring_is_circle (g_ptr_array_index (rings, 1), &centre, &radius));
  g_assert_cmpfloat_with_epsilon (bf_vec2_distance (centre, disc.centre), 0.0, ON_ARC_MM);
  g_assert_cmpfloat_with_epsilon (radius, disc.radius, ON_ARC_MM);
  g_assert_cmpfloat (bf_ring_area (g_ptr_array_index (rings, 1)), <, 0.0);
}

/* ---- outlines and tools of other shapes ----------------------------------------------------- */

/* What was cut once may be cut again, arcs and holes and all. */
static void
test_again (void)
{
  const Disc discs[] = { { { 50, 30 }, 8 }, { { 0, 0 }, 10 }, { { 55, 30 }, 6 }, { { 9, 0 }, 4 } };
  g_autoptr (GPtrArray) more = new_rings ();
  guint n_outer, n_at_once;
  g_autoptr (GPtrArray) once = cut_discs (discs, 2, &n_outer);
  g_autoptr (GPtrArray) at_once = cut_discs (discs, 4, &n_at_once);
  g_autoptr (GPtrArray) twice = NULL;

  g_ptr_array_add (more, disc_ring (&discs[2]));
  g_ptr_array_add (more, disc_ring (&discs[3]));
  twice = bf_overlay_cut (once, more, &n_outer);
  g_assert_cmpuint (n_outer, ==, n_at_once);
  g_assert_cmpuint (twice->len, ==, at_once->len);
  g_assert_cmpfloat_with_epsilon (area_of (twice), area_of (at_once), AREA_MM2);
  check_arcs (twice, discs, 4);
}

/* A drawn cut-out may cross itself: both its loops go, the middle too. */
static void
test_crossing_tool (void)
{
  const BfVec2 bow[] = { { 10, 10 }, { 30, 30 }, { 30, 10 }, { 10, 30 } };
  g_autoptr (GPtrArray) outlines = new_rings (), tools = new_rings (), rings = NULL;
  guint n_outer;

  g_ptr_array_add (outlines, rectangle (0.0, 0.0, WIDTH_MM, HEIGHT_MM));
  g_ptr_array_add (tools, polygon (bow, G_N_ELEMENTS (bow)));
  rings = bf_overlay_cut (outlines, tools, &n_outer);
  g_assert_cmpuint (n_outer, ==, 1);
  g_assert_cmpfloat_with_epsilon (WHOLE_MM2 - area_of (rings), 200.0, AREA_MM2);
}

/* A ring that runs out and back on itself, among several: the line between is no metal. */
static void
test_spike (void)
{
  const BfVec2 spiked[] = { { 0, 0 }, { 20, 0 }, { 20, 10 }, { 20, 15 }, { 20, 10 }, { 0, 10 } };
  const Disc disc = { { 10, 0 }, 2 };
  g_autoptr (GPtrArray) outlines = new_rings (), tools = new_rings (), rings = NULL;
  BfRing *hole = rectangle (5.0, 5.0, 6.0, 6.0);
  guint n_outer;

  bf_ring_reverse (hole);
  g_ptr_array_add (outlines, polygon (spiked, G_N_ELEMENTS (spiked)));
  g_ptr_array_add (outlines, hole);
  g_ptr_array_add (tools, disc_ring (&disc));
  rings = bf_overlay_cut (outlines, tools, &n_outer);
  g_assert_cmpuint (n_outer, ==, 1);
  g_assert_cmpfloat_with_epsilon (area_of (rings), 199.0 - 2.0 * G_PI, AREA_MM2);
}

/* Cut-outs flush with a slanting edge, their corners off every grid, leave no hair along it. */
static void
test_flush (void)
{
  const BfVec2 base[] = { { 0.1, 0.3 }, { 97.3, 31.7 }, { 60.0, 80.0 } };
  BfVec2 e = bf_vec2_unit (bf_vec2_sub (base[1], base[0])), n = { -e.y, e.x };

  for (double from = 5.0; from < 80.0; from += 0.7)
    {
      BfVec2 a = bf_vec2_along (base[0], e, from), b = bf_vec2_along (base[0], e, from + 9.1);
      const BfVec2 bite[] = { a, b, bf_vec2_along (b, n, 0.5), bf_vec2_along (a, n, 0.5) };
      g_autoptr (GPtrArray) outlines = new_rings (), tools = new_rings (), rings = NULL;
      guint n_outer;

      g_ptr_array_add (outlines, polygon (base, G_N_ELEMENTS (base)));
      g_ptr_array_add (tools, polygon (bite, G_N_ELEMENTS (bite)));
      rings = bf_overlay_cut (outlines, tools, &n_outer);
      g_assert_cmpuint (rings->len, ==, 1);
      g_assert_cmpuint (bf_ring_size (g_ptr_array_index (rings, 0)), ==, 7);
      g_assert_cmpfloat_with_epsilon (area_of (rings), bf_polygon_area (base, 3) - 9.1 * 0.5, 1e-5);
    }
}

static void
test_nothing_left (void)
{
  const Disc disc = { { 50, 30 }, 200 };
  guint n_outer = 9;
  g_autoptr (GPtrArray) rings = cut_discs (&disc, 1, &n_outer);

  g_assert_cmpuint (rings->len, ==, 0);
  g_assert_cmpuint (n_outer, ==, 0);
}

static void
test_no_tools (void)
{
  guint n_outer;
  g_autoptr (GPtrArray) rings = cut_discs (NULL, 0, &n_outer);

  g_assert_cmpuint (rings->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (area_of (rings), WHOLE_MM2, AREA_MM2);
}

/* ---- uniting -------------------------------------------------------------------------------- */

/* Four strips about an opening: they share edges, and two of them overlap. */
static void
test_unite (void)
{
  g_autoptr (GPtrArray) pieces = new_rings (), rings = NULL;

  g_ptr_array_add (pieces, rectangle (0.0, 0.0, 30.0, 5.0));
  g_ptr_array_add (pieces, rectangle (0.0, 5.0, 5.0, 15.0));
  g_ptr_array_add (pieces, rectangle (25.0, 5.0, 30.0, 15.0));
  g_ptr_array_add (pieces, rectangle (0.0, 14.0, 30.0, 20.0));
  rings = bf_overlay_unite (pieces);
  g_assert_cmpuint (rings->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (area_of (rings), 30.0 * 20.0 - 20.0 * 9.0, AREA_MM2);
  g_assert_cmpfloat (bf_ring_area (g_ptr_array_index (rings, 0)), >, 0.0);
  g_assert_cmpfloat (bf_ring_area (g_ptr_array_index (rings, 1)), <, 0.0);
}

/* Edges shared at odd angles and places off every grid leave no slits and lose no metal. */
static void
test_unite_aslant (void)
{
  g_autoptr (GPtrArray) pieces = new_rings (), rings = NULL;
  double area = 0.0;

  for (guint i = 0; i < 7; i++)
    {
      double from = 2.0 * G_PI * i / 7.0 + 0.1, to = 2.0 * G_PI * (i + 1) / 7.0 + 0.1;
      const BfVec2 points[] = { { 11.1, 7.7 },
                                { 11.1 + 50.0 * cos (from), 7.7 + 50.0 * sin (from) },
                                { 11.1 + 50.0 * cos (to), 7.7 + 50.0 * sin (to) } };

      area += bf_polygon_area (points, G_N_ELEMENTS (points));
      g_ptr_array_add (pieces, polygon (points, G_N_ELEMENTS (points)));
    }
  rings = bf_overlay_unite (pieces);
  g_assert_cmpuint (rings->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (area_of (rings), area, 1e-4); /* points moved to the grid */
}

static void
test_simple (void)
{
  const BfVec2 bow[] = { { 0, 0 }, { 10, 10 }, { 10, 0 }, { 0, 10 } };
  const BfVec2 pinched[] = { { 0, 0 }, { 10, 0 }, { 10, 10 }, { 5, 0 }, { 0, 10 } };
  g_autoptr (BfRing) crossing = polygon (bow, G_N_ELEMENTS (bow));
  g_autoptr (BfRing) touching = polygon (pinched, G_N_ELEMENTS (pinched));
  g_autoptr (BfRing) fine = rectangle (0.0, 0.0, 10.0, 5.0);
  BfVec2 where = { -1.0, -1.0 };

  g_assert_true (bf_overlay_is_simple (fine, NULL));
  g_assert_false (bf_overlay_is_simple (touching, NULL));
  g_assert_false (bf_overlay_is_simple (crossing, &where));
  g_assert_cmpfloat_with_epsilon (where.x, 5.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (where.y, 5.0, 1e-9);
}

/* ---- random discs against Green's theorem --------------------------------------------------- */

#define DISCS_MAX 8

/* Places along an edge or a circle at which what is left may begin or end. */
typedef struct
{
  double at[64];
  guint n;
} Cuts;

static int
compare_doubles (const void *a, const void *b)
{
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

static gboolean
in_another (const Disc *discs, guint n, guint but, BfVec2 p)
{
  for (guint i = 0; i < n; i++)
    if (i != but && bf_vec2_distance (p, discs[i].centre) < discs[i].radius)
      return TRUE;
  return FALSE;
}

static void
cross_line (const Disc *disc, BfVec2 from, BfVec2 e, Cuts *on_line, Cuts *on_disc)
{
  BfVec2 d = bf_vec2_sub (disc->centre, from);
  double along = bf_vec2_dot (d, e), off = bf_vec2_cross (e, d);
  double half = disc->radius * disc->radius - off * off;

  if (half <= 0.0)
    return;
  for (int sign = -1; sign <= 1; sign += 2)
    {
      double at = along + sign * sqrt (half);
      BfVec2 p = bf_vec2_sub (bf_vec2_along (from, e, at), disc->centre);

      if (on_line != NULL)
        on_line->at[on_line->n++] = at;
      if (on_disc != NULL)
        on_disc->at[on_disc->n++] = atan2 (p.y, p.x);
    }
}

static void
cross_disc (const Disc *disc, const Disc *other, Cuts *cuts)
{
  BfVec2 d = bf_vec2_sub (other->centre, disc->centre);
  double apart = bf_vec2_length (d), angle = atan2 (d.y, d.x);
  double cosine = (apart * apart + disc->radius * disc->radius - other->radius * other->radius) /
                  (2.0 * apart * disc->radius);

  if (fabs (cosine) >= 1.0)
    return;
  cuts->at[cuts->n++] = remainder (angle + acos (cosine), 2.0 * G_PI);
  cuts->at[cuts->n++] = remainder (angle - acos (cosine), 2.0 * G_PI);
}

static const BfVec2 corners[] = {
  { 0.0, 0.0 }, { WIDTH_MM, 0.0 }, { WIDTH_MM, HEIGHT_MM }, { 0.0, HEIGHT_MM }
};

/* ∮ (x dy − y dx) / 2 along what is left of an edge. */
static double
edge_share (const Disc *discs, guint n, guint edge)
{
  BfVec2 from = corners[edge], to = corners[(edge + 1) % 4];
  BfVec2 e = bf_vec2_unit (bf_vec2_sub (to, from));
  double length = bf_vec2_distance (from, to), share = 0.0;
  Cuts cuts = { { 0.0, length }, 2 };

  for (guint i = 0; i < n; i++)
    cross_line (&discs[i], from, e, &cuts, NULL);
  qsort (cuts.at, cuts.n, sizeof *cuts.at, compare_doubles);
  for (guint i = 0; i + 1 < cuts.n; i++)
    {
      double middle = (cuts.at[i] + cuts.at[i + 1]) / 2.0;

      if (middle > 0.0 && middle < length &&
          !in_another (discs, n, n, bf_vec2_along (from, e, middle)))
        share += bf_vec2_cross (from, e) * (cuts.at[i + 1] - cuts.at[i]) / 2.0;
    }
  return share;
}

/* The same along an arc, run clockwise. */
static double
arc_share (const Disc *disc, double from, double to)
{
  double r = disc->radius;

  return -(r * r * (to - from) + r * disc->centre.x * (sin (to) - sin (from)) -
           r * disc->centre.y * (cos (to) - cos (from))) /
         2.0;
}

static double
disc_share (const Disc *discs, guint n, guint which)
{
  const Disc *disc = &discs[which];
  Cuts cuts = { { -G_PI, G_PI }, 2 };
  double share = 0.0;

  for (guint i = 0; i < 4; i++)
    cross_line (disc, corners[i], bf_vec2_unit (bf_vec2_sub (corners[(i + 1) % 4], corners[i])),
                NULL, &cuts);
  for (guint i = 0; i < n; i++)
    if (i != which)
      cross_disc (disc, &discs[i], &cuts);
  qsort (cuts.at, cuts.n, sizeof *cuts.at, compare_doubles);
  for (guint i = 0; i + 1 < cuts.n; i++)
    {
      double a = (cuts.at[i] + cuts.at[i + 1]) / 2.0;
      BfVec2 p = bf_vec2_along (disc->centre, bf_vec2 (cos (a), sin (a)), disc->radius);

      if (p.x > 0.0 && p.x < WIDTH_MM && p.y > 0.0 && p.y < HEIGHT_MM &&
          !in_another (discs, n, which, p))
        share += arc_share (disc, cuts.at[i], cuts.at[i + 1]);
    }
  return share;
}

static double
left_by_green (const Disc *discs, guint n)
{
  double area = 0.0;

  for (guint i = 0; i < 4; i++)
    area += edge_share (discs, n, i);
  for (guint i = 0; i < n; i++)
    area += disc_share (discs, n, i);
  return area;
}

/* Slivers of less than a thousandth of a square millimetre are dropped from what is left. */
#define CRUMBS_MM2 5e-3
#define N_ROUNDS 500

static void
test_random (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (7);
  guint with_crumbs = 0;

  for (guint round = 0; round < N_ROUNDS; round++)
    {
      guint n = (guint)g_rand_int_range (rand, 1, DISCS_MAX + 1), n_outer;
      g_autoptr (GPtrArray) rings = NULL;
      Disc discs[DISCS_MAX];
      double missing;

      for (guint i = 0; i < n; i++)
        discs[i] = (Disc){ { g_rand_double_range (rand, -5.0, WIDTH_MM + 5.0),
                             g_rand_double_range (rand, -5.0, HEIGHT_MM + 5.0) },
                           g_rand_double_range (rand, 1.0, 25.0) };
      rings = cut_discs (discs, n, &n_outer);
      g_test_message ("round %u", round);
      missing = left_by_green (discs, n) - area_of (rings);
      g_assert_cmpfloat (missing, >, -AREA_MM2);
      g_assert_cmpfloat (missing, <, CRUMBS_MM2);
      with_crumbs += missing > AREA_MM2 ? 1 : 0;
      check_arcs (rings, discs, n);
      check_valid (rings, n_outer);
    }
  g_assert_cmpuint (with_crumbs, <=, N_ROUNDS / 100);
}

/* ---- closer than chords stray --------------------------------------------------------------- */

/* The outermost or innermost point of a disc from a place, so much nearer or farther than that. */
static BfVec2
beside_disc (const Disc *disc, double angle, double depth)
{
  return bf_vec2_along (disc->centre, bf_vec2 (cos (angle), sin (angle)), disc->radius - depth);
}

typedef enum
{
  NEAR_CORNER,
  NEAR_EDGE,
  NEAR_DISC_OUTSIDE,
  NEAR_DISC_INSIDE,
  N_NEAR,
} NearWhat;

/* One disc whose circle passes by a corner, or an edge, or another disc's circle outside or inside,
 * or crosses it, by no more than chords stray. */
static guint
place_near (NearWhat what, GRand *rand, Disc *discs)
{
  double depth = g_rand_double_range (rand, -0.015, 0.015);
  double angle = g_rand_double_range (rand, -G_PI, G_PI),
         other = g_rand_double_range (rand, 0.5, 8);

  discs[0] = (Disc){ { 40.0 + g_rand_double (rand), 30.0 + g_rand_double (rand) },
                     g_rand_double_range (rand, 1.0, 15.0) };
  discs[1] = (Disc){ beside_disc (&discs[0], angle, depth - other), other };
  if (what == NEAR_DISC_INSIDE)
    discs[1].centre = beside_disc (&discs[0], angle, depth + other);
  if (what == NEAR_DISC_INSIDE || what == NEAR_DISC_OUTSIDE)
    return 2;
  discs[0].centre = beside_disc (&(Disc){ { 0.0, 0.0 }, discs[0].radius }, angle, depth);
  if (what == NEAR_EDGE)
    discs[0].centre = bf_vec2 (50.0 + angle, (depth < 0 ? -1 : 1) * discs[0].radius + depth);
  return 1;
}

static void
test_near (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (11);

  for (guint round = 0; round < N_NEAR * N_ROUNDS; round++)
    {
      Disc discs[2];
      guint n = place_near ((NearWhat)(round % N_NEAR), rand, discs), n_outer;
      g_autoptr (GPtrArray) rings = cut_discs (discs, n, &n_outer);
      double missing = left_by_green (discs, n) - area_of (rings);

      if (missing <= -AREA_MM2 || missing >= CRUMBS_MM2)
        g_test_message ("round %u: %g mm² missing", round, missing);
      g_assert_cmpfloat (missing, >, -AREA_MM2);
      g_assert_cmpfloat (missing, <, CRUMBS_MM2);
      check_arcs (rings, discs, n);
      check_valid (rings, n_outer);
    }
}

/* Two squares of 10 that overlap by 4 on 4, and a disc in a square of 2: by hand. */
static void
test_areas (void)
{
  const Disc disc = { { 5.0, 5.0 }, 1.0 };
  g_autoptr (GPtrArray) a = new_rings (), b = new_rings (), hole = new_rings ();
  g_autoptr (GPtrArray) common = NULL, less = NULL, holed = NULL, grown = NULL, shrunk = NULL;
  g_autoptr (GPtrArray) none = NULL;
  guint n = 9;

  g_ptr_array_add (a, rectangle (0.0, 0.0, 10.0, 10.0));
  g_ptr_array_add (b, rectangle (6.0, 6.0, 16.0, 16.0));
  g_ptr_array_add (hole, disc_ring (&disc));
  common = bf_overlay_common (a, b, &n);
  g_assert_cmpuint (n, ==, 1);
  g_assert_cmpfloat_with_epsilon (area_of (common), 16.0, 1e-12);
  less = bf_overlay_less (a, b, NULL);
  g_assert_cmpfloat_with_epsilon (area_of (less), 84.0, 1e-12);
  holed = bf_overlay_less (a, hole, &n);
  g_assert_cmpuint (n, ==, 1);
  g_assert_cmpuint (holed->len, ==, 2);
  g_assert_cmpfloat_with_epsilon (area_of (holed), 100.0 - G_PI, AREA_MM2);
  grown = bf_overlay_grown (a, 0.5, &n);
  g_assert_cmpfloat_with_epsilon (area_of (grown), 121.0, 1e-12);
  shrunk = bf_overlay_grown (less, -3.01, &n); /* 6 by 6 less 3 more each side: nothing thick */
  g_assert_cmpuint (n, ==, 0);
  none = bf_overlay_common (shrunk, a, &n);
  g_assert_cmpuint (n, ==, 0);
  g_assert_cmpuint (none->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/overlay/edges", test_edges);
  g_test_add_func ("/overlay/corners", test_corners);
  g_test_add_func ("/overlay/holes", test_holes);
  g_test_add_func ("/overlay/tangent", test_tangent);
  g_test_add_func ("/overlay/circle", test_circle);
  g_test_add_func ("/overlay/again", test_again);
  g_test_add_func ("/overlay/crossing-tool", test_crossing_tool);
  g_test_add_func ("/overlay/spike", test_spike);
  g_test_add_func ("/overlay/flush", test_flush);
  g_test_add_func ("/overlay/nothing-left", test_nothing_left);
  g_test_add_func ("/overlay/no-tools", test_no_tools);
  g_test_add_func ("/overlay/unite", test_unite);
  g_test_add_func ("/overlay/unite-aslant", test_unite_aslant);
  g_test_add_func ("/overlay/simple", test_simple);
  g_test_add_func ("/overlay/areas", test_areas);
  g_test_add_func ("/overlay/random", test_random);
  g_test_add_func ("/overlay/near", test_near);
  return g_test_run ();
}
