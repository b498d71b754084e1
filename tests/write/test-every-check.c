/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Every check that a part can be given: a part file that brings it out, its severity, its row in
 * the report, and that the fix, where one is offered, cures it. */

#include <string.h>

#include "core/part-file.h"
#include "fold/fix-find.h"
#include "write/report.h"

#define FRONT(members) "\"flanges\": [{\"id\": \"front\", \"edge\": 0, \"length\": 40" members "}]"
#define WALL(id, edge) "{\"id\": \"" id "\", \"edge\": " edge ", \"length\": 40}"
#define CORNER(members)                                                                            \
  "\"flanges\": [" WALL ("front", "0") ", " WALL (                                                 \
      "right", "1") "],"                                                                           \
                    " \"corners\": [{\"on\": \"base\", \"at\": 1, " members "}]"
#define HOLE(at) "{\"on\": \"base\", \"shape\": \"round\", \"at\": " at ", \"diameter\": 6}"

/* A plate of 200 × 120 in mild steel 1.5 mm, but for what a row says. members come last in the
 * file, less what stands in the plate already. */
static const struct
{
  const char *code;
  BfSeverity severity;
  gboolean has_fix;
  double at[2];        /* where a row of the window flies to, on the blank, to 3 mm */
  const char *outline; /* NULL for the plate's */
  const char *metal;   /* NULL for the plate's */
  const char *members;
} rows[] = {
  { "outline-crosses-itself",
    BF_SEVERITY_MUST_FIX,
    FALSE,
    { 96, 62.4 },
    "[[0,0],[200,0],[0,120],[200,130]]",
    NULL,
    "\"notes\": \"\"" },
  { "flange-too-short",
    BF_SEVERITY_MUST_FIX,
    TRUE,
    { 100, 0 },
    NULL,
    NULL,
    "\"flanges\": [{\"id\": \"front\", \"edge\": 0, \"length\": 2}]" },
  { "flange-off-edge",
    BF_SEVERITY_MUST_FIX,
    TRUE,
    { 145, 0 },
    NULL,
    NULL,
    FRONT (", \"start\": 150, \"end\": 60") },
  { "blank-overlaps-itself",
    BF_SEVERITY_MUST_FIX,
    TRUE,
    { 100, 90.25 },
    "[[0,0],[200,0],[200,120],[130,120],[130,60],[70,60],[70,120],[0,120]]",
    NULL,
    "\"flanges\": [" WALL ("one", "3") ", " WALL ("two", "5") "]" },
  { "faces-collide",
    BF_SEVERITY_MUST_FIX,
    TRUE,
    { 220, 0 },
    NULL,
    NULL,
    CORNER ("\"join\": \"untrimmed\"") },
  { "radius-too-tight",
    BF_SEVERITY_LOOK_AT,
    TRUE,
    { 100, 0 },
    NULL,
    "\"material\": \"aluminium-6061-t6\", \"thickness\": 1.5",
    FRONT (", \"bend\": {\"inside_radius\": 0.5}") },
  { "relief-missing",
    BF_SEVERITY_LOOK_AT,
    TRUE,
    { 200, 0 },
    NULL,
    NULL,
    CORNER ("\"relief\": {\"shape\": \"none\"}") },
  { "relief-too-small",
    BF_SEVERITY_LOOK_AT,
    TRUE,
    { 200, 0 },
    NULL,
    NULL,
    CORNER ("\"relief\": {\"shape\": \"round\", \"diameter\": 2}") },
  { "opening-near-bend",
    BF_SEVERITY_LOOK_AT,
    TRUE,
    { 100, 7.5 },
    NULL,
    NULL,
    FRONT ("") ", \"openings\": [" HOLE ("[100, 7.5]") "]" },
  { "opening-near-edge",
    BF_SEVERITY_LOOK_AT,
    TRUE,
    { 100, 119.5 },
    NULL,
    NULL,
    "\"openings\": [" HOLE ("[100, 116]") "]" },
  { "opening-off-face",
    BF_SEVERITY_MUST_FIX,
    TRUE,
    { 199, 60 },
    NULL,
    NULL,
    "\"openings\": [" HOLE ("[199, 60]") "]" },
  { "bridge-too-small",
    BF_SEVERITY_MUST_FIX,
    TRUE,
    { 100, 0 },
    NULL,
    NULL,
    FRONT (", \"bend\": {\"way\": \"slots\", \"slots\": {\"slot\": 50, \"bridge\": 5}}") },
  { "slot-not-cuttable",
    BF_SEVERITY_LOOK_AT,
    TRUE,
    { 100, 0 },
    NULL,
    NULL,
    FRONT (", \"bend\": {\"way\": \"slots\", \"slots\": {\"slot\": 20, \"bridge\": 12}}") },
  { "force-too-high",
    BF_SEVERITY_MUST_FIX,
    TRUE,
    { 100, 0 },
    NULL,
    NULL,
    FRONT (", \"bend\": {\"way\": \"slots\", \"hand\": {\"limit\": 40, \"lever\": 40}}") },
  { "bend-along-grain",
    BF_SEVERITY_LOOK_AT,
    FALSE,
    { 100, 0 },
    NULL,
    "\"thickness\": 1.5, \"grain\": 10",
    FRONT ("") },
  { "blank-over-stock",
    BF_SEVERITY_LOOK_AT,
    FALSE,
    { 0, 0 },
    "[[0,0],[3500,0],[3500,120],[0,120]]",
    NULL,
    "\"notes\": \"\"" },
  { "strip-too-thin",
    BF_SEVERITY_LOOK_AT,
    FALSE,
    { 103.5, 60 },
    NULL,
    NULL,
    "\"openings\": [" HOLE ("[100, 60]") ", " HOLE ("[107, 60]") "]" },
  { "sharp-edge", BF_SEVERITY_GOOD_TO_KNOW, FALSE, { 100, -37 }, NULL, NULL, FRONT ("") },
  { "sealed-volume",
    BF_SEVERITY_LOOK_AT,
    FALSE,
    { 0, 0 },
    NULL,
    NULL,
    "\"flanges\": [" WALL ("front", "0") ", " WALL ("right", "1") ", " WALL (
        "back", "2") ", " WALL ("left", "3") ", {\"id\": \"lid\", \"on\": \"front\", \"edge\": "
                                             "\"tip\", \"length\": 119,"
                                             " \"angle\": 90}]" },
  { "will-leak",
    BF_SEVERITY_GOOD_TO_KNOW,
    FALSE,
    { 0, 0 },
    NULL,
    NULL,
    "\"flanges\": [" WALL ("front", "0") ", " WALL ("right", "1") ", " WALL (
        "back", "2") ", " WALL ("left", "3") "]" },
  { "cannot-reach",
    BF_SEVERITY_LOOK_AT,
    FALSE,
    { 100, 0 },
    "[[0,0],[200,0],[200,12],[0,12]]",
    NULL,
    "\"flanges\": [{\"id\": \"front\", \"edge\": 0, \"length\": 60},"
    " {\"id\": \"back\", \"edge\": 2, \"length\": 60}]" },
};

