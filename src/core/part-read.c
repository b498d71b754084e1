/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-read.h"

#include <string.h>

#include <glib/gi18n.h>

#include "core/json-guard.h"
#include "core/part-file.h"

#define FORMAT "benchfold-part"
#define VERSION 1

G_DEFINE_QUARK (bf - part - error - quark, bf_part_error)

/* "format" is looked at before anything else, so that a person who opens another program's file
 * hears that and nothing about members. */
static void
check_format (BfReader *reader, const BfPlace *root)
{
  JsonNode *node = json_object_get_member (root->object, "format");

  if (node == NULL || !JSON_NODE_HOLDS_VALUE (node) ||
      json_node_get_value_type (node) != G_TYPE_STRING ||
      !g_str_equal (json_node_get_string (node), FORMAT))
    g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_FORMAT,
                 /* Translators: %s is a word of the file format. */
                 _ ("format: not a part file; expected \"%s\""), FORMAT);
}

static void
check_version (BfReader *reader, const BfPlace *root)
{
  static const BfNumberRule rule = { N_ ("a version number"), 1.0, G_MAXINT, FALSE };
  double version;

  if (!bf_reader_require (reader, root, "version", _ ("a version number")))
    return;
  version = bf_read_whole (reader, root, "version", &rule, NAN);
  if (reader->error == NULL && version > VERSION)
    g_set_error (&reader->error, BF_PART_ERROR, BF_PART_ERROR_FORMAT,
                 /* Translators: version numbers of a file format. */
                 _ ("version: made by a newer program (version %.0f); this one reads up to %d"),
                 version, VERSION);
}

static void
read_grain (BfReader *reader, const BfPlace *metal, BfPart *part)
{
  JsonNode *node = json_object_get_member (metal->object, "grain");

  if (node != NULL && JSON_NODE_HOLDS_VALUE (node) &&
      json_node_get_value_type (node) == G_TYPE_STRING)
    {
      if (!g_str_equal (json_node_get_string (node), "unknown"))
        bf_reader_expected (reader, bf_reader_path (reader, metal->path, "grain"),
                            _ ("an angle in degrees or \"unknown\""), node);
      return;
    }
  part->metal.grain_deg = bf_read_number (reader, metal, "grain", &bf_rule_angle, NAN);
}

static void
read_metal (BfReader *reader, const BfPlace *root, BfPart *part)
{
  BfPlace metal;
  char *material;

  if (!bf_reader_require (reader, root, "metal", _ ("an object with a thickness")) ||
      !bf_read_object (reader, root, "metal", &metal) ||
      !bf_reader_require (reader, &metal, "thickness", _ ("a length in mm")))
    return;
  material = bf_read_string (reader, &metal, "material", part->metal.material);
  if (*material == '\0')
    bf_reader_expected (reader, "metal.material", _ ("the name of a material"),
                        json_object_get_member (metal.object, "material"));
  g_free (part->metal.material);
  part->metal.material = material;
  part->metal.thickness_mm =
      bf_read_number (reader, &metal, "thickness", &bf_rule_length, part->metal.thickness_mm);
  read_grain (reader, &metal, part);
}

static void
read_drill_list (BfReader *reader, const BfPlace *cutting, BfPart *part)
{
  part->cutting.drills = BF_DRILLS_LIST;
  part->cutting.drill_list_mm = bf_read_lengths (reader, cutting, "drills");
}

/* A list in the file is a list; the word for one is of no use there. */
static void
read_drills (BfReader *reader, const BfPlace *cutting, BfPart *part)
{
  JsonNode *node = json_object_get_member (cutting->object, "drills");
  int set = -1;

  if (node == NULL)
    return;
  if (JSON_NODE_HOLDS_ARRAY (node))
    {
      read_drill_list (reader, cutting, part);
      return;
    }
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    set = bf_names_find (&bf_names_drill_set, json_node_get_string (node));
  if (set < 0 || set == BF_DRILLS_LIST)
    bf_reader_expected (reader, "cutting.drills",
                        _ ("metric, fraction, number or a list of diameters in mm"), node);
  else
    part->cutting.drills = (BfDrillSet)set;
}

