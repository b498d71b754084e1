/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/bend-notes.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "core/units.h"
#include "fold/bend-words.h"

/* More kinds of bends than have room are counted. */
#define MOST_PLAN_ROWS 6

char *
bf_score_words (const BfBendResult *bend, BfUnits units)
{
  g_autofree char *wide = bf_format_length (bend->groove_mm, units);
  g_autofree char *left = bf_format_thin (bend->score_left_mm, units);

  if (isnan (bend->score_left_mm))
    return NULL;
  if (bend->turn == BF_TURN_UP)
    /* Translators: a groove along a bend line, and two lengths with their units */
    return g_strdup_printf (_ ("score this face %s wide, leave %s"), wide, left);
  /* Translators: a groove along a bend line, and two lengths with their units */
  return g_strdup_printf (_ ("score the other face %s wide, leave %s"), wide, left);
}

static char *
slot_words (const BfBendResult *bend, BfUnits units)
{
  const BfBendSlot *slot = bf_bend_slot (bend, 0);
  guint n = bend->slots->len;
  g_autofree char *near = bf_format_length (slot->near_mm, units);
  g_autofree char *far = bf_format_length (slot->far_mm, units);

  if (slot->near_mm - slot->far_mm < BF_TOLERANCE_SIZE_MM)
    /* Translators: how many slots, and a length with its unit */
    return g_strdup_printf (ngettext ("%u slot, %s long", "%u slots, %s long", n), n, near);
  /* Translators: how many slots, and two lengths with their units */
  return g_strdup_printf (
      ngettext ("%u slot, %s where you cut, %s behind", "%u slots, %s where you cut, %s behind", n),
      n, near, far);
}

/* What is done to the bend, and what that leaves; NULL where nothing is. */
static char *
lost_words (const BfFold *fold, const BfBendResult *bend, BfUnits units)
{
  const char *lost = bf_bend_lost_words (fold, bend);
  g_autofree char *done = NULL;

  if (lost == NULL)
    return NULL;
  done = bend->slots->len > 0 ? slot_words (bend, units) : bf_score_words (bend, units);
  /* Translators: "3 slots, 45 mm long", and "a quarter of the metal left" */
  return g_strdup_printf (_ ("%s; %s."), done, lost);
}

/* A row's words, and the names of the bends that it is said of. */
typedef struct
{
  char *words;
  GPtrArray *names; /* const char * */
} Row;

static void
clear_row (gpointer data)
{
  Row *row = data;

  g_free (row->words);
  g_ptr_array_unref (row->names);
}

/* words: (transfer full). */
static void
add (GArray *rows, char *words, const char *name)
{
  Row row = { words, NULL };

  for (guint i = 0; i < rows->len; i++)
    {
      Row *known = &g_array_index (rows, Row, i);

      if (strcmp (known->words, words) != 0)
        continue;
      g_ptr_array_add (known->names, (gpointer)name);
      g_free (words);
      return;
    }
  row.names = g_ptr_array_new ();
  g_ptr_array_add (row.names, (gpointer)name);
  g_array_append_val (rows, row);
}

/* The row as it is said. A row has one line of paper: two names, and how many there are beyond.
 * Returns: (transfer full). */
static char *
row_words (const Row *row)
{
  const char *first = g_ptr_array_index (row->names, 0);
  guint n_more = row->names->len - 1;

  if (n_more == 0)
    /* Translators: a flange, and what is done along its bend */
    return g_strdup_printf (_ ("%s: %s"), first, row->words);
  if (n_more == 1)
    /* Translators: two flanges, and what is done along the bend of each */
    return g_strdup_printf (_ ("%s, %s: %s"), first,
                            (const char *)g_ptr_array_index (row->names, 1), row->words);
  /* Translators: a flange, how many others, and what is done along the bend of each */
  return g_strdup_printf (ngettext ("%s and %u more: %s", "%s and %u more: %s", n_more), first,
                          n_more, row->words);
}

typedef char *(*BendWords) (const BfFold *fold, const BfBendResult *bend, BfUnits units);

