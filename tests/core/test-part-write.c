/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <glib/gstdio.h>

#include "core/defaults.h"
#include "core/part-file.h"
#include "comma-locale.h"
#include "random-part.h"

#define N_RANDOM 400

static BfPart *
read_part (const char *text)
{
  g_autoptr (GError) error = NULL;
  BfPart *part = bf_part_from_text (text, -1, &error);

  g_assert_no_error (error);
  return part;
}

static void
assert_number (double a, double b)
{
  if (isnan (a) || isnan (b))
    g_assert_true (isnan (a) && isnan (b));
  else
    g_assert_cmpfloat_with_epsilon (a, b, 1e-15);
}

/* Two bends that fold alike: k and group count where the rule uses them. */
static void
assert_folds_alike (const BfBend *a, const BfBend *b)
{
  g_assert_cmpint (a->way, ==, b->way);
  assert_number (a->inside_radius_mm, b->inside_radius_mm);
  g_assert_cmpint (a->allowance.rule, ==, b->allowance.rule);
  if (a->allowance.rule == BF_ALLOWANCE_HANDBOOK)
    g_assert_cmpint (a->allowance.group, ==, b->allowance.group);
  else if (a->allowance.rule != BF_ALLOWANCE_DIN_6935)
    assert_number (a->allowance.k, b->allowance.k);
  assert_number (a->allowance.k_error, b->allowance.k_error);
  g_assert_cmpstr (a->allowance.trial_id, ==, b->allowance.trial_id);
  g_assert_true (a->corrected == b->corrected);
  assert_number (a->slot_mm, b->slot_mm);
  assert_number (a->bridge_mm, b->bridge_mm);
  assert_number (a->score_left_mm, b->score_left_mm);
  assert_number (a->hand_limit_n, b->hand_limit_n);
  assert_number (a->hand_lever_mm, b->hand_lever_mm);
}

/* Writing a part's defaults out must not change what its flanges fold with. */
static void
test_bends_stay (void)
{
  for (guint32 seed = 1; seed <= N_RANDOM; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autofree char *text = bf_part_to_text (part);
      g_autoptr (BfPart) read = read_part (text);
      BfBend own = bf_part_resolve_bend (part, NULL), again = bf_part_resolve_bend (read, NULL);

      assert_folds_alike (&own, &again);
      g_assert_cmpuint (bf_part_n_flanges (part), ==, bf_part_n_flanges (read));
      for (guint i = 0; i < bf_part_n_flanges (part); i++)
        {
          own = bf_part_resolve_bend (part, bf_part_flange (part, i));
          again = bf_part_resolve_bend (read, bf_part_flange (read, i));
          assert_folds_alike (&own, &again);
        }
    }
}

static void
test_rest_stays (void)
{
  for (guint32 seed = 1; seed <= N_RANDOM; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autofree char *text = bf_part_to_text (part);
      g_autoptr (BfPart) read = read_part (text);

      assert_number (bf_part_kerf_mm (read), bf_part_kerf_mm (part));
      assert_number (bf_part_slack_mm (read), bf_part_slack_mm (part));
      assert_number (bf_part_disc_diameter_mm (read), bf_part_disc_diameter_mm (part));
      for (guint i = 0; i < part->corners->len; i++)
        {
          const BfCorner *was = g_ptr_array_index (part->corners, i);
          const BfCorner *is = g_ptr_array_index (read->corners, i);

          g_assert_cmpint (bf_part_resolve_join (read, is), ==, bf_part_resolve_join (part, was));
          assert_number (bf_part_resolve_gap_mm (read, is), bf_part_resolve_gap_mm (part, was));
          g_assert_cmpint (is->relief, ==, was->relief);
          assert_number (is->relief_size_mm, was->relief_size_mm);
        }
    }
}

