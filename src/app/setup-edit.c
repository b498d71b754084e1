/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-edit.h"

#include "app/setup-changes.h"
#include "core/compare.h"
#include "core/defaults.h"
#include "core/drills.h"
#include "core/own-trials.h"
#include "core/setup-sentence.h"
#include "core/tolerance.h"

/* What a trial bend is looked up by. */
static gboolean
same_bend (const BfPart *a, const BfPart *b)
{
  BfBend first = bf_part_resolve_bend (a, NULL), second = bf_part_resolve_bend (b, NULL);

  return g_strcmp0 (a->metal.material, b->metal.material) == 0 &&
         bf_is_same_size (a->metal.thickness_mm, b->metal.thickness_mm) &&
         first.way == second.way &&
         bf_is_same_size (first.inside_radius_mm, second.inside_radius_mm);
}

void
bf_setup_edit (BfDocument *document, BfPart *part, const char *name, const char *merge_key)
{
  BfPart *fitted = NULL;

  g_return_if_fail (BF_IS_DOCUMENT (document));

  if (part == NULL)
    return;
  if (!same_bend (part, bf_document_get_part (document)))
    fitted = bf_edit_fit_trial_bend (part);
  bf_document_apply (document, fitted != NULL ? fitted : part, name, merge_key);
  g_clear_pointer (&fitted, bf_part_unref);
  bf_part_unref (part);
}

/* ---- what a change did -------------------------------------------------------------------- */

static gboolean
same_drills (const BfCutting *a, const BfCutting *b)
{
  if (a->drills != b->drills)
    return FALSE;
  return a->drills != BF_DRILLS_LIST || bf_drills_equal (a->drill_list_mm, b->drill_list_mm);
}

static gboolean
same_setup (const BfPart *a, const BfPart *b)
{
  g_autofree char *first = bf_setup_sentence (a), *second = bf_setup_sentence (b);
  BfAllowance had = bf_part_resolve_bend (a, NULL).allowance;
  BfAllowance has = bf_part_resolve_bend (b, NULL).allowance;

  return g_str_equal (first, second) && same_bend (a, b) && had.rule == has.rule &&
         had.group == has.group && bf_is_same_size (had.k, has.k) &&
         bf_is_same_size (bf_part_kerf_mm (a), bf_part_kerf_mm (b)) &&
         bf_is_same_size (bf_part_slack_mm (a), bf_part_slack_mm (b)) &&
         bf_is_same_size (a->bend.slot_mm, b->bend.slot_mm) &&
         bf_is_same_size (a->bend.bridge_mm, b->bend.bridge_mm) &&
         bf_is_same_size (a->bend.hand_limit_n, b->bend.hand_limit_n) &&
         bf_is_same_size (a->bend.hand_lever_mm, b->bend.hand_lever_mm) &&
         bf_is_same_size (a->bend.score_left_mm, b->bend.score_left_mm) &&
         same_drills (&a->cutting, &b->cutting);
}

typedef struct
{
  GtkLabel *label; /* not owned: it owns this */
  BfDocument *document;
  BfFold *shown; /* what the part was when it was last looked at */
} Telling;

static void
changed_cb (Telling *telling)
{
  BfFold *now = bf_document_get_fold (telling->document);
  g_autoptr (BfFold) before = telling->shown;
  g_autofree char *words = NULL;

  telling->shown = now != NULL ? bf_fold_ref (now) : NULL;
  if (now == before)
    return;
  if (now != NULL && before != NULL && !same_setup (before->asked, now->asked))
    words = bf_setup_changes (before, now);
  gtk_label_set_label (telling->label, words != NULL ? words : "");
  gtk_widget_set_tooltip_text (GTK_WIDGET (telling->label), words);
}

static void
telling_free (gpointer data)
{
  Telling *telling = data;

  g_signal_handlers_disconnect_by_data (telling->document, telling);
  g_object_unref (telling->document);
  g_clear_pointer (&telling->shown, bf_fold_unref);
  g_free (telling);
}

void
bf_setup_tell_changes (GtkLabel *label, BfDocument *document)
{
  Telling *telling = g_new0 (Telling, 1);

  telling->label = label;
  telling->document = g_object_ref (document);
  g_object_set_data_full (G_OBJECT (label), "telling", telling, telling_free);
  g_signal_connect_swapped (document, "changed", G_CALLBACK (changed_cb), telling);
  changed_cb (telling);
}
