/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "write/report.h"

#include "core/json-text.h"
#include "core/names.h"

#define REPORT_VERSION 1
#define ANGLE_ROUNDING_DEG 1e-9 /* so much below 0 is 0, not 360 */

static const char *const severities[] = {
  [BF_SEVERITY_MUST_FIX] = "must-fix",
  [BF_SEVERITY_LOOK_AT] = "look-at",
  [BF_SEVERITY_GOOD_TO_KNOW] = "good-to-know",
};

static const char *const relief_kinds[] = {
  [BF_RELIEF_KIND_CORNER] = "corner",
  [BF_RELIEF_KIND_END] = "end",
};

/* The helpers take a member's name, or NULL inside a list. */
static void
add_name (JsonBuilder *json, const char *name)
{
  if (name != NULL)
    json_builder_set_member_name (json, name);
}

static void
begin_object (JsonBuilder *json, const char *name)
{
  add_name (json, name);
  json_builder_begin_object (json);
}

static void
begin_list (JsonBuilder *json, const char *name)
{
  add_name (json, name);
  json_builder_begin_array (json);
}

/* value: NULL for null. */
static void
add_string (JsonBuilder *json, const char *name, const char *value)
{
  add_name (json, name);
  if (value != NULL)
    json_builder_add_string_value (json, value);
  else
    json_builder_add_null_value (json);
}

/* A value that is not finite was not worked out: null. */
static void
add_number (JsonBuilder *json, const char *name, double value)
{
  add_name (json, name);
  if (isfinite (value))
    json_builder_add_double_value (json, value);
  else
    json_builder_add_null_value (json);
}

static void
add_numbers (JsonBuilder *json, const char *name, const double *values, guint n_values)
{
  begin_list (json, name);
  for (guint i = 0; i < n_values; i++)
    add_number (json, NULL, values[i]);
  json_builder_end_array (json);
}

static void
add_point (JsonBuilder *json, const char *name, BfVec2 point)
{
  const double values[] = { point.x, point.y };

  add_numbers (json, name, values, G_N_ELEMENTS (values));
}

static void
add_points (JsonBuilder *json, const char *name, const BfVec2 *points, guint n_points)
{
  begin_list (json, name);
  for (guint i = 0; i < n_points; i++)
    add_point (json, NULL, points[i]);
  json_builder_end_array (json);
}

static void
write_ring (JsonBuilder *json, const BfRing *ring)
{
  g_autoptr (GArray) points = g_array_new (FALSE, FALSE, sizeof (BfVec2));

  bf_ring_flatten (ring, BF_REPORT_SAGITTA_MM, points);
  add_points (json, NULL, (const BfVec2 *)(void *)points->data, points->len);
}

/* from and sweep in radians. Which way the ring runs is of no matter here: an arc is written
 * counter-clockwise, from an angle within the first turn. */
static void
write_arc (JsonBuilder *json, const BfArc *arc)
{
  double start = bf_rad_to_deg (MIN (arc->from, arc->from + arc->sweep));
  double from = start - 360.0 * floor ((start + ANGLE_ROUNDING_DEG) / 360.0);

  begin_object (json, NULL);
  add_point (json, "at", arc->centre);
  add_number (json, "radius", arc->radius);
  add_number (json, "from", MAX (from, 0.0));
  add_number (json, "to", from + bf_rad_to_deg (fabs (arc->sweep)));
  json_builder_end_object (json);
}

static void
write_arcs (JsonBuilder *json, const BfRing *ring)
{
  BfArc arc = { .from = 0.0, .sweep = 2.0 * G_PI };

  if (bf_ring_is_circle (ring, &arc.centre, &arc.radius))
    {
      write_arc (json, &arc);
      return;
    }
  for (guint i = 0; i < bf_ring_size (ring); i++)
    if (bf_ring_arc (ring, i, &arc))
      write_arc (json, &arc);
}

