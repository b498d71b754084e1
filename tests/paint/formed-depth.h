/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/formed-stack.h"

/* The plainest way to see what hides what: for every pixel, every polygon of the scene is asked
 * how near it is. It shares nothing with the painting but the scene. */

#define BF_DEPTH_SIZE 120

typedef struct
{
  double scale;    /* pixels a mm */
  double x0, y0;   /* the picture's place of the first pixel's corner, y up */
  int *faces;      /* by pixel, row after row from the top: the face, −1 for none */
  double *nearest; /* by pixel */
} BfDepth;

/* Renders the scene, back faces too, so that it fills most of a square picture. */
BfDepth *bf_depth_render (const BfFormedScene *scene, const BfFrame *eye);
void bf_depth_free (BfDepth *depth);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfDepth, bf_depth_free)

/* The middle of a pixel in the picture, y up. */
BfVec2 bf_depth_middle (const BfDepth *depth, guint column, guint row);

/* TRUE where one of the four pixels beside it shows another face, or at the picture's border. */
gboolean bf_depth_is_edge (const BfDepth *depth, guint column, guint row);
