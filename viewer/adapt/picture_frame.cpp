// SPDX-License-Identifier: GPL-3.0-or-later
#include "adapt/picture_frame.h"

#include <algorithm>
#include <limits>

namespace seamward::viewer {

namespace {

constexpr double most = std::numeric_limits<double>::max();
constexpr Box nothing{{most, most, most}, {-most, -most, -most}};
constexpr double least_extent = 2.0;  ///< meters; a survey of one gap still has some ground around it

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

bool belongs_to_house(const Survey& survey, const Gap& gap) {
    return std::any_of(gap.between.begin(), gap.between.end(), [&](SpaceIndex end) {
        const SpaceKind kind = survey[end].kind;
        return kind != SpaceKind::outdoors && kind != SpaceKind::harborage;
    });
}

}  // namespace

std::optional<PictureFrame> picture_frame(const Survey& survey) {
    Box gaps = nothing;
    Box house = nothing;
    for (const Gap& gap : survey.gaps) {
        if (!gap.at) continue;
        include(gaps, *gap.at);
        if (belongs_to_house(survey, gap)) include(house, *gap.at);
    }
    if (gaps.low.x > gaps.high.x) return std::nullopt;
    if (house.low.x > house.high.x) house = gaps;
    house.low.z = gaps.low.z;
    gaps = not_flat(gaps);
    house = not_flat(house);
    PictureFrame frame;
    frame.origin = {gaps.low.x / 2 + gaps.high.x / 2, gaps.low.y / 2 + gaps.high.y / 2, gaps.low.z};
    frame.gaps = {frame.to_scene(gaps.low), frame.to_scene(gaps.high)};
    frame.house = {frame.to_scene(house.low), frame.to_scene(house.high)};
    frame.reach = distance(gaps.low, gaps.high);
    return frame;
}

}  // namespace seamward::viewer
