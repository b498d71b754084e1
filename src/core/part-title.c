/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-title.h"

#include <glib/gi18n.h>

const char *
bf_part_shown_name (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, "");

  return part->name != NULL && part->name[0] != '\0' ? part->name : _ ("Part without a name");
}

char *
bf_part_title (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, NULL);

  if (part->quantity < 2)
    return g_strdup (bf_part_shown_name (part));
  /* Translators: a part's name, and how many alike are made */
  return g_strdup_printf (_ ("%s, %u off"), bf_part_shown_name (part), part->quantity);
}
