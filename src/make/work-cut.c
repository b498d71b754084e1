/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/units.h"
#include "fold/bend-words.h"
#include "make/work-private.h"

/* Beyond 22.5° it is neither this nor that. */
#define SLANT_SINE 0.3827

/* A cut is square to an edge where its waste lies straight off it. */
#define SQUARE_COSINE (1.0 - 1e-9)

const char *
bf_cut_waste_words (const BfCut *cut)
{
  BfVec2 waste = cut->waste;

  if (MIN (fabs (waste.x), fabs (waste.y)) > SLANT_SINE)
    return waste.x > 0.0 ? (waste.y > 0.0 ? _ ("above right") : _ ("below right"))
                         : (waste.y > 0.0 ? _ ("above left") : _ ("below left"));
  if (fabs (waste.x) > fabs (waste.y))
    return waste.x > 0.0 ? _ ("at the right") : _ ("at the left");
  return waste.y > 0.0 ? _ ("above") : _ ("below");
}

gboolean
bf_work_cut_place (const BfWork *work, guint at, BfCutPlace *place)
{
  const BfCut *cut = bf_cut (work->cuts, at);
  gboolean level = fabs (cut->waste.y) > SQUARE_COSINE;
  BfDatum from = level ? BF_DATUM_BOTTOM : BF_DATUM_LEFT;
  double line_mm = bf_marking_distance (work->marking, from, cut->from).marked_mm;
  double toward = level ? cut->waste.y : cut->waste.x;

  if (!level && fabs (cut->waste.x) <= SQUARE_COSINE)
    return FALSE;
  *place =
      (BfCutPlace){ from, line_mm, line_mm - (toward > 0.0 ? 1.0 : -1.0) * work->guide_offset_mm };
  return TRUE;
}

/* Of all blanks. */
static double
total_mm (const BfWork *work)
{
  double sum = 0.0;

  for (guint i = 0; i < work->cuts->len; i++)
    sum += bf_cut (work->cuts, i)->length_mm;
  return sum * work->fold->part->quantity;
}

/* "12", and "2 × 12" for two blanks. */
static char *
count_text (const BfWork *work)
{
  guint quantity = work->fold->part->quantity;

  return quantity > 1 ? g_strdup_printf ("%u × %u", quantity, work->cuts->len)
                      : g_strdup_printf ("%u", work->cuts->len);
}

/* ---- in general --------------------------------------------------------------------------- */

static void
add_guide (BfWork *work)
{
  double offset_mm = work->guide_offset_mm;
  BfWorkStep *step;

  if (offset_mm > 0.0)
    {
      g_autofree char *offset = bf_format_length (offset_mm, work->fold->part->units);

      step =
          bf_work_add (work, BF_STAGE_CUT,
                       /* Translators: a length with its unit */
                       g_strdup_printf (_ ("Clamp a guide on the blank's side, %s from the line. "
                                           "Cut in the order of the numbers, short ones first."),
                                        offset));
    }
  else
    step = bf_work_add (
        work, BF_STAGE_CUT,
        g_strdup (_ ("Clamp a guide on the line, on the blank's side: the disc just touches it. "
                     "Cut in the order of the numbers, short ones first.")));
  bf_work_add_number (step, _ ("straight cuts"), count_text (work));
  bf_work_add_length (work, step, _ ("together"), total_mm (work));
  bf_work_add_length (work, step, _ ("kerf"), bf_part_kerf_mm (work->fold->part));
  step->caution = _ ("Guard on, both hands, a disc rated for the machine's speed, never one that "
                     "was dropped. Stand out of its line.");
  step->shows = BF_SHOWS_CUT;
}

static gboolean
ends_in_holes (const GArray *cuts)
{
  for (guint i = 0; i < cuts->len; i++)
    if (bf_cut (cuts, i)->from_hole || bf_cut (cuts, i)->to_hole)
      return TRUE;
  return FALSE;
}

/* behind: how much sooner the cut ends at the back. Returns: (transfer full). */
static char *
plunge_words (const BfWork *work, const char *behind)
{
  if (ends_in_holes (work->cuts))
    /* Translators: a length with its unit */
    return g_strdup_printf (_ ("Plunge deep, stop at the middle of the corner hole, and look at "
                               "the back: the cut ends %s sooner there. Finish it with a file."),
                            behind);
  /* Translators: a length with its unit */
  return g_strdup_printf (_ ("Plunge deep, stop at the end of the line, and look at the back: the "
                             "cut ends %s sooner there. Finish it with a file."),
                          behind);
}

