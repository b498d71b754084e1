/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/blank-label.h"

#include <glib/gi18n.h>

#include "core/tolerance.h"
#include "core/units.h"
#include "paint/text.h"

/* Shares of the capitals' height. */
#define ASCENT 1.15
#define DESCENT 0.35

#define SQUARE_DEG 90.0
#define HEM_DEG 180.0

BfBlankLabel *
bf_blank_label_new (char *words, double cap_height_mm, gboolean bold, BfVec2 along)
{
  BfBlankLabel *label = g_new0 (BfBlankLabel, 1);
  g_autoptr (BfText) text = bf_text_new (words, cap_height_mm, bold);

  label->words = words;
  label->cap_height_mm = cap_height_mm;
  label->bold = bold;
  label->plate.along = along;
  label->plate.width = bf_text_width (text);
  label->plate.height = cap_height_mm * (ASCENT + DESCENT);
  return label;
}

void
bf_blank_label_free (BfBlankLabel *label)
{
  g_free (label->words);
  g_free (label);
}

/* Where the baseline begins: above the ground's lower left corner, past the descenders. */
static BfVec2
baseline_start (const BfBlankLabel *label)
{
  BfVec2 corners[4];
  BfVec2 up = bf_vec2 (-label->plate.along.y, label->plate.along.x);

  bf_plate_corners (&label->plate, corners);
  return bf_vec2_along (corners[0], up, label->cap_height_mm * DESCENT);
}

/* From the leader's start to the middle of the nearest side of the ground. */
static void
draw_leader (const BfBlankLabel *label, cairo_t *cr)
{
  BfVec2 corners[4], end = label->plate.centre;

  bf_plate_corners (&label->plate, corners);
  for (int i = 0; i < 4; i++)
    {
      BfVec2 middle = bf_vec2_scale (bf_vec2_add (corners[i], corners[(i + 1) % 4]), 0.5);
      if (bf_vec2_distance (middle, label->leader_mm) < bf_vec2_distance (end, label->leader_mm))
        end = middle;
    }
  cairo_move_to (cr, label->leader_mm.x, -label->leader_mm.y);
  cairo_line_to (cr, end.x, -end.y);
  cairo_stroke (cr);
}

void
bf_blank_label_draw (const BfBlankLabel *label, cairo_t *cr)
{
  g_autoptr (BfText) text = bf_text_new (label->words, label->cap_height_mm, label->bold);
  BfVec2 start = baseline_start (label);

  if (label->has_leader)
    draw_leader (label, cr);
  cairo_save (cr);
  cairo_translate (cr, start.x, -start.y);
  cairo_rotate (cr, -atan2 (label->plate.along.y, label->plate.along.x));
  bf_text_draw (text, cr, 0.0, 0.0);
  cairo_restore (cr);
}

char *
bf_blank_bend_words (const BfBendResult *bend)
{
  g_autofree char *angle = bf_format_angle (bf_rad_to_deg (bend->angle_rad));

  if (bend->turn == BF_TURN_UP)
    /* Translators: how far a flange is folded toward the person, "fold up 90°". */
    return g_strdup_printf (_ ("fold up %s"), angle);
  /* Translators: how far a flange is folded away from the person, "fold down 90°". */
  return g_strdup_printf (_ ("fold down %s"), angle);
}

char *
bf_blank_bend_full_words (const BfBendResult *bend)
{
  double angle_deg = bf_rad_to_deg (bend->angle_rad);
  g_autofree char *fold = bf_blank_bend_words (bend);
  g_autofree char *opening = bf_format_angle (HEM_DEG - angle_deg);

  if (fabs (angle_deg - SQUARE_DEG) < BF_TOLERANCE_SIZE_MM)
    return g_steal_pointer (&fold);
  if (fabs (angle_deg - HEM_DEG) < BF_TOLERANCE_SIZE_MM)
    /* Translators: "fold up 180° (hem)". */
    return g_strdup_printf (_ ("%s (hem)"), fold);
  if (angle_deg > SQUARE_DEG)
    /* Translators: "fold up 105° (opening 75°, leans in)". */
    return g_strdup_printf (_ ("%s (opening %s, leans in)"), fold, opening);
  /* Translators: "fold up 75° (opening 105°, leans out)". */
  return g_strdup_printf (_ ("%s (opening %s, leans out)"), fold, opening);
}
