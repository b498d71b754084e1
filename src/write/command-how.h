/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "write/command-line.h"

/* The options that say how an output is made, and that are bad usage without the output they
 * belong to. Each reads one option's value into the command; FALSE with BF_COMMAND_ERROR_USAGE
 * where it is not one. value: NULL where the option takes none. */

gboolean bf_command_how_corners_only (BfCommand *command, const char *value, GError **error);
gboolean bf_command_how_mirror (BfCommand *command, const char *value, GError **error);
gboolean bf_command_how_printer_scale (BfCommand *command, const char *value, GError **error);
gboolean bf_command_how_kerf (BfCommand *command, const char *value, GError **error);
gboolean bf_command_how_bend_lines (BfCommand *command, const char *value, GError **error);
gboolean bf_command_how_marks (BfCommand *command, const char *value, GError **error);
gboolean bf_command_how_guide_offset (BfCommand *command, const char *value, GError **error);

/* FALSE with an error where one of them was given and nothing is asked for that it goes with.
 * With --report a template is laid out for its pages, where a paper is given. */
gboolean bf_command_how_check (const BfCommand *command, GError **error);

/* How outputs are made whose words are in those units. FALSE with BF_COMMAND_ERROR_USAGE, how
 * untouched, where the marks asked for are of others. */
gboolean
bf_command_how_in_units (const BfCommand *command, BfUnits units, BfOutputHow *how, GError **error);
