/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/marking-csv.h"

#include <string.h>

#include "core/names.h"
#include "core/part-title.h"
#include "core/setup-sentence.h"
#include "core/today.h"
#include "core/units.h"
#include "make/marking-steps.h"
#include "write/numbers.h"

#define HEADER "step,do,what,from,distance,begin,end,x,y,size\r\n"

/* A row being written: its columns in order, NAN and NULL for an empty one. */
typedef struct
{
  guint step;
  const char *what_to_do, *what, *from;
  double numbers[6]; /* distance, begin, end, x, y, size */
} Row;

typedef struct
{
  const BfMarking *marking;
  double unit_mm;
  GString *text;
} Table;

static void
append_words (GString *text, const char *words)
{
  if (words == NULL)
    return;
  if (strpbrk (words, ",\"\r\n") == NULL)
    {
      g_string_append (text, words);
      return;
    }
  g_string_append_c (text, '"');
  for (const char *c = words; *c != '\0'; c++)
    {
      if (*c == '"')
        g_string_append_c (text, '"');
      g_string_append_c (text, *c);
    }
  g_string_append_c (text, '"');
}

static void
append_row (Table *table, const Row *row)
{
  const char *words[] = { row->what_to_do, row->what, row->from };

  g_string_append_printf (table->text, "%u", row->step);
  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    {
      g_string_append_c (table->text, ',');
      append_words (table->text, words[i]);
    }
  for (guint i = 0; i < G_N_ELEMENTS (row->numbers); i++)
    {
      g_string_append_c (table->text, ',');
      if (!isnan (row->numbers[i]))
        bf_append_decimal (table->text, row->numbers[i] / table->unit_mm);
    }
  g_string_append (table->text, "\r\n");
}

static char *
line_name (BfMarkKind kind, const char *name)
{
  if (kind == BF_MARK_BAR)
    return g_strconcat (name, " bar", NULL);
  return g_strdup (kind == BF_MARK_CUT ? "cut" : name);
}

static void
append_strike (Table *table, guint step, const BfStrike *strike)
{
  static const char *const strikes[] = {
    [BF_MARK_CUT] = "strike", [BF_MARK_BEND] = "strike-bend", [BF_MARK_BAR] = "strike-bar"
  };
  const char *from = strike->from == BF_DATUM_BOTTOM ? "bottom" : "left";

  for (guint i = 0; i < strike->stretches->len; i++)
    {
      const BfMarkStretch *line = &g_array_index (strike->stretches, BfMarkStretch, i);

      g_autofree char *name = line_name (line->kind, line->name);

      append_row (table, &(Row){ step,
                                 strikes[line->kind],
                                 name,
                                 from,
                                 { strike->marked_mm, line->from.marked_mm, line->to.marked_mm, NAN,
                                   NAN, NAN } });
    }
}

static void
append_wipes (Table *table, guint step, const BfStrike *strike)
{
  const char *from = strike->from == BF_DATUM_BOTTOM ? "bottom" : "left";

  for (guint i = 0; i < strike->wipes->len; i++)
    {
      const BfRun *wipe = &g_array_index (strike->wipes, BfRun, i);

      append_row (table,
                  &(Row){ step,
                          "wipe",
                          NULL,
                          from,
                          { strike->marked_mm, wipe->from_mm, wipe->to_mm, NAN, NAN, NAN } });
    }
}

static void
append_point (Table *table, Row row, BfMarkedPoint p, double size_mm)
{
  const double numbers[] = { NAN, NAN, NAN, p.x.marked_mm, p.y.marked_mm, size_mm };

  memcpy (row.numbers, numbers, sizeof numbers);
  append_row (table, &row);
}

static void
append_length (Table *table, Row row, const char *what_to_do, double length_mm)
{
  const double numbers[] = { NAN, NAN, NAN, NAN, NAN, length_mm };

  row.what_to_do = what_to_do;
  memcpy (row.numbers, numbers, sizeof numbers);
  append_row (table, &row);
}

/* A line by its two ends. */
static void
append_ends (Table *table, Row row, const char *const whats[2], const BfMarkedPoint ends[2])
{
  for (int i = 0; i < 2; i++)
    {
      row.what_to_do = whats[i];
      append_point (table, row, ends[i], NAN);
    }
}

static void
append_join (Table *table, guint step, const BfMarkJoin *join)
{
  static const char *const whats[] = { "join-from", "join-to" };
  const BfMarkedPoint ends[] = { join->from, join->to };

  g_autofree char *name = line_name (join->kind, join->name);

  append_ends (table, (Row){ .step = step, .what = name }, whats, ends);
}

static void
append_slot (Table *table, guint step, const BfMarkSlot *slot)
{
  static const char *const whats[] = { "slot-from", "slot-to" };
  const BfMarkedPoint ends[] = { slot->from, slot->to };
  Row row = { .step = step, .what = slot->flange };

  append_ends (table, row, whats, ends);
  append_length (table, row, "slot-near", slot->near_mm);
  append_length (table, row, "slot-far", slot->far_mm);
}

