/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/marking-steps.h"

#include <glib/gi18n.h>

#include "core/drills.h"
#include "core/units.h"
#include "make/bend-notes.h"

/* Once each. name: (transfer full). */
static void
add_name (GPtrArray *names, char *name)
{
  if (g_ptr_array_find_with_equal_func (names, name, g_str_equal, NULL))
    g_free (name);
  else
    g_ptr_array_add (names, name);
}

/* What a strike leaves on the metal: edges to cut, bends and bars by name. */
static char *
strike_lines (const BfMarking *marking, const BfMarkingStep *step)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  gboolean cuts = FALSE;

  for (guint i = 0; i < step->items->len; i++)
    {
      const BfStrike *strike = bf_marking_strike (marking, bf_step_item (step, i));

      for (guint k = 0; k < strike->stretches->len; k++)
        {
          const BfMarkStretch *line = &g_array_index (strike->stretches, BfMarkStretch, k);

          cuts = cuts || line->kind == BF_MARK_CUT;
          if (line->kind == BF_MARK_BEND)
            add_name (names, g_strdup (line->name));
          else if (line->kind == BF_MARK_BAR)
            /* Translators: where the bar's front edge sits for the bend of that flange */
            add_name (names, g_strdup_printf (_ ("bar of %s"), line->name));
        }
    }
  if (cuts)
    g_ptr_array_insert (names, 0, g_strdup (_ ("cut")));
  g_ptr_array_add (names, NULL);
  return g_strjoinv (", ", (char **)names->pdata);
}

static char *
strike_words (const BfMarking *marking, const BfMarkingStep *step, BfUnits units)
{
  g_autofree char *at = bf_format_length (step->size_mm, units);
  g_autofree char *lines = strike_lines (marking, step);
  gboolean bottom = FALSE, left = FALSE;

  for (guint i = 0; i < step->items->len; i++)
    {
      BfDatum from = bf_marking_strike (marking, bf_step_item (step, i))->from;

      bottom = bottom || from == BF_DATUM_BOTTOM;
      left = left || from == BF_DATUM_LEFT;
    }
  if (bottom && left)
    /* Translators: a length with its unit, and what the lines are: "cut, front, left" */
    return g_strdup_printf (_ ("Set the square to %s. Strike from the bottom edge, and from the "
                               "left edge: %s."),
                            at, lines);
  if (bottom)
    /* Translators: a length with its unit, and what the lines are: "cut, front" */
    return g_strdup_printf (_ ("Set the square to %s. Strike from the bottom edge: %s."), at,
                            lines);
  /* Translators: a length with its unit, and what the lines are: "cut, left" */
  return g_strdup_printf (_ ("Set the square to %s. Strike from the left edge: %s."), at, lines);
}

static char *
corner_words (const BfMarking *marking, BfUnits units)
{
  g_autofree char *width = bf_format_length (marking->width.marked_mm, units);
  g_autofree char *height = bf_format_length (marking->height.marked_mm, units);

  /* Translators: two lengths with their units */
  return g_strdup_printf (_ ("Start at a corner with two straight, square edges: left and bottom. "
                             "You need %s by %s. All is measured from these two edges."),
                          width, height);
}

/* Which arrow is which distance, where the picture tells both of points. */
static char *
arrows_words (const char *words)
{
  return g_strconcat (words, " ", _ ("→ is from the left edge, ↑ from the bottom edge."), NULL);
}

/* And how long they are on either face. */
static char *
slot_words (const BfMarking *marking, BfUnits units)
{
  g_autoptr (GPtrArray) notes = bf_bend_notes (marking->fold, units);

  g_ptr_array_insert (notes, 0,
                      arrows_words (_ ("Mark where the slots end, along their bend lines.")));
  g_ptr_array_add (notes, NULL);
  return g_strjoinv (" ", (char **)notes->pdata);
}

