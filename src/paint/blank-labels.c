/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/blank-labels.h"

#include <glib/gi18n.h>

#include "core/drills.h"
#include "core/tolerance.h"
#include "core/units.h"
#include "make/bend-notes.h"
#include "paint/blank-field.h"
#include "paint/hole-notes.h"

#define NAME_ENLARGED 1.5

/* Millimetres of paper. */
#define CLEARANCE_MM 1.2
#define BESIDE_LINE_MM 1.5
#define PAST_END_MM 3.0
#define FAR_STEP_MM 4.0
#define FAR_STEPS 8

#define GRID 12 /* places tried along each side of a face */

typedef struct
{
  const BfFold *fold;
  const BfBlankStyle *style;
  BfLabelField *field;
  GPtrArray *labels;
} Placer;

BfVec2
bf_blank_upright (BfVec2 along, double turn_rad)
{
  double x = cos (turn_rad) * along.x - sin (turn_rad) * along.y;
  double y = sin (turn_rad) * along.x + cos (turn_rad) * along.y;
  gboolean is_reversed = x < -BF_TOLERANCE_SIZE_MM || (x < BF_TOLERANCE_SIZE_MM && y < 0.0);

  return is_reversed ? bf_vec2_scale (along, -1.0) : along;
}

/* words: (transfer full). */
static BfBlankLabel *
new_label (const Placer *placer, char *words, BfVec2 along, gboolean bold)
{
  const BfBlankStyle *style = placer->style;
  double cap_height_mm = style->cap_height_mm * style->unit * (bold ? NAME_ENLARGED : 1.0);

  return bf_blank_label_new (words, cap_height_mm, bold, bf_blank_upright (along, style->turn_rad));
}

static gboolean
fits_at (const Placer *placer, BfBlankLabel *label, BfVec2 centre)
{
  label->plate.centre = centre;
  return bf_label_field_is_free (placer->field, &label->plate);
}

/* Keeps the label where it is, or drops it where it found no place. label: (transfer full). */
static void
settle (Placer *placer, BfBlankLabel *label, gboolean placed)
{
  if (!placed)
    {
      bf_blank_label_free (label);
      return;
    }
  bf_label_field_add_plate (placer->field, &label->plate);
  g_ptr_array_add (placer->labels, label);
}

/* Tries places along the line from its middle to its ends, to one side of it. side: a unit vector
 * and more, by what lies beside the line. */
static gboolean
find_beside (const Placer *placer, BfBlankLabel *label, const BfVec2 line[2], BfVec2 side)
{
  static const double shares[] = { 0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9 };
  BfVec2 step = bf_vec2_sub (line[1], line[0]);
  double offset = label->plate.height / 2.0 + BESIDE_LINE_MM * placer->style->unit +
                  bf_vec2_length (side) - 1.0;

  side = bf_vec2_unit (side);
  for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
    {
      BfVec2 on_line = bf_vec2_along (line[0], step, shares[i]);
      if (fits_at (placer, label, bf_vec2_along (on_line, side, offset)))
        return TRUE;
    }
  return FALSE;
}

static gboolean
find_past_ends (const Placer *placer, BfBlankLabel *label, const BfVec2 line[2])
{
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (line[1], line[0]));
  double offset = label->plate.width / 2.0 + PAST_END_MM * placer->style->unit;

  return fits_at (placer, label, bf_vec2_along (line[1], along, offset)) ||
         fits_at (placer, label, bf_vec2_along (line[0], along, -offset));
}

/* How it is folded, and how it is scored for that. */
static char *
full_words (const Placer *placer, const BfBendResult *bend)
{
  g_autofree char *fold = bf_blank_bend_full_words (bend);
  g_autofree char *score = bf_score_words (bend, placer->style->units);

  if (score == NULL)
    return g_steal_pointer (&fold);
  /* Translators: "fold up 90°, score this face 2.3 mm wide, leave 0.6 mm" */
  return g_strdup_printf (_ ("%s, %s"), fold, score);
}

