// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/picture_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "offscreen/drawn_way.h"

namespace seamward::viewer {

namespace {

constexpr double elevation = 0.50;
constexpr double aside = 0.62;             ///< radians beside the direction that the first gap faces
constexpr double aside_of_section = 0.42;  ///< radians from the normal of a cut toward the outer side
constexpr double above_section = 0.27;     ///< radians

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

/// Meters from the lower to the upper edge of the picture of a gap: all of the way through it, and of a pipe.
double closeup_height(const Shape& shape, const std::vector<Point>& way) {
    double size = 5 * clear_width(shape);
    if (const auto* ring = std::get_if<Ring>(&shape)) size = 3 * (ring->around + 2 * ring->width);
    if (const auto* mesh = std::get_if<Mesh>(&shape); mesh != nullptr && mesh->area) size = 2 * std::sqrt(*mesh->area);
    double long_way = 0;
    for (const Point& at : way) long_way = std::max(long_way, distance(at, way.front()));
    return std::clamp(std::max(size, 2.4 * long_way), 0.42, 1.4);
}

/// The level direction in which a gap is longest, by the edges of its faces; nothing when it is about as long each way.
std::optional<Vector> long_side(const House& house, GapIndex gap) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (const Part& part : house.parts) {
        for (std::size_t i = 0; i < std::min(part.bounds.size(), part.mesh.triangles.size()); ++i) {
            if (part.bounds[i] != gap) continue;
            for (std::size_t k = 0; k < 3; ++k) {
                const Vector edge =
                    part.mesh.points[part.mesh.triangles[i].at((k + 1) % 3)] - part.mesh.points[part.mesh.triangles[i].at(k)];
                xx += edge.x * edge.x;
                xy += edge.x * edge.y;
                yy += edge.y * edge.y;
            }
        }
    }
    const double apart = std::hypot(xx - yy, 2 * xy);
    if (!(apart > 0.2 * (xx + yy))) return std::nullopt;
    const double turn = std::atan2(2 * xy, xx - yy) / 2;
    return Vector{std::cos(turn), std::sin(turn), 0};
}

/// The level direction of a gap's way from its outer side inward, of unit length.
Vector inward_of(const House& house, const HouseFrame& frame, GapIndex gap) {
    const Point middle = frame.to_scene(gap_middle(house, gap).value_or(frame.origin));
    const bool beside_x = frame.house.high.x - std::abs(middle.x) < frame.house.high.y - std::abs(middle.y);
    Vector into = beside_x ? Vector{middle.x > 0 ? -1.0 : 1.0, 0, 0} : Vector{0, middle.y > 0 ? -1.0 : 1.0, 0};
    const std::vector<Point> way = way_through_gap(house, frame, gap);
    if (way.size() < 2) return into;
    Vector along = way.back() - way.front();
    double level = std::hypot(along.x, along.y);
    if (level < 0.25 * length(along)) {  // up or down: as the slot lies, or else as far as it bends
        if (const auto side = long_side(house, gap)) {
            const Vector across{-side->y, side->x, 0};
            return dot(across, into) < 0 ? across * -1 : across;
        }
        for (const Point& at : way) {
            const Vector bend = at - way.front();
            if (std::hypot(bend.x, bend.y) > level) along = dot(bend, into) < 0 ? bend * -1 : bend;
            level = std::hypot(along.x, along.y);
        }
    }
    return level > 0.003 ? Vector{along.x / level, along.y / level, 0} : into;
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

CutPlane plane_of_gap(const House& house, const HouseFrame& frame, GapIndex gap) {
    const Vector into = inward_of(house, frame, gap);
    const Vector normal{into.y, -into.x, 0};
    // A hair beside the way: corners of solids often lie right in its plane.
    return {frame.to_scene(gap_middle(house, gap).value_or(frame.origin)) + normal * 3.7e-5, normal};
}

OrbitCamera view_of_gap(const House& house, const HouseFrame& frame, GapIndex gap, const CutPlane& plane) {
    const std::vector<Point> way = way_through_gap(house, frame, gap);
    OrbitCamera camera;
    camera.focus = plane.at;
    if (!way.empty()) {  // the middle of the way, and the gap in sight in any case
        Point low = way.front();
        Point high = low;
        for (const Point& at : way) {
            low = {std::min(low.x, at.x), std::min(low.y, at.y), std::min(low.z, at.z)};
            high = {std::max(high.x, at.x), std::max(high.y, at.y), std::max(high.z, at.z)};
        }
        const Vector aside = (low + (high - low) * 0.5 - plane.at) * 0.7;
        camera.focus = plane.at + (aside - plane.normal * dot(aside, plane.normal));
    }
    camera.distance = closeup_height(house.survey[gap].shape, way) / 2 / std::tan(OrbitCamera::view_angle / 2);
    camera.azimuth = std::atan2(plane.normal.y, plane.normal.x) - aside_of_section;
    camera.elevation = above_section;
    return camera;
}

}  // namespace seamward::viewer
