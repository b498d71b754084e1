/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/paper.h"
#include "paint/template-plan.h"

#define MARGIN 10.0
#define FOOT 32.0
#define OVERLAP 10.0

static BfPageFormat
format_of (const char *paper_name)
{
  const BfPaper *paper = bf_paper_find (paper_name);

  return (BfPageFormat){ paper->width_mm, paper->height_mm, MARGIN, FOOT, OVERLAP, 0.0 };
}

static void
add_line (GArray *ink, double ax, double ay, double bx, double by)
{
  BfInkLine line = { { ax, ay }, { bx, by } };

  g_array_append_val (ink, line);
}

static void
add_rectangle (GArray *ink, BfVec2 at, BfVec2 size)
{
  double right = at.x + size.x, top = at.y + size.y;

  add_line (ink, at.x, at.y, right, at.y);
  add_line (ink, right, at.y, right, top);
  add_line (ink, right, top, at.x, top);
  add_line (ink, at.x, top, at.x, at.y);
}

static GArray *
new_ink (void)
{
  return g_array_new (FALSE, FALSE, sizeof (BfInkLine));
}

static GArray *
rectangle_ink (double width_mm, double height_mm)
{
  GArray *ink = new_ink ();

  add_rectangle (ink, bf_vec2 (-30.0, 12.0), bf_vec2 (width_mm, height_mm));
  return ink;
}

/* Counted by hand. A4 shows 190 × 245 (210 − 20 by 297 − 20 − 32), Letter 195.9 × 227.4, A3
 * 277 × 368; each further page adds 10 less; 0.5 is kept free all round the drawing. */
static const struct
{
  const char *what, *paper;
  double width_mm, height_mm;
  guint n_pages, turn_deg;
} counts[] = {
  { "small", "A4", 100.0, 100.0, 1, 0 },
  { "just one page", "A4", 189.0, 244.0, 1, 0 },
  { "one page when turned", "A4", 244.0, 189.0, 1, 90 },
  { "a hair too wide", "A4", 189.2, 240.0, 2, 0 },
  { "two, turned: 191 × 246 upright would be four", "A4", 190.0, 245.0, 2, 90 },
  { "spoke tray", "A4", 274.692, 194.692, 2, 0 },
  { "spoke tray on Letter", "Letter", 274.692, 194.692, 2, 0 },
  { "spoke tray on A3", "A3", 274.692, 194.692, 1, 0 },
  { "a strip", "A4", 900.0, 20.0, 4, 90 },
  { "a frame of 4 by 2", "A4", 600.0, 400.0, 8, 0 },
  { "a frame of 6 by 5, its middle of 4 by 3 left out", "A4", 1000.0, 1000.0, 18, 0 },
};

static void
test_counts (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (counts); i++)
    {
      g_autoptr (GArray) ink = rectangle_ink (counts[i].width_mm, counts[i].height_mm);
      BfPageFormat format = format_of (counts[i].paper);
      g_autoptr (BfTemplatePlan) plan = bf_template_plan_new (ink, NULL, &format);
      g_test_message ("%s", counts[i].what);
      g_assert_cmpuint (plan->pages->len, ==, counts[i].n_pages);
      g_assert_cmpuint (plan->turn_deg, ==, counts[i].turn_deg);
    }
}

/* Random drawings: frames, strokes in any direction, and short ones far off. */
static GArray *
random_ink (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  GArray *ink = new_ink ();
  double size = g_rand_double_range (rand, 20.0, 900.0);

  for (int i = g_rand_int_range (rand, 1, 4); i > 0; i--)
    add_rectangle (
        ink,
        bf_vec2 (g_rand_double_range (rand, -size, size), g_rand_double_range (rand, -size, size)),
        bf_vec2 (g_rand_double_range (rand, 1.0, size), g_rand_double_range (rand, 1.0, size)));
  for (int i = g_rand_int_range (rand, 0, 5); i > 0; i--)
    add_line (ink, g_rand_double_range (rand, -size, size), g_rand_double_range (rand, -size, size),
              g_rand_double_range (rand, -size, size), g_rand_double_range (rand, -size, size));
  return ink;
}

