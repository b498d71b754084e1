/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Somebody who does at random what is offered: whatever they do, the part stays one that can be
 * saved and read, what is selected is there, and undo brings back what was. */

#include "app/edge-edits.h"

#include "app/surface-edges.h"
#include "core/first-part.h"
#include "core/part-file.h"
#include "core/thing.h"

#define N_PEOPLE 5
#define N_STEPS 24

static const BfOffers doings[] = { BF_OFFER_TURN_UP, BF_OFFER_TURN_DOWN, BF_OFFER_HEM,
                                   BF_OFFER_LIP,     BF_OFFER_COPY,      BF_OFFER_HOLE,
                                   BF_OFFER_POINT,   BF_OFFER_REMOVE };

static BfDocument *
begin (guint who)
{
  BfThing thing = who % BF_N_THINGS;
  g_autoptr (BfPart) setup = bf_first_part (who % 2 == 0 ? BF_UNITS_MM : BF_UNITS_IN);
  g_autoptr (BfPart) part = NULL;
  BfDocument *document = bf_document_new ();
  BfThingSizes sizes;

  bf_thing_sizes_init (&sizes, thing, setup->units);
  part = bf_thing_make (thing, &sizes, setup, "Thing");
  bf_document_set_part (document, part, NULL);
  return document;
}

static char *
text_of (BfDocument *document)
{
  return bf_part_to_text (bf_document_get_part (document));
}

/* One of all that can be pointed at. */
static BfSelection
draw_selection (BfDocument *document, GRand *rand)
{
  g_autoptr (GArray) edges = bf_surface_edges (bf_document_get_fold (document));

  return bf_surface_edge (edges, (guint)g_rand_int_range (rand, 0, (gint32)edges->len))->selection;
}

static void
assert_is_there (BfDocument *document, BfSelection selection)
{
  g_autoptr (GArray) edges = bf_surface_edges (bf_document_get_fold (document));

  g_assert_true (bf_selection_is_same (selection, BF_SELECTION_NONE) ||
                 bf_surface_edges_find (edges, selection) >= 0);
}

static void
assert_can_be_read (BfDocument *document)
{
  g_autofree char *text = text_of (document), *again = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  again = bf_part_to_text (part);
  g_assert_cmpstr (text, ==, again);
}

/* Returns: TRUE where something was offered and done. */
static gboolean
do_something (BfDocument *document, GRand *rand)
{
  BfSelection selection = draw_selection (document, rand), then;
  BfOffers what = doings[g_rand_int_range (rand, 0, G_N_ELEMENTS (doings))];
  gboolean offered = (bf_edge_offers (bf_document_get_fold (document), selection) & what) != 0;
  g_autofree char *before = text_of (document), *after = NULL, *undone = NULL, *redone = NULL;

  then = bf_edge_do (document, selection, what);
  after = text_of (document);
  assert_is_there (document, then);
  if (!offered)
    {
      g_assert_cmpstr (before, ==, after);
      return FALSE;
    }
  assert_can_be_read (document);
  if (g_str_equal (before, after))
    return FALSE; /* all walls alike already: a copy all round changes nothing, and is no step */
  bf_document_undo (document);
  undone = text_of (document);
  g_assert_cmpstr (undone, ==, before);
  bf_document_redo (document);
  redone = text_of (document);
  g_assert_cmpstr (redone, ==, after);
  return TRUE;
}

static void
test_whatever_they_do (void)
{
  guint done = 0;

  for (guint who = 0; who < N_PEOPLE; who++)
    {
      g_autoptr (GRand) rand = g_rand_new_with_seed (who);
      g_autoptr (BfDocument) document = begin (who);
      g_autofree char *first = text_of (document), *last = NULL;
      guint steps = 0;

      for (guint i = 0; i < N_STEPS && bf_part_n_flanges (bf_document_get_part (document)) < 20;
           i++)
        {
          g_test_message ("person %u, step %u", who, i);
          steps += do_something (document, rand) ? 1 : 0;
        }
      for (guint i = 0; i < steps; i++)
        {
          g_assert_nonnull (bf_document_get_undo_name (document));
          bf_document_undo (document);
        }
      g_assert_null (bf_document_get_undo_name (document));
      last = text_of (document);
      g_assert_cmpstr (first, ==, last);
      done += steps;
    }
  g_test_message ("%u steps", done);
  g_assert_cmpuint (done, >, 3 * N_PEOPLE);
}

/* A point is moved only as far as the outline stays simple. */
static void
test_no_crossing (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (99);
  g_autoptr (BfDocument) document = begin (0);
  guint moved = 0;

  for (guint i = 0; i < 100; i++)
    {
      BfPart *part = bf_part_ref (bf_document_get_part (document));
      BfVec2 to = { g_rand_double_range (rand, -200, 400), g_rand_double_range (rand, -200, 400) };

      bf_edge_move_point (document, (guint)g_rand_int_range (rand, 0, 4), to, FALSE);
      g_assert_true (bf_part_check_outline (bf_document_get_part (document), NULL));
      moved += bf_document_get_part (document) != part ? 1 : 0;
      bf_part_unref (part);
    }
  g_assert_cmpuint (moved, >, 10);
  g_assert_cmpuint (moved, <, 100);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edge-edits/whatever-they-do", test_whatever_they_do);
  g_test_add_func ("/edge-edits/no-crossing", test_no_crossing);
  return g_test_run ();
}