static void
append_hole (Table *table, guint step, const BfMarkHole *hole, gboolean drills)
{
  append_point (
      table, (Row){ .step = step, .what_to_do = drills ? "drill" : "punch", .what = hole->drill },
      hole->centre, drills ? hole->diameter_mm : NAN);
}

static void
append_item (Table *table, guint number, const BfMarkingStep *step, guint i)
{
  const BfMarking *marking = table->marking;
  const BfMarkArc *arc;

  switch (step->kind)
    {
    case BF_STEP_STRIKE:
      append_strike (table, number, bf_marking_strike (marking, i));
      break;
    case BF_STEP_WIPE:
      append_wipes (table, number, bf_marking_strike (marking, i));
      break;
    case BF_STEP_JOIN:
      append_join (table, number, &g_array_index (marking->joins, BfMarkJoin, i));
      break;
    case BF_STEP_ARC:
      arc = &g_array_index (marking->arcs, BfMarkArc, i);
      append_point (table, (Row){ .step = number, .what_to_do = "arc" }, arc->centre,
                    arc->radius_mm);
      break;
    case BF_STEP_SLOT:
      append_slot (table, number, &g_array_index (marking->slots, BfMarkSlot, i));
      break;
    case BF_STEP_PUNCH:
    case BF_STEP_DRILL:
      append_hole (table, number, &g_array_index (marking->holes, BfMarkHole, i),
                   step->kind == BF_STEP_DRILL);
      break;
    case BF_STEP_CORNER:
    case BF_STEP_CHECK:
    default:
      g_return_if_reached ();
    }
}

static void
append_sizes (Table *table, guint number, const char *what_to_do)
{
  const BfMarking *marking = table->marking;
  Row row = { .step = number, .what_to_do = what_to_do };

  append_point (table, row, (BfMarkedPoint){ marking->width, marking->height }, NAN);
}

/* Where the metal falls away: as the words of a row. */
static const char *
waste_name (const BfCut *cut)
{
  if (fabs (cut->waste.x) > fabs (cut->waste.y))
    return cut->waste.x > 0.0 ? "waste right" : "waste left";
  return cut->waste.y > 0.0 ? "waste above" : "waste below";
}

/* A cut that is square to the edges by its distance and from where to where, as a strike; another
 * one by its two ends. */
static void
append_cut (Table *table, guint number, const BfWork *work, guint at)
{
  static const char *const whats[] = { "cut-from", "cut-to" };
  const BfCut *cut = bf_cut (work->cuts, at);
  BfMarkedPoint ends[] = { bf_marking_point (table->marking, cut->from),
                           bf_marking_point (table->marking, cut->to) };
  BfCutPlace place;
  gboolean bottom;
  double a, b;

  if (!bf_work_cut_place (work, at, &place))
    {
      append_ends (table, (Row){ .step = number, .what = waste_name (cut) }, whats, ends);
      return;
    }
  bottom = place.from == BF_DATUM_BOTTOM;
  a = bottom ? ends[0].x.marked_mm : ends[0].y.marked_mm;
  b = bottom ? ends[1].x.marked_mm : ends[1].y.marked_mm;
  append_row (table, &(Row){ number,
                             "cut",
                             waste_name (cut),
                             bottom ? "bottom" : "left",
                             { place.line_mm, MIN (a, b), MAX (a, b), NAN, NAN, place.guide_mm } });
}

static void
append_fact (Table *table, const char *fact, const char *what, double size_mm)
{
  append_row (table, &(Row){ 0, fact, what, NULL, { NAN, NAN, NAN, NAN, NAN, size_mm } });
}

/* What the table is of, so that one found later can be used. */
static void
append_facts (Table *table, const BfPart *part)
{
  g_autofree char *title = bf_part_title (part), *setup = bf_setup_sentence (part);
  g_autofree char *today = bf_today ();

  append_fact (table, "part", title, NAN);
  append_fact (table, "set-up", setup, NAN);
  append_fact (table, "units", bf_units_name (part->units), NAN);
  append_fact (table, "date", today, NAN);
  append_fact (table, "marks", NULL, table->marking->step_mm);
  append_fact (table, "off by at most", NULL, table->marking->worst_mm);
}

char *
bf_marking_csv (const BfWork *work)
{
  gboolean inches = work->fold->part->units == BF_UNITS_IN;
  Table table = { work->marking, inches ? BF_MM_PER_INCH : 1.0, g_string_new (HEADER) };
  const GArray *steps = work->marking_steps;

  append_facts (&table, work->fold->part);
  for (guint i = 0; i < steps->len; i++)
    {
      const BfMarkingStep *step = &g_array_index (steps, BfMarkingStep, i);

      if (step->kind == BF_STEP_CORNER)
        append_sizes (&table, i + 1, "start");
      else if (step->kind == BF_STEP_CHECK)
        append_sizes (&table, i + 1, "check");
      for (guint k = 0; k < step->items->len; k++)
        append_item (&table, i + 1, step, bf_step_item (step, k));
    }
  for (guint i = 0; i < work->cuts->len && bf_work_is_by_hand (work); i++)
    append_cut (&table, steps->len + i + 1, work, i);
  return g_string_free (table.text, FALSE);
}
