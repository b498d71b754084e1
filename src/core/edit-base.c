/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/edit.h"
#include "core/tolerance.h"

double
bf_part_edge_length_mm (const BfPart *part, guint edge)
{
  g_return_val_if_fail (part != NULL && bf_part_n_points (part) > 0, NAN);
  return bf_vec2_distance (bf_part_point (part, edge), bf_part_point (part, edge + 1));
}

/* What lies on one side of a line square to a direction moves along that direction. */
typedef struct
{
  BfVec2 at, along;
  double by_mm;
  gboolean moves_beyond; /* else what lies before the line moves, the other way */
} Stretch;

static gboolean
is_beyond (const Stretch *stretch, BfVec2 p)
{
  return bf_vec2_dot (bf_vec2_sub (p, stretch->at), stretch->along) >= -BF_TOLERANCE_SIZE_MM;
}

/* How far the stretch moves a point that lies there. */
static BfVec2
move_of (const Stretch *stretch, BfVec2 p)
{
  if (is_beyond (stretch, p) != stretch->moves_beyond)
    return bf_vec2 (0.0, 0.0);
  return bf_vec2_scale (stretch->along, stretch->moves_beyond ? stretch->by_mm : -stretch->by_mm);
}

/* An opening in the base keeps its shape and goes as a whole. */
static void
stretch_opening (const Stretch *stretch, BfOpening *opening)
{
  if (g_str_equal (opening->on, "base"))
    bf_opening_move (opening, move_of (stretch, bf_opening_place_mm (opening)));
}

BfPart *
bf_edit_edge_length (const BfPart *part, guint edge, double length_mm)
{
  g_return_val_if_fail (part != NULL && edge < bf_part_n_points (part), NULL);
  g_return_val_if_fail (length_mm > 0.0, NULL);

  BfPart *copy = bf_part_copy (part);
  BfVec2 start = bf_part_point (part, edge);
  BfVec2 end = bf_part_point (part, edge + 1);
  Stretch stretch = { end, bf_vec2_unit (bf_vec2_sub (end, start)),
                      length_mm - bf_vec2_distance (start, end), TRUE };

  /* The base is drawn from its first point: that corner keeps its place. */
  stretch.moves_beyond = !is_beyond (&stretch, bf_part_point (part, 0));
  for (guint i = 0; i < copy->outline->len; i++)
    {
      BfVec2 *p = &g_array_index (copy->outline, BfVec2, i);
      *p = bf_vec2_add (*p, move_of (&stretch, *p));
    }
  for (guint i = 0; i < copy->openings->len; i++)
    stretch_opening (&stretch, g_ptr_array_index (copy->openings, i));
  return copy;
}
