/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "fold/fold.h"
#include "fold/slot-plan.h"

/* Marking the blank out on metal with a rule and a square, where there is no printer.
 *
 * Everything is measured from two edges of the metal that are square to each other: the left one
 * and the bottom one, where the blank's lowest x and y come to lie. No distance is measured from
 * another mark, so that errors do not add up, and all are rounded to marks of the rule. Lines that
 * run square to an edge are struck right across; other lines join two marked points. */

/* A distance from a datum edge: as it should be, and as the rule has it. */
typedef struct
{
  double exact_mm, marked_mm;
} BfMarked;

typedef struct
{
  BfMarked x, y; /* from the left edge, from the bottom edge */
} BfMarkedPoint;

typedef enum
{
  BF_DATUM_BOTTOM, /* the strike runs along x */
  BF_DATUM_LEFT,   /* the strike runs along y */
} BfDatum;

typedef enum
{
  BF_MARK_CUT,
  BF_MARK_BEND,
  BF_MARK_BAR, /* where the bar's front edge sits */
} BfMarkKind;

/* What of a strike is a line of the blank. */
typedef struct
{
  BfMarkKind kind;
  BfMarked from, to; /* along the strike, from the other datum edge */
  const char *name;  /* of a bend or its bar: the flange; else NULL. The fold's string */
} BfMarkStretch;

/* A line struck with the square at one distance from a datum edge. */
typedef struct
{
  BfDatum from;
  double marked_mm;
  GArray *stretches; /* BfMarkStretch, in order along the strike */
  GArray *wipes;     /* BfRun: what to wipe away again between them */
} BfStrike;

/* A line that is not square to the edges: it joins two points. */
typedef struct
{
  BfMarkKind kind;
  BfMarkedPoint from, to;
  const char *name; /* as above */
} BfMarkJoin;

/* An arc that no drill makes, with the compass. */
typedef struct
{
  BfMarkedPoint centre;
  double radius_mm;
} BfMarkArc;

typedef struct
{
  BfMarkedPoint centre;
  double diameter_mm;
  const char *drill; /* as BfDrilled has it */
} BfMarkHole;

/* A slot on a bend line: where it ends on the face that it is cut from. */
typedef struct
{
  const char *flange;
  BfMarkedPoint from, to;
  double near_mm, far_mm; /* its length on that face, and on the other */
} BfMarkSlot;

typedef struct
{
  BfFold *fold;
  double step_mm; /* marks of the rule */
  BfMarked width, height;
  double diagonal_mm; /* from corner to corner of what encloses the blank, by the exact sizes */
  GArray *strikes;    /* BfStrike: from the bottom edge, then from the left; nearest first */
  GArray *joins;      /* BfMarkJoin */
  GArray *arcs;       /* BfMarkArc */
  GArray *holes;      /* BfMarkHole, in order of drilling */
  GArray *slots;      /* BfMarkSlot */
  double worst_mm;    /* the biggest rounding error of all distances */
} BfMarking;

/* step_mm: marks of the rule, 0.5 mm or a fraction of an inch. The fold is kept by reference.
 * Returns: (transfer full). */
BfMarking *bf_marking_new (BfFold *fold, double step_mm) G_GNUC_WARN_UNUSED_RESULT;
void bf_marking_free (BfMarking *marking);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (BfMarking, bf_marking_free)

/* A coordinate of the blank as a distance from that datum edge. */
BfMarked bf_marking_distance (const BfMarking *marking, BfDatum from, BfVec2 p);
BfMarkedPoint bf_marking_point (const BfMarking *marking, BfVec2 p);

static inline const BfStrike *
bf_marking_strike (const BfMarking *marking, guint i)
{
  return &g_array_index (marking->strikes, BfStrike, i);
}