/* Two frames across each other, as the blank of a tray has them. */
static GArray *
crossed_ink (guint seed)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (seed);
  GArray *ink = new_ink ();
  BfVec2 wide, high;

  wide.x = g_rand_double_range (rand, 100.0, 900.0);
  high.y = g_rand_double_range (rand, 100.0, 900.0);
  wide.y = high.y * g_rand_double_range (rand, 0.2, 0.9);
  high.x = wide.x * g_rand_double_range (rand, 0.2, 0.9);
  add_rectangle (ink, bf_vec2 (0.0, g_rand_double_range (rand, 0.0, 1.0) * (high.y - wide.y)),
                 wide);
  add_rectangle (ink, bf_vec2 (g_rand_double_range (rand, 0.0, 1.0) * (wide.x - high.x), 0.0),
                 high);
  return ink;
}

/* Seen in a mirror, a drawing takes as many pages, also where rows are shifted: a search that took
 * the first way that will do would favour one side. */
static void
test_mirrored (void)
{
  BfPageFormat format = format_of ("A4");

  for (guint seed = 0; seed < 300; seed++)
    {
      g_autoptr (GArray) ink = crossed_ink (seed);
      g_autoptr (BfTemplatePlan) plan = bf_template_plan_new (ink, NULL, &format), other = NULL;

      for (guint i = 0; i < ink->len; i++)
        {
          BfInkLine *line = &g_array_index (ink, BfInkLine, i);

          line->a.x = -line->a.x;
          line->b.x = -line->b.x;
        }
      other = bf_template_plan_new (ink, NULL, &format);
      g_test_message ("seed %u", seed);
      g_assert_cmpuint (plan->pages->len, ==, other->pages->len);
    }
}

static gboolean
box_holds (const BfBox *box, BfVec2 p, double slack)
{
  return p.x >= box->min.x - slack && p.x <= box->max.x + slack && p.y >= box->min.y - slack &&
         p.y <= box->max.y + slack;
}

/* Whether the line comes into the box: an end inside, or a side of the box crossed. Written
 * differently from the code under test. */
static gboolean
box_meets (const BfBox *box, BfVec2 a, BfVec2 b, double slack)
{
  const BfVec2 corners[4] = { { box->min.x - slack, box->min.y - slack },
                              { box->max.x + slack, box->min.y - slack },
                              { box->max.x + slack, box->max.y + slack },
                              { box->min.x - slack, box->max.y + slack } };

  if (box_holds (box, a, slack) || box_holds (box, b, slack))
    return TRUE;
  for (int i = 0; i < 4; i++)
    {
      BfVec2 p = corners[i], q = corners[(i + 1) % 4];
      BfVec2 along = bf_vec2_sub (q, p), step = bf_vec2_sub (b, a);
      double from = bf_vec2_cross (along, bf_vec2_sub (a, p));
      double to = bf_vec2_cross (along, bf_vec2_sub (b, p));
      double before = bf_vec2_cross (step, bf_vec2_sub (p, a));
      double after = bf_vec2_cross (step, bf_vec2_sub (q, a));
      if (from * to <= 0.0 && before * after <= 0.0 && fabs (from - to) > 0.0)
        return TRUE;
    }
  return FALSE;
}

/* Every point of the drawing lies in some page's cell, and so in its window. */
static void
assert_covered (const BfTemplatePlan *plan, const GArray *ink)
{
  for (guint i = 0; i < ink->len; i++)
    {
      const BfInkLine *line = &g_array_index (ink, BfInkLine, i);
      for (int step = 0; step <= 200; step++)
        {
          BfVec2 p = bf_vec2_along (line->a, bf_vec2_sub (line->b, line->a), step / 200.0);
          BfVec2 turned = bf_template_plan_turn (plan, p);
          gboolean is_shown = FALSE;
          for (guint k = 0; k < plan->pages->len && !is_shown; k++)
            is_shown = box_holds (&bf_template_plan_page (plan, k)->cell, turned, 1e-6);
          g_assert_true (is_shown);
        }
    }
}

