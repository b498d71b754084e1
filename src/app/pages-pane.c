/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/pages-pane.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/page-picture.h"
#include "app/printers.h"
#include "app/settings.h"
#include "app/size-field.h"
#include "app/window.h"
#include "core/own-pens.h"
#include "core/names.h"
#include "core/part-title.h"
#include "core/setup-sentence.h"
#include "make/work-ticks.h"
#include "paint/template.h"

#define PICTURE_WIDTH_PX 250

/* The bar on every page that the person measures, by units. */
#define BAR_MM 100.0
#define BAR_IN_MM 101.6

/* A template and, in words, what it is of. */
typedef struct
{
  BfTemplate *template; /* or NULL */
  char *words;
} Kept;

struct _BfPagesPane
{
  GtkWidget parent_instance;
  BfDocument *document;
  GSettings *settings; /* or NULL */
  gboolean corners_only;
  Kept kept[2]; /* all of the blank; corners only */
  char *shown;  /* what the pictures are of, in words that tell; NULL for none yet */

  GtkLabel *pages_label, *bars_label, *scale_label;
  GtkFlowBox *pages_box;
  GtkDropDown *paper_list;
  GtkBox *bars_box;
  GtkCheckButton *mirror_button;
  GtkWidget *bars[2]; /* what the bar measures across a page and down it */
};

G_DEFINE_FINAL_TYPE (BfPagesPane, bf_pages_pane, GTK_TYPE_WIDGET)

static void
kept_clear (Kept *kept)
{
  g_clear_pointer (&kept->template, bf_template_free);
  g_clear_pointer (&kept->words, g_free);
}

static BfWindow *
window_of (BfPagesPane *self)
{
  return BF_WINDOW (gtk_widget_get_root (GTK_WIDGET (self)));
}

static double
bar_mm (BfPagesPane *self)
{
  BfPart *part = bf_document_get_part (self->document);

  return part != NULL && part->units == BF_UNITS_IN ? BAR_IN_MM : BAR_MM;
}

static BfPrinterScale
scale_now (BfPagesPane *self)
{
  g_autofree char *printer = bf_printers_last (self->settings);

  return bf_printers_scale (self->settings, printer, bf_settings_paper (self->settings)->name);
}

static void
empty_pages (BfPagesPane *self)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self->pages_box))) != NULL)
    gtk_flow_box_remove (self->pages_box, child);
}

static void
say_pages (BfPagesPane *self, const BfTemplate *template, const BfPaper *paper)
{
  guint n = bf_template_n_pages (template);
  g_autofree char *words = NULL;

  if (self->corners_only)
    /* Translators: %u is how many pages, %s a paper's name, such as A4 */
    words = g_strdup_printf (
        ngettext ("Corners and holes at full size take %u page of %s; the tape does the rest.",
                  "Corners and holes at full size take %u pages of %s; the tape does the rest.", n),
        n, paper->name);
  else
    /* Translators: %u is how many pages, %s a paper's name, such as A4 */
    words = g_strdup_printf (ngettext ("The template at full size takes %u page of %s.",
                                       "The template at full size takes %u pages of %s.", n),
                             n, paper->name);
  gtk_label_set_label (self->pages_label, words);
}

/* All that pages say. Returns: (transfer full), or NULL of nothing. */
static char *
what_is_shown (const BfFold *fold)
{
  g_autofree char *blank = fold != NULL ? bf_work_blank_word (fold) : NULL;
  g_autofree char *setup = fold != NULL ? bf_setup_sentence (fold->part) : NULL;
  g_autofree char *title = fold != NULL ? bf_part_title (fold->part) : NULL;
  g_autofree char *pens = bf_pens_in_words (bf_own_pens ());

  return fold != NULL
             ? g_strjoin ("\n", blank, title, setup, bf_units_name (fold->part->units), pens, NULL)
             : NULL;
}

/* And how they are laid out. Returns: (transfer full). */
static char *
how_laid_out (const BfFold *fold, const BfTemplateOptions *options)
{
  g_autofree char *words = what_is_shown (fold);

  return g_strdup_printf ("%s\n%s %d %.6f %.6f", words, options->paper->name, options->mirror,
                          options->printer.x, options->printer.y);
}

/* Laying out takes a moment: it is done once for the same pages. */
static const BfTemplate *
lay_out (BfPagesPane *self, BfFold *fold, gboolean corners_only)
{
  Kept *kept = &self->kept[corners_only ? 1 : 0];
  BfTemplateOptions options = bf_window_get_how (window_of (self))->template;
  g_autofree char *words = NULL;

  options.paper = bf_settings_paper (self->settings);
  options.units = fold->part->units;
  options.printer = scale_now (self);
  options.corners_only = corners_only;
  words = how_laid_out (fold, &options);
  if (g_strcmp0 (words, kept->words) == 0)
    return kept->template;
  kept_clear (kept);
  kept->template = bf_template_new (fold, &options);
  kept->words = g_steal_pointer (&words);
  return kept->template;
}

