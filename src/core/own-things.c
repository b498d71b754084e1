/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/own-things.h"

#include "core/own-drills.h"
#include "core/own-folder.h"
#include "core/own-metals.h"
#include "core/own-trials.h"

static const struct
{
  const BfOwnKind *kind;
  void (*read_again) (void);
} things[] = {
  [BF_OWN_METAL] = { &bf_own_metal_kind, bf_own_metals_read_again },
  [BF_OWN_DRILLS] = { &bf_own_drill_kind, bf_own_drills_read_again },
  [BF_OWN_TRIAL] = { &bf_own_trial_kind, bf_own_trials_read_again },
};

gboolean
bf_own_thing_remove (BfOwnThing what, const char *id, GBytes **removed, GError **error)
{
  g_return_val_if_fail (what < BF_N_OWN_THINGS && id != NULL && removed != NULL, FALSE);

  if (!bf_own_remove (things[what].kind, id, removed, error))
    return FALSE;
  things[what].read_again ();
  return TRUE;
}

gboolean
bf_own_thing_put_back (BfOwnThing what, const char *id, GBytes *removed, GError **error)
{
  g_return_val_if_fail (what < BF_N_OWN_THINGS && id != NULL && removed != NULL, FALSE);

  if (!bf_own_put_back (things[what].kind, id, removed, error))
    return FALSE;
  things[what].read_again ();
  return TRUE;
}
