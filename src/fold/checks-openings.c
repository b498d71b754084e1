/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/checks-openings.h"

#include <glib/gi18n.h>

#include "fold/checks-necks.h"
#include "fold/checks.h"
#include "fold/outline.h"
#include "fold/overlay.h"
#include "fold/ring-distance.h"

/* How closely points on an opening follow it, where they are looked at one by one. One that reaches
 * less than this beyond the metal may be taken for one that touches the edge. */
#define SAGITTA_MM 1e-3

typedef struct
{
  BfFold *fold;
  BfRing *walked; /* the metal's outline before reliefs and openings */
  BfNearRing outline;
  GArray *openings; /* BfNearRing, as the fold's */
  GArray *reliefs;  /* BfNearRing, as the fold's */
  GPtrArray *zones; /* BfRing, as the fold's bends */
  GArray *bends;    /* BfNearRing, of the zones */
} Survey;

static const BfNearRing *
near_at (const GArray *rings, guint i)
{
  return &g_array_index (rings, BfNearRing, i);
}

/* An array of n rings, all of them still to be made ready. */
static GArray *
near_rings (guint n)
{
  GArray *rings = g_array_sized_new (FALSE, TRUE, sizeof (BfNearRing), n);

  g_array_set_clear_func (rings, (GDestroyNotify)bf_near_ring_clear);
  g_array_set_size (rings, n);
  return rings;
}

static void
open_survey (Survey *survey, BfFold *fold)
{
  survey->fold = fold;
  survey->walked = bf_outline_blank (fold->layout);
  bf_near_ring_init (&survey->outline, survey->walked);
  survey->openings = near_rings (fold->openings->len);
  survey->reliefs = near_rings (fold->reliefs->len);
  survey->bends = near_rings (fold->bends->len);
  survey->zones = g_ptr_array_new_with_free_func ((GDestroyNotify)bf_ring_free);
  for (guint i = 0; i < fold->openings->len; i++)
    bf_near_ring_init (&g_array_index (survey->openings, BfNearRing, i),
                       bf_fold_opening (fold, i)->ring);
  for (guint i = 0; i < fold->reliefs->len; i++)
    bf_near_ring_init (&g_array_index (survey->reliefs, BfNearRing, i),
                       bf_fold_relief (fold, i)->ring);
  for (guint i = 0; i < fold->bends->len; i++)
    {
      BfRing *zone = bf_outline_zone_ring (bf_fold_bend (fold, i));
      g_ptr_array_add (survey->zones, zone);
      bf_near_ring_init (&g_array_index (survey->bends, BfNearRing, i), zone);
    }
}

static void
close_survey (Survey *survey)
{
  g_array_unref (survey->bends);
  g_ptr_array_unref (survey->zones);
  g_array_unref (survey->reliefs);
  g_array_unref (survey->openings);
  bf_near_ring_clear (&survey->outline);
  bf_ring_free (survey->walked);
}

static BfVec2
middle_of (const BfNearRing *ring)
{
  return bf_vec2_scale (bf_vec2_add (ring->box.min, ring->box.max), 0.5);
}

/* The opening's flange or "base", and in words "the base". */
static const char *
on_of (const Survey *survey, guint opening)
{
  return bf_fold_opening (survey->fold, opening)->asked->on;
}

static const char *
face_words (const char *on)
{
  return strcmp (on, "base") == 0 ? _ ("the base") : on;
}

static void
add (Survey *survey, guint opening, BfCheck check, char *message)
{
  check.fix.at = opening; /* which one a fix would be for */
  bf_checks_add (survey->fold, check, on_of (survey, opening), message);
}

/* ---- the opening itself -------------------------------------------------------------------- */

static void
check_simple (Survey *survey, guint i)
{
  const BfOpeningResult *opening = bf_fold_opening (survey->fold, i);
  BfCheck check = {
    .code = "outline-crosses-itself", .severity = BF_SEVERITY_MUST_FIX, .found = NAN, .needed = NAN
  };

  if (opening->asked->shape != BF_OPENING_OUTLINE ||
      bf_overlay_is_simple (opening->ring, &check.place))
    return;
  add (survey, i, check,
       /* Translators: a flange's name, or "the base" */
       g_strdup_printf (_ ("The outline of a cut-out in %s crosses or touches itself. Move its "
                           "points apart."),
                        face_words (on_of (survey, i))));
}

static gboolean
is_in_relief (const Survey *survey, BfVec2 p)
{
  for (guint i = 0; i < survey->reliefs->len; i++)
    if (bf_ring_contains (near_at (survey->reliefs, i)->ring, p))
      return TRUE;
  return FALSE;
}

static BfVec2
a_point_of (const BfNearRing *ring)
{
  return bf_ring_vertex (ring->ring, 0)->p;
}

