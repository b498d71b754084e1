/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include <glib/gi18n.h>

#include "core/units.h"
#include "make/join-plan.h"
#include "make/work-private.h"

static gboolean
has_check (const BfFold *fold, const char *code)
{
  for (guint i = 0; i < fold->checks->len; i++)
    if (strcmp (bf_fold_check (fold, i)->code, code) == 0)
      return TRUE;
  return FALSE;
}

/* What the coating or the metal itself gives off. */
static const char *
fume_caution (const BfPart *part)
{
  const char *metal = bf_work_metal_kind (part);

  if (g_str_has_prefix (metal, "galvanized"))
    return _ ("Zinc fumes: take the coating off 50 mm (2 in) round the seam, weld in moving air.");
  if (g_str_has_prefix (metal, "stainless"))
    return _ ("Stainless gives off chromium fumes: weld in moving air, with a mask made for it.");
  return _ ("Zinc, cadmium, chrome, paint or a coating that you do not know fumes: off with it "
            "first, in moving air.");
}

/* Zinc and brass boil off under an arc (common practice). */
static gboolean
can_be_welded (const BfPart *part)
{
  const char *metal = bf_work_metal_kind (part);

  return strcmp (metal, "zinc") != 0 && !g_str_has_prefix (metal, "brass");
}

/* ---- welding ------------------------------------------------------------------------------ */

static void
add_tacks (BfWork *work)
{
  guint tacks = 0;
  BfWorkStep *step;

  for (guint i = 0; i < work->seams->len; i++)
    tacks += bf_join_n_tacks (
        bf_fold_seam (work->fold, g_array_index (work->seams, guint, i))->length_mm);
  step =
      bf_work_add (work, BF_STAGE_JOIN,
                   g_strdup (_ ("Clamp the corners square and tack them: both ends of each first, "
                                "across the part in turn, then between.")));
  bf_work_add_number (step, _ ("seams"), g_strdup_printf ("%u", work->seams->len));
  bf_work_add_number (step, _ ("tacks"), g_strdup_printf ("%u", tacks));
  bf_work_add_length (work, step, _ ("apart"), BF_TACK_PITCH_MM);
  step->caution =
      _ ("Cover eyes and skin, screen off bystanders; dry floor, sound leads, watch for "
         "fire an hour after.");
  step->shows = BF_SHOWS_SEAM;
}

static void
add_runs (BfWork *work)
{
  g_autofree char *run = bf_format_length (BF_RUN_MM, work->fold->part->units);
  BfWorkStep *step = bf_work_add (
      work, BF_STAGE_JOIN,
      /* Translators: a length with its unit */
      g_strdup_printf (_ ("Weld short runs of %s, skipping about, and let each cool: thin corners "
                          "burn through and pull. A copper bar behind takes the heat."),
                       run));

  bf_work_add_length (work, step, _ ("runs of"), BF_RUN_MM);
  step->caution = _ ("A backing bar is hot and does not glow.");
  step->shows = BF_SHOWS_SEAM;
}

static void
add_vent (BfWork *work)
{
  BfWorkStep *step;

  if (!has_check (work->fold, "sealed-volume"))
    return;
  step = bf_work_add (work, BF_STAGE_JOIN,
                      g_strdup (_ ("Drill a vent hole into the hollow, where it does not show.")));
  step->caution = _ ("Drill a vent before the last seam: a closed hollow blows out.");
  step->shows = BF_SHOWS_FORMED;
}

