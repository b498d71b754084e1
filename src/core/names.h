/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "core/part.h"

/* The words that a file, the report and the command line use for each choice ("k-factor",
 * "covers-before"). They are part of the format and are never translated. */

const char *bf_units_name (BfUnits units);
const char *bf_measure_name (BfMeasure measure);
const char *bf_turn_name (BfTurn turn);
const char *bf_cutting_way_name (BfCuttingWay by);
const char *bf_drill_set_name (BfDrillSet drills);
const char *bf_joining_name (BfJoining joining);
const char *bf_bend_way_name (BfBendWay way);
const char *bf_allowance_rule_name (BfAllowanceRule rule);
const char *bf_handbook_group_name (BfHandbookGroup group);
const char *bf_join_name (BfJoin join);
const char *bf_relief_shape_name (BfReliefShape shape);
const char *bf_end_relief_name (BfEndRelief relief);
const char *bf_finish_name (BfFinish finish);
const char *bf_opening_shape_name (BfOpeningShape shape);

/* One kind of choice: its words in the order of the enum; NULL stands for _UNSET. */
typedef struct
{
  const char *const *words;
  guint n_words;
} BfNames;

/* bf_names_along: whether a square relief lies along the edge after its corner (1) or before (0).
 * bf_names_from: whether an opening is measured from its edge's end (1) or start (0). */
extern const BfNames bf_names_units, bf_names_measure, bf_names_turn, bf_names_cutting_way,
    bf_names_drill_set, bf_names_joining, bf_names_bend_way, bf_names_allowance_rule,
    bf_names_handbook_group, bf_names_join, bf_names_relief_shape, bf_names_along, bf_names_from,
    bf_names_end_relief, bf_names_finish, bf_names_opening_shape;

/* The enum value of a word, or −1. */
int bf_names_find (const BfNames *names, const char *word);

/* The words of a kind as "mm, in", for error messages. Returns: (transfer full). */
char *bf_names_list (const BfNames *names) G_GNUC_WARN_UNUSED_RESULT;
