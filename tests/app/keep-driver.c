/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>
#include <unistd.h>

#include "app/keeper.h"
#include "core/edit.h"
#include "core/first-part.h"
#include "core/thing.h"

/* keep-driver FILE SEED: works on a part without end, as somebody in a hurry would, until it is
 * killed. Before each change it prints the change's number and the hour (of the monotonic clock, in
 * µs); the part then has that number as its thickness in µm. Now and then it saves to FILE. */

#define FIRST_UM 1000
#define SAVE_EVERY 60

typedef struct
{
  BfDocument *document;
  GFile *file;
  GRand *rand;
  guint n;
} Work;

static void
print_change (guint n)
{
  char line[64];
  int length =
      snprintf (line, sizeof line, "%u %" G_GINT64_FORMAT "\n", n, g_get_monotonic_time ());

  if (write (STDOUT_FILENO, line, (size_t)length) != length)
    _exit (1);
}

static void
change (Work *work)
{
  BfPart *now = bf_document_get_part (work->document);
  g_autoptr (BfPart) part = bf_edit_thickness (now, (FIRST_UM + work->n) / 1e3);

  print_change (work->n);
  bf_document_apply (work->document, part, "Thickness", NULL);
  work->n++;
}

/* Mostly a key after a key; at times a thought, at times a burst. */
static guint
pause_ms (GRand *rand)
{
  guint dice = (guint)g_rand_int_range (rand, 0, 20);

  if (dice == 0)
    return (guint)g_rand_int_range (rand, 300, 2500);
  return dice < 8 ? 0 : (guint)g_rand_int_range (rand, 5, 120);
}

static gboolean
work_cb (gpointer user_data)
{
  Work *work = user_data;
  g_autoptr (GError) error = NULL;

  change (work);
  if (g_rand_int_range (work->rand, 0, SAVE_EVERY) == 0 &&
      !bf_document_save (work->document, work->file, &error))
    g_error ("%s", error->message);
  g_timeout_add (pause_ms (work->rand), work_cb, work);
  return G_SOURCE_REMOVE;
}

int
main (int argc, char **argv)
{
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  g_autoptr (BfDocument) document = bf_document_new ();
  g_autoptr (BfKeeper) keeper = bf_keeper_new (document);
  g_autoptr (GMainLoop) loop = g_main_loop_new (NULL, FALSE);
  BfThingSizes sizes;

  if (argc != 3)
    return 2;
  Work work = { .document = document, .file = g_file_new_for_path (argv[1]), .n = 1 };
  work.rand = g_rand_new_with_seed ((guint32)g_ascii_strtoull (argv[2], NULL, 10));
  bf_thing_sizes_init (&sizes, BF_THING_TRAY, BF_UNITS_MM);
  setup->metal.thickness_mm = FIRST_UM / 1e3;
  g_autoptr (BfPart) part = bf_thing_make (BF_THING_TRAY, &sizes, setup, "Parts tray");
  print_change (0);
  bf_document_set_part (document, part, NULL);
  work_cb (&work);
  g_main_loop_run (loop);
  return 0;
}
