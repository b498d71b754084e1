/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/field-places.h"

/* Fields find places: whole on the surface, beside their edges, not on each other. */

static const BfBox room = { { 0.0, 0.0 }, { 800.0, 600.0 } };

/* A strip below a base that ends at y = 300, from x = 200 to 500, that high. */
static BfFieldAsk
strip_below (double high)
{
  return (BfFieldAsk){ .edge = { { 200.0, 300.0 + high }, { 500.0, 300.0 + high } },
                       .outward = { 0.0, 1.0 },
                       .strip = { { 200.0, 300.0 },
                                  { 500.0, 300.0 },
                                  { 500.0, 300.0 + high },
                                  { 200.0, 300.0 + high } },
                       .row = { 130.0, 24.0 },
                       .stack = { 50.0, 64.0 } };
}

static BfBox
box_of (const BfFieldAsk *ask, const BfFieldPlace *place)
{
  BfVec2 size = place->stacked ? ask->stack : ask->row;
  return (BfBox){ place->at, bf_vec2_add (place->at, size) };
}

/* Places with one box to keep off, or none. */
static void
place (
    const BfFieldAsk *asks, guint n, const BfBox *in, const BfBox *keep_off, BfFieldPlace *places)
{
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (BfBox));

  if (keep_off != NULL)
    g_array_append_vals (boxes, keep_off, 1);
  bf_field_places (asks, n, in, boxes, places);
}

static gboolean
overlap (BfBox a, BfBox b)
{
  return a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y;
}

static void
test_within_a_strip_that_has_room (void)
{
  BfFieldAsk ask = strip_below (40.0);
  BfFieldPlace found;

  place (&ask, 1, &room, NULL, &found);
  g_assert_true (found.shown && !found.stacked);
  g_assert_cmpfloat_with_epsilon (found.at.x, 285.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (found.at.y, 308.0, 1e-9);
}

static void
test_beyond_a_strip_that_has_none (void)
{
  BfFieldAsk ask = strip_below (20.0);
  BfFieldPlace found;

  place (&ask, 1, &room, NULL, &found);
  g_assert_true (found.shown);
  g_assert_cmpfloat (found.at.y, >, 320.0);
}

/* A lip on a wall: both fields are off each other, and the wall's are not on the lip. */
static void
test_off_each_other_and_off_metal (void)
{
  BfFieldAsk asks[2] = { strip_below (20.0), strip_below (10.0) };
  BfFieldPlace places[2];

  for (guint k = 0; k < 4; k++)
    asks[1].strip[k].y += 20.0;
  for (guint k = 0; k < 2; k++)
    asks[1].edge[k].y += 20.0;
  place (asks, 2, &room, NULL, places);
  BfBox wall = box_of (&asks[0], &places[0]);
  BfBox lip = box_of (&asks[1], &places[1]);
  g_assert_true (places[0].shown && places[1].shown);
  g_assert_false (overlap (wall, lip));
  g_assert_cmpfloat (wall.min.y, >, 330.0);
  g_assert_cmpfloat (lip.min.y, >, 330.0);
}

static void
test_beside_an_upright_edge_in_a_stack (void)
{
  BfFieldAsk ask = {
    .edge = { { 500.0, 300.0 }, { 500.0, 100.0 } },
    .outward = { 1.0, 0.0 },
    .strip = { { 480.0, 300.0 }, { 500.0, 300.0 }, { 500.0, 100.0 }, { 480.0, 100.0 } },
    .row = { 130.0, 24.0 },
    .stack = { 50.0, 64.0 }
  };
  BfFieldPlace found;

  place (&ask, 1, &room, NULL, &found);
  g_assert_true (found.shown && found.stacked);
  g_assert_cmpfloat_with_epsilon (found.at.x, 508.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (found.at.y, 168.0, 1e-9);
}

static void
test_base_sizes_stand_inside (void)
{
  BfFieldAsk ask = { .edge = { { 200.0, 300.0 }, { 500.0, 300.0 } },
                     .outward = { 0.0, 1.0 },
                     .inside = TRUE,
                     .row = { 50.0, 24.0 },
                     .stack = { 50.0, 24.0 } };
  BfFieldPlace found;

  place (&ask, 1, &room, NULL, &found);
  g_assert_true (found.shown);
  g_assert_cmpfloat (found.at.y + 24.0, <, 300.0);
}

/* No room on the surface: hidden, but for one that is typed in. */
static void
test_hidden_unless_it_must (void)
{
  BfBox little = { { 0.0, 0.0 }, { 800.0, 310.0 } };
  BfFieldAsk ask = strip_below (20.0);
  BfFieldPlace found;

  place (&ask, 1, &little, NULL, &found);
  g_assert_false (found.shown);
  ask.must = TRUE;
  place (&ask, 1, &little, NULL, &found);
  g_assert_true (found.shown);
  g_assert_cmpfloat (found.at.y + 24.0, <=, 310.0);
}

static void
test_keeps_off_the_formed_part (void)
{
  BfBox formed = { { 0.0, 320.0 }, { 800.0, 600.0 } };
  BfFieldAsk ask = strip_below (20.0);
  BfFieldPlace found;

  place (&ask, 1, &room, &formed, &found);
  g_assert_false (found.shown);
}

/* A hole in the middle of a strip: the fields stand aside of it, on the strip still. */
static void
test_keeps_off_holes (void)
{
  BfBox hole = { { 342.0, 310.0 }, { 358.0, 330.0 } };
  BfFieldAsk ask = strip_below (40.0);
  BfFieldPlace found;

  place (&ask, 1, &room, &hole, &found);
  g_assert_true (found.shown);
  g_assert_false (overlap (box_of (&ask, &found), hole));
  g_assert_cmpfloat (found.at.y + 24.0, <, 340.0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/field-places/within-a-strip", test_within_a_strip_that_has_room);
  g_test_add_func ("/field-places/beyond-a-strip", test_beyond_a_strip_that_has_none);
  g_test_add_func ("/field-places/off-each-other", test_off_each_other_and_off_metal);
  g_test_add_func ("/field-places/upright-in-a-stack", test_beside_an_upright_edge_in_a_stack);
  g_test_add_func ("/field-places/base-inside", test_base_sizes_stand_inside);
  g_test_add_func ("/field-places/hidden-unless-it-must", test_hidden_unless_it_must);
  g_test_add_func ("/field-places/keeps-off-the-formed-part", test_keeps_off_the_formed_part);
  g_test_add_func ("/field-places/keeps-off-holes", test_keeps_off_holes);
  return g_test_run ();
}
