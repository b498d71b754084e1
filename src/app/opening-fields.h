/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "app/field-places.h"
#include "app/surface-scene.h"

/* The sizes of the selected hole or cut-out, as entries: what its shape has beside it, and its two
 * distances each on the line that it is measured along. They are made when they are first wanted.
 */

typedef struct _BfOpeningFields BfOpeningFields;

/* parent: the bench top, whose children they become; neither it nor the others are kept alive. */
BfOpeningFields *bf_opening_fields_new (GtkWidget *parent,
                                        BfDocument *document,
                                        BfSurfaceScene *scene) G_GNUC_WARN_UNUSED_RESULT;
void bf_opening_fields_free (BfOpeningFields *fields);

/* Shows the sizes as they are in the document's part now. */
void bf_opening_fields_update (BfOpeningFields *fields);

/* Most that ask for a place. */
#define BF_OPENING_ASKS 3

/* What wants a place, now; returns how many. */
guint bf_opening_fields_ask (BfOpeningFields *fields, BfFieldAsk *asks);

/* Gives them the places found for what they asked, in the parent's size_allocate. */
void bf_opening_fields_allocate (BfOpeningFields *fields, const BfFieldPlace *places);

void bf_opening_fields_snapshot (BfOpeningFields *fields, GtkSnapshot *snapshot);

/* As Tab walks them, if they are that opening's. */
void bf_opening_fields_add_stops (BfOpeningFields *fields, BfSelection selection, GPtrArray *stops);

/* The opening that the widget belongs to, BF_SELECTION_NONE for any other widget. */
BfSelection bf_opening_fields_selection (BfOpeningFields *fields, GtkWidget *widget);
