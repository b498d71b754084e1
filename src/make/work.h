/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "make/cuts.h"
#include "make/marking-steps.h"
#include "make/rule-marks.h"

/* The work on a part from the metal to the finished thing, stage by stage and step by step, as the
 * window's page Make and the make card show it. A value: made once from a fold, never changed. */

typedef enum
{
  BF_STAGE_METAL,
  BF_STAGE_MARK,
  BF_STAGE_DRILL,
  BF_STAGE_CUT,
  BF_STAGE_BEND,
  BF_STAGE_JOIN,
  BF_STAGE_FINISH,
  BF_N_STAGES,
} BfStage;

/* What a step's picture shows. */
typedef enum
{
  BF_SHOWS_BLANK,   /* the blank as it is */
  BF_SHOWS_MARKING, /* the step `at` of work->marking_steps (paint/marking-picture.h) */
  BF_SHOWS_CUT,     /* the blank with the cut `at` of work->cuts lit; all of them for −1 */
  BF_SHOWS_BEND,    /* the part with the first `at` + 1 bends of fold->order made: the last of them
                       is this step's */
  BF_SHOWS_SEAM, /* the formed part, with the seam `at` of fold->seams lit; all of them for −1 */
  BF_SHOWS_FORMED, /* the formed part */
} BfWorkShows;

/* What more can be asked at a step. */
typedef enum
{
  BF_MORE_NOTHING,
  BF_MORE_SUMS,     /* the sums of the bend that its picture shows */
  BF_MORE_MEASURED, /* what the sizes of the first part made tell for the next */
} BfWorkMore;

#define BF_WORK_MAX_NUMBERS 5

/* "width", "276.2 mm". */
typedef struct
{
  const char *label; /* translated, static */
  char *value;       /* with its unit */
} BfWorkNumber;

typedef struct
{
  BfStage stage;
  char *words; /* what to do: a sentence or two */
  BfWorkNumber numbers[BF_WORK_MAX_NUMBERS];
  guint n_numbers;
  const char *caution; /* one line, translated, static; or NULL */
  BfWorkShows shows;
  int at; /* as `shows` says; −1 for all, or where it says nothing */
  BfWorkMore more;
  gboolean detail; /* one of many alike, that a summary before it stands for on a card */
} BfWorkStep;

typedef struct
{
  BfFold *fold;
  BfMarking *marking;
  GArray *marking_steps;  /* BfMarkingStep */
  GArray *cuts;           /* BfCut, in the order to make them */
  double guide_offset_mm; /* as the options have it */
  GArray *seams;          /* guint: indices in fold->seams, in the order to join them */
  GArray *steps;          /* BfWorkStep, stage by stage */
  guint
      first[BF_N_STAGES + 1]; /* where each stage begins in steps; the last is how many there are */
} BfWork;

typedef struct
{
  const BfRuleMarks *marks; /* of the rule; NULL, or of other units: the finest */
  double guide_offset_mm;   /* from the guide to the cut; 0: the disc just touches the guide */
} BfWorkOptions;

/* Lengths in words are in the part's units. options: NULL for the defaults. The fold is kept by
 * reference. Returns: (transfer full). */
BfWork *bf_work_new (BfFold *fold, const BfWorkOptions *options) G_GNUC_WARN_UNUSED_RESULT;
void bf_work_free (BfWork *work);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfWork, bf_work_free)

/* TRUE where the person cuts the blank with tools in hand. */
gboolean bf_work_is_by_hand (const BfWork *work);

/* Where a cut that is square to the metal's edges runs, as it is marked, and where its guide lies.
 */
typedef struct
{
  BfDatum from; /* BF_DATUM_BOTTOM: the cut runs along x */
  double line_mm, guide_mm;
} BfCutPlace;

/* FALSE, place untouched, for a cut that is not square to them. */
gboolean bf_work_cut_place (const BfWork *work, guint cut, BfCutPlace *place);

/* "at the left", "below": toward which side of the blank a cut's waste is, as it lies with its
 * marking side up. Translated, static. */
const char *bf_cut_waste_words (const BfCut *cut);

/* "Metal", "Mark" … as a heading. Translated, static. */
const char *bf_stage_name (BfStage stage);

static inline const BfWorkStep *
bf_work_step (const BfWork *work, guint i)
{
  return &g_array_index (work->steps, BfWorkStep, i);
}

static inline guint
bf_work_n_steps (const BfWork *work, BfStage stage)
{
  return work->first[stage + 1] - work->first[stage];
}

/* Step i of a stage. */
static inline const BfWorkStep *
bf_work_stage_step (const BfWork *work, BfStage stage, guint i)
{
  return bf_work_step (work, work->first[stage] + i);
}
