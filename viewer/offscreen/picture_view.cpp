// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/picture_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "offscreen/drawn_way.h"

namespace seamward::viewer {

namespace {

constexpr double elevation = 0.50;
constexpr double aside = 0.62;  ///< radians beside the direction that the first gap faces, if nothing speaks for more or less
/// What speaks for a view: the first gap seen from outside counts most.
constexpr double weight_of_first = 3, weight_of_smallest = 1.5, weight_of_length = 1, weight_of_facing = 0.4;
constexpr double clearly_better = 0.03;
constexpr double at_the_point = 0.03;      ///< meters around a point in which solids touch it
constexpr double aside_of_section = 0.42;  ///< radians from the normal of a cut toward the outer side
constexpr double above_section = 0.27;     ///< radians

/// How much of the line is seen from there: its length across the line of sight.
double seen_length(std::span<const Point> line, double azimuth) {
    const Vector back{std::cos(azimuth) * std::cos(elevation), std::sin(azimuth) * std::cos(elevation), std::sin(elevation)};
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) sum += length(cross(line[i] - line[i - 1], back));
    return sum;
}

/// Directions of view, in the order of preference: radians from the one that the first gap faces.
constexpr std::array beside{-aside, aside, -0.35, 0.35, -0.95, 0.95, -1.25, 1.25};
constexpr std::array all_round{-aside, aside, -1.4, 1.4, -2.2, 2.2, -2.9, 2.9};

/// How much is seen through what stands in the line of sight, in a picture of all of the house.
double clear_share(Layer layer) {
    switch (layer) {
        case Layer::roof:
        case Layer::eaves: return 0.5;
        case Layer::framing: return 0.6;
        case Layer::cladding: return 0.3;
        case Layer::opening: return 0.25;
        case Layer::interior: return 0.7;
        case Layer::ground:
        case Layer::yard:
        case Layer::foundation:
        case Layer::fixture: break;
    }
    return 0;
}

/// Whether a ray meets a box, or a triangle, from that share of its length on.
bool meets(const Box& box, const Point& at, Vector ray, double from) {
    double until = 1;
    const auto slab = [&](double low, double high, double start, double step) {
        if (step == 0) return low <= start && start <= high;
        const double a = (low - start) / step;
        const double b = (high - start) / step;
        from = std::max(from, std::min(a, b));
        until = std::min(until, std::max(a, b));
        return from <= until;
    };
    return slab(box.low.x, box.high.x, at.x, ray.x) && slab(box.low.y, box.high.y, at.y, ray.y) &&
           slab(box.low.z, box.high.z, at.z, ray.z);
}

/// After Möller and Trumbore, Fast, Minimum Storage Ray/Triangle Intersection (1997).
bool meets(const std::array<Point, 3>& face, const Point& at, Vector ray, double from) {
    const Vector a = face[1] - face[0];
    const Vector b = face[2] - face[0];
    const Vector across = cross(ray, b);
    const double size = dot(a, across);
    if (size == 0) return false;
    const Vector off = at - face[0];
    const double u = dot(off, across) / size;
    if (u < 0 || u > 1) return false;
    const Vector turned = cross(off, a);
    const double v = dot(ray, turned) / size;
    if (v < 0 || u + v > 1) return false;
    const double share = dot(b, turned) / size;
    return share > from && share < 1;
}

/// Where a way's first gap opens to.
struct Outward {
    Vector toward;  ///< level
    bool is_level;  ///< the gap itself opens there, and not up or down
};

std::optional<Outward> outward_of(const House& house, const HouseFrame& frame, const EntryPath& way,
                                  std::span<const Point> line) {
    if (const auto out = opens_toward(house, way.gaps.front(), way.from())) return Outward{*out, true};
    if (line.size() > 1) {  // led on straight away from the house
        const Vector back = line[0] - line[1];
        const double level = std::hypot(back.x, back.y);
        if (level > 0.3 * length(back)) return Outward{{back.x / level, back.y / level, 0}, true};
    }
    std::optional<Point> at = gap_middle(house, way.gaps.front());
    if (at) at = frame.to_scene(*at);
    if (!at && !line.empty()) at = line.front();
    if (!at || !(std::hypot(at->x, at->y) > 0.1)) return std::nullopt;
    return Outward{{at->x, at->y, 0}, false};
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

/// The middle of the faces of one piece of a ring: those of one part that are joined to the face nearest to its way. Scene;
/// nothing for what is no ring or has no solids.
std::optional<Point> middle_of_ring(const House& house, const HouseFrame& frame, GapIndex gap) {
    if (!std::holds_alternative<Ring>(house.survey[gap].shape)) return std::nullopt;
    const auto near = gap_middle(house, gap);
    if (!near) return std::nullopt;
    const Part* nearest = nullptr;
    std::size_t first = 0;
    double least = 1e300;
    for (const Part& part : house.parts) {
        for (std::size_t i = 0; i < std::min(part.bounds.size(), part.mesh.triangles.size()); ++i) {
            if (part.bounds[i] != gap) continue;
            double away = 0;
            for (const std::uint32_t corner : part.mesh.triangles[i]) away += distance(part.mesh.points[corner], *near);
            if (away >= least) continue;
            least = away;
            nearest = &part;
            first = i;
        }
    }
    if (nearest == nullptr) return std::nullopt;
    const TriangleMesh& mesh = nearest->mesh;
    std::vector<bool> joined(mesh.points.size(), false);
    for (const std::uint32_t corner : mesh.triangles[first]) joined[corner] = true;
    Point low = mesh.points[mesh.triangles[first][0]];
    Point high = low;
    for (bool more = true; more;) {
        more = false;
        for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
            const auto is_joined = [&](std::uint32_t corner) { return joined[corner]; };
            const auto& triangle = mesh.triangles[i];
            if (nearest->bounds[i] != gap || std::ranges::none_of(triangle, is_joined)) continue;
            for (const std::uint32_t corner : triangle) {
                more = more || !joined[corner];
                joined[corner] = true;
                const Point& at = mesh.points[corner];
                low = {std::min(low.x, at.x), std::min(low.y, at.y), std::min(low.z, at.z)};
                high = {std::max(high.x, at.x), std::max(high.y, at.y), std::max(high.z, at.z)};
            }
        }
    }
    return frame.to_scene(low + (high - low) * 0.5);
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

SightBlocks::SightBlocks(const House& house, const HouseFrame& frame) {
    for (const Part& part : house.parts) {
        Block block{part.layer, {{1e300, 1e300, 1e300}, {-1e300, -1e300, -1e300}}, {}};
        for (const auto& triangle : part.mesh.triangles) {
            std::array<Point, 3> face;
            for (std::size_t i = 0; i < 3; ++i) {
                const Point at = frame.to_scene(part.mesh.points[triangle.at(i)]);
                face.at(i) = at;
                Box& box = block.box;
                box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y), std::min(box.low.z, at.z)};
                box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y), std::max(box.high.z, at.z)};
            }
            block.faces.push_back(face);
        }
        blocks_.push_back(std::move(block));
    }
}

