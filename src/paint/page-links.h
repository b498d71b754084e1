/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/template-plan.h"

/* Pages of two rows that meet in less have no room for the marks of a join. */
#define BF_LEAST_MEETING_MM 40.0

/* Finds each page's neighbours from where their own paper meets, and which pages are apart. For
 * template-plan.c alone. */
void bf_plan_link_pages (BfTemplatePlan *plan);
