/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/part-file.h"
#include "paint/cut-labels.h"
#include "paint/figure.h"

static const char *const names[] = { "spoke-tray",    "pump-bracket", "lever-rail", "rag-bin",
                                     "hex-bit-caddy", "drip-pan",     "tool-shelf" };

/* The card's picture, one of a page's width, and one that is far too small. */
static const BfVec2 rooms[] = { { 86.0, 52.0 }, { 170.0, 110.0 }, { 35.0, 25.0 } };

static BfWork *
load_work (const char *name, BfCuttingWay by)
{
  g_autofree char *file_name = g_strconcat (name, BF_PART_FILE_SUFFIX, NULL);
  g_autofree char *path =
      g_build_filename (g_getenv ("BENCHFOLD_DATA"), "examples", file_name, NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (BfPart) part = bf_part_load (file, NULL);
  g_autoptr (BfFold) fold = NULL;

  part->cutting.by = by;
  fold = bf_fold (part);
  return bf_work_new (fold, NULL);
}

static const BfCutLabel *
label_at (const GArray *labels, guint i)
{
  return &g_array_index (labels, BfCutLabel, i);
}

static gboolean
apart (const BfBox *a, const BfBox *b)
{
  return a->max.x <= b->min.x || b->max.x <= a->min.x || a->max.y <= b->min.y ||
         b->max.y <= a->min.y;
}

/* Every cut has its number, once and in order; only cuts of one opening share a label. */
static void
check_all_there (const BfWork *work, const GArray *labels)
{
  guint next = 1;

  for (guint i = 0; i < labels->len; i++)
    {
      const BfCutLabel *label = label_at (labels, i);

      g_assert_cmpuint (label->first, ==, next);
      g_assert_cmpuint (label->last, >=, label->first);
      for (guint k = label->first; k < label->last; k++)
        g_assert_true (bf_cuts_share_opening (bf_cut (work->cuts, k - 1), bf_cut (work->cuts, k)));
      next = label->last + 1;
    }
  g_assert_cmpuint (next, ==, work->cuts->len + 1);
}

static void
check_apart (const GArray *labels)
{
  for (guint i = 0; i < labels->len; i++)
    for (guint k = 0; k < i; k++)
      g_assert_true (apart (&label_at (labels, i)->box, &label_at (labels, k)->box));
}

/* A label without a line stands beside its cut or in its opening: no further off than two numbers
 * are high. */
static void
check_near (const BfWork *work, BfVec2 room, const GArray *labels)
{
  BfFigurePlace place = bf_figure_place (work->fold, room);

  for (guint i = 0; i < labels->len; i++)
    {
      const BfCutLabel *label = label_at (labels, i);
      const BfCut *cut = bf_cut (work->cuts, label->first - 1);
      BfVec2 middle = bf_box_middle (&label->box), at;

      if (label->leads)
        continue;
      at = label->first == label->last ? bf_vec2_scale (bf_vec2_add (cut->from, cut->to), 0.5)
                                       : bf_box_middle (&cut->opening);
      at = bf_vec2 (place.left + place.scale * at.x, place.bottom - place.scale * at.y);
      g_assert_cmpfloat (bf_vec2_distance (at, middle), <, 8.0);
    }
}

static void
test_examples (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autoptr (BfWork) work = load_work (names[i], BF_CUTTING_DISC);

      g_assert_cmpuint (work->cuts->len, >, 0);
      for (guint k = 0; k < G_N_ELEMENTS (rooms); k++)
        {
          g_autoptr (GArray) labels = bf_cut_labels (work, rooms[k]);

          check_all_there (work, labels);
          if (k < 2)
            check_apart (labels);
          check_near (work, rooms[k], labels);
        }
    }
}

static void
test_machine (void)
{
  g_autoptr (BfWork) work = load_work ("tool-shelf", BF_CUTTING_TABLE);
  g_autoptr (GArray) labels = bf_cut_labels (work, rooms[0]);

  g_assert_cmpuint (labels->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/cut-labels/examples", test_examples);
  g_test_add_func ("/cut-labels/machine", test_machine);
  return g_test_run ();
}
