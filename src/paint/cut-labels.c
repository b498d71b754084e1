/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/cut-labels.h"

#include "paint/figure.h"
#include "paint/palette.h"
#include "paint/text.h"

#define CAP_MM 1.9
#define LINE_MM 3.4 /* how high a number is with its surroundings, as fonts have it */
#define GAP_MM 0.3
#define LEADER_MM 0.13
#define DOT_MM 0.35

/* Where a number is tried: off its cut, and along it; then all round, further and further away. */
static const double offs_mm[] = { 2.4, 5.4, -2.4 };
static const double alongs_mm[] = { 0.0, 2.6, -2.6, 5.2, -5.2 };

#define N_WAYS 24
#define FIRST_MM 5.0
#define STEP_MM 1.5
#define N_RINGS 60

typedef struct
{
  const BfWork *work;
  BfFigurePlace place;
  BfBox limit;      /* on paper: the blank, and the room round it */
  GArray *labels;   /* BfCutLabel */
  GArray *taken;    /* BfBox, on paper: labels, and openings that are not to be covered */
  guint n_openings; /* of taken: these come first */
} Layout;

static BfVec2
on_paper (const Layout *layout, BfVec2 p)
{
  return bf_vec2 (layout->place.left + layout->place.scale * p.x,
                  layout->place.bottom - layout->place.scale * p.y);
}

static BfBox
box_on_paper (const Layout *layout, const BfBox *box)
{
  BfVec2 low = on_paper (layout, box->min), high = on_paper (layout, box->max);

  return (BfBox){ bf_vec2 (low.x, high.y), bf_vec2 (high.x, low.y) };
}

static BfBox
box_round (BfVec2 middle, double width_mm)
{
  BfVec2 half = bf_vec2 (width_mm / 2.0 + GAP_MM, LINE_MM / 2.0);

  return (BfBox){ bf_vec2_sub (middle, half), bf_vec2_add (middle, half) };
}

static gboolean
overlap (const BfBox *a, const BfBox *b)
{
  return a->min.x < b->max.x && b->min.x < a->max.x && a->min.y < b->max.y && b->min.y < a->max.y;
}

static gboolean
is_within (const BfBox *outer, const BfBox *box)
{
  return bf_box_contains (outer, box->min) && bf_box_contains (outer, box->max);
}

/* from: which of the boxes that are taken count. */
static gboolean
is_free (const Layout *layout, guint from, const BfBox *box)
{
  for (guint i = from; i < layout->taken->len; i++)
    if (overlap (&g_array_index (layout->taken, BfBox, i), box))
      return FALSE;
  return is_within (&layout->limit, box);
}

/* ---- places ------------------------------------------------------------------------------- */

static BfBox
limit_of (const Layout *layout)
{
  const BfVec2 room = bf_vec2 (BF_CUT_LABELS_MM, BF_CUT_LABELS_MM);
  BfBox blank = box_on_paper (layout, &layout->work->fold->blank.box);

  return (BfBox){ bf_vec2_sub (blank.min, room), bf_vec2_add (blank.max, room) };
}

static char *
label_words (const BfCutLabel *label)
{
  return label->first == label->last ? g_strdup_printf ("%u", label->first)
                                     : g_strdup_printf ("%u–%u", label->first, label->last);
}

static double
width_of (const BfCutLabel *label)
{
  g_autofree char *words = label_words (label);
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, FALSE);

  return bf_text_width (text);
}

static void
keep (Layout *layout, const BfCutLabel *label)
{
  g_array_append_val (layout->labels, *label);
  g_array_append_val (layout->taken, label->box);
}

/* Beside the cut, toward its waste if that can be. */
static gboolean
find_beside (const Layout *layout, const BfCut *cut, BfCutLabel *label)
{
  BfVec2 waste = bf_vec2 (cut->waste.x, -cut->waste.y), along = bf_vec2 (-waste.y, waste.x);
  double width = width_of (label);
  BfBox opening = box_on_paper (layout, &cut->opening);

  for (guint i = 0; i < G_N_ELEMENTS (offs_mm) * G_N_ELEMENTS (alongs_mm); i++)
    {
      double off = offs_mm[i / G_N_ELEMENTS (alongs_mm)];
      BfVec2 middle = bf_vec2_along (bf_vec2_along (label->tip, waste, off), along,
                                     alongs_mm[i % G_N_ELEMENTS (alongs_mm)]);

      label->box = box_round (middle, width);
      if (is_free (layout, cut->inside ? layout->n_openings : 0, &label->box) &&
          (!cut->inside || is_within (&opening, &label->box)))
        return TRUE;
    }
  return FALSE;
}

/* The nearest place that is free, with a line from it; the nearest of all that are to be had where
 * none is. */
static void
find_round (const Layout *layout, BfCutLabel *label)
{
  double width = width_of (label);
  BfBox any = box_round (bf_box_middle (&layout->limit), width);
  gboolean found = FALSE;

  label->leads = TRUE;
  for (guint ring = 0; ring < N_RINGS; ring++)
    for (guint way = 0; way < N_WAYS; way++)
      {
        double angle = 2.0 * G_PI * way / N_WAYS, far = FIRST_MM + STEP_MM * ring;
        BfVec2 middle = bf_vec2_add (label->tip, bf_vec2 (far * cos (angle), -far * sin (angle)));

        label->box = box_round (middle, width);
        if (is_free (layout, 0, &label->box))
          return;
        if (!found && is_within (&layout->limit, &label->box))
          any = label->box;
        found = found || is_within (&layout->limit, &label->box);
      }
  label->box = any;
}

