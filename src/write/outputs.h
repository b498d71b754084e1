/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"
#include "make/work.h"
#include "paint/template.h"
#include "write/output-batch.h"
#include "write/pattern.h"

/* The outputs of one part, worked out in memory and added to a batch; nothing is written here. */

/* How outputs are made, beyond paper and units; all zero is what holds where nothing is asked. */
typedef struct
{
  BfTemplateOptions template; /* its paper, units and date are not looked at */
  gboolean kerf;              /* of patterns */
  BfBendLines bend_lines;
  const BfRuleMarks *marks; /* of marking out; NULL: the finest */
  double guide_offset_mm;   /* of cuts: from the guide to the cut */
} BfOutputHow;

typedef struct
{
  BfFold *fold;         /* in the part's own units: the report's */
  BfFold *shown;        /* in the units that words and drawings are to have */
  const BfPaper *paper; /* NULL: not given */
  BfOutputHow how;
  BfTemplate *template; /* laid out when it is first needed; NULL before */
} BfOutputs;

/* units: those of words and drawings, or NULL for the part's own. paper: of the template, or NULL
 * for the locale's. The part is kept by reference. Returns: (transfer full). */
BfOutputs *
bf_outputs_new (BfPart *part, const BfUnits *units, const BfPaper *paper) G_GNUC_WARN_UNUSED_RESULT;
void bf_outputs_free (BfOutputs *outputs);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfOutputs, bf_outputs_free)

/* To be called before anything is worked out. how is copied; the pens it names are kept by
 * reference. */
void bf_outputs_set_how (BfOutputs *outputs, const BfOutputHow *how);

/* The work on the part, from the metal to the finished thing. Returns: (transfer full). */
BfWork *bf_outputs_work (const BfOutputs *outputs) G_GNUC_WARN_UNUSED_RESULT;

/* What pages other than the template's are printed on: the paper that was given, but never a roll.
 */
const BfPaper *bf_outputs_page_paper (const BfOutputs *outputs);

/* The report; its pages are null where no paper was given. Returns: (transfer full). */
char *bf_outputs_report (BfOutputs *outputs) G_GNUC_WARN_UNUSED_RESULT;

/* FALSE with error set where the drawing library gave up. */
gboolean bf_outputs_add_template (BfOutputs *outputs,
                                  BfOutputBatch *batch,
                                  const char *path,
                                  GError **error);

/* Marking-out as path's suffix says, .pdf or .csv. FALSE as above. */
gboolean
bf_outputs_add_marking (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error);

/* Strips for a trial bend of the part's metal, thickness, way and radius. FALSE as above. */
gboolean
bf_outputs_add_strip (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error);

/* A pattern as path's suffix says, .svg, .dxf or .pdf. FALSE as above. */
gboolean
bf_outputs_add_pattern (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error);