static void
assert_no_empty_page (const BfTemplatePlan *plan, const GArray *ink)
{
  for (guint k = 0; k < plan->pages->len; k++)
    {
      gboolean has_ink = FALSE;
      for (guint i = 0; i < ink->len && !has_ink; i++)
        {
          const BfInkLine *line = &g_array_index (ink, BfInkLine, i);
          has_ink = box_meets (&bf_template_plan_page (plan, k)->cell,
                               bf_template_plan_turn (plan, line->a),
                               bf_template_plan_turn (plan, line->b), 1e-6);
        }
      g_assert_true (has_ink);
    }
}

static void
assert_neighbours_join (const BfTemplatePlan *plan)
{
  for (guint k = 0; k < plan->pages->len; k++)
    {
      const BfPlanPage *page = bf_template_plan_page (plan, k);
      if (page->neighbour[BF_SIDE_RIGHT] >= 0)
        {
          const BfPlanPage *right =
              bf_template_plan_page (plan, (guint)page->neighbour[BF_SIDE_RIGHT]);
          g_assert_true (right->neighbour[BF_SIDE_LEFT] == (int)k ||
                         right->neighbour[BF_SIDE_LEFT_LOWER] == (int)k);
          g_assert_cmpfloat_with_epsilon (page->window.max.x - right->window.min.x, OVERLAP, 1e-9);
          g_assert_cmpfloat_with_epsilon (page->cell.max.x, right->cell.min.x, 1e-9);
        }
      for (guint i = 0; i < 2; i++)
        {
          int side = i == 0 ? BF_SIDE_BELOW : BF_SIDE_BELOW_RIGHT;
          const BfPlanPage *below;

          if (page->neighbour[side] < 0)
            continue;
          below = bf_template_plan_page (plan, (guint)page->neighbour[side]);
          g_assert_true (below->neighbour[BF_SIDE_ABOVE] == (int)k ||
                         below->neighbour[BF_SIDE_ABOVE_RIGHT] == (int)k);
          g_assert_cmpfloat (MIN (page->cell.max.x, below->cell.max.x), >,
                             MAX (page->cell.min.x, below->cell.min.x) + 15.0);
          g_assert_cmpfloat_with_epsilon (below->window.max.y - page->window.min.y, OVERLAP, 1e-9);
          g_assert_cmpfloat_with_epsilon (below->cell.max.y, page->cell.min.y, 1e-9);
        }
    }
}

static void
test_random (void)
{
  for (guint seed = 1; seed <= 60; seed++)
    {
      g_autoptr (GArray) ink = random_ink (seed);
      BfPageFormat format = format_of (seed % 2 == 0 ? "A4" : "Tabloid");
      g_autoptr (BfTemplatePlan) plan = bf_template_plan_new (ink, NULL, &format);
      g_test_message ("seed %u: %u pages", seed, plan->pages->len);
      assert_covered (plan, ink);
      assert_no_empty_page (plan, ink);
      assert_neighbours_join (plan);
    }
}

