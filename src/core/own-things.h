/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

/* What goes for all things of the person's own that there may be several of. */

typedef enum
{
  BF_OWN_METAL,
  BF_OWN_DRILLS,
  BF_OWN_TRIAL,
  BF_N_OWN_THINGS,
} BfOwnThing;

/* Takes one away: parts that were made with it keep what they have (a metal's id, a K, drill
 * sizes), and of a metal lose its figures. removed: (out) (transfer full): what
 * bf_own_thing_put_back() takes; NULL where it was gone already. error: BF_PART_ERROR_WRITE, and it
 * is as it was. */
gboolean bf_own_thing_remove (BfOwnThing what, const char *id, GBytes **removed, GError **error);

/* Brings one back as it was, to the byte. error: as above. */
gboolean bf_own_thing_put_back (BfOwnThing what, const char *id, GBytes *removed, GError **error);
