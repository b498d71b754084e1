/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-collide.h"

#include <glib/gi18n.h>

#include "core/units.h"
#include "fold/checks.h"
#include "fold/collide.h"
#include "fold/fold-shape.h"

/* Looking for a cure folds the part again and again, while somebody may be dragging: so many times
 * in all, more for a small part. */
#define REFOLDS_MIN 24
#define REFOLDS_OF_FACES 800

/* A length is found to this share of what it was between. */
#define N_HALVINGS 10

typedef struct
{
  BfFold *fold;
  const GArray *found; /* BfCollision: all of them */
  guint refolds;       /* how many may still be made */
} Search;

/* What would part two faces. */
typedef struct
{
  BfFix fix;
  guint face;      /* the flange to be shortened or inset */
  BfSideName name; /* the end that it is inset at */
} Cure;

/* ---- the cure ----------------------------------------------------------------------------- */

static gboolean
was_found (const Search *search, const BfCollision *pair)
{
  for (guint i = 0; i < search->found->len; i++)
    {
      const BfCollision *known = &g_array_index (search->found, BfCollision, i);

      if (known->a == pair->a && known->b == pair->b)
        return TRUE;
    }
  return FALSE;
}

/* TRUE where the fix parts the pair, and makes no other collide. */
static gboolean
parts_them (Search *search, const BfCollision *pair, const BfFix *fix)
{
  g_autoptr (BfPart) part = bf_fix_apply (search->fold->asked, fix, NULL);
  g_autoptr (GArray) left = g_array_new (FALSE, FALSE, sizeof (BfCollision));
  g_autoptr (BfFold) tried = NULL;

  if (part == NULL || search->refolds == 0)
    return FALSE;
  search->refolds--;
  tried = bf_fold_shape (part);
  bf_collisions_find (tried, left);
  for (guint i = 0; i < left->len; i++)
    {
      const BfCollision *other = &g_array_index (left, BfCollision, i);

      if ((other->a == pair->a && other->b == pair->b) || !was_found (search, other))
        return FALSE;
    }
  return TRUE;
}

/* The shortest that the flange may be: a sound flat of twice the thickness beyond its bends. */
static double
shortest_mm (const BfFold *fold, guint face)
{
  const BfFlap *flap = &fold->layout->flaps[face - 1];
  double flat = bf_flap_flat_mm (flap);

  return bf_fix_round_up_mm (flap->flange->length_mm - flat + 2.0 * fold->layout->thickness_mm,
                             fold->part->units);
}

static gboolean
find_length (Search *search, const BfCollision *pair, guint face, Cure *cure)
{
  const BfFlange *flange = search->fold->layout->flaps[face - 1].flange;
  double good = shortest_mm (search->fold, face), bad = flange->length_mm;
  BfFix fix = { .kind = BF_FIX_FLANGE_LENGTH, .id = flange->id, .value = { good } };

  if (good >= bad || !parts_them (search, pair, &fix))
    return FALSE;
  for (guint i = 0; i < N_HALVINGS; i++)
    {
      fix.value[0] = bf_fix_round_down_mm ((good + bad) / 2.0, search->fold->part->units);
      if (fix.value[0] <= good)
        break;
      if (parts_them (search, pair, &fix))
        good = fix.value[0];
      else
        bad = fix.value[0];
    }
  fix.value[0] = good;
  *cure = (Cure){ .fix = fix, .face = face };
  return TRUE;
}

/* The most of its edge that a flange may be inset by to part it from something. */
#define MOST_INSET 0.45

/* A face may stand further from an end of its edge. */
static gboolean
find_inset_at (Search *search, const BfCollision *pair, guint face, BfSideName name, Cure *cure)
{
  const BfFlap *flap = &search->fold->layout->flaps[face - 1];
  BfUnits units = search->fold->part->units;
  BfFix fix = { .kind = BF_FIX_INSETS,
                .id = flap->flange->id,
                .value = { flap->flange->start_mm, flap->flange->end_mm } };
  double bad = fix.value[name],
         good = bf_fix_round_up_mm (MOST_INSET * flap->edge_length_mm, units);

  fix.value[name] = good;
  if (good <= bad || !parts_them (search, pair, &fix))
    return FALSE;
  for (guint i = 0; i < N_HALVINGS; i++)
    {
      fix.value[name] = bf_fix_round_up_mm ((good + bad) / 2.0, units);
      if (fix.value[name] >= good)
        break;
      if (parts_them (search, pair, &fix))
        good = fix.value[name];
      else
        bad = fix.value[name];
    }
  fix.value[name] = good;
  *cure = (Cure){ fix, face, name };
  return TRUE;
}

/* Only of a flange that carries nothing: it would take the edges of what it carries along. */
static gboolean
find_inset (Search *search, const BfCollision *pair, guint face, Cure *cure)
{
  const BfFlap *flap = &search->fold->layout->flaps[face - 1];

  return flap->placed && flap->on_tip == NULL && flap->on_side[BF_SIDE_START] == NULL &&
         flap->on_side[BF_SIDE_END] == NULL &&
         (find_inset_at (search, pair, face, BF_SIDE_START, cure) ||
          find_inset_at (search, pair, face, BF_SIDE_END, cure));
}

/* Walls that meet at a corner which was asked to be more than open. */
static gboolean
find_open_corner (Search *search, const BfCollision *pair, Cure *cure)
{
  const BfLayout *layout = search->fold->layout;

  for (guint i = 0; i < layout->meetings->len; i++)
    {
      const BfMeeting *meeting = bf_layout_meeting (layout, i);
      guint a = (guint)meeting->before + 1, b = (guint)meeting->after + 1;

      if (meeting->join == BF_JOIN_OPEN || MIN (a, b) != pair->a || MAX (a, b) != pair->b)
        continue;
      cure->fix = (BfFix){ .kind = BF_FIX_JOIN_OPEN,
                           .id = bf_meeting_on (layout, meeting),
                           .at = meeting->at };
      return parts_them (search, pair, &cure->fix);
    }
  return FALSE;
}

