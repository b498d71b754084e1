/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/ring.h"

/* Finds out where words may stand so that they hide no line, no other words, and are not cut off
 * by what is seen. */

/* The ground that words take: a rectangle lying along a direction. */
typedef struct
{
  BfVec2 centre;
  BfVec2 along; /* unit: the way the words are read */
  double width, height;
} BfPlate;

typedef struct _BfLabelField BfLabelField;

/* view: what is seen, words stay in it; NULL where everything is. clearance_mm: how far words
 * stay from lines. Returns: (transfer full). */
BfLabelField *bf_label_field_new (const BfBox *view, double clearance_mm) G_GNUC_WARN_UNUSED_RESULT;
void bf_label_field_free (BfLabelField *field);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfLabelField, bf_label_field_free)

/* What words must not cover. */
void bf_label_field_add_line (BfLabelField *field, BfVec2 a, BfVec2 b);
void bf_label_field_add_ring (BfLabelField *field, const BfRing *ring);
void bf_label_field_add_plate (BfLabelField *field, const BfPlate *plate);

/* TRUE where nothing is hidden by words there, and they are seen whole. */
gboolean bf_label_field_is_free (const BfLabelField *field, const BfPlate *plate);

/* The four corners of the ground, counter-clockwise. */
void bf_plate_corners (const BfPlate *plate, BfVec2 corners[4]);

/* The stretch of a line that lies in the box: moves a and b inward. FALSE where none does. */
gboolean bf_box_clip_line (const BfBox *box, BfVec2 *a, BfVec2 *b);