/* ---- looking ------------------------------------------------------------------------------- */

static BfPart *
part_of (guint row)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *text = g_strdup_printf (
      "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {%s},"
      " \"base\": {\"outline\": %s}, %s}",
      rows[row].metal != NULL ? rows[row].metal : "\"thickness\": 1.5",
      rows[row].outline != NULL ? rows[row].outline : "[[0,0],[200,0],[200,120],[0,120]]",
      rows[row].members);
  BfPart *part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  return part;
}

static const BfCheck *
find (const BfFold *fold, const char *code, const char *where)
{
  for (guint i = 0; i < fold->checks->len; i++)
    {
      const BfCheck *check = bf_fold_check (fold, i);

      if (g_str_equal (check->code, code) &&
          (where == NULL || g_strcmp0 (check->where, where) == 0))
        return check;
    }
  return NULL;
}

static const char *
severity_word (BfSeverity severity)
{
  static const char *const words[] = { "must-fix", "look-at", "good-to-know" };

  return words[severity];
}

/* TRUE where the report has that check as the fold has it. */
static gboolean
is_reported (const BfFold *fold, const BfCheck *check)
{
  g_autofree char *text = bf_report_text (fold, NULL);
  g_autoptr (JsonNode) root = json_from_string (text, NULL);
  JsonArray *checks = json_object_get_array_member (json_node_get_object (root), "checks");

  for (guint i = 0; i < json_array_get_length (checks); i++)
    {
      JsonObject *row = json_array_get_object_element (checks, i);

      if (g_str_equal (json_object_get_string_member (row, "code"), check->code) &&
          g_str_equal (json_object_get_string_member (row, "where"), check->where) &&
          g_str_equal (json_object_get_string_member (row, "message"), check->message) &&
          g_str_equal (json_object_get_string_member (row, "severity"),
                       severity_word (check->severity)))
        return TRUE;
    }
  return FALSE;
}

