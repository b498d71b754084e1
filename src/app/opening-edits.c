/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/opening-edits.h"

#include <glib/gi18n.h>

#include "app/surface-openings.h"
#include "core/tolerance.h"
#include "core/units.h"

/* How far from the edge of a bare base an opening begins. */
#define AWAY_MM 12.0

/* What each shape begins as, in mm and in inches. */
typedef struct
{
  const char *name;
  double diameter[2], length[2], width[2];
} Start;

static const Start starts[] = {
  [BF_OPENING_ROUND] = { N_ ("Round hole"), { 6.0, 0.25 }, { NAN, NAN }, { NAN, NAN } },
  [BF_OPENING_SLOT] = { N_ ("Slot"), { NAN, NAN }, { 20.0, 0.75 }, { 6.0, 0.25 } },
  [BF_OPENING_RECTANGLE] = { N_ ("Rectangle"), { NAN, NAN }, { 20.0, 0.75 }, { 12.0, 0.5 } },
  [BF_OPENING_KEYHOLE] = { N_ ("Keyhole"), { 10.0, 0.375 }, { 12.0, 0.5 }, { 5.0, 0.1875 } },
  [BF_OPENING_OUTLINE] = { N_ ("Own outline"), { NAN, NAN }, { 20.0, 0.75 }, { 12.0, 0.5 } },
};

const char *
bf_opening_size_name (BfOpeningSize size)
{
  switch (size)
    {
    case BF_OPENING_DIAMETER:
      return _ ("Diameter of the hole");
    case BF_OPENING_LENGTH:
      return _ ("Length of the cut-out");
    case BF_OPENING_WIDTH:
      return _ ("Width of the cut-out");
    case BF_OPENING_ANGLE:
    default:
      return _ ("Angle of the cut-out");
    }
}

const char *
bf_opening_move_name (BfSelection selection)
{
  return bf_selection_point_of_opening (selection) < 0 ? _ ("Move a hole") : _ ("Move a point");
}

static const BfOpening *
selected (BfDocument *document, BfSelection selection)
{
  const BfOpeningResult *result =
      bf_surface_opening_result (bf_document_get_fold (document), selection);
  return result != NULL ? result->asked : NULL;
}

/* How deep the metal is there, and where an opening goes that is to be added. */
typedef struct
{
  const char *on;
  BfVec2 at;
  double depth_mm, angle_deg;
} Room;

static void
find_room_on_flange (const BfFold *fold, const BfFlange *flange, Room *room)
{
  int face = bf_fold_find_face (fold, flange->id);
  const BfBendResult *bend = bf_fold_bend (fold, (guint)bf_fold_face (fold, (guint)face)->bend);
  double along_mm = flange->start_mm + bf_vec2_distance (bend->line[0], bend->line[1]) / 2.0;

  *room = (Room){ flange->id, { along_mm, flange->length_mm / 2.0 }, flange->length_mm, 0.0 };
}

static void
find_room_on_base (const BfPart *part, guint edge, Room *room)
{
  BfVec2 a = bf_part_point (part, edge);
  BfVec2 b = bf_part_point (part, edge + 1);
  BfVec2 along = bf_vec2_unit (bf_vec2_sub (b, a));
  double depth_mm = bf_part_edge_depth_mm (part, edge);
  double away_mm = MIN (AWAY_MM, depth_mm / 2.0);
  BfVec2 at =
      bf_vec2_along (bf_vec2_scale (bf_vec2_add (a, b), 0.5), bf_vec2 (-along.y, along.x), away_mm);

  *room = (Room){ "base", at, depth_mm, bf_rad_to_deg (atan2 (along.y, along.x)) };
}

static gboolean
find_room (const BfFold *fold, BfSelection selection, Room *room)
{
  const BfFlange *flange = bf_selection_flange (fold, selection);
  BfEdge edge;

  if (!bf_selection_to_edge (fold, selection, &edge))
    return FALSE;
  if (flange == NULL && selection.face > 0)
    flange = bf_part_find_flange (fold->part, edge.on);
  if (flange != NULL)
    find_room_on_flange (fold, flange, room);
  else
    find_room_on_base (fold->part, edge.index, room);
  return flange == NULL || bf_fold_find_face (fold, flange->id) > 0;
}

static double
start_size (const double sizes[2], BfUnits units)
{
  return units == BF_UNITS_IN ? sizes[1] * BF_MM_PER_INCH : sizes[0];
}

/* A rectangle, whose points are then moved. */
static void
begin_outline (BfOpening *opening)
{
  double angle = bf_deg_to_rad (opening->angle_deg);
  BfVec2 along = { cos (angle), sin (angle) }, across = { -along.y, along.x };
  static const double corners[4][2] = {
    { -0.5, -0.5 }, { 0.5, -0.5 }, { 0.5, 0.5 }, { -0.5, 0.5 }
  };

  opening->points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  for (guint i = 0; i < G_N_ELEMENTS (corners); i++)
    {
      BfVec2 p = bf_vec2_along (opening->at_mm, along, corners[i][0] * opening->length_mm);
      p = bf_vec2_along (p, across, corners[i][1] * opening->width_mm);
      g_array_append_val (opening->points, p);
    }
  opening->at_mm = bf_vec2 (0.0, 0.0);
  opening->length_mm = opening->width_mm = opening->angle_deg = NAN;
}

