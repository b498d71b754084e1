/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold/free-corners.h"

#include "core/tolerance.h"
#include "core/units.h"
#include "fold/end-relief.h"
#include "fold/stretches.h"

double
bf_finish_size_mm (const BfPart *part, const BfCorner *asked)
{
  return isnan (asked->finish_size_mm) ? bf_usual_finish_mm (part) : asked->finish_size_mm;
}

double
bf_usual_finish_mm (const BfPart *part)
{
  return part->units == BF_UNITS_IN ? BF_FREE_CORNER_IN * BF_MM_PER_INCH : BF_FREE_CORNER_MM;
}

/* How much straight edge there is from that end of a stretch to what else is made on it. */
static double
room_mm (const BfLayout *layout, const BfStretch *stretch, BfSideName name)
{
  const BfFlap *flap = bf_stretch_outermost (stretch, name);
  double from, to;

  if (flap == NULL)
    return stretch->to_u - stretch->from_u;
  if (bf_stretch_offset (stretch, name) > 0.0)
    return 0.0;
  from = name == BF_SIDE_START ? stretch->from_u : -stretch->to_u;
  to = bf_stretch_zone_u (flap, name) * (name == BF_SIDE_START ? 1.0 : -1.0);
  return MAX (to - from - bf_end_relief_reach_mm (layout->part, flap, name), 0.0);
}

/* How far the outline turns at the stretch's start, counter-clockwise. */
static double
turn_rad (const BfStretch *before, const BfStretch *after)
{
  return atan2 (bf_vec2_cross (before->e, after->e), bf_vec2_dot (before->e, after->e));
}

/* What a finish of that size takes of either edge. */
static double
taken_mm (const BfFreeCorner *corner, double turn, double size_mm)
{
  return corner->finish == BF_FINISH_ROUND ? size_mm * tan (fabs (turn) / 2.0) : size_mm;
}

static gboolean
is_bent (const BfLayout *layout, const BfStretch *before, const BfStretch *after)
{
  return room_mm (layout, before, BF_SIDE_END) <= 0.0 ||
         room_mm (layout, after, BF_SIDE_START) <= 0.0;
}

/* One face's chain, with the finish asked at the start of each stretch. */
typedef struct
{
  const BfLayout *layout;
  int flap;
  GArray *stretches;     /* BfStretch */
  BfFreeCorner *corners; /* one a stretch; BF_FINISH_UNSET where nothing is asked */
} Face;

static const BfStretch *
stretch_at (const Face *face, guint i)
{
  return &g_array_index (face->stretches, BfStretch, i % face->stretches->len);
}

static guint
before (const Face *face, guint i)
{
  return (i + face->stretches->len - 1) % face->stretches->len;
}

static double
wanted_mm (const Face *face, guint i)
{
  const BfFreeCorner *corner = &face->corners[i % face->stretches->len];

  if (corner->finish == BF_FINISH_UNSET)
    return 0.0;
  return taken_mm (corner, turn_rad (stretch_at (face, before (face, i)), stretch_at (face, i)),
                   corner->asked_mm);
}

/* The share of what is asked at a stretch's start that the stretch has room for; on a plain one it
 * is shared with what is asked at its other end. end: the stretch ends at the corner instead. */
static double
share (const Face *face, guint stretch, gboolean end)
{
  const BfStretch *s = stretch_at (face, stretch);
  double room = room_mm (face->layout, s, end ? BF_SIDE_END : BF_SIDE_START);
  double wanted = wanted_mm (face, end ? stretch + 1 : stretch);

  if (bf_stretch_n_flaps (s) == 0)
    wanted += wanted_mm (face, end ? stretch : stretch + 1);
  return wanted > room ? room / wanted : 1.0;
}

