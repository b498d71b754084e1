/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Every edit changes what it is for and nothing else, and leaves the part that it was made from as
 * it was: seen in the text of the part's file, member by member. */

#include <string.h>

#include "core/edit.h"
#include "core/part-file.h"
#include "random-part.h"

/* A tray with a lip and a hem, a corner asked for, and two openings; slots and a trial given. */
static const char text[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"name\": \"Tray\", \"units\": \"mm\","
    " \"metal\": {\"material\": \"mild-steel\", \"thickness\": 1.5, \"grain\": 30},"
    " \"cutting\": {\"by\": \"disc\", \"diameter\": 125, \"kerf\": 1.1, \"slack\": 0.6},"
    " \"bend\": {\"way\": \"bar\", \"inside_radius\": 2, \"allowance\": {\"rule\": \"k-factor\","
    "            \"k\": 0.4}, \"slots\": {\"slot\": 40, \"bridge\": 12}},"
    " \"base\": {\"outline\": [[0,0],[200,0],[200,120],[0,120]]},"
    " \"flanges\": ["
    "  {\"id\": \"front\", \"on\": \"base\", \"edge\": 0, \"length\": 40},"
    "  {\"id\": \"right\", \"on\": \"base\", \"edge\": 1, \"length\": 30, \"angle\": 70},"
    "  {\"id\": \"lip\", \"on\": \"front\", \"edge\": \"tip\", \"length\": 12}],"
    " \"corners\": [{\"on\": \"base\", \"at\": 1, \"join\": \"open\", \"gap\": 0.5}],"
    " \"openings\": ["
    "  {\"on\": \"base\", \"shape\": \"round\", \"at\": [150, 30], \"diameter\": 6},"
    "  {\"on\": \"front\", \"shape\": \"slot\", \"at\": [20, 20], \"length\": 20, \"width\": 5}],"
    " \"notes\": \"as it is\"}";

static BfPart *
read_part (void)
{
  g_autoptr (GError) error = NULL;
  BfPart *part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  return part;
}

/* ---- edits -------------------------------------------------------------------------------- */

static BfPart *
long_front (const BfPart *part)
{
  return bf_edit_flange_length (part, "front", 55.0);
}

static BfPart *
steep_right (const BfPart *part)
{
  return bf_edit_flange_angle (part, "right", 100.0);
}

static BfPart *
lip_down (const BfPart *part)
{
  return bf_edit_flange_turn (part, "lip", BF_TURN_DOWN);
}

static BfPart *
inset (const BfPart *part)
{
  return bf_edit_flange_insets (part, "front", 3.0, 4.0);
}

static BfPart *
tapered (const BfPart *part)
{
  return bf_edit_flange_tapers (part, "front", 5.0, -3.0);
}

static BfPart *
notched (const BfPart *part)
{
  return bf_edit_flange_end_reliefs (part, "front", BF_END_RELIEF_NOTCH, BF_END_RELIEF_HOLE);
}

static BfPart *
own_radius (const BfPart *part)
{
  return bf_edit_flange_radius (part, "right", 4.0);
}

static BfPart *
part_radius (const BfPart *part)
{
  return bf_edit_flange_radius (part, "right", NAN);
}

static BfPart *
own_skin (const BfPart *part)
{
  return bf_edit_flange_score_left (part, "right", 0.5);
}

static BfPart *
own_lever (const BfPart *part)
{
  return bf_edit_flange_lever (part, "lip", 250.0);
}

static BfPart *
relief (const BfPart *part)
{
  return bf_edit_corner_relief (part, "base", 1, BF_RELIEF_SQUARE, 8.0);
}

static BfPart *
new_corner (const BfPart *part)
{
  return bf_edit_corner_relief (part, "base", 3, BF_RELIEF_NONE, NAN);
}

static BfPart *
finish (const BfPart *part)
{
  return bf_edit_corner_finish (part, "base", 1, BF_FINISH_CHAMFER, 6.0);
}

static BfPart *
gap (const BfPart *part)
{
  return bf_edit_corner_gap (part, "base", 1, 0.0);
}

static BfPart *
usual_gap (const BfPart *part)
{
  return bf_edit_corner_gap (part, "base", 1, NAN);
}

static BfPart *
no_join (const BfPart *part)
{
  return bf_edit_corner_forget_join (part, "base", 1);
}

static BfPart *
join (const BfPart *part)
{
  return bf_edit_corner_join (part, "base", 1, BF_JOIN_TAB);
}

static BfPart *
hole (const BfPart *part)
{
  g_autoptr (BfOpening) hole = bf_opening_new ("right", BF_OPENING_ROUND);

  hole->at_mm = bf_vec2 (9.0, 11.0);
  hole->diameter_mm = 4.0;
  return bf_edit_add_opening (part, hole);
}

static BfPart *
moved_hole (const BfPart *part)
{
  return bf_edit_place_opening (part, 0, bf_vec2 (151.0, 31.0));
}

static BfPart *
wide_hole (const BfPart *part)
{
  return bf_edit_opening_size (part, 0, 7.0);
}

static BfPart *
wide_slot (const BfPart *part)
{
  return bf_edit_opening_size (part, 1, 7.0);
}

static BfPart *
other_name (const BfPart *part)
{
  return bf_edit_name (part, "Pan");
}

static BfPart *
other_metal (const BfPart *part)
{
  return bf_edit_material (part, "zinc");
}

static BfPart *
thicker (const BfPart *part)
{
  return bf_edit_thickness (part, 2.0);
}

static BfPart *
by_snips (const BfPart *part)
{
  return bf_edit_cutting (part, BF_CUTTING_SNIPS, NAN);
}

static BfPart *
other_disc (const BfPart *part)
{
  return bf_edit_cutting (part, BF_CUTTING_DISC, 115.0);
}

static BfPart *
by_slots (const BfPart *part)
{
  return bf_edit_bend_way (part, BF_BEND_WAY_SLOTS);
}

static BfPart *
riveted (const BfPart *part)
{
  return bf_edit_joining (part, BF_JOINING_RIVETED);
}

static BfPart *
in_inches (const BfPart *part)
{
  return bf_edit_units (part, BF_UNITS_IN);
}

static BfPart *
kerf (const BfPart *part)
{
  return bf_edit_kerf (part, 1.0);
}

static BfPart *
slack (const BfPart *part)
{
  return bf_edit_slack (part, 0.4);
}

static BfPart *
tick (const BfPart *part)
{
  return bf_edit_tick (part, "abc", "mark:1", TRUE);
}

static BfPart *
add_back (const BfPart *part)
{
  BfEdge edge = { "base", BF_EDGE_INDEX, 2 };

  return bf_edit_add_flange (part, &edge, BF_TURN_UP, NULL);
}

static BfPart *
hem_right (const BfPart *part)
{
  BfEdge edge = { "right", BF_EDGE_TIP, 0 };

  return bf_edit_add_hem (part, &edge, BF_TURN_UP, NULL);
}

static BfPart *
without_front (const BfPart *part)
{
  return bf_edit_remove_flange (part, "front");
}

static BfPart *
without_lip (const BfPart *part)
{
  return bf_edit_remove_flange (part, "lip");
}

/* What may change begins with one of the paths, and each of them does change. */
static const struct
{
  const char *name;
  BfPart *(*edit) (const BfPart *part);
  const char *paths[4];
} edits[] = {
  { "length", long_front, { "flanges.0.length" } },
  { "angle", steep_right, { "flanges.1.angle" } },
  { "turn", lip_down, { "flanges.2.turn" } },
  { "insets",
    inset,
    { "flanges.0.start", "flanges.0.end", "flanges.0.start_relief", "flanges.0.end_relief" } },
  { "tapers", tapered, { "flanges.0.start_taper", "flanges.0.end_taper" } },
  { "end-reliefs", notched, { "flanges.0.start_relief", "flanges.0.end_relief" } },
  { "own-radius", own_radius, { "flanges.1.bend.inside_radius" } },
  { "part-radius", part_radius, { NULL } }, /* it had the part's before */
  { "own-skin", own_skin, { "flanges.1.bend.score" } },
  { "own-lever", own_lever, { "flanges.2.bend.hand" } },
  { "relief", relief, { "corners.0.relief" } },
  { "new-corner", new_corner, { "corners.1" } },
  { "gap", gap, { "corners.0.gap" } },
  { "usual-gap", usual_gap, { "corners.0.gap" } },
  { "forget-join", no_join, { "corners.0.join", "corners.0.gap" } },
  { "join", join, { "corners.0.join" } },
  { "finish", finish, { "corners.0.finish", "corners.0.size" } },
  { "hole", hole, { "openings.2" } },
  { "moved-hole", moved_hole, { "openings.0.at" } },
  { "wide-hole", wide_hole, { "openings.0.diameter" } },
  { "wide-slot", wide_slot, { "openings.1.width" } },
  { "name", other_name, { "name" } },
  { "metal", other_metal, { "metal.material" } },
  { "thickness", thicker, { "metal.thickness" } },
  { "snips", by_snips, { "cutting.by", "cutting.kerf", "cutting.slack" } },
  { "disc", other_disc, { "cutting.diameter", "cutting.kerf", "cutting.slack" } },
  { "slots", by_slots, { "bend.way", "bend.inside_radius" } }, /* K 0.4 is the way's own */
  { "joining", riveted, { "joining" } },
  { "units", in_inches, { "units" } },
  { "kerf", kerf, { "cutting.kerf" } },
  { "slack", slack, { "cutting.slack" } },
  { "tick", tick, { "made" } },
  { "add-flange", add_back, { "flanges.3" } },
  { "add-hem", hem_right, { "flanges.3" } },
  { "remove-front", without_front, { "flanges", "openings.1" } },
  { "remove-lip", without_lip, { "flanges.2" } },
};

/* ---- what differs ------------------------------------------------------------------------- */

/* Every value of a tree that is neither an object nor a list, by its path. */
static void
flatten (JsonNode *node, const char *path, GHashTable *values)
{
  if (JSON_NODE_HOLDS_OBJECT (node))
    {
      g_autoptr (GList) members = json_object_get_members (json_node_get_object (node));

      for (GList *l = members; l != NULL; l = l->next)
        {
          g_autofree char *below =
              g_strdup_printf ("%s%s%s", path, path[0] != '\0' ? "." : "", (char *)l->data);

          flatten (json_object_get_member (json_node_get_object (node), l->data), below, values);
        }
    }
  else if (JSON_NODE_HOLDS_ARRAY (node))
    for (guint i = 0; i < json_array_get_length (json_node_get_array (node)); i++)
      {
        g_autofree char *below = g_strdup_printf ("%s.%u", path, i);

        flatten (json_array_get_element (json_node_get_array (node), i), below, values);
      }
  else
    g_hash_table_insert (values, g_strdup (path), json_to_string (node, FALSE));
}

static GHashTable *
values_of (const BfPart *part)
{
  g_autofree char *written = bf_part_to_text (part);
  g_autoptr (JsonNode) root = json_from_string (written, NULL);
  GHashTable *values = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);

  flatten (root, "", values);
  return values;
}

