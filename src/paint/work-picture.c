/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/work-picture.h"

#include "fold/bend-order.h"
#include "paint/figure.h"
#include "paint/marking-picture.h"
#include "paint/palette.h"
#include "paint/seam-edge.h"

#define LIT_MM 0.9
#define ARROW_MM 7.0
#define HEAD_MM 2.2

static BfVec2
on_paper (const BfFigurePlace *place, BfVec2 p)
{
  return bf_vec2 (place->left + place->scale * p.x, place->bottom - place->scale * p.y);
}

static void
draw_marking (const BfWork *work, guint at, BfVec2 size_mm, cairo_t *cr)
{
  BfMarkingPicture picture = { work->marking, work->marking_steps, at, work->fold->part->units };

  bf_marking_picture_draw (&picture, size_mm.x, size_mm.y, cr);
}

/* ---- cuts --------------------------------------------------------------------------------- */

static void
draw_waste (BfVec2 from, BfVec2 toward, cairo_t *cr)
{
  BfVec2 tip = bf_vec2_along (from, toward, ARROW_MM);
  BfVec2 back = bf_vec2_along (tip, toward, -HEAD_MM);
  BfVec2 side = bf_vec2 (-toward.y * HEAD_MM * 0.4, toward.x * HEAD_MM * 0.4);

  cairo_set_line_width (cr, BF_WIDE_LINE_MM);
  cairo_move_to (cr, from.x, from.y);
  cairo_line_to (cr, back.x, back.y);
  cairo_stroke (cr);
  cairo_move_to (cr, tip.x, tip.y);
  cairo_line_to (cr, back.x + side.x, back.y + side.y);
  cairo_line_to (cr, back.x - side.x, back.y - side.y);
  cairo_close_path (cr);
  cairo_fill (cr);
}

static void
draw_cut (const BfCut *cut, const BfFigurePlace *place, gboolean arrow, cairo_t *cr)
{
  BfVec2 a = on_paper (place, cut->from), b = on_paper (place, cut->to);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_VERMILLION));
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_set_line_width (cr, LIT_MM);
  cairo_move_to (cr, a.x, a.y);
  cairo_line_to (cr, b.x, b.y);
  cairo_stroke (cr);
  if (arrow)
    draw_waste (bf_vec2_scale (bf_vec2_add (a, b), 0.5), bf_vec2 (cut->waste.x, -cut->waste.y), cr);
}

static void
draw_cuts (const BfWork *work, int at, BfVec2 size_mm, cairo_t *cr)
{
  BfVec2 room = bf_vec2_sub (size_mm, bf_vec2 (2.0 * ARROW_MM, 2.0 * ARROW_MM));
  BfFigurePlace place = bf_figure_place (work->fold, room);

  cairo_translate (cr, ARROW_MM, ARROW_MM);
  bf_figure_blank (work->fold, room, cr);
  for (guint i = 0; i < work->cuts->len && place.scale > 0.0; i++)
    if (at < 0 || (guint)at == i)
      draw_cut (bf_cut (work->cuts, i), &place, at >= 0, cr);
}

/* ---- bends and seams ---------------------------------------------------------------------- */

static void
draw_bend (const BfWork *work, guint at, BfVec2 size_mm, cairo_t *cr)
{
  g_auto (BfFormed) formed = { .solids = NULL };
  const BfBendResult *bend = bf_fold_bend (work->fold, bf_fold_bend_step (work->fold, at)->bend);

  bf_fold_formed_after (work->fold, at + 1, &formed);
  bf_figure_formed (work->fold, &formed, (int)bend->face, size_mm, cr);
}

static void
draw_seam (const BfWork *work, int at, BfVec2 size_mm, cairo_t *cr)
{
  BfSeamEdge edge;

  if (at >= 0 && bf_seam_edge_find (work->fold, bf_fold_seam (work->fold, (guint)at), &edge))
    bf_figure_formed_line (work->fold, edge.face, (BfVec2[]){ edge.a, edge.b }, size_mm, cr);
  else
    bf_figure_formed (work->fold, &work->fold->formed, -1, size_mm, cr);
}

void
bf_work_picture_draw (const BfWork *work, guint i, BfVec2 size_mm, cairo_t *cr)
{
  const BfWorkStep *step;

  g_return_if_fail (work != NULL && i < work->steps->len && cr != NULL);
  step = bf_work_step (work, i);
  cairo_save (cr);
  switch (step->shows)
    {
    case BF_SHOWS_MARKING:
      draw_marking (work, (guint)step->at, size_mm, cr);
      break;
    case BF_SHOWS_CUT:
      draw_cuts (work, step->at, size_mm, cr);
      break;
    case BF_SHOWS_BEND:
      draw_bend (work, (guint)step->at, size_mm, cr);
      break;
    case BF_SHOWS_SEAM:
      draw_seam (work, step->at, size_mm, cr);
      break;
    case BF_SHOWS_FORMED:
      bf_figure_formed (work->fold, &work->fold->formed, -1, size_mm, cr);
      break;
    case BF_SHOWS_BLANK:
    default:
      bf_figure_blank (work->fold, size_mm, cr);
      break;
    }
  cairo_restore (cr);
}