static void
add_rows (GPtrArray *notes, const BfFold *fold, BfUnits units, BendWords of_bend)
{
  g_autoptr (GArray) rows = g_array_new (FALSE, FALSE, sizeof (Row));

  g_array_set_clear_func (rows, clear_row);
  for (guint i = 0; i < fold->bends->len; i++)
    {
      char *words = of_bend (fold, bf_fold_bend (fold, i), units);

      if (words != NULL)
        add (rows, words, bf_fold_bend (fold, i)->flange);
    }
  for (guint i = 0; i < rows->len; i++)
    g_ptr_array_add (notes, row_words (&g_array_index (rows, Row, i)));
}

GPtrArray *
bf_bend_notes (const BfFold *fold, BfUnits units)
{
  GPtrArray *notes = g_ptr_array_new_with_free_func (g_free);

  add_rows (notes, fold, units, lost_words);
  return notes;
}

/* ---- while the person is choosing ---------------------------------------------------------- */

static char *
bridge_words (const BfBendResult *bend, BfUnits units)
{
  g_autofree char *bridge = bf_format_length (bf_bend_bridge_mm (bend), units);

  /* Translators: follows how many slots there are and how long; a length with its unit */
  return bend->slots->len > 1 ? g_strdup_printf (_ (", bridges of %s"), bridge) : g_strdup ("");
}

static char *
plan_words (const BfFold *fold, const BfBendResult *bend, BfUnits units)
{
  const char *lost = bf_bend_lost_words (fold, bend);
  g_autofree char *push = bf_push_words (bend, units);
  g_autofree char *at = bf_format_length (bend->lever_mm, units);
  g_autofree char *done = NULL, *bridges = NULL;

  if (isnan (bend->lever_mm))
    return NULL;
  if (lost == NULL)
    /* Translators: a push, "easy, 7 kg", and how far from the bend */
    return g_strdup_printf (_ ("push %s at %s."), push, at);
  done = bend->slots->len > 0 ? slot_words (bend, units) : bf_score_words (bend, units);
  bridges = bridge_words (bend, units);
  /* Translators: "3 slots, 45 mm long", ", bridges of 12 mm" or nothing, "a quarter of the metal
   * left", a push, "easy, 7 kg", and how far from the bend */
  return g_strdup_printf (_ ("%s%s; %s; push %s at %s."), done, bridges, lost, push, at);
}

static char *
sum_words (const BfFold *fold, BfUnits units)
{
  const BfBendResult *hardest = bf_hardest_bend (fold);
  g_autofree char *push = NULL, *most = NULL;
  guint n = 0;

  for (guint i = 0; i < fold->bends->len; i++)
    n += bf_fold_bend (fold, i)->slots->len;
  if (hardest == NULL)
    return NULL;
  push = bf_push_words (hardest, units);
  most = bf_push_weight (hardest->limit_n, units);
  if (n == 0)
    /* Translators: a push, "easy, 7 kg", and what the person can push, "20 kg" */
    return g_strdup_printf (_ ("The hardest push: %s, of the %s you have."), push, most);
  /* Translators: how many slots; a push, "easy, 7 kg"; and what the person can push, "20 kg" */
  return g_strdup_printf (ngettext ("%u slot in all. The hardest push: %s, of the %s you have.",
                                    "%u slots in all. The hardest push: %s, of the %s you have.",
                                    n),
                          n, push, most);
}

GPtrArray *
bf_bend_plan (const BfFold *fold, BfUnits units)
{
  GPtrArray *rows = g_ptr_array_new_with_free_func (g_free);
  char *sum = sum_words (fold, units);

  if (sum != NULL)
    g_ptr_array_add (rows, sum);
  add_rows (rows, fold, units, plan_words);
  return rows;
}

char *
bf_bend_plan_text (const BfFold *fold, BfUnits units)
{
  g_autoptr (GPtrArray) rows = bf_bend_plan (fold, units);
  GString *text = g_string_new (NULL);
  guint n = MIN (rows->len, MOST_PLAN_ROWS);

  for (guint i = 0; i < n; i++)
    g_string_append_printf (text, "%s%s", i > 0 ? "\n" : "",
                            (const char *)g_ptr_array_index (rows, i));
  if (rows->len > n)
    g_string_append_printf (text, ngettext ("\nand %u more", "\nand %u more", rows->len - n),
                            rows->len - n);
  return g_string_free (text, FALSE);
}
