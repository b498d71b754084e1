/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/round-window.h"

#include <glib/gi18n.h>

#include "app/small-window.h"
#include "core/units.h"
#include "make/round-marks.h"

#define LIST_HEIGHT_PX 340
#define COLUMN_SPACING 18
#define ROW_SPACING 6

enum
{
  COLUMN_PIN,
  COLUMN_NAME,
  COLUMN_BEFORE,
  COLUMN_AFTER
};

typedef struct
{
  BfSmallWindow *frame;
  BfDocument *document;
  double step_mm;
  BfPart *rounded; /* what the button would make; or NULL */
  GtkGrid *sizes;
  GtkLabel *words;
  GtkWidget *round;
} RoundWindow;

/* What a box to tick pins, on the box. */
typedef struct
{
  RoundWindow *self;
  BfPinKind kind;
  guint at;
} Pin;

static void show_sizes (RoundWindow *self);

/* ---- words -------------------------------------------------------------------------------- */

static char *
size_name (const BfPart *part, const BfRoundSize *size)
{
  if (size->kind == BF_PIN_FLANGE)
    /* Translators: %s is a flange's name: "Length of front" */
    return g_strdup_printf (_ ("Length of %s"), bf_part_flange (part, size->at)->id);
  if (size->kind == BF_PIN_EDGE)
    /* Translators: %u counts the edges of the base from 1 */
    return g_strdup_printf (_ ("Length of base edge %u"), size->at + 1);
  /* Translators: %u counts the holes and cut-outs from 1 */
  return g_strdup_printf (size->across ? _ ("Opening %u, up") : _ ("Opening %u, along"),
                          size->at + 1);
}

/* How far all marks are off, now and then. */
static void
say (RoundWindow *self, BfPart *part)
{
  BfFold *now = bf_document_get_fold (self->document);
  g_autoptr (BfFold) then = bf_fold (self->rounded);
  g_autofree char *step = bf_format_length (self->step_mm, part->units);
  g_autofree char *off = bf_format_length (bf_marks_off_mm (now, self->step_mm), part->units);
  g_autofree char *off_then = bf_format_length (bf_marks_off_mm (then, self->step_mm), part->units);
  /* Translators: three lengths with their units */
  g_autofree char *words = g_strdup_printf (_ ("Off whole marks of %s, all marks together: %s now, "
                                               "%s then. Tick what matters: it stays."),
                                            step, off, off_then);

  gtk_label_set_label (self->words, words);
}

/* ---- the list ----------------------------------------------------------------------------- */

static void
pin_cb (GtkCheckButton *box, Pin *pin)
{
  RoundWindow *self = pin->self;
  BfPart *part = bf_document_get_part (self->document);
  gboolean pinned = gtk_check_button_get_active (box);
  g_autoptr (BfPart) edited = NULL;

  if (bf_part_is_pinned (part, pin->kind, pin->at) == pinned)
    return;
  edited = bf_edit_pin (part, pin->kind, pin->at, pinned);
  bf_document_apply (self->document, edited,
                     pinned ? _ ("Pin a size") : _ ("Let a size be rounded"), NULL);
  show_sizes (self);
}

static void
add_words (RoundWindow *self, const char *words, int column, int row)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), column == COLUMN_NAME ? 0.0F : 1.0F);
  gtk_grid_attach (self->sizes, label, column, row, 1, 1);
}