static void
draw (const Face *face, guint i)
{
  const BfStretch *a = stretch_at (face, before (face, i)), *b = stretch_at (face, i);
  BfFreeCorner *corner = &face->corners[i];
  double turn = turn_rad (a, b), taken;

  corner->bent = is_bent (face->layout, a, b);
  corner->vertex = bf_stretch_point (b, b->from_u, 0.0);
  corner->drawn_mm =
      corner->asked_mm * MIN (share (face, before (face, i), TRUE), share (face, i, FALSE));
  taken = taken_mm (corner, turn, corner->drawn_mm);
  corner->from = bf_vec2_along (corner->vertex, a->e, -taken);
  corner->to = bf_vec2_along (corner->vertex, b->e, taken);
  corner->bulge = corner->finish == BF_FINISH_ROUND ? tan (turn / 4.0) : 0.0;
}

static void
ask (const Face *face, const char *id, guint i)
{
  const BfPart *part = face->layout->part;
  int at = stretch_at (face, i)->corner;
  const BfCorner *asked = at < 0 ? NULL : bf_part_find_finish (part, id, (guint)at);
  BfFreeCorner *corner = &face->corners[i];

  *corner = (BfFreeCorner){ .flap = face->flap, .finish = BF_FINISH_UNSET };
  if (asked == NULL || (asked->finish != BF_FINISH_ROUND && asked->finish != BF_FINISH_CHAMFER))
    return;
  corner->at = (guint)at;
  corner->finish = asked->finish;
  corner->asked_mm = bf_finish_size_mm (part, asked);
}

static void
find_on_face (BfLayout *layout, int flap, const char *id)
{
  g_autoptr (GArray) stretches = bf_stretches_new (layout, flap);
  g_autofree BfFreeCorner *corners = g_new0 (BfFreeCorner, stretches->len + 1);
  Face face = { layout, flap, stretches, corners };

  for (guint i = 0; i < stretches->len; i++)
    ask (&face, id, i);
  for (guint i = 0; i < stretches->len; i++)
    {
      if (corners[i].finish == BF_FINISH_UNSET)
        continue;
      draw (&face, i);
      g_array_append_val (layout->free_corners, corners[i]);
    }
}

static gboolean
is_asked_on (const BfPart *part, const char *id)
{
  for (guint i = 0; i < part->corners->len; i++)
    if (strcmp (((const BfCorner *)g_ptr_array_index (part->corners, i))->on, id) == 0)
      return TRUE;
  return strcmp (id, "base") == 0 && part->base_corners->len > 0;
}

void
bf_free_corners_find (BfLayout *layout)
{
  if (is_asked_on (layout->part, "base"))
    find_on_face (layout, -1, "base");
  for (guint i = 0; i < layout->n_flaps; i++)
    if (layout->flaps[i].placed && is_asked_on (layout->part, layout->flaps[i].flange->id))
      find_on_face (layout, (int)i, layout->flaps[i].flange->id);
}

gboolean
bf_free_corner_has_room (const BfLayout *layout, int flap, guint at, BfVec2 *place)
{
  g_autoptr (GArray) stretches = bf_stretches_new (layout, flap);
  guint n = stretches->len;

  *place = bf_vec2 (0.0, 0.0);
  for (guint i = 0; i < n; i++)
    {
      const BfStretch *after = &g_array_index (stretches, BfStretch, i);
      if (after->corner != (int)at)
        continue;
      *place = bf_stretch_point (after, after->from_u, 0.0);
      return !is_bent (layout, &g_array_index (stretches, BfStretch, (i + n - 1) % n), after);
    }
  return FALSE;
}

const BfFreeCorner *
bf_free_corner_at (const BfLayout *layout, int flap, int at)
{
  for (guint i = 0; at >= 0 && i < layout->free_corners->len; i++)
    {
      const BfFreeCorner *corner = &g_array_index (layout->free_corners, BfFreeCorner, i);

      if (corner->flap == flap && corner->at == (guint)at && !corner->bent &&
          corner->drawn_mm > BF_TOLERANCE_SIZE_MM)
        return corner;
    }
  return NULL;
}
