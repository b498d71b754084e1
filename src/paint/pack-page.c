/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/pack-page.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "paint/figure.h"
#include "paint/page-head.h"
#include "paint/palette.h"

#define FORMED_MM 62.0
#define LINES_MM 46.0
#define GAP_MM 5.0

static char *
found_words (const BfFold *fold, const char *what, double found_mm, double needed_mm)
{
  g_autofree char *found = bf_format_length (found_mm, fold->part->units);
  g_autofree char *needed = bf_format_length (needed_mm, fold->part->units);

  if (!isfinite (found_mm))
    /* Translators: what was looked for, "least hole" */
    return g_strdup_printf (_ ("%s: there is none"), what);
  return g_strdup_printf (found_mm < needed_mm
                              /* Translators: "least hole", and two lengths with their units */
                              ? _ ("%s: %s, less than the %s that cuts well")
                              /* Translators: "least hole", and two lengths with their units */
                              : _ ("%s: %s, and %s is enough"),
                          what, found, needed);
}

static void
draw_lines (const BfFold *fold, const BfPackCheck *check, double width_mm, cairo_t *cr)
{
  BfUnits units = fold->part->units;
  g_autofree char *cut = bf_format_length (fold->blank.cut_length_mm, units);
  char *const lines[] = {
    found_words (fold, _ ("Least hole"), check->hole_mm, check->hole_needed_mm),
    found_words (fold, _ ("Least bridge"), check->bridge_mm, check->bridge_needed_mm),
    /* Translators: a length with its unit */
    g_strdup_printf (_ ("Cut in all: %s"), cut),
    g_strdup (check->kerf_taken ? _ ("Lines are the tool's middle: the kerf is taken off.")
                                : _ ("Lines are the finished edge: the kerf is not taken off.")),
    g_strdup (_ ("Bend lines stand in a layer of their own and are not cut.")),
  };
  double y = BF_PAGE_CAP_MM;

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      y += bf_page_words (cr, lines[i], bf_vec2 (0.0, y), width_mm, FALSE) + 1.5;
      g_free (lines[i]);
    }
}

void
bf_pack_page_draw (const BfFold *fold, const BfPackCheck *check, const BfPaper *paper, cairo_t *cr)
{
  BfPageHead head = { .fold = fold, .paper = paper, .title = _ ("To be cut") };
  double width = paper->width_mm - 2.0 * BF_PAGE_MARGIN_MM, top = bf_page_head_draw (&head, cr);
  double below = paper->height_mm - BF_PAGE_MARGIN_MM - MAX (FORMED_MM, LINES_MM);

  cairo_save (cr);
  cairo_translate (cr, BF_PAGE_MARGIN_MM, top);
  bf_figure_blank (fold, bf_vec2 (width, below - top - GAP_MM), cr);
  cairo_restore (cr);
  bf_page_rule (cr, bf_vec2 (BF_PAGE_MARGIN_MM, below - GAP_MM / 2.0), width);
  cairo_save (cr);
  cairo_translate (cr, BF_PAGE_MARGIN_MM, below + GAP_MM / 2.0);
  bf_figure_formed (fold, &fold->formed, -1, bf_vec2 (FORMED_MM * 1.3, FORMED_MM - GAP_MM), cr);
  cairo_translate (cr, FORMED_MM * 1.3 + GAP_MM, 0.0);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  draw_lines (fold, check, width - FORMED_MM * 1.3 - GAP_MM, cr);
  cairo_restore (cr);
}
