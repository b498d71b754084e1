/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"
#include "paint/template.h"
#include "write/output-batch.h"

/* The outputs of one part, worked out in memory and added to a batch; nothing is written here. */

typedef struct
{
  BfFold *fold;         /* in the part's own units: the report's */
  BfFold *shown;        /* in the units that words and drawings are to have */
  const BfPaper *paper; /* NULL: not given */
  BfTemplate *template; /* laid out when it is first needed; NULL before */
} BfOutputs;

/* units: those of words and drawings, or NULL for the part's own. paper: of the template, or NULL
 * for the locale's. The part is kept by reference. Returns: (transfer full). */
BfOutputs *
bf_outputs_new (BfPart *part, const BfUnits *units, const BfPaper *paper) G_GNUC_WARN_UNUSED_RESULT;
void bf_outputs_free (BfOutputs *outputs);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfOutputs, bf_outputs_free)

/* The report; its pages are null where no paper was given. Returns: (transfer full). */
char *bf_outputs_report (BfOutputs *outputs) G_GNUC_WARN_UNUSED_RESULT;

/* FALSE with error set where the drawing library gave up. */
gboolean bf_outputs_add_template (BfOutputs *outputs,
                                  BfOutputBatch *batch,
                                  const char *path,
                                  GError **error);

/* Marking-out as path's suffix says, .pdf or .csv, to 0.5 mm or 1/32 in. FALSE as above. */
gboolean
bf_outputs_add_marking (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error);

/* A pattern as path's suffix says, .svg or .dxf. */
void bf_outputs_add_pattern (BfOutputs *outputs, BfOutputBatch *batch, const char *path);
