/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */

/* Where a person is in the work, what they tick, and what becomes of it as the part changes. */

#include "app/work-guide.h"

#include "core/edit.h"
#include "core/first-part.h"
#include "core/thing.h"
#include "make/work-ticks.h"

typedef struct
{
  BfDocument *document;
  BfWorkGuide *guide;
  guint n_changes;
} Bench;

static void
changed_cb (Bench *bench)
{
  bench->n_changes++;
}

static void
begin (Bench *bench)
{
  g_autoptr (BfPart) setup = bf_first_part (BF_UNITS_MM);
  g_autoptr (BfPart) part = NULL;
  BfThingSizes sizes;

  bf_thing_sizes_init (&sizes, BF_THING_TRAY, setup->units);
  part = bf_thing_make (BF_THING_TRAY, &sizes, setup, "Tray");
  *bench = (Bench){ .document = bf_document_new () };
  bf_document_set_part (bench->document, part, NULL);
  bench->guide = bf_work_guide_new (bench->document, NULL);
  g_signal_connect_swapped (bench->guide, "changed", G_CALLBACK (changed_cb), bench);
}

static void
end (Bench *bench)
{
  g_object_unref (bench->guide);
  g_object_unref (bench->document);
}

static guint
n_steps (const Bench *bench)
{
  return bf_work_guide_get_work (bench->guide)->steps->len;
}

static guint
n_ticked (const Bench *bench)
{
  const BfWork *work = bf_work_guide_get_work (bench->guide);
  g_autofree char *blank = bf_work_blank_word (work->fold);
  guint n = 0;

  for (BfStage stage = 0; stage < BF_N_STAGES; stage++)
    n += bf_work_n_ticked (work, stage, blank);
  return n;
}

/* ---- no part ------------------------------------------------------------------------------ */

static void
test_nothing (void)
{
  g_autoptr (BfDocument) document = bf_document_new ();
  g_autoptr (BfWorkGuide) guide = bf_work_guide_new (document, NULL);

  g_assert_null (bf_work_guide_get_work (guide));
  g_assert_cmpuint (bf_work_guide_get_step (guide), ==, 0);
  bf_work_guide_go_on (guide);
  bf_work_guide_go_back (guide);
  g_assert_null (bf_document_get_part (document));
}

/* ---- through the work --------------------------------------------------------------------- */

/* From the first step to the last, each ticked as one goes on; at the last one stays, and its tick
 * is taken too. */
static void
test_to_the_end (void)
{
  Bench bench;
  guint n;

  begin (&bench);
  n = n_steps (&bench);
  g_assert_cmpuint (n, >, 10);
  for (guint i = 0; i < n; i++)
    {
      g_assert_cmpuint (bf_work_guide_get_step (bench.guide), ==, i);
      g_assert_cmpuint (n_ticked (&bench), ==, i);
      bf_work_guide_go_on (bench.guide);
    }
  g_assert_cmpuint (bf_work_guide_get_step (bench.guide), ==, n - 1);
  g_assert_cmpuint (n_ticked (&bench), ==, n);
  bf_work_guide_go_on (bench.guide);
  g_assert_cmpuint (n_ticked (&bench), ==, n);
  for (guint i = n - 1; i > 0; i--)
    bf_work_guide_go_back (bench.guide);
  bf_work_guide_go_back (bench.guide);
  g_assert_cmpuint (bf_work_guide_get_step (bench.guide), ==, 0);
  g_assert_cmpuint (n_ticked (&bench), ==, n);
  end (&bench);
}

