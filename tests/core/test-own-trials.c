/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <glib/gstdio.h>
#include <string.h>

#include "core/defaults.h"
#include "core/edit.h"
#include "core/first-part.h"
#include "core/own-trials.h"
#include "own-files.h"

#define HEAD "{\"format\": \"benchfold-trial-bend\", \"version\": 1, "
#define STRIPS "\"strips\": [{\"length\": 100, \"legs\": [51.4, 51.4]}], "
#define REST                                                                                       \
  "\"material\": \"mild-steel\", \"thickness\": 1.5, \"way\": \"bar\", \"inside_radius\": 1.5, "   \
  "\"date\": \"2026-03-01\", \"measured_to\": 0.1, \"k\": 0.44, \"k_error\": 0.08}"

/* Keeps a trial in mild steel, bent over a bar. */
static const BfTrialRecord *
keep (double thickness_mm, double radius_mm, const char *date, double k)
{
  g_autoptr (GArray) strips = g_array_new (FALSE, FALSE, sizeof (BfTrialStrip));
  BfTrialStrip strip = { 100.0, { 51.4, 51.3 }, 90.0 };
  BfTrialRecord trial = { .material = "mild-steel",
                          .date = date,
                          .thickness_mm = thickness_mm,
                          .radius_mm = radius_mm,
                          .way = BF_BEND_WAY_BAR,
                          .measured_to_mm = 0.1,
                          .strips = strips,
                          .k = k,
                          .k_error = 0.05 };
  const BfTrialRecord *kept;
  g_autoptr (GError) error = NULL;

  g_array_append_val (strips, strip);
  kept = bf_own_trial_keep (&trial, &error);
  g_assert_no_error (error);
  return kept;
}

static void
test_keep (void)
{
  const BfTrialRecord *kept;
  BfTrialRecord changed;
  guint n;

  bf_own_trials_read_again ();
  kept = keep (1.5, 1.5, "2026-01-31", 0.44);
  g_assert_cmpstr (kept->id, ==, "mild-steel-1-5-bar-r1-5");
  g_assert_cmpfloat_with_epsilon (kept->k, 0.44, 1e-12);
  g_assert_cmpfloat_with_epsilon (kept->k_error, 0.05, 1e-12);
  g_assert_cmpuint (kept->strips->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (g_array_index (kept->strips, BfTrialStrip, 0).legs_mm[1], 51.3,
                                  1e-12);
  g_assert_cmpstr (keep (1.5, 1.5, "2026-01-31", 0.45)->id, ==, "mild-steel-1-5-bar-r1-5-2");
  (void)bf_own_trials (&n);
  g_assert_cmpuint (n, ==, 2);
  changed = *bf_own_trial_find ("mild-steel-1-5-bar-r1-5");
  changed.strips = g_array_ref (changed.strips);
  changed.k = 0.4;
  g_assert_cmpstr (bf_own_trial_keep (&changed, NULL)->id, ==, "mild-steel-1-5-bar-r1-5");
  g_array_unref (changed.strips);
  (void)bf_own_trials (&n);
  g_assert_cmpuint (n, ==, 2);
  g_assert_cmpfloat_with_epsilon (bf_own_trial_find ("mild-steel-1-5-bar-r1-5")->k, 0.4, 1e-12);
  g_assert_null (bf_own_trial_find (NULL));
}

static void
test_broken (void)
{
  static const struct
  {
    const char *text, *says;
  } rows[] = {
    { HEAD REST, "strips" },
    { HEAD "\"strips\": [], " REST, "strips" },
    { HEAD "\"strips\": [{\"legs\": [1, 2]}], " REST, "strips[0].length" },
    { HEAD "\"strips\": [{\"length\": 1, \"legs\": [1]}], " REST, "strips[0].legs" },
    { HEAD "\"strips\": [{\"length\": 1, \"legs\": [1, \"x\"]}], " REST, "strips[0].legs[1]" },
    { HEAD "\"strips\": [7], " REST, "strips[0]" },
    { HEAD "\"made\": {\"part\": \"x\", \"sizes\": []}, " REST, "strips" },
    { HEAD "\"made\": {\"sizes\": [{\"asked\": 1, \"measured\": 1}]}, " REST, "made.part" },
    { HEAD "\"made\": {\"part\": \"x\", \"sizes\": [{\"asked\": 1}]}, " REST,
      "made.sizes[0].measured" },
    { HEAD "\"made\": 7, " REST, "made" },
    { HEAD STRIPS "\"material\": \"zinc\"}", "date" },
    { HEAD STRIPS "\"k\": 1.1, "
                  "\"material\": \"zinc\"}",
      "date" },
  };
  guint n;

  put_own ("trial-bends", "b.json", HEAD STRIPS REST);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_test_message ("row %u", i);
      put_own ("trial-bends", "a.json", rows[i].text);
      bf_own_trials_read_again ();
      (void)bf_own_trials (&n);
      g_assert_cmpuint (n, ==, 1);
      g_assert_nonnull (strstr (bf_own_trial_faults ()[0], "a.json: "));
      g_assert_nonnull (strstr (bf_own_trial_faults ()[0], rows[i].says));
    }
  g_assert_cmpstr (bf_own_trial_find ("b")->date, ==, "2026-03-01");
}