/* Once written out, a part is written the same for ever after. */
static void
test_second_time (void)
{
  for (guint32 seed = 1; seed <= N_RANDOM; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autofree char *first = bf_part_to_text (part);
      g_autoptr (BfPart) read = read_part (first);
      g_autofree char *second = bf_part_to_text (read);
      g_autoptr (BfPart) read_again = read_part (second);

      g_assert_cmpstr (first, ==, second);
      assert_same_part (read, read_again, 1e-15);
    }
}

/* A copy holds the same and writes the same. */
static void
test_copy (void)
{
  for (guint32 seed = 1; seed <= 50; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autoptr (BfPart) copy = bf_part_copy (part);
      g_autofree char *before = bf_part_to_text (part);
      g_autofree char *after = NULL;
      BfOpening *opening = g_ptr_array_index (copy->openings, 0);

      assert_same_part (part, copy, 1e-15);
      g_array_index (copy->outline, BfVec2, 0).x += 5.0;
      opening->at_mm.x += 5.0;
      if (opening->points != NULL)
        g_array_set_size (opening->points, 0);
      g_ptr_array_set_size (copy->corners, 0);
      after = bf_part_to_text (part);
      g_assert_cmpstr (before, ==, after);
    }
}

static JsonObject *
parse (const char *text, JsonParser *parser)
{
  g_assert_true (json_parser_load_from_data (parser, text, -1, NULL));
  return json_node_get_object (json_parser_get_root (parser));
}

static const char least[] = "{\"format\": \"benchfold-part\", \"version\": 1,"
                            " \"metal\": {\"thickness\": 2}, \"cutting\": {\"by\": \"service\"},"
                            " \"base\": {\"outline\": [[0,0],[50,0],[50,20],[0,20]]},"
                            " \"flanges\": [{\"id\": \"f\", \"edge\": 1, \"length\": 10,"
                            "  \"start\": 1},"
                            " {\"id\": \"hem\", \"edge\": 3, \"length\": 10, \"angle\": 180},"
                            " {\"id\": \"s\", \"edge\": 0, \"length\": 10,"
                            "  \"bend\": {\"way\": \"slots\"}}]}";

/* Every default that the file leaves out stands in what is written. */
static void
test_defaults_written (void)
{
  g_autoptr (BfPart) part = read_part (least);
  g_autofree char *text = bf_part_to_text (part);
  static const char *const expected[] = {
    "\"name\": \"\"",
    "\"quantity\": 1",
    "\"units\": \"mm\"",
    "\"measure\": \"outside\"",
    "\"metal\": {\"material\": \"mild-steel\", \"thickness\": 2, \"grain\": \"unknown\"}",
    "\"cutting\": {\"by\": \"service\", \"kerf\": 0, \"slack\": 0, \"drills\": \"metric\"}",
    "\"joining\": \"welded\"",
    "\"bend\": {\"way\": \"bar\", \"inside_radius\": 2, \"allowance\": "
    "{\"rule\": \"k-factor\", \"k\": 0.42}}",
    "\"angle\": 90",
    "\"turn\": \"up\"",
    "\"end_taper\": 0",
    "\"start_relief\": \"notch\"",
    "\"bend\": {\"inside_radius\": 0, \"allowance\": {\"rule\": \"k-factor\", \"k\": 0.5}}",
    "\"inside_radius\": 1,",
    "\"corners\": []",
    "\"openings\": []",
    "\"notes\": \"\"",
  };

  for (guint i = 0; i < G_N_ELEMENTS (expected); i++)
    if (strstr (text, expected[i]) == NULL)
      g_error ("%s is not in %s", expected[i], text);
  g_assert_null (strstr (text, "end_relief")); /* it ends at the edge's end */
}

