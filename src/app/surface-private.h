/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/surface.h"

/* Shared by the bench top's own files. */

BfDocument *bf_surface_get_document (BfSurface *self);

/* Selects, and gives the keyboard to the edge's handle if it is one. */
void bf_surface_choose (BfSurface *self, BfSelection selection);

/* The edge that the pointer is over. */
void bf_surface_point_at (BfSurface *self, BfSelection selection);

/* Opens the popover at what is selected, beside where it is seen in that picture. take_focus: by
 * the keyboard. */
void bf_surface_popup (BfSurface *self, BfPicture picture, gboolean take_focus);

/* FALSE where it was not open. */
gboolean bf_surface_popdown (BfSurface *self);

/* What the handle with the keyboard stands for, or BF_SELECTION_NONE. */
BfSelection bf_surface_get_focused_edge (BfSurface *self);

/* Takes hold of what is selected; from then on the part follows the pointer, once a frame. FALSE
 * where nothing there can be dragged. */
gboolean bf_surface_begin_drag (BfSurface *self, BfSelection selection, BfVec2 px);
void bf_surface_drag (BfSurface *self, BfVec2 px, gboolean finely);
void bf_surface_end_drag (BfSurface *self, gboolean back);
gboolean bf_surface_is_dragging (BfSurface *self);

/* Installs the actions here.… on the class: what can be done at what is selected. In
 * surface-actions.c. */
void bf_surface_class_install_actions (GtkWidgetClass *widget_class);

/* For the surface's own init. Pointer and touch in surface-gestures.c, keys in surface-keys.c. */
void bf_surface_add_gestures (BfSurface *self);
void bf_surface_add_keys (BfSurface *self);