double SightBlocks::seen(const Point& at, const Point& eye) const {
    constexpr std::ptrdiff_t most_alike = 2;  // boards of a wall fade as one
    const Vector ray = eye - at;
    const double from = at_the_point / length(ray);
    std::array<std::ptrdiff_t, 10> before{};
    for (const Block& block : blocks_) {
        if (!meets(block.box, at, ray, from)) continue;
        if (std::ranges::any_of(block.faces, [&](const auto& face) { return meets(face, at, ray, from); }))
            ++before.at(static_cast<std::size_t>(block.layer));
    }
    double share = 1;
    for (std::size_t i = 0; i < before.size(); ++i)
        share *= std::pow(clear_share(static_cast<Layer>(i)), static_cast<double>(std::min(before.at(i), most_alike)));
    return share;
}

std::vector<Point> outer_places(const House& house, const HouseFrame& frame, const EntryPath& way, std::span<const Point> line) {
    std::vector<Point> places;
    for (std::size_t i = 0; i < way.gaps.size() && places.empty(); ++i) {
        const GapIndex gap = way.gaps[i];
        if (gap.value < house.places.size() && !house.places[gap.value].through.empty()) {
            const std::vector<Point>& through = house.places[gap.value].through;
            places.push_back(frame.to_scene(house.survey[gap].between[0] == way.spaces[i] ? through.front() : through.back()));
        } else if (const auto at = gap_middle(house, gap)) {
            places.push_back(frame.to_scene(*at));
        }
    }
    if (!places.empty() && !line.empty()) places.push_back(line.front());
    return places;
}

