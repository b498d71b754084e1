/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-segments.h"

#include <string.h>

static void
segment_clear (gpointer data)
{
  g_free (((BfSetupSegment *)data)->words);
}

static void
add_words (GArray *segments, GString *words)
{
  BfSetupSegment segment = { NULL, BF_N_SETUP };

  if (words->len == 0)
    return;
  segment.words = g_strdup (words->str);
  g_array_append_val (segments, segment);
  g_string_truncate (words, 0);
}

/* The length of a placeholder at p, 0 where there is none; next is the phrase that "%s" means. */
static size_t
read_placeholder (const char *p, guint next, guint *phrase)
{
  if (p[0] != '%')
    return 0;
  if (p[1] == 's')
    {
      *phrase = next;
      return 2;
    }
  if (p[1] >= '1' && p[1] <= '9' && p[2] == '$' && p[3] == 's')
    {
      *phrase = (guint)(p[1] - '1');
      return 4;
    }
  return 0;
}

GArray *
bf_setup_segments (const char *format)
{
  g_return_val_if_fail (format != NULL, NULL);

  GArray *segments = g_array_new (FALSE, TRUE, sizeof (BfSetupSegment));
  g_autoptr (GString) words = g_string_new (NULL);
  guint next = 0;

  g_array_set_clear_func (segments, segment_clear);
  while (*format != '\0')
    {
      guint phrase = BF_N_SETUP;
      size_t length = read_placeholder (format, next, &phrase);
      if (length == 0 || phrase >= BF_N_SETUP)
        {
          g_string_append_c (words, *format++);
          continue;
        }
      add_words (segments, words);
      BfSetupSegment segment = { NULL, (BfSetupPhrase)phrase };
      g_array_append_val (segments, segment);
      next = phrase + 1;
      format += length;
    }
  add_words (segments, words);
  return segments;
}