/* ---- the tests ----------------------------------------------------------------------------- */

static void
test_reported (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = part_of (i);
      g_autoptr (BfFold) fold = bf_fold (part);
      const BfCheck *check = find (fold, rows[i].code, NULL);

      g_test_message ("%s: %s", rows[i].code, check != NULL ? check->message : "not found");
      g_assert_nonnull (check);
      g_assert_cmpint (check->severity, ==, rows[i].severity);
      g_assert_true (is_reported (fold, check));
      g_assert_cmpfloat_with_epsilon (check->place.x, rows[i].at[0], 3.0);
      g_assert_cmpfloat_with_epsilon (check->place.y, rows[i].at[1], 3.0);
      g_assert_cmpuint (strlen (check->message), >, 10);
    }
}

/* The fix that the window offers leaves no such check at that place, and no must-fix that was not
 * there before. */
static void
test_cured (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = part_of (i), fixed = NULL;
      g_autoptr (BfFold) fold = bf_fold (part), after = NULL;
      const BfCheck *check = find (fold, rows[i].code, NULL);
      BfFix fix = bf_fix_find (fold, check);
      g_autoptr (GError) error = NULL;

      g_test_message ("%s: fix %d", rows[i].code, fix.kind);
      g_assert_cmpint (fix.kind != BF_FIX_NONE, ==, rows[i].has_fix);
      if (!rows[i].has_fix)
        continue;
      fixed = bf_fix_apply (fold->asked, &fix, &error);
      g_assert_no_error (error);
      after = bf_fold (fixed);
      g_assert_null (find (after, rows[i].code, check->where));
      g_assert_cmpuint (bf_fold_count_checks (after, BF_SEVERITY_MUST_FIX), <=,
                        bf_fold_count_checks (fold, BF_SEVERITY_MUST_FIX));
    }
}

/* A sound part brings out none of them but what is true of all parts that bend. */
static void
test_sound (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = bf_part_from_text (
      "{\"format\": \"benchfold-part\", \"version\": 1,"
      " \"metal\": {\"thickness\": 1.5},"
      " \"base\": {\"outline\": [[0,0],[200,0],[200,120],[0,120]]}, " FRONT ("") "}",
      -1, &error);
  g_autoptr (BfFold) fold = bf_fold (part);

  for (guint i = 0; i < fold->checks->len; i++)
    g_assert_cmpstr (bf_fold_check (fold, i)->code, ==, "sharp-edge");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/every-check/reported", test_reported);
  g_test_add_func ("/every-check/cured", test_cured);
  g_test_add_func ("/every-check/sound", test_sound);
  return g_test_run ();
}
