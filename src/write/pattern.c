/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/pattern.h"

#include <glib/gi18n.h>

#include "core/part-title.h"
#include "core/setup-sentence.h"
#include "core/today.h"
#include "make/bend-notes.h"
#include "make/drill-list.h"
#include "paint/bend-marks.h"
#include "paint/blank-field.h"
#include "paint/blank-labels.h"
#include "write/pattern-cuts.h"
#include "write/pattern-words.h"

#define CENTRE_ABOVE_BASELINE 0.4 /* of words' ground, as a share of the capitals' height */

static void
free_item (gpointer data)
{
  BfPatternItem *item = data;

  g_clear_pointer (&item->ring, bf_ring_free);
  g_free (item->words);
  g_free (item);
}

static BfPatternItem *
add_item (BfPattern *pattern, BfPurpose purpose, BfPatternKind kind)
{
  BfPatternItem *item = g_new0 (BfPatternItem, 1);

  item->purpose = purpose;
  item->kind = kind;
  g_ptr_array_add (pattern->items, item);
  return item;
}

/* The ground of words reaches a little further above the baseline's middle than below it. */
static BfVec2
baseline_start (const BfBlankLabel *label)
{
  BfVec2 along = label->plate.along;
  BfVec2 down = bf_vec2 (along.y, -along.x);
  BfVec2 left = bf_vec2_along (label->plate.centre, along, -label->plate.width / 2.0);

  return bf_vec2_along (left, down, label->cap_height_mm * CENTRE_ABOVE_BASELINE);
}

static void
add_words (BfPattern *pattern)
{
  g_autoptr (GPtrArray) labels = bf_pattern_words (pattern);

  for (guint i = 0; i < labels->len; i++)
    {
      const BfBlankLabel *label = g_ptr_array_index (labels, i);
      BfPatternItem *item = add_item (pattern, BF_PURPOSE_NOTE, BF_PATTERN_WORDS);

      item->at = baseline_start (label);
      item->to = bf_vec2_along (item->at, label->plate.along, label->plate.width);
      item->cap_height_mm = label->cap_height_mm;
      item->words = g_strdup (label->words);
    }
}

static void
add_bend (BfPattern *pattern, const BfBendResult *bend, BfPurpose purpose)
{
  g_autofree char *words = bf_blank_bend_words (bend);
  BfPatternItem *item = add_item (pattern, purpose, BF_PATTERN_LINE);

  item->at = bend->line[0];
  item->to = bend->line[1];
  /* Translators: a flange's name and how it is bent, "front: fold up 90°". */
  item->words = g_strdup_printf (_ ("%s: %s"), bend->flange, words);
}

static void
add_bends (BfPattern *pattern, BfTurn turn, BfPurpose purpose)
{
  for (guint i = 0; i < pattern->fold->bends->len; i++)
    if (bf_fold_bend (pattern->fold, i)->turn == turn)
      add_bend (pattern, bf_fold_bend (pattern->fold, i), purpose);
  for (guint i = 0; i < bf_fold_n_creases (pattern->fold); i++)
    {
      BfBendResult crease = bf_fold_crease_as_bend (pattern->fold, i);

      if (crease.turn == turn)
        add_bend (pattern, &crease, purpose);
    }
}

/* The edges of the grooves. */
static void
add_scores (BfPattern *pattern)
{
  for (guint i = 0; i < pattern->fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (pattern->fold, i);
      g_autofree char *words = bf_score_words (bend, pattern->fold->part->units);
      g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof (BfBendMark));

      bf_bend_marks (pattern->fold, bend, 1.0, lines);
      for (guint k = 0; words != NULL && k < lines->len; k++)
        {
          BfPatternItem *item = add_item (pattern, BF_PURPOSE_SCORE, BF_PATTERN_LINE);

          item->at = g_array_index (lines, BfBendMark, k).a;
          item->to = g_array_index (lines, BfBendMark, k).b;
          /* Translators: a flange's name and how it is scored */
          item->words = g_strdup_printf (_ ("%s: %s"), bend->flange, words);
        }
    }
}

static void
add_mark (BfPattern *pattern, BfVec2 at)
{
  add_item (pattern, BF_PURPOSE_DRILL, BF_PATTERN_MARK)->at = at;
}

/* Centres of what is drilled by hand; a machine cuts round holes like the rest. */
static void
add_drills (BfPattern *pattern)
{
  g_autoptr (GArray) drilled = bf_drill_list (pattern->fold);

  for (guint i = 0; i < drilled->len; i++)
    add_mark (pattern, bf_drilled (drilled, i)->at);
}

