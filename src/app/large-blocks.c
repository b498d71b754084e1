/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/large-blocks.h"

#include <glib.h>
#include <malloc.h>

#define LARGE_BLOCK_BYTES (128 * 1024)
#define KEPT_BLOCK_BYTES (32 * 1024 * 1024)

/* The window is open and has been painted. */
#define OPEN_MS 1000

static gboolean
keep_cb (gpointer user_data)
{
  (void)user_data;

  mallopt (M_MMAP_THRESHOLD, KEPT_BLOCK_BYTES);
  mallopt (M_TRIM_THRESHOLD, KEPT_BLOCK_BYTES);
  return G_SOURCE_REMOVE;
}

void
bf_large_blocks_set_up (void)
{
  mallopt (M_MMAP_THRESHOLD, LARGE_BLOCK_BYTES);
  g_timeout_add (OPEN_MS, keep_cb, NULL);
}
