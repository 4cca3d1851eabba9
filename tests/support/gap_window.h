// SPDX-License-Identifier: GPL-3.0-or-later
// The window of an expected gap, cut down to what has to be looked at.
#pragma once

#include <algorithm>
#include <cmath>

#include "base/vector.h"
#include "tests/support/scenes.h"

namespace seamward::test {

[[nodiscard]] inline bool has_window(const ExpectedGap& gap) { return gap.window.highest.x > gap.window.lowest.x; }

/// The box of a straight way along an axis, hardly thicker than a line.
[[nodiscard]] inline Box line_between(const Point& a, const Point& b) {
    const double off = 1e-6;
    return {{std::min(a.x, b.x) - off, std::min(a.y, b.y) - off, std::min(a.z, b.z) - off},
            {std::max(a.x, b.x) + off, std::max(a.y, b.y) + off, std::max(a.z, b.z) + off}};
}

[[nodiscard]] inline bool is_straight(const ExpectedGap& gap) {
    const Vector way = gap.to - gap.from;
    return std::abs(way.x) + std::abs(way.y) + std::abs(way.z) < 1.000001 * length(way);
}

/// A straight way through what is the same all along, cut down to a stretch around the narrowest place.
inline void shorten(ExpectedGap& gap) {
    const Vector way = gap.to - gap.from;
    const double stretch = 2 * gap.width;
    if (length(way) < 2 * stretch) return;
    const Vector step = way * (stretch / length(way));
    gap.from = gap.near + step * -1;
    gap.to = gap.near + step;
    const auto clip = [&](double Point::*c) {
        if (std::abs(gap.to.*c - gap.from.*c) < stretch) return;
        gap.window.lowest.*c = std::min(gap.from.*c, gap.to.*c) - 0.1 * stretch;
        gap.window.highest.*c = std::max(gap.from.*c, gap.to.*c) + 0.1 * stretch;
    };
    clip(&Point::x), clip(&Point::y), clip(&Point::z);
}

}  // namespace seamward::test
