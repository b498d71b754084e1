/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-write.h"

#include "core/defaults.h"
#include "core/json-text.h"
#include "core/names.h"
#include "core/part-file.h"

void
bf_write_number (JsonObject *object, const char *name, double value)
{
  if (!isnan (value))
    json_object_set_double_member (object, name, value);
}

void
bf_write_word (JsonObject *object, const char *name, const char *word)
{
  if (word != NULL)
    json_object_set_string_member (object, name, word);
}

void
bf_write_object (JsonObject *parent, const char *name, JsonObject *object)
{
  if (json_object_get_size (object) > 0)
    json_object_set_object_member (parent, name, object);
  else
    json_object_unref (object);
}

JsonObject *
bf_source_object (JsonObject *source, const char *name)
{
  JsonNode *node = source != NULL ? json_object_get_member (source, name) : NULL;

  return node != NULL && JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
}

void
bf_keep_unknown (JsonObject *object, JsonObject *source, const char *const *known)
{
  JsonObjectIter iter;
  const char *name;
  JsonNode *node;

  if (source == NULL)
    return;
  json_object_iter_init_ordered (&iter, source);
  while (json_object_iter_next_ordered (&iter, &name, &node))
    if (!g_strv_contains (known, name))
      json_object_set_member (object, name, json_node_copy (node));
}

JsonNode *
bf_write_point (BfVec2 p)
{
  g_autoptr (JsonArray) pair = json_array_sized_new (2);

  json_array_add_double_element (pair, p.x);
  json_array_add_double_element (pair, p.y);
  return json_node_init_array (json_node_alloc (), pair);
}

JsonNode *
bf_write_points (GArray *points)
{
  g_autoptr (JsonArray) list = json_array_sized_new (points->len);

  for (guint i = 0; i < points->len; i++)
    json_array_add_element (list, bf_write_point (g_array_index (points, BfVec2, i)));
  return json_node_init_array (json_node_alloc (), list);
}

static void
write_metal (JsonObject *root, const BfPart *part)
{
  static const char *const known[] = { "material", "thickness", "grain", NULL };
  JsonObject *metal = json_object_new ();

  bf_write_word (metal, "material", part->metal.material);
  bf_write_number (metal, "thickness", part->metal.thickness_mm);
  if (isnan (part->metal.grain_deg))
    bf_write_word (metal, "grain", "unknown");
  bf_write_number (metal, "grain", part->metal.grain_deg);
  bf_keep_unknown (metal, bf_source_object (part->source, "metal"), known);
  bf_write_object (root, "metal", metal);
}

static void
write_drills (JsonObject *cutting, const BfPart *part)
{
  GArray *drills = part->cutting.drill_list_mm;
  JsonArray *list;

  if (part->cutting.drills != BF_DRILLS_LIST)
    {
      bf_write_word (cutting, "drills", bf_drill_set_name (part->cutting.drills));
      return;
    }
  list = json_array_new ();
  for (guint i = 0; drills != NULL && i < drills->len; i++)
    json_array_add_double_element (list, g_array_index (drills, double, i));
  json_object_set_array_member (cutting, "drills", list);
}

static void
write_cutting (JsonObject *root, const BfPart *part)
{
  static const char *const known[] = { "by", "diameter", "kerf", "slack", "drills", NULL };
  JsonObject *cutting = json_object_new ();
  gboolean disc = part->cutting.by == BF_CUTTING_DISC;

  bf_write_word (cutting, "by", bf_cutting_way_name (part->cutting.by));
  bf_write_number (cutting, "diameter",
                   disc ? bf_part_disc_diameter_mm (part) : part->cutting.disc_diameter_mm);
  bf_write_number (cutting, "kerf", bf_part_kerf_mm (part));
  bf_write_number (cutting, "slack", bf_part_slack_mm (part));
  write_drills (cutting, part);
  bf_keep_unknown (cutting, bf_source_object (part->source, "cutting"), known);
  bf_write_object (root, "cutting", cutting);
}

static JsonObject *
write_allowance (const BfAllowance *allowance, JsonObject *source)
{
  static const char *const known[] = { "rule", "k", "k_error", "group", "id", NULL };
  JsonObject *object = json_object_new ();

  bf_write_word (object, "rule", bf_allowance_rule_name (allowance->rule));
  if (allowance->rule == BF_ALLOWANCE_HANDBOOK)
    bf_write_word (object, "group", bf_handbook_group_name (allowance->group));
  bf_write_number (object, "k", allowance->k);
  bf_write_number (object, "k_error", allowance->k_error > 0.0 ? allowance->k_error : NAN);
  bf_write_word (object, "id", allowance->trial_id);
  bf_keep_unknown (object, source, known);
  return object;
}

static JsonObject *
write_pair (const char *const *names, double first, double second, JsonObject *source)
{
  JsonObject *object = json_object_new ();

  bf_write_number (object, names[0], first);
  if (names[1] != NULL)
    bf_write_number (object, names[1], second);
  bf_keep_unknown (object, source, names);
  return object;
}

