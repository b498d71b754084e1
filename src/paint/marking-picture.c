/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/marking-picture.h"

#include "core/units.h"
#include "make/marking-points.h"
#include "paint/palette.h"
#include "paint/point-labels.h"
#include "paint/text.h"

#define MARGIN_MM 9.0 /* round the metal, for the distances */
#define CAP_MM 2.2
#define STRONG_MM 0.5
#define PALE_MM 0.2
#define BAR_MM 0.3
#define PALE_GREY 0.62
#define METAL_GREY 0.94
#define ARROW_MM 1.6
#define CROSS_MM 1.4

/* The picture being drawn: paper = origin + scale · metal, y down. */
typedef struct
{
  const BfMarkingPicture *picture;
  cairo_t *cr;
  BfPointLabels *labels; /* distances of this step's points */
  double scale, left, bottom;
} Drawing;

static BfVec2
on_paper (const Drawing *drawing, double x_mm, double y_mm)
{
  return bf_vec2 (drawing->left + x_mm * drawing->scale, drawing->bottom - y_mm * drawing->scale);
}

static BfVec2
point_on_paper (const Drawing *drawing, BfMarkedPoint p)
{
  return on_paper (drawing, p.x.marked_mm, p.y.marked_mm);
}

/* A point of a strike: so far from its datum edge, so far along it. */
static BfVec2
strike_point (const Drawing *drawing, const BfStrike *strike, double along_mm)
{
  return strike->from == BF_DATUM_BOTTOM ? on_paper (drawing, along_mm, strike->marked_mm)
                                         : on_paper (drawing, strike->marked_mm, along_mm);
}

static void
line (const Drawing *drawing, BfVec2 a, BfVec2 b)
{
  cairo_move_to (drawing->cr, a.x, a.y);
  cairo_line_to (drawing->cr, b.x, b.y);
  cairo_stroke (drawing->cr);
}

/* ---- pens --------------------------------------------------------------------------------- */

