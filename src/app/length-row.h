/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/part.h"

/* An entry for a length that may be left out. */

/* length_mm: NAN where the entry was emptied. */
typedef void (*BfLengthGiven) (double length_mm, gpointer user_data);

/* length_mm: NAN shows the entry empty, with the placeholder for what then holds. What is typed is
 * handed over by Return or by leaving the entry; words that are no length stay, marked, with what
 * is wrong as their tip. */
GtkWidget *bf_length_row_new (double length_mm,
                              BfUnits units,
                              const char *placeholder,
                              BfLengthGiven given,
                              gpointer user_data);

/* What stands in an entry. FALSE, with length NAN and the entry marked, where it is no length; TRUE
 * with NAN where it is empty. */
gboolean bf_length_entry_read (GtkEntry *entry, BfUnits units, double *length_mm);
