/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/defaults.h"
#include "core/names.h"
#include "core/part-write.h"

static void
write_edge (JsonObject *object, const BfFlange *flange)
{
  switch (flange->edge)
    {
    case BF_EDGE_INDEX:
      json_object_set_int_member (object, "edge", flange->edge_index);
      break;
    case BF_EDGE_TIP:
      bf_write_word (object, "edge", "tip");
      break;
    case BF_EDGE_START:
      bf_write_word (object, "edge", "start");
      break;
    case BF_EDGE_END:
      bf_write_word (object, "edge", "end");
      break;
    default:
      g_assert_not_reached ();
    }
}

/* An end relief matters, and so is written out, where the flange stops within its edge. */
static void
write_end_relief (
    JsonObject *object, const char *name, const BfPart *part, BfEndRelief asked, double inset_mm)
{
  if (asked != BF_END_RELIEF_UNSET || inset_mm > 0.0)
    bf_write_word (object, name, bf_end_relief_name (bf_part_resolve_end_relief (part, asked)));
}

static void
write_pinned (JsonObject *object, gboolean pinned)
{
  if (pinned)
    json_object_set_boolean_member (object, "pinned", TRUE);
}

static JsonObject *
write_flange (const BfPart *part, const BfFlange *flange)
{
  static const char *const known[] = {
    "id",          "on",        "edge",         "length",     "angle", "turn",   "start", "end",
    "start_taper", "end_taper", "start_relief", "end_relief", "bend",  "pinned", NULL
  };
  JsonObject *object = json_object_new ();

  bf_write_word (object, "id", flange->id);
  bf_write_word (object, "on", flange->on);
  write_edge (object, flange);
  bf_write_number (object, "length", flange->length_mm);
  bf_write_number (object, "angle", flange->angle_deg);
  bf_write_word (object, "turn", bf_turn_name (flange->turn));
  bf_write_number (object, "start", flange->start_mm);
  bf_write_number (object, "end", flange->end_mm);
  bf_write_number (object, "start_taper", flange->start_taper_deg);
  bf_write_number (object, "end_taper", flange->end_taper_deg);
  write_end_relief (object, "start_relief", part, flange->start_relief, flange->start_mm);
  write_end_relief (object, "end_relief", part, flange->end_relief, flange->end_mm);
  bf_write_object (object, "bend",
                   bf_write_bend (&flange->bend, bf_source_object (flange->source, "bend")));
  write_pinned (object, flange->pinned);
  bf_keep_unknown (object, flange->source, known);
  return object;
}

static JsonObject *
write_relief (const BfCorner *corner)
{
  static const char *const known[] = { "shape", "diameter", "size", "along", NULL };
  JsonObject *object = json_object_new ();
  gboolean square = corner->relief == BF_RELIEF_SQUARE;

  bf_write_word (object, "shape", bf_relief_shape_name (corner->relief));
  bf_write_number (object, square ? "size" : "diameter", corner->relief_size_mm);
  if (square && corner->along_after)
    bf_write_word (object, "along", bf_names_along.words[1]);
  bf_keep_unknown (object, bf_source_object (corner->source, "relief"), known);
  return object;
}

/* What is left out at a corner stays left out: where no two flanges meet, a join or gap written
 * there would be one that nobody asked for. */
static JsonObject *
write_corner (const BfCorner *corner)
{
  static const char *const known[] = {
    "on", "at", "join", "gap", "relief", "finish", "size", NULL
  };
  JsonObject *object = json_object_new ();

  bf_write_word (object, "on", corner->on);
  json_object_set_int_member (object, "at", corner->at);
  bf_write_word (object, "join", bf_join_name (corner->join));
  bf_write_number (object, "gap", corner->gap_mm);
  bf_write_object (object, "relief", write_relief (corner));
  bf_write_word (object, "finish", bf_finish_name (corner->finish));
  bf_write_number (object, "size", corner->finish_size_mm);
  bf_keep_unknown (object, corner->source, known);
  return object;
}

