/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* Saving that may take a while: it goes on beside the window, which stays alive; what takes longer
 * than a moment shows how far it is, and can be stopped. */

/* Called in a thread of its own: whatever it reads must not change meanwhile. */
typedef gboolean (*BfSavingWork) (gpointer data, GError **error);

/* Called when it is over, in the window's thread. error: NULL where all is saved,
 * G_IO_ERROR_CANCELLED where the person stopped it. */
typedef void (*BfSavingDone) (gpointer data, const GError *error);

/* What the work writes through bf_pdf_pages() is watched (write/output-watch.h). parent: lives as
 * long. */
void bf_saving_run (GtkWindow *parent, BfSavingWork work, BfSavingDone done, gpointer data);
