/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

#include "paint/paper.h"
#include "paint/printer-scale.h"

/* How far off each printer is on each paper, as the person measured it. settings may be NULL: then
 * every printer is right. */

/* The printer that was last printed on, "" for none. Returns: (transfer full). */
char *bf_printers_last (GSettings *settings) G_GNUC_WARN_UNUSED_RESULT;
void bf_printers_note_last (GSettings *settings, const char *printer);

/* printer: as the system calls it, "" where it is not known. paper: its name. */
BfPrinterScale bf_printers_scale (GSettings *settings, const char *printer, const char *paper);
void bf_printers_note_scale (GSettings *settings,
                             const char *printer,
                             const char *paper,
                             BfPrinterScale scale);
