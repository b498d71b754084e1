/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/corner-pieces.h"

#include "make/drill-list.h"
#include "paint/box-pack.h"

#define ROUND_PLACE_MM 7.0 /* shown round a corner, so that the edges' directions are seen */
#define APART_MM 3.0       /* between pieces on a page */

/* How far apart what makes one piece may lie; each is tried. */
static const double reaches_mm[] = { 0.0, 12.0, 25.0, 40.0, 60.0, 90.0 };

static gboolean
is_larger (const BfBox *box, BfVec2 most)
{
  return box->max.x - box->min.x > most.x || box->max.y - box->min.y > most.y;
}

static void
add_box (GArray *places, BfBox box)
{
  box.min = bf_vec2_sub (box.min, bf_vec2 (ROUND_PLACE_MM, ROUND_PLACE_MM));
  box.max = bf_vec2_add (box.max, bf_vec2 (ROUND_PLACE_MM, ROUND_PLACE_MM));
  g_array_append_val (places, box);
}

static void
add_point (GArray *places, BfVec2 p)
{
  BfBox box = { p, p };

  add_box (places, box);
}

static void
add_corners (GArray *places, const BfRing *ring)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    add_point (places, bf_ring_vertex (ring, i)->p);
}

/* A hole too large for a page is shown by its corners. */
static void
add_hole (GArray *places, const BfRing *ring, BfVec2 most)
{
  BfBox box = bf_box_empty ();

  bf_ring_extend_box (ring, &box);
  if (is_larger (&box, bf_vec2_sub (most, bf_vec2 (2.0 * ROUND_PLACE_MM, 2.0 * ROUND_PLACE_MM))))
    add_corners (places, ring);
  else
    add_box (places, box);
}

/* BfBox of all that is to be shown, each no larger than most. */
static GArray *
collect_places (const BfFold *fold, BfVec2 most)
{
  GArray *places = g_array_new (FALSE, FALSE, sizeof (BfBox));

  for (guint i = 0; i < fold->blank.rings->len; i++)
    if (i < fold->blank.n_outer)
      add_corners (places, bf_blank_ring (&fold->blank, i));
    else
      add_hole (places, bf_blank_ring (&fold->blank, i), most);
  for (guint i = 0; i < fold->reliefs->len; i++)
    add_hole (places, bf_fold_relief (fold, i)->ring, most);
  for (guint i = 0; i < fold->bends->len; i++)
    for (int end = 0; end < 2; end++)
      add_point (places, bf_fold_bend (fold, i)->line[end]);
  if (places->len == 0)
    add_point (places, bf_vec2 (0.0, 0.0));
  return places;
}

static double
box_area (const BfBox *box)
{
  return (box->max.x - box->min.x) * (box->max.y - box->min.y);
}

static BfBox
both (const BfBox *a, const BfBox *b)
{
  return (BfBox){ { MIN (a->min.x, b->min.x), MIN (a->min.y, b->min.y) },
                  { MAX (a->max.x, b->max.x), MAX (a->max.y, b->max.y) } };
}

/* From one box to the other, along the axis where they lie further apart. */
static double
gap_between (const BfBox *a, const BfBox *b)
{
  double x = MAX (a->min.x - b->max.x, b->min.x - a->max.x);
  double y = MAX (a->min.y - b->max.y, b->min.y - a->max.y);

  return MAX (x, y);
}

/* The pair whose joining adds the least paper. FALSE where none may be joined. */
static gboolean
find_pair (const GArray *boxes, double reach_mm, BfVec2 most, guint pair[2])
{
  double least = HUGE_VAL;

  for (guint i = 0; i < boxes->len; i++)
    for (guint k = i + 1; k < boxes->len; k++)
      {
        const BfBox *a = &g_array_index (boxes, BfBox, i), *b = &g_array_index (boxes, BfBox, k);
        BfBox joined = both (a, b);
        double added = box_area (&joined) - box_area (a) - box_area (b);
        if (added >= least || gap_between (a, b) > reach_mm || is_larger (&joined, most))
          continue;
        least = added;
        pair[0] = i;
        pair[1] = k;
      }
  return least < HUGE_VAL;
}

/* places: BfBox, joined in place. */
static void
join_places (GArray *places, double reach_mm, BfVec2 most)
{
  guint pair[2];

  while (find_pair (places, reach_mm, most, pair))
    {
      BfBox *kept = &g_array_index (places, BfBox, pair[0]);
      *kept = both (kept, &g_array_index (places, BfBox, pair[1]));
      g_array_remove_index (places, pair[1]);
    }
}

