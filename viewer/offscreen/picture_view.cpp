// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/picture_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "offscreen/drawn_way.h"

namespace seamward::viewer {

namespace {

constexpr double elevation = 0.50;
constexpr double aside = 0.62;  ///< radians beside the direction that the first gap faces

/// How much of the line is seen from there: its length across the line of sight.
double seen_length(std::span<const Point> line, double azimuth) {
    const Vector back{std::cos(azimuth) * std::cos(elevation), std::sin(azimuth) * std::cos(elevation), std::sin(elevation)};
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) sum += length(cross(line[i] - line[i - 1], back));
    return sum;
}

struct Extent {
    double left = 1e300, right = -1e300, top = 1e300, bottom = -1e300;
};

Extent extent_of(const OrbitCamera& camera, std::span<const Point> points, double width, double height) {
    Extent extent;
    for (const Point& at : points) {
        const auto shown = camera.shown_at(at, width, height);
        if (!shown) continue;
        extent.left = std::min(extent.left, shown->x);
        extent.right = std::max(extent.right, shown->x);
        extent.top = std::min(extent.top, shown->y);
        extent.bottom = std::max(extent.bottom, shown->y);
    }
    return extent;
}

/// Meters from the lower to the upper edge of the picture of a gap.
double closeup_height(const Shape& shape) {
    double size = 170 * clear_width(shape);
    if (const auto* hole = std::get_if<Hole>(&shape)) size = 24 * hole->diameter;
    if (const auto* ring = std::get_if<Ring>(&shape)) size = 14 * (ring->around + 2 * ring->width);
    if (const auto* mesh = std::get_if<Mesh>(&shape); mesh != nullptr && mesh->area) size = 4 * std::sqrt(*mesh->area);
    return std::clamp(size, 0.4, 2.5);
}

}  // namespace

OrbitCamera view_of_way(const House& house, const HouseFrame& frame, const EntryPath* way, std::span<const Point> line) {
    OrbitCamera camera;
    camera.elevation = elevation;
    if (way == nullptr || way->gaps.empty()) return camera;
    auto out = opens_toward(house, way->gaps.front(), way->from());
    if (!out && line.size() > 1) {  // led on straight away from the house
        const Vector back = line[0] - line[1];
        const double level = std::hypot(back.x, back.y);
        if (level > 0.3 * length(back)) out = Vector{back.x / level, back.y / level, 0};
    }
    if (!out) {
        const auto at = gap_middle(house, way->gaps.front());
        if (!at) return camera;
        const Point in_scene = frame.to_scene(*at);
        out = Vector{in_scene.x, in_scene.y, 0};
        if (!(length(*out) > 0.1)) return camera;
    }
    const double ahead = std::atan2(out->y, out->x);
    const double right = seen_length(line, ahead + aside);
    const double left = seen_length(line, ahead - aside);
    camera.azimuth = right > left * 1.02 ? ahead + aside : ahead - aside;
    return camera;
}

OrbitCamera fitted_to(OrbitCamera camera, std::span<const Point> points, const QRectF& part, double width, double height) {
    for (int i = 0; i < 8; ++i) {
        const Extent before = extent_of(camera, points, width, height);
        if (before.left > before.right) return camera;
        const double across = std::max(before.right - before.left, 1.0) / part.width();
        const double upward = std::max(before.bottom - before.top, 1.0) / part.height();
        camera.distance *= std::max(across, upward);
        const Extent now = extent_of(camera, points, width, height);
        camera.shift((part.center().x() - (now.left + now.right) / 2) / height,
                     ((now.top + now.bottom) / 2 - part.center().y()) / height);
    }
    return camera;
}

OrbitCamera view_of_gap(const House& house, const HouseFrame& frame, GapIndex gap, SpaceIndex from) {
    OrbitCamera camera;
    const Point middle = gap_middle(house, gap).value_or(frame.origin);
    const Point at = frame.to_scene(middle);
    Vector out{at.x, at.y, 0};
    if (gap.value < house.places.size() && house.places[gap.value].through.size() > 1) {
        const std::vector<Point>& through = house.places[gap.value].through;
        out = (house.survey[gap].between[0] == from ? through.front() : through.back()) - middle;
    }
    const double whole = length(out);
    const double level = std::hypot(out.x, out.y);
    const bool upright = whole > 0 && std::abs(out.z) > 0.7 * whole;
    if (level < 0.15 * whole) out = {at.x, at.y, 0};
    if (std::hypot(out.x, out.y) > 1e-6) camera.azimuth = std::atan2(out.y, out.x) + 0.55;  // lit from the left
    camera.focus = at;
    camera.distance = closeup_height(house.survey[gap].shape) / 2 / std::tan(OrbitCamera::view_angle / 2);
    camera.elevation = !upright ? 0.42 : out.z > 0 ? 0.85 : -0.5;  // an opening that looks down is seen from below, ...
    const double over_ground = at.z - frame.ground - 0.12;         // ... but never from under the ground
    camera.elevation = std::max(camera.elevation, -std::asin(std::clamp(over_ground / camera.distance, -0.1, 1.0)));
    return camera;
}

}  // namespace seamward::viewer