/* ---- openings ----------------------------------------------------------------------------- */

/* One past the last cut that shares the opening of cut i, or its own. */
static guint
end_of_group (const Layout *layout, guint i)
{
  const GArray *cuts = layout->work->cuts;
  guint end = i + 1;

  while (end < cuts->len && bf_cuts_share_opening (bf_cut (cuts, i), bf_cut (cuts, end)))
    end++;
  return end;
}

/* TRUE where each cut of an opening has room for its number in it. */
static gboolean
label_each (Layout *layout, guint from, guint end)
{
  guint n_labels = layout->labels->len, n_taken = layout->taken->len;

  for (guint i = from; i < end; i++)
    {
      const BfCut *cut = bf_cut (layout->work->cuts, i);
      BfCutLabel label = { .first = i + 1, .last = i + 1 };

      label.tip = on_paper (layout, bf_vec2_scale (bf_vec2_add (cut->from, cut->to), 0.5));
      if (!find_beside (layout, cut, &label))
        {
          g_array_set_size (layout->labels, n_labels);
          g_array_set_size (layout->taken, n_taken);
          return FALSE;
        }
      keep (layout, &label);
    }
  return TRUE;
}

static void
label_opening (Layout *layout, guint from, guint end)
{
  BfBox opening = box_on_paper (layout, &bf_cut (layout->work->cuts, from)->opening);
  BfCutLabel label = { .first = from + 1, .last = end, .tip = bf_box_middle (&opening) };

  if (label_each (layout, from, end))
    return;
  label.box = box_round (label.tip, width_of (&label));
  if (!is_within (&opening, &label.box))
    find_round (layout, &label);
  keep (layout, &label);
}

static void
label_outline (Layout *layout, guint i)
{
  const BfCut *cut = bf_cut (layout->work->cuts, i);
  BfCutLabel label = { .first = i + 1, .last = i + 1 };

  label.tip = on_paper (layout, bf_vec2_scale (bf_vec2_add (cut->from, cut->to), 0.5));
  if (!find_beside (layout, cut, &label))
    find_round (layout, &label);
  keep (layout, &label);
}

/* ---- all ---------------------------------------------------------------------------------- */

static void
take_openings (Layout *layout)
{
  const BfBlank *blank = &layout->work->fold->blank;

  for (guint i = blank->n_outer; i < blank->rings->len; i++)
    {
      BfBox box = bf_box_empty (), taken;

      bf_ring_extend_box (bf_blank_ring (blank, i), &box);
      taken = box_on_paper (layout, &box);
      g_array_append_val (layout->taken, taken);
    }
  layout->n_openings = layout->taken->len;
}

GArray *
bf_cut_labels (const BfWork *work, BfVec2 size_mm)
{
  Layout layout = { .work = work,
                    .place = bf_figure_place (work->fold, size_mm),
                    .labels = g_array_new (FALSE, FALSE, sizeof (BfCutLabel)) };
  g_autoptr (GArray) taken = g_array_new (FALSE, FALSE, sizeof (BfBox));

  layout.taken = taken;
  layout.limit = limit_of (&layout);
  if (!(layout.place.scale > 0.0) || !bf_work_is_by_hand (work))
    return layout.labels;
  take_openings (&layout);
  for (guint i = 0; i < work->cuts->len; i = end_of_group (&layout, i))
    {
      if (bf_cut (work->cuts, i)->inside)
        label_opening (&layout, i, end_of_group (&layout, i));
      else
        label_outline (&layout, i);
    }
  return layout.labels;
}

static void
draw_leader (const BfCutLabel *label, cairo_t *cr)
{
  BfVec2 from = bf_box_middle (&label->box);

  cairo_set_line_width (cr, LEADER_MM);
  cairo_set_dash (cr, NULL, 0, 0.0);
  cairo_move_to (cr, from.x, from.y);
  cairo_line_to (cr, label->tip.x, label->tip.y);
  cairo_stroke (cr);
  cairo_arc (cr, label->tip.x, label->tip.y, DOT_MM, 0.0, 2.0 * G_PI);
  cairo_fill (cr);
}

/* On white, so that no line runs through it. */
static void
draw_words (const BfCutLabel *label, cairo_t *cr)
{
  g_autofree char *words = label_words (label);
  g_autoptr (BfText) text = bf_text_new (words, CAP_MM, FALSE);
  BfVec2 middle = bf_box_middle (&label->box);
  double width = bf_text_width (text);

  cairo_set_source_rgb (cr, 1.0, 1.0, 1.0);
  cairo_rectangle (cr, middle.x - width / 2.0 - GAP_MM, middle.y - CAP_MM / 2.0 - GAP_MM,
                   width + 2.0 * GAP_MM, CAP_MM + 2.0 * GAP_MM);
  cairo_fill (cr);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_text_draw (text, cr, middle.x - width / 2.0, middle.y + CAP_MM / 2.0);
}

void
bf_cut_labels_draw (const BfWork *work, BfVec2 size_mm, cairo_t *cr)
{
  g_autoptr (GArray) labels = bf_cut_labels (work, size_mm);

  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  for (guint i = 0; i < labels->len; i++)
    if (g_array_index (labels, BfCutLabel, i).leads)
      draw_leader (&g_array_index (labels, BfCutLabel, i), cr);
  for (guint i = 0; i < labels->len; i++)
    draw_words (&g_array_index (labels, BfCutLabel, i), cr);
}
