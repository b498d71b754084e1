/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/part-file.h"

/* A file with one of everything, so that every member can be spoilt by itself. */
static const char whole[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"name\": \"Spoke tray\","
    " \"units\": \"in\", \"measure\": \"inside\","
    " \"metal\": {\"material\": \"zinc\", \"thickness\": 0.8, \"grain\": 30},"
    " \"cutting\": {\"by\": \"table\", \"diameter\": 115, \"kerf\": 1.25, \"slack\": 0.5,"
    "  \"drills\": [8, 3, 5.5]},"
    " \"joining\": \"riveted\","
    " \"bend\": {\"way\": \"slots\", \"inside_radius\": 0.4, \"corrected\": \"2026-01-31\","
    "  \"allowance\": {\"rule\": \"trial-bend\", \"k\": 0.375, \"k_error\": 0.0125, \"group\": "
    "\"hard\","
    "   \"id\": \"strip-2\"},"
    "  \"slots\": {\"slot\": 50, \"bridge\": 12}, \"score\": {\"left\": 0.6},"
    "  \"hand\": {\"limit\": 120, \"lever\": 300}},"
    " \"base\": {\"outline\": [[0,0],[200,0],[200,120],[0,120]],"
    "  \"corners\": [{\"at\": 2, \"finish\": \"chamfer\", \"size\": 5}]},"
    " \"flanges\": ["
    "  {\"id\": \"front\", \"on\": \"base\", \"edge\": 3, \"length\": 40, \"angle\": 60,"
    "   \"turn\": \"down\", \"start\": 1, \"end\": 2, \"start_taper\": 3, \"end_taper\": -4,"
    "   \"start_relief\": \"hole\", \"end_relief\": \"notch\", \"bend\": {\"way\": \"brake\"}},"
    "  {\"id\": \"lip\", \"on\": \"front\", \"edge\": \"tip\", \"length\": 12}],"
    " \"corners\": [{\"on\": \"front\", \"at\": 1, \"join\": \"tab\", \"gap\": 0.25,"
    "  \"relief\": {\"shape\": \"square\", \"size\": 6}, \"finish\": \"round\", \"size\": 2}],"
    " \"openings\": ["
    "  {\"on\": \"front\", \"shape\": \"round\", \"at\": [30, 20], \"diameter\": 6},"
    "  {\"shape\": \"slot\", \"at\": [60, 61], \"length\": 40, \"width\": 8, \"angle\": 90},"
    "  {\"shape\": \"rectangle\", \"at\": [9, 60], \"length\": 41, \"width\": 20},"
    "  {\"shape\": \"keyhole\", \"at\": [3, 60], \"diameter\": 10, \"length\": 13,"
    "   \"width\": 5, \"angle\": 45},"
    "  {\"shape\": \"outline\", \"points\": [[150,40],[170,40],[160,60]]}],"
    " \"notes\": \"Gr\\u00fc\\u00dfe\"}";

/* The least a file may say. */
static const char least[] = "{\"format\": \"benchfold-part\", \"version\": 1,"
                            " \"metal\": {\"thickness\": 1.5},"
                            " \"base\": {\"outline\": [[0,0],[200,0],[200,120],[0,120]]}}";

/* The whole file with its first `from` put in another way. Returns: (transfer full). */
static char *
spoil (const char *text, const char *from, const char *to)
{
  const char *at = strstr (text, from);

  g_assert_nonnull (at);
  return g_strdup_printf ("%.*s%s%s", (int)(at - text), text, to, at + strlen (from));
}

static void
assert_number (double value, double expected)
{
  g_assert_cmpfloat_with_epsilon (value, expected, 1e-12);
}

static BfPart *
read_part (const char *text)
{
  g_autoptr (GError) error = NULL;
  BfPart *part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  g_assert_nonnull (part);
  return part;
}

static void
assert_refused (const char *text, int code, const char *message)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (text, -1, &error);

  g_assert_null (part);
  g_assert_error (error, BF_PART_ERROR, code);
  g_assert_cmpstr (error->message, ==, message);
}