static char *
drill_words (const BfMarking *marking, const BfMarkingStep *step, BfUnits units)
{
  const BfMarkHole *hole = &g_array_index (marking->holes, BfMarkHole, bf_step_item (step, 0));
  g_autofree char *size =
      hole->drill != NULL ? bf_drill_words (hole->drill) : bf_format_length (step->size_mm, units);

  /* Translators: a drill's size, and how many holes */
  return g_strdup_printf (ngettext ("Drill %s: %u hole.", "Drill %s: %u holes.", step->items->len),
                          size, step->items->len);
}

static char *
check_words (const BfMarking *marking, BfUnits units)
{
  g_autofree char *width = bf_format_length (marking->width.marked_mm, units);
  g_autofree char *height = bf_format_length (marking->height.marked_mm, units);
  double exact = hypot (marking->width.marked_mm, marking->height.marked_mm);
  g_autofree char *diagonal =
      bf_format_length (round (exact / marking->step_mm) * marking->step_mm, units);

  /* Translators: three lengths with their units */
  return g_strdup_printf (_ ("Before you cut, measure over all: %s and %s. Both diagonals: %s."),
                          width, height, diagonal);
}

/* What is done to one blank is done to all of them before the next step. */
static char *
all_words (const BfMarkingStep *step, guint quantity)
{
  gboolean marks =
      step->kind != BF_STEP_WIPE && step->kind != BF_STEP_DRILL && step->kind != BF_STEP_CHECK;

  if (quantity == 2)
    return g_strdup (marks ? _ ("Mark both blanks.") : _ ("Do both blanks."));
  return g_strdup_printf (marks
                              /* Translators: how many, 3 or more */
                              ? ngettext ("Mark all %u blank.", "Mark all %u blanks.", quantity)
                              /* Translators: how many, 3 or more */
                              : ngettext ("Do all %u blank.", "Do all %u blanks.", quantity),
                          quantity);
}

static char *
one_blank_words (const BfMarking *marking, const BfMarkingStep *step, BfUnits units)
{
  switch (step->kind)
    {
    case BF_STEP_CORNER:
      return corner_words (marking, units);
    case BF_STEP_STRIKE:
      return strike_words (marking, step, units);
    case BF_STEP_JOIN:
      return arrows_words (_ ("Mark the points and join them."));
    case BF_STEP_ARC:
      return arrows_words (_ ("Punch the centres and draw the arcs with the compass, set to R."));
    case BF_STEP_WIPE:
      return g_strdup (_ ("Wipe away the dotted stretches: nothing is cut or bent there."));
    case BF_STEP_SLOT:
      return slot_words (marking, units);
    case BF_STEP_PUNCH:
      return arrows_words (_ ("Punch the centres of all holes."));
    case BF_STEP_DRILL:
      return drill_words (marking, step, units);
    case BF_STEP_CHECK:
    default:
      return check_words (marking, units);
    }
}

char *
bf_marking_step_words (const BfMarking *marking, const BfMarkingStep *step, BfUnits units)
{
  guint quantity = marking->fold->part->quantity;
  g_autofree char *words = one_blank_words (marking, step, units), *all = NULL;

  if (quantity < 2)
    return g_steal_pointer (&words);
  all = all_words (step, quantity);
  return g_strconcat (words, " ", all, NULL);
}

const char *
bf_marking_step_caution (const BfMarkingStep *step)
{
  if (step->kind == BF_STEP_DRILL)
    return _ ("Clamp the metal, wood under it: it spins when the drill breaks through. No gloves.");
  if (step->kind == BF_STEP_CHECK)
    return _ (
        "Drill before you cut, and cut to the holes. Guard on, two hands, stand out of line.");
  return NULL;
}

char *
bf_marking_worst_words (const BfMarking *marking, BfUnits units)
{
  double step_mm = units == BF_UNITS_IN ? BF_MM_PER_INCH / 64.0 : 0.01;
  double up_mm = ceil (marking->worst_mm / step_mm - 1e-9) * step_mm;
  g_autofree char *fine = NULL;

  if (units == BF_UNITS_IN)
    return bf_format_length (up_mm, units);
  fine = bf_format_fine (up_mm, units);
  /* Translators: a length in millimetres, "0.25 mm" */
  return g_strdup_printf (_ ("%s mm"), fine);
}
