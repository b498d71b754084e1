/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/cut-numbers.h"

#include "paint/figure.h"
#include "paint/text.h"

#define CAP_MM 1.9
#define LINE_MM 3.4 /* how high a number is with its surroundings, as fonts have it */
#define GAP_MM 0.3
#define LEAST_INSIDE_MM 4.0 /* shorter ones in an opening, on paper, get no number */

/* Where a number is tried: off its cut, and along it. */
static const double offs_mm[] = { 2.4, 5.4, -2.4 };
static const double alongs_mm[] = { 0.0, 2.6, -2.6, 5.2, -5.2 };

static BfBox
box_of (BfVec2 middle, double width_mm)
{
  BfVec2 half = bf_vec2 (width_mm / 2.0 + GAP_MM, LINE_MM / 2.0);

  return (BfBox){ bf_vec2_sub (middle, half), bf_vec2_add (middle, half) };
}

/* Where numbers may stand: in the limit, and not on those that stand there. */
typedef struct
{
  BfBox limit;
  GArray *taken; /* BfBox */
} Ground;

/* The blank on paper, and round it the room that numbers are told to keep to. */
static BfBox
limit_of (const BfFold *fold, const BfFigurePlace *place)
{
  const BfBox *box = &fold->blank.box;
  double left = place->left - BF_CUT_NUMBERS_MM, bottom = place->bottom + BF_CUT_NUMBERS_MM;
  double right = place->left + BF_CUT_NUMBERS_MM, top = place->bottom - BF_CUT_NUMBERS_MM;

  return (BfBox){ { left + place->scale * box->min.x, top - place->scale * box->max.y },
                  { right + place->scale * box->max.x, bottom - place->scale * box->min.y } };
}

static gboolean
is_free (const Ground *ground, const BfBox *box)
{
  if (box->min.x + GAP_MM < ground->limit.min.x || box->min.y < ground->limit.min.y ||
      box->max.x - GAP_MM > ground->limit.max.x || box->max.y > ground->limit.max.y)
    return FALSE;
  for (guint i = 0; i < ground->taken->len; i++)
    {
      const BfBox *other = &g_array_index (ground->taken, BfBox, i);

      if (box->min.x < other->max.x && other->min.x < box->max.x && box->min.y < other->max.y &&
          other->min.y < box->max.y)
        return FALSE;
    }
  return TRUE;
}

/* at: the cut's middle on paper; waste: toward its waste, y down. */
static gboolean
find_place (const Ground *ground, BfVec2 at, BfVec2 waste, double width_mm, BfBox *found)
{
  BfVec2 along = bf_vec2 (-waste.y, waste.x);

  for (guint i = 0; i < G_N_ELEMENTS (offs_mm) * G_N_ELEMENTS (alongs_mm); i++)
    {
      BfVec2 middle =
          bf_vec2_along (bf_vec2_along (at, waste, offs_mm[i / G_N_ELEMENTS (alongs_mm)]), along,
                         alongs_mm[i % G_N_ELEMENTS (alongs_mm)]);

      *found = box_of (middle, width_mm);
      if (is_free (ground, found))
        return TRUE;
    }
  return FALSE;
}

static void
draw_number (
    const BfFigurePlace *place, const BfCut *cut, guint number, const Ground *ground, cairo_t *cr)
{
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (cut->from, cut->to), 0.5);
  BfVec2 at =
      bf_vec2 (place->left + place->scale * middle.x, place->bottom - place->scale * middle.y);
  g_autofree char *words = g_strdup_printf ("%u", number);
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, FALSE);
  BfBox box;

  if (cut->inside && cut->length_mm * place->scale < LEAST_INSIDE_MM)
    return;
  if (!find_place (ground, at, bf_vec2 (cut->waste.x, -cut->waste.y), bf_text_width (text), &box))
    return;
  g_array_append_val (ground->taken, box);
  bf_text_draw (text, cr, box.min.x + GAP_MM, (box.min.y + box.max.y + CAP_MM) / 2.0);
}

void
bf_cut_numbers_draw (const BfWork *work, BfVec2 size_mm, cairo_t *cr)
{
  BfFigurePlace place = bf_figure_place (work->fold, size_mm);
  BfCuttingWay by = work->fold->part->cutting.by;
  g_autoptr (GArray) taken = g_array_new (FALSE, FALSE, sizeof (BfBox));
  Ground ground = { limit_of (work->fold, &place), taken };

  if (by != BF_CUTTING_DISC && by != BF_CUTTING_SNIPS)
    return;
  for (guint i = 0; i < work->cuts->len; i++)
    draw_number (&place, bf_cut (work->cuts, i), i + 1, &ground, cr);
}
