/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/check-bars.h"

#include "core/units.h"
#include "paint/palette.h"
#include "paint/text.h"

#define BAR_MM 100.0
#define BAR_IN 4.0
#define PITCH_MM 5.0

/* One line of the true length, apart from its ticks, so that a rule laid along it is not misled. */
static void
draw_bar (cairo_t *cr, double length_mm, guint n_parts, double y)
{
  bf_pen_apply (bf_pen (BF_PURPOSE_NOTE), cr, 1.0, FALSE);
  cairo_move_to (cr, 0.0, y);
  cairo_line_to (cr, length_mm, y);
  cairo_stroke (cr);
  for (guint i = 0; i <= n_parts; i++)
    {
      double tick = i == 0 || i == n_parts ? BF_CHECK_BAR_TICK_MM : BF_CHECK_BAR_TICK_MM / 2.0;
      cairo_move_to (cr, length_mm * i / n_parts, y - tick);
      cairo_line_to (cr, length_mm * i / n_parts, y + tick);
    }
  cairo_stroke (cr);
}

void
bf_check_bar_draw (cairo_t *cr, double y, double cap, double gap_mm)
{
  draw_bar (cr, BAR_MM, 10, y);
  bf_text_show (cr, "100 mm", cap, 0.0, bf_vec2 (BAR_MM + gap_mm, y + cap / 2.0));
}

void
bf_check_bars_draw (cairo_t *cr, double y, double cap)
{
  double four_inches = BAR_IN * BF_MM_PER_INCH;

  bf_check_bar_draw (cr, y, cap, four_inches - BAR_MM + 2.0);
  draw_bar (cr, four_inches, 4, y + PITCH_MM);
  bf_text_show (cr, "4 in", cap, 0.0, bf_vec2 (four_inches + 2.0, y + PITCH_MM + cap / 2.0));
}
