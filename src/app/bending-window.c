/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/bending-window.h"

#include <glib/gi18n.h>

#include "app/length-row.h"
#include "app/setup-changes.h"
#include "app/setup-edit.h"
#include "app/small-window.h"
#include "app/sums-window.h"
#include "app/window.h"
#include "core/defaults.h"
#include "core/edit.h"
#include "core/own-trials.h"
#include "core/units.h"
#include "fold/slot-plan.h"
#include "make/bend-notes.h"

#define K_STEP 0.01
#define LEAST_PUSH_N 20.0
#define MOST_PUSH_N 1000.0
#define PUSH_N 200.0 /* EN 1005-3, at work */
#define PUSH_STEP_N 10.0
#define BOARD_STEPS_FROM_MM 300.0

/* Rows of the list of rules. */
enum
{
  RULE_OWN, /* the way's own K */
  RULE_K,
  RULE_DIN,
  RULE_SOFT,
  RULE_MEDIUM,
  RULE_HARD,
  RULE_TRIAL, /* there only where a trial bend fits or is chosen */
};

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  GtkDropDown *rule;
  GtkSpinButton *k;
  GtkSpinButton *push;
  GtkLabel *words, *plan;
  gboolean showing; /* what is shown is not typed */
} BendingWindow;

static const BfPart *
part_of (BendingWindow *self)
{
  return bf_document_get_part (self->document);
}

static guint
rule_row (const BfAllowance *allowance)
{
  switch (allowance->rule)
    {
    case BF_ALLOWANCE_K_FACTOR:
      return RULE_K;
    case BF_ALLOWANCE_DIN_6935:
      return RULE_DIN;
    case BF_ALLOWANCE_HANDBOOK:
      return (guint)RULE_SOFT + (guint)allowance->group;
    case BF_ALLOWANCE_TRIAL_BEND:
      return RULE_TRIAL;
    case BF_ALLOWANCE_UNSET:
    default:
      return isnan (allowance->k) ? (guint)RULE_OWN : (guint)RULE_K;
    }
}

/* What the part says of itself once sizes of a finished one corrected it; else nothing. */
static char *
corrected_words (const BfPart *part)
{
  if (part->bend.corrected == NULL)
    return g_strdup ("");
  /* Translators: a day, "2026-01-31"; begins with a space, since it follows a sentence. */
  return g_strdup_printf (_ (" Corrected on %s by what the first one measured."),
                          part->bend.corrected);
}

static void
show (BendingWindow *self)
{
  const BfPart *part = part_of (self);
  BfFold *fold = bf_document_get_fold (self->document);
  BfBend bend = bf_part_resolve_bend (part, NULL);
  g_autofree char *k = bf_part_k_words (fold), *expect = bf_setup_expect_words (fold);
  g_autofree char *corrected = corrected_words (part);
  g_autofree char *plan = bf_bend_plan_text (fold, part->units);
  g_autofree char *words = g_strdup_printf ("K %s. %s%s", k, expect, corrected);

  self->showing = TRUE;
  gtk_drop_down_set_selected (self->rule, rule_row (&part->bend.allowance));
  gtk_spin_button_set_value (self->k, bend.allowance.k);
  gtk_widget_set_sensitive (GTK_WIDGET (self->k), rule_row (&part->bend.allowance) == RULE_K);
  gtk_spin_button_set_value (self->push, isnan (bend.hand_limit_n) ? PUSH_N : bend.hand_limit_n);
  gtk_label_set_label (self->words, words);
  gtk_label_set_label (self->plan, plan);
  gtk_widget_set_visible (GTK_WIDGET (self->plan), plan[0] != '\0');
  self->showing = FALSE;
}

static void
radius_given (double radius_mm, gpointer user_data)
{
  BendingWindow *self = user_data;

  bf_setup_edit (self->document, bf_edit_bend_radius (part_of (self), radius_mm),
                 _ ("Inside radius"), "inside-radius");
}

static void
lever_given (double lever_mm, gpointer user_data)
{
  BendingWindow *self = user_data;
  const BfPart *part = part_of (self);

  bf_setup_edit (self->document,
                 bf_edit_hand (part, part->bend.hand_limit_n, lever_mm > 0.0 ? lever_mm : NAN),
                 _ ("Lever"), "lever");
}

