/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/app.h"

#include <gtk/gtk.h>

#include "app/application.h"
#include "app/large-blocks.h"
#include "write/command-line.h"

/* The toolkit gets the files alone: every option was ours. */
static int
open_window (const BfCommand *command, char *program)
{
  g_autoptr (BfApplication) app = bf_application_new ();
  g_autoptr (GPtrArray) argv = g_ptr_array_new ();

  g_ptr_array_add (argv, program);
  for (guint i = 0; i < command->files->len; i++)
    g_ptr_array_add (argv, g_ptr_array_index (command->files, i));
  int argc = (int)argv->len;
  g_ptr_array_add (argv, NULL);
  return g_application_run (G_APPLICATION (app), argc, (char **)argv->pdata);
}

int
bf_app_run (int argc, char **argv)
{
  g_return_val_if_fail (argc > 0 && argv != NULL, BF_EXIT_BAD_USAGE);

  g_autoptr (GError) error = NULL;
  g_autoptr (BfCommand) command = bf_command_parse (argc, argv, &error);
  if (command == NULL)
    return bf_command_refuse (error);

  int status = bf_command_run (command);
  if (status != BF_EXIT_DONE || !bf_command_opens_window (command))
    return status;
  if (!gtk_init_check ())
    return bf_command_no_display (command);
  bf_large_blocks_set_up ();
  return open_window (command, argv[0]);
}
