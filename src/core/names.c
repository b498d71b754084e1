/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/names.h"

/* Each list stands in the order of its enum; a new member of an enum needs its word here. */
static const char *const units_words[] = { "mm", "in" };
static const char *const measure_words[] = { "outside", "inside" };
static const char *const turn_words[] = { "up", "down" };
static const char *const cutting_way_words[] = { "disc", "snips", "table", "service" };
static const char *const drill_set_words[] = { "metric", "fraction", "number", "list" };
static const char *const joining_words[] = { "welded", "riveted", "screwed", "folded", "none" };
static const char *const bend_way_words[] = { NULL, "brake", "bar", "slots", "score" };
static const char *const allowance_rule_words[] = { NULL, "k-factor", "din-6935", "handbook",
                                                    "trial-bend" };
static const char *const handbook_group_words[] = { "soft", "medium", "hard" };
static const char *const join_words[] = { NULL,        "open", "covers-before", "covers-after",
                                          "untrimmed", "tab",  "folded" };
static const char *const relief_shape_words[] = { NULL, "round", "square", "none" };
static const char *const along_words[] = { "before", "after" };
static const char *const from_words[] = { "start", "end" };
static const char *const end_relief_words[] = { NULL, "hole", "notch" };
static const char *const finish_words[] = { NULL, "sharp", "round", "chamfer" };
static const char *const opening_shape_words[] = { "round", "slot", "rectangle", "keyhole",
                                                   "outline" };

const BfNames bf_names_units = { units_words, G_N_ELEMENTS (units_words) };
const BfNames bf_names_measure = { measure_words, G_N_ELEMENTS (measure_words) };
const BfNames bf_names_turn = { turn_words, G_N_ELEMENTS (turn_words) };
const BfNames bf_names_cutting_way = { cutting_way_words, G_N_ELEMENTS (cutting_way_words) };
const BfNames bf_names_drill_set = { drill_set_words, G_N_ELEMENTS (drill_set_words) };
const BfNames bf_names_joining = { joining_words, G_N_ELEMENTS (joining_words) };
const BfNames bf_names_bend_way = { bend_way_words, G_N_ELEMENTS (bend_way_words) };
const BfNames bf_names_allowance_rule = { allowance_rule_words,
                                          G_N_ELEMENTS (allowance_rule_words) };
const BfNames bf_names_handbook_group = { handbook_group_words,
                                          G_N_ELEMENTS (handbook_group_words) };
const BfNames bf_names_join = { join_words, G_N_ELEMENTS (join_words) };
const BfNames bf_names_relief_shape = { relief_shape_words, G_N_ELEMENTS (relief_shape_words) };
const BfNames bf_names_from = { from_words, G_N_ELEMENTS (from_words) };
const BfNames bf_names_along = { along_words, G_N_ELEMENTS (along_words) };
const BfNames bf_names_end_relief = { end_relief_words, G_N_ELEMENTS (end_relief_words) };
const BfNames bf_names_finish = { finish_words, G_N_ELEMENTS (finish_words) };
const BfNames bf_names_opening_shape = { opening_shape_words, G_N_ELEMENTS (opening_shape_words) };

static const char *
word (const BfNames *names, guint value)
{
  g_return_val_if_fail (value < names->n_words, NULL);

  return names->words[value];
}

const char *
bf_units_name (BfUnits units)
{
  return word (&bf_names_units, units);
}

const char *
bf_measure_name (BfMeasure measure)
{
  return word (&bf_names_measure, measure);
}

const char *
bf_turn_name (BfTurn turn)
{
  return word (&bf_names_turn, turn);
}

const char *
bf_cutting_way_name (BfCuttingWay by)
{
  return word (&bf_names_cutting_way, by);
}

const char *
bf_drill_set_name (BfDrillSet drills)
{
  return word (&bf_names_drill_set, drills);
}

const char *
bf_joining_name (BfJoining joining)
{
  return word (&bf_names_joining, joining);
}

const char *
bf_bend_way_name (BfBendWay way)
{
  return word (&bf_names_bend_way, way);
}

const char *
bf_allowance_rule_name (BfAllowanceRule rule)
{
  return word (&bf_names_allowance_rule, rule);
}

const char *
bf_handbook_group_name (BfHandbookGroup group)
{
  return word (&bf_names_handbook_group, group);
}

const char *
bf_join_name (BfJoin join)
{
  return word (&bf_names_join, join);
}

const char *
bf_relief_shape_name (BfReliefShape shape)
{
  return word (&bf_names_relief_shape, shape);
}

const char *
bf_end_relief_name (BfEndRelief relief)
{
  return word (&bf_names_end_relief, relief);
}

const char *
bf_finish_name (BfFinish finish)
{
  return word (&bf_names_finish, finish);
}

const char *
bf_opening_shape_name (BfOpeningShape shape)
{
  return word (&bf_names_opening_shape, shape);
}

int
bf_names_find (const BfNames *names, const char *sought)
{
  g_return_val_if_fail (names != NULL && sought != NULL, -1);

  for (guint i = 0; i < names->n_words; i++)
    if (names->words[i] != NULL && g_str_equal (names->words[i], sought))
      return (int)i;
  return -1;
}

char *
bf_names_list (const BfNames *names)
{
  GString *list = g_string_new (NULL);

  g_return_val_if_fail (names != NULL, NULL);

  for (guint i = 0; i < names->n_words; i++)
    if (names->words[i] != NULL)
      g_string_append_printf (list, "%s%s", list->len > 0 ? ", " : "", names->words[i]);
  return g_string_free (list, FALSE);
}
