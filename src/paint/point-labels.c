/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/point-labels.h"

#include "core/tolerance.h"
#include "paint/text.h"

#define CLEARANCE_MM 0.4
#define MARK_MM 1.0     /* the ground of a point's own mark, each way */
#define LINE_HEIGHT 1.5 /* words and their surroundings, in capitals */
#define LEADER_MM 0.12

/* How far from the point words begin; from the second on, a line leads to them. */
static const double rings_mm[] = { 1.5, 4.0, 7.0, 10.5, 14.0, 18.0, 22.0 };

/* Beside first, as one reads, then over and under. y down. */
static const BfVec2 ways[] = {
  { 1.0, -0.5 }, { -1.0, -0.5 }, { 1.0, 0.5 }, { -1.0, 0.5 },
  { 0.3, -1.0 }, { -0.3, -1.0 }, { 0.3, 1.0 }, { -0.3, 1.0 },
};

typedef struct
{
  BfVec2 at;
  BfText *text;
  BfPlate plate;
  gboolean is_far; /* a line leads to it */
} Label;

struct _BfPointLabels
{
  double cap_mm;
  BfLabelField *field; /* all that words must not cover */
  BfLabelField *words; /* of that only other words and points, */
  BfLabelField *view;  /* and nothing but what is seen: for words that find no place in the first */
  GArray *labels;      /* Label */
};

static void
clear_label (gpointer data)
{
  bf_text_free (((Label *)data)->text);
}

BfPointLabels *
bf_point_labels_new (const BfBox *view, double cap_mm)
{
  BfPointLabels *labels = g_new0 (BfPointLabels, 1);

  labels->cap_mm = cap_mm;
  labels->field = bf_label_field_new (view, CLEARANCE_MM);
  labels->words = bf_label_field_new (view, 0.0);
  labels->view = bf_label_field_new (view, 0.0);
  labels->labels = g_array_new (FALSE, FALSE, sizeof (Label));
  g_array_set_clear_func (labels->labels, clear_label);
  return labels;
}

void
bf_point_labels_free (BfPointLabels *labels)
{
  if (labels == NULL)
    return;
  bf_label_field_free (labels->field);
  bf_label_field_free (labels->words);
  bf_label_field_free (labels->view);
  g_array_unref (labels->labels);
  g_free (labels);
}

void
bf_point_labels_avoid (BfPointLabels *labels, BfVec2 a, BfVec2 b)
{
  bf_label_field_add_line (labels->field, a, b);
}

static Label *
nth (const BfPointLabels *labels, guint i)
{
  return &g_array_index (labels->labels, Label, i);
}

void
bf_point_labels_add (BfPointLabels *labels, BfVec2 at, const char *words)
{
  BfPlate mark = { at, bf_vec2 (1.0, 0.0), 2.0 * MARK_MM, 2.0 * MARK_MM };
  Label label = { .at = at, .text = NULL };

  for (guint i = 0; i < labels->labels->len; i++)
    if (bf_vec2_distance (nth (labels, i)->at, at) < BF_TOLERANCE_SIZE_MM)
      return;
  label.text = bf_text_new (words, labels->cap_mm, FALSE);
  label.plate =
      (BfPlate){ at, bf_vec2 (1.0, 0.0), bf_text_width (label.text), LINE_HEIGHT * labels->cap_mm };
  g_array_append_val (labels->labels, label);
  bf_label_field_add_plate (labels->field, &mark);
  bf_label_field_add_plate (labels->words, &mark);
}

/* The middle of words that stand that far from their point, that way from it. */
static BfVec2
middle (const Label *label, double ring_mm, BfVec2 way)
{
  BfVec2 at = bf_vec2_along (label->at, bf_vec2_unit (way), ring_mm);

  return bf_vec2 (at.x + (way.x > 0.0 ? 0.5 : -0.5) * label->plate.width,
                  at.y + (fabs (way.y) < fabs (way.x) ? 0.0 : way.y) * label->plate.height / 2.0);
}

