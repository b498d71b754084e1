/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

#include "core/part.h"
#include "fold/shown-sums.h"
#include "make/rule-marks.h"
#include "paint/paper.h"

/* What a person has chosen for good, and what their locale says where they have not. */

/* The program's settings; those of the build folder where the program was not installed. NULL where
 * there are none at all: then the locale alone counts. Returns: (transfer full). */
GSettings *bf_settings_new (void) G_GNUC_WARN_UNUSED_RESULT;

/* Gives a new window the size that the last one had, and notes that of one that is closed. settings
 * may be NULL. */
void bf_settings_size_window (GSettings *settings, GtkWindow *window);
void bf_settings_note_window (GSettings *settings, GtkWindow *window);

/* Units of a new part. settings may be NULL. */
BfUnits bf_settings_units (GSettings *settings);

/* A part with the set-up that a new part begins with: as it was last chosen, else what suits the
 * units. settings may be NULL. Returns: (transfer full). */
BfPart *bf_settings_first_part (GSettings *settings) G_GNUC_WARN_UNUSED_RESULT;

/* The set-up of that part is what the next new part begins with. settings may be NULL. */
void bf_settings_note_setup (GSettings *settings, const BfPart *part);

/* What stands on the plate of the person's hand brake; 0 where nobody said. settings may be NULL.
 */
BfBrakePlate bf_settings_brake (GSettings *settings);
void bf_settings_note_brake (GSettings *settings, const BfBrakePlate *plate);

/* How finely the person's rule is marked in those units; at first 0.5 mm or 1/16 in. settings may
 * be NULL: then these hold, and nothing is noted. */
const BfRuleMarks *bf_settings_marks (GSettings *settings, BfUnits units);
void bf_settings_note_marks (GSettings *settings, const BfRuleMarks *marks);

/* From a clamped guide to the cut, in mm: the person's own, 0 where the disc just touches the
 * guide. settings may be NULL: 0 then, and nothing is noted. */
double bf_settings_guide_offset_mm (GSettings *settings);
void bf_settings_set_guide_offset_mm (GSettings *settings, double offset_mm);

/* The paper of templates. settings may be NULL. Owned by the library. */
const BfPaper *bf_settings_paper (GSettings *settings);
