/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "comma-locale.h"

#include <locale.h>

#define LOCALE "de_DE.UTF-8"

/* The locale is built before it is first asked for: glibc remembers what it has not found. A
 * folder for each test program, since they may run side by side. */
static gboolean
build_locale (void)
{
  g_autofree char *name = g_strconcat ("locales-", g_get_prgname (), NULL);
  g_autofree char *folder = g_test_build_filename (G_TEST_BUILT, name, NULL);
  g_autofree char *path = g_build_filename (folder, LOCALE, NULL);
  const char *const command[] = { "localedef", "-i", "de_DE", "-f", "UTF-8", path, NULL };

  g_mkdir_with_parents (folder, 0755);
  if (!g_file_test (path, G_FILE_TEST_IS_DIR))
    g_spawn_sync (NULL, (char **)command, NULL,
                  G_SPAWN_SEARCH_PATH | G_SPAWN_STDOUT_TO_DEV_NULL | G_SPAWN_STDERR_TO_DEV_NULL,
                  NULL, NULL, NULL, NULL, NULL, NULL);
  g_setenv ("LOCPATH", folder, TRUE);
  return setlocale (LC_NUMERIC, LOCALE) != NULL;
}

gboolean
comma_locale_begin (void)
{
  if (setlocale (LC_NUMERIC, LOCALE) != NULL || build_locale ())
    return TRUE;
  g_test_skip ("no locale with a decimal comma, and localedef made none");
  return FALSE;
}

void
comma_locale_end (void)
{
  setlocale (LC_NUMERIC, "C");
}
