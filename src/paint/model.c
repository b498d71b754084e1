/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/model.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "paint/blank-view.h"
#include "paint/model-tabs.h"
#include "paint/page-head.h"
#include "paint/palette.h"
#include "paint/ring-path.h"
#include "paint/text.h"

#define TAB_MM 8.0
#define ROUND_TABS_MM (2.0 * TAB_MM) /* room on the page for tabs at both ends */
#define FOOT_MM 8.0
#define PALE_GREY 0.9

/* ---- the part in paper -------------------------------------------------------------------- */

/* Everything that is only there for metal left out: reliefs, slots, gaps, tabs with holes. */
static BfPart *
paper_part (const BfPart *part, double thickness_mm)
{
  BfPart *paper = bf_part_copy (part);
  BfBend bend = { .way = BF_BEND_WAY_BRAKE,
                  .inside_radius_mm = 0.0,
                  .allowance = { .rule = BF_ALLOWANCE_K_FACTOR, .k = 0.5 },
                  .slot_mm = NAN,
                  .bridge_mm = NAN,
                  .score_left_mm = NAN,
                  .hand_limit_n = NAN,
                  .hand_lever_mm = NAN };

  paper->metal.thickness_mm = thickness_mm;
  paper->cutting.by = BF_CUTTING_SERVICE;
  paper->cutting.kerf_mm = paper->cutting.slack_mm = 0.0;
  paper->joining = BF_JOINING_WELDED;
  g_free (paper->bend.allowance.trial_id);
  paper->bend = bend;
  for (guint i = 0; i < paper->flanges->len; i++)
    {
      BfFlange *flange = g_ptr_array_index (paper->flanges, i);

      g_free (flange->bend.allowance.trial_id);
      flange->bend = bend;
      flange->start_relief = flange->end_relief = BF_END_RELIEF_NOTCH;
    }
  g_ptr_array_set_size (paper->corners, 0);
  return paper;
}

/* Corners closed without a relief. */
static void
close_corner (BfPart *part, const char *on, guint at, double gap_mm)
{
  BfCorner *corner = bf_corner_new (on, at);

  corner->relief = BF_RELIEF_NONE;
  corner->join = BF_JOIN_OPEN;
  corner->gap_mm = gap_mm;
  g_ptr_array_add (part->corners, corner);
}

static BfFold *
fold_in_paper (const BfPart *part, double scale)
{
  g_autoptr (BfPart) paper = paper_part (part, BF_MODEL_PAPER_MM * scale);
  double gap = BF_MODEL_PAPER_MM * scale / 2.0;

  for (guint i = 0; i < bf_part_n_points (paper); i++)
    close_corner (paper, "base", i, gap);
  for (guint i = 0; i < 2 * bf_part_n_flanges (paper); i++)
    close_corner (paper, bf_part_flange (paper, i / 2)->id, i % 2, gap);
  return bf_fold (paper);
}

/* ---- the scale ---------------------------------------------------------------------------- */

static BfVec2
room_of (const BfModel *model)
{
  BfPageHead head = { .fold = model->fold, .paper = model->paper, .title = "" };

  return bf_vec2 (model->paper->width_mm - 2.0 * BF_PAGE_MARGIN_MM,
                  model->paper->height_mm - BF_PAGE_MARGIN_MM - FOOT_MM -
                      bf_page_head_end_mm (&head) - 3.0 * BF_PAGE_CAP_MM);
}

/* TRUE where the blank fits at that scale, one way round or the other. */
static gboolean
fits (BfModel *model, double scale)
{
  BfVec2 extent = bf_vec2_sub (model->model->blank.box.max, model->model->blank.box.min);
  BfVec2 room = room_of (model), size = bf_vec2_scale (extent, 1.0 / scale);

  size = bf_vec2_add (size, bf_vec2 (ROUND_TABS_MM, ROUND_TABS_MM));
  model->turn = size.x > room.x || size.y > room.y;
  return !model->turn || (size.y <= room.x && size.x <= room.y);
}

/* The first of the usual scales at which it fits: 1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10 and on. */
static void
find_scale (BfModel *model)
{
  static const double steps[] = { 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 7.5 };
  guint i = 0;

  do
    {
      model->scale = steps[i % G_N_ELEMENTS (steps)] * pow (10.0, i / G_N_ELEMENTS (steps));
      g_clear_pointer (&model->model, bf_fold_unref);
      model->model = fold_in_paper (model->fold->asked, model->scale);
      i++;
    }
  while (!fits (model, model->scale) && i < 5 * G_N_ELEMENTS (steps));
}

