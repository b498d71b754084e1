/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/history.h"

typedef struct
{
  BfPart *part;
  char *name; /* NULL for the first */
  char *merge_key;
} Step;

struct _BfHistory
{
  GPtrArray *steps; /* Step */
  guint now;
  Step *saved; /* only compared, never followed: the step may be gone */
};

static Step *
step_new (BfPart *part, const char *name, const char *merge_key)
{
  Step *step = g_new0 (Step, 1);
  step->part = bf_part_ref (part);
  step->name = g_strdup (name);
  step->merge_key = g_strdup (merge_key);
  return step;
}

static void
step_free (Step *step)
{
  bf_part_unref (step->part);
  g_free (step->name);
  g_free (step->merge_key);
  g_free (step);
}

static Step *
step_at (const BfHistory *history, guint i)
{
  return g_ptr_array_index (history->steps, i);
}

static Step *
step_now (const BfHistory *history)
{
  return step_at (history, history->now);
}

BfHistory *
bf_history_new (BfPart *first)
{
  g_return_val_if_fail (first != NULL, NULL);

  BfHistory *history = g_new0 (BfHistory, 1);
  history->steps = g_ptr_array_new_with_free_func ((GDestroyNotify)step_free);
  g_ptr_array_add (history->steps, step_new (first, NULL, NULL));
  bf_history_mark_saved (history);
  return history;
}

void
bf_history_free (BfHistory *history)
{
  g_ptr_array_unref (history->steps);
  g_free (history);
}

static void
drop_redo (BfHistory *history)
{
  guint kept = history->now + 1;
  for (guint i = kept; i < history->steps->len; i++)
    if (step_at (history, i) == history->saved)
      history->saved = NULL;
  g_ptr_array_set_size (history->steps, (int)kept);
}

void
bf_history_push (BfHistory *history, BfPart *part, const char *name, const char *merge_key)
{
  g_return_if_fail (history != NULL && part != NULL && name != NULL);

  drop_redo (history);
  Step *now = step_now (history);
  gboolean merges = merge_key != NULL && g_strcmp0 (merge_key, now->merge_key) == 0;
  /* A saved step stays, so that undo leads back to what the file holds. */
  if (merges && now != history->saved)
    {
      bf_part_ref (part);
      bf_part_unref (now->part);
      now->part = part;
      return;
    }
  g_ptr_array_add (history->steps, step_new (part, name, merge_key));
  history->now++;
}

void
bf_history_break_merge (BfHistory *history)
{
  g_clear_pointer (&step_now (history)->merge_key, g_free);
}

BfPart *
bf_history_part (const BfHistory *history)
{
  return step_now (history)->part;
}

const char *
bf_history_undo_name (const BfHistory *history)
{
  return step_now (history)->name;
}

const char *
bf_history_redo_name (const BfHistory *history)
{
  gboolean last = history->now + 1 == history->steps->len;
  return last ? NULL : step_at (history, history->now + 1)->name;
}

gboolean
bf_history_undo (BfHistory *history)
{
  if (history->now == 0)
    return FALSE;
  bf_history_break_merge (history);
  history->now--;
  bf_history_break_merge (history);
  return TRUE;
}

gboolean
bf_history_redo (BfHistory *history)
{
  if (bf_history_redo_name (history) == NULL)
    return FALSE;
  history->now++;
  bf_history_break_merge (history);
  return TRUE;
}

void
bf_history_mark_saved (BfHistory *history)
{
  history->saved = step_now (history);
}

void
bf_history_mark_unsaved (BfHistory *history)
{
  history->saved = NULL;
}

gboolean
bf_history_is_saved (const BfHistory *history)
{
  return step_now (history) == history->saved;
}