/* A tick is an edit: it can be undone, one is not made twice, and all who look are told. */
static void
test_ticks (void)
{
  Bench bench;

  begin (&bench);
  bf_work_guide_tick (bench.guide, 3, TRUE);
  g_assert_cmpuint (n_ticked (&bench), ==, 1);
  g_assert_cmpuint (bench.n_changes, ==, 1);
  g_assert_cmpstr (bf_document_get_undo_name (bench.document), ==, "Tick a step");
  bf_work_guide_tick (bench.guide, 3, TRUE);
  g_assert_cmpuint (bench.n_changes, ==, 1);
  bf_work_guide_tick (bench.guide, 3, FALSE);
  g_assert_cmpuint (n_ticked (&bench), ==, 0);
  g_assert_cmpstr (bf_document_get_undo_name (bench.document), ==, "Take a tick away");
  bf_document_undo (bench.document);
  g_assert_cmpuint (n_ticked (&bench), ==, 1);
  bf_document_undo (bench.document);
  g_assert_cmpuint (n_ticked (&bench), ==, 0);
  g_assert_null (bf_document_get_undo_name (bench.document));
  end (&bench);
}

static void
test_choose (void)
{
  Bench bench;

  begin (&bench);
  bf_work_guide_choose (bench.guide, 5);
  g_assert_cmpuint (bf_work_guide_get_step (bench.guide), ==, 5);
  g_assert_cmpuint (bench.n_changes, ==, 1);
  bf_work_guide_choose (bench.guide, 5);
  g_assert_cmpuint (bench.n_changes, ==, 1);
  g_assert_cmpuint (n_ticked (&bench), ==, 0);
  end (&bench);
}

/* ---- another part ------------------------------------------------------------------------- */

static void
take (Bench *bench, BfPart *part)
{
  bf_document_apply (bench->document, part, "An edit", NULL);
  bf_part_unref (part);
}

/* What leaves the blank as it is leaves the ticks and the place: a name, other units. What changes
 * it begins anew; undone, the ticks are there again. */
static void
test_other_blank (void)
{
  Bench bench;

  begin (&bench);
  for (guint i = 0; i < 4; i++)
    bf_work_guide_go_on (bench.guide);
  take (&bench, bf_edit_name (bf_document_get_part (bench.document), "Pan"));
  take (&bench, bf_edit_units (bf_document_get_part (bench.document), BF_UNITS_IN));
  g_assert_cmpuint (n_ticked (&bench), ==, 4);
  g_assert_cmpuint (bf_work_guide_get_step (bench.guide), ==, 4);
  take (&bench, bf_edit_flange_length (bf_document_get_part (bench.document), "front", 55.0));
  g_assert_cmpuint (bf_work_guide_get_step (bench.guide), ==, 0);
  bf_work_guide_tick (bench.guide, 0, TRUE);
  g_assert_cmpuint (n_ticked (&bench), ==, 1);
  bf_document_undo (bench.document);
  bf_document_undo (bench.document);
  g_assert_cmpuint (n_ticked (&bench), ==, 4);
  g_assert_cmpuint (bf_work_guide_get_step (bench.guide), ==, 4);
  end (&bench);
}

/* A part that was begun is gone on with at the first step that is not ticked. */
static void
test_gone_on_with (void)
{
  Bench bench, again;
  g_autoptr (BfPart) begun = NULL;

  begin (&bench);
  for (guint i = 0; i < 6; i++)
    bf_work_guide_go_on (bench.guide);
  bf_work_guide_tick (bench.guide, 2, FALSE);
  begun = bf_part_ref (bf_document_get_part (bench.document));
  begin (&again);
  bf_document_set_part (again.document, begun, NULL);
  g_assert_cmpuint (bf_work_guide_get_step (again.guide), ==, 2);
  end (&again);
  end (&bench);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/work-guide/nothing", test_nothing);
  g_test_add_func ("/work-guide/to-the-end", test_to_the_end);
  g_test_add_func ("/work-guide/ticks", test_ticks);
  g_test_add_func ("/work-guide/choose", test_choose);
  g_test_add_func ("/work-guide/other-blank", test_other_blank);
  g_test_add_func ("/work-guide/gone-on-with", test_gone_on_with);
  return g_test_run ();
}