static void
use_pen (const Drawing *drawing, BfMarkKind kind, gboolean now)
{
  static const double bend_dash[] = { 4.0, 1.3 }, bar_dash[] = { 1.2, 0.9 };

  cairo_set_line_width (drawing->cr, now ? STRONG_MM : PALE_MM);
  if (now)
    bf_set_source_rgb (drawing->cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  else
    cairo_set_source_rgb (drawing->cr, PALE_GREY, PALE_GREY, PALE_GREY);
  if (kind == BF_MARK_BAR && now)
    cairo_set_line_width (drawing->cr, BAR_MM);
  cairo_set_dash (drawing->cr, kind == BF_MARK_BAR ? bar_dash : bend_dash,
                  kind == BF_MARK_CUT ? 0 : 2, 0.0);
}

static void
use_dots (const Drawing *drawing)
{
  static const double dots[] = { 0.3, 1.0 };

  use_pen (drawing, BF_MARK_CUT, TRUE);
  cairo_set_dash (drawing->cr, dots, 2, 0.0);
}

/* ---- the metal ---------------------------------------------------------------------------- */

/* Two edges are there; where the metal ends beyond the blank does not matter. */
static void
draw_metal (const Drawing *drawing)
{
  const BfMarking *marking = drawing->picture->marking;
  double width = marking->width.marked_mm * drawing->scale;
  double height = marking->height.marked_mm * drawing->scale;
  BfVec2 corner = on_paper (drawing, 0.0, 0.0);

  cairo_rectangle (drawing->cr, corner.x, corner.y, width + 2.0, -height - 2.0);
  cairo_set_source_rgb (drawing->cr, METAL_GREY, METAL_GREY, METAL_GREY);
  cairo_fill (drawing->cr);
  use_pen (drawing, BF_MARK_CUT, drawing->picture->at == 0);
  line (drawing, corner, bf_vec2 (corner.x + width + 2.0, corner.y));
  line (drawing, corner, bf_vec2 (corner.x, corner.y - height - 2.0));
}

/* ---- distances ---------------------------------------------------------------------------- */

static void
draw_arrow_head (const Drawing *drawing, BfVec2 tip, BfVec2 along)
{
  BfVec2 back = bf_vec2_along (tip, along, -ARROW_MM);
  BfVec2 side = bf_vec2 (-along.y * ARROW_MM * 0.3, along.x * ARROW_MM * 0.3);

  cairo_move_to (drawing->cr, tip.x, tip.y);
  cairo_line_to (drawing->cr, back.x + side.x, back.y + side.y);
  cairo_line_to (drawing->cr, back.x - side.x, back.y - side.y);
  cairo_close_path (drawing->cr);
  cairo_fill (drawing->cr);
}

/* Left of an upright arrow at that place: level, as one reads, or along it where the number is too
 * wide to stay in the picture. */
static void
show_left_of (const Drawing *drawing, const char *number, BfVec2 at)
{
  g_autoptr (BfText) text = bf_text_new (number, CAP_MM, FALSE);

  if (bf_text_width (text) < at.x - 1.0)
    {
      bf_text_show (drawing->cr, number, CAP_MM, 1.0, bf_vec2 (at.x - 1.0, at.y + 1.0));
      return;
    }
  cairo_save (drawing->cr);
  cairo_translate (drawing->cr, at.x - 1.0, at.y);
  cairo_rotate (drawing->cr, -G_PI / 2.0);
  bf_text_show (drawing->cr, number, CAP_MM, 0.5, bf_vec2 (0.0, 0.0));
  cairo_restore (drawing->cr);
}

/* The distance from the datum edge to the strike, beside the metal. */
static void
draw_distance (const Drawing *drawing, const BfStrike *strike)
{
  gboolean up = strike->from == BF_DATUM_BOTTOM;
  BfVec2 from = on_paper (drawing, 0.0, 0.0), to = from, words;
  BfVec2 along = up ? bf_vec2 (0.0, -1.0) : bf_vec2 (1.0, 0.0);
  g_autofree char *number = bf_format_number (strike->marked_mm, drawing->picture->units);

  to = bf_vec2_along (to, along, strike->marked_mm * drawing->scale);
  from = bf_vec2_add (from, up ? bf_vec2 (-2.5, 0.0) : bf_vec2 (0.0, 2.5));
  to = bf_vec2_add (to, up ? bf_vec2 (-2.5, 0.0) : bf_vec2 (0.0, 2.5));
  words = bf_vec2_scale (bf_vec2_add (from, to), 0.5);
  use_pen (drawing, BF_MARK_CUT, TRUE);
  cairo_set_line_width (drawing->cr, PALE_MM);
  line (drawing, from, to);
  draw_arrow_head (drawing, to, along);
  if (up)
    show_left_of (drawing, number, words);
  else
    bf_text_show (drawing->cr, number, CAP_MM, 0.5, bf_vec2 (words.x, words.y + 4.0));
}

/* Both distances, and the compass's radius. */
static char *
point_words (const BfStepPoint *point, BfUnits units)
{
  g_autofree char *both = bf_marked_point_words (&point->at, units);
  g_autofree char *radius = NULL;

  if (isnan (point->radius_mm))
    return g_steal_pointer (&both);
  radius = bf_format_number (point->radius_mm, units);
  return g_strdup_printf ("%s\302\240 R\302\240%s", both, radius);
}

/* To be shown beside the points that this step tells: their numbers, or their distances. */
static void
tell_points (const Drawing *drawing, const BfMarkingStep *step)
{
  const BfMarkingPicture *picture = drawing->picture;
  g_autoptr (GArray) points = bf_marking_step_points (picture->marking, step);

  for (guint i = 0; i < points->len; i++)
    {
      const BfStepPoint *point = &g_array_index (points, BfStepPoint, i);
      g_autofree char *words =
          picture->numbers ? g_strdup_printf ("%u", i + 1) : point_words (point, picture->units);

      bf_point_labels_add (drawing->labels, point_on_paper (drawing, point->at), words);
    }
}

/* ---- what a step leaves ------------------------------------------------------------------- */

static void
draw_strike (const Drawing *drawing, const BfStrike *strike, gboolean now, gboolean wiped)
{
  for (guint i = 0; i < strike->stretches->len; i++)
    {
      const BfMarkStretch *stretch = &g_array_index (strike->stretches, BfMarkStretch, i);

      use_pen (drawing, stretch->kind, now);
      line (drawing, strike_point (drawing, strike, stretch->from.marked_mm),
            strike_point (drawing, strike, stretch->to.marked_mm));
    }
  use_pen (drawing, BF_MARK_CUT, now);
  for (guint i = 0; !wiped && i < strike->wipes->len; i++)
    {
      const BfRun *wipe = &g_array_index (strike->wipes, BfRun, i);

      line (drawing, strike_point (drawing, strike, wipe->from_mm),
            strike_point (drawing, strike, wipe->to_mm));
    }
}

static void
draw_wipes (const Drawing *drawing, const BfStrike *strike)
{
  use_dots (drawing);
  for (guint i = 0; i < strike->wipes->len; i++)
    {
      const BfRun *wipe = &g_array_index (strike->wipes, BfRun, i);

      line (drawing, strike_point (drawing, strike, wipe->from_mm),
            strike_point (drawing, strike, wipe->to_mm));
    }
}

static void
draw_join (const Drawing *drawing, const BfMarkJoin *join, gboolean now)
{
  use_pen (drawing, join->kind, now);
  line (drawing, point_on_paper (drawing, join->from), point_on_paper (drawing, join->to));
  if (now)
    bf_point_labels_avoid (drawing->labels, point_on_paper (drawing, join->from),
                           point_on_paper (drawing, join->to));
}

static void
draw_circle (const Drawing *drawing, BfMarkedPoint centre, double radius_mm, gboolean now)
{
  BfVec2 at = point_on_paper (drawing, centre);

  use_pen (drawing, BF_MARK_CUT, now);
  cairo_new_sub_path (drawing->cr);
  cairo_arc (drawing->cr, at.x, at.y, radius_mm * drawing->scale, 0.0, 2.0 * G_PI);
  cairo_stroke (drawing->cr);
}

static void
draw_cross (const Drawing *drawing, BfMarkedPoint p, gboolean now)
{
  BfVec2 at = point_on_paper (drawing, p);

  use_pen (drawing, BF_MARK_CUT, now);
  cairo_set_line_width (drawing->cr, PALE_MM);
  line (drawing, bf_vec2 (at.x - CROSS_MM, at.y), bf_vec2 (at.x + CROSS_MM, at.y));
  line (drawing, bf_vec2 (at.x, at.y - CROSS_MM), bf_vec2 (at.x, at.y + CROSS_MM));
}

static void
draw_arc (const Drawing *drawing, const BfMarkArc *arc, gboolean now)
{
  draw_circle (drawing, arc->centre, arc->radius_mm, now);
  if (now)
    draw_cross (drawing, arc->centre, TRUE);
}

static void
draw_slot (const Drawing *drawing, const BfMarkSlot *slot, gboolean now)
{
  draw_cross (drawing, slot->from, now);
  draw_cross (drawing, slot->to, now);
  use_pen (drawing, BF_MARK_CUT, now);
  line (drawing, point_on_paper (drawing, slot->from), point_on_paper (drawing, slot->to));
  if (now)
    bf_point_labels_avoid (drawing->labels, point_on_paper (drawing, slot->from),
                           point_on_paper (drawing, slot->to));
}

static void
draw_item (const Drawing *drawing, const BfMarkingStep *step, guint i, gboolean now)
{
  const BfMarking *marking = drawing->picture->marking;
  const GArray *holes = marking->holes;

  if (step->kind == BF_STEP_JOIN)
    draw_join (drawing, &g_array_index (marking->joins, BfMarkJoin, i), now);
  else if (step->kind == BF_STEP_ARC)
    draw_arc (drawing, &g_array_index (marking->arcs, BfMarkArc, i), now);
  else if (step->kind == BF_STEP_SLOT)
    draw_slot (drawing, &g_array_index (marking->slots, BfMarkSlot, i), now);
  else if (step->kind == BF_STEP_PUNCH)
    draw_cross (drawing, g_array_index (holes, BfMarkHole, i).centre, now);
  else if (step->kind == BF_STEP_DRILL)
    draw_circle (drawing, g_array_index (holes, BfMarkHole, i).centre,
                 g_array_index (holes, BfMarkHole, i).diameter_mm / 2.0, now);
  else if (step->kind == BF_STEP_WIPE && now)
    draw_wipes (drawing, bf_marking_strike (marking, i));
}

static gboolean
was_wiped (const BfMarkingPicture *picture)
{
  for (guint i = 0; i <= picture->at; i++)
    if (g_array_index (picture->steps, BfMarkingStep, i).kind == BF_STEP_WIPE)
      return TRUE;
  return FALSE;
}

static void
draw_step (const Drawing *drawing, guint which)
{
  const BfMarkingStep *step = &g_array_index (drawing->picture->steps, BfMarkingStep, which);
  gboolean now = which == drawing->picture->at;

  if (now)
    tell_points (drawing, step);
  for (guint i = 0; i < step->items->len; i++)
    {
      guint item = bf_step_item (step, i);

      if (step->kind != BF_STEP_STRIKE)
        {
          draw_item (drawing, step, item, now);
          continue;
        }
      draw_strike (drawing, bf_marking_strike (drawing->picture->marking, item), now,
                   was_wiped (drawing->picture));
      if (now)
        draw_distance (drawing, bf_marking_strike (drawing->picture->marking, item));
    }
}

/* The last look: over all, and corner to corner. */
static void
draw_diagonals (const Drawing *drawing)
{
  const BfMarking *marking = drawing->picture->marking;
  double width = marking->width.marked_mm, height = marking->height.marked_mm;

  use_dots (drawing);
  line (drawing, on_paper (drawing, 0.0, 0.0), on_paper (drawing, width, height));
  line (drawing, on_paper (drawing, 0.0, height), on_paper (drawing, width, 0.0));
}

void
bf_marking_picture_draw (const BfMarkingPicture *picture,
                         double width_mm,
                         double height_mm,
                         cairo_t *cr)
{
  const BfMarking *marking = picture->marking;
  BfBox view = { bf_vec2 (0.0, 0.0), bf_vec2 (width_mm, height_mm) };
  g_autoptr (BfPointLabels) labels = bf_point_labels_new (&view, CAP_MM * 0.85);
  Drawing drawing = { .picture = picture, .cr = cr, .labels = labels };
  double spare_x, spare_y;

  if (marking->width.marked_mm <= 0.0 || marking->height.marked_mm <= 0.0)
    return;
  drawing.scale = MIN ((width_mm - 1.5 * MARGIN_MM) / marking->width.marked_mm,
                       (height_mm - 1.5 * MARGIN_MM) / marking->height.marked_mm);
  spare_x = width_mm - 1.5 * MARGIN_MM - drawing.scale * marking->width.marked_mm;
  spare_y = height_mm - 1.5 * MARGIN_MM - drawing.scale * marking->height.marked_mm;
  drawing.left = MARGIN_MM + spare_x / 2.0;
  drawing.bottom = height_mm - MARGIN_MM - spare_y / 2.0;
  cairo_save (cr);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  draw_metal (&drawing);
  for (guint i = 0; i <= picture->at; i++)
    draw_step (&drawing, i);
  if (g_array_index (picture->steps, BfMarkingStep, picture->at).kind == BF_STEP_CHECK)
    draw_diagonals (&drawing);
  bf_point_labels_place (labels);
  bf_set_source_rgb (cr, bf_okabe_ito (BF_OKABE_ITO_BLACK));
  bf_point_labels_draw (labels, cr);
  cairo_restore (cr);
}
