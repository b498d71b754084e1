/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>

#include "core/part-file.h"
#include "random-part.h"

/* write-parts DIR N: saves N random parts there, for test-schema.py to look over. */
int
main (int argc, char **argv)
{
  guint32 n = argc == 3 ? (guint32)strtoul (argv[2], NULL, 10) : 0;

  if (n == 0)
    {
      g_printerr ("usage: write-parts DIR N\n");
      return 2;
    }
  for (guint32 seed = 1; seed <= n; seed++)
    {
      g_autoptr (BfPart) part = random_part (seed);
      g_autofree char *name = g_strdup_printf ("part-%u" BF_PART_FILE_SUFFIX, seed);
      g_autoptr (GFile) file = g_file_new_build_filename (argv[1], name, NULL);
      g_autoptr (GError) error = NULL;

      if (!bf_part_save (part, file, &error))
        g_error ("%s: %s", name, error->message);
    }
  return 0;
}
