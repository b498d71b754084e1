/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"
#include "paint/label-field.h"

/* Words that stand on the blank: one line, lying along a direction of the blank. */

typedef struct
{
  char *words;
  BfPlate plate;        /* the ground they take, in the blank's coordinates */
  double cap_height_mm; /* in millimetres of the blank */
  gboolean bold;
  gboolean has_leader; /* a thin line leads from leader_mm to the nearest of the words' ground */
  BfVec2 leader_mm;
} BfBlankLabel;

/* A label whose ground is as large as its words, its centre at (0, 0). words: (transfer full).
 * along: unit, the way they are read. Returns: (transfer full). */
BfBlankLabel *bf_blank_label_new (char *words, double cap_height_mm, gboolean bold, BfVec2 along)
    G_GNUC_WARN_UNUSED_RESULT;
void bf_blank_label_free (BfBlankLabel *label);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfBlankLabel, bf_blank_label_free)

/* Draws it in cr's present colour. cr as for bf_blank_view_draw(): y down, (x, y) at (x, −y). */
void bf_blank_label_draw (const BfBlankLabel *label, cairo_t *cr);

/* What a bend is told as, in few words: "fold up 90°". Returns: (transfer full). */
char *bf_blank_bend_words (const BfBendResult *bend) G_GNUC_WARN_UNUSED_RESULT;

/* The same where the angle could be misread: "fold down 30° (opening 150°, leans out)", "fold up
 * 180° (hem)"; a square bend needs no more words. Returns: (transfer full). */
char *bf_blank_bend_full_words (const BfBendResult *bend) G_GNUC_WARN_UNUSED_RESULT;
