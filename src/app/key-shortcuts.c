/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/key-shortcuts.h"

#include "app/keys.h"

static void
bind (GtkShortcutController *controller, const char *action, const char *accel)
{
  g_autofree char *name = NULL;
  g_autoptr (GVariant) target = NULL;

  if (!g_action_parse_detailed_name (action, &name, &target, NULL))
    return;
  GtkShortcut *shortcut =
      gtk_shortcut_new (gtk_shortcut_trigger_parse_string (accel), gtk_named_action_new (name));
  gtk_shortcut_set_arguments (shortcut, target);
  gtk_shortcut_controller_add_shortcut (controller, shortcut);
}

void
bf_bind_keys (GtkWidget *popover)
{
  g_return_if_fail (GTK_IS_POPOVER (popover));

  GtkEventController *controller = gtk_shortcut_controller_new ();
  guint n;
  const BfKey *keys = bf_keys (&n);

  gtk_event_controller_set_propagation_phase (controller, GTK_PHASE_CAPTURE);
  for (guint i = 0; i < n; i++)
    for (guint k = 0; keys[i].action != NULL && keys[i].accels[k] != NULL; k++)
      bind (GTK_SHORTCUT_CONTROLLER (controller), keys[i].action, keys[i].accels[k]);
  gtk_widget_add_controller (popover, controller);
}
