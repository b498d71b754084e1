/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/blank-view.h"

#include "core/tolerance.h"
#include "make/drill-list.h"
#include "paint/bend-marks.h"
#include "paint/blank-field.h"
#include "paint/blank-labels.h"
#include "paint/palette.h"
#include "paint/ring-path.h"

#define CAP_HEIGHT_MM 2.6
#define HIGHLIGHT_ALPHA 0.35

static const guint32 metal_rgb[2] = { 0xF4F2EE, 0x3A3D40 }; /* light, dark */

void
bf_blank_style_init (BfBlankStyle *style, const BfFold *fold)
{
  *style = (BfBlankStyle){ .layers = BF_BLANK_LINES | BF_BLANK_WORDS,
                           .unit = 1.0,
                           .cap_height_mm = CAP_HEIGHT_MM,
                           .highlight_face = -1,
                           .units = fold->part->units };
}

static void
add_blank_path (const BfFold *fold, cairo_t *cr)
{
  for (guint i = 0; i < fold->blank.rings->len; i++)
    bf_ring_path (bf_blank_ring (&fold->blank, i), cr);
}

static void
draw_metal (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  add_blank_path (fold, cr);
  bf_set_source_rgb (cr, metal_rgb[style->dark ? 1 : 0]);
  cairo_fill (cr);
}

/* A face is lit where it is metal: its outline knows nothing of reliefs and openings. */
static void
draw_highlight (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  guint32 rgb = bf_okabe_ito (BF_OKABE_ITO_ORANGE);

  if (style->highlight_face < 0 || (guint)style->highlight_face >= fold->faces->len)
    return;
  cairo_save (cr);
  add_blank_path (fold, cr);
  cairo_clip (cr);
  bf_ring_path (bf_fold_face (fold, (guint)style->highlight_face)->outline, cr);
  cairo_set_source_rgba (cr, (rgb >> 16 & 0xFF) / 255.0, (rgb >> 8 & 0xFF) / 255.0,
                         (rgb & 0xFF) / 255.0, HIGHLIGHT_ALPHA);
  cairo_fill (cr);
  cairo_restore (cr);
}

static void
draw_cuts (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  for (guint i = 0; i < fold->blank.rings->len; i++)
    {
      bf_pens_apply (style->pens, bf_blank_ring_purpose (fold, i), cr, style->unit, style->dark);
      bf_ring_path (bf_blank_ring (&fold->blank, i), cr);
      cairo_stroke (cr);
    }
}

/* A line across a slot where it ends on one of the faces. */
static void
draw_slot_ends (const BfBendSlot *slot, double length_mm, double wide, cairo_t *cr)
{
  BfVec2 along = bf_vec2 (cos (slot->angle_rad), sin (slot->angle_rad));
  BfVec2 across = bf_vec2 (-along.y, along.x);

  for (int sign = -1; sign <= 1; sign += 2)
    {
      BfVec2 end = bf_vec2_along (slot->at, along, sign * length_mm / 2.0);
      BfVec2 from = bf_vec2_along (end, across, -wide * slot->width_mm);
      BfVec2 to = bf_vec2_along (end, across, wide * slot->width_mm);

      cairo_move_to (cr, from.x, from.y);
      cairo_line_to (cr, to.x, to.y);
    }
}

/* How far a disc's slot reaches on the face that it is cut from, past the slot as it counts, and,
 * by short lines, on the other. */
static void
draw_slot_reach (const BfBendSlot *slot, cairo_t *cr)
{
  draw_slot_ends (slot, slot->near_mm, 1.0, cr);
  if (slot->near_mm - slot->far_mm > BF_TOLERANCE_SIZE_MM)
    draw_slot_ends (slot, slot->far_mm, 0.5, cr);
}

static void
draw_slot_reaches (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  bf_pens_apply (style->pens, BF_PURPOSE_DRILL, cr, style->unit, style->dark);
  for (guint i = 0; i < fold->bends->len; i++)
    for (guint k = 0; k < bf_fold_bend (fold, i)->slots->len; k++)
      draw_slot_reach (bf_bend_slot (bf_fold_bend (fold, i), k), cr);
  cairo_stroke (cr);
}