static void
test_member_order (void)
{
  static const char *const order[] = { "\"format\"",   "\"version\"", "\"name\"",    "\"units\"",
                                       "\"measure\"",  "\"metal\"",   "\"cutting\"", "\"joining\"",
                                       "\"bend\"",     "\"base\"",    "\"flanges\"", "\"corners\"",
                                       "\"openings\"", "\"notes\"" };
  g_autoptr (BfPart) part = read_part (least);
  g_autofree char *text = bf_part_to_text (part);
  const char *at = text;

  for (guint i = 0; i < G_N_ELEMENTS (order); i++)
    {
      at = strstr (at, order[i]);
      g_assert_nonnull (at);
    }
}

/* Members that the format does not know, at every level, with a value of every kind. */
static const char strange[] =
    "{\"x\": [1, {\"y\": null}], \"format\": \"benchfold-part\", \"version\": 1,"
    " \"metal\": {\"thickness\": 1, \"x\": \"coil 7\"},"
    " \"cutting\": {\"x\": 1.5},"
    " \"bend\": {\"x\": true, \"allowance\": {\"k\": 0.4, \"x\": 1}, \"slots\": {\"x\": 2},"
    "  \"score\": {\"x\": 3}, \"hand\": {\"x\": 4}},"
    " \"base\": {\"x\": [], \"outline\": [[0,0],[50,0],[50,20],[0,20]],"
    "  \"corners\": [{\"at\": 1, \"x\": 5}]},"
    " \"flanges\": [{\"id\": \"f\", \"edge\": 1, \"length\": 10, \"x\": 6,"
    "  \"bend\": {\"x\": 7, \"allowance\": {\"x\": 8}}}],"
    " \"corners\": [{\"at\": 2, \"x\": 9, \"relief\": {\"x\": 10}}],"
    " \"openings\": [{\"shape\": \"round\", \"at\": [9, 9], \"diameter\": 3, \"x\": 11}]}";

static JsonNode *
find (JsonNode *root, const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (JsonNode) found = json_path_query (path, root, &error);
  JsonArray *list;

  g_assert_no_error (error);
  list = json_node_get_array (found);
  g_assert_cmpuint (json_array_get_length (list), ==, 1);
  return json_array_dup_element (list, 0);
}

static const char *const strange_paths[] = {
  "$.x",
  "$.metal.x",
  "$.cutting.x",
  "$.bend.x",
  "$.bend.allowance.x",
  "$.bend.slots.x",
  "$.bend.score.x",
  "$.bend.hand.x",
  "$.base.x",
  "$.base.corners[0].x",
  "$.flanges[0].x",
  "$.flanges[0].bend.x",
  "$.flanges[0].bend.allowance.x",
  "$.corners[0].x",
  "$.corners[0].relief.x",
  "$.openings[0].x",
};

static void
assert_strange_kept (const char *text)
{
  g_autoptr (JsonParser) before = json_parser_new ();
  g_autoptr (JsonParser) after = json_parser_new ();

  parse (strange, before);
  parse (text, after);
  for (guint i = 0; i < G_N_ELEMENTS (strange_paths); i++)
    {
      g_autoptr (JsonNode) was = find (json_parser_get_root (before), strange_paths[i]);
      g_autoptr (JsonNode) is = find (json_parser_get_root (after), strange_paths[i]);

      g_test_message ("%s", strange_paths[i]);
      g_assert_true (json_node_equal (was, is));
    }
}

static void
test_unknown_kept (void)
{
  g_autoptr (BfPart) part = read_part (strange);
  g_autofree char *text = bf_part_to_text (part);
  g_autoptr (BfPart) again = read_part (text);
  g_autofree char *second = bf_part_to_text (again);

  assert_strange_kept (text);
  assert_strange_kept (second);
}

/* Also through a copy, and after an edit that leaves the objects in place. */
static void
test_unknown_kept_by_edit (void)
{
  g_autoptr (BfPart) part = read_part (strange);
  g_autoptr (BfPart) copy = bf_part_copy (part);
  g_autofree char *text = NULL;

  ((BfFlange *)g_ptr_array_index (copy->flanges, 0))->length_mm = 25;
  copy->metal.thickness_mm = 3;
  text = bf_part_to_text (copy);
  assert_strange_kept (text);
  g_assert_nonnull (strstr (text, "\"length\": 25,"));
}

