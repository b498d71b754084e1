/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Each caution stands at the step that it belongs to, and is one line or two of a card. */

#include <string.h>

#include "make-part.h"
#include "read-work.h"

/* What two lines of a card hold. */
#define MOST_LETTERS 150

/* A slotted tray with a lid that closes it, a hem, and a bend of 60°, as a maker might weld it. */
static BfPart *
make_all (const char *material, BfCuttingWay by, BfBendWay way)
{
  BfPart *part = make_tray (200.0, 120.0, 40.0, 90.0);
  BfFlange *hem = add_lip (part, "hem", "f1", 8.0, 180.0);

  add_lip (part, "lid", "f0", 119.0, 90.0);
  hem->bend.way = BF_BEND_WAY_BAR;
  hem->bend.inside_radius_mm = 0.0;
  g_free (part->metal.material);
  part->metal.material = g_strdup (material);
  part->cutting.by = by;
  part->bend.way = way;
  part->bend.inside_radius_mm = NAN;
  part->bend.allowance.k = NAN;
  part->joining = BF_JOINING_WELDED;
  return part;
}

static gboolean
is_said (const BfWork *work, BfStage stage, const char *words)
{
  for (guint i = 0; i < bf_work_n_steps (work, stage); i++)
    {
      const BfWorkStep *step = bf_work_stage_step (work, stage, i);

      if (strstr (step->words, words) != NULL ||
          (step->caution != NULL && strstr (step->caution, words) != NULL))
        return TRUE;
    }
  return FALSE;
}

typedef struct
{
  BfStage stage;
  const char *words;
} Caution;

static void
check (const BfPart *part, const Caution *cautions, guint n)
{
  g_autoptr (BfPart) mine = bf_part_copy (part);
  g_autoptr (BfWork) work = work_of (mine);

  for (guint i = 0; i < n; i++)
    {
      g_test_message ("%s", cautions[i].words);
      g_assert_true (is_said (work, cautions[i].stage, cautions[i].words));
    }
}

static void
test_disc_and_weld (void)
{
  static const Caution cautions[] = {
    { BF_STAGE_METAL, "gloves to carry" },
    { BF_STAGE_DRILL, "Clamp the metal" },
    { BF_STAGE_DRILL, "it spins when the drill breaks through" },
    { BF_STAGE_DRILL, "No gloves" },
    { BF_STAGE_CUT, "Guard on" },
    { BF_STAGE_CUT, "both hands" },
    { BF_STAGE_CUT, "a disc rated for the machine's speed" },
    { BF_STAGE_CUT, "never one that was dropped" },
    { BF_STAGE_CUT, "Stand out of its line" },
    { BF_STAGE_CUT, "No side load" },
    { BF_STAGE_CUT, "Hold up both halves, so that the cut does not close" },
    { BF_STAGE_CUT, "has lost strength: no load hangs on it" },
    { BF_STAGE_CUT, "Deburr before you bend" },
    { BF_STAGE_BEND, "Bend this line once" },
    { BF_STAGE_BEND, "fingers off" },
    { BF_STAGE_JOIN, "paper, glue and oil off" },
    { BF_STAGE_JOIN, "Solvent dry and rags away before sparks or arc" },
    { BF_STAGE_JOIN, "never chlorinated cleaner" },
    { BF_STAGE_JOIN, "Cover eyes and skin" },
    { BF_STAGE_JOIN, "screen off bystanders" },
    { BF_STAGE_JOIN, "dry floor" },
    { BF_STAGE_JOIN, "sound leads" },
    { BF_STAGE_JOIN, "watch for fire" },
    { BF_STAGE_JOIN, "Never heat a vessel that held fuel" },
    { BF_STAGE_JOIN, "A backing bar is hot and does not glow" },
    { BF_STAGE_FINISH, "Solvent and paint: moving air" },
    { BF_STAGE_FINISH, "load it low down, with nobody under it" },
    { BF_STAGE_FINISH, "not for lifting, pressure, vehicles, overhead or buildings" },
  };
  g_autoptr (BfPart) part = make_all ("mild-steel", BF_CUTTING_DISC, BF_BEND_WAY_SLOTS);

  check (part, cautions, G_N_ELEMENTS (cautions));
}

/* What a metal or its coating gives off, where it is ground and where it is welded. */
static void
test_fumes (void)
{
  static const struct
  {
    const char *material;
    Caution cautions[2];
  } rows[] = {
    { "mild-steel",
      { { BF_STAGE_JOIN, "Zinc, cadmium, chrome, paint" }, { BF_STAGE_JOIN, "fumes" } } },
    { "galvanized-steel",
      { { BF_STAGE_METAL, "Ground zinc fumes" }, { BF_STAGE_JOIN, "Zinc fumes" } } },
    { "stainless-304",
      { { BF_STAGE_METAL, "chromium dust" }, { BF_STAGE_JOIN, "chromium fumes" } } },
    { "zinc", { { BF_STAGE_METAL, "Ground zinc fumes" }, { BF_STAGE_JOIN, "hot zinc fume" } } },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfPart) part = make_all (rows[i].material, BF_CUTTING_DISC, BF_BEND_WAY_BAR);

      check (part, rows[i].cautions, 2);
    }
}

static void
test_other_tools (void)
{
  static const Caution snips[] = { { BF_STAGE_CUT, "wear gloves" },
                                   { BF_STAGE_BEND, "Fingers off the closing side" } };
  static const Caution table[] = { { BF_STAGE_CUT, "the machine's own manual decides" },
                                   { BF_STAGE_CUT, "A hand grinder holds only" },
                                   { BF_STAGE_BEND, "Bend this line once" } };
  g_autoptr (BfPart) by_snips = make_all ("mild-steel", BF_CUTTING_SNIPS, BF_BEND_WAY_BAR);
  g_autoptr (BfPart) by_table = make_all ("mild-steel", BF_CUTTING_TABLE, BF_BEND_WAY_SCORE);
  g_autoptr (BfPart) riveted = make_tray (200.0, 120.0, 40.0, 90.0);
  static const Caution rivets[] = { { BF_STAGE_JOIN, "Eye protection" } };

  riveted->joining = BF_JOINING_RIVETED;
  check (by_snips, snips, G_N_ELEMENTS (snips));
  check (by_table, table, G_N_ELEMENTS (table));
  check (riveted, rivets, G_N_ELEMENTS (rivets));
}

/* Nobody reads a block. */
static void
test_short (void)
{
  static const char *const materials[] = { "mild-steel", "galvanized-steel", "stainless-304" };

  for (guint i = 0; i < G_N_ELEMENTS (materials); i++)
    for (BfCuttingWay by = BF_CUTTING_DISC; by <= BF_CUTTING_SERVICE; by++)
      {
        g_autoptr (BfPart) part = make_all (materials[i], by, BF_BEND_WAY_SLOTS);
        g_autoptr (BfWork) work = work_of (part);

        for (guint k = 0; k < work->steps->len; k++)
          if (bf_work_step (work, k)->caution != NULL)
            g_assert_cmpint (g_utf8_strlen (bf_work_step (work, k)->caution, -1), <=, MOST_LETTERS);
      }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/make/cautions/disc-and-weld", test_disc_and_weld);
  g_test_add_func ("/make/cautions/fumes", test_fumes);
  g_test_add_func ("/make/cautions/other-tools", test_other_tools);
  g_test_add_func ("/make/cautions/short", test_short);
  return g_test_run ();
}