/* in_full: where there is room, with what the angle opens to. */
static void
place_bend_note (Placer *placer, const BfBendResult *bend, gboolean in_full)
{
  BfVec2 line[2] = { bend->line[0], bend->line[1] };
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (line[1], line[0]));
  BfVec2 outward = bf_vec2_sub (bend->zone[3], bend->zone[0]);
  BfVec2 normal = bf_vec2 (-along.y, along.x);
  double beside = 1.0 + (isnan (bend->groove_mm) ? 0.0 : bend->groove_mm / 2.0);
  BfVec2 to_flange = bf_vec2_scale (normal, bf_vec2_dot (normal, outward) < 0.0 ? -beside : beside);
  BfBlankLabel *label;

  if (placer->style->view != NULL && !bf_box_clip_line (placer->style->view, &line[0], &line[1]))
    return;
  label = new_label (placer, in_full ? full_words (placer, bend) : bf_blank_bend_words (bend),
                     along, FALSE);
  if (find_beside (placer, label, line, bf_vec2_scale (to_flange, -1.0)) ||
      find_beside (placer, label, line, to_flange))
    {
      settle (placer, label, TRUE);
      return;
    }
  bf_blank_label_free (label);
  label = new_label (placer, bf_blank_bend_words (bend), along, FALSE);
  settle (placer, label,
          find_beside (placer, label, line, bf_vec2_scale (to_flange, -1.0)) ||
              find_beside (placer, label, line, to_flange) || find_past_ends (placer, label, line));
}

/* Places round a point, those away from the blank's middle first: a relief's free side is there,
 * and words stay off the metal. reach_mm: from the point to the words. */
static gboolean
find_round (const Placer *placer, BfBlankLabel *label, BfVec2 at, double reach_mm)
{
  static const double sides[][2] = { { 1, 1 },  { 1, 0 },  { 0, 1 },  { 1, -1 },
                                     { -1, 1 }, { -1, 0 }, { 0, -1 }, { -1, -1 } };
  const BfBox *box = &placer->fold->blank.box;
  BfVec2 x = label->plate.along, y = bf_vec2 (-x.y, x.x);
  BfVec2 from_middle = bf_vec2_sub (at, bf_vec2_scale (bf_vec2_add (box->min, box->max), 0.5));
  double right = bf_vec2_dot (from_middle, x) < 0.0 ? -1.0 : 1.0;
  double up = bf_vec2_dot (from_middle, y) < 0.0 ? -1.0 : 1.0;

  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    {
      double u = right * sides[i][0], v = up * sides[i][1];
      double r = fabs (u) + fabs (v) > 1.0 ? reach_mm * G_SQRT2 / 2.0 : reach_mm;
      BfVec2 centre = bf_vec2_along (at, x, u * (r + label->plate.width / 2.0));
      if (fits_at (placer, label, bf_vec2_along (centre, y, v * (r + label->plate.height / 2.0))))
        return TRUE;
    }
  return FALSE;
}

/* Farther and farther off, with a leader. */
static gboolean
find_far (const Placer *placer, BfBlankLabel *label, BfVec2 at, double reach_mm)
{
  label->has_leader = TRUE;
  label->leader_mm = at;
  for (int i = 1; i <= FAR_STEPS; i++)
    if (find_round (placer, label, at, reach_mm + i * FAR_STEP_MM * placer->style->unit))
      return TRUE;
  return FALSE;
}

/* Level as the page is read, else upright beside the circle, else level and farther off.
 * words: (transfer full). */
static void
place_drill_note (Placer *placer, char *words, BfVec2 at, double radius_mm)
{
  double turn = placer->style->turn_rad, unit = placer->style->unit;
  BfVec2 level = bf_vec2 (cos (turn), -sin (turn));
  double reach = MAX (bf_blank_cross_arm (radius_mm, unit), radius_mm) + BESIDE_LINE_MM * unit;
  BfBlankLabel *label = new_label (placer, words, level, FALSE);
  gboolean placed = find_round (placer, label, at, reach);

  if (!placed)
    {
      label->plate.along = bf_vec2 (-level.y, level.x);
      placed = find_round (placer, label, at, reach);
    }
  if (!placed)
    {
      label->plate.along = level;
      placed = find_far (placer, label, at, reach);
    }
  settle (placer, label, placed);
}

