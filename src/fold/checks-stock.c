/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-stock.h"

#include <glib/gi18n.h>

#include "fold/checks.h"
#include "fold/stock.h"

void
bf_checks_find_stock (BfFold *fold)
{
  BfUnits units = fold->part->units;
  BfVec2 size = bf_vec2_sub (fold->blank.box.max, fold->blank.box.min);
  double shorter, longer;
  g_autofree char *largest = bf_stock_largest (units, &shorter, &longer);
  g_autofree char *fits = bf_stock_name (size.x, size.y, units);
  g_autofree char *width = bf_checks_length (fold, size.x);
  g_autofree char *height = bf_checks_length (fold, size.y);
  gboolean too_long = MAX (size.x, size.y) > longer;
  BfCheck check = { .code = "blank-over-stock",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = too_long ? MAX (size.x, size.y) : MIN (size.x, size.y),
                    .needed = too_long ? longer : shorter,
                    .place = fold->blank.box.min };

  if (fold->blank.rings->len == 0 || fits != NULL)
    return;
  bf_checks_add (fold, check, "base",
                 /* Translators: two lengths with their units, and the size of stock */
                 g_strdup_printf (_ ("The blank, %s by %s, is larger than stock that is sold "
                                     "everywhere, %s at most. Make it of two parts that are "
                                     "joined."),
                                  width, height, largest));
}
