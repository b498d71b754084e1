/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "core/edit.h"
#include "core/part-file.h"
#include "core/part-title.h"

#define HEAD "{\"format\": \"benchfold-part\", \"version\": 1, \"metal\": {\"thickness\": 1},"
#define TAIL " \"base\": {\"outline\": [[0,0],[9,0],[9,9]]}}"

static BfPart *
read_with (const char *members, GError **error)
{
  g_autofree char *text = g_strconcat (HEAD, members, TAIL, NULL);

  return bf_part_from_text (text, -1, error);
}

static void
test_read (void)
{
  static const struct
  {
    const char *members, *title;
    guint quantity;
  } rows[] = {
    { "", "Part without a name", 1 },
    { "\"name\": \"Tray\",", "Tray", 1 },
    { "\"name\": \"Tray\", \"quantity\": 1,", "Tray", 1 },
    { "\"name\": \"Tray\", \"quantity\": 2,", "Tray, 2 off", 2 },
    { "\"quantity\": 9999,", "Part without a name, 9999 off", 9999 },
    { "\"quantity\": 3.0,", "Part without a name, 3 off", 3 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (BfPart) part = read_with (rows[i].members, &error);
      g_autofree char *title = NULL;

      g_assert_no_error (error);
      title = bf_part_title (part);
      g_assert_cmpuint (part->quantity, ==, rows[i].quantity);
      g_assert_cmpstr (title, ==, rows[i].title);
    }
}

static void
test_refused (void)
{
  static const char *const rows[][2] = {
    { "0", "quantity: expected a whole number from 1 to 9999, found 0" },
    { "-2", "quantity: expected a whole number from 1 to 9999, found -2" },
    { "10000", "quantity: expected a whole number from 1 to 9999, found 10000" },
    { "1.5", "quantity: expected a whole number, found 1.5" },
    { "\"2\"", "quantity: expected a whole number, found \"2\"" },
    { "null", "quantity: expected a whole number, found null" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *members = g_strdup_printf ("\"quantity\": %s,", rows[i][0]);
      g_autoptr (GError) error = NULL;
      g_autoptr (BfPart) part = read_with (members, &error);

      g_assert_null (part);
      g_assert_error (error, BF_PART_ERROR, BF_PART_ERROR_MEMBER);
      g_assert_cmpstr (error->message, ==, rows[i][1]);
    }
}

/* An edit leaves the old part as it was, and what is written is read again. */
static void
test_edit (void)
{
  g_autoptr (BfPart) one = read_with ("", NULL);
  g_autoptr (BfPart) three = bf_edit_quantity (one, 3);
  g_autofree char *text = bf_part_to_text (three);
  g_autoptr (BfPart) again = bf_part_from_text (text, -1, NULL);

  g_assert_cmpuint (one->quantity, ==, 1);
  g_assert_nonnull (strstr (text, "\"quantity\": 3"));
  g_assert_cmpuint (again->quantity, ==, 3);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/part-quantity/read", test_read);
  g_test_add_func ("/part-quantity/refused", test_refused);
  g_test_add_func ("/part-quantity/edit", test_edit);
  return g_test_run ();
}