static gboolean
has_inside (const GArray *cuts)
{
  for (guint i = 0; i < cuts->len; i++)
    if (bf_cut (cuts, i)->inside)
      return TRUE;
  return FALSE;
}

static void
add_plunge (BfWork *work)
{
  const BfPart *part = work->fold->part;
  double lag = bf_cut_lag_mm (bf_part_disc_diameter_mm (part), part->metal.thickness_mm);
  g_autofree char *behind = isnan (lag) ? NULL : bf_format_length (lag, part->units);
  BfWorkStep *step;

  if (behind == NULL)
    return;
  step = bf_work_add (work, BF_STAGE_CUT, plunge_words (work, behind));
  bf_work_add_length (work, step, _ ("plunge"), part->metal.thickness_mm + BF_PLUNGE_BEYOND_MM);
  bf_work_add_length (work, step, _ ("shorter behind"), lag);
  step->caution =
      _ ("No side load on the disc. Hold up both halves, so that the cut does not close on it.");
  step->shows = BF_SHOWS_CUT;
}

/* What is left of openings when drill and tool have done theirs. */
static void
add_filed (BfWork *work)
{
  const BfMarkingStep drilling = { .kind = BF_STEP_DRILL };
  guint n = bf_count_filed_openings (work->fold);
  BfWorkStep *step;

  if (n == 0)
    return;
  step = bf_work_add (
      work, BF_STAGE_CUT,
      g_strdup (
          _ ("Small and round openings: drill holes in a row inside the line, break the piece "
             "out, and file to the line. A hole saw makes a large round one.")));
  bf_work_add_number (step, _ ("openings"), g_strdup_printf ("%u", n));
  bf_work_add_length (work, step, _ ("tool needs"), bf_least_inside_cut_mm (work->fold->part));
  step->caution = bf_marking_step_caution (&drilling);
  step->shows = BF_SHOWS_BLANK;
}

/* What straight cuts leave of the rim. */
static void
add_rounds (BfWork *work)
{
  guint n = bf_count_filed_rounds (work->fold);
  BfWorkStep *step;

  if (n == 0)
    return;
  step = bf_work_add (work, BF_STAGE_CUT,
                      g_strdup (_ ("Rounds on the rim: take the waste off in short straight cuts, "
                                   "beside the line, and file to it.")));
  bf_work_add_number (step, _ ("rounds"), g_strdup_printf ("%u", n));
  step->shows = BF_SHOWS_BLANK;
}

static void
add_snips (BfWork *work)
{
  BfWorkStep *step =
      bf_work_add (work, BF_STAGE_CUT,
                   g_strdup (_ ("Cut with snips from the edge to the corner holes, in the order of "
                                "the numbers, short cuts first; let the waste curl up.")));

  bf_work_add_number (step, _ ("straight cuts"), count_text (work));
  bf_work_add_length (work, step, _ ("together"), total_mm (work));
  step->caution = _ ("Fresh edges and curled waste cut: wear gloves.");
  step->shows = BF_SHOWS_CUT;
  if (!has_inside (work->cuts))
    return;
  step = bf_work_add (work, BF_STAGE_CUT,
                      g_strdup (_ ("Start in an opening from a hole in its waste, wide enough for "
                                   "the nose of the snips.")));
  step->shows = BF_SHOWS_BLANK;
}

/* ---- one by one --------------------------------------------------------------------------- */

static void
add_place (const BfWork *work, BfWorkStep *step, const BfCutPlace *place)
{
  gboolean bottom = place->from == BF_DATUM_BOTTOM;

  bf_work_add_length (work, step, bottom ? _ ("line, from below") : _ ("line, from the left"),
                      place->line_mm);
  if (work->guide_offset_mm > 0.0)
    bf_work_add_length (work, step, bottom ? _ ("guide, from below") : _ ("guide, from the left"),
                        place->guide_mm);
}