static void
read_cutting (BfReader *reader, const BfPlace *root, BfPart *part)
{
  BfCutting *cutting = &part->cutting;
  BfPlace place;

  if (!bf_read_object (reader, root, "cutting", &place))
    return;
  cutting->by =
      (BfCuttingWay)bf_read_word (reader, &place, "by", &bf_names_cutting_way, BF_CUTTING_DISC);
  cutting->disc_diameter_mm = bf_read_number (reader, &place, "diameter", &bf_rule_length, NAN);
  cutting->kerf_mm = bf_read_number (reader, &place, "kerf", &bf_rule_not_negative, NAN);
  cutting->slack_mm = bf_read_number (reader, &place, "slack", &bf_rule_not_negative, NAN);
  read_drills (reader, &place, part);
}

/* What is given tells the rule where the rule itself is left out. */
static BfAllowanceRule
implied_rule (JsonObject *allowance)
{
  if (json_object_has_member (allowance, "id"))
    return BF_ALLOWANCE_TRIAL_BEND;
  if (json_object_has_member (allowance, "group"))
    return BF_ALLOWANCE_HANDBOOK;
  if (json_object_has_member (allowance, "k"))
    return BF_ALLOWANCE_K_FACTOR;
  return BF_ALLOWANCE_UNSET;
}

static void
read_allowance (BfReader *reader, const BfPlace *bend, BfAllowance *allowance)
{
  BfPlace place;

  if (!bf_read_object (reader, bend, "allowance", &place))
    return;
  allowance->rule = (BfAllowanceRule)bf_read_word (reader, &place, "rule", &bf_names_allowance_rule,
                                                   (int)implied_rule (place.object));
  allowance->k = bf_read_number (reader, &place, "k", &bf_rule_k, NAN);
  allowance->k_error = bf_read_number (reader, &place, "k_error", &bf_rule_k, NAN);
  allowance->group = (BfHandbookGroup)bf_read_word (
      reader, &place, "group", &bf_names_handbook_group, (int)allowance->group);
  allowance->trial_id = bf_read_string (reader, &place, "id", NULL);
}

static const char *
read_day (BfReader *reader, const BfPlace *place, const char *name)
{
  g_autofree char *day = bf_read_string (reader, place, name, NULL);

  return day != NULL && *day != '\0' ? g_intern_string (day) : NULL;
}

void
bf_read_bend (BfReader *reader, const BfPlace *parent, BfBend *bend)
{
  BfPlace place, child;

  if (!bf_read_object (reader, parent, "bend", &place))
    return;
  bend->way =
      (BfBendWay)bf_read_word (reader, &place, "way", &bf_names_bend_way, BF_BEND_WAY_UNSET);
  bend->inside_radius_mm =
      bf_read_number (reader, &place, "inside_radius", &bf_rule_not_negative, NAN);
  read_allowance (reader, &place, &bend->allowance);
  bend->corrected = read_day (reader, &place, "corrected");
  if (bf_read_object (reader, &place, "slots", &child))
    {
      bend->slot_mm = bf_read_number (reader, &child, "slot", &bf_rule_length, NAN);
      bend->bridge_mm = bf_read_number (reader, &child, "bridge", &bf_rule_length, NAN);
    }
  if (bf_read_object (reader, &place, "score", &child))
    bend->score_left_mm = bf_read_number (reader, &child, "left", &bf_rule_length, NAN);
  if (bf_read_object (reader, &place, "hand", &child))
    {
      bend->hand_limit_n = bf_read_number (reader, &child, "limit", &bf_rule_force, NAN);
      bend->hand_lever_mm = bf_read_number (reader, &child, "lever", &bf_rule_length, NAN);
    }
}

