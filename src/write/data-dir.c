/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/data-dir.h"

gboolean
bf_runs_from_build (void)
{
  g_autofree char *program = g_file_read_link ("/proc/self/exe", NULL);

  return program != NULL && g_str_has_prefix (program, BF_BUILD_DIR G_DIR_SEPARATOR_S);
}

char *
bf_data_path (const char *name)
{
  const char *asked = g_getenv ("BENCHFOLD_DATA");

  g_return_val_if_fail (name != NULL, NULL);

  if (asked != NULL && asked[0] != '\0')
    return g_build_filename (asked, name, NULL);
  return g_build_filename (bf_runs_from_build () ? BF_SOURCE_DATA_DIR : BF_DATA_DIR, name, NULL);
}

char *
bf_help_path (void)
{
  g_autofree char *folder = bf_runs_from_build ()
                                ? g_build_filename (BF_BUILD_DIR, "help", "html", NULL)
                                : g_build_filename (BF_DATA_DIR, "html", NULL);

  for (const char *const *name = g_get_language_names (); *name != NULL; name++)
    {
      g_autofree char *path = g_build_filename (folder, *name, "index.html", NULL);

      if (g_file_test (path, G_FILE_TEST_EXISTS))
        return g_steal_pointer (&path);
    }
  return g_build_filename (folder, "C", "index.html", NULL);
}