static void
test_head (void)
{
  g_autoptr (BfPart) part = read_part (whole);

  g_assert_cmpstr (part->name, ==, "Spoke tray");
  g_assert_cmpstr (part->notes, ==, "Grüße");
  g_assert_cmpint (part->units, ==, BF_UNITS_IN);
  g_assert_cmpint (part->measure, ==, BF_MEASURE_INSIDE);
  g_assert_cmpstr (part->metal.material, ==, "zinc");
  assert_number (part->metal.thickness_mm, 0.8);
  assert_number (part->metal.grain_deg, 30);
  g_assert_cmpint (part->cutting.by, ==, BF_CUTTING_TABLE);
  assert_number (part->cutting.disc_diameter_mm, 115);
  assert_number (part->cutting.kerf_mm, 1.25);
  assert_number (part->cutting.slack_mm, 0.5);
  g_assert_cmpint (part->cutting.drills, ==, BF_DRILLS_LIST);
  g_assert_cmpuint (part->cutting.drill_list_mm->len, ==, 3);
  assert_number (g_array_index (part->cutting.drill_list_mm, double, 0), 3);
  assert_number (g_array_index (part->cutting.drill_list_mm, double, 2), 8);
  g_assert_cmpint (part->joining, ==, BF_JOINING_RIVETED);
}

static void
test_bend (void)
{
  g_autoptr (BfPart) part = read_part (whole);
  const BfBend *bend = &part->bend;

  g_assert_cmpint (bend->way, ==, BF_BEND_WAY_SLOTS);
  assert_number (bend->inside_radius_mm, 0.4);
  g_assert_cmpint (bend->allowance.rule, ==, BF_ALLOWANCE_TRIAL_BEND);
  assert_number (bend->allowance.k, 0.375);
  assert_number (bend->allowance.k_error, 0.0125);
  g_assert_cmpstr (bend->corrected, ==, "2026-01-31");
  g_assert_cmpint (bend->allowance.group, ==, BF_HANDBOOK_HARD);
  g_assert_cmpstr (bend->allowance.trial_id, ==, "strip-2");
  assert_number (bend->slot_mm, 50);
  assert_number (bend->bridge_mm, 12);
  assert_number (bend->score_left_mm, 0.6);
  assert_number (bend->hand_limit_n, 120);
  assert_number (bend->hand_lever_mm, 300);
}

static void
test_flanges (void)
{
  g_autoptr (BfPart) part = read_part (whole);
  const BfFlange *front = bf_part_find_flange (part, "front");
  const BfFlange *lip = bf_part_find_flange (part, "lip");

  g_assert_cmpuint (bf_part_n_points (part), ==, 4);
  g_assert_cmpuint (bf_part_n_flanges (part), ==, 2);
  g_assert_cmpstr (front->on, ==, "base");
  g_assert_cmpint (front->edge, ==, BF_EDGE_INDEX);
  g_assert_cmpuint (front->edge_index, ==, 3);
  assert_number (front->length_mm, 40);
  assert_number (front->angle_deg, 60);
  g_assert_cmpint (front->turn, ==, BF_TURN_DOWN);
  assert_number (front->start_mm, 1);
  assert_number (front->end_mm, 2);
  assert_number (front->start_taper_deg, 3);
  assert_number (front->end_taper_deg, -4);
  g_assert_cmpint (front->start_relief, ==, BF_END_RELIEF_HOLE);
  g_assert_cmpint (front->end_relief, ==, BF_END_RELIEF_NOTCH);
  g_assert_cmpint (front->bend.way, ==, BF_BEND_WAY_BRAKE);
  g_assert_cmpint (lip->edge, ==, BF_EDGE_TIP);
  assert_number (lip->angle_deg, 90);
  g_assert_cmpint (lip->turn, ==, BF_TURN_UP);
  assert_number (lip->start_mm, 0);
  g_assert_cmpint (lip->bend.way, ==, BF_BEND_WAY_UNSET);
  g_assert_null (bf_part_find_flange (part, "rear"));
}

static void
test_corners (void)
{
  g_autoptr (BfPart) part = read_part (whole);
  const BfCorner *corner = bf_part_find_corner (part, "front", 1);
  const BfCorner *base_corner = g_ptr_array_index (part->base_corners, 0);

  g_assert_cmpint (corner->join, ==, BF_JOIN_TAB);
  assert_number (corner->gap_mm, 0.25);
  g_assert_cmpint (corner->relief, ==, BF_RELIEF_SQUARE);
  assert_number (corner->relief_size_mm, 6);
  g_assert_cmpint (corner->finish, ==, BF_FINISH_ROUND);
  assert_number (corner->finish_size_mm, 2);
  g_assert_cmpuint (base_corner->at, ==, 2);
  g_assert_cmpint (base_corner->finish, ==, BF_FINISH_CHAMFER);
  assert_number (base_corner->finish_size_mm, 5);
  g_assert_null (bf_part_find_corner (part, "front", 0));
  g_assert_null (bf_part_find_corner (part, "base", 1));
}

