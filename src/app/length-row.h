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

/* Hands over what is typed with each key as well, and lets the arrow keys up and down step it:
 * tenths of a mm below 5 mm and whole ones above, 5 thousandths of an inch below 1/5 in and 1/16
 * above. usual_mm: what an empty entry steps from. row: of bf_length_row_new(). */
void bf_length_row_make_live (GtkWidget *row, double usual_mm);

/* What stands in an entry. FALSE, with length NAN and the entry marked, where it is no length; TRUE
 * with NAN where it is empty. */
gboolean bf_length_entry_read (GtkEntry *entry, BfUnits units, double *length_mm);
