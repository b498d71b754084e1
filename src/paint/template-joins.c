/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-private.h"

#include <glib/gi18n.h>

#include "paint/blank-field.h"
#include "paint/blank-labels.h"
#include "paint/palette.h"

/* Where two pages join, the one to the right or below is cut along the line and glued onto the
 * other. Both show the same crosses on that line, so that halves meet wholes. Beside a cross stands
 * a scale of ticks: on the one side of the line they are 3 mm apart, on the other 2.8. Where the
 * pages lie right, the cross meets itself; where they have slipped along the line by 0.2 mm, the
 * first ticks meet, by 0.4 the second, and so on. */

#define CROSS_ARM_MM BF_TEMPLATE_CROSS_ARM_MM
#define CROSS_DIAMOND_MM 1.5
#define CLEAR_OF_LINES_MM 0.5
#define N_TICKS 4 /* to either side of the cross */
#define TICK_MM 2.0
#define NEAR_PITCH_MM 3.0
#define FAR_PITCH_MM 2.8
#define WORDS_STEP_MM 2.0
#define LINE_RGB 0x5A5A5A
#define GLUE_RGB 0xF0F0F0

/* One side of a page, in the blank's own coordinates. */
typedef struct
{
  BfVec2 ends[2]; /* of the line along the join */
  BfVec2 back;    /* unit: from the line to the page that is glued on to */
  BfBox strip;    /* from that line to the window's edge */
} Join;

/* Where along the line a cross is tried, from either end. The first place free of the part's
 * lines is taken; both pages look at the same lines and so find the same place. */
static const double cross_shares[] = { 0.2, 0.16, 0.24, 0.12, 0.28, 0.32, 0.08, 0.36 };

static gboolean
is_beside (BfPageSide side)
{
  return side == BF_SIDE_LEFT || side == BF_SIDE_LEFT_LOWER || side == BF_SIDE_RIGHT ||
         side == BF_SIDE_RIGHT_LOWER;
}

static void
find_join (const BfTemplatePlan *plan, const BfPlanPage *page, BfPageSide side, Join *join)
{
  const BfPlanPage *other = bf_template_plan_page (plan, (guint)page->neighbour[side]);
  BfBox line = page->cell, strip = page->cell;

  if (is_beside (side))
    {
      line.min.y = strip.min.y = MAX (page->cell.min.y, other->cell.min.y);
      line.max.y = strip.max.y = MIN (page->cell.max.y, other->cell.max.y);
    }
  else
    {
      line.min.x = strip.min.x = MAX (page->cell.min.x, other->cell.min.x);
      line.max.x = strip.max.x = MIN (page->cell.max.x, other->cell.max.x);
    }
  switch (side)
    {
    case BF_SIDE_LEFT:
    case BF_SIDE_LEFT_LOWER:
      line.max.x = strip.max.x = page->cell.min.x;
      strip.min.x = page->window.min.x;
      break;
    case BF_SIDE_RIGHT:
    case BF_SIDE_RIGHT_LOWER:
      line.min.x = strip.min.x = page->cell.max.x;
      strip.max.x = page->window.max.x;
      break;
    case BF_SIDE_ABOVE:
    case BF_SIDE_ABOVE_RIGHT:
      line.min.y = strip.min.y = page->cell.max.y;
      strip.max.y = page->window.max.y;
      break;
    case BF_SIDE_BELOW:
    case BF_SIDE_BELOW_RIGHT:
    case BF_N_SIDES:
    default:
      line.max.y = strip.max.y = page->cell.min.y;
      strip.min.y = page->window.min.y;
    }
  join->back = is_beside (side) ? bf_vec2 (-1.0, 0.0) : bf_vec2 (0.0, 1.0);
  join->back = bf_template_plan_unturn (plan, join->back);
  join->ends[0] = bf_template_plan_unturn (plan, line.min);
  join->ends[1] = bf_template_plan_unturn (plan, line.max);
  join->strip = bf_box_empty ();
  bf_box_extend (&join->strip, bf_template_plan_unturn (plan, strip.min));
  bf_box_extend (&join->strip, bf_template_plan_unturn (plan, strip.max));
}