guint
bf_pages_pane_count (BfPagesPane *self, gboolean corners_only)
{
  BfFold *fold;

  g_return_val_if_fail (BF_IS_PAGES_PANE (self), 0);

  fold = self->document != NULL ? bf_document_get_fold (self->document) : NULL;
  return fold != NULL ? bf_template_n_pages (lay_out (self, fold, corners_only)) : 0;
}

static void
show_pages (BfPagesPane *self, BfFold *fold)
{
  const BfTemplate *template = lay_out (self, fold, self->corners_only);

  say_pages (self, template, bf_settings_paper (self->settings));
  for (guint i = 0; i < bf_template_n_pages (template); i++)
    gtk_flow_box_append (self->pages_box, bf_page_picture_new (template, i, PICTURE_WIDTH_PX));
}

/* ---- how far off the printer is ----------------------------------------------------------- */

static void
say_scale (BfPagesPane *self, const BfPrinterScale *scale)
{
  g_autofree char *printer = bf_printers_last (self->settings);
  const char *whose = printer[0] != '\0' ? printer : _ ("your printer");
  g_autofree char *words =
      bf_printer_scale_is_none (scale)
          /* Translators: %s is a printer's name, or "your printer" */
          ? g_strdup_printf (_ ("Of %s: nothing to correct."), whose)
          /* Translators: %s is a printer's name, or "your printer" */
          : g_strdup_printf (_ ("Of %s: pages are drawn so that they come out true."), whose);

  gtk_label_set_label (self->scale_label, words);
}

static void
show_scale (BfPagesPane *self)
{
  BfPart *part = bf_document_get_part (self->document);
  BfPrinterScale scale = scale_now (self);
  const double factors[2] = { scale.x, scale.y };

  if (part == NULL)
    return;
  gtk_label_set_label (self->bars_label, part->units == BF_UNITS_IN
                                             ? _ ("The 4 in bars measure")
                                             : _ ("The 100 mm bars measure"));
  for (guint i = 0; i < 2; i++)
    bf_size_field_show (BF_SIZE_FIELD (self->bars[i]), factors[i] * bar_mm (self), part->units,
                        NULL);
  say_scale (self, &scale);
}

static void update (BfPagesPane *self);

static void
lay_out_anew (BfPagesPane *self)
{
  g_clear_pointer (&self->shown, g_free);
  update (self);
}

static void
bar_set_cb (BfPagesPane *self)
{
  g_autofree char *printer = bf_printers_last (self->settings);
  g_autoptr (GError) error = NULL;
  BfPrinterScale scale;

  if (!bf_printer_scale_from_bars (
          bar_mm (self), bf_size_field_get_size (BF_SIZE_FIELD (self->bars[0])),
          bf_size_field_get_size (BF_SIZE_FIELD (self->bars[1])), &scale, &error))
    {
      show_scale (self);
      gtk_label_set_label (self->scale_label, error->message);
      return;
    }
  bf_printers_note_scale (self->settings, printer, bf_settings_paper (self->settings)->name, scale);
  lay_out_anew (self);
}

/* Fields stand after the words they belong to. */
static void
add_bars (BfPagesPane *self)
{
  const char *const names[] = { _ ("What the bar across measures"),
                                _ ("What the bar down measures") };
  GtkWidget *after = gtk_widget_get_next_sibling (GTK_WIDGET (self->bars_label));

  for (guint i = 0; i < 2; i++)
    {
      self->bars[i] = bf_size_field_new (BF_SIZE_FIELD_LENGTH, names[i]);
      gtk_editable_set_width_chars (GTK_EDITABLE (self->bars[i]), 7);
      gtk_editable_set_max_width_chars (GTK_EDITABLE (self->bars[i]), 7);
      gtk_widget_set_valign (self->bars[i], GTK_ALIGN_CENTER);
      g_signal_connect_object (self->bars[i], "size-set", G_CALLBACK (bar_set_cb), self,
                               G_CONNECT_SWAPPED);
      gtk_box_insert_child_after (self->bars_box, self->bars[i], after);
      after = gtk_widget_get_next_sibling (self->bars[i]);
    }
}

/* ---- what is chosen ----------------------------------------------------------------------- */

