/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/box-pack.h"
#include "paint/corner-pieces.h"

#include "make-part.h"

/* Which pieces corners only are cut into, and how they are laid on pages. */

#define SLACK 1e-6

static const BfVec2 a4_room = { 186.0, 239.5 };
static const BfVec2 caption = { 59.0, 17.6 };

static void
add_box (GArray *boxes, double width_mm, double height_mm)
{
  BfPackedBox box = { .size = { width_mm, height_mm } };

  g_array_append_val (boxes, box);
}

static void
assert_packed (const GArray *boxes, BfVec2 room, guint n_pages)
{
  for (guint i = 0; i < boxes->len; i++)
    {
      const BfPackedBox *a = &g_array_index (boxes, BfPackedBox, i);
      g_assert_cmpuint (a->page, <, n_pages);
      g_assert_cmpfloat (a->place.x, >=, 0.0);
      g_assert_cmpfloat (a->place.y, >=, 0.0);
      g_assert_cmpfloat (a->place.x + a->size.x, <=, room.x + SLACK);
      g_assert_cmpfloat (a->place.y + a->size.y, <=, room.y + SLACK);
      for (guint k = 0; k < i; k++)
        {
          const BfPackedBox *b = &g_array_index (boxes, BfPackedBox, k);
          g_assert_true (a->page != b->page || a->place.x + a->size.x <= b->place.x + SLACK ||
                         b->place.x + b->size.x <= a->place.x + SLACK ||
                         a->place.y + a->size.y <= b->place.y + SLACK ||
                         b->place.y + b->size.y <= a->place.y + SLACK);
        }
    }
}

/* Counted by hand. */
static const struct
{
  guint n;
  double width_mm, height_mm;
  guint n_pages;
} alike[] = {
  { 1, 100.0, 100.0, 1 }, { 4, 50.0, 50.0, 1 }, { 5, 50.0, 50.0, 2 },
  { 2, 100.0, 50.0, 1 },  { 3, 51.0, 51.0, 3 }, { 8, 25.0, 50.0, 1 },
};

static void
test_alike (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (alike); i++)
    {
      g_autoptr (GArray) boxes = g_array_new (FALSE, TRUE, sizeof (BfPackedBox));
      BfVec2 room = { 100.0, 100.0 };
      guint n_pages;

      for (guint k = 0; k < alike[i].n; k++)
        add_box (boxes, alike[i].width_mm, alike[i].height_mm);
      n_pages = bf_box_pack (boxes, room);
      g_assert_cmpuint (n_pages, ==, alike[i].n_pages);
      assert_packed (boxes, room, n_pages);
    }
}

/* By lot: never on top of each other, and never more than twice the paper that their area takes,
 * and one page (what shelves filled one after another would need; by trial). */
static void
test_by_lot (void)
{
  for (guint seed = 0; seed < 50; seed++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
      g_autoptr (GArray) boxes = g_array_new (FALSE, TRUE, sizeof (BfPackedBox));
      double area = 0.0;
      guint n_pages;

      for (int k = g_rand_int_range (rand, 1, 40); k > 0; k--)
        {
          double width = g_rand_double_range (rand, 5.0, 60.0);
          double height = g_rand_double_range (rand, 5.0, 60.0);
          add_box (boxes, width, height);
          area += width * height;
        }
      n_pages = bf_box_pack (boxes, a4_room);
      assert_packed (boxes, a4_room, n_pages);
      g_assert_cmpfloat (n_pages, <=, 2.0 * area / (a4_room.x * a4_room.y) + 1.0);
    }
}

static gboolean
is_shown (const BfCornerPieces *pieces, BfVec2 p)
{
  for (guint i = 0; i < pieces->pieces->len; i++)
    {
      const BfBox *box = &bf_corner_piece (pieces, i)->box;
      if (p.x > box->min.x + 5.0 && p.x < box->max.x - 5.0 && p.y > box->min.y + 5.0 &&
          p.y < box->max.y - 5.0)
        return TRUE;
    }
  return FALSE;
}

/* Every corner, relief and end of a bend line of a large tray is on some piece, with metal round
 * it to see its edges by; no piece is larger than a page, and each cross lies on its piece. */
static void
test_tray (void)
{
  g_autoptr (BfPart) part = make_tray (600.0, 400.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfCornerPieces) pieces = bf_corner_pieces_new (fold, a4_room, caption);
  const BfRing *ring = bf_blank_ring (&fold->blank, 0);

  g_assert_cmpuint (pieces->n_pages, ==, 1);
  g_assert_cmpuint (pieces->pieces->len, ==, 4);
  for (guint i = 0; i < bf_ring_size (ring); i++)
    g_assert_true (is_shown (pieces, bf_ring_vertex (ring, i)->p));
  for (guint i = 0; i < fold->reliefs->len; i++)
    g_assert_true (is_shown (pieces, bf_fold_relief (fold, i)->at));
  for (guint i = 0; i < fold->bends->len; i++)
    for (int end = 0; end < 2; end++)
      g_assert_true (is_shown (pieces, bf_fold_bend (fold, i)->line[end]));
  for (guint i = 0; i < pieces->pieces->len; i++)
    {
      const BfCornerPiece *piece = bf_corner_piece (pieces, i);
      gboolean is_relief = FALSE;
      g_assert_cmpfloat (piece->box.max.x - piece->box.min.x, <=, a4_room.x);
      g_assert_cmpfloat (piece->box.max.y - piece->box.min.y, <=, a4_room.y - caption.y);
      for (guint k = 0; k < fold->reliefs->len; k++)
        is_relief |= bf_vec2_distance (piece->cross, bf_fold_relief (fold, k)->at) < SLACK;
      g_assert_true (is_relief);
    }
}

/* A cut-out larger than the page comes as its corners. */
static void
test_large_hole (void)
{
  static const BfVec2 corners[] = { { 50, 50 }, { 50, 350 }, { 550, 350 }, { 550, 50 } };
  g_autoptr (BfPart) part = make_tray (600.0, 400.0, 40.0, 90.0);
  g_autoptr (BfFold) fold = bf_fold (part);
  g_autoptr (BfCornerPieces) pieces = NULL;
  BfRing *hole = bf_ring_new ();

  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    bf_ring_add (hole, corners[i], 0.0);
  g_ptr_array_add (fold->blank.rings, hole);
  pieces = bf_corner_pieces_new (fold, a4_room, caption);
  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    g_assert_true (is_shown (pieces, corners[i]));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/corner-pieces/alike", test_alike);
  g_test_add_func ("/corner-pieces/by-lot", test_by_lot);
  g_test_add_func ("/corner-pieces/tray", test_tray);
  g_test_add_func ("/corner-pieces/large-hole", test_large_hole);
  return g_test_run ();
}