/* length_mm: along the join. */
static BfPlate
cross_plate (const Join *join, double length_mm)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (join->ends[1], join->ends[0]));

  return (BfPlate){ { 0.0, 0.0 }, along, length_mm, 2.0 * CROSS_ARM_MM };
}

/* FALSE where no place is free: the plate then lies at the first. */
static gboolean
find_free (const Join *join, const BfLabelField *field, gboolean from_end, BfPlate *plate)
{
  BfVec2 start = join->ends[from_end ? 1 : 0];
  BfVec2 step = bf_vec2_sub (join->ends[from_end ? 0 : 1], start);

  for (guint i = 0; i < G_N_ELEMENTS (cross_shares); i++)
    {
      plate->centre = bf_vec2_along (start, step, cross_shares[i]);
      if (bf_label_field_is_free (field, plate))
        return TRUE;
    }
  plate->centre = bf_vec2_along (start, step, cross_shares[0]);
  return FALSE;
}

/* Room for the cross and its ticks, else for the cross alone. */
static BfPlate
cross_place (const Join *join, const BfLabelField *field, gboolean from_end)
{
  BfPlate plate = cross_plate (join, 2.0 * (N_TICKS * NEAR_PITCH_MM + CLEAR_OF_LINES_MM));

  if (find_free (join, field, from_end, &plate))
    return plate;
  plate = cross_plate (join, 2.0 * CROSS_ARM_MM);
  find_free (join, field, from_end, &plate);
  return plate;
}

static void
draw_ticks (const Join *join, const BfPlate *plate, cairo_t *cr)
{
  for (int k = -N_TICKS; k <= N_TICKS; k++)
    {
      BfVec2 near = bf_vec2_along (plate->centre, plate->along, k * NEAR_PITCH_MM);
      BfVec2 far = bf_vec2_along (plate->centre, plate->along, k * FAR_PITCH_MM);
      if (k == 0)
        continue;
      cairo_move_to (cr, near.x, -near.y);
      cairo_rel_line_to (cr, join->back.x * TICK_MM, -join->back.y * TICK_MM);
      cairo_move_to (cr, far.x, -far.y);
      cairo_rel_line_to (cr, -join->back.x * TICK_MM, join->back.y * TICK_MM);
    }
  cairo_stroke (cr);
}

void
bf_template_draw_cross (cairo_t *cr, BfVec2 at)
{
  cairo_move_to (cr, at.x - CROSS_ARM_MM, -at.y);
  cairo_rel_line_to (cr, 2.0 * CROSS_ARM_MM, 0.0);
  cairo_move_to (cr, at.x, -at.y - CROSS_ARM_MM);
  cairo_rel_line_to (cr, 0.0, 2.0 * CROSS_ARM_MM);
  cairo_move_to (cr, at.x - CROSS_DIAMOND_MM, -at.y);
  cairo_rel_line_to (cr, CROSS_DIAMOND_MM, -CROSS_DIAMOND_MM);
  cairo_rel_line_to (cr, CROSS_DIAMOND_MM, CROSS_DIAMOND_MM);
  cairo_rel_line_to (cr, -CROSS_DIAMOND_MM, CROSS_DIAMOND_MM);
  cairo_close_path (cr);
  cairo_stroke (cr);
}

static void
draw_line (const Join *join, cairo_t *cr)
{
  static const double dash[] = { 1.6, 1.2 };

  cairo_set_line_width (cr, BF_NARROW_LINE_MM);
  bf_set_source_rgb (cr, LINE_RGB);
  cairo_set_dash (cr, dash, G_N_ELEMENTS (dash), 0.0);
  cairo_move_to (cr, join->ends[0].x, -join->ends[0].y);
  cairo_line_to (cr, join->ends[1].x, -join->ends[1].y);
  cairo_stroke (cr);
  cairo_set_dash (cr, NULL, 0, 0.0);
}

static void
tint_glue_strip (const Join *join, cairo_t *cr)
{
  const BfBox *strip = &join->strip;

  bf_set_source_rgb (cr, GLUE_RGB);
  cairo_rectangle (cr, strip->min.x, -strip->max.y, strip->max.x - strip->min.x,
                   strip->max.y - strip->min.y);
  cairo_fill (cr);
}

