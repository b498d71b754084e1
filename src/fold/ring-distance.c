/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/ring-distance.h"

void
bf_flat_ring_init (BfFlatRing *flat, const BfRing *ring)
{
  flat->ring = ring;
  flat->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  flat->box = bf_box_empty ();
  bf_ring_flatten (ring, BF_FLAT_SAGITTA_MM, flat->points);
  bf_ring_extend_box (ring, &flat->box);
}

void
bf_flat_ring_clear (BfFlatRing *flat)
{
  g_clear_pointer (&flat->points, g_array_unref);
}

/* A straight piece of a ring. */
typedef struct
{
  BfVec2 from, to;
} Piece;

static Piece
piece (const BfFlatRing *flat, guint i)
{
  guint n = flat->points->len;

  return (Piece){ g_array_index (flat->points, BfVec2, i),
                  g_array_index (flat->points, BfVec2, (i + 1) % n) };
}

static double
point_to_piece (BfVec2 p, const Piece *piece)
{
  BfVec2 along = bf_vec2_sub (piece->to, piece->from);
  double length2 = bf_vec2_dot (along, along);
  double way = length2 > 0.0 ? bf_vec2_dot (bf_vec2_sub (p, piece->from), along) / length2 : 0.0;

  return bf_vec2_distance (p, bf_vec2_along (piece->from, along, CLAMP (way, 0.0, 1.0)));
}

static double
side_of (const Piece *piece, BfVec2 p)
{
  return bf_vec2_cross (bf_vec2_sub (piece->to, piece->from), bf_vec2_sub (p, piece->from));
}

static gboolean
pieces_cross (const Piece *a, const Piece *b)
{
  return side_of (a, b->from) * side_of (a, b->to) < 0.0 &&
         side_of (b, a->from) * side_of (b, a->to) < 0.0;
}

static double
piece_to_piece (const Piece *a, const Piece *b)
{
  double from = MIN (point_to_piece (a->from, b), point_to_piece (a->to, b));
  double to = MIN (point_to_piece (b->from, a), point_to_piece (b->to, a));

  return pieces_cross (a, b) ? 0.0 : MIN (from, to);
}

/* How far two boxes are apart; 0 where they meet. */
static double
box_gap (const BfBox *a, const BfBox *b)
{
  double x = MAX (a->min.x - b->max.x, b->min.x - a->max.x);
  double y = MAX (a->min.y - b->max.y, b->min.y - a->max.y);

  return MAX (MAX (x, y), 0.0);
}

static BfBox
piece_box (const Piece *piece)
{
  BfBox box = bf_box_empty ();

  bf_box_extend (&box, piece->from);
  bf_box_extend (&box, piece->to);
  return box;
}

double
bf_flat_ring_distance (const BfFlatRing *a, const BfFlatRing *b, double limit_mm, BfVec2 *place)
{
  double least = limit_mm;

  if (box_gap (&a->box, &b->box) >= limit_mm)
    return limit_mm;
  for (guint i = 0; i < a->points->len; i++)
    {
      Piece own = piece (a, i);
      BfBox own_box = piece_box (&own);

      if (box_gap (&own_box, &b->box) >= least)
        continue;
      for (guint k = 0; k < b->points->len; k++)
        {
          Piece other = piece (b, k);
          BfBox other_box = piece_box (&other);
          double distance = box_gap (&own_box, &other_box);

          if (distance < least)
            distance = piece_to_piece (&own, &other);
          if (distance >= least)
            continue;
          least = distance;
          if (place != NULL)
            *place = own.from;
        }
    }
  return least;
}

double
bf_flat_ring_distance_to (const BfFlatRing *flat, BfVec2 p)
{
  double least = G_MAXDOUBLE;

  for (guint i = 0; i < flat->points->len; i++)
    {
      Piece own = piece (flat, i);

      least = MIN (least, point_to_piece (p, &own));
    }
  return least;
}