static void
write_blank (JsonBuilder *json, const BfBlank *blank)
{
  begin_object (json, "blank");
  add_number (json, "width", blank->box.max.x - blank->box.min.x);
  add_number (json, "height", blank->box.max.y - blank->box.min.y);
  add_number (json, "area", blank->area_mm2);
  add_number (json, "area_before_cuts", blank->area_before_cuts_mm2);
  add_number (json, "mass", blank->mass_kg);
  add_number (json, "cut_length", blank->cut_length_mm);
  begin_list (json, "rings");
  for (guint i = 0; i < blank->rings->len; i++)
    write_ring (json, bf_blank_ring (blank, i));
  json_builder_end_array (json);
  begin_list (json, "arcs");
  for (guint i = 0; i < blank->rings->len; i++)
    write_arcs (json, bf_blank_ring (blank, i));
  json_builder_end_array (json);
  json_builder_end_object (json);
}

static void
write_formed (JsonBuilder *json, const BfFormed *formed)
{
  const BfVec3 size = bf_vec3_sub (formed->max, formed->min);
  const double sizes[] = { size.x, size.y, size.z };

  begin_object (json, "formed");
  add_numbers (json, "size", sizes, G_N_ELEMENTS (sizes));
  add_number (json, "volume", formed->volume_mm3);
  json_builder_end_object (json);
}

static void
write_slots (JsonBuilder *json, const BfBendResult *bend)
{
  begin_list (json, "slots");
  for (guint i = 0; i < bend->slots->len; i++)
    {
      const BfBendSlot *slot = bf_bend_slot (bend, i);

      begin_object (json, NULL);
      add_point (json, "at", slot->at);
      add_number (json, "length", slot->length_mm);
      add_number (json, "near", slot->near_mm);
      add_number (json, "far", slot->far_mm);
      add_number (json, "width", slot->width_mm);
      add_number (json, "angle", bf_rad_to_deg (slot->angle_rad));
      json_builder_end_object (json);
    }
  json_builder_end_array (json);
}

/* Only where there is one. */
static void
write_score (JsonBuilder *json, const BfBendResult *bend)
{
  if (isnan (bend->score_left_mm))
    return;
  begin_object (json, "score");
  add_number (json, "left", bend->score_left_mm);
  add_number (json, "groove", bend->groove_mm);
  json_builder_end_object (json);
}

static void
write_bend (JsonBuilder *json, const BfBendResult *bend)
{
  begin_object (json, NULL);
  add_string (json, "flange", bend->flange);
  add_number (json, "angle", bf_rad_to_deg (bend->angle_rad));
  add_string (json, "turn", bf_turn_name (bend->turn));
  add_string (json, "way", bf_bend_way_name (bend->way));
  add_number (json, "inside_radius", bend->inside_radius_mm);
  add_number (json, "k", bend->k);
  add_number (json, "allowance", bend->allowance_mm);
  add_number (json, "setback", bend->setback_mm);
  add_number (json, "deduction", bend->deduction_mm);
  add_points (json, "line", bend->line, G_N_ELEMENTS (bend->line));
  add_number (json, "moment", bend->moment_nm);
  add_number (json, "force", bend->force_n);
  add_number (json, "overbend", bf_rad_to_deg (bend->overbend_rad));
  add_number (json, "kept", bend->kept);
  write_slots (json, bend);
  write_score (json, bend);
  json_builder_end_object (json);
}

/* The side of a square is its size; it stands as diameter too, so that a script that asks how wide
 * a relief is needs to know one member only. */
static void
write_relief (JsonBuilder *json, const BfRelief *relief)
{
  begin_object (json, NULL);
  add_string (json, "kind", relief_kinds[relief->kind]);
  add_point (json, "at", relief->at);
  add_string (json, "shape", bf_relief_shape_name (relief->shape));
  add_number (json, "need", relief->need_mm);
  add_number (json, "diameter", relief->diameter_mm);
  if (relief->shape == BF_RELIEF_SQUARE)
    add_number (json, "size", relief->diameter_mm);
  add_string (json, "drill", relief->drill);
  json_builder_end_object (json);
}

static void
write_seam (JsonBuilder *json, const BfSeam *seam)
{
  begin_object (json, NULL);
  begin_list (json, "between");
  add_string (json, NULL, seam->before);
  add_string (json, NULL, seam->after);
  json_builder_end_array (json);
  add_number (json, "length", seam->length_mm);
  add_number (json, "gap", seam->gap_mm);
  json_builder_end_object (json);
}

