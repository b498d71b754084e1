/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <locale.h>

#include <glib/gi18n.h>

#include "app/app.h"

/* What is installed, or where nothing is what was built: a build speaks every language at once. */
static const char *
locale_dir (void)
{
  return g_file_test (BF_LOCALE_DIR "/de/LC_MESSAGES/" GETTEXT_PACKAGE ".mo", G_FILE_TEST_EXISTS)
             ? BF_LOCALE_DIR
             : BF_BUILT_LOCALE_DIR;
}

int
main (int argc, char **argv)
{
  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, locale_dir ());
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
  return bf_app_run (argc, argv);
}
