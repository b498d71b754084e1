/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/work-picture.h"

#include "fold/bend-order.h"
#include "paint/cut-picture.h"
#include "paint/figure.h"
#include "paint/marking-picture.h"
#include "paint/seam-edge.h"

static void
draw_marking (const BfWork *work, guint at, BfVec2 size_mm, cairo_t *cr)
{
  BfMarkingPicture picture = { work->marking, work->marking_steps, at, work->fold->part->units,
                               FALSE };

  bf_marking_picture_draw (&picture, size_mm.x, size_mm.y, cr);
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
      bf_cut_picture_draw (work, step->at, size_mm, cr);
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
