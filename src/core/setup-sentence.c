/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/setup-sentence.h"

#include <glib/gi18n.h>

#include "core/defaults.h"
#include "core/materials.h"
#include "core/units.h"

/* A sentence begins with this phrase, and a material's name may be written small. */
static char *
capitalise (const char *words)
{
  gunichar first = g_utf8_get_char (words);
  GString *out = g_string_new (NULL);

  if (first != 0)
    {
      g_string_append_unichar (out, g_unichar_totitle (first));
      g_string_append (out, g_utf8_next_char (words));
    }
  return g_string_free (out, FALSE);
}

static char *
metal_phrase (const BfPart *part)
{
  const char *id = part->metal.material != NULL ? part->metal.material : "mild-steel";
  const BfMaterial *material = bf_material_find (id);
  g_autofree char *name = capitalise (material != NULL ? material->name : id);
  g_autofree char *thickness = bf_format_thin (part->metal.thickness_mm, part->units);

  /* Translators: a metal and its thickness, "Mild steel 1.5 mm". */
  return g_strdup_printf (_ ("%s %s"), name, thickness);
}

static char *
cutting_phrase (const BfPart *part)
{
  g_autofree char *diameter = NULL;

  switch (part->cutting.by)
    {
    case BF_CUTTING_SNIPS:
      return g_strdup (_ ("snips"));
    case BF_CUTTING_TABLE:
      return g_strdup (_ ("a cutting table"));
    case BF_CUTTING_SERVICE:
      return g_strdup (_ ("a service"));
    case BF_CUTTING_DISC:
    default:
      diameter = bf_format_length (bf_part_disc_diameter_mm (part), part->units);
      /* Translators: a cutting disc and its diameter, "a 125 mm disc". */
      return g_strdup_printf (_ ("a %s disc"), diameter);
    }
}

static const char *
bending_phrase (const BfPart *part)
{
  switch (bf_part_resolve_bend (part, NULL).way)
    {
    case BF_BEND_WAY_BRAKE:
      return _ ("in a brake");
    case BF_BEND_WAY_SLOTS:
      return _ ("along slots");
    case BF_BEND_WAY_SCORE:
      return _ ("along a score");
    case BF_BEND_WAY_BAR:
    case BF_BEND_WAY_UNSET:
    default:
      return _ ("over a bar");
    }
}

static const char *
joining_phrase (const BfPart *part)
{
  switch (part->joining)
    {
    case BF_JOINING_RIVETED:
      return _ ("riveted");
    case BF_JOINING_SCREWED:
      return _ ("screwed");
    case BF_JOINING_FOLDED:
      return _ ("folded");
    case BF_JOINING_NONE:
      return _ ("left open");
    case BF_JOINING_WELDED:
    default:
      return _ ("welded");
    }
}

char *
bf_setup_phrase (const BfPart *part, BfSetupPhrase phrase)
{
  g_return_val_if_fail (part != NULL, NULL);

  switch (phrase)
    {
    case BF_SETUP_METAL:
      return metal_phrase (part);
    case BF_SETUP_CUTTING:
      return cutting_phrase (part);
    case BF_SETUP_BENDING:
      return g_strdup (bending_phrase (part));
    case BF_SETUP_JOINING:
      return g_strdup (joining_phrase (part));
    case BF_SETUP_MEASURE:
      return g_strdup (part->measure == BF_MEASURE_INSIDE ? _ ("inside") : _ ("outside"));
    case BF_N_SETUP:
    default:
      g_return_val_if_reached (NULL);
    }
}

const char *
bf_setup_format (const BfPart *part)
{
  g_return_val_if_fail (part != NULL, NULL);

  if (part->cutting.by == BF_CUTTING_SERVICE)
    /* Translators: metal and thickness; who cuts; how it is bent; how corners are joined; which
     * sizes are given. "Mild steel 1.5 mm, cut by a service, bent over a bar, corners welded,
     * sizes outside." */
    return _ ("%s, cut by %s, bent %s, corners %s, sizes %s.");
  /* Translators: metal and thickness; what it is cut with; how it is bent; how corners are
   * joined; which sizes are given. "Mild steel 1.5 mm, cut by me with a 125 mm disc, bent over a
   * bar, corners welded, sizes outside." */
  return _ ("%s, cut by me with %s, bent %s, corners %s, sizes %s.");
}

char *
bf_setup_sentence (const BfPart *part)
{
  g_autofree char *metal = bf_setup_phrase (part, BF_SETUP_METAL);
  g_autofree char *cutting = bf_setup_phrase (part, BF_SETUP_CUTTING);
  g_autofree char *bending = bf_setup_phrase (part, BF_SETUP_BENDING);
  g_autofree char *joining = bf_setup_phrase (part, BF_SETUP_JOINING);
  g_autofree char *measure = bf_setup_phrase (part, BF_SETUP_MEASURE);

  if (part->cutting.by == BF_CUTTING_SERVICE)
    /* Translators: the same sentence as above. */
    return g_strdup_printf (_ ("%s, cut by %s, bent %s, corners %s, sizes %s."), metal, cutting,
                            bending, joining, measure);
  /* Translators: the same sentence as above. */
  return g_strdup_printf (_ ("%s, cut by me with %s, bent %s, corners %s, sizes %s."), metal,
                          cutting, bending, joining, measure);
}
