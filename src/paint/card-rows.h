/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "make/sizes.h"
#include "make/work.h"

/* What stands on a make card one below the other, each measured before it is drawn. */

typedef enum
{
  BF_CARD_PICTURES,    /* the finished part and its blank */
  BF_CARD_STAGE,       /* the name of a stage */
  BF_CARD_STEP,        /* one step, with its box */
  BF_CARD_SIZES,       /* the sizes to be measured */
  BF_CARD_WHO,         /* name, class, date */
  BF_CARD_CUT_PICTURE, /* the blank with the order of its cuts */
  BF_CARD_CUT_HEAD,    /* what the columns of the cuts are */
  BF_CARD_CUT,         /* one cut */
} BfCardRowKind;

typedef struct
{
  BfCardRowKind kind;
  guint at;       /* the stage; the step, in work->steps; the cut, in work->cuts */
  gboolean warns; /* a step whose caution does not stand with the one before */
  double height_mm;
  guint page;
  double y_mm; /* of its upper edge, on that page */
} BfCardRow;

/* All rows of a card of that width, with their heights; not placed yet.
 * Returns: (transfer full) (element-type BfCardRow). */
GArray *bf_card_rows (const BfWork *work, double width_mm) G_GNUC_WARN_UNUSED_RESULT;

/* Adds a step and, where its caution is not that of the row before, the caution. */
void bf_card_add_step (const BfWork *work, guint step, double width_mm, GArray *rows);

/* Draws a row from (0, 0) down. */
void bf_card_row_draw (const BfWork *work, const BfCardRow *row, double width_mm, cairo_t *cr);
