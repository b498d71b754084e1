/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/formed-edges.h"

/* Points nearer than this are one point. Mouths snap to within 1e-4 mm. */
#define WELD_MM 3e-4
#define CELL_MM 0.01

/* Normals that differ by less than about 1° run into each other without a line. */
#define SAME_NORMAL 0.99985

/* An empty place in either table. */
#define NOTHING G_MAXUINT

/* Two open hash tables: of points by cell, and of edges by the two points they join. Their sizes
 * are powers of two, at least twice what they hold. */
typedef struct
{
  BfFormedScene *scene;
  guint n_places;
  guint *points; /* a vertex of the cell that hashes here */
  guint *edges;  /* a vertex whose edge hashes here */
  guint *welded; /* by vertex: the first vertex in the same place */
  guint *next;   /* by vertex: the vertex at the other end of its edge */
  guint *owner;  /* by vertex: its polygon */
} Joiner;

static guint
hash3 (gint64 a, gint64 b, gint64 c)
{
  guint64 h = (guint64)a * 0x9E3779B97F4A7C15u;

  h = (h ^ (h >> 29) ^ (guint64)b) * 0xBF58476D1CE4E5B9u;
  h = (h ^ (h >> 32) ^ (guint64)c) * 0x94D049BB133111EBu;
  return (guint)(h ^ (h >> 31));
}

static gboolean
is_near (const BfFormedScene *scene, guint a, guint b)
{
  BfVec3 p = bf_formed_vertex (scene, a)->p, q = bf_formed_vertex (scene, b)->p;

  return fabs (p.x - q.x) < WELD_MM && fabs (p.y - q.y) < WELD_MM && fabs (p.z - q.z) < WELD_MM;
}

/* A vertex near that one among those that hash with a cell, or NOTHING. place: (out) where the
 * search ended. */
static guint
find_in_cell (const Joiner *joiner, const gint64 cell[3], guint vertex, guint *place)
{
  guint mask = joiner->n_places - 1;

  *place = hash3 (cell[0], cell[1], cell[2]) & mask;
  for (; joiner->points[*place] != NOTHING; *place = (*place + 1) & mask)
    if (is_near (joiner->scene, joiner->points[*place], vertex))
      return joiner->points[*place];
  return NOTHING;
}

static void
cell_of (BfVec3 p, double off, gint64 cell[3])
{
  cell[0] = (gint64)floor ((p.x + off) / CELL_MM);
  cell[1] = (gint64)floor ((p.y + off) / CELL_MM);
  cell[2] = (gint64)floor ((p.z + off) / CELL_MM);
}

/* Looks in every cell that the point, give or take the tolerance, may lie in: mostly one. */
static guint
find_welded (const Joiner *joiner, guint vertex)
{
  BfVec3 p = bf_formed_vertex (joiner->scene, vertex)->p;
  gint64 low[3], high[3];
  guint place;

  cell_of (p, -WELD_MM, low);
  cell_of (p, WELD_MM, high);
  for (guint corner = 0; corner < 8; corner++)
    {
      const gint64 cell[3] = { corner & 1 ? high[0] : low[0], corner & 2 ? high[1] : low[1],
                               corner & 4 ? high[2] : low[2] };
      gboolean repeated = ((corner & 1) && high[0] == low[0]) ||
                          ((corner & 2) && high[1] == low[1]) ||
                          ((corner & 4) && high[2] == low[2]);
      guint found = repeated ? NOTHING : find_in_cell (joiner, cell, vertex, &place);

      if (found != NOTHING)
        return found;
    }
  return NOTHING;
}

static void
weld (Joiner *joiner)
{
  for (guint i = 0; i < joiner->scene->vertices->len; i++)
    {
      guint found = find_welded (joiner, i);
      gint64 cell[3];
      guint place;

      joiner->welded[i] = found == NOTHING ? i : found;
      if (found != NOTHING)
        continue;
      cell_of (bf_formed_vertex (joiner->scene, i)->p, 0.0, cell);
      find_in_cell (joiner, cell, i, &place);
      joiner->points[place] = i;
    }
}

