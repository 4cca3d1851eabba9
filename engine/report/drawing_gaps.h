// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "report/drawing_views.h"

namespace seamward {

/// Where a gap is shown.
struct GapView {
    DrawnView::Kind kind = DrawnView::Kind::plan;
    std::size_t which = 0;  ///< story of a plan, side of an elevation
    Point at;
};

/// The view that shows a gap: one that opens outdoors is shown where its outer end is seen, in the elevation that it faces, of
/// several as good the nearest; what is apart from the house in its yard on the site plan; else on the plan of its story.
/// Nothing: nobody knows where it is.
[[nodiscard]] std::optional<GapView> view_of(const DrawnHouse& house, const std::array<Elevation, 4>& elevations, GapIndex gap);

}  // namespace seamward
