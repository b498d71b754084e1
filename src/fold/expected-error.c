/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/expected-error.h"

/* All of these: common practice, either way, in mm. */
static const double marking_mm[] = {
  [BF_CUTTING_DISC] = 0.3,
  [BF_CUTTING_SNIPS] = 0.3,
  [BF_CUTTING_TABLE] = 0.1,
  [BF_CUTTING_SERVICE] = 0.1,
};

static const double cutting_mm[] = {
  [BF_CUTTING_DISC] = 0.7,
  [BF_CUTTING_SNIPS] = 0.5,
  [BF_CUTTING_TABLE] = 0.15,
  [BF_CUTTING_SERVICE] = 0.1,
};

static const double bending_mm[] = {
  [BF_BEND_WAY_UNSET] = 0.5, [BF_BEND_WAY_BRAKE] = 0.3, [BF_BEND_WAY_BAR] = 0.5,
  [BF_BEND_WAY_SLOTS] = 0.3, [BF_BEND_WAY_SCORE] = 0.2,
};

double
bf_error_of_source (const BfFold *fold, guint bend, BfErrorSource source)
{
  BfCuttingWay by = fold->part->cutting.by;
  const BfBendResult *made = bend < fold->bends->len ? bf_fold_bend (fold, bend) : NULL;

  switch (source)
    {
    case BF_ERROR_MARKING:
      return marking_mm[by];
    case BF_ERROR_CUTTING:
      return cutting_mm[by];
    case BF_ERROR_BENDING:
      return made == NULL ? 0.0 : bending_mm[made->way];
    case BF_ERROR_ALLOWANCE:
      return made == NULL ? 0.0 : made->k_error;
    case BF_N_ERROR_SOURCES:
    default:
      g_return_val_if_reached (0.0);
    }
}

/* Adds to a square sum. */
static void
add (BfExpectedError *error, BfErrorSource source, double by_mm)
{
  error->parts_mm[source] = hypot (error->parts_mm[source], by_mm);
}

/* A bend ends the size where its line was marked and made; of a wrong allowance half comes off on
 * each side of the line. */
static void
add_bend (const BfFold *fold, guint bend, BfExpectedError *error)
{
  const BfBendResult *made = bf_fold_bend (fold, bend);
  double angle = made->angle_rad, t = bf_bend_skin_mm (fold, made);

  add (error, BF_ERROR_MARKING, bf_error_of_source (fold, bend, BF_ERROR_MARKING));
  add (error, BF_ERROR_BENDING, bf_error_of_source (fold, bend, BF_ERROR_BENDING));
  add (error, BF_ERROR_ALLOWANCE,
       bf_error_of_source (fold, bend, BF_ERROR_ALLOWANCE) * angle * t / 2.0);
}

void
bf_expected_error (const BfFold *fold,
                   const guint *bends,
                   guint n_bends,
                   guint n_cut_edges,
                   BfExpectedError *error)
{
  *error = (BfExpectedError){ .total_mm = 0.0 };
  for (guint i = 0; i < n_bends; i++)
    add_bend (fold, bends[i], error);
  for (guint i = 0; i < n_cut_edges; i++)
    {
      add (error, BF_ERROR_MARKING, bf_error_of_source (fold, 0, BF_ERROR_MARKING));
      add (error, BF_ERROR_CUTTING, bf_error_of_source (fold, 0, BF_ERROR_CUTTING));
    }
  for (BfErrorSource source = 0; source < BF_N_ERROR_SOURCES; source++)
    {
      error->total_mm = hypot (error->total_mm, error->parts_mm[source]);
      if (error->parts_mm[source] > error->parts_mm[error->biggest])
        error->biggest = source;
    }
}
