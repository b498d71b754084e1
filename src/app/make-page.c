/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/make-page.h"

#include <glib/gi18n.h>

#include "app/button-names.h"
#include "app/children.h"
#include "app/files-pane.h"
#include "app/pages-pane.h"
#include "app/reading-window.h"
#include "app/settings.h"
#include "app/step-pane.h"
#include "app/work-guide.h"
#include "app/work-list.h"
#include "make/work-ticks.h"

struct _BfMakePage
{
  GtkWidget parent_instance;
  BfWorkGuide *guide;
  GSettings *settings; /* or NULL */
  char *counted;       /* of which blank and paper the pages were counted */
  guint counting;      /* source, or 0 */
  gboolean is_setting; /* buttons are pressed by us, not by the person */

  GtkWidget *box;
  GtkToggleButton *corners_button, *all_button, *hand_button, *others_button;
  BfWorkList *work_list;
  GtkStack *panes;
  BfStepPane *step_pane;
  BfPagesPane *pages_pane;
  BfFilesPane *files_pane;
};

G_DEFINE_FINAL_TYPE (BfMakePage, bf_make_page, GTK_TYPE_WIDGET)

static gboolean
shows_step (BfMakePage *self)
{
  return g_strcmp0 (gtk_stack_get_visible_child_name (self->panes), "step") == 0;
}

/* ---- how many pages each way takes --------------------------------------------------------- */

static void
count_pages (BfMakePage *self, gboolean corners_only)
{
  guint n = bf_pages_pane_count (self->pages_pane, corners_only);
  g_autofree char *words = NULL;

  if (corners_only)
    /* Translators: %u is how many pages; _c is the key that presses the button */
    words =
        g_strdup_printf (ngettext ("Print _corners (%u page)", "Print _corners (%u pages)", n), n);
  else
    /* Translators: %u is how many pages; _a is the key that presses the button */
    words = g_strdup_printf (ngettext ("Print _all (%u page)", "Print _all (%u pages)", n), n);
  gtk_button_set_label (GTK_BUTTON (corners_only ? self->corners_button : self->all_button), words);
}

static gboolean
count_cb (gpointer user_data)
{
  BfMakePage *self = user_data;
  const BfWork *work = bf_work_guide_get_work (self->guide);

  self->counting = 0;
  if (work == NULL)
    return G_SOURCE_REMOVE;
  count_pages (self, TRUE);
  count_pages (self, FALSE);
  bf_name_buttons (GTK_WIDGET (self->corners_button));
  bf_name_buttons (GTK_WIDGET (self->all_button));
  return G_SOURCE_REMOVE;
}

/* Laying a template out takes a moment: it is done when there is nothing else to do, and only for
 * another blank or paper. */
static void
count_later (BfMakePage *self, const BfWork *work)
{
  g_autofree char *blank = bf_work_blank_word (work->fold);
  g_autofree char *words = g_strjoin ("\n", blank, bf_settings_paper (self->settings)->name, NULL);

  if (g_strcmp0 (words, self->counted) == 0)
    return;
  g_free (self->counted);
  self->counted = g_steal_pointer (&words);
  if (self->counting == 0)
    self->counting = g_idle_add_full (G_PRIORITY_LOW, count_cb, self, NULL);
}

/* Nothing is worked out while nobody looks. */
static void
update (BfMakePage *self)
{
  const BfWork *work;

  if (self->guide == NULL || !gtk_widget_get_mapped (GTK_WIDGET (self)))
    return;
  work = bf_work_guide_get_work (self->guide);
  if (work == NULL)
    return;
  bf_work_list_show (self->work_list, work);
  bf_work_list_choose (self->work_list,
                       shows_step (self) ? (int)bf_work_guide_get_step (self->guide) : -1);
  bf_step_pane_show (self->step_pane, work, bf_work_guide_get_step (self->guide));
  count_later (self, work);
}

static gboolean
is_marking (BfMakePage *self)
{
  const BfWork *work = bf_work_guide_get_work (self->guide);

  return work != NULL &&
         bf_work_step (work, bf_work_guide_get_step (self->guide))->stage == BF_STAGE_MARK;
}

/* The four ways stand for what is seen: none of them for a step that is not marking. */
static void
show_pane (BfMakePage *self, const char *pane, GtkToggleButton *way)
{
  GtkToggleButton *const ways[] = { self->corners_button, self->all_button, self->hand_button,
                                    self->others_button };

  self->is_setting = TRUE;
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    gtk_toggle_button_set_active (ways[i], ways[i] == way);
  self->is_setting = FALSE;
  gtk_stack_set_visible_child_name (self->panes, pane);
  update (self);
}