static JsonObject *
write_base_corner (const BfCorner *corner)
{
  static const char *const known[] = { "at", "finish", "size", NULL };
  JsonObject *object = json_object_new ();

  json_object_set_int_member (object, "at", corner->at);
  bf_write_word (object, "finish", bf_finish_name (corner->finish));
  bf_write_number (object, "size", corner->finish_size_mm);
  bf_keep_unknown (object, corner->source, known);
  return object;
}

/* Sizes that another shape would have are known too: they go when the shape is changed. */
static JsonObject *
write_opening (const BfOpening *opening)
{
  static const char *const known[] = { "on",    "shape",  "at",     "diameter", "length", "width",
                                       "angle", "points", "pinned", "from",     NULL };
  JsonObject *object = json_object_new ();
  gboolean outline = opening->shape == BF_OPENING_OUTLINE;

  bf_write_word (object, "on", opening->on);
  bf_write_word (object, "shape", bf_opening_shape_name (opening->shape));
  if (outline)
    json_object_set_member (object, "points", bf_write_points (opening->points));
  else
    json_object_set_member (object, "at", bf_write_point (opening->at_mm));
  bf_write_number (object, "diameter", opening->diameter_mm);
  bf_write_number (object, "length", opening->length_mm);
  bf_write_number (object, "width", opening->width_mm);
  bf_write_number (object, "angle", opening->angle_deg);
  write_pinned (object, opening->pinned);
  if (opening->from_end)
    bf_write_word (object, "from", bf_names_from.words[1]);
  bf_keep_unknown (object, opening->source, known);
  return object;
}

static JsonNode *
list_node (JsonArray *list)
{
  return json_node_init_array (json_node_alloc (), list);
}

JsonNode *
bf_write_flanges (const BfPart *part)
{
  g_autoptr (JsonArray) list = json_array_new ();

  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    json_array_add_object_element (list, write_flange (part, bf_part_flange (part, i)));
  return list_node (list);
}

JsonNode *
bf_write_corners (const BfPart *part)
{
  g_autoptr (JsonArray) list = json_array_new ();

  for (guint i = 0; i < part->corners->len; i++)
    json_array_add_object_element (list, write_corner (g_ptr_array_index (part->corners, i)));
  return list_node (list);
}

JsonNode *
bf_write_base_corners (const BfPart *part)
{
  g_autoptr (JsonArray) list = json_array_new ();

  for (guint i = 0; i < part->base_corners->len; i++)
    json_array_add_object_element (list,
                                   write_base_corner (g_ptr_array_index (part->base_corners, i)));
  return list_node (list);
}

JsonNode *
bf_write_openings (const BfPart *part)
{
  g_autoptr (JsonArray) list = json_array_new ();

  for (guint i = 0; i < part->openings->len; i++)
    json_array_add_object_element (list, write_opening (g_ptr_array_index (part->openings, i)));
  return list_node (list);
}

JsonNode *
bf_write_parted (const BfPart *part)
{
  g_autoptr (JsonArray) list = json_array_new ();

  for (guint i = 0; i < part->parted->len; i++)
    {
      const BfParted *parted = g_ptr_array_index (part->parted, i);
      JsonArray *pair = json_array_new ();

      json_array_add_string_element (pair, parted->ids[0]);
      json_array_add_string_element (pair, parted->ids[1]);
      json_array_add_array_element (list, pair);
    }
  return list_node (list);
}

JsonObject *
bf_write_made (const BfPart *part)
{
  static const char *const known[] = { "blank", "steps", NULL };
  JsonObject *object = json_object_new ();
  g_autoptr (JsonArray) steps = json_array_new ();

  for (guint i = 0; part->made != NULL && i < part->made->steps->len; i++)
    json_array_add_string_element (steps, g_ptr_array_index (part->made->steps, i));
  if (json_array_get_length (steps) > 0)
    {
      bf_write_word (object, "blank", part->made->blank);
      json_object_set_member (object, "steps", list_node (steps));
    }
  bf_keep_unknown (object, bf_source_object (part->source, "made"), known);
  return object;
}
