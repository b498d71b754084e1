/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "make/work-ticks.h"

/* The first digits of the checksum: enough for one blank after the other. */
#define N_DIGITS 12

static void
add_number (GChecksum *sum, double number)
{
  char text[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (text, sizeof text, "%.2f ", number);
  /* What rounds to nothing has no sign. */
  if (g_str_equal (text, "-0.00 "))
    g_strlcpy (text, "0.00 ", sizeof text);
  g_checksum_update (sum, (const guchar *)text, -1);
}

static void
add_ring (GChecksum *sum, const BfRing *ring)
{
  for (guint i = 0; i < bf_ring_size (ring); i++)
    {
      add_number (sum, bf_ring_vertex (ring, i)->p.x);
      add_number (sum, bf_ring_vertex (ring, i)->p.y);
    }
}

char *
bf_work_blank_word (const BfFold *fold)
{
  g_autoptr (GChecksum) sum = g_checksum_new (G_CHECKSUM_SHA256);

  g_return_val_if_fail (fold != NULL, NULL);

  g_checksum_update (sum, (const guchar *)fold->part->metal.material, -1);
  add_number (sum, fold->part->metal.thickness_mm);
  for (guint i = 0; i < fold->blank.rings->len; i++)
    add_ring (sum, bf_blank_ring (&fold->blank, i));
  for (guint i = 0; i < fold->bends->len; i++)
    {
      const BfBendResult *bend = bf_fold_bend (fold, i);

      for (guint k = 0; k < 2; k++)
        {
          add_number (sum, bend->line[k].x);
          add_number (sum, bend->line[k].y);
        }
      add_number (sum, bf_rad_to_deg (bend->angle_rad));
      add_number (sum, bend->turn == BF_TURN_UP ? 1.0 : -1.0);
    }
  return g_strndup (g_checksum_get_string (sum), N_DIGITS);
}

static const char *const stage_words[BF_N_STAGES] = {
  "metal", "mark", "drill", "cut", "bend", "join", "finish",
};

char *
bf_work_step_word (const BfWork *work, guint step)
{
  BfStage stage;

  g_return_val_if_fail (work != NULL && step < work->steps->len, NULL);

  stage = bf_work_step (work, step)->stage;
  return g_strdup_printf ("%s:%u", stage_words[stage], step - work->first[stage]);
}

guint
bf_work_n_ticked (const BfWork *work, BfStage stage, const char *blank)
{
  guint n = 0;

  g_return_val_if_fail (work != NULL && stage < BF_N_STAGES && blank != NULL, 0);

  for (guint i = work->first[stage]; i < work->first[stage + 1]; i++)
    {
      g_autofree char *word = bf_work_step_word (work, i);

      n += bf_made_has (work->fold->part->made, blank, word) ? 1 : 0;
    }
  return n;
}
