// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/view_faces.h"

#include <algorithm>
#include <cmath>

namespace seamward {

namespace {

/// Meters by which something has to be nearer to the eye to hide an edge: spares the edge's own faces, and seams of faces that
/// are flush but for rounding.
constexpr double nearer = 1e-3;
/// Meters by which triangles reach over their borders, so that a line along the seam of two is hidden by them.
constexpr double over_border = 1e-8;
/// Sine of the angle to the line of sight under which a triangle is seen from the side. With over_border, it rises by 0.1 mm at
/// most beyond its border, which is less than `nearer`.
constexpr double from_the_side = 1e-4;
constexpr double least_share = 1e-9;

/// Keeps of [from, to] where at0 + t * (at1 - at0) >= 0.
void keep_positive(double at0, double at1, ViewFaces::Share& share) {
    if (at0 >= 0 && at1 >= 0) return;
    if (at0 < 0 && at1 < 0) {
        share.to = -1;
        return;
    }
    const double cut = at0 / (at0 - at1);
    if (at0 < 0)
        share.from = std::max(share.from, cut);
    else
        share.to = std::min(share.to, cut);
}

double at(const std::array<double, 3>& line, const ViewPoint& p) { return line[0] * p.x + line[1] * p.y + line[2]; }

}  // namespace

bool ViewFace::covers(Point2 p, double tolerance) const {
    return std::all_of(sides.begin(), sides.end(),
                       [&](const auto& side) { return side[0] * p.x + side[1] * p.y + side[2] >= -tolerance; });
}

void ViewFaces::add(const ViewPoint& a, const ViewPoint& b, const ViewPoint& c, std::uint32_t look) {
    Vector normal = cross(b - a, c - a);
    const double size = length(normal);
    if (!(size > 0) || !(std::abs(normal.z) > from_the_side * size)) return;
    ViewFace face;
    face.look = look;
    face.height = {-normal.x / normal.z, -normal.y / normal.z, a.z + (normal.x * a.x + normal.y * a.y) / normal.z};
    std::array<ViewPoint, 3> corners{a, b, c};
    if (normal.z < 0) std::swap(corners[1], corners[2]);
    for (std::size_t i = 0; i < 3; ++i) {
        const ViewPoint& from = corners.at(i);
        const ViewPoint& to = corners.at((i + 1) % 3);
        const double dx = to.x - from.x, dy = to.y - from.y, run = std::hypot(dx, dy);
        if (!(run > 0)) return;
        face.sides.at(i) = {-dy / run, dx / run, (dy * from.x - dx * from.y) / run};
    }
    face.least_height = std::min({a.z, b.z, c.z});
    face.most_height = std::max({a.z, b.z, c.z});
    faces_.push_back(face);
    boxes_.push_back({{std::min({a.x, b.x, c.x}), std::min({a.y, b.y, c.y}), face.least_height},
                      {std::max({a.x, b.x, c.x}), std::max({a.y, b.y, c.y}), face.most_height}});
}

void ViewFaces::finish() { tree_ = BoxTree(boxes_); }

std::vector<ViewFaces::Share> ViewFaces::seen_shares(const ViewPoint& a, const ViewPoint& b) const {
    const double low_x = std::min(a.x, b.x) - over_border, high_x = std::max(a.x, b.x) + over_border;
    const double low_y = std::min(a.y, b.y) - over_border, high_y = std::max(a.y, b.y) + over_border;
    const double low_z = std::min(a.z, b.z) + nearer;
    std::vector<Share> hidden;
    bool all = false;
    tree_.walk(
        [&](const AxisBox& box) {
            return !all && box.high.z > low_z && box.low.x <= high_x && box.high.x >= low_x && box.low.y <= high_y &&
                   box.high.y >= low_y;
        },
        [&](std::uint32_t i) {
            const ViewFace& face = faces_[i];
            Share share{0, 1};
            for (const auto& side : face.sides) {
                keep_positive(at(side, a) + over_border, at(side, b) + over_border, share);
                if (share.to - share.from < least_share) return;
            }
            keep_positive(at(face.height, a) - a.z - nearer, at(face.height, b) - b.z - nearer, share);
            if (share.to - share.from < least_share) return;
            hidden.push_back(share);
            all = all || (share.from <= 0 && share.to >= 1);
        });
    if (all) return {};
    std::sort(hidden.begin(), hidden.end(), [](const Share& p, const Share& q) { return p.from < q.from; });
    std::vector<Share> seen;
    double reached = 0;
    for (const Share& share : hidden) {
        if (share.from > reached + least_share) seen.push_back({reached, share.from});
        reached = std::max(reached, share.to);
    }
    if (reached < 1 - least_share) seen.push_back({reached, 1});
    return seen;
}

const ViewFace* ViewFaces::seen_at(Point2 p) const {
    const ViewFace* best = nullptr;
    double height = 0;
    tree_.walk(
        [&](const AxisBox& box) {
            return box.low.x <= p.x + over_border && box.high.x >= p.x - over_border && box.low.y <= p.y + over_border &&
                   box.high.y >= p.y - over_border && (best == nullptr || box.high.z > height);
        },
        [&](std::uint32_t i) {
            const ViewFace& face = faces_[i];
            if (!face.covers(p, over_border)) return;
            const double at = face.height_at(p);
            if (best != nullptr && at <= height) return;
            best = &face;
            height = at;
        });
    return best;
}

}  // namespace seamward
