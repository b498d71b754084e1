/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <cairo.h>

#include "fold/fold.h"
#include "paint/paper.h"

/* A card model of a part on one page: folded again for the thickness of stiff paper, without
 * reliefs and slots, at a scale that fits, with tabs to glue it by. */

/* Stiff drawing paper of some 200 g/m² (common practice). */
#define BF_MODEL_PAPER_MM 0.25

/* A tab along the free edge of a wall, to be glued behind the one that it meets. */
typedef struct
{
  BfVec2 corners[4]; /* in the model's blank: along the edge, and back outside of it */
} BfGlueTab;

typedef struct
{
  BfFold *fold;  /* the part in metal */
  BfFold *model; /* the part in paper, in the sizes of the metal one */
  const BfPaper *paper;
  double scale;  /* so many mm of the part are 1 mm of the model */
  gboolean turn; /* the blank stands a quarter turn round on the page */
  GArray *tabs;  /* BfGlueTab */
} BfModel;

/* The fold is kept by reference, paper by pointer. Returns: (transfer full). */
BfModel *bf_model_new (BfFold *fold, const BfPaper *paper) G_GNUC_WARN_UNUSED_RESULT;
void bf_model_free (BfModel *model);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfModel, bf_model_free)

/* Draws the page in millimetres from its upper left corner. */
void bf_model_draw (const BfModel *model, cairo_t *cr);
