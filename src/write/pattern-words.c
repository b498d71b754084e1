/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/pattern-words.h"

#include <string.h>

#include "paint/blank-labels.h"

#define CLEARANCE_MM 0.9
#define CAP_HEIGHT_MM 2.6
#define LEAST_CAP_HEIGHT_MM 0.5
#define LINE_PITCH 1.15 /* of the ground that one line takes */
#define GRID 24         /* places tried along each side of the blank's box */
#define MOST_WRAPS 6

/* The lines that belong together, as one block of ground. */
typedef struct
{
  GPtrArray *labels; /* BfBlankLabel */
  BfPlate plate;
} Block;

static void
add_line (Block *block, const char *words, double cap_height_mm)
{
  BfBlankLabel *label =
      bf_blank_label_new (g_strdup (words), cap_height_mm, FALSE, bf_vec2 (1.0, 0.0));

  g_ptr_array_add (block->labels, label);
  block->plate.width = MAX (block->plate.width, label->plate.width);
  block->plate.height += label->plate.height * LINE_PITCH;
}

/* Adds the sentence broken at spaces into lines of about that many characters. */
static void
add_wrapped (Block *block, const char *sentence, glong line_length, double cap_height_mm)
{
  g_auto (GStrv) words = g_strsplit (sentence, " ", -1);
  g_autoptr (GString) line = g_string_new (NULL);

  for (guint i = 0; words[i] != NULL; i++)
    {
      glong grown = g_utf8_strlen (line->str, -1) + 1 + g_utf8_strlen (words[i], -1);

      if (line->len > 0 && grown > line_length)
        {
          add_line (block, line->str, cap_height_mm);
          g_string_truncate (line, 0);
        }
      if (line->len > 0)
        g_string_append_c (line, ' ');
      g_string_append (line, words[i]);
    }
  if (line->len > 0)
    add_line (block, line->str, cap_height_mm);
}

/* wraps: into how many lines the longest sentence is broken. */
static Block
new_block (const BfPattern *pattern, guint wraps, double cap_height_mm)
{
  Block block = { g_ptr_array_new_with_free_func ((GDestroyNotify)bf_blank_label_free),
                  { .along = { 1.0, 0.0 } } };
  const char *lines[] = { pattern->name, pattern->setup, pattern->origin, pattern->kerf,
                          pattern->warning };
  glong longest = 1, line_length;

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    if (lines[i] != NULL)
      longest = MAX (longest, g_utf8_strlen (lines[i], -1));
  line_length = longest / (glong)wraps + (wraps > 1 ? 4 : 0);
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    if (lines[i] != NULL)
      add_wrapped (&block, lines[i], line_length, cap_height_mm);
  return block;
}

static BfVec2
box_middle (const BfBox *box)
{
  return bf_vec2_scale (bf_vec2_add (box->min, box->max), 0.5);
}

/* The free place in the blank's box that is nearest to the middle of the base. */
static gboolean
find_place (const BfPattern *pattern, const BfLabelField *field, BfPlate *plate)
{
  const BfBox *box = &pattern->box;
  BfVec2 size = bf_vec2_sub (box->max, box->min), best = { 0.0, 0.0 };
  BfBox base = bf_box_empty ();
  double best_distance = HUGE_VAL;

  bf_ring_extend_box (bf_fold_face (pattern->fold, 0)->outline, &base);
  for (int i = 0; i < (GRID + 1) * (GRID + 1); i++)
    {
      double u = (double)(i % (GRID + 1)) / GRID, v = (double)(i / (GRID + 1)) / GRID;
      BfVec2 centre = bf_vec2_add (box->min, bf_vec2 (u * size.x, v * size.y));
      double distance = bf_vec2_distance (centre, box_middle (&base));

      plate->centre = centre;
      if (distance < best_distance && bf_label_field_is_free (field, plate))
        {
          best = centre;
          best_distance = distance;
        }
    }
  plate->centre = best;
  return best_distance < HUGE_VAL;
}

/* Moves each line to its place in the block, the first one on top. */
static void
stack_lines (Block *block)
{
  double left = block->plate.centre.x - block->plate.width / 2.0;
  double top = block->plate.centre.y + block->plate.height / 2.0;

  for (guint i = 0; i < block->labels->len; i++)
    {
      BfBlankLabel *label = g_ptr_array_index (block->labels, i);
      double pitch = label->plate.height * LINE_PITCH;

      label->plate.centre = bf_vec2 (left + label->plate.width / 2.0, top - pitch / 2.0);
      top -= pitch;
    }
}

/* A block that has no free room, made small enough for the box and put in its middle. */
static Block
squeeze (const BfPattern *pattern)
{
  const BfBox *box = &pattern->box;
  double width = box->max.x - box->min.x, height = box->max.y - box->min.y;
  double cap_height_mm = CAP_HEIGHT_MM;
  Block block = new_block (pattern, 1, cap_height_mm);
  double share = MIN (width / block.plate.width, height / block.plate.height) * 0.9;

  g_ptr_array_unref (block.labels);
  cap_height_mm = MAX (MIN (share, 1.0) * cap_height_mm, LEAST_CAP_HEIGHT_MM);
  block = new_block (pattern, 1, cap_height_mm);
  block.plate.centre = box_middle (box);
  return block;
}

/* In one line or in several, and smaller where there is no room at all. */
static Block
place_block (const BfPattern *pattern, const BfLabelField *field)
{
  static const double shares[] = { 1.0, 0.8, 0.6, 0.45 };

  for (guint i = 0; i < G_N_ELEMENTS (shares); i++)
    for (guint wraps = 1; wraps <= MOST_WRAPS; wraps++)
      {
        Block block = new_block (pattern, wraps, CAP_HEIGHT_MM * shares[i]);

        if (find_place (pattern, field, &block.plate))
          return block;
        g_ptr_array_unref (block.labels);
      }
  return squeeze (pattern);
}

GPtrArray *
bf_pattern_words (const BfPattern *pattern)
{
  g_autoptr (BfLabelField) field = NULL;
  BfBlankStyle style;
  GPtrArray *labels;
  Block block;

  g_return_val_if_fail (pattern != NULL, NULL);

  bf_blank_style_init (&style, pattern->fold);
  style.layers = BF_BLANK_BEND_NOTES | BF_BLANK_DRILL_NOTES;
  style.cap_height_mm = CAP_HEIGHT_MM;
  style.view = &pattern->box;
  labels = bf_blank_labels (pattern->fold, &style);

  field = bf_blank_label_field (pattern->fold, style.view, CLEARANCE_MM);
  for (guint i = 0; i < labels->len; i++)
    bf_label_field_add_plate (field, &((BfBlankLabel *)g_ptr_array_index (labels, i))->plate);
  block = place_block (pattern, field);
  stack_lines (&block);
  g_ptr_array_extend_and_steal (labels, block.labels);
  return labels;
}
