/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/large-blocks.h"

#include <malloc.h>

#define LARGE_BLOCK_BYTES (128 * 1024)
#define KEPT_BLOCK_BYTES (32 * 1024 * 1024)

void
bf_large_blocks_keep (gboolean keep)
{
  mallopt (M_MMAP_THRESHOLD, keep ? KEPT_BLOCK_BYTES : LARGE_BLOCK_BYTES);
  mallopt (M_TRIM_THRESHOLD, keep ? 2 * KEPT_BLOCK_BYTES : LARGE_BLOCK_BYTES);
  if (!keep)
    malloc_trim (0);
}