/* The box stays where it is when sizes are shown anew: the keyboard is on it. */
static void
add_box (RoundWindow *self, const BfRoundSize *size, const char *name, int row)
{
  GtkWidget *box = gtk_check_button_new ();
  Pin *pin = g_new0 (Pin, 1);
  /* Translators: names the box to tick that keeps a size as it is: "Length of front" */
  g_autofree char *words = g_strdup_printf (_ ("%s matters"), name);

  *pin = (Pin){ self, size->kind, size->at };
  gtk_check_button_set_active (
      GTK_CHECK_BUTTON (box),
      bf_part_is_pinned (bf_document_get_part (self->document), size->kind, size->at));
  gtk_accessible_update_property (GTK_ACCESSIBLE (box), GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  gtk_grid_attach (self->sizes, box, COLUMN_PIN, row, 1, 1);
  g_object_set_data_full (G_OBJECT (box), "pin", pin, g_free);
  g_signal_connect (box, "toggled", G_CALLBACK (pin_cb), pin);
}

static void
show_numbers (RoundWindow *self, const BfRoundSize *size, int row)
{
  BfUnits units = bf_document_get_part (self->document)->units;
  g_autofree char *before = bf_format_fine (size->before_mm, units);
  g_autofree char *after = bf_format_fine (size->after_mm, units);
  g_autofree char *words = g_strconcat ("→ ", after, NULL);
  GtkWidget *numbers[] = { gtk_grid_get_child_at (self->sizes, COLUMN_BEFORE, row),
                           gtk_grid_get_child_at (self->sizes, COLUMN_AFTER, row) };

  gtk_label_set_label (GTK_LABEL (numbers[0]), before);
  gtk_label_set_label (GTK_LABEL (numbers[1]), bf_round_size_moved (size) ? words : "");
}

static void
add_row (RoundWindow *self, const BfRoundSize *size, int row)
{
  g_autofree char *name = size_name (bf_document_get_part (self->document), size);

  if (!size->across)
    add_box (self, size, name, row);
  add_words (self, name, COLUMN_NAME, row);
  add_words (self, "", COLUMN_BEFORE, row);
  add_words (self, "", COLUMN_AFTER, row);
}

static void
show_sizes (RoundWindow *self)
{
  BfPart *part = bf_document_get_part (self->document);
  g_autoptr (GArray) sizes = NULL;
  gboolean moves = FALSE;

  g_clear_pointer (&self->rounded, bf_part_unref);
  self->rounded = bf_round_marks (part, self->step_mm, &sizes);
  for (guint i = 0; i < sizes->len; i++)
    {
      const BfRoundSize *size = &g_array_index (sizes, BfRoundSize, i);

      if (gtk_grid_get_child_at (self->sizes, COLUMN_NAME, (int)i) == NULL)
        add_row (self, size, (int)i);
      show_numbers (self, size, (int)i);
      moves = moves || bf_round_size_moved (size);
    }
  gtk_widget_set_sensitive (self->round, moves);
  if (moves)
    say (self, part);
  else
    gtk_label_set_label (self->words, _ ("Nothing would come nearer to whole marks."));
}

/* ---- all ---------------------------------------------------------------------------------- */

static void
round_cb (RoundWindow *self)
{
  bf_document_apply (self->document, self->rounded, _ ("Round marks"), NULL);
  gtk_window_destroy (self->frame->window);
}

static void
round_window_free (gpointer data)
{
  RoundWindow *self = data;

  g_clear_pointer (&self->rounded, bf_part_unref);
  g_object_unref (self->document);
  g_free (self);
}

static void
add_list (RoundWindow *self)
{
  GtkWidget *scrolled = gtk_scrolled_window_new ();

  self->sizes = GTK_GRID (gtk_grid_new ());
  gtk_grid_set_column_spacing (self->sizes, COLUMN_SPACING);
  gtk_grid_set_row_spacing (self->sizes, ROW_SPACING);
  gtk_widget_set_margin_end (GTK_WIDGET (self->sizes), COLUMN_SPACING);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), GTK_WIDGET (self->sizes));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER,
                                  GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scrolled), LIST_HEIGHT_PX);
  gtk_grid_attach (self->frame->grid, scrolled, 0, self->frame->n_rows++, 2, 1);
}

void
bf_round_window_open (GtkWidget *anchor, BfDocument *document, double step_mm)
{
  RoundWindow *self;

  g_return_if_fail (GTK_IS_WIDGET (anchor) && bf_document_get_part (document) != NULL);

  self = g_new0 (RoundWindow, 1);
  self->document = g_object_ref (document);
  self->step_mm = step_mm;
  self->frame = bf_small_window_new (anchor, _ ("Round marks"));
  g_object_set_data_full (G_OBJECT (self->frame->window), "round", self, round_window_free);
  add_list (self);
  self->words = bf_small_window_add_words (self->frame, "");
  self->round = bf_small_window_add_button (self->frame, _ ("_Round"), TRUE);
  g_signal_connect_swapped (self->round, "clicked", G_CALLBACK (round_cb), self);
  show_sizes (self);
  bf_small_window_present (self->frame, _ ("_Close"));
}