/* Lies along the edge; a keyhole's narrow part stands away from the bend, where a wall is up. */
static BfOpening *
opening_new (BfOpeningShape shape, const Room *room, BfUnits units)
{
  BfOpening *opening = bf_opening_new (room->on, shape);
  const Start *start = &starts[shape];
  double most_mm = room->depth_mm / 2.0;

  opening->at_mm = room->at;
  opening->diameter_mm = fmin (start_size (start->diameter, units), most_mm);
  if (isnan (start->diameter[0]))
    opening->diameter_mm = NAN;
  if (shape == BF_OPENING_ROUND)
    return opening;
  opening->length_mm = start_size (start->length, units);
  opening->width_mm = fmin (start_size (start->width, units), most_mm);
  opening->angle_deg = room->angle_deg;
  if (shape == BF_OPENING_KEYHOLE)
    opening->angle_deg =
        fmod (room->angle_deg + 450.0 + (g_str_equal (room->on, "base") ? 0.0 : 180.0), 360.0);
  if (shape == BF_OPENING_OUTLINE)
    begin_outline (opening);
  return opening;
}

BfSelection
bf_opening_add (BfDocument *document, BfSelection selection, BfOpeningShape shape)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (document), selection);
  g_return_val_if_fail (shape < G_N_ELEMENTS (starts), selection);

  const BfFold *fold = bf_document_get_fold (document);
  const BfPart *part = bf_document_get_part (document);
  Room room;
  if (fold == NULL || !find_room (fold, selection, &room))
    return selection;
  g_autoptr (BfOpening) opening = opening_new (shape, &room, part->units);
  guint index = part->openings->len;
  bf_document_take (document, bf_edit_add_opening (part, opening), _ (starts[shape].name), FALSE);
  return bf_selection_opening (bf_fold_find_face (bf_document_get_fold (document), opening->on),
                               index);
}

void
bf_opening_give (
    BfDocument *document, BfSelection selection, BfOpeningSize size, double value, gboolean stepped)
{
  g_return_if_fail (BF_IS_DOCUMENT (document));

  const BfOpening *opening = selected (document, selection);
  double now = opening != NULL ? bf_opening_size (opening, size) : NAN;
  if (isnan (now) || fabs (now - value) < BF_TOLERANCE_ZERO)
    return;
  bf_document_take (document,
                    bf_edit_opening_give (bf_document_get_part (document),
                                          bf_selection_opening_index (selection), size, value),
                    bf_opening_size_name (size), stepped);
}

void
bf_opening_place (BfDocument *document, BfSelection selection, BfVec2 place_mm, gboolean stepped)
{
  g_return_if_fail (BF_IS_DOCUMENT (document));

  const BfOpening *opening = selected (document, selection);
  const BfPart *part = bf_document_get_part (document);
  guint index = bf_selection_opening_index (selection);
  int point = bf_selection_point_of_opening (selection);
  if (opening == NULL ||
      bf_vec2_distance (bf_surface_opening_place (opening, selection), place_mm) <
          BF_TOLERANCE_ZERO ||
      fabs (place_mm.x) > BF_LENGTH_MAX_MM || fabs (place_mm.y) > BF_LENGTH_MAX_MM)
    return;
  bf_document_take (document,
                    point < 0 ? bf_edit_place_opening (part, index, place_mm)
                              : bf_edit_opening_move_point (part, index, (guint)point, place_mm),
                    bf_opening_move_name (selection), stepped);
}

void
bf_opening_nudge (BfDocument *document, BfSelection selection, BfVec2 direction, double times)
{
  g_return_if_fail (BF_IS_DOCUMENT (document));

  const BfOpening *opening = selected (document, selection);
  double step_mm =
      bf_document_get_part (document)->units == BF_UNITS_IN ? BF_MM_PER_INCH / 16.0 : 1.0;
  BfVec2 axes[2];
  if (opening == NULL)
    return;
  bf_surface_opening_axes (bf_document_get_fold (document), selection, axes);
  double along = bf_vec2_dot (direction, axes[0]);
  double out = bf_vec2_dot (direction, axes[1]);
  BfVec2 by = fabs (along) >= fabs (out) ? bf_vec2 (copysign (step_mm * times, along), 0.0)
                                         : bf_vec2 (0.0, copysign (step_mm * times, out));
  bf_opening_place (document, selection,
                    bf_vec2_add (bf_surface_opening_place (opening, selection), by), TRUE);
}

BfSelection
bf_opening_remove (BfDocument *document, BfSelection selection)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (document), selection);

  const BfPart *part = bf_document_get_part (document);
  guint index = bf_selection_opening_index (selection);
  int point = bf_selection_point_of_opening (selection);
  if (selected (document, selection) == NULL)
    return BF_SELECTION_NONE;
  if (point < 0)
    {
      bf_document_take (document, bf_edit_remove_opening (part, index), _ ("Remove a hole"), FALSE);
      return BF_SELECTION_NONE;
    }
  BfPart *fewer = bf_edit_opening_remove_point (part, index, (guint)point);
  if (fewer == NULL)
    return selection;
  bf_document_take (document, fewer, _ ("Remove a point"), FALSE);
  return bf_selection_whole_opening (selection);
}

BfSelection
bf_opening_add_point (BfDocument *document, BfSelection selection)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (document), selection);

  guint index = bf_selection_opening_index (selection);
  int point = bf_selection_point_of_opening (selection);
  if (selected (document, selection) == NULL || point < 0)
    return selection;
  bf_document_take (
      document, bf_edit_opening_add_point (bf_document_get_part (document), index, (guint)point),
      _ ("New point"), FALSE);
  return bf_selection_opening_point (selection.face, index, (guint)point + 1);
}
