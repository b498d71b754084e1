/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/setup-drills.h"

#include <string.h>

#include <glib/gi18n.h>

#include "core/drills.h"
#include "core/edit.h"
#include "core/names.h"
#include "core/own-drills.h"
#include "core/units.h"

#define LIST "list:"
#define BOX "box:"

/* What is sold (common practice); step drills by their steps. */
static const struct
{
  const char *word, *label;
} choices[] = {
  { "metric", N_ ("by half millimetres") },
  { "fraction", N_ ("by 64ths of an inch") },
  { "number", N_ ("numbers, letters and fractions") },
  { LIST "A..Z", N_ ("letters A to Z") },
  { LIST "4..20 + 2", N_ ("a step drill, 4 to 20 mm by 2") },
  { LIST "4..30 + 2", N_ ("a step drill, 4 to 30 mm by 2") },
};

static void
add_choice (GMenu *menu, const char *label, const char *word)
{
  g_autoptr (GMenuItem) item = g_menu_item_new (label, NULL);

  g_menu_item_set_action_and_target_value (item, "setup.drills", g_variant_new_string (word));
  g_menu_append_item (menu, item);
}

GMenu *
bf_setup_drills_menu (void)
{
  GMenu *menu = g_menu_new ();
  g_autoptr (GMenu) own = g_menu_new ();
  guint n;
  const BfDrillBox *boxes = bf_own_drills (&n);

  for (guint i = 0; i < G_N_ELEMENTS (choices); i++)
    add_choice (menu, _ (choices[i].label), choices[i].word);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *word = g_strconcat (BOX, boxes[i].id, NULL);
      add_choice (own, boxes[i].name, word);
    }
  if (n > 0)
    g_menu_append (own, _ ("Your boxes of drills…"), "ask.own-drills");
  g_menu_append (own, _ ("A box of your own…"), "ask.drills");
  g_menu_append_section (menu, NULL, G_MENU_MODEL (own));
  return menu;
}

BfPart *
bf_setup_drills_edit (const BfPart *part, const char *word)
{
  g_autoptr (GArray) sizes = NULL;
  const BfDrillBox *box;
  int set;

  g_return_val_if_fail (part != NULL && word != NULL, NULL);

  if (g_str_has_prefix (word, BOX))
    {
      box = bf_own_drills_find (word + strlen (BOX));
      return box != NULL ? bf_edit_drills (part, BF_DRILLS_LIST, box->sizes_mm) : NULL;
    }
  if (g_str_has_prefix (word, LIST))
    {
      sizes = bf_drills_parse (word + strlen (LIST), BF_UNITS_MM, NULL);
      return sizes != NULL ? bf_edit_drills (part, BF_DRILLS_LIST, sizes) : NULL;
    }
  set = bf_names_find (&bf_names_drill_set, word);
  return set >= 0 && set != BF_DRILLS_LIST ? bf_edit_drills (part, (BfDrillSet)set, NULL) : NULL;
}

static gboolean
is_list (const BfPart *part, const char *word)
{
  g_autoptr (GArray) sizes = NULL;

  if (!g_str_has_prefix (word, LIST))
    return FALSE;
  sizes = bf_drills_parse (word + strlen (LIST), BF_UNITS_MM, NULL);
  return sizes != NULL && bf_drills_equal (sizes, part->cutting.drill_list_mm);
}

char *
bf_setup_drills_word (const BfPart *part)
{
  guint n;
  const BfDrillBox *boxes;

  g_return_val_if_fail (part != NULL, NULL);

  if (part->cutting.drills != BF_DRILLS_LIST || part->cutting.drill_list_mm == NULL)
    return g_strdup (bf_drill_set_name (part->cutting.drills));
  for (guint i = 0; i < G_N_ELEMENTS (choices); i++)
    if (is_list (part, choices[i].word))
      return g_strdup (choices[i].word);
  boxes = bf_own_drills (&n);
  for (guint i = 0; i < n; i++)
    if (bf_drills_equal (boxes[i].sizes_mm, part->cutting.drill_list_mm))
      return g_strconcat (BOX, boxes[i].id, NULL);
  return g_strdup ("");
}

char *
bf_setup_drills_words (const GArray *sizes_mm)
{
  g_autofree char *least = NULL, *most = NULL;

  g_return_val_if_fail (sizes_mm != NULL && sizes_mm->len > 0, NULL);

  least = bf_format_decimal (g_array_index (sizes_mm, double, 0), 3);
  most = bf_format_decimal (g_array_index (sizes_mm, double, sizes_mm->len - 1), 3);
  /* Translators: how many drills, the thinnest and the thickest in mm. */
  return g_strdup_printf (
      ngettext ("%u drill, from %s to %s mm", "%u drills, from %s to %s mm", sizes_mm->len),
      sizes_mm->len, least, most);
}
