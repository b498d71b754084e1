/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/label-field.h"

#include "core/tolerance.h"

#define FLATTEN_MM 0.2 /* well below the clearance that words keep */

typedef struct
{
  BfVec2 a, b;
} Line;

struct _BfLabelField
{
  gboolean has_view;
  BfBox view;
  double clearance_mm;
  GArray *lines;  /* Line */
  GArray *plates; /* BfPlate */
};

BfLabelField *
bf_label_field_new (const BfBox *view, double clearance_mm)
{
  BfLabelField *field = g_new0 (BfLabelField, 1);

  field->has_view = view != NULL;
  if (view != NULL)
    field->view = *view;
  field->clearance_mm = clearance_mm;
  field->lines = g_array_new (FALSE, FALSE, sizeof (Line));
  field->plates = g_array_new (FALSE, FALSE, sizeof (BfPlate));
  return field;
}

void
bf_label_field_free (BfLabelField *field)
{
  g_array_unref (field->lines);
  g_array_unref (field->plates);
  g_free (field);
}

void
bf_label_field_add_line (BfLabelField *field, BfVec2 a, BfVec2 b)
{
  Line line = { a, b };

  g_array_append_val (field->lines, line);
}

void
bf_label_field_add_ring (BfLabelField *field, const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_ring_flatten (ring, FLATTEN_MM, points);
  for (guint i = 0; i < points->len; i++)
    bf_label_field_add_line (field, g_array_index (points, BfVec2, i),
                             g_array_index (points, BfVec2, (i + 1) % points->len));
}

void
bf_label_field_add_plate (BfLabelField *field, const BfPlate *plate)
{
  g_array_append_val (field->plates, *plate);
}

void
bf_plate_corners (const BfPlate *plate, BfVec2 corners[4])
{
  static const double signs[4][2] = { { -0.5, -0.5 }, { 0.5, -0.5 }, { 0.5, 0.5 }, { -0.5, 0.5 } };
  BfVec2 up = bf_vec2 (-plate->along.y, plate->along.x);

  for (int i = 0; i < 4; i++)
    {
      BfVec2 p = bf_vec2_along (plate->centre, plate->along, signs[i][0] * plate->width);
      corners[i] = bf_vec2_along (p, up, signs[i][1] * plate->height);
    }
}

/* Narrows range to the t for which start + t·step lies within the limits (Liang and Barsky's
 * way of clipping). FALSE where there is none. */
static gboolean
clip_axis (double start, double step, const double limits[2], double range[2])
{
  double enter, leave;

  if (fabs (step) < BF_TOLERANCE_ZERO)
    return start >= limits[0] && start <= limits[1];
  enter = (limits[0] - start) / step;
  leave = (limits[1] - start) / step;
  range[0] = MAX (range[0], MIN (enter, leave));
  range[1] = MIN (range[1], MAX (enter, leave));
  return range[0] <= range[1];
}

gboolean
bf_box_clip_line (const BfBox *box, BfVec2 *a, BfVec2 *b)
{
  BfVec2 start = *a, step = bf_vec2_sub (*b, *a);
  double range[2] = { 0.0, 1.0 };
  const double x[2] = { box->min.x, box->max.x }, y[2] = { box->min.y, box->max.y };

  if (!clip_axis (start.x, step.x, x, range) || !clip_axis (start.y, step.y, y, range))
    return FALSE;
  *a = bf_vec2_along (start, step, range[0]);
  *b = bf_vec2_along (start, step, range[1]);
  return TRUE;
}

static BfVec2
to_plate (const BfPlate *plate, BfVec2 p)
{
  BfVec2 from_centre = bf_vec2_sub (p, plate->centre);

  return bf_vec2 (bf_vec2_dot (from_centre, plate->along),
                  bf_vec2_cross (plate->along, from_centre));
}

static gboolean
line_touches (const Line *line, const BfPlate *plate, double clearance)
{
  BfVec2 half = bf_vec2 (plate->width / 2.0 + clearance, plate->height / 2.0 + clearance);
  BfBox box = { bf_vec2_scale (half, -1.0), half };
  BfVec2 a = to_plate (plate, line->a), b = to_plate (plate, line->b);

  return bf_box_clip_line (&box, &a, &b);
}

/* TRUE where one of a's own two directions shows a gap between the two (separating axes). */
static gboolean
shows_gap (const BfPlate *a, const BfPlate *b)
{
  BfVec2 corners[4];
  BfBox box = bf_box_empty ();

  bf_plate_corners (b, corners);
  for (int i = 0; i < 4; i++)
    bf_box_extend (&box, to_plate (a, corners[i]));
  return box.min.x > a->width / 2.0 || box.max.x < -a->width / 2.0 || box.min.y > a->height / 2.0 ||
         box.max.y < -a->height / 2.0;
}

static gboolean
is_seen (const BfLabelField *field, const BfPlate *plate)
{
  BfVec2 corners[4];

  if (!field->has_view)
    return TRUE;
  bf_plate_corners (plate, corners);
  for (int i = 0; i < 4; i++)
    if (corners[i].x < field->view.min.x || corners[i].x > field->view.max.x ||
        corners[i].y < field->view.min.y || corners[i].y > field->view.max.y)
      return FALSE;
  return TRUE;
}

gboolean
bf_label_field_is_free (const BfLabelField *field, const BfPlate *plate)
{
  if (!is_seen (field, plate))
    return FALSE;
  for (guint i = 0; i < field->lines->len; i++)
    if (line_touches (&g_array_index (field->lines, Line, i), plate, field->clearance_mm))
      return FALSE;
  for (guint i = 0; i < field->plates->len; i++)
    {
      const BfPlate *other = &g_array_index (field->plates, BfPlate, i);
      if (!shows_gap (plate, other) && !shows_gap (other, plate))
        return FALSE;
    }
  return TRUE;
}