/* The paths whose values are others, or are only in one of the two; appended, not to be freed. */
static void
add_differences (GHashTable *a, GHashTable *b, GPtrArray *paths)
{
  GHashTableIter iter;
  gpointer path, value;

  g_hash_table_iter_init (&iter, a);
  while (g_hash_table_iter_next (&iter, &path, &value))
    if (g_strcmp0 (value, g_hash_table_lookup (b, path)) != 0)
      g_ptr_array_add (paths, path);
}

static gboolean
begins_with (const char *path, const char *start)
{
  gsize length = strlen (start);

  return strncmp (path, start, length) == 0 && (path[length] == '\0' || path[length] == '.');
}

static void
test_one_thing (gconstpointer data)
{
  guint row = GPOINTER_TO_UINT (data);
  g_autoptr (BfPart) part = read_part (), before = bf_part_copy (part);
  g_autoptr (BfPart) after = edits[row].edit (part);
  g_autoptr (GHashTable) old = values_of (part), new = values_of (after);
  g_autoptr (GPtrArray) paths = g_ptr_array_new ();
  gboolean seen[G_N_ELEMENTS (edits[0].paths)] = { FALSE };

  assert_same_part (part, before, 1e-12);
  add_differences (old, new, paths);
  add_differences (new, old, paths);
  for (guint i = 0; i < paths->len; i++)
    {
      const char *path = g_ptr_array_index (paths, i);
      gboolean known = FALSE;

      for (guint k = 0; k < G_N_ELEMENTS (seen) && edits[row].paths[k] != NULL; k++)
        if (begins_with (path, edits[row].paths[k]))
          known = seen[k] = TRUE;
      if (!known)
        g_error ("%s changed %s", edits[row].name, path);
    }
  for (guint k = 0; k < G_N_ELEMENTS (seen) && edits[row].paths[k] != NULL; k++)
    if (!seen[k])
      g_error ("%s did not change %s", edits[row].name, edits[row].paths[k]);
}

