/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/standing.h"

#include "fold/formed.h"
#include "fold/layout.h"

#define ROUND_SAGITTA_MM 0.05

typedef struct
{
  GArray *parts;  /* BfConvexPart in the blank */
  GArray *pieces; /* BfConvex: the parts as they stand */
  BfConvex box;   /* of all pieces: only min and max count */
  BfSolid slab;
} Face;

/* Flap, bend and flange's face are of one number: flap i has bend i, and face i + 1. */
struct BfStanding
{
  const BfFold *fold;
  Face *faces;
  BfPose *poses;     /* of each flap */
  double *fractions; /* of each bend */
  double *reach_mm;  /* of each flap: from the middle of its root to the furthest that it carries */
  GArray **hanging;  /* of each bend: the flaps that turn with it (guint), parents first */
};

/* ---- what does not change ----------------------------------------------------------------- */

static GArray *
parts_of_face (const BfRing *outline)
{
  GArray *parts = g_array_new (FALSE, FALSE, sizeof (BfConvexPart));
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  if (bf_ring_size (outline) < 3)
    return parts;
  bf_ring_flatten (outline, ROUND_SAGITTA_MM, points);
  bf_convex_parts (points, parts);
  return parts;
}

static void
list_hanging (BfStanding *standing)
{
  const BfLayout *layout = standing->fold->layout;

  for (guint k = 0; k < layout->n_flaps; k++)
    {
      guint flap = layout->order[k];

      standing->hanging[flap] = g_array_new (FALSE, FALSE, sizeof (guint));
      for (int i = (int)flap; i >= 0; i = layout->flaps[i].parent)
        g_array_append_val (standing->hanging[i], flap);
    }
}

static BfVec2
root_middle (const BfFold *fold, guint flap)
{
  const BfBendResult *bend = bf_fold_bend (fold, flap);

  return bf_vec2_scale (bf_vec2_add (bend->zone[2], bend->zone[3]), 0.5);
}

/* What a bend may move its flange's root away from its own foot: no more than its outer skin. */
static double
bend_mm (const BfFold *fold, guint flap)
{
  const BfBendResult *bend = bf_fold_bend (fold, flap);

  return bend->allowance_mm + fold->part->metal.thickness_mm * (bend->angle_rad + 1.0);
}

/* A face is rigid, and so no point of it is further from its root than in the blank; what it
 * carries is no further than by way of its own root. */
static void
find_reach (BfStanding *standing, guint flap)
{
  const BfFold *fold = standing->fold;
  const BfFlap *flaps = fold->layout->flaps;
  const GArray *parts = standing->faces[flap + 1].parts;
  BfVec2 root = root_middle (fold, flap);
  double *reach = &standing->reach_mm[flap], way;

  for (guint i = 0; i < parts->len; i++)
    {
      const BfConvexPart *part = &g_array_index (parts, BfConvexPart, i);

      for (guint k = 0; k < part->n; k++)
        *reach = MAX (*reach, bf_vec2_distance (root, part->corners[k]));
    }
  if (flaps[flap].parent < 0)
    return;
  way = bf_vec2_distance (root_middle (fold, (guint)flaps[flap].parent), root);
  standing->reach_mm[flaps[flap].parent] =
      MAX (standing->reach_mm[flaps[flap].parent], way + *reach + 2.0 * bend_mm (fold, flap));
}

/* ---- standing ------------------------------------------------------------------------------ */

static void
grow (BfConvex *box, const BfConvex *by)
{
  box->min = bf_vec3 (MIN (box->min.x, by->min.x), MIN (box->min.y, by->min.y),
                      MIN (box->min.z, by->min.z));
  box->max = bf_vec3 (MAX (box->max.x, by->max.x), MAX (box->max.y, by->max.y),
                      MAX (box->max.z, by->max.z));
}

static BfConvex
box_of (const GArray *solids)
{
  BfConvex box = { .min = { G_MAXDOUBLE, G_MAXDOUBLE, G_MAXDOUBLE },
                   .max = { -G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE } };

  for (guint i = 0; i < solids->len; i++)
    grow (&box, &g_array_index (solids, BfConvex, i));
  return box;
}

static void
stand_face (BfStanding *standing, const BfSolid *slab)
{
  Face *face = &standing->faces[slab->face];

  face->slab = *slab;
  g_array_set_size (face->pieces, face->parts->len);
  for (guint i = 0; i < face->parts->len; i++)
    {
      BfConvexPart part = g_array_index (face->parts, BfConvexPart, i);

      for (guint k = 0; k < part.n; k++)
        part.corners[k] = bf_solid_local (slab, part.corners[k]);
      bf_convex_from_slab (&slab->frame, &part, standing->fold->part->metal.thickness_mm,
                           &g_array_index (face->pieces, BfConvex, i));
    }
  face->box = box_of (face->pieces);
}

static void
stand_flap (BfStanding *standing, guint flap)
{
  const BfFold *fold = standing->fold;
  int parent = fold->layout->flaps[flap].parent;
  BfSolid slab;

  if (!fold->layout->flaps[flap].placed)
    return;
  slab = bf_formed_flap_slab (fold->layout, flap, standing->fractions[flap],
                              parent >= 0 ? &standing->poses[parent] : &bf_base_pose,
                              &standing->poses[flap]);
  stand_face (standing, &slab);
}

