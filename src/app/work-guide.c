/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/work-guide.h"

#include <glib/gi18n.h>

#include "app/settings.h"
#include "core/edit.h"
#include "make/work-ticks.h"

struct _BfWorkGuide
{
  GObject parent_instance;
  BfDocument *document;
  GSettings *settings; /* or NULL */
  BfWork *work;        /* or NULL */
  char *blank;         /* the work's: bf_work_blank_word() */
  guint step;
  gboolean is_stale; /* the work is to be made anew of the same fold */
};

G_DEFINE_FINAL_TYPE (BfWorkGuide, bf_work_guide, G_TYPE_OBJECT)

enum
{
  SIGNAL_CHANGED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static gboolean
is_ticked (BfWorkGuide *self, guint step)
{
  g_autofree char *word = bf_work_step_word (self->work, step);

  return bf_made_has (self->work->fold->part->made, self->blank, word);
}

static guint
first_to_do (BfWorkGuide *self)
{
  guint n = self->work->steps->len;

  for (guint i = 0; i < n; i++)
    if (!is_ticked (self, i))
      return i;
  return n > 0 ? n - 1 : 0;
}

/* Another blank is begun from the first step; a tick leaves one where one is. */
static void
work_anew (BfWorkGuide *self, BfFold *fold)
{
  g_autofree char *blank = bf_work_blank_word (fold);
  gboolean is_same = self->work != NULL && g_strcmp0 (blank, self->blank) == 0;

  BfWorkOptions options = { bf_settings_marks (self->settings, fold->part->units),
                            bf_settings_guide_offset_mm (self->settings) };

  g_clear_pointer (&self->work, bf_work_free);
  self->work = bf_work_new (fold, &options);
  self->is_stale = FALSE;
  g_free (self->blank);
  self->blank = g_steal_pointer (&blank);
  if (!is_same || self->step >= self->work->steps->len)
    self->step = first_to_do (self);
}

const BfWork *
bf_work_guide_get_work (BfWorkGuide *self)
{
  BfFold *fold;

  g_return_val_if_fail (BF_IS_WORK_GUIDE (self), NULL);

  fold = bf_document_get_fold (self->document);
  if (fold == NULL)
    g_clear_pointer (&self->work, bf_work_free);
  else if (self->work == NULL || self->work->fold != fold || self->is_stale)
    work_anew (self, fold);
  return self->work != NULL && self->work->steps->len > 0 ? self->work : NULL;
}

guint
bf_work_guide_get_step (BfWorkGuide *self)
{
  g_return_val_if_fail (BF_IS_WORK_GUIDE (self), 0);

  return bf_work_guide_get_work (self) != NULL ? self->step : 0;
}

void
bf_work_guide_choose (BfWorkGuide *self, guint step)
{
  const BfWork *work = bf_work_guide_get_work (self);

  g_return_if_fail (work != NULL && step < work->steps->len);

  if (step == self->step)
    return;
  self->step = step;
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
}

void
bf_work_guide_tick (BfWorkGuide *self, guint step, gboolean done)
{
  const BfWork *work = bf_work_guide_get_work (self);
  g_autofree char *word = NULL;
  g_autoptr (BfPart) part = NULL;

  g_return_if_fail (work != NULL && step < work->steps->len);

  if (is_ticked (self, step) == !!done)
    return;
  word = bf_work_step_word (work, step);
  part = bf_edit_tick (bf_document_get_part (self->document), self->blank, word, done);
  bf_document_apply (self->document, part, done ? _ ("Tick a step") : _ ("Take a tick away"), NULL);
}

void
bf_work_guide_go_on (BfWorkGuide *self)
{
  const BfWork *work = bf_work_guide_get_work (self);
  guint step;

  if (work == NULL)
    return;
  step = self->step;
  if (step + 1 < work->steps->len)
    self->step = step + 1;
  if (is_ticked (self, step))
    g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
  else
    bf_work_guide_tick (self, step, TRUE);
}

void
bf_work_guide_go_back (BfWorkGuide *self)
{
  if (bf_work_guide_get_work (self) != NULL && self->step > 0)
    bf_work_guide_choose (self, self->step - 1);
}

static void
settings_changed_cb (BfWorkGuide *self)
{
  self->is_stale = TRUE;
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
}

static void
document_changed_cb (BfWorkGuide *self)
{
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
}

static void
bf_work_guide_finalize (GObject *object)
{
  BfWorkGuide *self = BF_WORK_GUIDE (object);

  g_clear_pointer (&self->work, bf_work_free);
  g_free (self->blank);
  g_object_unref (self->document);
  g_clear_object (&self->settings);
  G_OBJECT_CLASS (bf_work_guide_parent_class)->finalize (object);
}

static void
bf_work_guide_class_init (BfWorkGuideClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = bf_work_guide_finalize;
  signals[SIGNAL_CHANGED] = g_signal_new ("changed", BF_TYPE_WORK_GUIDE, G_SIGNAL_RUN_LAST, 0, NULL,
                                          NULL, NULL, G_TYPE_NONE, 0);
}

static void
bf_work_guide_init (BfWorkGuide *self)
{
  (void)self;
}

BfWorkGuide *
bf_work_guide_new (BfDocument *document, GSettings *settings)
{
  static const char *const keys[] = { "changed::guide-offset", "changed::marks-mm",
                                      "changed::marks-in" };
  BfWorkGuide *self;

  g_return_val_if_fail (BF_IS_DOCUMENT (document), NULL);

  self = g_object_new (BF_TYPE_WORK_GUIDE, NULL);
  self->document = g_object_ref (document);
  g_set_object (&self->settings, settings);
  if (settings != NULL)
    for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
      g_signal_connect_object (settings, keys[i], G_CALLBACK (settings_changed_cb), self,
                               G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_changed_cb), self,
                           G_CONNECT_SWAPPED);
  return self;
}
