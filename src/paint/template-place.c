/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/template-private.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "paint/blank-labels.h"
#include "paint/palette.h"

/* A page whose lines hang together with no other page's can't be glued on: between them would lie
 * only empty paper, which is not printed. Such a page is laid on the metal by measuring. */

#define CLEAR_OF_LINES_MM 1.0
#define ROUND_TO_MM 5.0 /* a distance that is quick to find on a tape */
#define ROUND_TO_IN 0.25
#define GRID 16

typedef struct
{
  const BfTemplate *template;
  const BfLabelField *field;
  BfVec2 from; /* the blank's left and lower end, as the pages lie */
} Search;

/* The left and lower ends of the whole blank, turned as on the pages. */
static BfVec2
lower_left (const BfTemplate *template)
{
  const BfBox *box = &template->fold->blank.box;
  BfVec2 a = bf_template_plan_turn (template->plan, box->min);
  BfVec2 b = bf_template_plan_turn (template->plan, box->max);

  return bf_vec2 (MIN (a.x, b.x), MIN (a.y, b.y));
}

static double
round_distance (const BfTemplate *template, double distance_mm)
{
  double step = template->units == BF_UNITS_IN ? ROUND_TO_IN * BF_MM_PER_INCH : ROUND_TO_MM;

  return round (distance_mm / step) * step;
}

/* A free place for the cross near p, at round distances. FALSE where p's is taken. */
static gboolean
place_near (const Search *search, BfVec2 p, BfPlate *plate)
{
  const BfTemplatePlan *plan = search->template->plan;
  BfVec2 turned = bf_vec2_sub (bf_template_plan_turn (plan, p), search->from);
  BfVec2 round_place = { round_distance (search->template, turned.x),
                         round_distance (search->template, turned.y) };

  plate->centre = bf_template_plan_unturn (plan, bf_vec2_add (search->from, round_place));
  return bf_label_field_is_free (search->field, plate);
}

/* Looks from the view's middle outward. */
static gboolean
find_place (const Search *search, const BfBox *view, BfPlate *best)
{
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (view->min, view->max), 0.5);
  BfVec2 size = bf_vec2_sub (view->max, view->min);
  double best_distance = HUGE_VAL;
  BfPlate plate = *best;

  for (int i = 0; i < GRID * GRID; i++)
    {
      BfVec2 away = { ((double)(i % GRID) / GRID - 0.5) * size.x,
                      ((double)(i / GRID) / GRID - 0.5) * size.y };
      if (bf_vec2_length (away) >= best_distance ||
          !place_near (search, bf_vec2_add (middle, away), &plate))
        continue;
      best_distance = bf_vec2_length (away);
      *best = plate;
    }
  return best_distance < HUGE_VAL;
}

static char *
place_words (const Search *search, BfVec2 centre)
{
  BfVec2 turned =
      bf_vec2_sub (bf_template_plan_turn (search->template->plan, centre), search->from);
  g_autofree char *right = bf_format_length (turned.x, search->template->units);
  g_autofree char *up = bf_format_length (turned.y, search->template->units);

  /* Translators: where on the metal a mark lies: its distances from the blank's ends. */
  return g_strdup_printf (_ ("cross %s from the blank's left end, %s from its lower end"), right,
                          up);
}

/* The blank's lines and words, and the joins' marks by way of the view, are all kept off. */
static BfLabelField *
new_field (const BfTemplate *template, const BfBlankStyle *style)
{
  g_autoptr (GPtrArray) labels = bf_blank_labels (template->fold, style);
  BfLabelField *field = bf_blank_label_field (template->fold, style->view, CLEAR_OF_LINES_MM);

  for (guint i = 0; i < labels->len; i++)
    bf_label_field_add_plate (field, &((const BfBlankLabel *)g_ptr_array_index (labels, i))->plate);
  return field;
}

/* The cross, and under it the words. */
static void
draw_place (const Search *search, BfVec2 cross, BfVec2 along, cairo_t *cr)
{
  g_autoptr (BfBlankLabel) label =
      bf_blank_label_new (place_words (search, cross), BF_TEMPLATE_CAP_MM, FALSE, along);
  BfVec2 down = { along.y, -along.x };

  label->plate.centre =
      bf_vec2_along (cross, down, BF_TEMPLATE_CROSS_ARM_MM + label->plate.height / 2.0);
  bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
  bf_template_draw_cross (cr, cross);
  bf_blank_label_draw (label, cr);
}

void
bf_template_draw_place (const BfTemplate *template, guint i, const BfBlankStyle *style, cairo_t *cr)
{
  g_autoptr (BfLabelField) field = NULL;
  g_autoptr (BfBlankLabel) longest = NULL;
  Search search = { template, NULL, lower_left (template) };
  BfPlate plate = { .along = bf_vec2 (cos (style->turn_rad), -sin (style->turn_rad)) };

  if (!bf_template_plan_page (template->plan, i)->is_apart)
    return;
  field = new_field (template, style);
  search.field = field;
  longest = bf_blank_label_new (place_words (&search, style->view->max), BF_TEMPLATE_CAP_MM, FALSE,
                                plate.along);
  plate.width = longest->plate.width;
  plate.height = 2.0 * (BF_TEMPLATE_CROSS_ARM_MM + longest->plate.height);
  if (find_place (&search, style->view, &plate))
    draw_place (&search, plate.centre, plate.along, cr);
}