static void
note_owners (Joiner *joiner)
{
  const BfFormedScene *scene = joiner->scene;

  for (guint i = 0; i < scene->polygons->len; i++)
    {
      BfFormedSpan rings = bf_formed_polygon (scene, i)->rings;

      for (guint r = rings.first; r < rings.first + rings.size; r++)
        {
          const BfFormedSpan *ring = bf_formed_ring (scene, r);

          for (guint k = 0; k < ring->size; k++)
            {
              joiner->owner[ring->first + k] = i;
              joiner->next[ring->first + k] = ring->first + (k + 1) % ring->size;
            }
        }
    }
}

/* What two polygons that share an edge make of it. */
static BfFormedEdge
judge (const BfFormedScene *scene, const Joiner *joiner, guint a, guint b)
{
  const BfFormedPolygon *p = bf_formed_polygon (scene, joiner->owner[a]);
  const BfFormedPolygon *q = bf_formed_polygon (scene, joiner->owner[b]);
  double alike =
      bf_vec3_dot (bf_formed_vertex (scene, a)->shade, bf_formed_vertex (scene, b)->shade);

  if (p->band >= 0 && p->band == q->band)
    return BF_FORMED_EDGE_SMOOTH;
  if (alike < SAME_NORMAL)
    return BF_FORMED_EDGE_CRISP;
  return p->side != BF_FORMED_RIM && (p->band >= 0 || q->band >= 0) ? BF_FORMED_EDGE_TANGENT
                                                                    : BF_FORMED_EDGE_SMOOTH;
}

static void
pair_up (const Joiner *joiner, guint a, guint b)
{
  BfFormedScene *scene = joiner->scene;
  BfFormedEdge edge = judge (scene, joiner, a, b);
  BfFormedVertex *va = bf_formed_vertex (scene, a), *vb = bf_formed_vertex (scene, b);

  va->edge = edge;
  vb->edge = edge;
  va->neighbour = (int)joiner->owner[b];
  vb->neighbour = (int)joiner->owner[a];
  va->beyond = bf_formed_polygon (scene, joiner->owner[b])->normal;
  vb->beyond = bf_formed_polygon (scene, joiner->owner[a])->normal;
}

/* Pairs a vertex's edge with one that runs the other way between the same two points and has no
 * partner yet, or leaves it in the table for one to come. */
static void
join_edge (Joiner *joiner, guint vertex)
{
  guint a = joiner->welded[vertex], b = joiner->welded[joiner->next[vertex]];
  guint mask = joiner->n_places - 1;
  guint place = hash3 (MIN (a, b), MAX (a, b), 0) & mask;

  for (; joiner->edges[place] != NOTHING; place = (place + 1) & mask)
    {
      guint other = joiner->edges[place];

      if (joiner->welded[other] == b && joiner->welded[joiner->next[other]] == a &&
          bf_formed_vertex (joiner->scene, other)->neighbour < 0)
        {
          pair_up (joiner, vertex, other);
          return;
        }
    }
  joiner->edges[place] = vertex;
}

static guint *
new_table (guint n)
{
  guint *table = g_new (guint, n);

  for (guint i = 0; i < n; i++)
    table[i] = NOTHING;
  return table;
}

void
bf_formed_scene_mark_edges (BfFormedScene *scene)
{
  guint n = scene->vertices->len;
  guint n_places = 16;
  Joiner joiner;

  while (n_places < 2 * n)
    n_places *= 2;
  joiner = (Joiner){ scene,         n_places,      new_table (n_places), new_table (n_places),
                     new_table (n), new_table (n), new_table (n) };
  weld (&joiner);
  note_owners (&joiner);
  for (guint i = 0; i < n; i++)
    join_edge (&joiner, i);

  g_free (joiner.points);
  g_free (joiner.edges);
  g_free (joiner.welded);
  g_free (joiner.next);
  g_free (joiner.owner);
}
