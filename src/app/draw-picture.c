/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/draw-picture.h"

#include "core/units.h"
#include "paint/palette.h"
#include "paint/text.h"

#define CAP_PX 9.0
#define CORNER_PX 3.5
#define TYPED_UP_PX 18.0

BfVec2
bf_draw_to_px (const BfDrawLook *look, BfVec2 mm)
{
  return bf_vec2 (look->origin_px.x + mm.x * look->scale, look->origin_px.y - mm.y * look->scale);
}

BfVec2
bf_draw_to_mm (const BfDrawLook *look, BfVec2 px)
{
  return bf_vec2 ((px.x - look->origin_px.x) / look->scale,
                  (look->origin_px.y - px.y) / look->scale);
}

static void
set_ink (cairo_t *cr, const BfDrawLook *look)
{
  bf_set_source_rgb (cr, look->dark ? 0xE8E4DC : 0x35322E);
}

static void
set_quiet (cairo_t *cr, const BfDrawLook *look)
{
  bf_set_source_rgb (cr, look->dark ? 0x8A857C : 0x9A948A);
}

static void
paint_dots (const BfDrawLook *look, cairo_t *cr)
{
  BfVec2 from = bf_draw_to_mm (look, bf_vec2 (0.0, look->size_px.y));
  BfVec2 to = bf_draw_to_mm (look, bf_vec2 (look->size_px.x, 0.0));
  double grid = look->grid_mm;

  set_quiet (cr, look);
  for (double x = ceil (from.x / grid) * grid; x <= to.x; x += grid)
    for (double y = ceil (from.y / grid) * grid; y <= to.y; y += grid)
      {
        BfVec2 px = bf_draw_to_px (look, bf_vec2 (x, y));
        cairo_rectangle (cr, px.x - 0.5, px.y - 0.5, 1.0, 1.0);
      }
  cairo_fill (cr);
}

static void
line_to (const BfDrawLook *look, cairo_t *cr, BfVec2 mm)
{
  BfVec2 px = bf_draw_to_px (look, mm);
  cairo_line_to (cr, px.x, px.y);
}

/* Beside the middle of an edge, to its left as it runs or to its right, whichever is further out of
 * the way of the words of edges that run on. */
static void
paint_length (const BfDrawLook *look, cairo_t *cr, BfVec2 a, BfVec2 b)
{
  g_autofree char *words = bf_format_number (bf_vec2_distance (a, b), look->units);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (b, a));
  BfVec2 middle = bf_draw_to_px (look, bf_vec2_scale (bf_vec2_add (a, b), 0.5));
  double away = 8.0 + fabs (along.x) * CAP_PX / 2.0;
  /* Outside of an outline that runs counter-clockwise. */
  BfVec2 out = bf_vec2 (along.y, along.x);
  double align = out.x > 0.3 ? 0.0 : out.x < -0.3 ? 1.0 : 0.5;

  set_ink (cr, look);
  bf_text_show (cr, words, CAP_PX, align,
                bf_vec2 (middle.x + out.x * away, middle.y + out.y * away + CAP_PX / 2.0));
}

static void
paint_edges (const BfOutlineDraft *draft, const BfDrawLook *look, cairo_t *cr)
{
  guint n = bf_outline_draft_n_points (draft);

  for (guint i = 0; i < n; i++)
    line_to (look, cr, bf_outline_draft_point (draft, i));
  set_ink (cr, look);
  cairo_set_line_width (cr, 1.8);
  cairo_stroke (cr);
  for (guint i = 0; i < n; i++)
    {
      BfVec2 px = bf_draw_to_px (look, bf_outline_draft_point (draft, i));
      cairo_rectangle (cr, px.x - CORNER_PX, px.y - CORNER_PX, 2.0 * CORNER_PX, 2.0 * CORNER_PX);
    }
  cairo_fill (cr);
  for (guint i = 0; i + 1 < n; i++)
    paint_length (look, cr, bf_outline_draft_point (draft, i),
                  bf_outline_draft_point (draft, i + 1));
}

