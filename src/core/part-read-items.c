/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gi18n.h>

#include "core/part-file.h"
#include "core/part-read.h"

static void
read_edge (BfReader *reader, const BfPlace *place, BfFlange *flange)
{
  JsonNode *node = json_object_get_member (place->object, "edge");
  const char *word;

  if (!bf_reader_require (reader, place, "edge", _ ("an edge")))
    return;
  if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) != G_TYPE_STRING)
    {
      flange->edge = BF_EDGE_INDEX;
      flange->edge_index = bf_read_index (reader, place, "edge");
      return;
    }
  word = json_node_get_string (node);
  if (g_str_equal (word, "tip"))
    flange->edge = BF_EDGE_TIP;
  else if (g_str_equal (word, "start"))
    flange->edge = BF_EDGE_START;
  else if (g_str_equal (word, "end"))
    flange->edge = BF_EDGE_END;
  else
    bf_reader_expected (reader, bf_reader_path (reader, place->path, "edge"),
                        _ ("the number of an edge of the base, tip, start or end"), node);
}

static void
read_on (BfReader *reader, const BfPlace *place, char **on)
{
  char *read = bf_read_string (reader, place, "on", "base");

  g_free (*on);
  *on = read;
}

static BfEndRelief
read_end_relief (BfReader *reader, const BfPlace *place, const char *name)
{
  return (BfEndRelief)bf_read_word (reader, place, name, &bf_names_end_relief, BF_END_RELIEF_UNSET);
}

static BfFlange *
read_flange (BfReader *reader, const BfPlace *place)
{
  BfFlange *flange = bf_flange_new (NULL);

  bf_reader_require (reader, place, "id", _ ("a name that no other flange has"));
  bf_reader_require (reader, place, "length", _ ("a length in mm"));
  flange->id = bf_read_string (reader, place, "id", "");
  read_on (reader, place, &flange->on);
  read_edge (reader, place, flange);
  flange->length_mm = bf_read_number (reader, place, "length", &bf_rule_length, flange->length_mm);
  flange->angle_deg = bf_read_number (reader, place, "angle", &bf_rule_bend, flange->angle_deg);
  flange->turn = (BfTurn)bf_read_word (reader, place, "turn", &bf_names_turn, BF_TURN_UP);
  flange->start_mm = bf_read_number (reader, place, "start", &bf_rule_not_negative, 0.0);
  flange->end_mm = bf_read_number (reader, place, "end", &bf_rule_not_negative, 0.0);
  flange->start_taper_deg = bf_read_number (reader, place, "start_taper", &bf_rule_taper, 0.0);
  flange->end_taper_deg = bf_read_number (reader, place, "end_taper", &bf_rule_taper, 0.0);
  flange->start_relief = read_end_relief (reader, place, "start_relief");
  flange->end_relief = read_end_relief (reader, place, "end_relief");
  bf_read_bend (reader, place, &flange->bend);
  flange->pinned = bf_read_flag (reader, place, "pinned");
  flange->source = json_object_ref (place->object);
  return flange;
}

/* A relief's size is a diameter for a round one and a side ("size") for a square one. */
static void
read_relief (BfReader *reader, const BfPlace *corner_place, BfCorner *corner)
{
  BfPlace place;
  const char *size;

  if (!bf_read_object (reader, corner_place, "relief", &place))
    return;
  corner->relief = (BfReliefShape)bf_read_word (reader, &place, "shape", &bf_names_relief_shape,
                                                BF_RELIEF_ROUND);
  corner->along_after = bf_read_word (reader, &place, "along", &bf_names_along, 0) == 1;
  size = json_object_has_member (place.object, "size") ? "size" : "diameter";
  corner->relief_size_mm = bf_read_number (reader, &place, size, &bf_rule_length, NAN);
}

static BfCorner *
read_corner (BfReader *reader, const BfPlace *place)
{
  BfCorner *corner = bf_corner_new ("base", 0);

  if (bf_reader_require (reader, place, "at", _ ("the number of a corner")))
    corner->at = bf_read_index (reader, place, "at");
  corner->finish =
      (BfFinish)bf_read_word (reader, place, "finish", &bf_names_finish, BF_FINISH_UNSET);
  corner->finish_size_mm = bf_read_number (reader, place, "size", &bf_rule_not_negative, NAN);
  corner->source = json_object_ref (place->object);
  return corner;
}

static BfCorner *
read_joined_corner (BfReader *reader, const BfPlace *place)
{
  BfCorner *corner = read_corner (reader, place);

  read_on (reader, place, &corner->on);
  corner->join = (BfJoin)bf_read_word (reader, place, "join", &bf_names_join, BF_JOIN_UNSET);
  corner->gap_mm = bf_read_number (reader, place, "gap", &bf_rule_not_negative, NAN);
  read_relief (reader, place, corner);
  return corner;
}

static double
read_size (BfReader *reader, const BfPlace *place, const char *name)
{
  if (!bf_reader_require (reader, place, name, _ ("a length in mm")))
    return NAN;
  return bf_read_number (reader, place, name, &bf_rule_length, NAN);
}

static void
read_at (BfReader *reader, const BfPlace *place, BfOpening *opening)
{
  if (bf_reader_require (reader, place, "at", _ ("a point [x, y] in mm")))
    opening->at_mm = bf_read_point_node (reader, json_object_get_member (place->object, "at"),
                                         bf_reader_path (reader, place->path, "at"));
}

static void
read_long_sizes (BfReader *reader, const BfPlace *place, BfOpening *opening)
{
  opening->length_mm = read_size (reader, place, "length");
  opening->width_mm = read_size (reader, place, "width");
  opening->angle_deg = bf_read_number (reader, place, "angle", &bf_rule_angle, 0.0);
}

