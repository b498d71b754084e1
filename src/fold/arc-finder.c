/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/arc-finder.h"

#include "core/tolerance.h"
#include "fold/chord-ends.h"

/* A straight piece shorter than this gives no direction to extend it to an arc by. */
#define SHORTEST_LINE_MM 1e-5

/* The overlay rounds the ends of a piece of a chord to its grid, so that they stray this far. */
#define OFF_CHORD_MM (4.0 * BF_TOLERANCE_SNAP_MM)

/* An arc's circle, and where its chords end: n_ends of the finder's ends, counted from first_end.
 */
typedef struct
{
  BfVec2 centre;
  double radius, from, sweep;
  guint first_end, n_ends;
} Circle;

/* A point that went into the overlay. circle: index of a circle it is a chord's end of, or −1;
 * where a line meets an arc, or two arcs meet, only a point that lies on some other arc too is
 * taken for an end of that one's chords. */
typedef struct
{
  gint64 key_x, key_y;
  BfVec2 exact;
  int circle;
} Known;

struct _BfArcFinder
{
  GArray *circles;   /* Circle */
  GArray *ends;      /* BfChordEnd, of all circles */
  GArray *beside;    /* BfNearRing, or NULL */
  GHashTable *known; /* Known, by snapped place */
};

static guint
known_hash (gconstpointer p)
{
  const Known *k = p;
  guint64 h = (guint64)k->key_x * 0x9E3779B97F4A7C15u ^ (guint64)k->key_y * 0xC2B2AE3D27D4EB4Fu;
  return (guint)(h >> 32 ^ h);
}

static gboolean
known_equal (gconstpointer a, gconstpointer b)
{
  const Known *x = a, *y = b;
  return x->key_x == y->key_x && x->key_y == y->key_y;
}

static gint64
snap (double x)
{
  return (gint64)floor (x / BF_TOLERANCE_SNAP_MM + 0.5);
}

BfArcFinder *
bf_arc_finder_new (void)
{
  BfArcFinder *finder = g_new0 (BfArcFinder, 1);

  finder->circles = g_array_new (FALSE, FALSE, sizeof (Circle));
  finder->ends = g_array_new (FALSE, FALSE, sizeof (BfChordEnd));
  finder->known = g_hash_table_new_full (known_hash, known_equal, g_free, NULL);
  return finder;
}

void
bf_arc_finder_free (BfArcFinder *finder)
{
  g_array_unref (finder->circles);
  g_array_unref (finder->ends);
  g_clear_pointer (&finder->beside, g_array_unref);
  g_hash_table_unref (finder->known);
  g_free (finder);
}

void
bf_arc_finder_set_beside (BfArcFinder *finder, const GPtrArray *rings, const GPtrArray *more)
{
  const GPtrArray *both[] = { rings, more };

  g_clear_pointer (&finder->beside, g_array_unref);
  finder->beside = g_array_new (FALSE, FALSE, sizeof (BfNearRing));
  g_array_set_clear_func (finder->beside, (GDestroyNotify)bf_near_ring_clear);
  for (guint k = 0; k < G_N_ELEMENTS (both); k++)
    for (guint i = 0; both[k] != NULL && i < both[k]->len; i++)
      {
        BfNearRing near;

        bf_near_ring_init (&near, g_ptr_array_index (both[k], i));
        g_array_append_val (finder->beside, near);
      }
}

/* A point that is known already stays the circle's that it was found on. */
static void
remember (BfArcFinder *finder, BfVec2 p, int circle)
{
  Known *k = g_new (Known, 1);
  const Known *old;

  *k = (Known){ snap (p.x), snap (p.y), p, circle };
  old = g_hash_table_lookup (finder->known, k);
  if (old != NULL && circle < 0)
    k->circle = old->circle;
  g_hash_table_replace (finder->known, k, k);
}

static void
flatten_arc (BfArcFinder *finder, const BfRing *ring, guint i, GArray *points)
{
  Circle circle = { .first_end = finder->ends->len };
  int index = (int)finder->circles->len;
  BfArc arc;

  bf_ring_arc (ring, i, &arc);
  bf_chord_ends_find (ring, i, finder->beside, finder->ends);
  circle = (Circle){ arc.centre, arc.radius,       arc.from,
                     arc.sweep,  circle.first_end, finder->ends->len - circle.first_end };
  g_array_append_val (finder->circles, circle);
  for (guint k = 1; k + 1 < circle.n_ends; k++)
    {
      BfVec2 p = g_array_index (finder->ends, BfChordEnd, circle.first_end + k).p;

      remember (finder, p, index);
      g_array_append_val (points, p);
    }
}

void
bf_arc_finder_flatten (BfArcFinder *finder, const BfRing *ring, GArray *points)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      BfVec2 p = bf_ring_vertex (ring, i)->p;
      BfArc arc;

      remember (finder, p, -1);
      g_array_append_val (points, p);
      if (bf_ring_arc (ring, i, &arc))
        flatten_arc (finder, ring, i, points);
    }
}

