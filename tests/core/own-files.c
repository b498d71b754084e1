/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "own-files.h"

char *
own_path (const char *folder, const char *name)
{
  g_autofree char *dir = g_build_filename (g_get_user_data_dir (), "benchfold", folder, NULL);

  g_assert_cmpint (g_mkdir_with_parents (dir, 0700), ==, 0);
  return g_build_filename (dir, name, NULL);
}

void
put_own (const char *folder, const char *name, const char *text)
{
  g_autofree char *path = own_path (folder, name);
  g_autoptr (GError) error = NULL;

  g_file_set_contents (path, text, -1, &error);
  g_assert_no_error (error);
}

char *
get_own (const char *folder, const char *name)
{
  g_autofree char *path = own_path (folder, name);
  g_autoptr (GError) error = NULL;
  char *text = NULL;

  g_file_get_contents (path, &text, NULL, &error);
  g_assert_no_error (error);
  return text;
}
