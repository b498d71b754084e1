/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/command-line.h"

#include <errno.h>
#include <stdio.h>

#include <glib/gi18n.h>

#include "core/own-metals.h"
#include "core/part-file.h"
#include "write/bench-outputs.h"
#include "write/command-how.h"
#include "write/demo.h"
#include "write/output-file.h"
#include "write/outputs.h"

/* g_print() and g_printerr() turn UTF-8 into what the terminal reads; files go out as they are. */

/* The help is told in pieces, so that a change of one leaves the translations of the others. */
static void
print_outputs_help (void)
{
  g_print (
      /* Translators: keep option names, FILE, OUT.pdf and so on as they are, and lines at most 80
       * characters long. */
      _ ("Usage:\n"
         "  benchfold [FILE...]               opens parts, or an empty page, in the window\n"
         "  benchfold OUTPUT... [HOW] FILE    writes outputs of one part; needs no display\n"
         "  benchfold --demo DIR              shows what comes out, by an example\n"
         "\n"
         "Benchfold works out the flat blank of a folded metal part from its finished\n"
         "sizes. FILE is a part (.benchfold).\n"
         "\n"
         "Outputs:\n"
         "  --template OUT.pdf   the blank at full size on paper, tiled over as many pages\n"
         "                       as it takes, to be glued to the metal and marked through\n"
         "  --pattern OUT.svg    outline, holes and bend lines as a drawing in mm\n"
         "  --pattern OUT.dxf    the same for a cutting machine\n"
         "  --pattern OUT.pdf    the same on one page, however large; --pattern may be\n"
         "                       given more than once, a file each\n"
         "  --marking OUT.pdf    marking out with a rule and a square, step by step, where\n"
         "                       there is no printer for the template; OUT.csv: as a table\n"
         "  --card OUT.pdf       make card: the work step by step, bends in order, seams,\n"
         "                       cautions, room to write down what was measured\n"
         "  --model OUT.pdf      the part to be folded from stiff paper, on one page\n"
         "  --gauges OUT.pdf     angle gauges for every bend that is not square\n"
         "  --pack DIR           for a cutting service: DXF, SVG, page with sizes, note\n"
         "  --strip OUT.pdf      strips for a trial bend of this metal, at full size\n"
         "  --report             sizes, bends, reliefs, seams and checks as JSON, printed\n"
         "                       last; always in mm and degrees\n"
         "\n"));
}

static void
print_how_help (void)
{
  g_autofree char *papers = bf_paper_names ();

  g_print (
      /* Translators: keep option names, NAME and X,Y as they are, and lines at most 80 characters
       * long. The %s is a list of papers, "A4, A3, Letter". */
      _ ("How:\n"
         "  --paper NAME         paper of the template, one of\n"
         "                         %s;\n"
         "                       roll-WIDTH is a roll of that many mm, roll one of 610,\n"
         "                       whole one page as large as the blank takes; with --report\n"
         "                       the pages are listed there too\n"
         "  --units mm|in        units of words, and of a DXF drawing; else the part's own\n"
         "\n"
         "How, for the template:\n"
         "  --corners-only       corners and holes at full size on as few pages as can be,\n"
         "                       with distances for the tape between them\n"
         "  --mirror             for the metal's other face: seen in a mirror, and bends\n"
         "                       told as they are seen there\n"
         "  --printer-scale X,Y  for a printer that is off: what its bars of 100 mm\n"
         "                       measure, across and down the page, divided by 100, as\n"
         "                       0.992,1.004\n"
         "\n"),
      papers);
}

static void
print_bench_how_help (void)
{
  g_print (
      /* Translators: keep option names and STEP as they are, and lines at most 80 characters long.
       */
      _ ("How, for marking out and the make card:\n"
         "  --marks STEP         marks of the rule that distances are rounded to: 1 or\n"
         "                       0.5 (mm), 1/16 or 1/32 (in); else 0.5 mm or 1/32 in\n"
         "  --guide-offset LENGTH\n"
         "                       from the guide to the disc's cut; else 0: it just\n"
         "                       touches\n"
         "\n"));
}