static gboolean
box_holds (const BfBox *box, BfVec2 p)
{
  return p.x > box->min.x && p.x < box->max.x && p.y > box->min.y && p.y < box->max.y;
}

static void
offer_cross (BfCornerPiece *piece, BfVec2 p, double *nearest)
{
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (piece->box.min, piece->box.max), 0.5);
  double distance = bf_vec2_distance (p, middle);

  if (!box_holds (&piece->box, p) || distance >= *nearest)
    return;
  *nearest = distance;
  piece->cross = p;
}

/* A drill's middle near the piece's, else the nearest corner of a contour, else the middle. */
static void
choose_cross (const BfFold *fold, BfCornerPiece *piece)
{
  g_autoptr (GArray) centres = bf_centre_list (fold);
  double nearest = HUGE_VAL;

  piece->cross = bf_vec2_scale (bf_vec2_add (piece->box.min, piece->box.max), 0.5);
  for (guint i = 0; i < centres->len; i++)
    offer_cross (piece, bf_drilled (centres, i)->at, &nearest);
  if (nearest < HUGE_VAL)
    return;
  for (guint i = 0; i < fold->blank.rings->len; i++)
    for (guint k = 0; k < bf_ring_size (bf_blank_ring (&fold->blank, i)); k++)
      offer_cross (piece, bf_ring_vertex (bf_blank_ring (&fold->blank, i), k)->p, &nearest);
}

static GArray *
boxes_to_pack (const GArray *places, BfVec2 caption)
{
  GArray *boxes = g_array_sized_new (FALSE, TRUE, sizeof (BfPackedBox), places->len);

  for (guint i = 0; i < places->len; i++)
    {
      const BfBox *box = &g_array_index (places, BfBox, i);
      BfPackedBox packed = { .size = bf_vec2_sub (box->max, box->min) };
      packed.size.x = MAX (packed.size.x, caption.x) + APART_MM;
      packed.size.y += caption.y + APART_MM;
      g_array_append_val (boxes, packed);
    }
  return boxes;
}

static int
compare_pieces (gconstpointer a, gconstpointer b)
{
  const BfCornerPiece *x = a, *y = b;

  if (x->page != y->page)
    return x->page < y->page ? -1 : 1;
  if (fabs (x->place.y - y->place.y) > 1.0)
    return x->place.y < y->place.y ? -1 : 1;
  return (x->place.x > y->place.x) - (x->place.x < y->place.x);
}

static BfCornerPieces *
lay_out (const BfFold *fold, const GArray *places, BfVec2 room, BfVec2 caption)
{
  BfCornerPieces *pieces = g_new0 (BfCornerPieces, 1);
  g_autoptr (GArray) boxes = boxes_to_pack (places, caption);

  pieces->n_pages = bf_box_pack (boxes, bf_vec2_add (room, bf_vec2 (APART_MM, APART_MM)));
  pieces->pieces = g_array_new (FALSE, FALSE, sizeof (BfCornerPiece));
  for (guint i = 0; i < places->len; i++)
    {
      const BfPackedBox *packed = &g_array_index (boxes, BfPackedBox, i);
      BfCornerPiece piece = { .box = g_array_index (places, BfBox, i),
                              .page = packed->page,
                              .place = packed->place };
      choose_cross (fold, &piece);
      g_array_append_val (pieces->pieces, piece);
    }
  g_array_sort (pieces->pieces, compare_pieces);
  return pieces;
}

static gboolean
is_better (const BfCornerPieces *a, const BfCornerPieces *b)
{
  return b == NULL || a->n_pages < b->n_pages ||
         (a->n_pages == b->n_pages && a->pieces->len < b->pieces->len);
}

BfCornerPieces *
bf_corner_pieces_new (const BfFold *fold, BfVec2 room, BfVec2 caption)
{
  BfVec2 most = { room.x, room.y - caption.y };
  g_autoptr (BfCornerPieces) best = NULL;
  g_autoptr (GArray) places = NULL;

  g_return_val_if_fail (fold != NULL, NULL);

  places = collect_places (fold, most);
  for (guint i = 0; i < G_N_ELEMENTS (reaches_mm); i++)
    {
      g_autoptr (BfCornerPieces) tried = NULL;
      join_places (places, reaches_mm[i], most);
      tried = lay_out (fold, places, room, caption);
      if (!is_better (tried, best))
        continue;
      g_clear_pointer (&best, bf_corner_pieces_free);
      best = g_steal_pointer (&tried);
    }
  return g_steal_pointer (&best);
}

void
bf_corner_pieces_free (BfCornerPieces *pieces)
{
  g_array_unref (pieces->pieces);
  g_free (pieces);
}
