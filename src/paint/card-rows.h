/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/sizes.h"
#include "make/work.h"

/* What stands on a make card one below the other, each measured before it is drawn. */

typedef enum
{
  BF_CARD_PICTURES, /* the finished part and its blank */
  BF_CARD_STAGE,    /* the name of a stage */
  BF_CARD_STEP,     /* one step, with its box */
  BF_CARD_SIZES,    /* the sizes to be measured */
  BF_CARD_WHO,      /* name, class, date */
} BfCardRowKind;

typedef struct
{
  BfCardRowKind kind;
  guint at;       /* the stage; the step, in work->steps */
  gboolean warns; /* a step whose caution does not stand with the one before */
  double height_mm;
  guint page;
  double y_mm; /* of its upper edge, on that page */
} BfCardRow;

/* All rows of a card of that width, with their heights; not placed yet.
 * Returns: (transfer full) (element-type BfCardRow). */
GArray *bf_card_rows (const BfWork *work, double width_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Draws a row from (0, 0) down. */
void bf_card_row_draw (const BfWork *work, const BfCardRow *row, double width_mm, cairo_t *cr);
