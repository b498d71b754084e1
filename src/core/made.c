/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/made.h"

BfMade *
bf_made_new (const char *blank)
{
  BfMade *made;

  g_return_val_if_fail (blank != NULL, NULL);

  made = g_new (BfMade, 1);
  made->blank = g_strdup (blank);
  made->steps = g_ptr_array_new_with_free_func (g_free);
  return made;
}

static gpointer
copy_word (gconstpointer word, gpointer unused)
{
  (void)unused;
  return g_strdup (word);
}

BfMade *
bf_made_copy (const BfMade *made)
{
  BfMade *copy;

  if (made == NULL)
    return NULL;
  copy = g_new (BfMade, 1);
  copy->blank = g_strdup (made->blank);
  copy->steps = g_ptr_array_copy (made->steps, copy_word, NULL);
  return copy;
}

void
bf_made_free (BfMade *made)
{
  if (made == NULL)
    return;
  g_free (made->blank);
  g_ptr_array_unref (made->steps);
  g_free (made);
}

gboolean
bf_made_has (const BfMade *made, const char *blank, const char *step)
{
  g_return_val_if_fail (blank != NULL && step != NULL, FALSE);

  return made != NULL && g_str_equal (made->blank, blank) &&
         g_ptr_array_find_with_equal_func (made->steps, step, g_str_equal, NULL);
}

static int
compare_words (gconstpointer a, gconstpointer b)
{
  return g_strcmp0 (*(const char *const *)a, *(const char *const *)b);
}

void
bf_made_set (BfMade *made, const char *step, gboolean done)
{
  guint at;
  gboolean there;

  g_return_if_fail (made != NULL && step != NULL);

  there = g_ptr_array_find_with_equal_func (made->steps, step, g_str_equal, &at);
  if (there && !done)
    g_ptr_array_remove_index (made->steps, at);
  if (there || !done)
    return;
  g_ptr_array_add (made->steps, g_strdup (step));
  g_ptr_array_sort (made->steps, compare_words);
}
