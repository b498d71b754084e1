/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

/* The program, behind one function, so that main() sees no GTK. */

/* Runs the command line: writes the outputs it asks for, with no display needed, and opens the
 * window where there is something to show and a display to show it on. argv[0] is the program's
 * name. Returns: the exit status. */
int bf_app_run (int argc, char **argv);