static void
print_pattern_how_help (void)
{
  g_print (
      /* Translators: keep option names, on, off, in, out and notches as they are, and lines at most
       * 80 characters long. */
      _ ("How, for patterns:\n"
         "  --kerf on|off        every cut edge moved by half the kerf into the waste;\n"
         "                       else edges are as the finished blank has them\n"
         "  --bend-lines in|out|notches\n"
         "                       bend lines drawn, left out, or shown by small notches in\n"
         "                       the outline at their ends\n"
         "\n"));
}

static void
print_help (void)
{
  print_outputs_help ();
  print_how_help ();
  print_bench_how_help ();
  print_pattern_how_help ();
  g_print (
      /* Translators: keep option names, DIR and FILE as they are, and lines at most 80 characters
       * long. */
      _ ("Others:\n"
         "  --demo DIR           writes an example part and its outputs into DIR, which is\n"
         "                       made if need be, and opens the part if it can\n"
         "  --help               prints this\n"
         "  --version            prints the version\n"
         "\n"
         "A part that must be fixed before it is cut is written all the same, with a\n"
         "warning on it. A file is written whole or not at all.\n"
         "\n"
         "Exit status: 0 done, 1 FILE is not a part that can be read, 2 wrong usage,\n"
         "3 an output could not be written.\n"));
}

/* One line on stderr whatever stands in the message. file: NULL for none. */
static void
print_error (const char *file, const char *message)
{
  g_autofree char *shown = file != NULL ? g_filename_display_name (file) : NULL;
  g_autofree char *line =
      g_strjoin (": ", shown != NULL ? shown : message, shown != NULL ? message : NULL, NULL);

  g_strdelimit (line, "\r\n", ' ');
  g_printerr ("benchfold: %s\n", line);
}

static int
exit_status (const GError *error)
{
  if (error->domain == BF_WRITE_ERROR)
    return BF_EXIT_NOT_WRITTEN;
  if (g_error_matches (error, BF_COMMAND_ERROR, BF_COMMAND_ERROR_USAGE))
    return BF_EXIT_BAD_USAGE;
  return BF_EXIT_BAD_INPUT;
}

int
bf_command_refuse (const GError *error)
{
  g_return_val_if_fail (error != NULL, BF_EXIT_BAD_USAGE);

  print_error (NULL, error->message);
  return exit_status (error);
}

/* A part that outputs can be made of. */
static BfPart *
load_part (const char *path, GError **error)
{
  g_autoptr (GFile) file = g_file_new_for_commandline_arg (path);
  g_autoptr (BfPart) part = bf_part_load (file, error);

  if (part == NULL || !bf_part_check_outline (part, error))
    return NULL;
  return g_steal_pointer (&part);
}

static gboolean
add_bench_files (const BfCommand *command, BfOutputs *outputs, BfOutputBatch *batch, GError **error)
{
  if (command->card_path != NULL &&
      !bf_outputs_add_card (outputs, batch, command->card_path, error))
    return FALSE;
  if (command->model_path != NULL &&
      !bf_outputs_add_model (outputs, batch, command->model_path, error))
    return FALSE;
  if (command->gauges_path != NULL &&
      !bf_outputs_add_gauges (outputs, batch, command->gauges_path, error))
    return FALSE;
  return command->pack_dir == NULL ||
         bf_outputs_add_pack (outputs, batch, command->pack_dir, error);
}

static gboolean
add_files (const BfCommand *command, BfOutputs *outputs, BfOutputBatch *batch, GError **error)
{
  if (command->template_path != NULL &&
      !bf_outputs_add_template (outputs, batch, command->template_path, error))
    return FALSE;
  for (guint i = 0; i < command->patterns->len; i++)
    if (!bf_outputs_add_pattern (outputs, batch, g_ptr_array_index (command->patterns, i), error))
      return FALSE;
  if (command->strip_path != NULL &&
      !bf_outputs_add_strip (outputs, batch, command->strip_path, error))
    return FALSE;
  return command->marking_path == NULL ||
         bf_outputs_add_marking (outputs, batch, command->marking_path, error);
}

