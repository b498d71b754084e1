/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/files-pane.h"

#include <glib/gi18n.h>

#include "app/children.h"
#include "app/window.h"

struct _BfFilesPane
{
  GtkWidget parent_instance;
  GtkBox *rows_box;
  GtkCheckButton *kerf_button;
  GtkDropDown *bend_lines_list;
};

G_DEFINE_FINAL_TYPE (BfFilesPane, bf_files_pane, GTK_TYPE_WIDGET)

/* What can be saved: the target of win.save-output, what it is, what it is for. A row without a
 * target is a heading. */
static const struct
{
  const char *target, *title, *words;
} rows[] = {
  { "dxf", N_ ("For a cutting machine (DXF)"),
    N_ ("Cut lines, bend lines and words on layers of their own; true arcs, closed contours.") },
  { "svg", N_ ("A drawing in mm (SVG)"),
    N_ ("The same lines in groups, for a drawing program or a plotter.") },
  { "pdf", N_ ("On one page (PDF)"),
    N_ ("The whole blank at full size on a page as large as it takes.") },
  { "pack", N_ ("All that a service asks for (a folder)"),
    N_ ("Pattern as DXF and SVG, a page with the sizes, a note; holes and bridges looked at.") },
  { NULL, N_ ("Papers for the bench"), NULL },
  { "card", N_ ("Make card (PDF)"),
    N_ ("Sizes, steps to tick, bends in order, cautions; room for what was measured.") },
  { "marking", N_ ("Marking out by hand (PDF)"),
    N_ ("Every step of marking out with rule and square, a picture each.") },
  { "distances", N_ ("Distances for marking out (CSV)"), N_ ("The same distances as a table.") },
  { "gauges", N_ ("Angle gauges (PDF)"),
    N_ ("One for each bend that is not square, to cut from card or metal.") },
  { "model", N_ ("Card model (PDF)"),
    N_ ("The part to fold from card first, to see that it goes together.") },
  { "strip", N_ ("Strips for a trial bend (PDF)"),
    N_ ("What your metal and your bar take for a bend, found before the real thing is cut.") },
};

static GtkWidget *
label_new (const char *words, const char *css_class)
{
  GtkWidget *label = gtk_label_new (words);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0f);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  if (css_class != NULL)
    gtk_widget_add_css_class (label, css_class);
  return label;
}

static GtkWidget *
row_new (guint i)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18);
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *button = gtk_button_new ();
  /* Translators: names a button that saves a file; %s is what the file is */
  g_autofree char *name = g_strdup_printf (_ ("Save: %s"), _ (rows[i].title));

  gtk_box_append (GTK_BOX (words), label_new (_ (rows[i].title), NULL));
  gtk_box_append (GTK_BOX (words), label_new (_ (rows[i].words), "quiet"));
  gtk_widget_set_hexpand (words, TRUE);
  gtk_widget_add_css_class (words, "file-words");
  gtk_button_set_child (GTK_BUTTON (button), gtk_label_new (_ ("Save…")));
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), "win.save-output");
  gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", rows[i].target);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_box_append (GTK_BOX (row), words);
  gtk_box_append (GTK_BOX (row), button);
  return row;
}

static GtkWidget *
heading_new (guint i)
{
  GtkWidget *heading = label_new (_ (rows[i].title), "stage");

  gtk_widget_set_margin_top (heading, 12);
  return heading;
}

static void
how_cb (BfFilesPane *self)
{
  GtkRoot *window = gtk_widget_get_root (GTK_WIDGET (self));
  guint lines = gtk_drop_down_get_selected (self->bend_lines_list);
  BfOutputHow how;

  if (!BF_IS_WINDOW (window) || lines > BF_BEND_LINES_NOTCHES)
    return;
  how = *bf_window_get_how (BF_WINDOW (window));
  how.kerf = gtk_check_button_get_active (self->kerf_button);
  how.bend_lines = (BfBendLines)lines;
  bf_window_set_how (BF_WINDOW (window), &how);
}

static void
bf_files_pane_dispose (GObject *object)
{
  bf_widget_drop_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (bf_files_pane_parent_class)->dispose (object);
}

static void
bf_files_pane_class_init (BfFilesPaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_files_pane_dispose;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/files-pane.ui");
  gtk_widget_class_bind_template_child (widget_class, BfFilesPane, rows_box);
  gtk_widget_class_bind_template_child (widget_class, BfFilesPane, kerf_button);
  gtk_widget_class_bind_template_child (widget_class, BfFilesPane, bend_lines_list);
  gtk_widget_class_bind_template_callback (widget_class, how_cb);
}

static void
bf_files_pane_init (BfFilesPane *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    gtk_box_append (self->rows_box, rows[i].target != NULL ? row_new (i) : heading_new (i));
  gtk_accessible_update_property (
      GTK_ACCESSIBLE (gtk_widget_get_first_child (GTK_WIDGET (self->bend_lines_list))),
      GTK_ACCESSIBLE_PROPERTY_LABEL, _ ("Bend lines"), -1);
}
