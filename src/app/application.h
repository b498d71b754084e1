/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define BF_APPLICATION_ID "org.benchfold.Benchfold"
#define BF_APPLICATION_PATH "/org/benchfold/Benchfold"

/* The running program: its windows, its keys, and what is alike for all of them. */

#define BF_TYPE_APPLICATION (bf_application_get_type ())
G_DECLARE_FINAL_TYPE (BfApplication, bf_application, BF, APPLICATION, GtkApplication)

BfApplication *bf_application_new (void) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