static void
draw_bend (const BfVec2 line[2], BfTurn turn, const BfBlankStyle *style, cairo_t *cr)
{
  BfPurpose purpose = turn == BF_TURN_UP ? BF_PURPOSE_BEND_UP : BF_PURPOSE_BEND_DOWN;

  bf_pens_apply (style->pens, purpose, cr, style->unit, style->dark);
  cairo_move_to (cr, line[0].x, line[0].y);
  cairo_line_to (cr, line[1].x, line[1].y);
  cairo_stroke (cr);
}

static void
draw_bends (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  for (guint i = 0; i < fold->bends->len; i++)
    draw_bend (bf_fold_bend (fold, i)->line, bf_fold_bend (fold, i)->turn, style, cr);
  for (guint i = 0; i < bf_fold_n_creases (fold); i++)
    draw_bend (bf_fold_crease (fold, i)->line, bf_fold_crease (fold, i)->turn, style, cr);
}

/* Scores with the bends, and the bars' edges where they are asked for. */
static void
draw_bend_lines (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof (BfBendMark));

  for (guint i = 0; i < fold->bends->len; i++)
    bf_bend_marks (fold, bf_fold_bend (fold, i), style->unit, lines);
  for (guint i = 0; i < lines->len; i++)
    {
      const BfBendMark *line = &g_array_index (lines, BfBendMark, i);

      if (!(style->layers & (line->purpose == BF_PURPOSE_BAR ? BF_BLANK_BARS : BF_BLANK_BENDS)))
        continue;
      bf_pens_apply (style->pens, line->purpose, cr, style->unit, style->dark);
      if (line->tick)
        cairo_set_dash (cr, NULL, 0, 0.0);
      cairo_move_to (cr, line->a.x, line->a.y);
      cairo_line_to (cr, line->b.x, line->b.y);
      cairo_stroke (cr);
    }
}

static void
draw_cross (const BfBlankStyle *style, cairo_t *cr, BfVec2 at, double radius_mm)
{
  double arm = bf_blank_cross_arm (radius_mm, style->unit);

  cairo_move_to (cr, at.x - arm, at.y);
  cairo_line_to (cr, at.x + arm, at.y);
  cairo_move_to (cr, at.x, at.y - arm);
  cairo_line_to (cr, at.x, at.y + arm);
  cairo_stroke (cr);
}

static void
draw_drills (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  g_autoptr (GArray) centres = bf_centre_list (fold);

  bf_pens_apply (style->pens, BF_PURPOSE_DRILL, cr, style->unit, style->dark);
  for (guint i = 0; i < centres->len; i++)
    {
      const BfDrilled *hole = bf_drilled (centres, i);

      /* Of a relief only a part is seen in the outline. */
      if (hole->opening < 0)
        {
          cairo_new_sub_path (cr);
          cairo_arc (cr, hole->at.x, hole->at.y, hole->diameter_mm / 2.0, 0.0, 2.0 * G_PI);
        }
      draw_cross (style, cr, hole->at, hole->diameter_mm / 2.0);
    }
}

static void
draw_words (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  g_autoptr (GPtrArray) labels = bf_blank_labels (fold, style);

  bf_pens_apply (style->pens, BF_PURPOSE_NOTE, cr, style->unit, style->dark);
  for (guint i = 0; i < labels->len; i++)
    bf_blank_label_draw (g_ptr_array_index (labels, i), cr);
}

/* The layers that are drawn in the blank's own axes, y up. */
static void
draw_lines (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  cairo_save (cr);
  cairo_scale (cr, 1.0, -1.0);
  cairo_new_path (cr);
  if (style->layers & BF_BLANK_METAL)
    draw_metal (fold, style, cr);
  draw_highlight (fold, style, cr);
  if (style->layers & BF_BLANK_DRILLS)
    draw_drills (fold, style, cr);
  draw_bend_lines (fold, style, cr);
  if (style->layers & BF_BLANK_BENDS)
    draw_bends (fold, style, cr);
  if (style->layers & BF_BLANK_CUTS)
    {
      draw_cuts (fold, style, cr);
      draw_slot_reaches (fold, style, cr);
    }
  cairo_restore (cr);
}

void
bf_blank_view_draw (const BfFold *fold, const BfBlankStyle *style, cairo_t *cr)
{
  g_return_if_fail (fold != NULL && style != NULL && cr != NULL);

  draw_lines (fold, style, cr);
  if (style->layers & BF_BLANK_WORDS)
    draw_words (fold, style, cr);
}