/* A member that the format knows and the part no longer has must not come back out of what was
 * read. */
static void
test_known_not_kept (void)
{
  g_autoptr (BfPart) part = read_part (strange);
  g_autofree char *text = NULL;
  BfOpening *opening = g_ptr_array_index (part->openings, 0);

  opening->shape = BF_OPENING_SLOT;
  opening->diameter_mm = NAN;
  opening->length_mm = 8;
  opening->width_mm = 3;
  opening->angle_deg = 0;
  text = bf_part_to_text (part);
  g_assert_null (strstr (text, "diameter\": 3"));
  bf_part_unref (read_part (text));
}

/* A part read clockwise is written turned round, and stays so. */
static void
test_clockwise (void)
{
  g_autofree char *clockwise = NULL;
  g_autoptr (BfPart) part = NULL;
  g_autofree char *text = NULL;
  const char *at = strstr (least, "[[0,0]");

  clockwise = g_strdup_printf ("%.*s[[0,0],[0,20],[50,20],[50,0]]%s", (int)(at - least), least,
                               strstr (least, "]]}") + 2);
  part = read_part (clockwise);
  text = bf_part_to_text (part);
  g_assert_nonnull (strstr (text, "[[0, 0], [50, 0], [50, 20], [0, 20]]"));
  g_assert_cmpuint (bf_part_find_flange (part, "f")->edge_index, ==, 2);
  g_assert_cmpuint (bf_part_find_flange (part, "s")->edge_index, ==, 3);
  assert_number (bf_part_find_flange (part, "f")->end_mm, 1);
  assert_number (bf_part_find_flange (part, "f")->start_mm, 0);
}

/* Numbers are written with a point where the person's own sign is a comma. */
static void
test_comma_locale (void)
{
  g_autoptr (BfPart) part = random_part (12);
  g_autofree char *here = bf_part_to_text (part);
  g_autofree char *there = NULL;
  g_autoptr (BfPart) read = NULL;

  if (!comma_locale_begin ())
    return;
  there = bf_part_to_text (part);
  read = read_part (there);
  comma_locale_end ();
  g_assert_cmpstr (here, ==, there);
  g_assert_cmpuint (bf_part_n_flanges (read), ==, bf_part_n_flanges (part));
}

/* A folder that goes with all that is in it. */
static void
remove_folder (const char *path)
{
  GDir *dir = g_dir_open (path, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *child = g_build_filename (path, name, NULL);
      if (g_remove (child) != 0)
        remove_folder (child);
    }
  g_clear_pointer (&dir, g_dir_close);
  g_rmdir (path);
}

typedef struct
{
  char *folder, *path;
  BfPart *part;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer unused)
{
  (void)unused;
  fixture->folder = g_dir_make_tmp ("benchfold-XXXXXX", NULL);
  g_assert_nonnull (fixture->folder);
  fixture->path = g_build_filename (fixture->folder, "Ablage ü.benchfold", NULL);
  fixture->part = random_part (5);
}

static void
tear_down (Fixture *fixture, gconstpointer unused)
{
  (void)unused;
  remove_folder (fixture->folder);
  g_free (fixture->folder);
  g_free (fixture->path);
  bf_part_unref (fixture->part);
}

static gboolean
save (const BfPart *part, const char *path, GError **error)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);

  return bf_part_save (part, file, error);
}

static void
assert_file (const char *path, const BfPart *part)
{
  g_autofree char *text = bf_part_to_text (part);
  g_autofree char *found = NULL;

  g_assert_true (g_file_get_contents (path, &found, NULL, NULL));
  g_assert_cmpstr (found, ==, text);
}

static guint
count_files (const char *folder)
{
  GDir *dir = g_dir_open (folder, 0, NULL);
  guint n = 0;

  while (g_dir_read_name (dir) != NULL)
    n++;
  g_dir_close (dir);
  return n;
}