BfStanding *
bf_standing_new (const BfFold *fold)
{
  BfStanding *standing = g_new0 (BfStanding, 1);
  const BfLayout *layout = fold->layout;
  BfSolid base = bf_formed_base_slab (fold->faces);

  standing->fold = fold;
  standing->faces = g_new0 (Face, fold->faces->len);
  standing->poses = g_new0 (BfPose, layout->n_flaps + 1);
  standing->fractions = g_new0 (double, layout->n_flaps + 1);
  standing->reach_mm = g_new0 (double, layout->n_flaps + 1);
  standing->hanging = g_new0 (GArray *, layout->n_flaps + 1);
  for (guint i = 0; i < fold->faces->len; i++)
    {
      standing->faces[i].parts = parts_of_face (bf_fold_face (fold, i)->outline);
      standing->faces[i].pieces = g_array_new (FALSE, FALSE, sizeof (BfConvex));
      standing->faces[i].box = box_of (standing->faces[i].pieces);
    }
  list_hanging (standing);
  stand_face (standing, &base);
  for (guint k = 0; k < layout->n_flaps; k++)
    stand_flap (standing, layout->order[k]);
  for (guint k = layout->n_flaps; k-- > 0;)
    find_reach (standing, layout->order[k]);
  return standing;
}

void
bf_standing_free (BfStanding *standing)
{
  for (guint i = 0; i < standing->fold->faces->len; i++)
    {
      g_array_unref (standing->faces[i].parts);
      g_array_unref (standing->faces[i].pieces);
    }
  for (guint i = 0; i < standing->fold->layout->n_flaps; i++)
    g_array_unref (standing->hanging[i]);
  g_free (standing->faces);
  g_free (standing->poses);
  g_free (standing->fractions);
  g_free (standing->reach_mm);
  g_free (standing->hanging);
  g_free (standing);
}

void
bf_standing_turn (BfStanding *standing, guint bend, double fraction)
{
  double change = fraction - standing->fractions[bend];

  if (!(change < 0.0 || change > 0.0))
    return;
  standing->fractions[bend] = fraction;
  for (guint i = 0; i < standing->hanging[bend]->len; i++)
    stand_flap (standing, g_array_index (standing->hanging[bend], guint, i));
}

const BfSolid *
bf_standing_slab (const BfStanding *standing, guint face)
{
  return &standing->faces[face].slab;
}

const GArray *
bf_standing_parts (const BfStanding *standing, guint face)
{
  return standing->faces[face].parts;
}

/* ---- what is near what --------------------------------------------------------------------- */

/* FALSE where no solid of the one box goes deeper than that into one of the other. */
static gboolean
boxes_reach (const BfConvex *a, const BfConvex *b, double give_mm)
{
  return MIN (a->max.x - b->min.x, b->max.x - a->min.x) > give_mm &&
         MIN (a->max.y - b->min.y, b->max.y - a->min.y) > give_mm &&
         MIN (a->max.z - b->min.z, b->max.z - a->min.z) > give_mm;
}

static gboolean
pieces_hit (const GArray *a, const GArray *b, double give_mm)
{
  for (guint i = 0; i < a->len; i++)
    for (guint k = 0; k < b->len; k++)
      if (bf_convex_depth (&g_array_index (a, BfConvex, i), &g_array_index (b, BfConvex, k),
                           give_mm) > give_mm)
        return TRUE;
  return FALSE;
}

gboolean
bf_standing_face_hits (const BfStanding *standing, guint face, const GArray *solids, double give_mm)
{
  BfConvex box = box_of (solids);

  return boxes_reach (&box, &standing->faces[face].box, give_mm) &&
         pieces_hit (solids, standing->faces[face].pieces, give_mm);
}

gboolean
bf_standing_faces_hit (const BfStanding *standing, guint a, guint b, double give_mm)
{
  return boxes_reach (&standing->faces[a].box, &standing->faces[b].box, give_mm) &&
         pieces_hit (standing->faces[a].pieces, standing->faces[b].pieces, give_mm);
}

gboolean
bf_standing_hangs_on (const BfStanding *standing, guint face, guint bend)
{
  for (int flap = (int)face - 1; flap >= 0; flap = standing->fold->layout->flaps[flap].parent)
    if (flap == (int)bend)
      return TRUE;
  return FALSE;
}

GArray *
bf_standing_near (const BfStanding *standing, guint bend, double further_mm)
{
  const BfFold *fold = standing->fold;
  const BfFlap *flap = &fold->layout->flaps[bend];
  const BfBendResult *result = bf_fold_bend (fold, bend);
  const BfSolid *on = &standing->faces[flap->parent + 1].slab;
  BfVec2 foot =
      bf_solid_local (on, bf_vec2_scale (bf_vec2_add (result->zone[0], result->zone[1]), 0.5));
  BfVec3 middle = bf_frame_point (&on->frame, foot.x, foot.y, 0.0);
  double reach = standing->reach_mm[bend] + bend_mm (fold, bend) + further_mm;
  BfConvex around = { .min = bf_vec3 (middle.x - reach, middle.y - reach, middle.z - reach),
                      .max = bf_vec3 (middle.x + reach, middle.y + reach, middle.z + reach) };
  GArray *near = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < fold->faces->len; i++)
    if (boxes_reach (&around, &standing->faces[i].box, 0.0) ||
        bf_standing_hangs_on (standing, i, bend))
      g_array_append_val (near, i);
  return near;
}
