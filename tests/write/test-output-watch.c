/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* A long output is watched, and stops where it is told to. */

#include <gio/gio.h>

#include "core/first-part.h"
#include "write/output-watch.h"
#include "write/pdf-pages.h"

#define N_PAGES 7

typedef struct
{
  BfOutputWatch watch;
  guint stop_at; /* the page at which it is stopped */
  guint drawn;
} Job;

static BfPdfPage
page_size (guint i, gconstpointer data)
{
  (void)i;
  (void)data;
  return (BfPdfPage){ 210.0, 297.0, NULL };
}

static void
draw (guint i, cairo_t *cr, gconstpointer data)
{
  Job *job = (Job *)data;
  guint done, n;

  cairo_rectangle (cr, 10.0, 10.0, 50.0, 50.0);
  cairo_fill (cr);
  bf_output_watch_read (&job->watch, &done, &n);
  g_assert_cmpuint (done, ==, i);
  g_assert_cmpuint (n, ==, N_PAGES);
  job->drawn++;
  if (i == job->stop_at)
    bf_output_watch_stop (&job->watch);
}

static GBytes *
write_pages (Job *job, GError **error)
{
  g_autoptr (BfPart) part = bf_first_part (BF_UNITS_MM);
  BfPdfPages pages = {
    .part = part, .n_pages = N_PAGES, .page = page_size, .draw = draw, .data = job
  };
  GBytes *bytes;

  bf_output_watch_set (&job->watch);
  bytes = bf_pdf_pages (&pages, error);
  bf_output_watch_set (NULL);
  return bytes;
}

/* Stopped at any page, also at the last, it gives nothing and draws no further. */
static void
test_stopped (void)
{
  for (guint at = 0; at < N_PAGES; at++)
    {
      g_autoptr (GError) error = NULL;
      Job job = { .stop_at = at };
      g_autoptr (GBytes) bytes = write_pages (&job, &error);

      g_assert_null (bytes);
      g_assert_error (error, G_IO_ERROR, G_IO_ERROR_CANCELLED);
      g_assert_cmpuint (job.drawn, ==, at + 1);
    }
}

static void
test_goes_on (void)
{
  g_autoptr (GError) error = NULL;
  Job job = { .stop_at = N_PAGES };
  g_autoptr (GBytes) bytes = write_pages (&job, &error);
  guint done, n;

  g_assert_no_error (error);
  g_assert_nonnull (bytes);
  g_assert_cmpuint (job.drawn, ==, N_PAGES);
  bf_output_watch_read (&job.watch, &done, &n);
  g_assert_cmpuint (done, ==, N_PAGES);
}

/* A watch is one thread's; where there is none, all goes on. */
static void
test_unwatched (void)
{
  BfOutputWatch other = { .stops = TRUE };

  g_assert_true (bf_output_watch_step (0, 3, NULL));
  bf_output_watch_set (&other);
  g_assert_false (bf_output_watch_step (1, 3, NULL));
  bf_output_watch_set (NULL);
  g_assert_true (bf_output_watch_step (2, 3, NULL));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/write/output-watch/stopped", test_stopped);
  g_test_add_func ("/write/output-watch/goes-on", test_goes_on);
  g_test_add_func ("/write/output-watch/unwatched", test_unwatched);
  return g_test_run ();
}