OrbitCamera view_of_way(const House& house, const HouseFrame& frame, const RankedPath* way, std::span<const Point> line,
                        const std::function<OrbitCamera(const OrbitCamera&)>& fit) {
    OrbitCamera camera;
    camera.elevation = elevation;
    if (way == nullptr || way->path.gaps.empty()) return fit(camera);
    const auto out = outward_of(house, frame, way->path, line);
    const std::vector<Point> outer = outer_places(house, frame, way->path, line);
    if (!out || outer.empty()) return fit(camera);
    std::vector<Point> smallest = way_through_gap(house, frame, way->pinch_gap);
    if (smallest.empty()) smallest = {outer.front()};
    const SightBlocks blocks(house, frame);
    const auto mean_seen = [&](std::span<const Point> places, const Point& eye) {
        double sum = 0;
        for (const Point& at : places) sum += blocks.seen(at, eye);
        return sum / static_cast<double>(places.size());
    };
    double whole = 1e-9;
    for (std::size_t i = 1; i < line.size(); ++i) whole += distance(line[i - 1], line[i]);
    const double ahead = std::atan2(out->toward.y, out->toward.x);
    const std::array<Point, 2> ends{smallest.front(), smallest.back()};
    OrbitCamera best;
    double most = -1;
    for (const double turn : out->is_level ? beside : all_round) {
        camera.azimuth = ahead + turn;
        const OrbitCamera fitting = fit(camera);
        const double value = weight_of_first * mean_seen(outer, fitting.eye()) +
                             weight_of_smallest * mean_seen(ends, fitting.eye()) +
                             weight_of_length * seen_length(line, camera.azimuth) / whole +
                             (out->is_level ? weight_of_facing * std::cos(turn) : 0);
        if (value <= most + clearly_better) continue;
        most = value;
        best = fitting;
    }
    return best;
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
    Vector into = inward_of(house, frame, gap);
    Point at = frame.to_scene(gap_middle(house, gap).value_or(frame.origin));
    if (const auto axis = middle_of_ring(house, frame, gap)) {
        const std::vector<Point> way = way_through_gap(house, frame, gap);
        const Vector along = way.size() > 1 ? way.back() - way.front() : into;
        const Vector aside{axis->x - at.x, axis->y - at.y, 0};
        const bool upright = std::hypot(along.x, along.y) < 0.25 * length(along);
        if (upright && length(aside) > 1e-4) {  // the way and the axis lie in one plane
            const Vector toward = aside * (1 / length(aside));
            into = dot(toward, into) < 0 ? toward * -1 : toward;
        } else if (!upright) {
            const Vector across{into.y, -into.x, 0};
            at = at + across * dot(aside, across);
        }
    }
    const Vector normal{into.y, -into.x, 0};
    // A hair beside the way: corners of solids often lie right in its plane.
    return {at + normal * 3.7e-5, normal};
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
    camera.distance = closeup_height(house.survey[gap].shape, way) / 2 / std::tan(camera.view_angle / 2);
    camera.azimuth = std::atan2(plane.normal.y, plane.normal.x) - aside_of_section;
    camera.elevation = above_section;
    return camera;
}

}  // namespace seamward::viewer
