/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/report.h"

#include "core/part-file.h"

/* One flange on a plate with a round hole and a slot of 30 × 8. */
static const char plate[] =
    "{\"format\": \"benchfold-part\", \"version\": 1, \"name\": \"Plate \\\"A\\\"\","
    " \"metal\": {\"material\": \"mild-steel\", \"thickness\": 2}, \"cutting\": {\"by\": "
    "\"service\"},"
    " \"bend\": {\"way\": \"brake\", \"inside_radius\": 3,"
    "            \"allowance\": {\"rule\": \"k-factor\", \"k\": 0.4}},"
    " \"base\": {\"outline\": [[10, 0], [110, 0], [110, 60], [10, 60]]},"
    " \"flanges\": [{\"id\": \"wall\", \"on\": \"base\", \"edge\": 0, \"length\": 30,"
    "                \"angle\": 90, \"turn\": \"up\"}],"
    " \"openings\": [{\"on\": \"base\", \"shape\": \"round\", \"at\": [40, 30],"
    "                 \"diameter\": 10},"
    "                {\"on\": \"base\", \"shape\": \"slot\", \"at\": [80, 30],"
    "                 \"length\": 30, \"width\": 8, \"angle\": 0}]}";

/* By hand, from the rules: 90° of R = 3, t = 2, K = 0.4. */
#define ALLOWANCE_MM (G_PI_2 * (3.0 + 0.4 * 2.0))
#define DEDUCTION_MM (2.0 * (3.0 + 2.0) - ALLOWANCE_MM)

static BfFold *
fold_plate (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (plate, -1, &error);

  g_assert_no_error (error);
  return bf_fold (part);
}

static JsonNode *
report_of (const BfFold *fold, const BfTemplate *template)
{
  g_autofree char *text = bf_report_text (fold, template);
  g_autoptr (GError) error = NULL;
  JsonNode *root = json_from_string (text, &error);

  g_assert_no_error (error);
  g_assert_true (g_str_has_suffix (text, "}\n"));
  return root;
}

static JsonObject *
member_object (JsonNode *root, const char *name)
{
  return json_object_get_object_member (json_node_get_object (root), name);
}

static JsonObject *
first_of (JsonNode *root, const char *name)
{
  JsonArray *list = json_object_get_array_member (json_node_get_object (root), name);

  g_assert_cmpuint (json_array_get_length (list), >, 0);
  return json_array_get_object_element (list, 0);
}

static void
assert_members (JsonObject *object, const char *wanted)
{
  g_autoptr (GString) found = g_string_new (NULL);
  JsonObjectIter iter;
  const char *name;

  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, NULL))
    g_string_append_printf (found, "%s%s", found->len > 0 ? " " : "", name);
  g_assert_cmpstr (found->str, ==, wanted);
}

static void
assert_number (JsonObject *object, const char *name, double wanted)
{
  g_assert_cmpfloat_with_epsilon (json_object_get_double_member (object, name), wanted, 1e-9);
}

static void
test_members (void)
{
  g_autoptr (BfFold) fold = fold_plate ();
  g_autoptr (JsonNode) root = report_of (fold, NULL);

  assert_members (json_node_get_object (root),
                  "format version name blank formed bends reliefs seams pages checks");
  assert_members (member_object (root, "blank"),
                  "width height area area_before_cuts mass cut_length rings arcs");
  assert_members (member_object (root, "formed"), "size volume");
  assert_members (first_of (root, "bends"),
                  "flange angle turn way inside_radius k allowance setback deduction line moment "
                  "force overbend kept slots");
}

static void
test_blank (void)
{
  g_autoptr (BfFold) fold = fold_plate ();
  g_autoptr (JsonNode) root = report_of (fold, NULL);
  JsonObject *blank = member_object (root, "blank");
  double height = 60.0 + 30.0 - DEDUCTION_MM;
  double before = 100.0 * height;
  double area = before - G_PI * 25.0 - (22.0 * 8.0 + G_PI * 16.0);

  assert_number (blank, "width", 100.0);
  assert_number (blank, "height", height);
  assert_number (blank, "area_before_cuts", before);
  assert_number (blank, "area", area);
  assert_number (blank, "mass", area * 2.0 * 7850e-9);
  assert_number (blank, "cut_length", 200.0 + 2.0 * height + G_PI * 10.0 + 2.0 * 22.0 + G_PI * 8.0);
}

