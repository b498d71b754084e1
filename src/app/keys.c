/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "app/keys.h"

#include <glib/gi18n.h>

static const BfKey keys[] = {
  { BF_KEYS_EVERYWHERE, "app.new", { "<Control>n" }, N_ ("A new part, in a window of its own") },
  { BF_KEYS_EVERYWHERE, "win.open", { "<Control>o" }, N_ ("Open a part") },
  { BF_KEYS_EVERYWHERE, "win.save", { "<Control>s" }, N_ ("Save") },
  { BF_KEYS_EVERYWHERE, "win.save-as", { "<Control><Shift>s" }, N_ ("Save under another name") },
  { BF_KEYS_EVERYWHERE, "win.print", { "<Control>p" }, N_ ("Print the template") },
  { BF_KEYS_EVERYWHERE, "win.undo", { "<Control>z" }, N_ ("Undo") },
  { BF_KEYS_EVERYWHERE, "win.redo", { "<Control><Shift>z", "<Control>y" }, N_ ("Redo") },
  { BF_KEYS_EVERYWHERE, "win.page::shape", { "<Alt>1" }, N_ ("The page Shape") },
  { BF_KEYS_EVERYWHERE, "win.page::make", { "<Alt>2" }, N_ ("The page Make") },
  { BF_KEYS_EVERYWHERE, "win.fit", { "<Control>0" }, N_ ("Show everything") },
  { BF_KEYS_EVERYWHERE, "win.checks", { "<Control>b" }, N_ ("Open “Before you cut”") },
  { BF_KEYS_EVERYWHERE, "win.menu", { "F10" }, N_ ("Open the menu") },
  { BF_KEYS_EVERYWHERE, "app.help", { "F1" }, N_ ("Help") },
  { BF_KEYS_EVERYWHERE, "win.keys", { "<Control>question", "<Control>slash" }, N_ ("This list") },
  { BF_KEYS_EVERYWHERE, "window.close", { "<Control>w" }, N_ ("Close the window") },
  { BF_KEYS_EVERYWHERE, "app.quit", { "<Control>q" }, N_ ("Quit") },
  { BF_KEYS_BEGIN, NULL, { "1" }, N_ ("A tray; 2 to 6 the other things") },
  { BF_KEYS_BEGIN, NULL, { "Return" }, N_ ("Make it") },
  { BF_KEYS_BEGIN, NULL, { "Escape" }, N_ ("Back to something else") },
  { BF_KEYS_SIZES, NULL, { "Tab", "<Shift>Tab" }, N_ ("The next size, the one before") },
  { BF_KEYS_SIZES, NULL, { "Return" }, N_ ("Take the size that was typed") },
  { BF_KEYS_SIZES, NULL, { "Escape" }, N_ ("Bring the old size back") },
  { BF_KEYS_SIZES, NULL, { "Up", "Down" }, N_ ("A step more or less: 1 mm, 1/16 in, 1°") },
  { BF_KEYS_SIZES, NULL, { "<Shift>Up", "<Shift>Down" }, N_ ("Ten steps more or less") },
  { BF_KEYS_BENCH, NULL, { "Left", "Right" }, N_ ("Turn the formed part; on an edge, the next") },
  { BF_KEYS_BENCH, NULL, { "Up", "Down" }, N_ ("Tilt it; on an edge, out to the tip or back") },
  { BF_KEYS_BENCH, NULL, { "<Shift>Left", "<Shift>Right" }, N_ ("Move what is seen") },
  { BF_KEYS_BENCH, NULL, { "plus", "minus" }, N_ ("Larger, smaller") },
  { BF_KEYS_BENCH, NULL, { "Left", "Up" }, N_ ("On a hole: move it; with Shift ten steps") },
  { BF_KEYS_BENCH, NULL, { "Return", "Menu" }, N_ ("What can be done at the edge") },
  { BF_KEYS_BENCH, NULL, { "Delete" }, N_ ("Take away what is chosen") },
  { BF_KEYS_BENCH, NULL, { "Escape" }, N_ ("Let go of it") },
};

const BfKey *
bf_keys (guint *n_keys)
{
  g_return_val_if_fail (n_keys != NULL, NULL);
  *n_keys = G_N_ELEMENTS (keys);
  return keys;
}

const char *
bf_key_words (const BfKey *key)
{
  g_return_val_if_fail (key != NULL, "");
  return _ (key->what);
}

const char *
bf_key_group_words (BfKeyGroup group)
{
  switch (group)
    {
    case BF_KEYS_EVERYWHERE:
      return _ ("Everywhere");
    case BF_KEYS_BEGIN:
      return _ ("What are you making?");
    case BF_KEYS_SIZES:
      return _ ("In a size");
    case BF_KEYS_BENCH:
      return _ ("On the bench");
    case BF_N_KEY_GROUPS:
    default:
      g_return_val_if_reached ("");
    }
}
