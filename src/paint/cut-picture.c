/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/cut-picture.h"

#include <glib/gi18n.h>

#include "paint/figure.h"
#include "paint/palette.h"
#include "paint/text.h"

#define LIT_MM 0.9
#define ROUND_MM 7.0 /* room round the blank */
#define WASTE_MM 4.0
#define BAR_MM 4.0
#define BAR_BEYOND_MM 6.0 /* at either end of the cut: a guide is clamped there */
#define HATCH_MM 1.3
#define CAP_MM 2.3
#define GAP_MM 1.0
#define BAR_ALPHA 0.45

static BfFigurePlace
place_in (const BfWork *work, BfVec2 size_mm)
{
  BfVec2 both = bf_vec2 (2.0 * ROUND_MM, 2.0 * ROUND_MM);
  BfFigurePlace place = bf_figure_place (work->fold, bf_vec2_sub (size_mm, both));

  place.left += ROUND_MM;
  place.bottom += ROUND_MM;
  return place;
}

static BfVec2
on_paper (const BfFigurePlace *place, BfVec2 p)
{
  return bf_vec2 (place->left + place->scale * p.x, place->bottom - place->scale * p.y);
}

/* ---- both sides --------------------------------------------------------------------------- */

static BfVec2
waste_way (const BfCut *cut)
{
  return bf_vec2 (cut->waste.x, -cut->waste.y);
}

static void
set_strip (BfCutStrip *strip, const BfVec2 edge[2], BfVec2 deep)
{
  *strip = (BfCutStrip){ { edge[0], edge[1], bf_vec2_add (edge[1], deep),
                           bf_vec2_add (edge[0], deep) } };
}

gboolean
bf_cut_picture_guide (const BfWork *work, guint at, BfVec2 size_mm, BfCutStrip *strip)
{
  BfFigurePlace place = place_in (work, size_mm);
  const BfCut *cut = bf_cut (work->cuts, at);
  BfVec2 edge[2], along;

  if (place.scale <= 0.0 || work->fold->part->cutting.by != BF_CUTTING_DISC)
    return FALSE;
  bf_cut_guide (cut, work->guide_offset_mm, edge);
  along = bf_vec2_unit (bf_vec2_sub (on_paper (&place, edge[1]), on_paper (&place, edge[0])));
  edge[0] = bf_vec2_along (on_paper (&place, edge[0]), along, -BAR_BEYOND_MM);
  edge[1] = bf_vec2_along (on_paper (&place, edge[1]), along, BAR_BEYOND_MM);
  set_strip (strip, edge, bf_vec2_scale (waste_way (cut), -BAR_MM));
  return TRUE;
}

gboolean
bf_cut_picture_waste (const BfWork *work, guint at, BfVec2 size_mm, BfCutStrip *strip)
{
  BfFigurePlace place = place_in (work, size_mm);
  const BfCut *cut = bf_cut (work->cuts, at);
  BfVec2 edge[2] = { on_paper (&place, cut->from), on_paper (&place, cut->to) };

  if (place.scale <= 0.0)
    return FALSE;
  set_strip (strip, edge, bf_vec2_scale (waste_way (cut), WASTE_MM));
  return TRUE;
}

/* ---- drawing ------------------------------------------------------------------------------ */

static void
trace (const BfCutStrip *strip, cairo_t *cr)
{
  cairo_new_path (cr);
  for (guint i = 0; i < G_N_ELEMENTS (strip->at); i++)
    cairo_line_to (cr, strip->at[i].x, strip->at[i].y);
  cairo_close_path (cr);
}

static void
hatch (const BfCutStrip *strip, cairo_t *cr)
{
  double x0, y0, x1, y1;

  cairo_save (cr);
  trace (strip, cr);
  cairo_path_extents (cr, &x0, &y0, &x1, &y1);
  cairo_clip (cr);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  for (double x = x0 - (y1 - y0); x < x1; x += HATCH_MM)
    {
      cairo_move_to (cr, x, y1);
      cairo_line_to (cr, x + (y1 - y0), y0);
    }
  cairo_stroke (cr);
  cairo_restore (cr);
}