/* The first finished part is a trial bend too: its sizes stand where strips would. */
static void
test_of_a_finished_part (void)
{
  g_autoptr (GArray) strips = g_array_new (FALSE, FALSE, sizeof (BfTrialStrip));
  g_autoptr (GArray) sizes = g_array_new (FALSE, FALSE, sizeof (BfTrialSize));
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM), fitted = NULL;
  BfTrialRecord trial = { .material = "mild-steel",
                          .date = "2026-01-31",
                          .thickness_mm = 1.5,
                          .radius_mm = 1.5,
                          .way = BF_BEND_WAY_BAR,
                          .measured_to_mm = 0.15,
                          .strips = strips,
                          .part = "Spoke tray",
                          .sizes = sizes,
                          .k = 0.37,
                          .k_error = 0.03 };
  const BfTrialRecord *kept;
  BfTrialSize size = { 200.0, 200.8 };

  bf_own_trials_read_again ();
  g_array_append_val (sizes, size);
  kept = bf_own_trial_keep (&trial, NULL);
  g_assert_nonnull (kept);
  bf_own_trials_read_again ();
  kept = bf_own_trial_for (part);
  g_assert_cmpstr (kept->part, ==, "Spoke tray");
  g_assert_cmpuint (kept->strips->len, ==, 0);
  g_assert_cmpuint (kept->sizes->len, ==, 1);
  g_assert_cmpfloat_with_epsilon (g_array_index (kept->sizes, BfTrialSize, 0).asked_mm, 200.0,
                                  1e-12);
  g_assert_cmpfloat_with_epsilon (g_array_index (kept->sizes, BfTrialSize, 0).measured_mm, 200.8,
                                  1e-12);
  fitted = bf_edit_fit_trial_bend (part);
  g_assert_cmpfloat_with_epsilon (bf_part_resolve_bend (fitted, NULL).allowance.k, 0.37, 1e-12);
}

/* What a newer program or a hand wrote into the file, at its top, in a strip or in what a finished
 * part measured, stays; of a strip only while there are as many. */