BfModel *
bf_model_new (BfFold *fold, const BfPaper *paper)
{
  BfModel *model;

  g_return_val_if_fail (fold != NULL && paper != NULL, NULL);
  model = g_new0 (BfModel, 1);
  model->fold = bf_fold_ref (fold);
  model->paper = paper;
  find_scale (model);
  model->tabs = g_array_new (FALSE, FALSE, sizeof (BfGlueTab));
  bf_model_find_tabs (model->model, TAB_MM * model->scale, model->tabs);
  return model;
}

void
bf_model_free (BfModel *model)
{
  if (model == NULL)
    return;
  g_array_unref (model->tabs);
  bf_fold_unref (model->model);
  bf_fold_unref (model->fold);
  g_free (model);
}

/* ---- drawing ------------------------------------------------------------------------------ */

/* The tab is one with the wall: the edge between them is folded, not cut. */
static void
draw_tab (const BfGlueTab *tab, double unit, cairo_t *cr)
{
  cairo_new_path (cr);
  for (guint i = 0; i < 4; i++)
    cairo_line_to (cr, tab->corners[i].x, tab->corners[i].y);
  cairo_close_path (cr);
  cairo_set_source_rgb (cr, PALE_GREY, PALE_GREY, PALE_GREY);
  cairo_fill_preserve (cr);
  bf_pen_apply (bf_pen (BF_PURPOSE_CUT_OUTSIDE), cr, unit, FALSE);
  cairo_stroke (cr);
  cairo_set_source_rgb (cr, 1.0, 1.0, 1.0);
  cairo_set_line_width (cr, 2.0 * BF_WIDE_LINE_MM * unit);
  cairo_move_to (cr, tab->corners[0].x, tab->corners[0].y);
  cairo_line_to (cr, tab->corners[1].x, tab->corners[1].y);
  cairo_stroke (cr);
  bf_pen_apply (bf_pen (BF_PURPOSE_BEND_UP), cr, unit, FALSE);
  cairo_move_to (cr, tab->corners[0].x, tab->corners[0].y);
  cairo_line_to (cr, tab->corners[1].x, tab->corners[1].y);
  cairo_stroke (cr);
}

static void
draw_blank (const BfModel *model, cairo_t *cr)
{
  BfBlankStyle style;

  bf_blank_style_init (&style, model->model);
  style.layers = BF_BLANK_CUTS | BF_BLANK_BENDS;
  style.unit = model->scale;
  bf_blank_view_draw (model->model, &style, cr);
  cairo_save (cr);
  cairo_scale (cr, 1.0, -1.0);
  for (guint i = 0; i < model->tabs->len; i++)
    draw_tab (&g_array_index (model->tabs, BfGlueTab, i), model->scale, cr);
  cairo_restore (cr);
  style.layers = BF_BLANK_NAMES | BF_BLANK_BEND_NOTES;
  style.turn_rad = model->turn ? G_PI / 2.0 : 0.0;
  bf_blank_view_draw (model->model, &style, cr);
}

static char *
note_of (const BfModel *model)
{
  g_autofree char *scale = bf_format_decimal (model->scale, 1);
  /* Translators: a scale, "2.5"; the spaces round the colon do not break */
  g_autofree char *what = g_strdup_printf (_ ("Card model at 1 : %s."), scale);

  return g_strjoin (
      " ", what,
      _ ("Print on stiff paper, cut round the outline, crease along the dashes with a "
         "blunt knife, fold. Up is toward you."),
      model->tabs->len > 0 ? _ ("Glue the grey tabs inside.") : NULL, NULL);
}

void
bf_model_draw (const BfModel *model, cairo_t *cr)
{
  g_autofree char *note = note_of (model);
  BfPageHead head = {
    .fold = model->fold, .paper = model->paper, .title = _ ("Card model"), .note = note
  };
  double top = bf_page_head_draw (&head, cr);
  const BfBox *box = &model->model->blank.box;
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (box->min, box->max), 0.5);

  if (model->model->blank.rings->len == 0)
    return;
  cairo_save (cr);
  cairo_translate (cr, model->paper->width_mm / 2.0,
                   (top + model->paper->height_mm - BF_PAGE_MARGIN_MM) / 2.0);
  cairo_scale (cr, 1.0 / model->scale, 1.0 / model->scale);
  if (model->turn)
    cairo_rotate (cr, -G_PI / 2.0);
  cairo_translate (cr, -middle.x, middle.y);
  draw_blank (model, cr);
  cairo_restore (cr);
}