/* The line that leads from the point's mark to the words' near end. */
static void
leader (const Label *label, BfVec2 ends[2])
{
  double side = label->plate.centre.x > label->at.x ? -0.5 : 0.5;

  ends[1] = bf_vec2 (label->plate.centre.x + side * label->plate.width, label->plate.centre.y);
  ends[0] =
      bf_vec2_along (label->at, bf_vec2_unit (bf_vec2_sub (ends[1], label->at)), MARK_MM * G_SQRT2);
}

/* TRUE where the leading line crosses no words and no other point's mark. */
static gboolean
is_led_free (const BfPointLabels *labels, const Label *label)
{
  BfVec2 ends[2], along;
  BfPlate line;

  leader (label, ends);
  along = bf_vec2_sub (ends[1], ends[0]);
  line = (BfPlate){ bf_vec2_scale (bf_vec2_add (ends[0], ends[1]), 0.5), bf_vec2_unit (along),
                    bf_vec2_length (along), LEADER_MM };
  for (guint i = 0; i < labels->labels->len; i++)
    {
      const Label *other = nth (labels, i);
      g_autoptr (BfLabelField) words = bf_label_field_new (NULL, 0.0);

      if (other == label)
        break; /* those behind it have no place yet */
      bf_label_field_add_plate (words, &other->plate);
      if (!bf_label_field_is_free (words, &line))
        return FALSE;
    }
  return TRUE;
}

/* The nearest place that is free in that field. */
static gboolean
find_place (const BfPointLabels *labels, const BfLabelField *field, Label *label)
{
  for (guint ring = 0; ring < G_N_ELEMENTS (rings_mm); ring++)
    for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
      {
        label->plate.centre = middle (label, rings_mm[ring], ways[i]);
        label->is_far = ring > 0;
        if (bf_label_field_is_free (field, &label->plate) &&
            (!label->is_far || field != labels->field || is_led_free (labels, label)))
          return TRUE;
      }
  return FALSE;
}

/* Over lines where there is no other place, over other words where there is none either. */
static gboolean
place (const BfPointLabels *labels, Label *label)
{
  if (find_place (labels, labels->field, label))
    return TRUE;
  if (!find_place (labels, labels->words, label) && !find_place (labels, labels->view, label))
    {
      label->plate.centre = middle (label, rings_mm[0], ways[0]);
      label->is_far = FALSE;
    }
  return FALSE;
}

guint
bf_point_labels_place (BfPointLabels *labels)
{
  guint missed = 0;

  for (guint i = 0; i < labels->labels->len; i++)
    {
      Label *label = nth (labels, i);
      BfVec2 ends[2];

      missed += place (labels, label) ? 0 : 1;
      bf_label_field_add_plate (labels->field, &label->plate);
      bf_label_field_add_plate (labels->words, &label->plate);
      if (!label->is_far)
        continue;
      leader (label, ends);
      bf_label_field_add_line (labels->field, ends[0], ends[1]);
    }
  return missed;
}

guint
bf_point_labels_count (const BfPointLabels *labels)
{
  return labels->labels->len;
}

const BfPlate *
bf_point_labels_plate (const BfPointLabels *labels, guint i)
{
  g_return_val_if_fail (i < labels->labels->len, NULL);
  return &nth (labels, i)->plate;
}

void
bf_point_labels_draw (const BfPointLabels *labels, cairo_t *cr)
{
  cairo_set_line_width (cr, LEADER_MM);
  cairo_set_dash (cr, NULL, 0, 0.0);
  for (guint i = 0; i < labels->labels->len; i++)
    {
      const Label *label = nth (labels, i);
      BfVec2 ends[2];

      bf_text_draw (label->text, cr, label->plate.centre.x - label->plate.width / 2.0,
                    label->plate.centre.y + labels->cap_mm / 2.0);
      if (!label->is_far)
        continue;
      leader (label, ends);
      cairo_move_to (cr, ends[0].x, ends[0].y);
      cairo_line_to (cr, ends[1].x, ends[1].y);
      cairo_stroke (cr);
    }
}
