/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/strip-picture.h"

#include <glib/gi18n.h>

#include "paint/blank-view.h"
#include "paint/palette.h"
#include "paint/text.h"

#define CAP_MM 2.5
#define NUMBER_CAP_MM 3.2
#define ARROW_MM 7.0
#define HEAD_MM 1.6
#define JAW_MM 4.0     /* half of a caliper place */
#define JAW_OFF_MM 5.0 /* beyond the bend */
#define DIM_OFF_MM 7.0 /* a measure's line from what is measured */
#define DIM_SPACE_MM 14.0

static void
note_pen (cairo_t *cr)
{
  bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
}

static void
line (cairo_t *cr, BfVec2 a, BfVec2 b)
{
  cairo_move_to (cr, a.x, a.y);
  cairo_line_to (cr, b.x, b.y);
  cairo_stroke (cr);
}

/* A line that ends in an arrow's head. */
static void
arrow (cairo_t *cr, BfVec2 from, BfVec2 to)
{
  double angle = atan2 (to.y - from.y, to.x - from.x);

  line (cr, from, to);
  cairo_move_to (cr, to.x, to.y);
  cairo_line_to (cr, to.x - HEAD_MM * cos (angle - 0.3), to.y - HEAD_MM * sin (angle - 0.3));
  cairo_line_to (cr, to.x - HEAD_MM * cos (angle + 0.3), to.y - HEAD_MM * sin (angle + 0.3));
  cairo_close_path (cr);
  cairo_fill (cr);
}

/* How far from the bend line the jaws meet flat metal. */
static double
jaw_distance (const BfBendResult *bend, double thickness_mm)
{
  return bend->allowance_mm / 2.0 + bend->inside_radius_mm + thickness_mm + JAW_OFF_MM;
}

/* At one end of the strip: an arrow to the edge that is measured from, the leg's number, and on the
 * other leg the place that is measured to. outward: −1 at the left end, 1 at the right. */
static void
draw_places (const BfFold *strip, const char *number, double outward, cairo_t *cr)
{
  const BfBox *box = &strip->blank.box;
  const BfBendResult *bend = bf_fold_bend (strip, 0);
  double middle = -(box->min.y + box->max.y) / 2.0, bend_x = bend->line[0].x;
  double end_x = outward < 0.0 ? box->min.x : box->max.x;
  double jaw_x = bend_x + outward * jaw_distance (bend, strip->part->metal.thickness_mm);

  note_pen (cr);
  arrow (cr, bf_vec2 (end_x - outward * ARROW_MM, middle), bf_vec2 (end_x - outward * 0.5, middle));
  line (cr, bf_vec2 (jaw_x, middle - JAW_MM), bf_vec2 (jaw_x, middle + JAW_MM));
  bf_text_show (cr, number, NUMBER_CAP_MM, 0.5,
                bf_vec2 (end_x - outward * (ARROW_MM + 3.0), middle + NUMBER_CAP_MM / 2.0));
}

/* Boxes of the blank where the marks stand, so that the words of the bend keep off them. */
static GArray *
marked_boxes (const BfFold *strip)
{
  const BfBox *box = &strip->blank.box;
  const BfBendResult *bend = bf_fold_bend (strip, 0);
  double middle = (box->min.y + box->max.y) / 2.0, reach = ARROW_MM + 5.0;
  double off = jaw_distance (bend, strip->part->metal.thickness_mm), x = bend->line[0].x;
  BfBox boxes[] = {
    { { box->min.x, middle - JAW_MM }, { box->min.x + reach, middle + JAW_MM } },
    { { box->max.x - reach, middle - JAW_MM }, { box->max.x, middle + JAW_MM } },
    { { x - off - 1.0, middle - JAW_MM }, { x - off + 1.0, middle + JAW_MM } },
    { { x + off - 1.0, middle - JAW_MM }, { x + off + 1.0, middle + JAW_MM } },
  };
  GArray *keep_off = g_array_new (FALSE, FALSE, sizeof (BfBox));

  g_array_append_vals (keep_off, boxes, G_N_ELEMENTS (boxes));
  return keep_off;
}

void
bf_strip_draw_flat (const BfFold *strip, BfUnits units, cairo_t *cr)
{
  g_autoptr (GArray) keep_off = marked_boxes (strip);
  BfBlankStyle style;

  bf_blank_style_init (&style, strip);
  style.layers = BF_BLANK_LINES | BF_BLANK_BEND_NOTES | BF_BLANK_DRILL_NOTES;
  style.cap_height_mm = CAP_MM;
  style.units = units;
  style.view = &strip->blank.box;
  style.keep_off = keep_off;
  bf_blank_view_draw (strip, &style, cr);
  draw_places (strip, "1", -1.0, cr);
  draw_places (strip, "2", 1.0, cr);
}

/* A measure between two points, its line moved off by that vector. */
static void
draw_measure (cairo_t *cr, BfVec2 a, BfVec2 b, BfVec2 off, const char *number)
{
  BfVec2 from = bf_vec2_add (a, off), to = bf_vec2_add (b, off);
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (from, to), 0.5);
  BfVec2 past = bf_vec2_scale (off, 1.2);

  line (cr, a, bf_vec2_add (a, past));
  line (cr, b, bf_vec2_add (b, past));
  arrow (cr, middle, from);
  arrow (cr, middle, to);
  bf_text_show (cr, number, NUMBER_CAP_MM, 0.5,
                bf_vec2 (middle.x + off.x * 0.6, middle.y + off.y * 0.6 + NUMBER_CAP_MM / 2.0));
}

/* The section of the metal: leg 1 lies, leg 2 stands at its right. Origin: the outer corner. */
static void
trace_section (cairo_t *cr, double leg, double t, double radius)
{
  cairo_move_to (cr, -leg, 0.0);
  cairo_line_to (cr, -leg, -t);
  cairo_line_to (cr, -t - radius, -t);
  cairo_arc_negative (cr, -t - radius, -t - radius, radius, G_PI_2, 0.0);
  cairo_line_to (cr, -t, -leg);
  cairo_line_to (cr, 0.0, -leg);
  cairo_line_to (cr, 0.0, -t - radius);
  cairo_arc (cr, -t - radius, -t - radius, radius + t, 0.0, G_PI_2);
  cairo_close_path (cr);
}

void
bf_strip_draw_bent (const BfFold *strip, double side_mm, cairo_t *cr)
{
  double leg = bf_part_flange (strip->part, 0)->length_mm;
  double scale = MIN (1.0, (side_mm - DIM_SPACE_MM) / leg);
  double t = strip->part->metal.thickness_mm * scale;
  double radius = bf_fold_bend (strip, 0)->inside_radius_mm * scale;

  leg *= scale;
  cairo_save (cr);
  cairo_translate (cr, leg, leg);
  trace_section (cr, leg, t, radius);
  bf_pen_apply (bf_pen (BF_PURPOSE_CUT_OUTSIDE), cr, 1.0, FALSE);
  cairo_stroke (cr);
  note_pen (cr);
  draw_measure (cr, bf_vec2 (-leg, 0.0), bf_vec2 (0.0, 0.0), bf_vec2 (0.0, DIM_OFF_MM), "1");
  draw_measure (cr, bf_vec2 (0.0, -leg), bf_vec2 (0.0, 0.0), bf_vec2 (DIM_OFF_MM, 0.0), "2");
  cairo_restore (cr);
}