/* ---- restoring ---------------------------------------------------------------------------- */

typedef struct
{
  BfVec2 p;
  gboolean exact; /* it went into the overlay as it is */
  int circle;     /* of the chord end it is, or −1 */
  int leaving;    /* circle of the piece that leaves it, or −1 for a line */
} Point;

static const Known *
look_up (const BfArcFinder *finder, BfVec2 p)
{
  Known key = { snap (p.x), snap (p.y), p, -1 };
  const Known *found = g_hash_table_lookup (finder->known, &key);
  gint64 x = key.key_x, y = key.key_y;

  /* The overlay may round a point that lies between two grid places to either. */
  for (int i = 0; i < 9 && found == NULL; i++)
    {
      key.key_x = x + i % 3 - 1;
      key.key_y = y + i / 3 - 1;
      found = g_hash_table_lookup (finder->known, &key);
    }
  return found;
}

static double
off_line (BfVec2 p, BfVec2 from, BfVec2 to)
{
  return fabs (bf_vec2_cross (bf_vec2_unit (bf_vec2_sub (to, from)), bf_vec2_sub (p, from)));
}

/* The last of the circle's ends, but for the very last, that is not beyond that turn. */
static const BfChordEnd *
end_before (const BfArcFinder *finder, const Circle *circle, double turned)
{
  const BfChordEnd *ends = &g_array_index (finder->ends, BfChordEnd, circle->first_end);
  guint from = 0, to = circle->n_ends - 1;

  while (to - from > 1)
    {
      guint middle = (from + to) / 2;

      if (ends[middle].turned_rad <= turned)
        from = middle;
      else
        to = middle;
    }
  return &ends[from];
}

/* TRUE where a and b lie on one chord: the one below the middle between them. A line that merely
 * runs close by an arc does not. */
static gboolean
is_chord_of (const BfArcFinder *finder, const Circle *circle, BfVec2 a, BfVec2 b)
{
  BfVec2 middle = bf_vec2_sub (bf_vec2_scale (bf_vec2_add (a, b), 0.5), circle->centre);
  double turns;
  const BfChordEnd *from;

  if (fabs (bf_vec2_length (middle) - circle->radius) > 2.0 * BF_CHORD_SAGITTA_MM)
    return FALSE;
  turns = (atan2 (middle.y, middle.x) - circle->from) / (circle->sweep < 0.0 ? -2.0 : 2.0) / G_PI;
  from = end_before (finder, circle, (turns - floor (turns)) * 2.0 * G_PI);
  return off_line (a, from[0].p, from[1].p) < OFF_CHORD_MM &&
         off_line (b, from[0].p, from[1].p) < OFF_CHORD_MM;
}

/* The circle whose chord leads from one point to the next, or −1. A chord's end that was known
 * mostly names it; else it must be looked for among all. */
static int
circle_between (const BfArcFinder *finder, const Point *a, const Point *b)
{
  int ends[] = { a->circle, b->circle };

  for (int i = 0; i < 2; i++)
    if (ends[i] >= 0 &&
        is_chord_of (finder, &g_array_index (finder->circles, Circle, ends[i]), a->p, b->p))
      return ends[i];
  if (a->exact && b->exact && a->circle < 0 && b->circle < 0)
    return -1;
  for (guint i = 0; i < finder->circles->len; i++)
    if (is_chord_of (finder, &g_array_index (finder->circles, Circle, i), a->p, b->p))
      return (int)i;
  return -1;
}

static GArray *
recognise (const BfArcFinder *finder, const BfVec2 *points, guint n)
{
  GArray *out = g_array_sized_new (FALSE, FALSE, sizeof (Point), n);

  for (guint i = 0; i < n; i++)
    {
      const Known *known = look_up (finder, points[i]);
      Point p = { points[i], known != NULL, known != NULL ? known->circle : -1, -1 };

      if (known != NULL)
        p.p = known->exact;
      g_array_append_val (out, p);
    }
  for (guint i = 0; i < n; i++)
    {
      Point *a = &g_array_index (out, Point, i);
      a->leaving = circle_between (finder, a, &g_array_index (out, Point, (i + 1) % n));
    }
  return out;
}

/* The crossing, nearest p, of a circle with the line through `from` and p. */
static BfVec2
line_on_circle (const Circle *circle, BfVec2 from, BfVec2 p)
{
  BfVec2 d = bf_vec2_sub (p, from);
  double length = bf_vec2_length (d), along, half;
  BfVec2 out = bf_vec2_unit (bf_vec2_sub (p, circle->centre));

  if (length < SHORTEST_LINE_MM)
    return bf_vec2_along (circle->centre, out, circle->radius);
  d = bf_vec2_scale (d, 1.0 / length);
  along = bf_vec2_dot (bf_vec2_sub (circle->centre, from), d);
  half = circle->radius * circle->radius -
         pow (bf_vec2_cross (d, bf_vec2_sub (circle->centre, from)), 2.0);
  half = sqrt (MAX (half, 0.0));
  along += fabs (along + half - length) < fabs (along - half - length) ? half : -half;
  return bf_vec2_along (from, d, along);
}