static void
test_openings (void)
{
  g_autoptr (BfPart) part = read_part (whole);
  const BfOpening *round = g_ptr_array_index (part->openings, 0);
  const BfOpening *slot = g_ptr_array_index (part->openings, 1);
  const BfOpening *rectangle = g_ptr_array_index (part->openings, 2);
  const BfOpening *keyhole = g_ptr_array_index (part->openings, 3);
  const BfOpening *outline = g_ptr_array_index (part->openings, 4);

  g_assert_cmpstr (round->on, ==, "front");
  assert_number (round->at_mm.x, 30);
  assert_number (round->diameter_mm, 6);
  g_assert_true (isnan (round->angle_deg));
  g_assert_cmpstr (slot->on, ==, "base");
  assert_number (slot->at_mm.y, 61);
  assert_number (slot->length_mm, 40);
  assert_number (slot->angle_deg, 90);
  assert_number (rectangle->width_mm, 20);
  assert_number (rectangle->angle_deg, 0);
  assert_number (keyhole->diameter_mm, 10);
  assert_number (keyhole->width_mm, 5);
  assert_number (keyhole->angle_deg, 45);
  g_assert_cmpuint (outline->points->len, ==, 3);
  assert_number (g_array_index (outline->points, BfVec2, 2).y, 60);
  g_assert_null (round->points);
}

/* What is left out stays marked as left out. */
static void
test_least (void)
{
  g_autoptr (BfPart) part = read_part (least);

  g_assert_cmpstr (part->name, ==, "");
  g_assert_cmpstr (part->notes, ==, "");
  g_assert_cmpint (part->units, ==, BF_UNITS_MM);
  g_assert_cmpint (part->measure, ==, BF_MEASURE_OUTSIDE);
  g_assert_cmpstr (part->metal.material, ==, "mild-steel");
  g_assert_true (isnan (part->metal.grain_deg));
  g_assert_cmpint (part->cutting.by, ==, BF_CUTTING_DISC);
  g_assert_true (isnan (part->cutting.kerf_mm));
  g_assert_true (isnan (part->cutting.slack_mm));
  g_assert_cmpint (part->cutting.drills, ==, BF_DRILLS_METRIC);
  g_assert_cmpint (part->joining, ==, BF_JOINING_WELDED);
  g_assert_cmpint (part->bend.way, ==, BF_BEND_WAY_UNSET);
  g_assert_true (isnan (part->bend.inside_radius_mm));
  g_assert_cmpint (part->bend.allowance.rule, ==, BF_ALLOWANCE_UNSET);
  g_assert_cmpuint (bf_part_n_flanges (part), ==, 0);
}

/* What is given of an allowance tells its rule. */
static void
test_implied_rule (void)
{
  const struct
  {
    const char *members;
    BfAllowanceRule rule;
  } cases[] = {
    { "\"k\": 0.4", BF_ALLOWANCE_K_FACTOR },
    { "\"group\": \"soft\"", BF_ALLOWANCE_HANDBOOK },
    { "\"id\": \"strip\", \"k\": 0.4", BF_ALLOWANCE_TRIAL_BEND },
    { "\"rule\": \"din-6935\", \"k\": 0.4", BF_ALLOWANCE_DIN_6935 },
    { "\"rule\": \"handbook\"", BF_ALLOWANCE_HANDBOOK },
    { "", BF_ALLOWANCE_UNSET },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *bend =
          g_strdup_printf ("\"bend\": {\"allowance\": {%s}}, \"base\"", cases[i].members);
      g_autofree char *text = spoil (least, "\"base\"", bend);
      g_autoptr (BfPart) part = read_part (text);

      g_assert_cmpint (part->bend.allowance.rule, ==, cases[i].rule);
    }
}

