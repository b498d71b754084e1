/* SPDX-FileCopyrightText: Benchfold contributors
 * SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "paint/page-cost.h"

/* Where the slack of the last page goes: a share of it lies before the drawing. The middle is
 * tried first and wins where others are no better; then shares farther and farther from it. */
#define BF_N_PAGE_STARTS 21

/* 0.5, 0.45, 0.55, 0.4, … 0, 1. */
double bf_page_start_share (guint i);

/* The cheapest way to lay the drawing where each row of pages may begin where it will, like a
 * course of bricks, so long as rows meet in stretches that hold the marks of a join. best: (inout)
 * knows ink, marks and format. least: (out). FALSE where that can't be; best is then undefined. */
gboolean bf_page_courses_find (BfPageGrid *best, BfGridCost *least);