static void
slot_given (double slot_mm, gpointer user_data)
{
  BendingWindow *self = user_data;
  const BfPart *part = part_of (self);

  bf_setup_edit (self->document,
                 bf_edit_slots (part, slot_mm > 0.0 ? slot_mm : NAN, part->bend.bridge_mm),
                 _ ("Slots"), "slot-length");
}

static void
bridge_given (double bridge_mm, gpointer user_data)
{
  BendingWindow *self = user_data;
  const BfPart *part = part_of (self);

  bf_setup_edit (self->document,
                 bf_edit_slots (part, part->bend.slot_mm, bridge_mm > 0.0 ? bridge_mm : NAN),
                 _ ("Slots"), "bridge-length");
}

static void
left_given (double left_mm, gpointer user_data)
{
  BendingWindow *self = user_data;

  bf_setup_edit (self->document, bf_edit_score_left (part_of (self), left_mm > 0.0 ? left_mm : NAN),
                 _ ("Score"), "score");
}

static void
push_cb (BendingWindow *self)
{
  const BfPart *part = part_of (self);

  if (!self->showing)
    bf_setup_edit (
        self->document,
        bf_edit_hand (part, gtk_spin_button_get_value (self->push), part->bend.hand_lever_mm),
        _ ("Push"), "push");
}

static void
k_cb (BendingWindow *self)
{
  BfAllowance allowance = { .rule = BF_ALLOWANCE_K_FACTOR,
                            .k = gtk_spin_button_get_value (self->k) };

  if (!self->showing)
    bf_setup_edit (self->document, bf_edit_allowance (part_of (self), &allowance), _ ("Allowance"),
                   "k-factor");
}

static BfPart *
with_rule (const BfPart *part, guint row)
{
  BfAllowance allowance = { .rule = BF_ALLOWANCE_UNSET, .k = NAN };

  if (row == RULE_TRIAL)
    {
      const BfTrialRecord *trial = bf_own_trial_for (part);
      return trial != NULL ? bf_edit_trial_bend (part, trial) : NULL;
    }
  if (row == RULE_K)
    {
      allowance.rule = BF_ALLOWANCE_K_FACTOR;
      allowance.k = bf_part_resolve_bend (part, NULL).allowance.k;
    }
  else if (row == RULE_DIN)
    allowance.rule = BF_ALLOWANCE_DIN_6935;
  else if (row >= RULE_SOFT && row <= RULE_HARD)
    {
      allowance.rule = BF_ALLOWANCE_HANDBOOK;
      allowance.group = (BfHandbookGroup)(row - RULE_SOFT);
    }
  return bf_edit_allowance (part, &allowance);
}

static void
rule_cb (BendingWindow *self)
{
  guint row = gtk_drop_down_get_selected (self->rule);
  const BfPart *part = part_of (self);

  if (!self->showing && row != rule_row (&part->bend.allowance))
    bf_setup_edit (self->document, with_rule (part, row), _ ("Allowance"), NULL);
}

static void
bending_window_free (gpointer data)
{
  BendingWindow *self = data;

  g_signal_handlers_disconnect_by_data (self->document, self);
  g_object_unref (self->document);
  g_free (self);
}

static GtkWidget *
rules_new (const BfPart *part)
{
  const char *rules[] = { _ ("K of the way of bending, a rule of thumb"),
                          _ ("K of your own"),
                          _ ("DIN 6935"),
                          _ ("Handbook, soft metal"),
                          _ ("Handbook, medium metal"),
                          _ ("Handbook, hard metal"),
                          _ ("Trial bend"),
                          NULL };

  if (bf_own_trial_for (part) == NULL && part->bend.allowance.rule != BF_ALLOWANCE_TRIAL_BEND)
    rules[RULE_TRIAL] = NULL;
  return gtk_drop_down_new_from_strings (rules);
}

/* A length that may be left out: what it is, what stands for it then, and where steps begin. */
typedef struct
{
  const char *label, *placeholder;
  double length_mm, usual_mm;
} Length;

static void
add_length (BendingWindow *self, Length length, BfLengthGiven given)
{
  BfUnits units = part_of (self)->units;
  g_autofree char *usual = bf_format_thin_number (length.usual_mm, units);
  GtkWidget *row =
      bf_length_row_new (length.length_mm, units,
                         length.placeholder != NULL ? length.placeholder : usual, given, self);

  bf_length_row_make_live (row, length.usual_mm);
  bf_small_window_add (self->frame, length.label, row);
}