static void
add_one (BfWork *work, guint i)
{
  const BfCut *cut = bf_cut (work->cuts, i);
  g_autofree char *length = bf_format_length (cut->length_mm, work->fold->part->units);
  BfWorkStep *step = bf_work_add (
      work, BF_STAGE_CUT,
      /* Translators: which cut of how many, its length, and where the waste is: "at the left" */
      g_strdup_printf (_ ("Cut %u of %u: %s long. The waste is %s."), i + 1, work->cuts->len,
                       length, bf_cut_waste_words (cut)));
  BfCutPlace place;

  if (bf_work_cut_place (work, i, &place))
    add_place (work, step, &place);
  bf_work_add_number (step, _ ("ends in holes"),
                      g_strdup_printf ("%d", (cut->from_hole ? 1 : 0) + (cut->to_hole ? 1 : 0)));
  step->shows = BF_SHOWS_CUT;
  step->at = (int)i;
  step->detail = TRUE;
}

static void
add_slots (BfWork *work, const BfBendResult *bend)
{
  const BfBendSlot *slot;
  BfWorkStep *step;

  if (bend->slots->len == 0)
    return;
  slot = bf_bend_slot (bend, 0);
  step = bf_work_add (
      work, BF_STAGE_CUT,
      /* Translators: how many slots, and the flange's name */
      g_strdup_printf (ngettext ("Cut %u slot along the bend line of %s.",
                                 "Cut %u slots along the bend line of %s.", bend->slots->len),
                       bend->slots->len, bend->flange));
  bf_work_add_length (work, step, _ ("on this face"), slot->near_mm);
  bf_work_add_length (work, step, _ ("on the other"), slot->far_mm);
  bf_work_add_length (work, step, _ ("slot's width"), slot->width_mm);
  if (bend->slots->len > 1)
    bf_work_add_length (work, step, _ ("bridges between"), bf_bend_bridge_mm (bend));
  bf_work_add_number (step, _ ("metal left"), g_strdup_printf ("%.0f %%", 100.0 * bend->kept));
  step->caution = _ ("A slotted line has lost strength: no load hangs on it.");
}

static void
add_score (BfWork *work, const BfBendResult *bend)
{
  BfWorkStep *step;

  if (bend->way != BF_BEND_WAY_SCORE || isnan (bend->score_left_mm))
    return;
  step = bf_work_add (work, BF_STAGE_CUT,
                      /* Translators: the flange's name */
                      g_strdup_printf (bend->turn == BF_TURN_UP
                                           ? _ ("Mill the groove of %s, on the marking side.")
                                           : _ ("Mill the groove of %s, on the other side."),
                                       bend->flange));
  bf_work_add_number (step, _ ("leave"),
                      bf_format_thin (bend->score_left_mm, work->fold->part->units));
  bf_work_add_length (work, step, _ ("groove at least"), bend->groove_mm);
  step->caution =
      _ ("A hand grinder holds only ±0.2 mm: mill or rout it, and try the depth on scrap.");
}

void
bf_work_add_cut (BfWork *work)
{
  BfCuttingWay by = work->fold->part->cutting.by;
  BfWorkStep *step;

  if (by == BF_CUTTING_DISC)
    {
      add_guide (work);
      add_plunge (work);
    }
  else if (by == BF_CUTTING_SNIPS)
    add_snips (work);
  else
    {
      step = bf_work_add (
          work, BF_STAGE_CUT,
          g_strdup (_ ("Have the blank cut from the pattern file, holes before the outline.")));
      if (by == BF_CUTTING_TABLE)
        step->caution = _ ("Fume, light and fire: the machine's own manual decides.");
      bf_work_add_length (work, step, _ ("cut in all"), work->fold->blank.cut_length_mm);
    }
  for (guint i = 0; i < work->cuts->len && bf_work_is_by_hand (work); i++)
    add_one (work, i);
  if (bf_work_is_by_hand (work))
    {
      add_rounds (work);
      add_filed (work);
    }
  for (guint i = 0; i < work->fold->bends->len && bf_work_is_by_hand (work); i++)
    add_slots (work, bf_fold_bend (work->fold, i));
  for (guint i = 0; i < work->fold->bends->len; i++)
    add_score (work, bf_fold_bend (work->fold, i));
  step = bf_work_add (work, BF_STAGE_CUT, g_strdup (_ ("Take the burr off every edge and hole.")));
  step->caution = _ ("Deburr before you bend: hands go along these edges.");
}