static guint
depth_of (const BfFold *fold, guint face)
{
  return face == 0 ? 0 : fold->layout->flaps[face - 1].depth + 1;
}

/* Opens the corner; else shortens the face that hangs on more bends; else the other; else insets
 * them; else shortens what they hang on. */
static gboolean
find_cure (Search *search, const BfCollision *pair, Cure *cure)
{
  const BfFold *fold = search->fold;
  gboolean a_first = depth_of (fold, pair->a) > depth_of (fold, pair->b);
  guint first = a_first ? pair->a : pair->b, second = a_first ? pair->b : pair->a;
  const guint faces[] = { first, second, (guint)MAX (bf_fold_face (fold, first)->parent, 0),
                          (guint)MAX (bf_fold_face (fold, second)->parent, 0) };

  if (find_open_corner (search, pair, cure))
    return TRUE;
  for (guint i = 0; i < G_N_ELEMENTS (faces); i++)
    {
      if (i == 2 && ((first > 0 && find_inset (search, pair, first, cure)) ||
                     (second > 0 && find_inset (search, pair, second, cure))))
        return TRUE;
      if (faces[i] > 0 && find_length (search, pair, faces[i], cure))
        return TRUE;
    }
  return FALSE;
}

/* ---- the check ---------------------------------------------------------------------------- */

static const char *
name_of (const BfFold *fold, guint face)
{
  return face == 0 ? _ ("the base") : bf_fold_face (fold, face)->id;
}

static char *
cured_message (const BfFold *fold, const char *runs, const Cure *cure, gboolean itself)
{
  gboolean inset = cure->fix.kind == BF_FIX_INSETS;
  g_autofree char *length =
      bf_format_length (cure->fix.value[inset ? cure->name : 0], fold->part->units);

  if (cure->fix.kind == BF_FIX_JOIN_OPEN)
    /* Translators: a sentence such as "right runs 1.5 mm into front." */
    return g_strdup_printf (_ ("%s Leave the corner between them open."), runs);
  if (inset)
    return g_strdup_printf (cure->name == BF_SIDE_START
                                /* Translators: a sentence such as "lip runs 1.8 mm into wall.", the
                                 * name of a flange, and a length with its unit */
                                ? _ ("%s Inset %s by %s where it starts.")
                                : _ ("%s Inset %s by %s where it ends."),
                            runs, cure->fix.id, length);
  if (itself)
    /* Translators: a sentence such as "lip runs 1.8 mm into wall.", and a length with its unit */
    return g_strdup_printf (_ ("%s Shorten it to %s."), runs, length);
  return g_strdup_printf (
      /* Translators: a sentence such as "lip runs 1.8 mm into wall.", the name of a flange, and a
       * length with its unit */
      _ ("%s Shorten %s to %s."), runs, cure->fix.id, length);
}

/* What is at fault hangs on something: the base never is. */
static guint
mover_of (const BfFold *fold, const BfCollision *pair)
{
  return depth_of (fold, pair->a) > depth_of (fold, pair->b) ? pair->a : pair->b;
}

static void
describe (Search *search, const BfCollision *pair)
{
  BfFold *fold = search->fold;
  Cure cure = { .face = 0 };
  gboolean cured = find_cure (search, pair, &cure);
  gboolean by_one = cured && (cure.face == pair->a || cure.face == pair->b) && cure.face > 0;
  guint mover = by_one ? cure.face : mover_of (fold, pair);
  guint other = mover == pair->a ? pair->b : pair->a;
  double least = bf_fix_round_up_mm (BF_COLLISION_LEAST_MM, fold->part->units);
  g_autofree char *depth =
      bf_format_length (MAX (pair->depth_mm, least), fold->part->units); /* never "0 mm" */
  g_autofree char *runs =
      /* Translators: the name of a flange, a length with its unit, the name of another flange */
      g_strdup_printf (_ ("%s runs %s into %s."), name_of (fold, mover), depth,
                       name_of (fold, other));
  BfCheck check = { .code = "faces-collide",
                    .severity = BF_SEVERITY_MUST_FIX,
                    .found = pair->depth_mm,
                    .needed = 0.0,
                    .place = pair->place };

  if (cured)
    check.fix = cure.fix;
  bf_checks_add (fold, check, bf_fold_face (fold, mover)->id,
                 cured ? cured_message (fold, runs, &cure, cure.face == mover)
                       : g_strdup_printf (
                             /* Translators: a sentence such as "lip runs 1.8 mm into wall." */
                             _ ("%s Bend one of them less, or inset its end."), runs));
}

static int
compare_depths (gconstpointer a, gconstpointer b)
{
  double x = ((const BfCollision *)a)->depth_mm, y = ((const BfCollision *)b)->depth_mm;
  return (x < y) - (x > y);
}

void
bf_checks_find_collisions (BfFold *fold)
{
  g_autoptr (GArray) found = g_array_new (FALSE, FALSE, sizeof (BfCollision));
  Search search = { fold, found, MAX (REFOLDS_MIN, REFOLDS_OF_FACES / fold->faces->len) };

  bf_collisions_find (fold, found);
  g_array_sort (found, compare_depths);
  for (guint i = 0; i < found->len; i++)
    describe (&search, &g_array_index (found, BfCollision, i));
}