static void
set_how (BfPagesPane *self)
{
  BfOutputHow how = *bf_window_get_how (window_of (self));

  how.template.corners_only = self->corners_only;
  how.template.mirror = gtk_check_button_get_active (self->mirror_button);
  bf_window_set_how (window_of (self), &how);
}

static void
mirror_cb (BfPagesPane *self)
{
  lay_out_anew (self);
}

static void
paper_chosen_cb (BfPagesPane *self)
{
  guint n;
  const BfPaper *papers = bf_papers (&n);
  guint chosen = gtk_drop_down_get_selected (self->paper_list);

  if (self->settings == NULL || chosen >= n ||
      &papers[chosen] == bf_settings_paper (self->settings))
    return;
  g_settings_set_string (self->settings, "paper", papers[chosen].name);
  lay_out_anew (self);
}

static void
list_papers (BfPagesPane *self)
{
  guint n;
  const BfPaper *papers = bf_papers (&n);
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  for (guint i = 0; i < n; i++)
    gtk_string_list_append (names, papers[i].name);
  gtk_drop_down_set_model (self->paper_list, G_LIST_MODEL (names));
  /* What has the focus is a button within, which would be called by its class. */
  gtk_accessible_update_property (
      GTK_ACCESSIBLE (gtk_widget_get_first_child (GTK_WIDGET (self->paper_list))),
      GTK_ACCESSIBLE_PROPERTY_LABEL, _ ("Paper"), -1);
  for (guint i = 0; i < n; i++)
    if (&papers[i] == bf_settings_paper (self->settings))
      gtk_drop_down_set_selected (self->paper_list, i);
  g_signal_connect_object (self->paper_list, "notify::selected", G_CALLBACK (paper_chosen_cb), self,
                           G_CONNECT_SWAPPED);
}

/* Pages are drawn when they are looked at, not at every edit; and not anew for a tick. */
static void
update (BfPagesPane *self)
{
  BfFold *fold = self->document != NULL ? bf_document_get_fold (self->document) : NULL;
  g_autofree char *words = NULL;

  if (!gtk_widget_get_mapped (GTK_WIDGET (self)))
    return;
  words = what_is_shown (fold);
  if (g_strcmp0 (words, self->shown) == 0)
    return;
  empty_pages (self);
  g_free (self->shown);
  self->shown = g_steal_pointer (&words);
  if (fold == NULL)
    return;
  set_how (self);
  show_scale (self);
  show_pages (self, fold);
}

/* The printer may be another one than when this was last looked at. */
static void
bf_pages_pane_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (bf_pages_pane_parent_class)->map (widget);
  lay_out_anew (BF_PAGES_PANE (widget));
}

static void
bf_pages_pane_dispose (GObject *object)
{
  BfPagesPane *self = BF_PAGES_PANE (object);

  g_clear_object (&self->document);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->shown, g_free);
  for (guint i = 0; i < G_N_ELEMENTS (self->kept); i++)
    kept_clear (&self->kept[i]);
  bf_widget_drop_children (GTK_WIDGET (self));
  G_OBJECT_CLASS (bf_pages_pane_parent_class)->dispose (object);
}

static void
bf_pages_pane_class_init (BfPagesPaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_pages_pane_dispose;
  widget_class->map = bf_pages_pane_map;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/pages-pane.ui");
  gtk_widget_class_bind_template_child (widget_class, BfPagesPane, pages_label);
  gtk_widget_class_bind_template_child (widget_class, BfPagesPane, bars_label);
  gtk_widget_class_bind_template_child (widget_class, BfPagesPane, bars_box);
  gtk_widget_class_bind_template_child (widget_class, BfPagesPane, scale_label);
  gtk_widget_class_bind_template_child (widget_class, BfPagesPane, pages_box);
  gtk_widget_class_bind_template_child (widget_class, BfPagesPane, paper_list);
  gtk_widget_class_bind_template_child (widget_class, BfPagesPane, mirror_button);
  gtk_widget_class_bind_template_callback (widget_class, mirror_cb);
}

static void
bf_pages_pane_init (BfPagesPane *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  add_bars (self);
}

void
bf_pages_pane_set_document (BfPagesPane *self, BfDocument *document, GSettings *settings)
{
  g_return_if_fail (BF_IS_PAGES_PANE (self) && self->document == NULL);

  self->document = g_object_ref (document);
  g_set_object (&self->settings, settings);
  list_papers (self);
  g_signal_connect_object (document, "changed", G_CALLBACK (update), self, G_CONNECT_SWAPPED);
  update (self);
}

void
bf_pages_pane_set_corners_only (BfPagesPane *self, gboolean corners_only)
{
  g_return_if_fail (BF_IS_PAGES_PANE (self));

  self->corners_only = corners_only;
  lay_out_anew (self);
}