/* The first slot that is planned, and the bridge beside it: where steps begin. */
static void
add_slots (BendingWindow *self)
{
  const BfFold *fold = bf_document_get_fold (self->document);
  const BfBend *bend = &part_of (self)->bend;
  BfSlotTool tool = bf_slot_tool (part_of (self));
  double slot_mm = tool.shortest_mm, bridge_mm = tool.least_bridge_mm;

  for (guint i = fold->bends->len; i > 0; i--)
    if (bf_fold_bend (fold, i - 1)->slots->len > 0)
      slot_mm = bf_bend_slot (bf_fold_bend (fold, i - 1), 0)->length_mm;
  add_length (self, (Length){ _ ("Slot length"), _ ("planned"), bend->slot_mm, slot_mm },
              slot_given);
  add_length (self, (Length){ _ ("Bridge length"), _ ("planned"), bend->bridge_mm, bridge_mm },
              bridge_given);
}

static void
add_hand (BendingWindow *self)
{
  const BfBend *bend = &part_of (self)->bend;

  self->push =
      GTK_SPIN_BUTTON (gtk_spin_button_new_with_range (LEAST_PUSH_N, MOST_PUSH_N, PUSH_STEP_N));
  bf_small_window_add (self->frame, _ ("What you can push, N"), GTK_WIDGET (self->push));
  add_length (self,
              (Length){ _ ("Board or pliers to push on"), _ ("none"), bend->hand_lever_mm,
                        BOARD_STEPS_FROM_MM },
              lever_given);
  if (bf_part_resolve_bend (part_of (self), NULL).way == BF_BEND_WAY_SLOTS)
    add_slots (self);
  self->plan = bf_small_window_add_words (self->frame, "");
}

static void
add_rows (BendingWindow *self)
{
  const BfPart *part = part_of (self);
  BfBend bend = bf_part_resolve_bend (part, NULL);
  if (bend.way == BF_BEND_WAY_SCORE)
    add_length (self,
                (Length){ _ ("Skin left under the groove"), NULL, part->bend.score_left_mm,
                          bf_default_score_left_mm (part->metal.thickness_mm) },
                left_given);
  else
    add_length (self,
                (Length){ _ ("Inside radius: how tight"), NULL, part->bend.inside_radius_mm,
                          bend.inside_radius_mm },
                radius_given);
  self->rule = GTK_DROP_DOWN (rules_new (part));
  bf_small_window_add (self->frame, _ ("Allowance"), GTK_WIDGET (self->rule));
  self->k = GTK_SPIN_BUTTON (gtk_spin_button_new_with_range (0.0, 1.0, K_STEP));
  gtk_spin_button_set_digits (self->k, 3);
  bf_small_window_add (self->frame, "K", GTK_WIDGET (self->k));
  self->words = bf_small_window_add_words (self->frame, "");
  add_hand (self);
}

static void
sums_cb (BendingWindow *self)
{
  GtkWindow *below = gtk_window_get_transient_for (self->frame->window);

  bf_sums_window_open (GTK_WIDGET (self->frame->window), self->document,
                       BF_IS_WINDOW (below) ? bf_window_get_settings (BF_WINDOW (below)) : NULL,
                       "");
}

static void
add_sums_button (BendingWindow *self)
{
  GtkWidget *button = bf_small_window_add_button (self->frame, _ ("Show the s_um…"), FALSE);

  gtk_widget_set_sensitive (button, bf_document_get_fold (self->document)->bends->len > 0);
  g_signal_connect_swapped (button, "clicked", G_CALLBACK (sums_cb), self);
}

void
bf_bending_window_open (GtkWidget *anchor, BfDocument *document)
{
  BendingWindow *self;

  g_return_if_fail (GTK_IS_WIDGET (anchor) && bf_document_get_part (document) != NULL);

  self = g_new0 (BendingWindow, 1);
  self->document = g_object_ref (document);
  self->frame = bf_small_window_new (anchor, _ ("Bending, in detail"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "bending", self, bending_window_free);
  add_rows (self);
  add_sums_button (self);
  show (self);
  g_signal_connect_swapped (self->rule, "notify::selected", G_CALLBACK (rule_cb), self);
  g_signal_connect_swapped (self->k, "value-changed", G_CALLBACK (k_cb), self);
  g_signal_connect_swapped (self->push, "value-changed", G_CALLBACK (push_cb), self);
  g_signal_connect_swapped (document, "changed", G_CALLBACK (show), self);
  bf_small_window_present (self->frame, _ ("_Close"));
}
