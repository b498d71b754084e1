/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/keeper.h"

/* So long a change may wait, so that ten in a row make one file. */
#define WAIT_MS 300

typedef struct _Writing Writing;

struct _BfKeeper
{
  GObject parent_instance;
  BfDocument *document;
  BfKeptWork *work;    /* NULL while nothing has to be kept */
  Writing *writing;    /* what the thread does now, NULL for nothing */
  guint timer;         /* 0 for none */
  gboolean due;        /* something is not written yet */
  gboolean complained; /* that it can't be kept was said */
};

G_DEFINE_FINAL_TYPE (BfKeeper, bf_keeper, G_TYPE_OBJECT)

enum
{
  SIGNAL_FAILED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

/* One part on its way to the disk. */
struct _Writing
{
  BfKeeper *keeper; /* NULL once it was waited for */
  GThread *thread;
  BfKeptWork *work;
  BfPart *part;
  GError *error;
};

static void start_timer (BfKeeper *self);

static void
complain (BfKeeper *self, const GError *error)
{
  if (error != NULL && !self->complained)
    g_signal_emit (self, signals[SIGNAL_FAILED], 0, error->message);
  self->complained = error != NULL;
}

/* Waits for the thread, if it has not ended yet, and drops what it held: a lock among it. */
static void
end_writing (BfKeeper *self)
{
  Writing *writing = self->writing;

  if (writing == NULL)
    return;
  g_thread_join (writing->thread);
  writing->keeper = NULL;
  self->writing = NULL;
  if (writing->error != NULL)
    self->due = TRUE;
  complain (self, writing->error);
  g_clear_error (&writing->error);
  g_clear_pointer (&writing->work, bf_kept_work_unref);
  g_clear_pointer (&writing->part, bf_part_unref);
}

static gboolean
written_cb (gpointer user_data)
{
  Writing *writing = user_data;

  if (writing->keeper != NULL)
    {
      g_autoptr (BfKeeper) self = g_object_ref (writing->keeper);
      end_writing (self);
      if (self->due)
        start_timer (self);
    }
  g_free (writing);
  return G_SOURCE_REMOVE;
}

static gpointer
write_thread (gpointer user_data)
{
  Writing *writing = user_data;

  bf_kept_work_write (writing->work, writing->part, &writing->error);
  g_idle_add_full (G_PRIORITY_DEFAULT, written_cb, writing, NULL);
  return NULL;
}

static gboolean
have_room (BfKeeper *self)
{
  g_autoptr (GError) error = NULL;

  if (self->work != NULL)
    return TRUE;
  g_autoptr (BfKeptWork) work = bf_kept_work_new (&error);
  if (work == NULL || !bf_kept_work_set_origin (work, bf_document_get_file (self->document),
                                                bf_document_get_file_tag (self->document), &error))
    {
      complain (self, error);
      return FALSE;
    }
  self->work = g_steal_pointer (&work);
  return TRUE;
}

static void
start_writing (BfKeeper *self)
{
  if (!self->due || self->writing != NULL || !have_room (self))
    return;

  Writing *writing = g_new0 (Writing, 1);
  writing->keeper = self;
  writing->work = bf_kept_work_ref (self->work);
  writing->part = bf_part_ref (bf_document_get_part (self->document));
  self->due = FALSE;
  self->writing = writing;
  writing->thread = g_thread_new ("keeper", write_thread, writing);
}

static gboolean
timer_cb (gpointer user_data)
{
  BfKeeper *self = user_data;

  self->timer = 0;
  start_writing (self);
  return G_SOURCE_REMOVE;
}

static void
start_timer (BfKeeper *self)
{
  if (self->timer == 0 && self->writing == NULL)
    self->timer = g_timeout_add (WAIT_MS, timer_cb, self);
}

static void
forget (BfKeeper *self)
{
  g_clear_handle_id (&self->timer, g_source_remove);
  end_writing (self);
  self->due = FALSE;
  if (self->work != NULL)
    bf_kept_work_remove (self->work);
  g_clear_pointer (&self->work, bf_kept_work_unref);
}

/* Work on another file than what is kept here: that one was left with its window. */
static gboolean
is_on_another (BfKeeper *self)
{
  GFile *file = bf_document_get_file (self->document);
  GFile *kept = self->work != NULL ? bf_kept_work_get_file (self->work) : file;

  return file != kept && (file == NULL || kept == NULL || !g_file_equal (file, kept));
}

static void
changed_cb (BfKeeper *self)
{
  if (!bf_document_is_changed (self->document) || is_on_another (self))
    forget (self);
  if (!bf_document_is_changed (self->document))
    return;
  self->due = TRUE;
  start_timer (self);
}

static void
bf_keeper_dispose (GObject *object)
{
  BfKeeper *self = BF_KEEPER (object);

  if (self->document != NULL)
    {
      g_signal_handlers_disconnect_by_data (self->document, self);
      bf_keeper_flush (self);
    }
  g_clear_handle_id (&self->timer, g_source_remove);
  g_clear_pointer (&self->work, bf_kept_work_unref);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (bf_keeper_parent_class)->dispose (object);
}

static void
bf_keeper_class_init (BfKeeperClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = bf_keeper_dispose;
  signals[SIGNAL_FAILED] = g_signal_new ("failed", BF_TYPE_KEEPER, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                         NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
bf_keeper_init (BfKeeper *self)
{
  (void)self;
}

BfKeeper *
bf_keeper_new (BfDocument *document)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (document), NULL);

  BfKeeper *self = g_object_new (BF_TYPE_KEEPER, NULL);
  self->document = g_object_ref (document);
  g_signal_connect_swapped (document, "changed", G_CALLBACK (changed_cb), self);
  changed_cb (self);
  return self;
}

void
bf_keeper_flush (BfKeeper *self)
{
  g_return_if_fail (BF_IS_KEEPER (self));

  g_clear_handle_id (&self->timer, g_source_remove);
  end_writing (self);
  start_writing (self);
  end_writing (self);
}

gboolean
bf_keeper_take_up (BfKeeper *self, BfKeptWork *work, GError **error)
{
  g_return_val_if_fail (BF_IS_KEEPER (self) && work != NULL, FALSE);

  g_autoptr (BfPart) part = bf_kept_work_read (work, error);
  if (part == NULL)
    return FALSE;
  forget (self);
  self->work = bf_kept_work_ref (work);
  bf_document_recover_part (self->document, part, bf_kept_work_get_file (work),
                            bf_kept_work_get_tag (work));
  return TRUE;
}