/* A page's place on the drawing: the window stands on the margin and the foot. */
static void
test_corner (void)
{
  g_autoptr (GArray) ink = rectangle_ink (244.0, 189.0);
  BfPageFormat format = format_of ("A4");
  g_autoptr (BfTemplatePlan) plan = bf_template_plan_new (ink, NULL, &format);
  const BfPlanPage *page = bf_template_plan_page (plan, 0);
  BfVec2 corner = bf_template_plan_corner (plan, page);
  BfVec2 p = bf_template_plan_unturn (plan, bf_template_plan_turn (plan, bf_vec2 (3.0, 7.0)));

  g_assert_cmpuint (plan->turn_deg, ==, 90);
  g_assert_cmpfloat_with_epsilon (page->window.min.x - corner.x, MARGIN, 1e-9);
  g_assert_cmpfloat_with_epsilon (page->window.min.y - corner.y, MARGIN + FOOT, 1e-9);
  g_assert_cmpfloat_with_epsilon (p.x, 3.0, 1e-12);
  g_assert_cmpfloat_with_epsilon (p.y, 7.0, 1e-12);
  /* Counter-clockwise: what was to the right is now on top. */
  p = bf_template_plan_turn (plan, bf_vec2 (1.0, 0.0));
  g_assert_cmpfloat_with_epsilon (p.y, 1.0, 1e-12);
}

/* Where as few pages do, none of the joins runs beside a line of the drawing: this one has a line
 * where the join of a drawing in the middle would be. */
static void
test_joins_keep_off_lines (void)
{
  g_autoptr (GArray) ink = rectangle_ink (300.0, 100.0);
  BfPageFormat format = format_of ("A4");
  g_autoptr (BfTemplatePlan) plan = NULL;
  double join;

  add_line (ink, 120.0, 12.0, 120.0, 112.0);
  plan = bf_template_plan_new (ink, NULL, &format);
  g_assert_cmpuint (plan->pages->len, ==, 2);
  g_assert_cmpuint (plan->turn_deg, ==, 0);
  join = bf_template_plan_page (plan, 0)->cell.max.x;
  g_assert_cmpfloat (fabs (join - 120.0), >=, 4.0);
}

/* A T of 368 × 235 with 188 × 235 in the middle on top of it: two pages below and one above it,
 * astride their join. Both halves of the page above are glued on to it. */
static void
test_shifted_rows (void)
{
  g_autoptr (GArray) ink = new_ink ();
  BfPageFormat format = format_of ("A4");
  g_autoptr (BfTemplatePlan) plan = NULL;
  const BfPlanPage *top;

  add_rectangle (ink, bf_vec2 (0.0, 0.0), bf_vec2 (368.0, 235.0));
  add_rectangle (ink, bf_vec2 (90.0, 235.0), bf_vec2 (188.0, 235.0));
  plan = bf_template_plan_new (ink, NULL, &format);
  assert_covered (plan, ink);
  assert_no_empty_page (plan, ink);
  assert_neighbours_join (plan);
  g_assert_cmpuint (plan->pages->len, ==, 3);
  g_assert_cmpuint (plan->turn_deg, ==, 0);
  top = bf_template_plan_page (plan, 0);
  g_assert_cmpint (top->neighbour[BF_SIDE_LEFT], ==, -1);
  g_assert_cmpint (top->neighbour[BF_SIDE_RIGHT], ==, -1);
  g_assert_cmpint (top->neighbour[BF_SIDE_BELOW], ==, 1);
  g_assert_cmpint (top->neighbour[BF_SIDE_BELOW_RIGHT], ==, 2);
}

/* The same lying on its side: two pages one over the other, and one beside them astride their join.
 * 478 × 250 standing, turned so that upright pages are wide enough: columns are shifted, not rows.
 */
static void
test_shifted_columns (void)
{
  g_autoptr (GArray) ink = new_ink ();
  BfPageFormat format = format_of ("A4");
  g_autoptr (BfTemplatePlan) plan = NULL;
  const BfPlanPage *right = NULL;

  add_rectangle (ink, bf_vec2 (0.0, 0.0), bf_vec2 (180.0, 478.0));
  add_rectangle (ink, bf_vec2 (180.0, 117.0), bf_vec2 (180.0, 243.0));
  plan = bf_template_plan_new (ink, NULL, &format);
  assert_covered (plan, ink);
  assert_no_empty_page (plan, ink);
  assert_neighbours_join (plan);
  g_assert_cmpuint (plan->pages->len, ==, 3);
  for (guint i = 0; i < 3; i++)
    if (bf_template_plan_page (plan, i)->neighbour[BF_SIDE_LEFT] >= 0)
      right = bf_template_plan_page (plan, i);
  g_assert_nonnull (right);
  g_assert_cmpint (right->neighbour[BF_SIDE_LEFT_LOWER], >=, 0);
  g_assert_cmpint (right->neighbour[BF_SIDE_ABOVE], ==, -1);
  g_assert_cmpint (right->neighbour[BF_SIDE_BELOW], ==, -1);
}

