/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/bend-marks.h"

#include "fold/bar-line.h"

/* Millimetres of paper. */
#define APART_MM 0.7
#define STUB_MM 8.0
#define TICK_MM 4.0

#define STUB_SHARE 0.3 /* of the line, at most */

static void
add (GArray *lines, BfPurpose purpose, BfVec2 a, BfVec2 b)
{
  BfBendMark line = { purpose, FALSE, a, b };

  g_array_append_val (lines, line);
}

static void
add_score (const BfBendResult *bend, GArray *lines)
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0]));
  BfVec2 across = bf_vec2 (-along.y, along.x);

  for (int side = -1; side <= 1; side += 2)
    add (lines, BF_PURPOSE_SCORE,
         bf_vec2_along (bend->line[0], across, side * bend->groove_mm / 2.0),
         bf_vec2_along (bend->line[1], across, side * bend->groove_mm / 2.0));
}

static void
add_bar (const BfBarLine *bar, double unit, GArray *lines)
{
  BfVec2 run = bf_vec2_sub (bar->line[1], bar->line[0]), along = bf_vec2_unit (run);
  double stub = MIN (STUB_MM * unit, STUB_SHARE * bf_vec2_length (run));
  gboolean whole = bar->from_bend_line_mm >= APART_MM * unit;

  if (whole)
    add (lines, BF_PURPOSE_BAR, bar->line[0], bar->line[1]);
  for (int i = 0; i < 2; i++)
    {
      BfVec2 end = bar->line[i];

      if (!whole)
        add (lines, BF_PURPOSE_BAR, end, bf_vec2_along (end, along, i == 0 ? stub : -stub));
      add (lines, BF_PURPOSE_BAR, end, bf_vec2_along (end, bar->clamped, TICK_MM * unit));
      g_array_index (lines, BfBendMark, lines->len - 1).tick = TRUE;
    }
}

void
bf_bend_marks (const BfFold *fold, const BfBendResult *bend, double unit, GArray *lines)
{
  BfBarLine bar;

  if (!isnan (bend->score_left_mm))
    add_score (bend, lines);
  if (bf_bend_bar_line (fold, bend, &bar))
    add_bar (&bar, unit, lines);
}
