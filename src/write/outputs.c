/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/outputs.h"

#include <string.h>

#include "core/units.h"
#include "write/dxf.h"
#include "write/marking-csv.h"
#include "write/marking-pdf.h"
#include "write/pattern-pdf.h"
#include "write/report.h"
#include "write/strip-pdf.h"
#include "write/svg.h"
#include "write/template-pdf.h"

/* The fold itself where the units are the same, so that nothing is worked out twice. */
static BfFold *
fold_in_units (BfFold *fold, BfUnits units)
{
  g_autoptr (BfPart) part = NULL;

  if (fold->part->units == units)
    return bf_fold_ref (fold);
  part = bf_part_copy (fold->asked);
  part->units = units;
  return bf_fold (part);
}

BfOutputs *
bf_outputs_new (BfPart *part, const BfUnits *units, const BfPaper *paper)
{
  BfOutputs *outputs;

  g_return_val_if_fail (part != NULL, NULL);

  outputs = g_new0 (BfOutputs, 1);
  outputs->fold = bf_fold (part);
  outputs->shown = fold_in_units (outputs->fold, units != NULL ? *units : part->units);
  outputs->paper = paper;
  return outputs;
}

void
bf_outputs_free (BfOutputs *outputs)
{
  if (outputs == NULL)
    return;
  bf_fold_unref (outputs->fold);
  bf_fold_unref (outputs->shown);
  g_clear_pointer (&outputs->template, bf_template_free);
  g_free (outputs);
}

void
bf_outputs_set_how (BfOutputs *outputs, const BfOutputHow *how)
{
  g_return_if_fail (outputs != NULL && how != NULL && outputs->template == NULL);

  outputs->how = *how;
}

const BfPaper *
bf_outputs_page_paper (const BfOutputs *outputs)
{
  gboolean is_cut = outputs->paper != NULL && outputs->paper->kind == BF_PAPER_CUT;

  return is_cut ? outputs->paper : bf_paper_of_locale ();
}

BfWork *
bf_outputs_work (const BfOutputs *outputs)
{
  BfWorkOptions options = { outputs->how.marks, outputs->how.guide_offset_mm };

  return bf_work_new (outputs->shown, &options);
}

static const BfTemplate *
lay_out_template (BfOutputs *outputs)
{
  BfTemplateOptions options = outputs->how.template;

  options.units = outputs->shown->part->units;
  options.date = NULL;
  options.paper = outputs->paper != NULL ? outputs->paper : bf_paper_of_locale ();
  if (outputs->template == NULL)
    outputs->template = bf_template_new (outputs->shown, &options);
  return outputs->template;
}

char *
bf_outputs_report (BfOutputs *outputs)
{
  g_return_val_if_fail (outputs != NULL, NULL);

  return bf_report_text (outputs->fold, outputs->paper != NULL ? lay_out_template (outputs) : NULL);
}

gboolean
bf_outputs_add_template (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  g_autoptr (GBytes) pdf = NULL;

  g_return_val_if_fail (outputs != NULL && batch != NULL, FALSE);

  pdf = bf_template_pdf (lay_out_template (outputs), error);
  if (pdf == NULL)
    return FALSE;
  bf_output_batch_add (batch, path, pdf);
  return TRUE;
}

gboolean
bf_outputs_add_marking (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  g_autoptr (BfWork) work = bf_outputs_work (outputs);
  g_autoptr (BfMarkingPages) pages = NULL;
  g_autoptr (GBytes) bytes = NULL;
  char *text;

  if (bf_output_has_suffix (path, ".csv"))
    {
      text = bf_marking_csv (work);
      bytes = g_bytes_new_take (text, strlen (text));
    }
  else
    {
      pages = bf_marking_pages_new (work, bf_outputs_page_paper (outputs));
      bytes = bf_marking_pdf (pages, error);
    }
  if (bytes == NULL)
    return FALSE;
  bf_output_batch_add (batch, path, bytes);
  return TRUE;
}

gboolean
bf_outputs_add_strip (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  const BfPart *part = outputs->shown->asked;
  g_autoptr (BfStripPage) page =
      bf_strip_page_new (part, bf_outputs_page_paper (outputs), part->units, NULL);
  g_autoptr (GBytes) pdf = bf_strip_pdf (page, error);

  if (pdf == NULL)
    return FALSE;
  bf_output_batch_add (batch, path, pdf);
  return TRUE;
}

static GBytes *
pattern_bytes (BfOutputs *outputs, const char *path, GError **error)
{
  gboolean is_dxf = bf_output_has_suffix (path, ".dxf");
  const BfPatternOptions options = { .drawn_in = is_dxf ? outputs->shown->part->units : BF_UNITS_MM,
                                     .kerf = outputs->how.kerf,
                                     .bend_lines = outputs->how.bend_lines };
  g_autoptr (BfPattern) pattern = bf_pattern_new (outputs->shown, &options);
  char *text;

  if (bf_output_has_suffix (path, ".pdf"))
    return bf_pattern_pdf (pattern, error);
  text = is_dxf ? bf_dxf_text (pattern, options.drawn_in) : bf_svg_text (pattern);
  return g_bytes_new_take (text, strlen (text));
}

gboolean
bf_outputs_add_pattern (BfOutputs *outputs, BfOutputBatch *batch, const char *path, GError **error)
{
  g_autoptr (GBytes) bytes = NULL;

  g_return_val_if_fail (outputs != NULL && batch != NULL && path != NULL, FALSE);

  bytes = pattern_bytes (outputs, path, error);
  if (bytes == NULL)
    return FALSE;
  bf_output_batch_add (batch, path, bytes);
  return TRUE;
}
