/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

#include "core/part.h"
#include "paint/paper.h"
#include "write/outputs.h"

/* What a person asked for on the command line, as a value; no display and no toolkit needed.
 *
 * The program's main function calls bf_command_parse(), then bf_command_run(), and opens the
 * window only where bf_command_opens_window() says so. */

typedef enum
{
  BF_EXIT_DONE = 0,
  BF_EXIT_BAD_INPUT = 1,
  BF_EXIT_BAD_USAGE = 2,
  BF_EXIT_NOT_WRITTEN = 3,
} BfExit;

typedef enum
{
  BF_COMMAND_ERROR_USAGE, /* an option that is not there, lacks its value, stands twice… */
  BF_COMMAND_ERROR_DATA,  /* the program's own data are not where they should be */
} BfCommandError;

#define BF_COMMAND_ERROR (bf_command_error_quark ())
GQuark bf_command_error_quark (void);

typedef struct
{
  GPtrArray *files; /* char *, as given: what the outputs are of, or what the window opens. After
                       --demo the one part that the demo writes. */
  gboolean help, version;
  gboolean report;
  char *template_path;                        /* NULL: none asked */
  GPtrArray *patterns;                        /* char *, each ending in .svg, .dxf or .pdf */
  char *marking_path;                         /* ending in .pdf or .csv; NULL: none asked */
  char *strip_path;                           /* ending in .pdf; NULL: none asked */
  char *card_path, *model_path, *gauges_path; /* NULL: none asked */
  char *pack_dir;                             /* NULL: none asked */
  char *demo_dir;                             /* NULL: none asked */
  const BfPaper *paper;                       /* NULL: not given */
  gboolean has_units;                         /* FALSE: each part's own */
  BfUnits units;
  BfOutputHow how;
  char *guide_offset;                                   /* as given; NULL: not given */
  gboolean has_printer_scale, has_kerf, has_bend_lines; /* whether they were given */
} BfCommand;

/* Reads argv (argv[0] is the program's name; argv is not changed). The message of an error reads
 * "--option: what is wrong". Returns: (transfer full), or NULL with error set. */
BfCommand *bf_command_parse (int argc, char **argv, GError **error) G_GNUC_WARN_UNUSED_RESULT;
void bf_command_free (BfCommand *command);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfCommand, bf_command_free)

/* Writes everything that is asked for, prints what went wrong as one line on stderr, and returns
 * the exit status. Does nothing, and returns 0, where only the window is asked for. */
int bf_command_run (const BfCommand *command);

/* TRUE where command->files (none: an empty page) are to be opened in the window when
 * bf_command_run() has returned 0. */
gboolean bf_command_opens_window (const BfCommand *command);

/* Prints an error of bf_command_parse() as one line on stderr. Returns: the exit status. */
int bf_command_refuse (const GError *error);

/* Says that there is no display to open a window on: on stdout after a demo, whose outputs are
 * written all the same, else on stderr. Returns: the exit status. */
int bf_command_no_display (const BfCommand *command);
