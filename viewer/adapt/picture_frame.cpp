// SPDX-License-Identifier: GPL-3.0-or-later
#include "adapt/picture_frame.h"

#include <algorithm>
#include <limits>

namespace seamward::viewer {

namespace {

constexpr double most = std::numeric_limits<double>::max();
constexpr Box nothing{{most, most, most}, {-most, -most, -most}};
constexpr double least_extent = 2.0;    ///< meters; a survey of one gap still has some ground around it
constexpr double ground_below = 0.012;  ///< share of the reach: half of the largest symbol

void include(Box& box, const Point& at) {
    box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y), std::min(box.low.z, at.z)};
    box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y), std::max(box.high.z, at.z)};
}

void widen(double& low, double& high) {
    const double lacking = (least_extent - (high - low)) / 2;
    if (lacking <= 0) return;
    low -= lacking;
    high += lacking;
}

/// Gives a flat box some width and height, upward only: the ground stays where it is.
Box not_flat(Box box) {
    widen(box.low.x, box.high.x);
    widen(box.low.y, box.high.y);
    box.high.z = std::max(box.high.z, box.low.z + least_extent / 2);
    return box;
}

}  // namespace

std::optional<PictureFrame> picture_frame(const Survey& survey) {
    Box gaps = nothing;
    for (const Gap& gap : survey.gaps) {
        if (gap.at) include(gaps, *gap.at);
    }
    if (gaps.low.x > gaps.high.x) return std::nullopt;
    gaps = not_flat(gaps);
    PictureFrame frame;
    frame.reach = distance(gaps.low, gaps.high);
    gaps.low.z -= frame.reach * ground_below;
    frame.origin = {gaps.low.x / 2 + gaps.high.x / 2, gaps.low.y / 2 + gaps.high.y / 2, gaps.low.z};
    frame.gaps = {frame.to_scene(gaps.low), frame.to_scene(gaps.high)};
    return frame;
}

}  // namespace seamward::viewer