static void
test_save (Fixture *fixture, gconstpointer unused)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = g_file_new_for_path (fixture->path);
  g_autoptr (BfPart) other = random_part (6);
  g_autoptr (BfPart) loaded = NULL;

  (void)unused;
  g_assert_true (save (fixture->part, fixture->path, &error));
  g_assert_no_error (error);
  assert_file (fixture->path, fixture->part);
  g_assert_true (save (other, fixture->path, &error));
  assert_file (fixture->path, other);
  loaded = bf_part_load (file, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (bf_part_n_flanges (loaded), ==, bf_part_n_flanges (other));
  g_assert_cmpuint (count_files (fixture->folder), ==, 1); /* no leavings */
}

/* The link stays a link and the file it points to is the new one. */
static void
test_save_through_link (Fixture *fixture, gconstpointer unused)
{
  g_autofree char *link = g_build_filename (fixture->folder, "link.benchfold", NULL);
  g_autofree char *dangling = g_build_filename (fixture->folder, "dangling.benchfold", NULL);
  g_autofree char *goal = g_build_filename (fixture->folder, "goal.benchfold", NULL);
  g_autoptr (GError) error = NULL;

  (void)unused;
  g_assert_true (g_file_set_contents (fixture->path, "old", -1, NULL));
  g_assert_cmpint (symlink ("Ablage ü.benchfold", link), ==, 0);
  g_assert_cmpint (symlink ("goal.benchfold", dangling), ==, 0);
  g_assert_true (save (fixture->part, link, &error));
  g_assert_true (save (fixture->part, dangling, &error));
  g_assert_no_error (error);
  g_assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
  g_assert_true (g_file_test (dangling, G_FILE_TEST_IS_SYMLINK));
  assert_file (fixture->path, fixture->part);
  assert_file (goal, fixture->part);
}

static void
test_save_keeps_mode (Fixture *fixture, gconstpointer unused)
{
  GStatBuf status;

  (void)unused;
  g_assert_true (g_file_set_contents (fixture->path, "old", -1, NULL));
  g_assert_cmpint (g_chmod (fixture->path, 0600), ==, 0);
  g_assert_true (save (fixture->part, fixture->path, NULL));
  g_assert_cmpint (g_stat (fixture->path, &status), ==, 0);
  g_assert_cmpint (status.st_mode & 0777, ==, 0600);
}

/* The temporary file that a save needs cannot be made where its name would be too long; nor can a
 * file take the place of a folder. Neither leaves anything changed. */
static void
test_save_fails (Fixture *fixture, gconstpointer unused)
{
  g_autofree char *missing = g_build_filename (fixture->folder, "no", "part.benchfold", NULL);
  g_autofree char *name = g_strnfill (252, 'n');
  g_autofree char *longest = g_build_filename (fixture->folder, name, NULL);
  g_autofree char *found = NULL;
  g_autofree char *taken = g_build_filename (fixture->folder, "taken", NULL);
  const char *paths[] = { missing, longest, taken };

  (void)unused;
  g_assert_true (
      g_file_set_contents_full (longest, "old", -1, G_FILE_SET_CONTENTS_NONE, 0644, NULL));
  g_assert_cmpint (g_mkdir (taken, 0755), ==, 0);
  for (guint i = 0; i < G_N_ELEMENTS (paths); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_false (save (fixture->part, paths[i], &error));
      g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_WRITE);
      g_assert_cmpuint (strlen (error->message), >, 5);
    }
  g_assert_true (g_file_get_contents (longest, &found, NULL, NULL));
  g_assert_cmpstr (found, ==, "old");
  g_assert_cmpuint (count_files (fixture->folder), ==, 2);
}