static void
test_unknown_is_kept (void)
{
  static const char *const stays[] = { "\"bar\": \"the long one\"", "\"wavy\": true",
                                       "\"by\": \"Ann\"", "\"at\": \"left\"" };
  const BfTrialRecord *was;
  BfTrialRecord changed;
  BfTrialStrip strip;
  g_autofree char *text = NULL, *fewer = NULL;

  put_own ("trial-bends", "u.json",
           HEAD "\"strips\": [{\"length\": 100, \"legs\": [51, 51], \"wavy\": true}], "
                "\"made\": {\"part\": \"x\", \"by\": \"Ann\", \"sizes\": "
                "[{\"asked\": 9, \"measured\": 8, \"at\": \"left\"}]}, "
                "\"bar\": \"the long one\", " REST);
  bf_own_trials_read_again ();
  was = bf_own_trial_find ("u");
  changed = *was;
  changed.k = 0.4;
  g_assert_nonnull (bf_own_trial_keep (&changed, NULL));
  text = get_own ("trial-bends", "u.json");
  for (guint i = 0; i < G_N_ELEMENTS (stays); i++)
    g_assert_nonnull (strstr (text, stays[i]));
  g_assert_nonnull (strstr (text, "\"k\": 0.4,"));

  was = bf_own_trial_find ("u");
  changed = *was;
  strip = g_array_index (was->strips, BfTrialStrip, 0);
  g_array_append_val (changed.strips, strip);
  g_assert_nonnull (bf_own_trial_keep (&changed, NULL));
  fewer = get_own ("trial-bends", "u.json");
  g_assert_null (strstr (fewer, "wavy"));
  g_assert_nonnull (strstr (fewer, "Ann"));
}

/* One step inside and one outside of what is let pass: 3 in 100 of the thickness, a quarter of it
 * for the radius. */
static void
test_fits (void)
{
  static const struct
  {
    double thickness_mm, radius_mm;
    const char *material;
    BfBendWay way;
    gboolean fits;
  } rows[] = {
    { 1.5, NAN, "mild-steel", BF_BEND_WAY_BAR, TRUE },
    { 1.54, NAN, "mild-steel", BF_BEND_WAY_BAR, TRUE },
    { 1.46, NAN, "mild-steel", BF_BEND_WAY_BAR, TRUE },
    { 1.56, NAN, "mild-steel", BF_BEND_WAY_BAR, FALSE },
    { 1.44, NAN, "mild-steel", BF_BEND_WAY_BAR, FALSE },
    { 1.5, 1.87, "mild-steel", BF_BEND_WAY_BAR, TRUE },
    { 1.5, 1.13, "mild-steel", BF_BEND_WAY_BAR, TRUE },
    { 1.5, 1.89, "mild-steel", BF_BEND_WAY_BAR, FALSE },
    { 1.5, 1.11, "mild-steel", BF_BEND_WAY_BAR, FALSE },
    { 1.5, NAN, "zinc", BF_BEND_WAY_BAR, FALSE },
    { 1.5, NAN, "mild-steel", BF_BEND_WAY_BRAKE, FALSE },
    { 1.5, 1.5, "mild-steel", BF_BEND_WAY_SCORE, FALSE },
    { 1.5, NAN, "mild-steel", BF_BEND_WAY_UNSET, TRUE },
    { 1.5, NAN, NULL, BF_BEND_WAY_UNSET, TRUE },
  };
  const BfTrialRecord *trial;

  bf_own_trials_read_again ();
  trial = keep (1.5, 1.5, "2026-01-31", 0.44);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);

      g_test_message ("row %u", i);
      g_free (part->metal.material);
      part->metal.material = g_strdup (rows[i].material);
      part->metal.thickness_mm = rows[i].thickness_mm;
      part->bend.way = rows[i].way;
      part->bend.inside_radius_mm = rows[i].radius_mm;
      g_assert_cmpint (bf_trial_fits (trial, part, NULL), ==, rows[i].fits);
      g_assert_true ((bf_own_trial_for (part) != NULL) == rows[i].fits);
    }
}

static void
test_best (void)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);

  bf_own_trials_read_again ();
  keep (1.52, 1.5, "2026-05-01", 0.41);
  keep (1.5, 1.5, "2026-01-31", 0.44);
  keep (1.5, 1.5, "2026-02-01", 0.45);
  keep (1.5, 1.5, "2025-12-31", 0.43);
  keep (1.5, 1.3, "2026-06-01", 0.40);
  g_assert_cmpfloat_with_epsilon (bf_own_trial_for (part)->k, 0.45, 1e-12);
}

