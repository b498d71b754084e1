/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/document.h"
#include "app/surface-scene.h"

/* The sizes that stand beside their edges on the bench top, as entries: length and angle of each
 * flange, width and depth of a base that is a rectangle, else the length of the base's selected
 * edge; and those of the selected hole or cut-out. */

typedef struct _BfSurfaceFields BfSurfaceFields;

/* parent: the bench top, whose children they become; neither it nor the others are kept alive. */
BfSurfaceFields *bf_surface_fields_new (GtkWidget *parent,
                                        BfDocument *document,
                                        BfSurfaceScene *scene) G_GNUC_WARN_UNUSED_RESULT;

/* Before the parent is gone. */
void bf_surface_fields_free (BfSurfaceFields *fields);

/* Shows the document's part now. */
void bf_surface_fields_update (BfSurfaceFields *fields);

/* Gives them their places, in the parent's size_allocate. */
void bf_surface_fields_allocate (BfSurfaceFields *fields);

/* Draws them, in the parent's snapshot. */
void bf_surface_fields_snapshot (BfSurfaceFields *fields, GtkSnapshot *snapshot);

/* Adds those that are seen and belong to that edge to a list of widgets, as Tab walks them. */
void bf_surface_fields_add_stops (BfSurfaceFields *fields, BfSelection selection, GPtrArray *stops);

/* The edge that a field belongs to; BF_SELECTION_NONE for any other widget. */
BfSelection bf_surface_fields_selection (BfSurfaceFields *fields, GtkWidget *field);
