/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <gtk/gtk.h>
#include <time.h>

#include "app/app.h"
#include "app/surface-private.h"

/* The program itself, with two clocks at each frame: how long it took, and how long the processor
 * worked, to fold and draw the frames in which something was dragged. Prints figures when it ends.
 * On a machine that is busy with other things the second is the one to look at. */

static GArray *took_ms, *worked_ms; /* double */
static BfSurface *surface;
static double begun_ms, work_begun_ms;

static BfSurface *
find_surface (GtkWidget *widget)
{
  if (BF_IS_SURFACE (widget))
    return BF_SURFACE (widget);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    {
      BfSurface *found = find_surface (child);
      if (found != NULL)
        return found;
    }
  return NULL;
}

static double
clock_ms (clockid_t clock)
{
  struct timespec now;

  clock_gettime (clock, &now);
  return (double)now.tv_sec * 1e3 + (double)now.tv_nsec / 1e6;
}

static void
before_paint_cb (void)
{
  begun_ms = clock_ms (CLOCK_MONOTONIC);
  work_begun_ms = clock_ms (CLOCK_PROCESS_CPUTIME_ID);
}

static void
after_paint_cb (void)
{
  double took = clock_ms (CLOCK_MONOTONIC) - begun_ms;
  double worked = clock_ms (CLOCK_PROCESS_CPUTIME_ID) - work_begun_ms;

  if (!bf_surface_is_dragging (surface))
    return;
  g_array_append_val (took_ms, took);
  g_array_append_val (worked_ms, worked);
}

static gboolean
map_hook (GSignalInvocationHint *hint, guint n_values, const GValue *values, gpointer user_data)
{
  GtkWidget *widget = g_value_get_object (values);
  (void)hint;
  (void)n_values;
  (void)user_data;

  if (!GTK_IS_WINDOW (widget) || surface != NULL || find_surface (widget) == NULL)
    return TRUE;
  surface = find_surface (widget);
  GdkFrameClock *clock = gtk_widget_get_frame_clock (widget);
  g_signal_connect (clock, "before-paint", G_CALLBACK (before_paint_cb), NULL);
  g_signal_connect (clock, "after-paint", G_CALLBACK (after_paint_cb), NULL);
  return FALSE;
}

static int
compare (gconstpointer a, gconstpointer b)
{
  double x = *(const double *)a;
  double y = *(const double *)b;
  return x < y ? -1 : x > y ? 1 : 0;
}

static double
share_at (GArray *ms, double share)
{
  return g_array_index (ms, double, (guint)(share * (double)(ms->len - 1)));
}

static void
print_figures (const char *what, GArray *ms)
{
  guint in_time = 0;

  if (ms->len == 0)
    return;
  g_array_sort (ms, compare);
  for (guint i = 0; i < ms->len; i++)
    in_time += g_array_index (ms, double, i) < 1000.0 / 60.0 ? 1 : 0;
  g_print ("%s: %u frames, median %.1f ms, 90 %% %.1f ms, 99 %% %.1f ms, most %.1f ms; "
           "under 16.7 ms: %.1f %%\n",
           what, ms->len, share_at (ms, 0.5), share_at (ms, 0.9), share_at (ms, 0.99),
           share_at (ms, 1.0), 100.0 * in_time / ms->len);
}

int
main (int argc, char **argv)
{
  took_ms = g_array_new (FALSE, FALSE, sizeof (double));
  worked_ms = g_array_new (FALSE, FALSE, sizeof (double));
  g_type_class_unref (g_type_class_ref (GTK_TYPE_WIDGET));
  g_signal_add_emission_hook (g_signal_lookup ("map", GTK_TYPE_WIDGET), 0, map_hook, NULL, NULL);
  int status = bf_app_run (argc, argv);
  print_figures ("by the clock", took_ms);
  print_figures ("processor", worked_ms);
  g_array_unref (took_ms);
  g_array_unref (worked_ms);
  return status;
}