/* The pieces of a page of corners only; each has its own place on the page. */
static void
write_pieces (JsonBuilder *json, const BfTemplate *template, guint page)
{
  begin_list (json, "pieces");
  for (guint k = 0; k < bf_template_n_pieces (template); k++)
    {
      const BfTemplatePiece piece = bf_template_piece (template, k);
      if (piece.page != page)
        continue;
      begin_object (json, NULL);
      add_number (json, "number", k + 1);
      add_point (json, "origin", piece.origin);
      add_point (json, "from", piece.box.min);
      add_point (json, "to", piece.box.max);
      add_point (json, "cross", piece.cross);
      json_builder_end_object (json);
    }
  json_builder_end_array (json);
}

static void
write_page (JsonBuilder *json, const BfTemplate *template, guint i)
{
  const BfTemplatePage page = bf_template_page (template, i);
  gboolean has_pieces = bf_template_n_pieces (template) > 0;

  begin_object (json, NULL);
  add_string (json, "label", page.label);
  add_number (json, "turn", page.turn_deg);
  if (has_pieces)
    add_string (json, "origin", NULL);
  else
    add_point (json, "origin", page.origin);
  if (has_pieces)
    write_pieces (json, template, i);
  json_builder_end_object (json);
}

static void
write_pages (JsonBuilder *json, const BfTemplate *template)
{
  if (template == NULL)
    {
      add_string (json, "pages", NULL);
      return;
    }
  begin_list (json, "pages");
  for (guint i = 0; i < bf_template_n_pages (template); i++)
    write_page (json, template, i);
  json_builder_end_array (json);
}

/* Of all blanks together, where more than one is asked for. */
static void
write_lot (JsonBuilder *json, const BfFold *fold)
{
  guint n = fold->part->quantity;

  if (n < 2)
    return;
  begin_object (json, "lot");
  add_number (json, "quantity", n);
  add_number (json, "area", n * fold->blank.area_mm2);
  add_number (json, "mass", n * fold->blank.mass_kg);
  add_number (json, "cut_length", n * fold->blank.cut_length_mm);
  json_builder_end_object (json);
}

static void
write_check (JsonBuilder *json, const BfCheck *check)
{
  begin_object (json, NULL);
  add_string (json, "code", check->code);
  add_string (json, "severity", severities[check->severity]);
  add_string (json, "where", check->where);
  add_number (json, "found", check->found);
  add_number (json, "needed", check->needed);
  add_string (json, "message", check->message);
  json_builder_end_object (json);
}

static void
write_bends (JsonBuilder *json, const BfFold *fold)
{
  begin_list (json, "bends");
  for (guint i = 0; i < fold->bends->len; i++)
    write_bend (json, bf_fold_bend (fold, i));
  json_builder_end_array (json);
}

static void
write_corners (JsonBuilder *json, const BfFold *fold)
{
  begin_list (json, "reliefs");
  for (guint i = 0; i < fold->reliefs->len; i++)
    write_relief (json, bf_fold_relief (fold, i));
  json_builder_end_array (json);
  begin_list (json, "seams");
  for (guint i = 0; i < fold->seams->len; i++)
    write_seam (json, bf_fold_seam (fold, i));
  json_builder_end_array (json);
}

static void
write_checks (JsonBuilder *json, const BfFold *fold)
{
  begin_list (json, "checks");
  for (guint i = 0; i < fold->checks->len; i++)
    write_check (json, bf_fold_check (fold, i));
  json_builder_end_array (json);
}

char *
bf_report_text (const BfFold *fold, const BfTemplate *template)
{
  g_autoptr (JsonBuilder) json = NULL;
  g_autoptr (JsonNode) root = NULL;

  g_return_val_if_fail (fold != NULL, NULL);

  json = json_builder_new ();
  json_builder_begin_object (json);
  add_string (json, "format", "benchfold-report");
  add_number (json, "version", REPORT_VERSION);
  add_string (json, "name", fold->part->name != NULL ? fold->part->name : "");
  write_blank (json, &fold->blank);
  write_lot (json, fold);
  write_formed (json, &fold->formed);
  write_bends (json, fold);
  write_corners (json, fold);
  write_pages (json, template);
  write_checks (json, fold);
  json_builder_end_object (json);
  root = json_builder_get_root (json);
  return bf_json_to_text (root);
}
