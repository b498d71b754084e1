/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "app/surface-view.h"

/* A ring that for a moment says "here", and the flight that brings its place to the middle of the
 * surface. */

typedef struct _BfPlaceMark BfPlaceMark;

/* widget: what the mark is painted on; it outlives the mark. view is kept by reference. */
BfPlaceMark *bf_place_mark_new (GtkWidget *widget, BfSurfaceView *view) G_GNUC_WARN_UNUSED_RESULT;
void bf_place_mark_free (BfPlaceMark *mark);

/* Flies to a point of the blank and marks it. Where the person wants no animations, the view is
 * there at once and the ring only stands. */
void bf_place_mark_show (BfPlaceMark *mark, BfVec2 blank_mm);

/* cr in pixels from the widget's upper left corner. Paints nothing once its moment is over. */
void bf_place_mark_paint (BfPlaceMark *mark, cairo_t *cr);

/* Makes the view show that point of the blank at px, at that many pixels a millimetre. */
void bf_surface_view_bring (BfSurfaceView *view, BfVec2 blank_mm, BfVec2 px, double scale);