/* Returns: (transfer full). */
static char *
hole_words (const Placer *placer, const BfDrilled *hole)
{
  g_autofree char *size = hole->drill != NULL
                              ? bf_drill_words (hole->drill)
                              : bf_format_length (hole->diameter_mm, placer->style->units);

  if (hole->by_drill)
    /* Translators: a drill of that size, "drill 6.5 mm". */
    return g_strdup_printf (_ ("drill %s"), size);
  /* Translators: a round hole that is not drilled, and its diameter. */
  return g_strdup_printf (_ ("hole %s"), size);
}

/* What one hole's note says for more than itself. Returns: (transfer full). */
static char *
note_words (const Placer *placer, const BfDrilled *hole, BfHoleNote note)
{
  g_autofree char *words = hole_words (placer, hole);

  if (note == BF_HOLE_ALL)
    /* Translators: what all are, "drill 6 mm". */
    return g_strdup_printf (_ ("all holes: %s"), words);
  if (note == BF_HOLE_OTHERS)
    /* Translators: what those are that have no note of their own, "drill 6 mm". */
    return g_strdup_printf (_ ("all other holes: %s"), words);
  return g_steal_pointer (&words);
}

static void
place_hole_notes (Placer *placer)
{
  g_autoptr (GArray) centres = bf_centre_list (placer->fold);
  g_autofree BfHoleNote *notes = bf_hole_notes (centres, placer->style->view);

  for (guint i = 0; i < centres->len; i++)
    {
      const BfDrilled *hole = bf_drilled (centres, i);

      if (notes[i] != BF_HOLE_UNTOLD)
        place_drill_note (placer, note_words (placer, hole, notes[i]), hole->at,
                          hole->diameter_mm / 2.0);
    }
}

/* On the face, and not where an opening has taken it away. */
static gboolean
lies_on_face (const Placer *placer, const BfBlankLabel *label, const BfFace *face)
{
  const BfBlank *blank = &placer->fold->blank;
  BfVec2 corners[4];

  for (guint i = blank->n_outer; i < blank->rings->len; i++)
    if (bf_ring_contains (bf_blank_ring (blank, i), label->plate.centre))
      return FALSE;
  bf_plate_corners (&label->plate, corners);
  for (int i = 0; i < 4; i++)
    if (!bf_ring_contains (face->outline, corners[i]))
      return FALSE;
  return TRUE;
}

/* The part of a face's box that is seen. FALSE where none is. */
static gboolean
seen_box (const Placer *placer, const BfFace *face, BfBox *box)
{
  const BfBox *view = placer->style->view;

  *box = bf_box_empty ();
  bf_ring_extend_box (face->outline, box);
  if (view == NULL)
    return TRUE;
  box->min = bf_vec2 (MAX (box->min.x, view->min.x), MAX (box->min.y, view->min.y));
  box->max = bf_vec2 (MIN (box->max.x, view->max.x), MIN (box->max.y, view->max.y));
  return box->min.x < box->max.x && box->min.y < box->max.y;
}

/* The free place on the face that is nearest to the middle of what is seen of it. */
static gboolean
find_on_face (const Placer *placer, BfBlankLabel *label, const BfFace *face)
{
  BfVec2 middle, size, best = { 0.0, 0.0 };
  double best_distance = HUGE_VAL;
  BfBox box;

  if (!seen_box (placer, face, &box))
    return FALSE;
  middle = bf_vec2_scale (bf_vec2_add (box.min, box.max), 0.5);
  size = bf_vec2_sub (box.max, box.min);
  for (int i = 0; i <= GRID * GRID + 2 * GRID; i++)
    {
      double u = (double)(i % (GRID + 1)) / GRID - 0.5, v = (double)(i / (GRID + 1)) / GRID - 0.5;
      double distance = hypot (u * size.x, v * size.y);
      if (distance >= best_distance)
        continue;
      if (fits_at (placer, label, bf_vec2_add (middle, bf_vec2 (u * size.x, v * size.y))) &&
          lies_on_face (placer, label, face))
        {
          best = label->plate.centre;
          best_distance = distance;
        }
    }
  label->plate.centre = best;
  return best_distance < HUGE_VAL;
}

