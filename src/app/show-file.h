/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gio/gio.h>

/* Opens the file manager on the file's folder, with the file picked out where the file manager can
 * do that. */
void bf_show_in_folder (GFile *file);
