/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "app/document.h"
#include "app/size-text.h"

/* A size given to an edge, as one named step of a document. */

/* What the size is of. */
typedef struct
{
  const char *flange; /* its id; NULL for an edge of the base */
  guint edge;         /* of the base */
} BfSizeTarget;

/* What that size is called, for people and as the name of the step: "Length of front", "Width".
 * Returns: (transfer full). */
char *bf_size_edit_name (const BfPart *part,
                         const BfSizeTarget *target,
                         BfSizeFieldKind kind) G_GNUC_WARN_UNUSED_RESULT;

/* stepped: by an arrow key; such steps in a row make one. Nothing happens where the size is that
 * already. */
void bf_size_edit_length (BfDocument *document,
                          const BfSizeTarget *target,
                          double length_mm,
                          gboolean stepped);
void bf_size_edit_angle (BfDocument *document,
                         const BfSizeTarget *target,
                         double angle_deg,
                         gboolean stepped);

/* How a bend's angle reads where it could be taken for another: "opening 75°, leans in".
 * Returns: (transfer full). */
char *bf_angle_in_words (double angle_deg) G_GNUC_WARN_UNUSED_RESULT;