static BfVec2
point_of (JsonArray *ring, guint i)
{
  JsonArray *point = json_array_get_array_element (ring, i);

  return bf_vec2 (json_array_get_double_element (point, 0),
                  json_array_get_double_element (point, 1));
}

static double
ring_area (JsonArray *ring)
{
  guint n = json_array_get_length (ring);
  double area = 0.0;

  for (guint i = 0; i < n; i++)
    area += bf_vec2_cross (point_of (ring, i), point_of (ring, (i + 1) % n)) / 2.0;
  return area;
}

/* The ring whose points all lie that far from the centre, or NULL. */
static JsonArray *
find_circle (JsonArray *rings, BfVec2 centre, double radius)
{
  for (guint i = 0; i < json_array_get_length (rings); i++)
    {
      JsonArray *ring = json_array_get_array_element (rings, i);
      guint on_circle = 0;

      for (guint k = 0; k < json_array_get_length (ring); k++)
        on_circle += fabs (bf_vec2_distance (point_of (ring, k), centre) - radius) < 1e-9 ? 1 : 0;
      if (on_circle == json_array_get_length (ring))
        return ring;
    }
  return NULL;
}

/* Outside counter-clockwise, holes clockwise, no point twice. */
static void
test_rings (void)
{
  g_autoptr (BfFold) fold = fold_plate ();
  g_autoptr (JsonNode) root = report_of (fold, NULL);
  JsonArray *rings = json_object_get_array_member (member_object (root, "blank"), "rings");

  g_assert_cmpuint (json_array_get_length (rings), ==, 3);
  for (guint i = 0; i < 3; i++)
    {
      JsonArray *ring = json_array_get_array_element (rings, i);
      guint last = json_array_get_length (ring) - 1;

      g_assert_cmpint (ring_area (ring) > 0.0, ==, i == 0);
      g_assert_cmpfloat (bf_vec2_distance (point_of (ring, 0), point_of (ring, last)), >, 0.01);
    }
}

/* The points of a flattened arc lie on it, and no chord strays further than was said. */
static void
test_flattened (void)
{
  g_autoptr (BfFold) fold = fold_plate ();
  g_autoptr (JsonNode) root = report_of (fold, NULL);
  JsonArray *rings = json_object_get_array_member (member_object (root, "blank"), "rings");
  BfVec2 centre = bf_vec2 (40.0, 30.0);
  JsonArray *hole = find_circle (rings, centre, 5.0);
  guint n;

  g_assert_nonnull (hole);
  n = json_array_get_length (hole);
  g_assert_cmpuint (n, >=, 20);
  for (guint i = 0; i < n; i++)
    {
      BfVec2 both = bf_vec2_add (point_of (hole, i), point_of (hole, (i + 1) % n));
      double from_centre = bf_vec2_distance (bf_vec2_scale (both, 0.5), centre);

      g_assert_cmpfloat (from_centre, >=, 5.0 - BF_REPORT_SAGITTA_MM - 1e-12);
    }
}

static JsonObject *
find_arc (JsonArray *arcs, double x)
{
  for (guint i = 0; i < json_array_get_length (arcs); i++)
    {
      JsonObject *arc = json_array_get_object_element (arcs, i);
      JsonArray *at = json_object_get_array_member (arc, "at");

      g_assert_cmpfloat_with_epsilon (json_array_get_double_element (at, 1), 30.0, 1e-9);
      if (fabs (json_array_get_double_element (at, 0) - x) < 1e-9)
        return arc;
    }
  g_assert_not_reached ();
}

/* The hole is one whole circle; the slot's ends are two half circles, told counter-clockwise
 * although holes run clockwise. */