/* TRUE where the opening lies in the metal's outline and keeps off it. */
static gboolean
is_well_inside (const Survey *survey, const BfNearRing *opening)
{
  return bf_ring_contains (survey->walked, a_point_of (opening)) &&
         bf_near_ring_distance (opening, &survey->outline, BF_CHECKS_NO_DIFFERENCE_MM, NULL) >=
             BF_CHECKS_NO_DIFFERENCE_MM;
}

/* How far the opening reaches beyond the metal. */
static double
overhang_mm (const Survey *survey, guint i)
{
  const BfNearRing *opening = near_at (survey->openings, i);
  g_autoptr (GArray) points = NULL;
  double most = 0.0;

  if (is_well_inside (survey, opening))
    return 0.0;
  points = g_array_new (FALSE, FALSE, sizeof (BfVec2));
  bf_ring_flatten (opening->ring, SAGITTA_MM, points);
  for (guint k = 0; k < points->len; k++)
    {
      BfVec2 p = g_array_index (points, BfVec2, k);

      if (!bf_ring_contains (survey->walked, p) && !is_in_relief (survey, p))
        most = MAX (most, bf_near_ring_distance_to (&survey->outline, p));
    }
  return most;
}

static gboolean
touches (const BfNearRing *opening, const BfNearRing *other)
{
  if (bf_ring_size (other->ring) < 3 ||
      bf_box_gap (&opening->box, &other->box) >= BF_CHECKS_NO_DIFFERENCE_MM)
    return FALSE;
  return bf_ring_contains (other->ring, a_point_of (opening)) ||
         bf_ring_contains (opening->ring, a_point_of (other)) ||
         bf_near_ring_distance (opening, other, BF_CHECKS_NO_DIFFERENCE_MM, NULL) <
             BF_CHECKS_NO_DIFFERENCE_MM;
}

static gboolean
touches_face (const Survey *survey, const BfNearRing *opening, guint face)
{
  g_auto (BfNearRing) outline = { NULL };

  bf_near_ring_init (&outline, bf_fold_face (survey->fold, face)->outline);
  return touches (opening, &outline);
}

static gboolean
is_bend_of (const BfFold *fold, guint bend, guint face)
{
  return bf_fold_bend (fold, bend)->face == face ||
         bf_fold_face (fold, bend + 1)->parent == (int)face;
}

/* TRUE where some of the opening lies in the face that it is drawn on, or in one of its bends. */
static gboolean
is_on_face (const Survey *survey, guint i)
{
  const BfFold *fold = survey->fold;
  const BfNearRing *opening = near_at (survey->openings, i);
  guint face = bf_fold_opening (fold, i)->face;
  gboolean on = touches_face (survey, opening, face);

  for (guint k = 0; k < fold->bends->len && !on; k++)
    on = is_bend_of (fold, k, face) && touches (opening, near_at (survey->bends, k));
  return on;
}

/* FALSE where nothing more need be said of the opening. */
static gboolean
check_on_face (Survey *survey, guint i)
{
  gboolean on = is_on_face (survey, i);
  double over = on ? overhang_mm (survey, i) : 0.0;
  g_autofree char *found = bf_checks_length (survey->fold, over);
  BfCheck check = { .code = "opening-off-face",
                    .severity = BF_SEVERITY_MUST_FIX,
                    .found = on ? over : NAN,
                    .needed = on ? 0.0 : NAN,
                    .place = middle_of (near_at (survey->openings, i)) };
  const char *face = face_words (on_of (survey, i));

  if (on && over <= BF_CHECKS_NO_DIFFERENCE_MM)
    return TRUE;
  add (survey, i, check,
       on ? g_strdup_printf (
                /* Translators: a flange's name or "the base", and a length with its unit */
                _ ("An opening in %s reaches %s beyond the metal. Move it in, or make it smaller."),
                face, found)
          /* Translators: a flange's name, or "the base" */
          : g_strdup_printf (_ ("An opening lies off %s, where it is drawn. Move it in."), face));
  return FALSE;
}

/* ---- bends and edges ----------------------------------------------------------------------- */

static void
add_near_bend (Survey *survey, guint i, const BfBendResult *bend, double distance)
{
  BfFold *fold = survey->fold;
  double needed = 2.0 * fold->layout->thickness_mm;
  g_autofree char *found = bf_checks_length (fold, distance);
  g_autofree char *wanted = bf_checks_length (fold, needed);
  BfCheck check = { .code = "opening-near-bend",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .found = distance,
                    .needed = needed,
                    .place = middle_of (near_at (survey->openings, i)) };
  const char *face = face_words (on_of (survey, i));

  add (
      survey, i, check,
      distance <= 0.0
          /* Translators: a flange's name or "the base", another flange's name, a length */
          ? g_strdup_printf (_ ("An opening in %s lies across the bend of %s: it is cut, and it "
                                "pulls out of shape as that bends. %s from the bend it would "
                                "not."),
                             face, bend->flange, wanted)
          /* Translators: a flange's name or "the base", a length, another flange's name, a length
           */
          : g_strdup_printf (_ ("An opening in %s is %s from the bend of %s and pulls out of shape "
                                "as that bends; keep %s off it."),
                             face, found, bend->flange, wanted));
}