/* The crossing of two circles nearest p; p itself where they only touch. */
static BfVec2
circle_on_circle (const Circle *a, const Circle *b, BfVec2 p)
{
  BfVec2 d = bf_vec2_sub (b->centre, a->centre);
  double length = bf_vec2_length (d), along, half;
  BfVec2 foot, side;

  if (length < BF_TOLERANCE_SIZE_MM)
    return p;
  d = bf_vec2_scale (d, 1.0 / length);
  along = (length * length + a->radius * a->radius - b->radius * b->radius) / (2.0 * length);
  half = sqrt (MAX (a->radius * a->radius - along * along, 0.0));
  foot = bf_vec2_along (a->centre, d, along);
  side = bf_vec2 (-d.y, d.x);
  return bf_vec2_along (foot, side, bf_vec2_dot (bf_vec2_sub (p, foot), side) > 0.0 ? half : -half);
}

/* Puts a point that the overlay made between an arc and something else where it truly is. */
static void
refine (const BfArcFinder *finder, GArray *points, guint i)
{
  guint n = points->len;
  Point *p = &g_array_index (points, Point, i);
  const Point *before = &g_array_index (points, Point, (i + n - 1) % n);
  const Point *after = &g_array_index (points, Point, (i + 1) % n);
  int in = before->leaving, out = p->leaving;
  const Circle *circles = (const Circle *)(gpointer)finder->circles->data;

  if (p->exact || in == out)
    return;
  if (in >= 0 && out >= 0)
    p->p = circle_on_circle (&circles[in], &circles[out], p->p);
  else
    p->p = line_on_circle (&circles[in >= 0 ? in : out], in >= 0 ? after->p : before->p, p->p);
}

static double
sweep_between (const Circle *circle, BfVec2 a, BfVec2 b)
{
  BfVec2 x = bf_vec2_sub (a, circle->centre), y = bf_vec2_sub (b, circle->centre);
  return atan2 (bf_vec2_cross (x, y), bf_vec2_dot (x, y));
}

/* An arc of at most half a turn a vertex, so that its bulge stays small. */
static void
add_arc (BfRing *ring, const Circle *circle, BfVec2 from, double sweep)
{
  guint n = fabs (sweep) > G_PI + BF_TOLERANCE_SIZE_MM ? 2 : 1;
  double angle = atan2 (from.y - circle->centre.y, from.x - circle->centre.x);

  for (guint i = 0; i < n; i++)
    {
      double a = angle + sweep * i / n;
      BfVec2 p = { circle->centre.x + circle->radius * cos (a),
                   circle->centre.y + circle->radius * sin (a) };
      bf_ring_add (ring, i == 0 ? from : p, tan (sweep / n / 4.0));
    }
}

/* Putting points where they truly are may leave a line without length. */
static void
add_line (BfRing *ring, BfVec2 from, BfVec2 to)
{
  if (bf_vec2_distance (from, to) > 2.0 * BF_TOLERANCE_SNAP_MM)
    bf_ring_add (ring, from, 0.0);
}

/* A point at which the ring changes from one line or arc to another, to start from. */
static guint
first_joint (const GArray *points)
{
  for (guint i = 0; i < points->len; i++)
    {
      int in = g_array_index (points, Point, (i + points->len - 1) % points->len).leaving;
      int out = g_array_index (points, Point, i).leaving;

      if (in != out || out < 0)
        return i;
    }
  return 0;
}

BfRing *
bf_arc_finder_restore (const BfArcFinder *finder, const BfVec2 *raw, guint n)
{
  g_autoptr (GArray) points = recognise (finder, raw, n);
  BfRing *ring = bf_ring_new ();
  guint first = first_joint (points), used = 0;

  for (guint i = 0; i < n; i++)
    refine (finder, points, i);
  while (used < n)
    {
      const Point *p = &g_array_index (points, Point, (first + used) % n);
      const Circle *circle;
      double sweep = 0.0;
      BfVec2 at = p->p;
      int leaving = p->leaving;

      if (leaving < 0)
        {
          add_line (ring, at, g_array_index (points, Point, (first + used + 1) % n).p);
          used++;
          continue;
        }
      circle = &g_array_index (finder->circles, Circle, leaving);
      for (; used < n && g_array_index (points, Point, (first + used) % n).leaving == leaving;
           used++)
        sweep += sweep_between (circle, g_array_index (points, Point, (first + used) % n).p,
                                g_array_index (points, Point, (first + used + 1) % n).p);
      add_arc (ring, circle, at, sweep);
    }
  return ring;
}