/* Other ways to write the same. */
static void
test_valid (void)
{
  const struct
  {
    const char *from, *to;
  } cases[] = {
    { "\"version\": 1", "\"version\": 1.0" },
    { "0.8", "8e-1" },
    { "0.8", "8E-1" },
    { "\"thickness\": 0.8", "\"thickness\": 1e5" },
    { "\"grain\": 30", "\"grain\": \"unknown\"" },
    { "\"grain\": 30", "\"grain\": -135.5" },
    { "\"edge\": 3", "\"edge\": 3.0" },
    { "[8, 3, 5.5]", "[]" },
    { "[8, 3, 5.5]", "\"number\"" },
    { "\"angle\": 60", "\"angle\": 180" },
    { "\"angle\": 60", "\"angle\": 1" },
    { "\"kerf\": 1.25", "\"kerf\": 0" },
    { "\"inside_radius\": 0.4", "\"inside_radius\": 0" },
    { "\"shape\": \"square\", \"size\"", "\"shape\": \"square\", \"diameter\"" },
    { "\"edge\": \"tip\"", "\"edge\": \"start\"" },
    { "\"id\": \"lip\"", "\"id\": \"Lippe ü \\ud83d\\ude00\"" },
    { "Spoke tray", "" },
    { "\"notes\"", "\"\\u006eotes\"" },
    { "\"units\": \"in\",", "" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = spoil (whole, cases[i].from, cases[i].to);
      g_autoptr (BfPart) part = read_part (text);

      g_assert_cmpuint (bf_part_n_flanges (part), ==, 2);
    }
}

/* A length, a NUL after it or not; and the mark that some editors put before UTF-8. */
static void
test_text_length (void)
{
  g_autofree char *longer = g_strconcat (least, "garbage", NULL);
  g_autofree char *marked = g_strconcat ("\xef\xbb\xbf", least, "\r\n", NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (longer, (gssize)strlen (least), &error);
  g_autoptr (BfPart) second = read_part (marked);

  g_assert_no_error (error);
  g_assert_nonnull (part);
  g_assert_cmpuint (bf_part_n_points (second), ==, 4);
}

#define MM "a length in mm"
#define ABOVE_0 "a length in mm above 0 and at most 100000"
#define FROM_0 "a length in mm from 0 to 100000"

/* Each member of a wrong kind, out of range or with a word that is not one, and the message. */
static const struct
{
  const char *from, *to, *message;
} spoilt[] = {
  { "\"Spoke tray\"", "5", "name: expected a text, found 5" },
  { "\"in\"", "\"cm\"", "units: expected one of mm, in, found \"cm\"" },
  { "\"in\"", "null", "units: expected one of mm, in, found null" },
  { "\"inside\"", "true", "measure: expected one of outside, inside, found true" },
  { "{\"material\": \"zinc\", \"thickness\": 0.8, \"grain\": 30}", "1.5",
    "metal: expected an object, found 1.5" },
  { "\"zinc\"", "[]", "metal.material: expected a text, found a list" },
  { "\"zinc\"", "\"\"", "metal.material: expected the name of a material, found \"\"" },
  { "\"thickness\": 0.8", "\"thickness\": \"abc\"",
    "metal.thickness: expected " MM ", found \"abc\"" },
  { "\"thickness\": 0.8", "\"thickness\": 0", "metal.thickness: expected " ABOVE_0 ", found 0" },
  { "\"thickness\": 0.8", "\"thickness\": -0.8",
    "metal.thickness: expected " ABOVE_0 ", found -0.8" },
  { "\"thickness\": 0.8", "\"thickness\": 100000.5",
    "metal.thickness: expected " ABOVE_0 ", found 100000.5" },
  { "\"thickness\": 0.8", "\"thick\": 0.8", "metal.thickness: missing; expected " MM },
  { "\"grain\": 30", "\"grain\": \"north\"",
    "metal.grain: expected an angle in degrees or \"unknown\", found \"north\"" },
  { "\"grain\": 30", "\"grain\": false", "metal.grain: expected an angle in degrees, found false" },
  { "\"table\"", "\"saw\"",
    "cutting.by: expected one of disc, snips, table, service, found \"saw\"" },
  { "\"diameter\": 115", "\"diameter\": 0", "cutting.diameter: expected " ABOVE_0 ", found 0" },
  { "\"kerf\": 1.25", "\"kerf\": -1", "cutting.kerf: expected " FROM_0 ", found -1" },
  { "\"slack\": 0.5", "\"slack\": {}", "cutting.slack: expected " MM ", found an object" },
  { "[8, 3, 5.5]", "\"list\"",
    "cutting.drills: expected metric, fraction, number or a list of diameters in mm, found "
    "\"list\"" },
  { "[8, 3, 5.5]", "7",
    "cutting.drills: expected metric, fraction, number or a list of diameters in mm, found 7" },
  { "[8, 3, 5.5]", "[8, \"x\"]", "cutting.drills[1]: expected " MM ", found \"x\"" },
  { "\"riveted\"", "\"glued\"",
    "joining: expected one of welded, riveted, screwed, folded, none, found \"glued\"" },
  { "\"way\": \"slots\"", "\"way\": \"roll\"",
    "bend.way: expected one of brake, bar, slots, score, found \"roll\"" },
  { "\"inside_radius\": 0.4", "\"inside_radius\": -1",
    "bend.inside_radius: expected " FROM_0 ", found -1" },
  { "\"trial-bend\"", "\"magic\"",
    "bend.allowance.rule: expected one of k-factor, din-6935, handbook, trial-bend, found "
    "\"magic\"" },
  { "\"k\": 0.375", "\"k\": 1.01",
    "bend.allowance.k: expected a K-factor from 0 to 1, found 1.01" },
  { "\"k\": 0.375", "\"k\": \"0.375\"", "bend.allowance.k: expected a K-factor, found \"0.375\"" },
  { "\"k_error\": 0.0125", "\"k_error\": -0.1",
    "bend.allowance.k_error: expected a K-factor from 0 to 1, found -0.1" },
  { "\"2026-01-31\"", "31", "bend.corrected: expected a text, found 31" },
  { "\"hard\"", "\"firm\"",
    "bend.allowance.group: expected one of soft, medium, hard, found \"firm\"" },
  { "\"strip-2\"", "2", "bend.allowance.id: expected a text, found 2" },
  { "\"slot\": 50", "\"slot\": 0", "bend.slots.slot: expected " ABOVE_0 ", found 0" },
  { "\"bridge\": 12", "\"bridge\": null", "bend.slots.bridge: expected " MM ", found null" },
  { "{\"left\": 0.6}", "0.6", "bend.score: expected an object, found 0.6" },
  { "\"left\": 0.6", "\"left\": 0", "bend.score.left: expected " ABOVE_0 ", found 0" },
  { "\"limit\": 120", "\"limit\": 0",
    "bend.hand.limit: expected a force in N above 0 and at most 100000, found 0" },
  { "\"lever\": 300", "\"lever\": 1e6", "bend.hand.lever: expected " ABOVE_0 ", found 1000000" },
  { "[[0,0],[200,0],[200,120],[0,120]]", "{}", "base.outline: expected a list, found an object" },
  { "[[0,0],[200,0],[200,120],[0,120]]", "[[0,0],[200,0]]",
    "base.outline: expected at least 3 points, found 2" },
  { "[200,0]", "[200]", "base.outline[1]: expected a point [x, y] in mm, found a list" },
  { "[200,0]", "[200,0,0]", "base.outline[1]: expected a point [x, y] in mm, found a list" },
  { "[200,0]", "200", "base.outline[1]: expected a point [x, y] in mm, found 200" },
  { "[200,120]", "[200,\"a\"]", "base.outline[2][1]: expected a number of mm, found \"a\"" },
  { "[200,120]", "[-1e6,120]",
    "base.outline[2][0]: expected a number of mm from -100000 to 100000, found -1000000" },
  { "{\"at\": 2, ", "{", "base.corners[0].at: missing; expected the number of a corner" },
  { "{\"at\": 2", "{\"at\": -1",
    "base.corners[0].at: expected a whole number, 0 or more, found -1" },
  { "{\"at\": 2", "{\"at\": 1.5",
    "base.corners[0].at: expected a whole number, 0 or more, found 1.5" },
  { "{\"at\": 2", "{\"at\": 4", "base.corners[0].at: there are 4 corners (0 to 3), found 4" },
  { "\"chamfer\"", "\"fillet\"",
    "base.corners[0].finish: expected one of sharp, round, chamfer, found \"fillet\"" },
  { "\"size\": 5", "\"size\": -5", "base.corners[0].size: expected " FROM_0 ", found -5" },
  { "\"id\": \"front\", ", "", "flanges[0].id: missing; expected a name that no other flange has" },
  { "\"id\": \"front\"", "\"id\": 7", "flanges[0].id: expected a text, found 7" },
  { "\"id\": \"lip\"", "\"id\": \"\"", "flanges[1].id: expected a name, found an empty text" },
  { "\"id\": \"lip\"", "\"id\": \"base\"", "flanges[1].id: \"base\" is the base's own name" },
  { "\"id\": \"lip\"", "\"id\": \"front\"",
    "flanges[1].id: another flange is named \"front\" too" },
  { "\"on\": \"base\"", "\"on\": 0", "flanges[0].on: expected a text, found 0" },
  { "\"on\": \"front\", \"edge\"", "\"on\": \"rear\", \"edge\"",
    "flanges[1].on: expected \"base\" or a flange's id, found \"rear\"" },
  { "\"edge\": 3, ", "", "flanges[0].edge: missing; expected an edge" },
  { "\"edge\": 3", "\"edge\": 9", "flanges[0].edge: the base has 4 edges (0 to 3), found 9" },
  { "\"edge\": 3", "\"edge\": 4", "flanges[0].edge: the base has 4 edges (0 to 3), found 4" },
  { "\"edge\": 3", "\"edge\": -1",
    "flanges[0].edge: expected a whole number, 0 or more, found -1" },
  { "\"edge\": 3", "\"edge\": 3.5",
    "flanges[0].edge: expected a whole number, 0 or more, found 3.5" },
  { "\"edge\": 3", "\"edge\": \"tip\"",
    "flanges[0].edge: expected the number of an edge of the base (0 to 3)" },
  { "\"edge\": 3", "\"edge\": \"side\"",
    "flanges[0].edge: expected the number of an edge of the base, tip, start or end, found "
    "\"side\"" },
  { "\"edge\": \"tip\"", "\"edge\": 1",
    "flanges[1].edge: expected tip, start or end on a flange, found 1" },
  { "\"length\": 12}", "\"angle\": 12}", "flanges[1].length: missing; expected " MM },
  { "\"length\": 12}", "\"length\": \"abc\"}",
    "flanges[1].length: expected " MM ", found \"abc\"" },
  { "\"length\": 12}", "\"length\": 0}", "flanges[1].length: expected " ABOVE_0 ", found 0" },
  { "\"angle\": 60", "\"angle\": 0",
    "flanges[0].angle: expected an angle in degrees from 1 to 180, found 0" },
  { "\"angle\": 60", "\"angle\": 180.5",
    "flanges[0].angle: expected an angle in degrees from 1 to 180, found 180.5" },
  { "\"down\"", "\"left\"", "flanges[0].turn: expected one of up, down, found \"left\"" },
  { "\"start\": 1", "\"start\": -1", "flanges[0].start: expected " FROM_0 ", found -1" },
  { "\"end\": 2", "\"end\": []", "flanges[0].end: expected " MM ", found a list" },
  { "\"start_taper\": 3", "\"start_taper\": 90",
    "flanges[0].start_taper: expected an angle in degrees from -89 to 89, found 90" },
  { "\"end_taper\": -4", "\"end_taper\": \"-4\"",
    "flanges[0].end_taper: expected an angle in degrees, found \"-4\"" },
  { "\"hole\"", "\"slit\"",
    "flanges[0].start_relief: expected one of hole, notch, found \"slit\"" },
  { "\"notch\"", "1", "flanges[0].end_relief: expected one of hole, notch, found 1" },
  { "{\"way\": \"brake\"}", "\"brake\"", "flanges[0].bend: expected an object, found \"brake\"" },
  { "\"way\": \"brake\"", "\"way\": 3",
    "flanges[0].bend.way: expected one of brake, bar, slots, score, found 3" },
  { "{\"on\": \"front\", \"at\"", "{\"on\": \"rear\", \"at\"",
    "corners[0].on: expected \"base\" or a flange's id, found \"rear\"" },
  { "\"at\": 1,", "\"at\": 2,", "corners[0].at: there are 2 corners (0 to 1), found 2" },
  { "\"tab\"", "\"butt\"",
    "corners[0].join: expected one of open, covers-before, covers-after, untrimmed, tab, folded, "
    "found \"butt\"" },
  { "\"gap\": 0.25", "\"gap\": -1", "corners[0].gap: expected " FROM_0 ", found -1" },
  { "{\"shape\": \"square\", \"size\": 6}", "\"square\"",
    "corners[0].relief: expected an object, found \"square\"" },
  { "\"square\"", "\"bone\"",
    "corners[0].relief.shape: expected one of round, square, none, found \"bone\"" },
  { "\"size\": 6", "\"size\": 0", "corners[0].relief.size: expected " ABOVE_0 ", found 0" },
  { "\"size\": 6", "\"diameter\": \"6\"",
    "corners[0].relief.diameter: expected " MM ", found \"6\"" },
  { "{\"on\": \"front\", \"shape\": \"round\"", "{\"on\": \"x\", \"shape\": \"round\"",
    "openings[0].on: expected \"base\" or a flange's id, found \"x\"" },
  { "\"shape\": \"round\", ", "",
    "openings[0].shape: missing; expected one of round, slot, rectangle, keyhole, outline" },
  { "\"shape\": \"round\"", "\"shape\": \"star\"",
    "openings[0].shape: expected one of round, slot, rectangle, keyhole, outline, found \"star\"" },
  { "\"at\": [30, 20], ", "", "openings[0].at: missing; expected a point [x, y] in mm" },
  { "\"at\": [30, 20]", "\"at\": [30]",
    "openings[0].at: expected a point [x, y] in mm, found a list" },
  { "\"at\": [30, 20], \"diameter\": 6", "\"at\": [30, 20]",
    "openings[0].diameter: missing; expected " MM },
  { "\"length\": 40, \"width\": 8", "\"width\": 8", "openings[1].length: missing; expected " MM },
  { "\"width\": 8", "\"width\": 0", "openings[1].width: expected " ABOVE_0 ", found 0" },
  { "\"angle\": 90", "\"angle\": null",
    "openings[1].angle: expected an angle in degrees, found null" },
  { "\"points\": [[150,40],[170,40],[160,60]]", "\"notes\": 1",
    "openings[4].points: missing; expected a list of points" },
  { "[[150,40],[170,40],[160,60]]", "[[150,40],[170,40],[160,true]]",
    "openings[4].points[2][1]: expected a number of mm, found true" },
  { "[{\"on\": \"front\", \"at\"", "[[], {\"on\": \"front\", \"at\"",
    "corners[0]: expected an object, found a list" },
  { "\"Gr\\u00fc\\u00dfe\"", "null", "notes: expected a text, found null" },
};

static void
test_spoilt (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (spoilt); i++)
    {
      g_autofree char *text = spoil (whole, spoilt[i].from, spoilt[i].to);

      g_test_message ("%s -> %s", spoilt[i].from, spoilt[i].to);
      assert_refused (text, BF_PART_ERROR_MEMBER, spoilt[i].message);
    }
}

static void
test_format (void)
{
  const struct
  {
    const char *from, *to;
    int code;
    const char *message;
  } cases[] = {
    { "\"benchfold-part\"", "\"other-part\"", BF_PART_ERROR_FORMAT,
      "format: not a part file; expected \"benchfold-part\"" },
    { "\"benchfold-part\"", "1", BF_PART_ERROR_FORMAT,
      "format: not a part file; expected \"benchfold-part\"" },
    { "\"format\": \"benchfold-part\", ", "", BF_PART_ERROR_FORMAT,
      "format: not a part file; expected \"benchfold-part\"" },
    { "\"version\": 1", "\"version\": 2", BF_PART_ERROR_FORMAT,
      "version: made by a newer program (version 2); this one reads up to 1" },
    { "\"version\": 1", "\"version\": 0", BF_PART_ERROR_MEMBER,
      "version: expected a version number from 1 to 2147483647, found 0" },
    { "\"version\": 1", "\"version\": 1.5", BF_PART_ERROR_MEMBER,
      "version: expected a whole number, found 1.5" },
    { "\"version\": 1", "\"version\": \"1\"", BF_PART_ERROR_MEMBER,
      "version: expected a version number, found \"1\"" },
    { "\"version\": 1, ", "", BF_PART_ERROR_MEMBER, "version: missing; expected a version number" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *text = spoil (whole, cases[i].from, cases[i].to);

      assert_refused (text, cases[i].code, cases[i].message);
    }
  assert_refused ("[]", BF_PART_ERROR_FORMAT, "not a part file; expected an object");
  assert_refused ("null", BF_PART_ERROR_FORMAT, "not a part file; expected an object");
}

static void
test_missing (void)
{
  g_autofree char *no_metal = spoil (least, "\"metal\"", "\"metall\"");
  g_autofree char *no_base = spoil (least, "\"base\"", "\"Base\"");
  g_autofree char *no_outline = spoil (least, "\"outline\"", "\"out\"");

  assert_refused (no_metal, BF_PART_ERROR_MEMBER,
                  "metal: missing; expected an object with a thickness");
  assert_refused (no_base, BF_PART_ERROR_MEMBER,
                  "base: missing; expected an object with an outline");
  assert_refused (no_outline, BF_PART_ERROR_MEMBER,
                  "base.outline: missing; expected a list of points");
}

static void
test_rings_of_flanges (void)
{
  const struct
  {
    const char *flanges, *message;
  } cases[] = {
    { "{\"id\": \"a\", \"on\": \"a\", \"edge\": \"tip\", \"length\": 9}",
      "flanges[0].on: \"a\" hangs on itself, by way of \"a\"" },
    { "{\"id\": \"z\", \"edge\": 0, \"length\": 9},"
      "{\"id\": \"a\", \"on\": \"b\", \"edge\": \"tip\", \"length\": 9},"
      "{\"id\": \"b\", \"on\": \"a\", \"edge\": \"end\", \"length\": 9}",
      "flanges[1].on: \"a\" hangs on itself, by way of \"b\"" },
    /* c leads into the ring but is not in it. */
    { "{\"id\": \"c\", \"on\": \"a\", \"edge\": \"tip\", \"length\": 9},"
      "{\"id\": \"a\", \"on\": \"b\", \"edge\": \"tip\", \"length\": 9},"
      "{\"id\": \"b\", \"on\": \"a\", \"edge\": \"end\", \"length\": 9}",
      "flanges[1].on: \"a\" hangs on itself, by way of \"b\"" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *members = g_strdup_printf ("\"flanges\": [%s], \"base\"", cases[i].flanges);
      g_autofree char *text = spoil (least, "\"base\"", members);

      assert_refused (text, BF_PART_ERROR_MEMBER, cases[i].message);
    }
}

/* A child may stand before its parent in the file, and a chain may be long. */
static void
test_any_order (void)
{
  GString *text = g_string_new ("\"flanges\": [");
  g_autofree char *members = NULL;
  g_autofree char *file = NULL;
  g_autoptr (BfPart) part = NULL;

  for (int i = 200; i > 0; i--)
    g_string_append_printf (
        text, "{\"id\": \"f%d\", \"on\": \"f%d\", \"edge\": \"tip\", \"length\": 9},", i, i - 1);
  g_string_append (text, "{\"id\": \"f0\", \"edge\": 0, \"length\": 9}], \"base\"");
  members = g_string_free (text, FALSE);
  file = spoil (least, "\"base\"", members);
  part = read_part (file);
  g_assert_cmpuint (bf_part_n_flanges (part), ==, 201);
}

static void
test_corners_twice (void)
{
  g_autofree char *twice =
      spoil (least, "\"base\"", "\"corners\": [{\"at\": 1}, {\"at\": 1, \"gap\": 1}], \"base\"");
  g_autofree char *base_twice =
      spoil (least, "\"outline\"", "\"corners\": [{\"at\": 0}, {\"at\": 0}], \"outline\"");

  assert_refused (twice, BF_PART_ERROR_MEMBER, "corners[1].at: this corner stands there twice");
  assert_refused (base_twice, BF_PART_ERROR_MEMBER,
                  "base.corners[1].at: this corner stands there twice");
}

static void
test_too_many (void)
{
  GString *points = g_string_new ("[[0,0],[200,0],");
  g_autofree char *outline = NULL;
  g_autofree char *text = NULL;

  for (int i = 0; i < BF_PART_FILE_MAX_ITEMS - 1; i++)
    g_string_append_printf (points, "[%d,%d],", 5000 - i, i + 1);
  g_string_append (points, "[0,100]]");
  outline = g_string_free (points, FALSE);
  text = spoil (least, "[[0,0],[200,0],[200,120],[0,120]]", outline);
  assert_refused (text, BF_PART_ERROR_TOO_LARGE,
                  "base.outline: expected at most 5000 items, found 5002");
}

/* A long or many-lined text in the file does not make a long or many-lined message. */
static void
test_messages_on_one_line (void)
{
  const char *nasty = "\"units\": \"a\\nb\\t\\u0007cccccccccccccccccccccccccccccccccccccccccccc\"";
  g_autofree char *text = spoil (whole, "\"units\": \"in\"", nasty);
  g_autofree char *id = spoil (whole, "\"id\": \"front\"", "\"id\": \"li\\nne\"");

  assert_refused (text, BF_PART_ERROR_MEMBER,
                  "units: expected one of mm, in, found \"a b  "
                  "ccccccccccccccccccccccccccccccccccc…\"");
  assert_refused (id, BF_PART_ERROR_MEMBER,
                  "flanges[1].on: expected \"base\" or a flange's id, found \"front\"");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/part-read/head", test_head);
  g_test_add_func ("/part-read/bend", test_bend);
  g_test_add_func ("/part-read/flanges", test_flanges);
  g_test_add_func ("/part-read/corners", test_corners);
  g_test_add_func ("/part-read/openings", test_openings);
  g_test_add_func ("/part-read/least", test_least);
  g_test_add_func ("/part-read/implied-rule", test_implied_rule);
  g_test_add_func ("/part-read/valid", test_valid);
  g_test_add_func ("/part-read/text-length", test_text_length);
  g_test_add_func ("/part-read/spoilt", test_spoilt);
  g_test_add_func ("/part-read/format", test_format);
  g_test_add_func ("/part-read/missing", test_missing);
  g_test_add_func ("/part-read/rings-of-flanges", test_rings_of_flanges);
  g_test_add_func ("/part-read/any-order", test_any_order);
  g_test_add_func ("/part-read/corners-twice", test_corners_twice);
  g_test_add_func ("/part-read/too-many", test_too_many);
  g_test_add_func ("/part-read/messages-on-one-line", test_messages_on_one_line);
  return g_test_run ();
}
