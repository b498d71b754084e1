/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/command-how.h"

typedef struct
{
  const char *arguments; /* separated by spaces; "~" stands for an empty one */
  const char *message;
} Refusal;

#define FACTORS                                                                                    \
  "--printer-scale: must be two factors, across and down the page, as 0.992,1.004 where bars of "  \
  "100 mm measure 99.2 and 100.4 mm"
#define TOO_FAR_OFF                                                                                \
  "--printer-scale: a printer more than 5 % off has another fault: print at 100 %, not fitted to " \
  "the page"
#define NO_OFFSET                                                                                  \
  "--guide-offset: must be a length from 0, as 38, 38mm or 1-1/2in: from the guide to the cut"

static const Refusal refusals[] = {
  { "--bogus a", "--bogus: there is no such option (see benchfold --help)" },
  { "-r a", "-r: there is no such option (see benchfold --help)" },
  { "--reports a", "--reports: there is no such option (see benchfold --help)" },
  { "--report", "FILE: a part file must be named for outputs" },
  { "--report ~", "FILE: a part file must be named for outputs" },
  { "--report a b", "b: outputs are of one FILE; run once for each" },
  { "--report --report a", "--report: must stand only once" },
  { "--report=yes a", "--report: takes no value" },
  { "--template a.pdf --template b.pdf c", "--template: must stand only once" },
  { "--template", "--template: a value must follow it" },
  { "--template --report a", "--template: a value must follow it" },
  { "--template= a", "--template: a value must follow it" },
  { "--template ~ a", "--template: a value must follow it" },
  { "--pattern a.png b", "--pattern: the file's name must end in .svg, .dxf or .pdf" },
  { "--pattern a.svg --pattern ./a.svg b", "./a.svg: two outputs would go to this file" },
  { "--pattern a.svg --template a.svg b", "a.svg: two outputs would go to this file" },
  { "--pattern ./a.svg a.svg", "./a.svg: this output would replace the part itself" },
  { "--paper A9 --report a",
    "--paper: there is no paper “A9” here; choose from A4, A3, Letter, Legal, Tabloid, roll, "
    "whole" },
  { "--paper A4 --paper A4 --report a", "--paper: must stand only once" },
  { "--paper A4 a", "--paper: goes with an output; none is asked for" },
  { "--units mm a", "--units: goes with an output; none is asked for" },
  { "--units cm --report a", "--units: must be mm or in" },
  { "--units MM --report a", "--units: must be mm or in" },
  { "--demo", "--demo: a value must follow it" },
  { "--demo d a", "--demo: brings its own part; name no FILE with it" },
  { "--demo d --report", "--demo: writes its own outputs; ask for no others with it" },
  { "--marking m.txt a", "--marking: the file's name must end in .pdf or .csv" },
  { "--card c.pdf --card d.pdf a", "--card: must stand only once" },
  { "--card a.pdf --model a.pdf a", "a.pdf: two outputs would go to this file" },
  { "--gauges", "--gauges: a value must follow it" },
  { "--pack d", "FILE: a part file must be named for outputs" },
  { "--strip s.svg a", "--strip: the file's name must end in .pdf" },
  { "--corners-only --report a", "--corners-only: goes with --template; none is asked for" },
  { "--corners-only=2 --template t.pdf a", "--corners-only: takes no value" },
  { "--mirror --pattern p.svg a", "--mirror: goes with --template; none is asked for" },
  { "--mirror a", "--mirror: goes with --template; none is asked for" },
  { "--mirror --report a", "--mirror: goes with --template; none is asked for" },
  { "--mirror --mirror --template t.pdf a", "--mirror: must stand only once" },
  { "--mirror=yes --template t.pdf a", "--mirror: takes no value" },
  { "--kerf=on --template t.pdf a", "--kerf: goes with --pattern; none is asked for" },
  { "--kerf off a", "--kerf: goes with --pattern; none is asked for" },
  { "--kerf yes --pattern p.svg a", "--kerf: must be on or off" },
  { "--bend-lines out --report a", "--bend-lines: goes with --pattern; none is asked for" },
  { "--bend-lines in a", "--bend-lines: goes with --pattern; none is asked for" },
  { "--bend-lines dots --pattern p.svg a", "--bend-lines: must be in, out or notches" },
  { "--printer-scale 1,1 --report a", "--printer-scale: goes with --template; none is asked for" },
  { "--printer-scale 1 --template t.pdf a", FACTORS },
  { "--printer-scale 1,1,1 --template t.pdf a", FACTORS },
  { "--printer-scale 1,x --template t.pdf a", FACTORS },
  { "--printer-scale ,1 --template t.pdf a", FACTORS },
  { "--printer-scale 1, --template t.pdf a", FACTORS },
  { "--printer-scale 1,1mm --template t.pdf a", FACTORS },
  { "--printer-scale nan,1 --template t.pdf a", FACTORS },
  { "--printer-scale -1,1 --template t.pdf a", FACTORS },
  { "--printer-scale 0,1 --template t.pdf a", TOO_FAR_OFF },
  { "--printer-scale 99.2,100.4 --template t.pdf a", TOO_FAR_OFF },
  { "--printer-scale 1,0.94 --template t.pdf a", TOO_FAR_OFF },
  { "--printer-scale 1.051,1 --template t.pdf a", TOO_FAR_OFF },
  { "--printer-scale 1e400,1 --template t.pdf a", TOO_FAR_OFF },
  { "--marks 1/64 --marking m.csv a", "--marks: must be 1 or 0.5 (mm), or 1/16 or 1/32 (in)" },
  { "--marks 1/16in --marking m.csv a", "--marks: must be 1 or 0.5 (mm), or 1/16 or 1/32 (in)" },
  { "--marks 1/16 --template t.pdf a",
    "--marks: goes with --marking or --card; none is asked for" },
  { "--guide-offset 12 --pattern p.svg a",
    "--guide-offset: goes with --marking or --card; none is asked for" },
  { "--guide-offset 12 a", "--guide-offset: goes with --marking or --card; none is asked for" },
  { "--guide-offset far --card c.pdf a", NO_OFFSET },
  { "--guide-offset -3 --card c.pdf a", NO_OFFSET },
};