static void
test_load_fails (Fixture *fixture, gconstpointer unused)
{
  g_autofree char *pipe = g_build_filename (fixture->folder, "pipe", NULL);
  const struct
  {
    const char *path;
    int code;
    const char *message;
  } cases[] = {
    { fixture->path, BF_PART_ERROR_READ, "there is no such file" },
    { fixture->folder, BF_PART_ERROR_READ, "this is a folder, not a file" },
    { "/dev/zero", BF_PART_ERROR_READ, "this is not an ordinary file" },
    { pipe, BF_PART_ERROR_READ, "this is not an ordinary file" },
  };

  (void)unused;
  g_assert_cmpint (mkfifo (pipe, 0600), ==, 0);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GFile) file = g_file_new_for_path (cases[i].path);
      g_autoptr (GError) error = NULL;

      g_assert_null (bf_part_load (file, &error));
      g_assert_error (error, BF_PART_ERROR, cases[i].code);
      g_assert_cmpstr (error->message, ==, cases[i].message);
    }
}

static void
test_load_content_fails (Fixture *fixture, gconstpointer unused)
{
  const gsize size = BF_PART_FILE_MAX_BYTES + 1000;
  g_autofree char *large = g_strnfill (size, ' ');
  g_autoptr (GFile) file = g_file_new_for_path (fixture->path);
  g_autoptr (GError) error = NULL;
  g_autoptr (GError) empty = NULL;

  (void)unused;
  g_assert_true (g_file_set_contents (fixture->path, large, (gssize)size, NULL));
  g_assert_null (bf_part_load (file, &error));
  g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_TOO_LARGE);
  g_assert_true (g_file_set_contents (fixture->path, "", 0, NULL));
  g_assert_null (bf_part_load (file, &empty));
  g_assert_error (empty, BF_PART_ERROR, BF_PART_ERROR_SYNTAX);
}

/* The parts that come with the program are read, are sound, and are written alike twice. */
static void
test_examples (void)
{
  g_autofree char *folder = g_build_filename (g_getenv ("BENCHFOLD_DATA"), "examples", NULL);
  GDir *dir = g_dir_open (folder, 0, NULL);
  const char *name;
  guint n = 0;

  g_assert_nonnull (dir);
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autoptr (GFile) file = g_file_new_build_filename (folder, name, NULL);
      g_autoptr (GError) error = NULL;
      g_autoptr (BfPart) part = NULL;

      if (!g_str_has_suffix (name, BF_PART_FILE_SUFFIX))
        continue;
      part = bf_part_load (file, &error);
      g_assert_no_error (error);
      g_assert_true (bf_part_check_outline (part, &error));
      n++;
    }
  g_dir_close (dir);
  g_assert_cmpuint (n, >=, 7);
}

#define ADD(path, function)                                                                        \
  g_test_add ("/part-write/" path, Fixture, NULL, set_up, function, tear_down)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/part-write/bends-stay", test_bends_stay);
  g_test_add_func ("/part-write/rest-stays", test_rest_stays);
  g_test_add_func ("/part-write/second-time", test_second_time);
  g_test_add_func ("/part-write/copy", test_copy);
  g_test_add_func ("/part-write/defaults-written", test_defaults_written);
  g_test_add_func ("/part-write/member-order", test_member_order);
  g_test_add_func ("/part-write/unknown-kept", test_unknown_kept);
  g_test_add_func ("/part-write/unknown-kept-by-edit", test_unknown_kept_by_edit);
  g_test_add_func ("/part-write/known-not-kept", test_known_not_kept);
  g_test_add_func ("/part-write/clockwise", test_clockwise);
  g_test_add_func ("/part-write/comma-locale", test_comma_locale);
  ADD ("save", test_save);
  ADD ("save-through-link", test_save_through_link);
  ADD ("save-keeps-mode", test_save_keeps_mode);
  ADD ("save-fails", test_save_fails);
  ADD ("load-fails", test_load_fails);
  ADD ("load-content-fails", test_load_content_fails);
  g_test_add_func ("/part-write/examples", test_examples);
  return g_test_run ();
}
