/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <errno.h>
#include <string.h>

#include <glib/gi18n.h>
#include <glib/gstdio.h>

#include "core/setup-sentence.h"
#include "core/units.h"
#include "paint/pack-page.h"
#include "write/bench-outputs.h"
#include "write/numbers.h"
#include "write/pdf-pages.h"

/* What the page is drawn from. */
typedef struct
{
  const BfOutputs *outputs;
  const BfPaper *paper;
  BfPackCheck check;
} Pack;

/* ---- the note ----------------------------------------------------------------------------- */

static void
add_length (GString *text, const char *name, double length_mm, BfUnits units)
{
  gboolean inches = units == BF_UNITS_IN;

  g_string_append_printf (text, "%s: ", name);
  if (isfinite (length_mm))
    {
      bf_append_decimal (text, round (length_mm / (inches ? BF_MM_PER_INCH : 1.0) * 1e4) / 1e4);
      g_string_append (text, inches ? " in" : " mm");
    }
  else
    g_string_append (text, "none");
  g_string_append_c (text, '\n');
}

static void
add_check (GString *text, const char *name, double found_mm, double needed_mm, BfUnits units)
{
  g_autofree char *needed = g_strconcat (name, " needed", NULL);

  add_length (text, name, found_mm, units);
  add_length (text, needed, needed_mm, units);
  g_string_append_printf (text, "%s: %s\n", name, found_mm >= needed_mm ? "enough" : "TOO SMALL");
}

/* Words of a file: the same in every language. */
static char *
note_text (const Pack *pack)
{
  const BfFold *fold = pack->outputs->shown;
  const BfPart *part = fold->part;
  BfUnits units = part->units;
  BfVec2 size = bf_vec2_sub (fold->blank.box.max, fold->blank.box.min);
  g_autofree char *name = bf_pack_name (part);
  GString *text = g_string_new (NULL);

  g_string_append_printf (text, "%s\n\n", name);
  g_string_append_printf (text, "Quantity: %u\n", part->quantity);
  g_string_append_printf (text, "DXF unit: %s\n", units == BF_UNITS_IN ? "in" : "mm");
  g_string_append (text, "SVG unit: mm\nScale: 1:1\n");
  add_length (text, "Thickness", part->metal.thickness_mm, units);
  add_length (text, "Width", size.x, units);
  add_length (text, "Height", size.y, units);
  add_length (text, "Cut in all", fold->blank.cut_length_mm, units);
  g_string_append (text, "\nLayers: cut-inside before cut-outside; bend-up, bend-down and note are "
                         "not cut.\n");
  g_string_append (text, pack->check.kerf_taken
                             ? "Lines are the tool's middle: kerf is taken off.\n\n"
                             : "Lines are the finished edge: kerf is not taken off.\n\n");
  add_check (text, "Least hole", pack->check.hole_mm, pack->check.hole_needed_mm, units);
  add_check (text, "Least bridge", pack->check.bridge_mm, pack->check.bridge_needed_mm, units);
  for (guint i = 0; i < bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX); i++)
    g_string_append_printf (text, "\nDON'T CUT YET: %s\n", bf_fold_check (fold, i)->message);
  return g_string_free (text, FALSE);
}

/* ---- the page ----------------------------------------------------------------------------- */

static BfPdfPage
page_size (guint i, gconstpointer data)
{
  const Pack *pack = data;

  (void)i;
  return (BfPdfPage){ pack->paper->width_mm, pack->paper->height_mm, NULL };
}

static void
draw_page (guint i, cairo_t *cr, gconstpointer data)
{
  const Pack *pack = data;

  (void)i;
  bf_pack_page_draw (pack->outputs->shown, &pack->check, pack->paper, cr);
}

/* ---- all of it ---------------------------------------------------------------------------- */

static char *
path_in (const char *dir, const char *name, const char *suffix)
{
  g_autofree char *utf8 = g_strconcat (name, suffix, NULL);
  g_autofree char *file = g_filename_from_utf8 (utf8, -1, NULL, NULL, NULL);

  return g_build_filename (dir, file != NULL ? file : utf8, NULL);
}

gboolean
bf_outputs_add_pack (BfOutputs *outputs, BfOutputBatch *batch, const char *dir, GError **error)
{
  Pack pack = { outputs, bf_outputs_page_paper (outputs), { .hole_mm = 0.0 } };
  BfPdfPages pages = {
    .part = outputs->shown->part, .n_pages = 1, .page = page_size, .draw = draw_page, .data = &pack
  };
  g_autofree char *name = bf_pack_name (outputs->shown->part);
  g_autofree char *dxf = path_in (dir, name, ".dxf"), *svg = path_in (dir, name, ".svg");
  g_autofree char *pdf = path_in (dir, name, ".pdf"), *txt = path_in (dir, name, ".txt");
  g_autoptr (GBytes) page = NULL, note = NULL;
  char *text;

  bf_pack_check (outputs->shown, &pack.check);
  pack.check.kerf_taken = outputs->how.kerf;
  page = bf_pdf_pages (&pages, error);
  if (page == NULL)
    return FALSE;
  text = note_text (&pack);
  note = g_bytes_new_take (text, strlen (text));
  bf_output_batch_add (batch, pdf, page);
  bf_output_batch_add (batch, txt, note);
  return bf_outputs_add_pattern (outputs, batch, dxf, error) &&
         bf_outputs_add_pattern (outputs, batch, svg, error);
}