static void
read_shape_sizes (BfReader *reader, const BfPlace *place, BfOpening *opening)
{
  BfOpeningShape shape = opening->shape;

  if (shape == BF_OPENING_OUTLINE)
    {
      if (bf_reader_require (reader, place, "points", _ ("a list of points")))
        bf_read_points (reader, place, "points", opening->points);
      return;
    }
  read_at (reader, place, opening);
  if (shape == BF_OPENING_ROUND || shape == BF_OPENING_KEYHOLE)
    opening->diameter_mm = read_size (reader, place, "diameter");
  if (shape != BF_OPENING_ROUND)
    read_long_sizes (reader, place, opening);
}

static BfOpening *
read_opening (BfReader *reader, const BfPlace *place)
{
  g_autofree char *words = bf_names_list (&bf_names_opening_shape);
  /* Translators: the words that may stand at a place of a file, "mm, in". */
  g_autofree char *expected = g_strdup_printf (_ ("one of %s"), words);
  BfOpening *opening;
  int shape = BF_OPENING_ROUND;

  if (bf_reader_require (reader, place, "shape", expected))
    shape = bf_read_word (reader, place, "shape", &bf_names_opening_shape, shape);
  opening = bf_opening_new ("base", (BfOpeningShape)shape);
  read_on (reader, place, &opening->on);
  read_shape_sizes (reader, place, opening);
  opening->pinned = bf_read_flag (reader, place, "pinned");
  opening->from_end = bf_read_word (reader, place, "from", &bf_names_from, 0) == 1;
  opening->source = json_object_ref (place->object);
  return opening;
}

/* Reads a list of objects, each by one function that gives back what it has read. */
static void
read_items (BfReader *reader,
            const BfPlace *parent,
            const char *name,
            gpointer (*read) (BfReader *reader, const BfPlace *place),
            GPtrArray *items)
{
  JsonArray *list = bf_read_list (reader, parent, name);
  const char *path = bf_reader_path (reader, parent->path, name);
  BfPlace place;

  if (list == NULL)
    return;
  for (guint i = 0; i < json_array_get_length (list); i++)
    if (bf_read_item (reader, list, i, path, &place))
      g_ptr_array_add (items, read (reader, &place));
}

static gpointer
read_flange_item (BfReader *reader, const BfPlace *place)
{
  return read_flange (reader, place);
}

static gpointer
read_corner_item (BfReader *reader, const BfPlace *place)
{
  return read_corner (reader, place);
}

static gpointer
read_joined_corner_item (BfReader *reader, const BfPlace *place)
{
  return read_joined_corner (reader, place);
}

static gpointer
read_opening_item (BfReader *reader, const BfPlace *place)
{
  return read_opening (reader, place);
}

void
bf_read_flanges (BfReader *reader, const BfPlace *root, BfPart *part)
{
  read_items (reader, root, "flanges", read_flange_item, part->flanges);
}

void
bf_read_corners (BfReader *reader, const BfPlace *root, BfPart *part)
{
  read_items (reader, root, "corners", read_joined_corner_item, part->corners);
}

void
bf_read_openings (BfReader *reader, const BfPlace *root, BfPart *part)
{
  read_items (reader, root, "openings", read_opening_item, part->openings);
}

void
bf_read_base_corners (BfReader *reader, const BfPlace *base, BfPart *part)
{
  read_items (reader, base, "corners", read_corner_item, part->base_corners);
}

/* The text that stands there, or NULL. Borrowed. */
static const char *
text_of (BfReader *reader, JsonNode *node, const char *path)
{
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    return json_node_get_string (node);
  bf_reader_expected (reader, path, _ ("a text"), node);
  return NULL;
}

static void
read_parted (BfReader *reader, JsonNode *node, const char *path, BfPart *part)
{
  JsonArray *pair = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  const char *ids[2];

  if (pair == NULL || json_array_get_length (pair) != 2)
    {
      bf_reader_expected (reader, path, _ ("a list of two flanges' ids"), node);
      return;
    }
  for (guint k = 0; k < 2; k++)
    ids[k] =
        text_of (reader, json_array_get_element (pair, k), bf_reader_item_path (reader, path, k));
  if (ids[0] != NULL && ids[1] != NULL && !bf_part_has_parted (part, ids[0], ids[1]))
    g_ptr_array_add (part->parted, bf_parted_new (ids[0], ids[1]));
}

void
bf_read_parted (BfReader *reader, const BfPlace *root, BfPart *part)
{
  JsonArray *list = bf_read_list (reader, root, "parted");
  const char *path = bf_reader_path (reader, root->path, "parted");

  for (guint i = 0; list != NULL && i < json_array_get_length (list); i++)
    read_parted (reader, json_array_get_element (list, i), bf_reader_item_path (reader, path, i),
                 part);
}

/* Texts of a list, each once. */
static void
read_steps (BfReader *reader, const BfPlace *place, BfMade *made)
{
  JsonArray *list = bf_read_list (reader, place, "steps");
  const char *path = bf_reader_path (reader, place->path, "steps");

  for (guint i = 0; list != NULL && i < json_array_get_length (list); i++)
    {
      const char *step =
          text_of (reader, json_array_get_element (list, i), bf_reader_item_path (reader, path, i));

      if (step != NULL)
        bf_made_set (made, step, TRUE);
    }
}

void
bf_read_made (BfReader *reader, const BfPlace *root, BfPart *part)
{
  BfPlace place;
  g_autofree char *blank = NULL;

  if (!bf_read_object (reader, root, "made", &place))
    return;
  blank = bf_read_string (reader, &place, "blank", "");
  part->made = bf_made_new (blank);
  read_steps (reader, &place, part->made);
}
