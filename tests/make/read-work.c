/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "read-work.h"

#include <string.h>

#include "core/part-file.h"
#include "make-any.h"

BfWork *
work_of (BfPart *part)
{
  g_autoptr (BfFold) fold = bf_fold (part);

  return bf_work_new (fold, NULL);
}

BfWork *
work_of_any (guint seed, BfCuttingWay by)
{
  g_autoptr (BfPart) part = make_any (seed);

  part->cutting.by = by;
  return work_of (part);
}

BfPart *
load_example (const char *name)
{
  g_autofree char *file_name = g_strconcat (name, BF_PART_FILE_SUFFIX, NULL);
  g_autofree char *path =
      g_build_filename (g_getenv ("BENCHFOLD_DATA"), "examples", file_name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);

  return bf_part_load (file, NULL);
}

const BfWorkNumber *
number_of (const BfWorkStep *step, const char *label)
{
  for (guint i = 0; i < step->n_numbers; i++)
    if (strcmp (step->numbers[i].label, label) == 0)
      return &step->numbers[i];
  return NULL;
}

void
assert_number (const BfWorkStep *step, const char *label, const char *value)
{
  const BfWorkNumber *number;

  g_assert_nonnull (step);
  number = number_of (step, label);
  if (number == NULL)
    g_error ("\"%s\" says no %s", step->words, label);
  g_assert_cmpstr (number->value, ==, value);
}

const BfWorkStep *
find_step (const BfWork *work, BfStage stage, const char *words)
{
  for (guint i = 0; i < bf_work_n_steps (work, stage); i++)
    if (strstr (bf_work_stage_step (work, stage, i)->words, words) != NULL)
      return bf_work_stage_step (work, stage, i);
  return NULL;
}

guint
count_steps (const BfWork *work, BfStage stage, const char *words)
{
  guint n = 0;

  for (guint i = 0; i < bf_work_n_steps (work, stage); i++)
    n += strstr (bf_work_stage_step (work, stage, i)->words, words) != NULL ? 1 : 0;
  return n;
}

double
nth_number (const char *text, guint nth)
{
  while (*text != '\0')
    {
      char *end;

      if (!g_ascii_isdigit (*text))
        {
          text++;
          continue;
        }
      if (nth-- == 0)
        return g_ascii_strtod (text, NULL);
      g_ascii_strtod (text, &end);
      text = end;
    }
  return NAN;
}

gboolean
is_metal (const BfFold *fold, BfVec2 p)
{
  gboolean inside = FALSE;

  for (guint i = 0; i < fold->blank.rings->len; i++)
    if (bf_ring_contains (bf_blank_ring (&fold->blank, i), p))
      {
        if (i >= fold->blank.n_outer)
          return FALSE;
        inside = TRUE;
      }
  return inside;
}
