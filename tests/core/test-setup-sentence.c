/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/setup-sentence.h"

/* A part made from what is left to defaults and one change at a time. */
static BfPart *
new_part (void)
{
  BfPart *part = bf_part_new ();

  g_free (part->metal.material);
  part->metal.material = g_strdup ("mild-steel");
  part->metal.thickness_mm = 1.5;
  part->bend.way = BF_BEND_WAY_BAR;
  part->cutting.disc_diameter_mm = 125.0;
  return part;
}

static void
test_whole (void)
{
  g_autoptr (BfPart) part = new_part ();
  g_autofree char *sentence = bf_setup_sentence (part);

  g_assert_cmpstr (sentence, ==,
                   "Mild steel 1.5 mm, cut by me with a 125 mm disc, bent over a bar, corners "
                   "welded, sizes outside.");
}

static const struct
{
  BfCuttingWay by;
  const char *words;
} cuttings[] = {
  { BF_CUTTING_DISC, ", cut by me with a 125 mm disc, " },
  { BF_CUTTING_SNIPS, ", cut by me with snips, " },
  { BF_CUTTING_TABLE, ", cut by me with a cutting table, " },
  { BF_CUTTING_SERVICE, ", cut by a service, " },
};

static void
test_cutting (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cuttings); i++)
    {
      g_autoptr (BfPart) part = new_part ();
      g_autofree char *sentence = NULL;
      part->cutting.by = cuttings[i].by;
      sentence = bf_setup_sentence (part);
      g_assert_nonnull (strstr (sentence, cuttings[i].words));
    }
}

static const struct
{
  BfBendWay way;
  const char *words;
} ways[] = {
  { BF_BEND_WAY_BRAKE, "in a brake" },  { BF_BEND_WAY_BAR, "over a bar" },
  { BF_BEND_WAY_SLOTS, "along slots" }, { BF_BEND_WAY_SCORE, "along a score" },
  { BF_BEND_WAY_UNSET, "over a bar" },
};

static void
test_bending (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autoptr (BfPart) part = new_part ();
      g_autofree char *phrase = NULL;
      part->bend.way = ways[i].way;
      phrase = bf_setup_phrase (part, BF_SETUP_BENDING);
      g_assert_cmpstr (phrase, ==, ways[i].words);
    }
}

static const struct
{
  BfJoining joining;
  const char *words;
} joinings[] = {
  { BF_JOINING_WELDED, "welded" },   { BF_JOINING_RIVETED, "riveted" },
  { BF_JOINING_SCREWED, "screwed" }, { BF_JOINING_FOLDED, "folded" },
  { BF_JOINING_NONE, "left open" },
};

static void
test_joining (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (joinings); i++)
    {
      g_autoptr (BfPart) part = new_part ();
      g_autofree char *phrase = NULL;
      part->joining = joinings[i].joining;
      phrase = bf_setup_phrase (part, BF_SETUP_JOINING);
      g_assert_cmpstr (phrase, ==, joinings[i].words);
    }
}

/* In a person's own metal, in inches, measured inside. */
static void
test_other_words (void)
{
  g_autoptr (BfPart) part = new_part ();
  g_autofree char *sentence = NULL;

  g_free (part->metal.material);
  part->metal.material = g_strdup ("old tin roof");
  part->metal.thickness_mm = 0.8;
  part->measure = BF_MEASURE_INSIDE;
  part->units = BF_UNITS_IN;
  part->metal.thickness_mm = 1.5875;
  part->cutting.disc_diameter_mm = 114.3;
  sentence = bf_setup_sentence (part);
  g_assert_cmpstr (sentence, ==,
                   "Old tin roof 1/16 in, cut by me with a 4 1/2 in disc, bent over a bar, corners "
                   "welded, sizes inside.");
}

/* The window builds the same sentence from the format and the phrases. */
static void
test_format (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cuttings); i++)
    {
      g_autoptr (BfPart) part = new_part ();
      g_autofree char *sentence = NULL;
      const char *at;
      part->cutting.by = cuttings[i].by;
      sentence = bf_setup_sentence (part);
      at = sentence;
      for (int k = 0; k < BF_N_SETUP; k++)
        {
          g_autofree char *phrase = bf_setup_phrase (part, (BfSetupPhrase)k);
          at = strstr (at, phrase);
          g_assert_nonnull (at);
          at += strlen (phrase);
        }
      g_assert_nonnull (strstr (bf_setup_format (part), "cut by"));
      g_assert_true ((strstr (bf_setup_format (part), "by me") == NULL) ==
                     (cuttings[i].by == BF_CUTTING_SERVICE));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/setup-sentence/whole", test_whole);
  g_test_add_func ("/setup-sentence/cutting", test_cutting);
  g_test_add_func ("/setup-sentence/bending", test_bending);
  g_test_add_func ("/setup-sentence/joining", test_joining);
  g_test_add_func ("/setup-sentence/other-words", test_other_words);
  g_test_add_func ("/setup-sentence/format", test_format);
  return g_test_run ();
}
