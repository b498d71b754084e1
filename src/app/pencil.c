/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/pencil.h"

#define TICK_PX 4.0

const BfFormedLook bf_pencil_look = { -62.0 * G_PI / 180.0, 32.0 * G_PI / 180.0 };

BfFormedStyle
bf_pencil_style (gboolean dark)
{
  BfFormedStyle style = bf_formed_style (dark);

  style.metal = dark ? 0x4a4743 : 0xfaf8f4;
  style.line = dark ? 0xd8d4cc : 0x4a4742;
  style.dark = 0.86;
  style.other_side = 0.97;
  style.rim = 0.97;
  style.line_width = BF_PENCIL_LINE_PX;
  return style;
}

static void
draw_line (cairo_t *cr, BfVec2 a, BfVec2 b)
{
  cairo_move_to (cr, a.x, a.y);
  cairo_line_to (cr, b.x, b.y);
  cairo_stroke (cr);
}

/* A slanting tick, as on a builder's drawing. */
static void
draw_tick (cairo_t *cr, BfVec2 at, BfVec2 along, BfVec2 out)
{
  BfVec2 slant = bf_vec2_unit (bf_vec2_add (along, out));
  draw_line (cr, bf_vec2_along (at, slant, -TICK_PX), bf_vec2_along (at, slant, TICK_PX));
}

void
bf_pencil_draw_size (cairo_t *cr, const BfPencilSize *size)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (size->to, size->from));
  BfVec2 a = bf_vec2_along (size->from, size->out, size->off_px);
  BfVec2 b = bf_vec2_along (size->to, size->out, size->off_px);

  cairo_set_line_width (cr, 0.8);
  draw_line (cr, bf_vec2_along (size->from, size->out, 4.0), bf_vec2_along (a, size->out, 4.0));
  draw_line (cr, bf_vec2_along (size->to, size->out, 4.0), bf_vec2_along (b, size->out, 4.0));
  draw_line (cr, a, b);
  cairo_set_line_width (cr, 1.4);
  draw_tick (cr, a, along, size->out);
  draw_tick (cr, b, along, size->out);
}

BfVec2
bf_pencil_size_middle (const BfPencilSize *size)
{
  BfVec2 middle = bf_vec2_scale (bf_vec2_add (size->from, size->to), 0.5);
  return bf_vec2_along (middle, size->out, size->off_px);
}
