// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/camera.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace seamward {

namespace {

// How pictures are framed; chosen by looking at them.
constexpr double nearest = 2.5;                    ///< meters from the place: a gap and the wall around it
constexpr double beyond = 1;                       ///< meters outside of the building
constexpr double margin = 1.1;                     ///< of what the picture has to hold
constexpr double aside = 0.3;                      ///< for one out of the wall: straight on, depth does not show
constexpr double eye = 0.5;                        ///< meters above the ground, at least
constexpr double sine_half = 0.38268343236508977;  ///< of half the field of view
// Meters up for one out of the wall: at walls, at what faces up (roofs) or down (soffits), and of much of a building.
constexpr double rise_wall = 0.35, rise_up = 0.8, rise_down = -0.35, rise_overview = 0.5;
constexpr double steep = 0.5;  ///< part of `outward` that is up or down from which on it is a roof's or a soffit's
constexpr double deep = 1.5;   ///< meters of building in the line of sight, more than eaves: the place is not seen from outside
constexpr double kept = 0.5;   ///< meters before a deep place that are not cut away
/// No building stands farther from the origin: the largest coordinates of maps are some 10^7 m.
constexpr double farthest = 1e8;

constexpr Vector upward{0, 0, 1};

Vector unit(Vector a) { return a * (1 / length(a)); }

bool is_box(const std::optional<AxisBox>& box) {
    return box && can_be_shown(box->low) && can_be_shown(box->high) && box->low.x <= box->high.x && box->low.y <= box->high.y &&
           box->low.z <= box->high.z;
}

/// Out of the upright side of a box that is nearest to a place; of equally near ones the first.
Vector nearest_side(const Point& at, const AxisBox& box) {
    struct Side {
        Vector out;
        double depth;
    };
    const std::array<Side, 4> sides{Side{{-1, 0, 0}, at.x - box.low.x}, Side{{1, 0, 0}, box.high.x - at.x},
                                    Side{{0, -1, 0}, at.y - box.low.y}, Side{{0, 1, 0}, box.high.y - at.y}};
    return std::min_element(sides.begin(), sides.end(), [](const Side& a, const Side& b) { return a.depth < b.depth; })->out;
}

/// How far along a ray the building is left for good, through a side or upward; 0 or less: it is not met.
double way_out(const Point& from, Vector toward, const AxisBox& box) {
    double in = -std::numeric_limits<double>::infinity(), out = -in;
    const auto slab = [&](double at, double step, double low, double high) {
        if (step == 0) {
            if (at < low || at > high) out = in = 0;
            return;
        }
        const double a = (low - at) / step, b = (high - at) / step;
        in = std::max(in, std::min(a, b));
        out = std::min(out, std::max(a, b));
    };
    slab(from.x, toward.x, box.low.x, box.high.x);
    slab(from.y, toward.y, box.low.y, box.high.y);
    if (toward.z > 0) out = std::min(out, (box.high.z - from.z) / toward.z);
    return in < out ? out : 0;
}

double rise_of(const Sight& sight, const std::optional<Vector>& outward) {
    if (sight.overview) return rise_overview;
    if (!outward || std::abs(outward->z) < steep) return rise_wall;
    return outward->z > 0 ? rise_up : rise_down;
}

}  // namespace

bool can_be_shown(const Point& at) {
    return std::abs(at.x) <= farthest && std::abs(at.y) <= farthest && std::abs(at.z) <= farthest;
}

Camera camera_for(const Sight& sight, const std::optional<AxisBox>& building) {
    const bool known = is_box(building);
    std::optional<Vector> outward;
    if (sight.outward) {
        const double size = length(*sight.outward);
        if (std::isnormal(size)) outward = unit(*sight.outward);
    }
    Vector level = known ? nearest_side(sight.entry.value_or(sight.middle), *building) : Vector{0, -1, 0};
    if (outward && std::hypot(outward->x, outward->y) >= steep) level = unit({outward->x, outward->y, 0});

    const Vector away = unit(level + cross(upward, level) * aside + upward * rise_of(sight, outward));
    double far = std::max(nearest, sight.radius * margin / sine_half);
    const double behind = known ? way_out(sight.middle, away, *building) : 0;
    if (known) far = std::max(far, behind + beyond);
    Camera camera;
    camera.from = sight.middle + away * far;
    if (known) camera.from.z = std::max(camera.from.z, std::min(building->low.z + eye, sight.middle.z));
    camera.toward = unit(sight.middle - camera.from);
    camera.up = unit(upward - camera.toward * dot(upward, camera.toward));
    if (behind > deep && !sight.overview)
        camera.cut = Camera::Cut{sight.middle + camera.toward * -(sight.radius + kept), camera.toward * -1};
    return camera;
}

}  // namespace seamward