static void
test_apart (void)
{
  g_autoptr (GArray) ink = new_ink ();
  BfPageFormat format = format_of ("A4");
  g_autoptr (BfTemplatePlan) plan = NULL;

  add_rectangle (ink, bf_vec2 (0.0, 0.0), bf_vec2 (1000.0, 1000.0));
  add_rectangle (ink, bf_vec2 (497.0, 497.0), bf_vec2 (6.0, 6.0));
  plan = bf_template_plan_new (ink, NULL, &format);
  g_assert_cmpuint (plan->pages->len, >=, 19);
  for (guint i = 0; i < plan->pages->len; i++)
    {
      const BfPlanPage *page = bf_template_plan_page (plan, i);
      gboolean is_middle = box_holds (&page->cell, bf_vec2 (500.0, 500.0), 4.0);
      g_assert_true (page->is_apart == is_middle);
    }
}

static void
test_labels (void)
{
  static const struct
  {
    guint column, row;
    const char *label;
  } labels[] = { { 0, 0, "A1" },    { 1, 0, "B1" },    { 0, 1, "A2" },   { 25, 9, "Z10" },
                 { 26, 0, "AA1" },  { 27, 0, "AB1" },  { 51, 0, "AZ1" }, { 52, 0, "BA1" },
                 { 701, 0, "ZZ1" }, { 702, 0, "AAA1" } };

  for (guint i = 0; i < G_N_ELEMENTS (labels); i++)
    {
      BfPlanPage page = { .column = labels[i].column, .row = labels[i].row };
      g_autofree char *label = bf_plan_page_label (&page);
      g_assert_cmpstr (label, ==, labels[i].label);
    }
}

/* Row 1 is at the top, column A at the left, and pages come row by row. */
static void
test_order (void)
{
  g_autoptr (GArray) ink = rectangle_ink (600.0, 400.0);
  BfPageFormat format = format_of ("A4");
  g_autoptr (BfTemplatePlan) plan = bf_template_plan_new (ink, NULL, &format);
  const BfPlanPage *first = bf_template_plan_page (plan, 0);
  const BfPlanPage *second = bf_template_plan_page (plan, 1);
  const BfPlanPage *last = bf_template_plan_page (plan, plan->pages->len - 1);

  g_assert_cmpfloat (second->window.min.x, >, first->window.min.x);
  g_assert_cmpfloat (last->window.min.y, <, first->window.min.y);
  g_assert_cmpuint (last->row, ==, plan->n_rows - 1);
  g_assert_cmpuint (last->column, ==, plan->n_columns - 1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/template-plan/counts", test_counts);
  g_test_add_func ("/template-plan/random", test_random);
  g_test_add_func ("/template-plan/mirrored", test_mirrored);
  g_test_add_func ("/template-plan/corner", test_corner);
  g_test_add_func ("/template-plan/joins-keep-off-lines", test_joins_keep_off_lines);
  g_test_add_func ("/template-plan/shifted-rows", test_shifted_rows);
  g_test_add_func ("/template-plan/shifted-columns", test_shifted_columns);
  g_test_add_func ("/template-plan/apart", test_apart);
  g_test_add_func ("/template-plan/labels", test_labels);
  g_test_add_func ("/template-plan/order", test_order);
  return g_test_run ();
}