static BfCommand *
parse (const char *arguments, GError **error)
{
  g_autofree char *line = g_strconcat ("benchfold ", arguments, NULL);
  g_auto (GStrv) argv = g_strsplit (arguments[0] != '\0' ? line : "benchfold", " ", -1);

  for (guint i = 0; argv[i] != NULL; i++)
    if (g_str_equal (argv[i], "~"))
      argv[i][0] = '\0';
  return bf_command_parse ((int)g_strv_length (argv), argv, error);
}

static void
test_refused (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (refusals); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (BfCommand) command = parse (refusals[i].arguments, &error);

      g_test_message ("%s", refusals[i].arguments);
      g_assert_null (command);
      g_assert_error (error, BF_COMMAND_ERROR, BF_COMMAND_ERROR_USAGE);
      g_assert_cmpstr (error->message, ==, refusals[i].message);
    }
}

static BfCommand *
parse_good (const char *arguments)
{
  g_autoptr (GError) error = NULL;
  BfCommand *command = parse (arguments, &error);

  g_assert_no_error (error);
  g_assert_nonnull (command);
  return command;
}

static void
test_window (void)
{
  g_autoptr (BfCommand) empty = parse_good ("");
  g_autoptr (BfCommand) two = parse_good ("a.benchfold -- --odd");

  g_assert_true (bf_command_opens_window (empty));
  g_assert_cmpuint (empty->files->len, ==, 0);
  g_assert_true (bf_command_opens_window (two));
  g_assert_cmpuint (two->files->len, ==, 2);
  g_assert_cmpstr (g_ptr_array_index (two->files, 1), ==, "--odd");
  g_assert_cmpint (bf_command_run (two), ==, BF_EXIT_DONE);
}

static void
test_outputs (void)
{
  g_autoptr (BfCommand) command = parse_good (
      "--pattern p.svg --template=t.pdf a.benchfold --pattern=q.DXF --paper letter --units in");

  g_assert_false (bf_command_opens_window (command));
  g_assert_false (command->report);
  g_assert_cmpstr (command->template_path, ==, "t.pdf");
  g_assert_cmpuint (command->patterns->len, ==, 2);
  g_assert_cmpstr (g_ptr_array_index (command->patterns, 1), ==, "q.DXF");
  g_assert_cmpstr (command->paper->name, ==, "Letter");
  g_assert_true (command->has_units);
  g_assert_cmpint (command->units, ==, BF_UNITS_IN);
  g_assert_cmpstr (g_ptr_array_index (command->files, 0), ==, "a.benchfold");
}

static void
test_defaults (void)
{
  g_autoptr (BfCommand) command = parse_good ("--report a");

  g_assert_true (command->report);
  g_assert_null (command->template_path);
  g_assert_null (command->paper);
  g_assert_false (command->has_units);
}