static void
add_cuts (BfPattern *pattern, const BfPatternCuts *cuts, BfPurpose purpose)
{
  for (guint i = 0; i < cuts->cuts->len; i++)
    {
      const BfPatternCut *cut = &g_array_index (cuts->cuts, BfPatternCut, i);
      BfPatternItem *item;

      if (cut->purpose != purpose)
        continue;
      item = add_item (pattern, purpose, cut->ring != NULL ? BF_PATTERN_RING : BF_PATTERN_LINE);
      item->at = cut->line[0];
      item->to = cut->line[1];
      if (cut->ring != NULL)
        item->ring = bf_ring_copy (cut->ring);
      else
        item->words = g_strdup (purpose == BF_PURPOSE_SLOT ? _ ("one cut along the slot’s middle")
                                                           : _ ("end of a bend line"));
    }
}

static char *
describe_origin (BfUnits drawn_in, const char *date)
{
  g_autofree char *today = bf_today ();

  if (date == NULL)
    date = today;
  if (drawn_in == BF_UNITS_IN)
    /* Translators: what unit the drawing's coordinates are in, and a date. */
    return g_strdup_printf (_ ("Drawn in inches at full size, marking side up, %s."), date);
  /* Translators: what unit the drawing's coordinates are in, and a date. */
  return g_strdup_printf (_ ("Drawn in mm at full size, marking side up, %s."), date);
}

static char *
describe_warning (const BfFold *fold)
{
  guint n = bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX);

  if (n == 0)
    return NULL;
  /* Translators: how many checks say that something must be fixed. */
  return g_strdup_printf (ngettext ("Do not cut yet: %u thing must be fixed.",
                                    "Do not cut yet: %u things must be fixed.", n),
                          n);
}

/* The box of all contours, which a kerf makes larger than the blank. Where the blank could not be
 * drawn there are none, though there may be notches. */
static BfBox
contours_box (const BfPatternCuts *cuts)
{
  BfBox box = bf_box_empty ();

  for (guint i = 0; i < cuts->cuts->len; i++)
    if (g_array_index (cuts->cuts, BfPatternCut, i).ring != NULL)
      bf_ring_extend_box (g_array_index (cuts->cuts, BfPatternCut, i).ring, &box);
  return box.min.x <= box.max.x ? box : (BfBox){ { 0.0, 0.0 }, { 0.0, 0.0 } };
}

static void
add_items (BfPattern *pattern, const BfPatternCuts *cuts, BfBendLines bend_lines)
{
  if (pattern->fold->blank.rings->len > 0)
    add_words (pattern);
  if (bend_lines == BF_BEND_LINES_IN)
    {
      add_bends (pattern, BF_TURN_UP, BF_PURPOSE_BEND_UP);
      add_bends (pattern, BF_TURN_DOWN, BF_PURPOSE_BEND_DOWN);
    }
  add_scores (pattern);
  add_cuts (pattern, cuts, BF_PURPOSE_BEND_UP);
  add_cuts (pattern, cuts, BF_PURPOSE_BEND_DOWN);
  add_drills (pattern);
  for (guint i = 0; i < cuts->too_small->len; i++)
    add_mark (pattern, g_array_index (cuts->too_small, BfVec2, i));
  add_cuts (pattern, cuts, BF_PURPOSE_SLOT);
  add_cuts (pattern, cuts, BF_PURPOSE_CUT_INSIDE);
  add_cuts (pattern, cuts, BF_PURPOSE_CUT_OUTSIDE);
}

BfPattern *
bf_pattern_new (BfFold *fold, const BfPatternOptions *options)
{
  const BfPatternOptions defaults = { .drawn_in = BF_UNITS_MM };
  g_autoptr (BfPatternCuts) cuts = NULL;
  BfPattern *pattern;

  g_return_val_if_fail (fold != NULL, NULL);

  if (options == NULL)
    options = &defaults;
  cuts = bf_pattern_cuts_new (fold, options);
  pattern = g_new0 (BfPattern, 1);
  pattern->fold = bf_fold_ref (fold);
  pattern->box = contours_box (cuts);
  pattern->items = g_ptr_array_new_with_free_func (free_item);
  pattern->name = bf_part_title (fold->part);
  pattern->setup = bf_setup_sentence (fold->part);
  pattern->origin = describe_origin (options->drawn_in, options->date);
  pattern->kerf = options->kerf ? bf_pattern_cuts_describe (cuts) : NULL;
  pattern->warning = describe_warning (fold);
  add_items (pattern, cuts, options->bend_lines);
  return pattern;
}

void
bf_pattern_free (BfPattern *pattern)
{
  if (pattern == NULL)
    return;
  g_ptr_array_unref (pattern->items);
  bf_fold_unref (pattern->fold);
  g_free (pattern->name);
  g_free (pattern->setup);
  g_free (pattern->origin);
  g_free (pattern->kerf);
  g_free (pattern->warning);
  g_free (pattern);
}
