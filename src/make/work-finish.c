/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "make/sizes.h"
#include "make/work-private.h"

/* What most is to be expected from, of the size that may be off most. */
static char *
measuring_words (const GArray *sizes)
{
  const BfMainSize *worst = bf_main_size (sizes, 0);

  for (guint i = 1; i < sizes->len; i++)
    if (bf_main_size (sizes, i)->error.total_mm > worst->error.total_mm)
      worst = bf_main_size (sizes, i);
  return g_strdup_printf (
      /* Translators: what an error comes from, "the cutting" */
      _ ("Measure the finished part and write it down: the next one gets better by it. Most of "
         "what "
         "it may be off comes from %s."),
      bf_error_source_name (worst->error.biggest));
}

static void
add_measuring (BfWork *work)
{
  g_autoptr (GArray) sizes = bf_main_sizes (work->fold);
  BfWorkStep *step = bf_work_add (work, BF_STAGE_FINISH, measuring_words (sizes));

  for (guint i = 0; i < sizes->len; i++)
    {
      const BfMainSize *size = bf_main_size (sizes, i);

      bf_work_add_number (step, bf_main_size_name (size),
                          bf_expected_size (work->fold, &size->error, size->size_mm));
    }
  step->shows = BF_SHOWS_FORMED;
  if (work->fold->bends->len > 0)
    step->more = BF_MORE_MEASURED;
}

/* TRUE for metals that rust where they are bare. */
static gboolean
rusts (const BfPart *part)
{
  return part->metal.material == NULL || g_str_has_prefix (part->metal.material, "mild");
}

void
bf_work_add_finish (BfWork *work)
{
  BfWorkStep *step;

  add_measuring (work);
  step = bf_work_add (work, BF_STAGE_FINISH,
                      g_strdup (rusts (work->fold->part)
                                    ? _ ("Round the edges that hands touch. Clean it, and paint it "
                                         "the same day: bare steel rusts.")
                                    : _ ("Round the edges that hands touch, and clean it.")));
  step->caution = _ ("Solvent and paint: moving air, no sparks near, rags outdoors to dry.");
  step->shows = BF_SHOWS_FORMED;
  step = bf_work_add (work, BF_STAGE_FINISH,
                      g_strdup (_ ("Before it holds anything, load it low down, with nobody under "
                                   "it, with more than it will ever carry.")));
  step->caution = _ ("Nothing here is a load rating: not for lifting, pressure, vehicles, overhead "
                     "or buildings.");
  step->shows = BF_SHOWS_FORMED;
}