static void
read_base (BfReader *reader, const BfPlace *root, BfPart *part)
{
  BfPlace base;

  if (!bf_reader_require (reader, root, "base", _ ("an object with an outline")) ||
      !bf_read_object (reader, root, "base", &base) ||
      !bf_reader_require (reader, &base, "outline", _ ("a list of points")))
    return;
  bf_read_points (reader, &base, "outline", part->outline);
  bf_read_indices (reader, &base, "pinned", part->pinned_edges);
  bf_read_base_corners (reader, &base, part);
}

static void
read_text (BfReader *reader, const BfPlace *root, const char *name, char **text)
{
  char *read = bf_read_string (reader, root, name, *text);

  g_free (*text);
  *text = read;
}

static void
read_quantity (BfReader *reader, const BfPlace *root, BfPart *part)
{
  static const BfNumberRule rule = { N_ ("a whole number"), 1.0, BF_QUANTITY_MAX, FALSE };
  double quantity = bf_read_whole (reader, root, "quantity", &rule, part->quantity);

  if (reader->error == NULL)
    part->quantity = (guint)quantity;
}

static void
read_part (BfReader *reader, const BfPlace *root, BfPart *part)
{
  check_format (reader, root);
  check_version (reader, root);
  read_text (reader, root, "name", &part->name);
  read_quantity (reader, root, part);
  part->units = (BfUnits)bf_read_word (reader, root, "units", &bf_names_units, BF_UNITS_MM);
  part->measure =
      (BfMeasure)bf_read_word (reader, root, "measure", &bf_names_measure, BF_MEASURE_OUTSIDE);
  read_metal (reader, root, part);
  read_cutting (reader, root, part);
  part->joining =
      (BfJoining)bf_read_word (reader, root, "joining", &bf_names_joining, BF_JOINING_WELDED);
  bf_read_bend (reader, root, &part->bend);
  read_base (reader, root, part);
  bf_read_flanges (reader, root, part);
  bf_read_corners (reader, root, part);
  bf_read_openings (reader, root, part);
  bf_read_parted (reader, root, part);
  bf_read_made (reader, root, part);
  read_text (reader, root, "notes", &part->notes);
}

static BfPart *
part_from_object (JsonObject *object, GError **error)
{
  g_auto (BfReader) reader;
  g_autoptr (BfPart) part = bf_part_new ();
  BfPlace root = { object, "" };

  bf_reader_init (&reader);
  read_part (&reader, &root, part);
  if (reader.error != NULL)
    {
      g_propagate_error (error, g_steal_pointer (&reader.error));
      return NULL;
    }
  part->source = json_object_ref (object);
  if (!bf_part_check_references (part, error))
    return NULL;
  bf_part_make_counter_clockwise (part);
  return g_steal_pointer (&part);
}

static BfPart *
part_from_json (const char *text, gsize length, GError **error)
{
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (GError) local = NULL;
  JsonNode *root;

  if (!json_parser_load_from_data (parser, text, (gssize)length, &local))
    {
      g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_SYNTAX, local->message);
      return NULL;
    }
  root = json_parser_get_root (parser);
  if (root == NULL || !JSON_NODE_HOLDS_OBJECT (root))
    {
      g_set_error_literal (error, BF_PART_ERROR, BF_PART_ERROR_FORMAT,
                           _ ("not a part file; expected an object"));
      return NULL;
    }
  return part_from_object (json_node_get_object (root), error);
}

BfPart *
bf_part_from_text (const char *text, gssize length, GError **error)
{
  static const char byte_order_mark[] = "\xef\xbb\xbf";
  gsize size;

  g_return_val_if_fail (text != NULL, NULL);

  size = length < 0 ? strlen (text) : (gsize)length;
  if (size >= 3 && memcmp (text, byte_order_mark, 3) == 0)
    {
      text += 3;
      size -= 3;
    }
  if (!bf_json_guard (text, size, BF_PART_FILE_MAX_BYTES, BF_PART_FILE_MAX_DEPTH, error))
    return NULL;
  return part_from_json (text, size, error);
}