/* The bend that the opening comes nearest to. */
static void
check_bends (Survey *survey, guint i)
{
  const BfFold *fold = survey->fold;
  const BfNearRing *opening = near_at (survey->openings, i);
  double least = 2.0 * fold->layout->thickness_mm - BF_CHECKS_NO_DIFFERENCE_MM;
  const BfBendResult *nearest = NULL;

  for (guint k = 0; k < fold->bends->len; k++)
    {
      const BfNearRing *zone = near_at (survey->bends, k);
      double distance;

      if (!fold->layout->flaps[k].placed || bf_box_gap (&opening->box, &zone->box) >= least)
        continue;
      distance = touches (opening, zone) ? 0.0 : bf_near_ring_distance (opening, zone, least, NULL);
      if (distance >= least)
        continue;
      least = distance;
      nearest = bf_fold_bend (fold, k);
    }
  if (nearest != NULL)
    add_near_bend (survey, i, nearest, least);
}

static void
add_strip (Survey *survey, const char *where, BfCheck check)
{
  g_autofree char *found = bf_checks_length (survey->fold, check.found);
  g_autofree char *wanted = bf_checks_length (survey->fold, check.needed);

  check.code = "strip-too-thin";
  check.severity = BF_SEVERITY_LOOK_AT;
  bf_checks_add (survey->fold, check, where,
                 /* Translators: two lengths with their units */
                 g_strdup_printf (_ ("Between two cuts only %s of metal is left, and %s is a sound "
                                     "least. Move them apart, or make one smaller."),
                                  found, wanted));
}

static void
check_edge (Survey *survey, guint i)
{
  BfFold *fold = survey->fold;
  double needed = 2.0 * fold->layout->thickness_mm;
  BfCheck check = { .code = "opening-near-edge",
                    .severity = BF_SEVERITY_LOOK_AT,
                    .needed = needed,
                    .place = middle_of (near_at (survey->openings, i)) };
  double strip = bf_checks_least_strip_mm (fold);
  g_autofree char *wanted = bf_checks_length (fold, needed);
  g_autofree char *found = NULL;

  check.found =
      bf_near_ring_distance (near_at (survey->openings, i), &survey->outline, strip, &check.place);
  if (check.found >= strip - BF_CHECKS_NO_DIFFERENCE_MM)
    return;
  if (check.found >= needed - BF_CHECKS_NO_DIFFERENCE_MM)
    {
      check.needed = strip;
      add_strip (survey, on_of (survey, i), check);
      return;
    }
  found = bf_checks_length (fold, check.found);
  add (survey, i, check,
       /* Translators: a flange's name or "the base", and two lengths with their units */
       g_strdup_printf (_ ("An opening in %s is %s from the edge; the metal there is weak below "
                           "%s. Move it in."),
                        face_words (on_of (survey, i)), found, wanted));
}

/* ---- strips -------------------------------------------------------------------------------- */

/* The strip between two cuts; two that cross or touch are one cut. */
static void
check_strip (Survey *survey, const BfNearRing *a, const BfNearRing *b, const char *where)
{
  BfCheck check = { .needed = bf_checks_least_strip_mm (survey->fold), .place = middle_of (a) };

  check.found = bf_near_ring_distance (a, b, check.needed, &check.place);
  if (check.found > BF_CHECKS_NO_DIFFERENCE_MM &&
      check.found < check.needed - BF_CHECKS_NO_DIFFERENCE_MM &&
      !bf_ring_contains (b->ring, a_point_of (a)) && !bf_ring_contains (a->ring, a_point_of (b)))
    add_strip (survey, where, check);
}

static void
check_strips (Survey *survey)
{
  for (guint i = 0; i < survey->openings->len; i++)
    {
      const BfNearRing *opening = near_at (survey->openings, i);

      for (guint k = i + 1; k < survey->openings->len; k++)
        check_strip (survey, opening, near_at (survey->openings, k), on_of (survey, i));
      for (guint k = 0; k < survey->reliefs->len; k++)
        check_strip (survey, opening, near_at (survey->reliefs, k), on_of (survey, i));
    }
  for (guint i = 0; i < survey->reliefs->len; i++)
    for (guint k = i + 1; k < survey->reliefs->len; k++)
      check_strip (survey, near_at (survey->reliefs, i), near_at (survey->reliefs, k),
                   bf_fold_relief (survey->fold, i)->where);
}

void
bf_checks_find_openings (BfFold *fold)
{
  Survey survey;

  if (fold->openings->len + fold->reliefs->len == 0)
    return;
  open_survey (&survey, fold);
  for (guint i = 0; i < fold->openings->len; i++)
    {
      check_simple (&survey, i);
      if (fold->layout->wanted_twice || !check_on_face (&survey, i))
        continue;
      check_bends (&survey, i);
      check_edge (&survey, i);
    }
  check_strips (&survey);
  close_survey (&survey);
}