/* What a set-up that changes does to the allowance. */
static void
test_set_up_changes (void)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);
  g_autoptr (BfPart) fitted = NULL, thick = NULL, gone = NULL, chosen = NULL, book = NULL;
  BfAllowance own = { .rule = BF_ALLOWANCE_K_FACTOR, .k = 0.37 };
  BfAllowance din = { .rule = BF_ALLOWANCE_DIN_6935, .k = NAN };

  bf_own_trials_read_again ();
  g_assert_null (bf_edit_fit_trial_bend (part));
  keep (1.5, 1.5, "2026-01-31", 0.44);

  fitted = bf_edit_fit_trial_bend (part);
  g_assert_cmpint (fitted->bend.allowance.rule, ==, BF_ALLOWANCE_TRIAL_BEND);
  g_assert_cmpstr (fitted->bend.allowance.trial_id, ==, "mild-steel-1-5-bar-r1-5");
  g_assert_cmpfloat_with_epsilon (bf_part_resolve_bend (fitted, NULL).allowance.k, 0.44, 1e-12);
  g_assert_cmpfloat_with_epsilon (fitted->bend.allowance.k_error, bf_own_trial_for (part)->k_error,
                                  1e-12);
  g_assert_null (bf_edit_fit_trial_bend (fitted));

  thick = bf_edit_thickness (fitted, 2.0);
  gone = bf_edit_fit_trial_bend (thick);
  g_assert_cmpint (gone->bend.allowance.rule, ==, BF_ALLOWANCE_UNSET);
  g_assert_cmpfloat_with_epsilon (bf_part_resolve_bend (gone, NULL).allowance.k, 0.42, 1e-12);
  g_assert_null (gone->bend.allowance.trial_id);

  chosen = bf_edit_allowance (part, &own);
  book = bf_edit_allowance (part, &din);
  g_assert_null (bf_edit_fit_trial_bend (chosen));
  g_assert_null (bf_edit_fit_trial_bend (book));
}

/* The K of a bend with a radius is none for a hem, whether it was there before or comes later. */
static void
test_hems (void)
{
  BfEdge edge = { "base", BF_EDGE_INDEX, 0 }, other = { "base", BF_EDGE_INDEX, 1 };
  g_autoptr (BfPart) square = bf_first_part (BF_UNITS_MM), hemmed = NULL, fitted = NULL,
                     more = NULL;

  bf_own_trials_read_again ();
  keep (1.5, 1.5, "2026-01-31", 0.44);
  hemmed = bf_edit_add_hem (square, &edge, BF_TURN_UP, NULL);
  fitted = bf_edit_fit_trial_bend (hemmed);
  more = bf_edit_add_hem (fitted, &other, BF_TURN_UP, NULL);
  for (guint i = 0; i < 2; i++)
    {
      BfBend bend = bf_part_resolve_bend (more, bf_part_flange (more, i));

      g_assert_cmpfloat_with_epsilon (bend.allowance.k, 0.5, 1e-12);
      g_assert_cmpint (bend.allowance.rule, ==, BF_ALLOWANCE_K_FACTOR);
    }
  g_assert_cmpfloat_with_epsilon (bf_part_resolve_bend (more, NULL).allowance.k, 0.44, 1e-12);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/own-trials/keep", test_keep);
  g_test_add_func ("/own-trials/broken", test_broken);
  g_test_add_func ("/own-trials/fits", test_fits);
  g_test_add_func ("/own-trials/of-a-finished-part", test_of_a_finished_part);
  g_test_add_func ("/own-trials/unknown-is-kept", test_unknown_is_kept);
  g_test_add_func ("/own-trials/best", test_best);
  g_test_add_func ("/own-trials/set-up-changes", test_set_up_changes);
  g_test_add_func ("/own-trials/hems", test_hems);
  return g_test_run ();
}
