/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

/* A small window of our own that says what went wrong, or asks what to do. */

/* answer: the number of the button, from 0; −1 where the window was closed. */
typedef void (*BfMessageAnswered) (int answer, gpointer user_data);

/* Shows a message over parent. title: one sentence; detail: what to do about it, or NULL. */
void bf_message_show (GtkWindow *parent, const char *title, const char *detail);

typedef struct
{
  const char *title;          /* one sentence, translated */
  const char *detail;         /* what it is about; NULL for nothing */
  const char *const *buttons; /* NULL-terminated, translated, the safest first; the last is
                               * suggested and is what Return presses */
} BfQuestion;

/* Asks. answered is called once. */
void bf_message_ask (GtkWindow *parent,
                     const BfQuestion *question,
                     BfMessageAnswered answered,
                     gpointer user_data);