/* Words beyond a strip's far side, on a ground of their own, within the box. */
static void
tell (const char *words, const BfCutStrip *strip, BfVec2 size_mm, cairo_t *cr)
{
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, TRUE);
  double width = bf_text_width (text), half = width / 2.0 + GAP_MM;
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (strip->at[2], strip->at[3]), 0.5);
  BfVec2 away = bf_vec2_unit (bf_vec2_sub (strip->at[3], strip->at[0]));

  middle =
      bf_vec2_along (middle, away, GAP_MM + fabs (away.x) * half + fabs (away.y) * CAP_MM / 2.0);
  middle.x = CLAMP (middle.x, half, MAX (half, size_mm.x - half));
  middle.y = CLAMP (middle.y, CAP_MM, MAX (CAP_MM, size_mm.y - CAP_MM));
  cairo_rectangle (cr, middle.x - half, middle.y - CAP_MM, 2.0 * half, 2.0 * CAP_MM);
  cairo_set_source_rgba (cr, 1.0, 1.0, 1.0, 0.85);
  cairo_fill (cr);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_text_draw (text, cr, middle.x - width / 2.0, middle.y + CAP_MM / 2.0);
}

static void
draw_bar (const BfCutStrip *strip, cairo_t *cr)
{
  guint32 rgb = bf_okabe_ito (BF_OKABE_ITO_SKY_BLUE);

  trace (strip, cr);
  cairo_set_source_rgba (cr, (rgb >> 16 & 0xFF) / 255.0, (rgb >> 8 & 0xFF) / 255.0,
                         (rgb & 0xFF) / 255.0, BAR_ALPHA);
  cairo_fill_preserve (cr);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  cairo_stroke (cr);
}

static void
draw_sides (const BfWork *work, guint at, BfVec2 size_mm, cairo_t *cr)
{
  BfCutStrip guide, waste;
  gboolean guided = bf_cut_picture_guide (work, at, size_mm, &guide);

  if (guided)
    draw_bar (&guide, cr);
  if (!bf_cut_picture_waste (work, at, size_mm, &waste))
    return;
  hatch (&waste, cr);
  tell (_ ("waste"), &waste, size_mm, cr);
  if (guided)
    tell (_ ("guide"), &guide, size_mm, cr);
}

static void
draw_cut (const BfCut *cut, const BfFigurePlace *place, cairo_t *cr)
{
  BfVec2 a = on_paper (place, cut->from), b = on_paper (place, cut->to);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_VERMILLION));
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_set_line_width (cr, LIT_MM);
  cairo_move_to (cr, a.x, a.y);
  cairo_line_to (cr, b.x, b.y);
  cairo_stroke (cr);
}

void
bf_cut_picture_draw (const BfWork *work, int at, BfVec2 size_mm, cairo_t *cr)
{
  BfFigurePlace place;

  g_return_if_fail (work != NULL && at < (int)work->cuts->len && cr != NULL);
  place = place_in (work, size_mm);
  cairo_save (cr);
  cairo_rectangle (cr, 0.0, 0.0, size_mm.x, size_mm.y);
  cairo_clip (cr);
  cairo_save (cr);
  cairo_translate (cr, ROUND_MM, ROUND_MM);
  bf_figure_blank (work->fold, bf_vec2_sub (size_mm, bf_vec2 (2.0 * ROUND_MM, 2.0 * ROUND_MM)), cr);
  cairo_restore (cr);
  if (at >= 0)
    draw_sides (work, (guint)at, size_mm, cr);
  for (guint i = 0; i < work->cuts->len && place.scale > 0.0; i++)
    if (at < 0 || (guint)at == i)
      draw_cut (bf_cut (work->cuts, i), &place, cr);
  cairo_restore (cr);
}