static void
test_demo (void)
{
  g_autoptr (BfCommand) command = parse_good ("--demo some/where --paper A3");

  g_assert_true (bf_command_opens_window (command));
  g_assert_cmpstr (command->demo_dir, ==, "some/where");
  g_assert_cmpuint (command->files->len, ==, 1);
  g_assert_cmpstr (g_ptr_array_index (command->files, 0), ==, "some/where/spoke-tray.benchfold");
}

static void
test_how (void)
{
  g_autoptr (BfCommand) none = parse_good ("--pattern p.svg a");
  g_autoptr (BfCommand) all =
      parse_good ("--pattern p.pdf --template t.pdf --mirror --printer-scale 0.992,1.004 --kerf on "
                  "--bend-lines=notches a");
  g_autoptr (BfCommand) pages = parse_good ("--report --paper A4 --mirror a");

  g_assert_false (none->how.kerf || none->how.template.mirror);
  g_assert_cmpint (none->how.bend_lines, ==, BF_BEND_LINES_IN);
  g_assert_true (all->how.kerf && all->how.template.mirror);
  g_assert_cmpint (all->how.bend_lines, ==, BF_BEND_LINES_NOTCHES);
  g_assert_cmpfloat_with_epsilon (all->how.template.printer.x, 0.992, 1e-12);
  g_assert_cmpfloat_with_epsilon (all->how.template.printer.y, 1.004, 1e-12);
  g_assert_true (pages->how.template.mirror);
}

/* A bare length is of the units that the outputs are in; marks are of their own. */
static void
test_how_in_units (void)
{
  static const struct
  {
    const char *arguments;
    BfUnits units;
    double step_mm, offset_mm; /* step_mm: NAN of none, 0 where it is refused */
  } rows[] = {
    { "--marking m.csv a", BF_UNITS_IN, NAN, 0.0 },
    { "--marking m.csv --marks 1/16 --guide-offset 1-1/2 a", BF_UNITS_IN, 25.4 / 16.0, 38.1 },
    { "--marking m.csv --marks 1/32 --guide-offset 38mm a", BF_UNITS_IN, 25.4 / 32.0, 38.0 },
    { "--card c.pdf --marks 1 --guide-offset 22.5 a", BF_UNITS_MM, 1.0, 22.5 },
    { "--card c.pdf --marks 0.5 --guide-offset 1in a", BF_UNITS_MM, 0.5, 25.4 },
    { "--card c.pdf --marks 1/32 a", BF_UNITS_MM, 0.0, 0.0 },
    { "--card c.pdf --marks 1 a", BF_UNITS_IN, 0.0, 0.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr (BfCommand) command = parse_good (rows[i].arguments);
      g_autoptr (GError) error = NULL;
      BfOutputHow how = { .guide_offset_mm = -1.0 };
      gboolean fits = bf_command_how_in_units (command, rows[i].units, &how, &error);

      if (!fits)
        {
          g_assert_true (rows[i].step_mm <= 0.0);
          g_assert_error (error, BF_COMMAND_ERROR, BF_COMMAND_ERROR_USAGE);
          g_assert_cmpfloat (how.guide_offset_mm, <, 0.0);
          continue;
        }
      g_assert_true (isnan (rows[i].step_mm) == (how.marks == NULL));
      if (how.marks != NULL)
        g_assert_cmpfloat_with_epsilon (how.marks->step_mm, rows[i].step_mm, 1e-12);
      g_assert_cmpfloat_with_epsilon (how.guide_offset_mm, rows[i].offset_mm, 1e-12);
    }
}

/* Who asks for help is not told off for the rest. */
static void
test_help (void)
{
  g_autoptr (BfCommand) help = parse_good ("--report --help");
  g_autoptr (BfCommand) version = parse_good ("--version");

  g_assert_true (help->help);
  g_assert_false (bf_command_opens_window (help));
  g_assert_true (version->version);
  g_assert_false (bf_command_opens_window (version));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/write/command-line/refused", test_refused);
  g_test_add_func ("/write/command-line/window", test_window);
  g_test_add_func ("/write/command-line/outputs", test_outputs);
  g_test_add_func ("/write/command-line/defaults", test_defaults);
  g_test_add_func ("/write/command-line/demo", test_demo);
  g_test_add_func ("/write/command-line/how", test_how);
  g_test_add_func ("/write/command-line/how-in-units", test_how_in_units);
  g_test_add_func ("/write/command-line/help", test_help);
  return g_test_run ();
}
