/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* Every key that does something, in one table: the program binds those that hold wherever the focus
 * is, and the list of keys shows them all, so that the two can't differ. */

typedef enum
{
  BF_KEYS_EVERYWHERE,
  BF_KEYS_BEGIN,
  BF_KEYS_SIZES,
  BF_KEYS_BENCH,
  BF_N_KEY_GROUPS,
} BfKeyGroup;

typedef struct
{
  BfKeyGroup group;
  const char *action;    /* what to bind them to; NULL where a widget listens itself */
  const char *accels[3]; /* as accelerators: "<Control>s"; NULL-terminated */
  const char *what;      /* not translated yet; see bf_key_words() */
} BfKey;

/* All keys, by group. n_keys: (out). Owned by the library. */
const BfKey *bf_keys (guint *n_keys);

/* What the keys do, and where a group holds; translated. Owned by the library. */
const char *bf_key_words (const BfKey *key);
const char *bf_key_group_words (BfKeyGroup group);