static void
test_arcs (void)
{
  static const double wanted[][4] = {
    { 40.0, 5.0, 0.0, 360.0 },
    { 69.0, 4.0, 90.0, 270.0 },
    { 91.0, 4.0, 270.0, 450.0 },
  };
  g_autoptr (BfFold) fold = fold_plate ();
  g_autoptr (JsonNode) root = report_of (fold, NULL);
  JsonArray *arcs = json_object_get_array_member (member_object (root, "blank"), "arcs");

  g_assert_cmpuint (json_array_get_length (arcs), ==, G_N_ELEMENTS (wanted));
  for (guint i = 0; i < G_N_ELEMENTS (wanted); i++)
    {
      JsonObject *arc = find_arc (arcs, wanted[i][0]);

      assert_members (arc, "at radius from to");
      assert_number (arc, "radius", wanted[i][1]);
      assert_number (arc, "from", wanted[i][2]);
      assert_number (arc, "to", wanted[i][3]);
    }
}

static void
test_bend (void)
{
  g_autoptr (BfFold) fold = fold_plate ();
  g_autoptr (JsonNode) root = report_of (fold, NULL);
  JsonObject *bend = first_of (root, "bends");
  BfVec2 start = point_of (json_object_get_array_member (bend, "line"), 0);
  BfVec2 end = point_of (json_object_get_array_member (bend, "line"), 1);

  g_assert_cmpstr (json_object_get_string_member (bend, "flange"), ==, "wall");
  g_assert_cmpstr (json_object_get_string_member (bend, "turn"), ==, "up");
  g_assert_cmpstr (json_object_get_string_member (bend, "way"), ==, "brake");
  assert_number (bend, "angle", 90.0);
  assert_number (bend, "inside_radius", 3.0);
  assert_number (bend, "k", 0.4);
  assert_number (bend, "allowance", ALLOWANCE_MM);
  assert_number (bend, "setback", 5.0);
  assert_number (bend, "deduction", DEDUCTION_MM);
  assert_number (bend, "kept", 1.0);
  /* The bend line is the middle of the zone that begins where the base's flat ends. */
  g_assert_cmpfloat_with_epsilon (start.y, 5.0 - ALLOWANCE_MM / 2.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (start.x, 10.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (end.x, 110.0, 1e-9);
  g_assert_cmpuint (json_array_get_length (json_object_get_array_member (bend, "slots")), ==, 0);
}

/* What is not worked out is null, not 0 and not NaN, which is no JSON. */
static void
test_null (void)
{
  g_autoptr (BfFold) fold = fold_plate ();
  g_autoptr (JsonNode) root = NULL;
  BfBendResult *bend = &g_array_index (fold->bends, BfBendResult, 0);

  bend->force_n = NAN;
  fold->formed.volume_mm3 = NAN;
  fold->blank.mass_kg = NAN;
  root = report_of (fold, NULL);
  g_assert_true (json_object_get_null_member (first_of (root, "bends"), "force"));
  g_assert_true (json_object_get_null_member (member_object (root, "formed"), "volume"));
  g_assert_true (json_object_get_null_member (member_object (root, "blank"), "mass"));
  g_assert_true (json_object_get_null_member (json_node_get_object (root), "pages"));
}

static void
test_pages (void)
{
  g_autoptr (BfFold) fold = fold_plate ();
  BfTemplateOptions options = { .paper = bf_paper_find ("A4") };
  g_autoptr (BfTemplate) template = bf_template_new (fold, &options);
  g_autoptr (JsonNode) root = report_of (fold, template);
  JsonArray *pages = json_object_get_array_member (json_node_get_object (root), "pages");
  JsonObject *page = first_of (root, "pages");

  g_assert_cmpuint (json_array_get_length (pages), ==, bf_template_n_pages (template));
  assert_members (page, "label turn origin");
  g_assert_cmpstr (json_object_get_string_member (page, "label"), ==, "A1");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/write/report/members", test_members);
  g_test_add_func ("/write/report/blank", test_blank);
  g_test_add_func ("/write/report/rings", test_rings);
  g_test_add_func ("/write/report/flattened", test_flattened);
  g_test_add_func ("/write/report/arcs", test_arcs);
  g_test_add_func ("/write/report/bend", test_bend);
  g_test_add_func ("/write/report/null", test_null);
  g_test_add_func ("/write/report/pages", test_pages);
  return g_test_run ();
}
