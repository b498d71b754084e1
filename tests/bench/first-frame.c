/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include <dlfcn.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include <gtk/gtk.h>

/* Loaded before any program that runs a GApplication (LD_PRELOAD): ends it as soon as its first
 * frame is painted, and prints how long that took since BENCH_START (in ns of the monotonic clock),
 * what of it the processor was at work for it, and how much memory was held at most. Nothing else
 * of the program is touched. */

static long
read_kb (const char *path, const char *name)
{
  char line[256];
  long value = -1;
  FILE *file = fopen (path, "r");

  while (file != NULL && fgets (line, sizeof line, file) != NULL)
    if (strncmp (line, name, strlen (name)) == 0)
      value = strtol (line + strlen (name), NULL, 10);
  if (file != NULL)
    fclose (file);
  return value;
}

/* _exit: what comes after the first frame is none of ours to measure. */
static void
painted_cb (GdkFrameClock *clock, gpointer user_data)
{
  const char *start = g_getenv ("BENCH_START");
  struct timespec now, spent;
  (void)clock;
  (void)user_data;

  clock_gettime (CLOCK_MONOTONIC, &now);
  clock_gettime (CLOCK_PROCESS_CPUTIME_ID, &spent);
  double now_ms = (double)now.tv_sec * 1e3 + (double)now.tv_nsec / 1e6;
  double start_ms = start != NULL ? g_ascii_strtod (start, NULL) / 1e6 : 0.0;
  double spent_ms = (double)spent.tv_sec * 1e3 + (double)spent.tv_nsec / 1e6;
  printf ("first-frame %.2f %.2f %ld\n", now_ms - start_ms, spent_ms,
          read_kb ("/proc/self/status", "VmHWM:"));
  fflush (stdout);
  _exit (0);
}

static gboolean
mapped_cb (GSignalInvocationHint *hint, guint n, const GValue *values, gpointer user_data)
{
  GtkWidget *widget = g_value_get_object (values);
  (void)hint;
  (void)n;
  (void)user_data;

  if (!GTK_IS_WINDOW (widget))
    return TRUE;
  g_signal_connect (gtk_widget_get_frame_clock (widget), "after-paint", G_CALLBACK (painted_cb),
                    NULL);
  return FALSE;
}

int
g_application_run (GApplication *app, int argc, char **argv)
{
  int (*run) (GApplication *, int, char **) = NULL;

  *(void **)&run = dlsym (RTLD_NEXT, "g_application_run");
  g_type_class_unref (g_type_class_ref (GTK_TYPE_WIDGET));
  g_signal_add_emission_hook (g_signal_lookup ("map", GTK_TYPE_WIDGET), 0, mapped_cb, NULL, NULL);
  return run (app, argc, argv);
}