JsonObject *
bf_write_bend (const BfBend *bend, JsonObject *source)
{
  static const char *const known[] = { "way",   "inside_radius", "allowance", "slots",
                                       "score", "hand",          "corrected", NULL };
  static const char *const slots[] = { "slot", "bridge", NULL };
  static const char *const score[] = { "left", NULL };
  static const char *const hand[] = { "limit", "lever", NULL };
  JsonObject *object = json_object_new ();

  bf_write_word (object, "way", bf_bend_way_name (bend->way));
  bf_write_number (object, "inside_radius", bend->inside_radius_mm);
  bf_write_object (object, "allowance",
                   write_allowance (&bend->allowance, bf_source_object (source, "allowance")));
  bf_write_object (
      object, "slots",
      write_pair (slots, bend->slot_mm, bend->bridge_mm, bf_source_object (source, "slots")));
  bf_write_object (
      object, "score",
      write_pair (score, bend->score_left_mm, NAN, bf_source_object (source, "score")));
  bf_write_object (object, "hand",
                   write_pair (hand, bend->hand_limit_n, bend->hand_lever_mm,
                               bf_source_object (source, "hand")));
  bf_write_word (object, "corrected", bend->corrected);
  bf_keep_unknown (object, source, known);
  return object;
}

static JsonArray *
pinned_edges (const BfPart *part)
{
  JsonArray *list = json_array_new ();

  for (guint i = 0; i < part->pinned_edges->len; i++)
    json_array_add_int_element (list, g_array_index (part->pinned_edges, guint, i));
  return list;
}

static void
write_base (JsonObject *root, const BfPart *part)
{
  static const char *const known[] = { "outline", "pinned", "corners", NULL };
  JsonObject *base = json_object_new ();

  json_object_set_member (base, "outline", bf_write_points (part->outline));
  if (part->pinned_edges->len > 0)
    json_object_set_array_member (base, "pinned", pinned_edges (part));
  if (part->base_corners->len > 0)
    json_object_set_member (base, "corners", bf_write_base_corners (part));
  bf_keep_unknown (base, bf_source_object (part->source, "base"), known);
  bf_write_object (root, "base", base);
}

static void
write_head (JsonObject *root, const BfPart *part)
{
  bf_write_word (root, "format", "benchfold-part");
  json_object_set_int_member (root, "version", 1);
  bf_write_word (root, "name", part->name);
  json_object_set_int_member (root, "quantity", part->quantity);
  bf_write_word (root, "units", bf_units_name (part->units));
  bf_write_word (root, "measure", bf_measure_name (part->measure));
}

static JsonObject *
write_part (const BfPart *part)
{
  static const char *const known[] = { "format",  "version", "name",    "quantity", "units",
                                       "measure", "metal",   "cutting", "joining",  "bend",
                                       "base",    "flanges", "corners", "openings", "parted",
                                       "made",    "notes",   NULL };
  JsonObject *root = json_object_new ();

  write_head (root, part);
  write_metal (root, part);
  write_cutting (root, part);
  bf_write_word (root, "joining", bf_joining_name (part->joining));
  bf_write_object (root, "bend",
                   bf_write_bend (&part->bend, bf_source_object (part->source, "bend")));
  write_base (root, part);
  json_object_set_member (root, "flanges", bf_write_flanges (part));
  json_object_set_member (root, "corners", bf_write_corners (part));
  json_object_set_member (root, "openings", bf_write_openings (part));
  if (part->parted->len > 0)
    json_object_set_member (root, "parted", bf_write_parted (part));
  bf_write_object (root, "made", bf_write_made (part));
  bf_write_word (root, "notes", part->notes);
  bf_keep_unknown (root, part->source, known);
  return root;
}

static gboolean
differ (double a, double b)
{
  return fabs (a - b) > 0.0;
}

/* k means something to two of the rules only; by another it is written where it was given. */
static gboolean
rule_uses_k (BfAllowanceRule rule)
{
  return rule == BF_ALLOWANCE_K_FACTOR || rule == BF_ALLOWANCE_TRIAL_BEND;
}

/* Gives a flange what it folded with before the part's own defaults were written out: a value
 * written at the part beats the default of a hem or of the flange's own way. */
static void
pin_flange (const BfPart *whole, BfFlange *flange, const BfBend *was)
{
  BfAllowance *own = &flange->bend.allowance;
  BfBend is = bf_part_resolve_bend (whole, flange);

  if (differ (is.inside_radius_mm, was->inside_radius_mm))
    flange->bend.inside_radius_mm = was->inside_radius_mm;
  if (rule_uses_k (was->allowance.rule) && differ (is.allowance.k, was->allowance.k))
    {
      own->k = was->allowance.k;
      own->k_error = was->allowance.k_error;
    }
  if (own->rule == BF_ALLOWANCE_UNSET && (!isnan (own->k) || own->trial_id != NULL))
    {
      own->rule = was->allowance.rule;
      own->group = was->allowance.group;
    }
}

/* The part with every default of its own bend written out. Returns: (transfer full). */
static BfPart *
spell_out (const BfPart *part)
{
  BfPart *whole = bf_part_copy (part);
  BfBend bend = bf_part_resolve_bend (part, NULL);

  whole->bend.way = bend.way;
  whole->bend.inside_radius_mm = bend.inside_radius_mm;
  whole->bend.allowance.rule = bend.allowance.rule;
  if (rule_uses_k (bend.allowance.rule))
    whole->bend.allowance.k = bend.allowance.k;
  for (guint i = 0; i < bf_part_n_flanges (part); i++)
    {
      BfBend was = bf_part_resolve_bend (part, bf_part_flange (part, i));

      pin_flange (whole, g_ptr_array_index (whole->flanges, i), &was);
    }
  return whole;
}

char *
bf_part_to_text (const BfPart *part)
{
  g_autoptr (BfPart) whole = NULL;
  g_autoptr (JsonNode) node = json_node_alloc ();
  g_autoptr (JsonObject) root = NULL;

  g_return_val_if_fail (part != NULL, NULL);

  whole = spell_out (part);
  root = write_part (whole);
  json_node_init_object (node, root);
  return bf_json_to_text (node);
}
