/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>

#include "core/part-file.h"

/* judge-part FILE…: for each file a line, "ok" or the error's code and message, for
 * test-schema-agrees.py. */
int
main (int argc, char **argv)
{
  for (int i = 1; i < argc; i++)
    {
      g_autoptr (GFile) file = g_file_new_for_path (argv[i]);
      g_autoptr (GError) error = NULL;
      g_autoptr (BfPart) part = bf_part_load (file, &error);

      if (part != NULL)
        printf ("ok\n");
      else
        printf ("%d %s\n", error->code, error->message);
    }
  return 0;
}
