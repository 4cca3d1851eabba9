// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/facing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "house/inner_way.h"

namespace seamward {

namespace {

constexpr double ground_floor = 0.4;  ///< meters over z = 0: what lies level up to there is a floor that one looks at
constexpr double knee = 0.5;          ///< meters: what is lower, in the yard, hides nothing
constexpr double beside_wall = 0.5;   ///< meters from the middle of a wall's layer to the room beside it

struct Bounds {
    Point low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300};

    void add(const Point& p) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
    }
    [[nodiscard]] Point middle() const { return {(low.x + high.x) / 2, (low.y + high.y) / 2, (low.z + high.z) / 2}; }
};

Bounds bounds_of(const TriangleMesh& mesh) {
    Bounds bounds;
    for (const Point& p : mesh.points) bounds.add(p);
    return bounds;
}

}  // namespace

/// By powers of the quadratic form.
Vector main_axis(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles) {
    std::array<Vector, 3> form{};
    for (const std::uint32_t i : triangles) {
        const auto& [a, b, c] = mesh.triangles[i];
        const Vector n = cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
        const double doubled = length(n);
        if (!(doubled > 0)) continue;
        form[0] = form[0] + n * (n.x / doubled);
        form[1] = form[1] + n * (n.y / doubled);
        form[2] = form[2] + n * (n.z / doubled);
    }
    Vector axis{0.48, 0.60, 0.64};
    for (int i = 0; i < 24; ++i) {
        const Vector next{dot(form[0], axis), dot(form[1], axis), dot(form[2], axis)};
        const double size = length(next);
        if (!(size > 0)) return {0, 0, 1};
        axis = next * (1 / size);
    }
    return axis;
}

Vector main_axis(const TriangleMesh& mesh) {
    std::vector<std::uint32_t> all(mesh.triangles.size());
    std::iota(all.begin(), all.end(), 0U);
    return main_axis(mesh, all);
}

Facings::Facings(const House& house) {
    Bounds body;
    for (const Part& part : house.parts) {
        if (part.layer == Layer::ground || part.layer == Layer::yard) continue;
        for (const Point& p : part.mesh.points) body.add(p);
    }
    middle_ = {body.middle().x, body.middle().y, 0};
    for (std::size_t i = 0; i < std::min(house.middles.size(), house.survey.spaces.size()); ++i) {
        const SpaceKind kind = house.survey.spaces[i].kind;
        if (kind != SpaceKind::living && kind != SpaceKind::attached) continue;
        if (house.middles[i].figure.outline.size() > 2)
            rooms_.push_back({house.middles[i].frame, {house.middles[i].figure.outline, {}}});
    }
}

bool Facings::in_room(const Point& at) const {
    return std::any_of(rooms_.begin(), rooms_.end(), [&](const Room& room) {
        const Vector off = at - room.frame.origin;
        return room_ahead(room.floor, {dot(off, room.frame.u), dot(off, room.frame.v)}, {1, 0}) > 0;
    });
}

Vector Facings::outward(const Point& at, Vector across) const {
    const bool ahead = in_room(at + across * beside_wall);
    const bool behind = in_room(at + across * -beside_wall);
    const bool turn = ahead != behind ? ahead : dot(across, at - middle_) < 0;
    return turn ? across * -1 : across;
}

std::optional<Vector> Facings::of(const Part& part) const {
    constexpr Vector up{0, 0, 1};
    if (part.layer == Layer::ground || part.layer == Layer::foundation || part.layer == Layer::fixture) return std::nullopt;
    if (part.layer == Layer::roof || part.layer == Layer::eaves) return up;
    const Bounds box = bounds_of(part.mesh);
    if (part.layer == Layer::yard && box.high.z - box.low.z < knee) return std::nullopt;
    const Vector axis = main_axis(part.mesh);
    const Point at = box.middle();
    if (std::abs(axis.z) > 0.5) {
        if (at.z > ground_floor) return up;
        return std::nullopt;
    }
    return outward(at, Vector{axis.x, axis.y, 0} * (1 / std::hypot(axis.x, axis.y)));
}

}  // namespace seamward
