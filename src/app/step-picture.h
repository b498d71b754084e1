/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "make/work.h"

G_BEGIN_DECLS

/* A step of the work as a picture on white paper; lines and words in it are as large as the words
 * of its window ask, which are larger where it is read from afar. */

#define BF_TYPE_STEP_PICTURE (bf_step_picture_get_type ())
G_DECLARE_FINAL_TYPE (BfStepPicture, bf_step_picture, BF, STEP_PICTURE, GtkWidget)

/* work is kept by pointer: let it live until another one, or NULL, is shown. */
void bf_step_picture_show (BfStepPicture *self, const BfWork *work, guint step);

G_END_DECLS