static char *
face_words (const Placer *placer, const BfFace *face)
{
  const BfFlange *flange = bf_part_find_flange (placer->fold->part, face->id);
  g_autofree char *length = NULL;

  if (flange == NULL)
    return g_strdup (face->id);
  length = bf_format_number (flange->length_mm, placer->style->units);
  /* Translators: a flange's name and its length, "front, 40". */
  return g_strdup_printf (_ ("%s, %s"), face->id, length);
}

/* Along its bend where there is room, else square to it. */
static void
place_flange_name (Placer *placer, const BfFace *face)
{
  const BfBendResult *bend = bf_fold_bend (placer->fold, (guint)face->bend);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (bend->line[1], bend->line[0]));
  BfBlankLabel *label = new_label (placer, face_words (placer, face), along, FALSE);
  gboolean placed = find_on_face (placer, label, face);

  if (!placed)
    {
      label->plate.along = bf_blank_upright (bf_vec2 (-along.y, along.x), placer->style->turn_rad);
      placed = find_on_face (placer, label, face);
    }
  settle (placer, label, placed);
}

static void
place_part_name (Placer *placer, const BfFace *base)
{
  double turn = placer->style->turn_rad;
  const char *name = placer->fold->part->name;
  BfBlankLabel *label;

  if (name == NULL || *name == '\0')
    return;
  label = new_label (placer, g_strdup (name), bf_vec2 (cos (turn), -sin (turn)), TRUE);
  settle (placer, label, find_on_face (placer, label, base));
}

static void
place_names (Placer *placer)
{
  for (guint i = 0; i < placer->fold->faces->len; i++)
    {
      const BfFace *face = bf_fold_face (placer->fold, i);
      if (face->bend >= 0)
        place_flange_name (placer, face);
      else
        place_part_name (placer, face);
    }
}

static void
keep_off_boxes (BfLabelField *field, const GArray *boxes)
{
  for (guint i = 0; boxes != NULL && i < boxes->len; i++)
    {
      const BfBox *box = &g_array_index (boxes, BfBox, i);
      BfVec2 size = bf_vec2_sub (box->max, box->min);
      BfPlate plate = {
        bf_vec2_scale (bf_vec2_add (box->min, box->max), 0.5), { 1.0, 0.0 }, size.x, size.y
      };
      bf_label_field_add_plate (field, &plate);
    }
}

GPtrArray *
bf_blank_labels (const BfFold *fold, const BfBlankStyle *style)
{
  g_autoptr (BfLabelField) field =
      bf_blank_label_field_scaled (fold, style->view, CLEARANCE_MM, style->unit);
  Placer placer = { fold, style, field,
                    g_ptr_array_new_with_free_func ((GDestroyNotify)bf_blank_label_free) };

  keep_off_boxes (field, style->keep_off);
  if (style->layers & BF_BLANK_BEND_NOTES)
    for (guint i = 0; i < fold->bends->len; i++)
      place_bend_note (&placer, bf_fold_bend (fold, i), TRUE);
  for (guint i = 0; style->layers & BF_BLANK_BEND_NOTES && i < bf_fold_n_creases (fold); i++)
    {
      BfBendResult crease = bf_fold_crease_as_bend (fold, i);

      place_bend_note (&placer, &crease, FALSE);
    }
  if (style->layers & BF_BLANK_DRILL_NOTES)
    place_hole_notes (&placer);
  if (style->layers & BF_BLANK_NAMES)
    place_names (&placer);
  return placer.labels;
}
