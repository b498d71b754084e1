/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-segments.h"

/* The set-up sentence comes apart into words and phrases, whatever order a language has. */

typedef struct
{
  const char *format;
  const char *pieces; /* words as they stand, phrases as their number, divided by | */
} Case;

static const Case cases[] = {
  { "%s, cut by me with %s, bent %s, corners %s, sizes %s.",
    "0|, cut by me with |1|, bent |2|, corners |3|, sizes |4|." },
  { "%2$s schneidet %1$s", "1| schneidet |0" },
  { "%s%s", "0|1" },
  { "no phrase", "no phrase" },
  { "", "" },
  { "100 % %s", "100 % |0" },
  { "%9$s", "%9$s" },
  { "%s%s%s%s%s%s", "0|1|2|3|4|%s" },
  { "%", "%" },
};

static char *
join (GArray *segments)
{
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < segments->len; i++)
    {
      const BfSetupSegment *segment = &g_array_index (segments, BfSetupSegment, i);
      g_string_append (text, i > 0 ? "|" : "");
      if (segment->words != NULL)
        g_string_append (text, segment->words);
      else
        g_string_append_printf (text, "%d", (int)segment->phrase);
    }
  return g_string_free (text, FALSE);
}

static void
test_cases (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GArray) segments = bf_setup_segments (cases[i].format);
      g_autofree char *pieces = join (segments);
      g_assert_cmpstr (pieces, ==, cases[i].pieces);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/setup-segments/cases", test_cases);
  return g_test_run ();
}