/* Whether the page there is glued on to this one. */
static gboolean
is_glued_on (BfPageSide side)
{
  return side == BF_SIDE_RIGHT || side == BF_SIDE_RIGHT_LOWER || side == BF_SIDE_BELOW ||
         side == BF_SIDE_BELOW_RIGHT;
}

static char *
join_words (const BfTemplate *template, BfPageSide side, int neighbour)
{
  if (!is_glued_on (side))
    return g_strdup (_ ("cut here"));
  /* Translators: where another page of paper is glued on; %s is that page, "B1". */
  return g_strdup_printf (_ ("glue %s here"),
                          (const char *)g_ptr_array_index (template->labels, (guint)neighbour));
}

/* Nearest to the join's middle, in its strip. */
static gboolean
find_words_place (const Join *join, const BfLabelField *field, BfPlate *plate)
{
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (join->strip.min, join->strip.max), 0.5);
  BfVec2 along = bf_vec2_sub (join->ends[1], join->ends[0]);
  double half_mm = bf_vec2_length (along) / 2.0;

  along = bf_vec2_unit (along);
  for (double off_mm = 0.0; off_mm < half_mm; off_mm += WORDS_STEP_MM)
    for (int way = -1; way <= 1; way += 2)
      {
        plate->centre = bf_vec2_along (middle, along, way * off_mm);
        if (bf_label_field_is_free (field, plate))
          return TRUE;
      }
  plate->centre = middle;
  return FALSE;
}

static BfLabelField *
words_field (const BfTemplate *template, const Join *join, const BfPlate crosses[2], gboolean lines)
{
  BfLabelField *field = lines
                            ? bf_blank_label_field (template->fold, &join->strip, CLEAR_OF_LINES_MM)
                            : bf_label_field_new (&join->strip, CLEAR_OF_LINES_MM);

  for (int i = 0; i < 2; i++)
    bf_label_field_add_plate (field, &crosses[i]);
  return field;
}

/* Lays the words in the strip beside the line, where they hide nothing; where that is nowhere, over
 * the part's lines, which the other page shows too, but off the crosses. words: (transfer full). */
static void
draw_words (const BfTemplate *template,
            const Join *join,
            const BfPlate crosses[2],
            char *words,
            cairo_t *cr)
{
  g_autoptr (BfLabelField) free_of_lines = words_field (template, join, crosses, TRUE);
  g_autoptr (BfLabelField) free_of_crosses = words_field (template, join, crosses, FALSE);
  double turn_rad = bf_deg_to_rad (template->plan->turn_deg);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (join->ends[1], join->ends[0]));
  g_autoptr (BfBlankLabel) label =
      bf_blank_label_new (words, BF_TEMPLATE_CAP_MM, FALSE, bf_blank_upright (along, turn_rad));

  if (!find_words_place (join, free_of_lines, &label->plate))
    find_words_place (join, free_of_crosses, &label->plate);
  bf_blank_label_draw (label, cr);
}

static void
draw_join (const BfTemplate *template, const BfPlanPage *page, BfPageSide side, cairo_t *cr)
{
  g_autoptr (BfLabelField) field = bf_blank_label_field (template->fold, NULL, CLEAR_OF_LINES_MM);
  BfPlate crosses[2];
  Join join;

  find_join (template->plan, page, side, &join);
  if (is_glued_on (side))
    tint_glue_strip (&join, cr);
  draw_line (&join, cr);
  bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
  for (int i = 0; i < 2; i++)
    {
      crosses[i] = cross_place (&join, field, i == 1);
      bf_template_draw_cross (cr, crosses[i].centre);
      if (crosses[i].width > 3.0 * CROSS_ARM_MM)
        draw_ticks (&join, &crosses[i], cr);
    }
  draw_words (template, &join, crosses, join_words (template, side, page->neighbour[side]), cr);
}

void
bf_template_draw_joins (const BfTemplate *template, guint i, cairo_t *cr)
{
  const BfPlanPage *page = bf_template_plan_page (template->plan, i);

  cairo_new_path (cr);
  for (int side = 0; side < BF_N_SIDES; side++)
    if (page->neighbour[side] >= 0)
      draw_join (template, page, (BfPageSide)side, cr);
}
