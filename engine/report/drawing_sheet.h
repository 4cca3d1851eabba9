// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "catalog/translator.h"
#include "report/drawing_labels.h"
#include "report/drawing_views.h"
#include "report/report_settings.h"

namespace seamward {

/// A gap on a drawing.
struct DrawnGap {
    GapIndex gap;
    std::string text;         ///< number of its closing, or the letter of one that stays open
    bool stays_open = false;  ///< on purpose
    Point2 at;                ///< meters, as the view has it
    Message meaning;          ///< for the legend; empty: the page lists it
};

/// A usual scale: so many meters of a house are one meter of the paper.
struct DrawingScale {
    double denominator = 100;
    std::string text;  ///< `1:100`, `1/8" = 1'-0"`
};

/// How large a drawing is without its words, meters.
struct DrawnSize {
    DrawnView::Kind kind = DrawnView::Kind::plan;
    double width = 0, height = 0;
};

struct SheetPaper {
    DrawingScale scale;
    bool landscape = false;
    double width = 0, height = 0;  ///< the most that a sheet may take: what both Letter and A4 have within usual margins, mm
};

/// The largest usual scale at which drawings fit on upright paper, or on paper turned where that scale would be a small one. The
/// smallest where none does.
[[nodiscard]] SheetPaper choose_paper(const std::vector<DrawnSize>& drawings, Lengths lengths);

struct SheetSettings {
    SheetPaper paper;
    Lengths lengths = Lengths::inches;
    double balloon_size = 6.6;  ///< mm
};

struct Sheet {
    std::string svg;                ///< one element, or two: a legend too long for the page stands apart
    double width = 0, height = 0;   ///< mm, of the first
    std::vector<Balloon> balloons;  ///< one for each gap, in the order of the gaps
    std::vector<PaperBox> words;    ///< of the drawing itself
};

/// One view with its gaps, words, scale bar and legend, as an SVG of its own size.
[[nodiscard]] Sheet draw_sheet(const DrawnView& view, const std::vector<DrawnGap>& gaps, const SheetSettings& settings,
                               const Translator& say);

}  // namespace seamward