static void
paint_guide (const BfDrawLook *look, cairo_t *cr, BfVec2 a, BfVec2 b)
{
  const double dashes[] = { 3.0, 4.0 };

  cairo_new_path (cr);
  line_to (look, cr, a);
  line_to (look, cr, b);
  set_quiet (cr, look);
  cairo_set_line_width (cr, 1.0);
  cairo_set_dash (cr, dashes, 2, 0.0);
  cairo_stroke (cr);
  cairo_set_dash (cr, NULL, 0, 0.0);
}

/* A small corner where the next edge is square to the last. */
static void
paint_square (const BfOutlineDraft *draft, const BfDrawLook *look, cairo_t *cr, BfVec2 next)
{
  guint n = bf_outline_draft_n_points (draft);
  if (n < 2)
    return;
  BfVec2 at = bf_outline_draft_point (draft, n - 1);
  BfVec2 back = bf_vec2_unit (bf_vec2_sub (bf_outline_draft_point (draft, n - 2), at));
  BfVec2 on = bf_vec2_unit (bf_vec2_sub (next, at));
  double side = 9.0 / look->scale;

  if (fabs (bf_vec2_dot (back, on)) > 0.01)
    return;
  cairo_new_path (cr);
  line_to (look, cr, bf_vec2_along (at, back, side));
  line_to (look, cr, bf_vec2_along (bf_vec2_along (at, back, side), on, side));
  line_to (look, cr, bf_vec2_along (at, on, side));
  set_quiet (cr, look);
  cairo_set_line_width (cr, 1.2);
  cairo_stroke (cr);
}

static void
paint_typed (const BfDrawLook *look, cairo_t *cr, BfVec2 px)
{
  BfText *text = bf_text_new (look->typed, CAP_PX + 1.0, TRUE);
  double width = bf_text_width (text) + 12.0;

  cairo_rectangle (cr, px.x + 10.0, px.y - TYPED_UP_PX - CAP_PX - 6.0, width, CAP_PX + 13.0);
  bf_set_source_rgb (cr, look->dark ? 0x2B2926 : 0xFFFFFF);
  cairo_fill_preserve (cr);
  set_quiet (cr, look);
  cairo_set_line_width (cr, 1.0);
  cairo_stroke (cr);
  set_ink (cr, look);
  cairo_new_path (cr);
  bf_text_draw (text, cr, px.x + 16.0, px.y - TYPED_UP_PX);
  bf_text_free (text);
}

static void
paint_next (const BfOutlineDraft *draft, const BfDrawLook *look, cairo_t *cr)
{
  guint n = bf_outline_draft_n_points (draft);
  BfVec2 next;
  guint snaps;

  if (!bf_outline_draft_next (draft, &next, &snaps))
    return;
  if ((snaps & BF_SNAP_X) != 0)
    paint_guide (look, cr, bf_outline_draft_aligned_x (draft), next);
  if ((snaps & BF_SNAP_Y) != 0)
    paint_guide (look, cr, bf_outline_draft_aligned_y (draft), next);
  if ((snaps & BF_SNAP_SQUARE) != 0)
    paint_square (draft, look, cr, next);
  BfVec2 px = bf_draw_to_px (look, next);
  bf_set_source_rgb (cr, bf_okabe_ito (look->dark ? BF_OKABE_ITO_SKY_BLUE : BF_OKABE_ITO_BLUE));
  cairo_set_line_width (cr, 1.6);
  cairo_new_path (cr);
  if (n > 0)
    {
      line_to (look, cr, bf_outline_draft_point (draft, n - 1));
      line_to (look, cr, next);
      cairo_stroke (cr);
    }
  cairo_arc (cr, px.x, px.y, (snaps & BF_SNAP_FIRST) != 0 ? 8.0 : 4.0, 0.0, 2.0 * G_PI);
  cairo_stroke (cr);
  if (n > 0 && look->typed[0] == '\0')
    paint_length (look, cr, bf_outline_draft_point (draft, n - 1), next);
  if (look->typed[0] != '\0')
    paint_typed (look, cr, px);
}

void
bf_draw_picture_paint (const BfOutlineDraft *draft, const BfDrawLook *look, cairo_t *cr)
{
  g_return_if_fail (draft != NULL && look != NULL && cr != NULL);

  cairo_save (cr);
  cairo_new_path (cr);
  paint_dots (look, cr);
  paint_edges (draft, look, cr);
  paint_next (draft, look, cr);
  cairo_restore (cr);
}
