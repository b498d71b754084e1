/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* The table of keys: what it binds can be pressed, and no two things answer to one key. */

#include "app/keys.h"

#include <gtk/gtk.h>

/* A key as it is pressed; fails the test where the words name none. */
static char *
pressed (const char *accel)
{
  guint key;
  GdkModifierType state;

  if (!gtk_accelerator_parse (accel, &key, &state) || key == 0)
    g_error ("\"%s\" is no key", accel);
  return gtk_accelerator_name (key, state);
}

/* Keys that hold everywhere have an action, and what a widget listens to itself has none. */
static void
test_actions (void)
{
  guint n;
  const BfKey *keys = bf_keys (&n);

  g_assert_cmpuint (n, >, 20);
  for (guint i = 0; i < n; i++)
    {
      g_assert_true ((keys[i].action != NULL) == (keys[i].group == BF_KEYS_EVERYWHERE));
      g_assert_nonnull (keys[i].accels[0]);
      g_assert_cmpuint (strlen (bf_key_words (&keys[i])), >, 3);
      g_assert_true (i == 0 || keys[i].group >= keys[i - 1].group);
    }
}

/* One key does one thing: no accelerator is bound twice where it holds everywhere, and none of
 * those is also a key of a widget that would take it first. */
static void
test_no_key_twice (void)
{
  guint n;
  const BfKey *keys = bf_keys (&n);
  g_autoptr (GHashTable) bound = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < n; i++)
    for (guint k = 0; k < G_N_ELEMENTS (keys[i].accels) && keys[i].accels[k] != NULL; k++)
      {
        g_autofree char *key = pressed (keys[i].accels[k]);

        g_test_message ("%s: %s", key, keys[i].what);
        g_assert_false (g_hash_table_contains (bound, key));
        if (keys[i].group == BF_KEYS_EVERYWHERE)
          g_hash_table_add (bound, g_steal_pointer (&key));
      }
  g_assert_cmpuint (g_hash_table_size (bound), >, 10);
}

/* What everybody knows from elsewhere does here what it does there (common practice; GNOME Human
 * Interface Guidelines, keyboard). */
static void
test_as_everywhere (void)
{
  static const struct
  {
    const char *accel, *action;
  } known[] = {
    { "<Control>s", "win.save" },  { "<Control><Shift>s", "win.save-as" },
    { "<Control>z", "win.undo" },  { "<Control><Shift>z", "win.redo" },
    { "<Control>o", "win.open" },  { "<Control>n", "app.new" },
    { "<Control>p", "win.print" }, { "<Control>w", "window.close" },
    { "<Control>q", "app.quit" },  { "F1", "app.help" },
    { "F10", "win.menu" },         { "<Control>question", "win.keys" },
  };
  guint n;
  const BfKey *keys = bf_keys (&n);

  for (guint w = 0; w < G_N_ELEMENTS (known); w++)
    {
      g_autofree char *wanted = pressed (known[w].accel);
      const char *action = NULL;

      for (guint i = 0; i < n; i++)
        for (guint k = 0; k < G_N_ELEMENTS (keys[i].accels) && keys[i].accels[k] != NULL; k++)
          {
            g_autofree char *key = pressed (keys[i].accels[k]);

            if (g_str_equal (key, wanted))
              action = keys[i].action;
          }
      g_assert_cmpstr (action, ==, known[w].action);
    }
}

static void
test_groups (void)
{
  for (BfKeyGroup group = 0; group < BF_N_KEY_GROUPS; group++)
    for (BfKeyGroup other = 0; other < group; other++)
      g_assert_cmpstr (bf_key_group_words (group), !=, bf_key_group_words (other));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/keys/actions", test_actions);
  g_test_add_func ("/keys/no-key-twice", test_no_key_twice);
  g_test_add_func ("/keys/as-everywhere", test_as_everywhere);
  g_test_add_func ("/keys/groups", test_groups);
  return g_test_run ();
}
