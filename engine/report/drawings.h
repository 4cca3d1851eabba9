// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/message.h"
#include "catalog/translator.h"
#include "report/drawing_labels.h"
#include "report/report_facts.h"

namespace seamward {

/// One drawing of a house as a construction drawing has it, to scale, hidden lines removed, with its gaps numbered.
struct Drawing {
    std::string id;                     ///< `plan-1`, `north`, `site`: the SVG has the id `drawing-ID`
    Message title;                      ///< "North elevation"
    std::string svg;                    ///< element `svg` with its own words and legend, sized in mm so that a print is to scale
    double width = 0, height = 0;       ///< mm on paper
    bool landscape = false;             ///< it wants paper turned: it is wider than upright Letter and A4
    std::string scale;                  ///< `1:100`, `1/8" = 1'-0"`
    std::vector<std::size_t> closings;  ///< numbers of the closings that it shows, rising, counted from 1
    std::vector<GapIndex> open;         ///< gaps that it shows as open on purpose, in the survey's order
    std::vector<Balloon> balloons;      ///< closings and open gaps as they are placed, mm
    std::vector<PaperBox> words;        ///< other words within the drawing
};

/// Site plan where gaps are in the yard, floor plan of each story, the four elevations; of a job without solids none. A gap that
/// opens outdoors stands in the elevation that it faces, when it is seen there; any other in the plan of its story.
[[nodiscard]] std::vector<Drawing> draw_house(const ReportFacts& facts, const Translator& say);

/// The drawing that shows a closing, or null: its place is not known.
[[nodiscard]] const Drawing* drawing_of(const std::vector<Drawing>& drawings, std::size_t closing);

/// What is drawn of a job, apart from a plan for it.
struct DrawingJob {
    const House& house;
    bool described = true;           ///< else its solids come from a model
    std::vector<GapIndex> closings;  ///< in the order of their numbers
    Lengths lengths = Lengths::inches;
};
[[nodiscard]] std::vector<Drawing> draw_house(const DrawingJob& job, const Translator& say);

}  // namespace seamward