static void
show_step (BfMakePage *self)
{
  show_pane (self, "step", is_marking (self) ? self->hand_button : NULL);
}

static void
go_to_marking (BfMakePage *self)
{
  const BfWork *work = bf_work_guide_get_work (self->guide);

  if (work != NULL && !is_marking (self) && bf_work_n_steps (work, BF_STAGE_MARK) > 0)
    bf_work_guide_choose (self->guide, work->first[BF_STAGE_MARK]);
  show_step (self);
}

static void
way_cb (BfMakePage *self, GtkToggleButton *button)
{
  if (self->is_setting || self->guide == NULL || !gtk_toggle_button_get_active (button))
    return;
  if (button == self->hand_button)
    go_to_marking (self);
  else if (button == self->others_button)
    show_pane (self, "files", button);
  else
    {
      bf_pages_pane_set_corners_only (self->pages_pane, button == self->corners_button);
      show_pane (self, "pages", button);
    }
}

static void
step_chosen_cb (BfMakePage *self, guint step)
{
  bf_work_guide_choose (self->guide, step);
  show_step (self);
}

static void
step_ticked_cb (BfMakePage *self, guint step, gboolean done)
{
  bf_work_guide_tick (self->guide, step, done);
}

static void
done_cb (BfMakePage *self)
{
  bf_work_guide_go_on (self->guide);
  show_step (self);
}

static void
back_cb (BfMakePage *self)
{
  bf_work_guide_go_back (self->guide);
  show_step (self);
}

static void
enlarge_cb (BfMakePage *self)
{
  bf_reading_window_show (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))), self->guide);
}

static void
bf_make_page_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (bf_make_page_parent_class)->map (widget);
  update (BF_MAKE_PAGE (widget));
}

static void
bf_make_page_dispose (GObject *object)
{
  BfMakePage *self = BF_MAKE_PAGE (object);

  bf_widget_drop_children (GTK_WIDGET (self));
  g_clear_handle_id (&self->counting, g_source_remove);
  g_clear_pointer (&self->counted, g_free);
  g_clear_object (&self->settings);
  g_clear_object (&self->guide);
  G_OBJECT_CLASS (bf_make_page_parent_class)->dispose (object);
}

static void
bind_template (GtkWidgetClass *widget_class)
{
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, box);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, corners_button);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, all_button);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, hand_button);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, others_button);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, work_list);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, panes);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, step_pane);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, pages_pane);
  gtk_widget_class_bind_template_child (widget_class, BfMakePage, files_pane);
  gtk_widget_class_bind_template_callback (widget_class, way_cb);
  gtk_widget_class_bind_template_callback (widget_class, step_chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, step_ticked_cb);
  gtk_widget_class_bind_template_callback (widget_class, done_cb);
  gtk_widget_class_bind_template_callback (widget_class, back_cb);
  gtk_widget_class_bind_template_callback (widget_class, enlarge_cb);
}

static void
bf_make_page_class_init (BfMakePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = bf_make_page_dispose;
  widget_class->map = bf_make_page_map;
  g_type_ensure (BF_TYPE_WORK_LIST);
  g_type_ensure (BF_TYPE_STEP_PANE);
  g_type_ensure (BF_TYPE_PAGES_PANE);
  g_type_ensure (BF_TYPE_FILES_PANE);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/benchfold/Benchfold/make-page.ui");
  bind_template (widget_class);
}

static void
bf_make_page_init (BfMakePage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
bf_make_page_set_document (BfMakePage *self, BfDocument *document, GSettings *settings)
{
  g_return_if_fail (BF_IS_MAKE_PAGE (self) && self->guide == NULL);

  self->guide = bf_work_guide_new (document, settings);
  g_set_object (&self->settings, settings);
  bf_step_pane_set_document (self->step_pane, document, settings);
  bf_pages_pane_set_document (self->pages_pane, document, settings);
  if (settings != NULL)
    g_signal_connect_object (settings, "changed::paper", G_CALLBACK (update), self,
                             G_CONNECT_SWAPPED);
  g_signal_connect_object (self->guide, "changed", G_CALLBACK (update), self, G_CONNECT_SWAPPED);
  update (self);
}
