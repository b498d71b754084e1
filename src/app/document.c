/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/document.h"

#include <glib/gi18n.h>

#include "app/history.h"
#include "core/part-file.h"
#include "fold/fold.h"

struct _BfDocument
{
  GObject parent_instance;
  BfHistory *history; /* NULL while there is no part */
  BfFold *fold;
  GFile *file;
  char *file_tag; /* the file's etag when it was last read or written here */
};

G_DEFINE_FINAL_TYPE (BfDocument, bf_document, G_TYPE_OBJECT)

enum
{
  SIGNAL_CHANGED,
  N_SIGNALS
};
static guint signals[N_SIGNALS];

static char *
query_tag (GFile *file)
{
  g_autoptr (GFileInfo) info =
      g_file_query_info (file, G_FILE_ATTRIBUTE_ETAG_VALUE, G_FILE_QUERY_INFO_NONE, NULL, NULL);
  return info != NULL ? g_strdup (g_file_info_get_etag (info)) : NULL;
}

static void
set_file (BfDocument *self, GFile *file)
{
  g_set_object (&self->file, file);
  g_clear_pointer (&self->file_tag, g_free);
  if (file != NULL)
    self->file_tag = query_tag (file);
}

static void
part_changed (BfDocument *self)
{
  g_clear_pointer (&self->fold, bf_fold_unref);
  self->fold = bf_fold (bf_history_part (self->history));
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
}

static void
bf_document_finalize (GObject *object)
{
  BfDocument *self = BF_DOCUMENT (object);

  g_clear_pointer (&self->fold, bf_fold_unref);
  g_clear_pointer (&self->history, bf_history_free);
  g_clear_object (&self->file);
  g_clear_pointer (&self->file_tag, g_free);
  G_OBJECT_CLASS (bf_document_parent_class)->finalize (object);
}

static void
bf_document_class_init (BfDocumentClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = bf_document_finalize;
  signals[SIGNAL_CHANGED] = g_signal_new ("changed", BF_TYPE_DOCUMENT, G_SIGNAL_RUN_LAST, 0, NULL,
                                          NULL, NULL, G_TYPE_NONE, 0);
}

static void
bf_document_init (BfDocument *self)
{
  (void)self;
}

BfDocument *
bf_document_new (void)
{
  return g_object_new (BF_TYPE_DOCUMENT, NULL);
}

BfPart *
bf_document_get_part (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), NULL);
  return self->history != NULL ? bf_history_part (self->history) : NULL;
}

BfFold *
bf_document_get_fold (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), NULL);
  return self->fold;
}

GFile *
bf_document_get_file (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), NULL);
  return self->file;
}

const char *
bf_document_get_file_tag (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), NULL);
  return self->file_tag;
}

char *
bf_document_dup_title (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), NULL);

  const BfPart *part = bf_document_get_part (self);
  if (part != NULL && part->name != NULL && part->name[0] != '\0')
    return g_strdup (part->name);
  if (self->file == NULL)
    return g_strdup (_ ("New part"));
  g_autofree char *base = g_file_get_basename (self->file);
  if (g_str_has_suffix (base, BF_PART_FILE_SUFFIX))
    base[strlen (base) - strlen (BF_PART_FILE_SUFFIX)] = '\0';
  return g_filename_display_name (base);
}

gboolean
bf_document_is_changed (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), FALSE);
  return self->history != NULL && !bf_history_is_saved (self->history);
}

static void
start_history (BfDocument *self, BfPart *part)
{
  g_clear_pointer (&self->history, bf_history_free);
  self->history = bf_history_new (part);
}

void
bf_document_set_part (BfDocument *self, BfPart *part, GFile *file)
{
  g_return_if_fail (BF_IS_DOCUMENT (self) && part != NULL);

  start_history (self, part);
  if (file == NULL)
    bf_history_mark_unsaved (self->history);
  set_file (self, file);
  part_changed (self);
}

void
bf_document_recover_part (BfDocument *self, BfPart *part, GFile *file, const char *file_tag)
{
  g_return_if_fail (BF_IS_DOCUMENT (self) && part != NULL);

  start_history (self, part);
  bf_history_mark_unsaved (self->history);
  g_set_object (&self->file, file);
  g_free (self->file_tag);
  self->file_tag = g_strdup (file_tag);
  part_changed (self);
}

void
bf_document_apply (BfDocument *self, BfPart *part, const char *name, const char *merge_key)
{
  g_return_if_fail (BF_IS_DOCUMENT (self) && self->history != NULL && part != NULL);

  bf_history_push (self->history, part, name, merge_key);
  part_changed (self);
}

void
bf_document_take (BfDocument *self, BfPart *part, const char *name, gboolean stepped)
{
  bf_document_apply (self, part, name, stepped ? name : NULL);
  bf_part_unref (part);
}

const char *
bf_document_get_undo_name (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), NULL);
  return self->history != NULL ? bf_history_undo_name (self->history) : NULL;
}

const char *
bf_document_get_redo_name (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), NULL);
  return self->history != NULL ? bf_history_redo_name (self->history) : NULL;
}

void
bf_document_undo (BfDocument *self)
{
  g_return_if_fail (BF_IS_DOCUMENT (self));
  if (self->history != NULL && bf_history_undo (self->history))
    part_changed (self);
}

void
bf_document_redo (BfDocument *self)
{
  g_return_if_fail (BF_IS_DOCUMENT (self));
  if (self->history != NULL && bf_history_redo (self->history))
    part_changed (self);
}

void
bf_document_fold_again (BfDocument *self)
{
  g_return_if_fail (BF_IS_DOCUMENT (self));

  if (self->history != NULL)
    part_changed (self);
}

void
bf_document_end_step (BfDocument *self)
{
  g_return_if_fail (BF_IS_DOCUMENT (self));
  if (self->history != NULL)
    bf_history_break_merge (self->history);
}

gboolean
bf_document_load (BfDocument *self, GFile *file, GError **error)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self) && G_IS_FILE (file), FALSE);

  g_autoptr (BfPart) part = bf_part_load (file, error);
  if (part == NULL)
    return FALSE;
  g_autoptr (BfPart) settled = bf_fold_settled (part);
  bf_document_set_part (self, settled, file);
  return TRUE;
}

gboolean
bf_document_save (BfDocument *self, GFile *file, GError **error)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self) && self->history != NULL, FALSE);
  g_return_val_if_fail (file != NULL || self->file != NULL, FALSE);

  GFile *target = file != NULL ? file : self->file;
  if (!bf_part_save (bf_history_part (self->history), target, error))
    return FALSE;
  set_file (self, target);
  bf_history_mark_saved (self->history);
  g_signal_emit (self, signals[SIGNAL_CHANGED], 0);
  return TRUE;
}

gboolean
bf_document_file_is_foreign (BfDocument *self)
{
  g_return_val_if_fail (BF_IS_DOCUMENT (self), FALSE);

  if (self->file == NULL || self->file_tag == NULL)
    return FALSE;
  g_autofree char *tag = query_tag (self->file);
  return tag != NULL && g_strcmp0 (tag, self->file_tag) != 0;
}