/* ---- slots of one flange ------------------------------------------------------------------ */

/* One flange plans its slots anew; the others keep the lengths that the part gave them. */
static void
test_plan_slots (void)
{
  g_autoptr (BfPart) part = read_part ();
  g_autoptr (BfPart) after = bf_edit_flange_plan_slots (part, "right");

  g_assert_true (isnan (after->bend.slot_mm));
  for (guint i = 0; i < bf_part_n_flanges (after); i++)
    {
      const BfFlange *flange = bf_part_flange (after, i);
      gboolean planned = strcmp (flange->id, "right") == 0;

      g_assert_true (isnan (flange->bend.slot_mm) == planned);
      g_assert_true (isnan (flange->bend.bridge_mm) == planned);
      g_assert_true (planned || (fabs (flange->bend.slot_mm - 40.0) < 1e-12 &&
                                 fabs (flange->bend.bridge_mm - 12.0) < 1e-12));
    }
}

static BfPart *
without_gone (const BfPart *part)
{
  return bf_edit_remove_flange (part, "gone");
}

static BfPart *
long_gone (const BfPart *part)
{
  return bf_edit_flange_length (part, "gone", 5.0);
}

static BfPart *
steep_gone (const BfPart *part)
{
  return bf_edit_flange_angle (part, "gone", 5.0);
}

static BfPart *
gone_down (const BfPart *part)
{
  return bf_edit_flange_turn (part, "gone", BF_TURN_DOWN);
}

/* A flange that is not there: the part as it was, never another flange changed for it. */
static void
test_no_such_flange (void)
{
  static BfPart *(*const edits_of_none[]) (const BfPart *) = { without_gone, long_gone, steep_gone,
                                                               gone_down };

  for (guint i = 0; i < G_N_ELEMENTS (edits_of_none); i++)
    {
      g_autoptr (BfPart) part = read_part (), after = edits_of_none[i](part);

      assert_same_part (part, after, 1e-12);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (edits); i++)
    {
      g_autofree char *path = g_strconcat ("/edit-one-thing/", edits[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), test_one_thing);
    }
  g_test_add_func ("/edit-one-thing/plan-slots", test_plan_slots);
  g_test_add_func ("/edit-one-thing/no-such-flange", test_no_such_flange);
  return g_test_run ();
}
