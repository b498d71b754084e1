/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/numbers.h"

typedef struct
{
  double value;
  const char *text;
} Case;

static const Case cases[] = {
  { 0.0, "0" },
  { -0.0, "0" },
  { 40.0, "40" },
  { 100.0, "100" },
  { -40.5, "-40.5" },
  { 274.692, "274.692" },
  { 1.0 / 3.0, "0.333333333" },
  { 2.0 / 3.0, "0.666666667" },
  { 1e-9, "0.000000001" },
  { -4e-10, "0" },
  { 1e5, "100000" },
  { 1.5e20, "150000000000000000000" },
};

static void
test_decimal (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GString) text = g_string_new ("x");

      bf_append_decimal (text, cases[i].value);
      g_assert_cmpstr (text->str + 1, ==, cases[i].text);
      g_assert_cmpint (text->str[0], ==, 'x');
    }
}

/* The longest number that there is must fit. */
static void
test_largest (void)
{
  g_autoptr (GString) text = g_string_new (NULL);

  bf_append_decimal (text, G_MAXDOUBLE);
  g_assert_cmpuint (text->len, ==, 309);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/write/numbers/decimal", test_decimal);
  g_test_add_func ("/write/numbers/largest", test_largest);
  return g_test_run ();
}