static void
add_seam (BfWork *work, guint i)
{
  guint at = g_array_index (work->seams, guint, i);
  const BfSeam *seam = bf_fold_seam (work->fold, at);
  BfWorkStep *step = bf_work_add (work, BF_STAGE_JOIN,
                                  /* Translators: which seam of how many, and two flanges' names */
                                  g_strdup_printf (_ ("Seam %u of %u: %s to %s."), i + 1,
                                                   work->seams->len, seam->before, seam->after));

  bf_work_add_length (work, step, _ ("long"), seam->length_mm);
  if (!isnan (seam->gap_mm))
    bf_work_add_length (work, step, _ ("gap"), seam->gap_mm);
  if (work->fold->part->joining == BF_JOINING_WELDED && can_be_welded (work->fold->part))
    bf_work_add_number (step, _ ("tacks"),
                        g_strdup_printf ("%u", bf_join_n_tacks (seam->length_mm)));
  if (i == 0 && work->fold->part->joining == BF_JOINING_WELDED)
    step->caution = _ ("Never heat a vessel that held fuel: it bursts, however long it is empty.");
  step->shows = BF_SHOWS_SEAM;
  step->at = (int)at;
}

static void
add_welds (BfWork *work)
{
  BfWorkStep *step = bf_work_add (
      work, BF_STAGE_JOIN,
      g_strdup (_ ("Take paper, glue and oil off, wipe the seams, and let them dry.")));

  step->caution = _ ("Solvent dry and rags away before sparks or arc; never chlorinated cleaner.");
  step->shows = BF_SHOWS_SEAM;
  step = bf_work_add (work, BF_STAGE_JOIN, g_strdup (_ ("Grind the seams bright on both faces.")));
  step->caution = fume_caution (work->fold->part);
  step->shows = BF_SHOWS_SEAM;
  add_vent (work);
  add_tacks (work);
  for (guint i = 0; i < work->seams->len; i++)
    add_seam (work, i);
  add_runs (work);
}

static void
add_solder (BfWork *work)
{
  BfWorkStep *step = bf_work_add (
      work, BF_STAGE_JOIN,
      g_strdup (_ ("Do not weld this metal with an arc: solder the seams, or rivet them.")));

  step->caution = _ ("Flux and hot zinc fume: work in moving air.");
  step->shows = BF_SHOWS_SEAM;
  for (guint i = 0; i < work->seams->len; i++)
    add_seam (work, i);
}

/* ---- rivets, screws, folds ---------------------------------------------------------------- */

static void
add_fastened (BfWork *work, const char *words)
{
  BfWorkStep *step = bf_work_add (work, BF_STAGE_JOIN, g_strdup (words));

  bf_work_add_number (step, _ ("corners"), g_strdup_printf ("%u", work->seams->len));
  step->caution = _ ("Eye protection: rivet stems and drill chips fly.");
  step->shows = BF_SHOWS_SEAM;
  for (guint i = 0; i < work->seams->len; i++)
    add_seam (work, i);
}

static void
add_folded (BfWork *work)
{
  guint n = work->fold->folded->len;
  BfWorkStep *step;

  if (n == 0)
    return;
  step = bf_work_add (work, BF_STAGE_JOIN,
                      g_strdup (_ ("Tap the folded corners flat against their walls, scrap wood "
                                   "between.")));
  bf_work_add_number (step, _ ("corners"), g_strdup_printf ("%u", n));
  step->shows = BF_SHOWS_FORMED;
}

void
bf_work_add_join (BfWork *work)
{
  add_folded (work);
  bf_join_order (work->fold, work->seams);
  if (work->seams->len == 0)
    return;
  switch (work->fold->part->joining)
    {
    case BF_JOINING_WELDED:
      if (can_be_welded (work->fold->part))
        add_welds (work);
      else
        add_solder (work);
      break;
    case BF_JOINING_RIVETED:
      add_fastened (work, _ ("Line up the holes of tab and wall with a punch, then rivet: one hole "
                             "of each corner first, then the rest."));
      break;
    case BF_JOINING_SCREWED:
      add_fastened (work, _ ("Line up the holes of tab and wall with a punch, then put all screws "
                             "in loosely, and tighten across the part in turn."));
      break;
    case BF_JOINING_FOLDED:
    case BF_JOINING_NONE:
    default:
      break;
    }
}