static gboolean
print_report (const char *report, GError **error)
{
  if (fputs (report, stdout) >= 0 && fflush (stdout) == 0)
    return TRUE;
  /* Translators: the system's reason ("No space left on device"). */
  g_set_error (error, BF_WRITE_ERROR, BF_WRITE_ERROR_FILE,
               _ ("the report could not be printed: %s"), g_strerror (errno));
  return FALSE;
}

/* Pens that can't be read are no reason to draw nothing: the usual ones are taken. */
static void
tell_pen_fault (const BfCommand *command)
{
  if (command->template_path != NULL && bf_own_pens_fault () != NULL)
    print_error (NULL, bf_own_pens_fault ());
}

static gboolean
write_outputs (const BfCommand *command, BfPart *part, GError **error)
{
  g_autoptr (BfOutputs) outputs =
      bf_outputs_new (part, command->has_units ? &command->units : NULL, command->paper);
  g_autoptr (BfOutputBatch) batch = bf_output_batch_new ();
  g_autofree char *report = NULL;
  BfOutputHow how;

  if (!bf_command_how_in_units (command, outputs->shown->part->units, &how, error))
    return FALSE;
  how.template.pens = bf_own_pens ();
  bf_outputs_set_how (outputs, &how);
  report = command->report ? bf_outputs_report (outputs) : NULL;
  return add_files (command, outputs, batch, error) &&
         add_bench_files (command, outputs, batch, error) &&
         (command->pack_dir == NULL || bf_output_make_folder (command->pack_dir, error)) &&
         bf_output_batch_commit (batch, error) && (report == NULL || print_report (report, error));
}

/* A part may name a metal of the person's own whose file is broken: it is folded without, and this
 * says why. Files of metals are looked at only where the table has none of that name. */
static void
tell_metal_faults (const BfPart *part)
{
  const char *const *faults;

  if (part->metal.material == NULL || bf_material_find (part->metal.material) != NULL)
    return;
  faults = bf_own_metal_faults ();
  for (guint i = 0; faults[i] != NULL; i++)
    print_error (NULL, faults[i]);
}

static int
run_outputs (const BfCommand *command)
{
  const char *path = g_ptr_array_index (command->files, 0);
  g_autoptr (GError) error = NULL;
  g_autoptr (BfPart) part = load_part (path, &error);

  if (part == NULL)
    {
      print_error (path, error->message);
      return BF_EXIT_BAD_INPUT;
    }
  tell_metal_faults (part);
  tell_pen_fault (command);
  return write_outputs (command, part, &error) ? BF_EXIT_DONE : bf_command_refuse (error);
}

int
bf_command_run (const BfCommand *command)
{
  g_autoptr (GError) error = NULL;

  g_return_val_if_fail (command != NULL, BF_EXIT_BAD_USAGE);

  if (command->help)
    print_help ();
  else if (command->version)
    g_print ("Benchfold %s\n", BF_VERSION);
  else if (command->demo_dir != NULL)
    return bf_demo_write (command, &error) ? BF_EXIT_DONE : bf_command_refuse (error);
  else if (!bf_command_opens_window (command))
    return run_outputs (command);
  return BF_EXIT_DONE;
}

int
bf_command_no_display (const BfCommand *command)
{
  g_return_val_if_fail (command != NULL, BF_EXIT_BAD_INPUT);

  if (command->demo_dir != NULL)
    {
      g_print ("%s\n", _ ("No display was found, so no window was opened."));
      return BF_EXIT_DONE;
    }
  print_error (NULL, _ ("no display was found to open a window on"));
  return BF_EXIT_BAD_INPUT;
}
