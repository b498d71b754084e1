/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/second-make.h"

/* The main sizes of a finished part, as asked, and how far off each is to be expected. */

typedef struct
{
  const char *name; /* of a flange: the fold's string; NULL for the base's two */
  gboolean across;  /* of the base's: along y, not x */
  double size_mm;   /* by the part's measure */
  BfExpectedError error;
  BfMadeSize made; /* for bf_second_make(), once it is measured: NAN until then */
} BfMainSize;

/* The base along x and y, from bend to bend or to a cut edge, then every flange's length in the
 * order of fold->bends; tabs that the corners were given are left out.
 * Returns: (transfer full) (element-type BfMainSize): keep the fold as long. */
GArray *bf_main_sizes (const BfFold *fold) G_GNUC_WARN_UNUSED_RESULT;

/* What it is called: the flange's name, or "base width". The fold's string, or translated. */
const char *bf_main_size_name (const BfMainSize *size);

static inline const BfMainSize *
bf_main_size (const GArray *sizes, guint i)
{
  return &g_array_index (sizes, BfMainSize, i);
}
