/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-private.h"

#include "paint/blank-field.h"

/* A page where a column for the upright check bar would cost another page still has paper without
 * any line on it, more often than not. The bar then stands there, at the page's left or right edge
 * so that no words are written across it. */

#define STEP_MM 2.0
#define CLEAR_OF_LINES_MM 1.0

/* Words keep off the lines where paper is cut and glued, and off the marks on them. */
#define OFF_JOIN_MM 5.5
#define OFF_EDGE_MM 0.5

/* In the turned drawing: the paper of that page which is its own, off its joins. */
static BfBox
own_paper (const BfPlanPage *page)
{
  const int *joined = page->neighbour;
  BfBox box = page->cell;

  box.min.x += joined[BF_SIDE_LEFT] >= 0 ? OFF_JOIN_MM : OFF_EDGE_MM;
  box.max.x -= joined[BF_SIDE_RIGHT] >= 0 ? OFF_JOIN_MM : OFF_EDGE_MM;
  box.max.y -= joined[BF_SIDE_ABOVE] >= 0 ? OFF_JOIN_MM : OFF_EDGE_MM;
  box.min.y += joined[BF_SIDE_BELOW] >= 0 ? OFF_JOIN_MM : OFF_EDGE_MM;
  return box;
}

static gboolean
is_free (const BfTemplatePlan *plan, const BfLabelField *field, const BfBox *box)
{
  BfVec2 size = bf_vec2_sub (box->max, box->min);
  BfPlate plate = { bf_template_plan_unturn (plan, bf_box_middle (box)),
                    bf_template_plan_unturn (plan, bf_vec2 (0.0, 1.0)), size.y, size.x };

  return bf_label_field_is_free (field, &plate);
}

/* Beside one edge, from below. */
static gboolean
find_beside (
    const BfTemplatePlan *plan, const BfLabelField *field, const BfBox *own, double x, BfBox *bar)
{
  for (double y = own->min.y; y + BF_TEMPLATE_SIDE_LENGTH_MM <= own->max.y; y += STEP_MM)
    {
      *bar = (BfBox){ { x, y }, { x + BF_TEMPLATE_SIDE_MM, y + BF_TEMPLATE_SIDE_LENGTH_MM } };
      if (is_free (plan, field, bar))
        return TRUE;
    }
  return FALSE;
}

gboolean
bf_template_find_bar (const BfFold *fold, const BfTemplatePlan *plan, guint i, BfBox *bar)
{
  g_autoptr (BfLabelField) field = bf_blank_label_field (fold, NULL, CLEAR_OF_LINES_MM);
  BfBox own = own_paper (bf_template_plan_page (plan, i));

  return find_beside (plan, field, &own, own.max.x - BF_TEMPLATE_SIDE_MM, bar) ||
         find_beside (plan, field, &own, own.min.x, bar);
}

/* bar: as it was found. The column that it stands in is taken from the box. */
static void
take_column (const BfBox *bar, BfBox *box)
{
  if (bar->min.x - box->min.x > box->max.x - bar->max.x)
    box->max.x = MIN (box->max.x, bar->min.x);
  else
    box->min.x = MAX (box->min.x, bar->max.x);
}

BfBox
bf_template_words_box (const BfTemplate *template, guint i)
{
  BfBox box = own_paper (bf_template_plan_page (template->plan, i)), bar;

  if (template->format.side_mm <= 0.0 &&
      bf_template_find_bar (template->fold, template->plan, i, &bar))
    take_column (&bar, &box);
  return box;
}

void
bf_template_draw_bar (const BfTemplate *template, guint i, cairo_t *cr)
{
  const BfPageFormat *format = &template->format;
  BfVec2 corner;
  BfBox bar;

  cairo_save (cr);
  if (format->side_mm > 0.0)
    {
      cairo_translate (cr, format->width_mm - format->margin_mm,
                       format->height_mm - format->margin_mm - format->foot_mm);
      bf_template_draw_side (cr);
    }
  else if (bf_template_find_bar (template->fold, template->plan, i, &bar))
    {
      corner = bf_template_plan_corner (template->plan, bf_template_plan_page (template->plan, i));
      cairo_translate (cr, bar.max.x - corner.x, format->height_mm - (bar.min.y - corner.y));
      bf_template_draw_side (cr);
    }
  cairo_restore (cr);
}
