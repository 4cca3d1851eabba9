// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/plain_shape.h"

#include <algorithm>
#include <cmath>

#include "base/plane.h"
#include "house/facing.h"

namespace seamward {

namespace {

constexpr double thin = 0.0025;              ///< meters: screens, louvers and sheet metal are thinner
constexpr std::size_t many_triangles = 100;  ///< a plate of so few shows its holes

/// Counterclockwise, by monotone chains (Andrew 1979).
Loop convex_outline(Loop points) {
    std::sort(points.begin(), points.end(), [](Point2 a, Point2 b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    Loop chain;
    for (int way = 0; way < 2; ++way) {
        const std::size_t begin = chain.size();
        for (const Point2 p : points) {
            while (chain.size() >= begin + 2 && cross(chain.back() - chain[chain.size() - 2], p - chain.back()) <= 0)
                chain.pop_back();
            chain.push_back(p);
        }
        chain.pop_back();  // where the other chain begins
        std::reverse(points.begin(), points.end());
    }
    return chain;
}

}  // namespace

std::optional<TriangleMesh> plain_plate(const TriangleMesh& mesh) {
    if (mesh.triangles.size() < many_triangles) return std::nullopt;
    Frame frame;
    frame.n = main_axis(mesh);
    const Vector aside = std::abs(frame.n.z) < 0.9 ? Vector{0, 0, 1} : Vector{1, 0, 0};
    frame.u = cross(aside, frame.n);
    frame.u = frame.u * (1 / length(frame.u));
    frame.v = cross(frame.n, frame.u);
    Loop flat;
    double low = 1e300, high = -1e300;
    for (const Point& p : mesh.points) {
        const Vector off = p - frame.origin;
        flat.push_back({dot(off, frame.u), dot(off, frame.v)});
        low = std::min(low, dot(off, frame.n));
        high = std::max(high, dot(off, frame.n));
    }
    if (high - low > thin) return std::nullopt;
    const Loop outline = convex_outline(std::move(flat));
    const auto n = static_cast<std::uint32_t>(outline.size());
    if (n < 3) return std::nullopt;
    TriangleMesh plate;
    for (const double height : {low, high}) {
        for (const Point2 p : outline) plate.points.push_back(frame.at(p.x, p.y, height));
    }
    for (std::uint32_t i = 2; i < n; ++i) {
        plate.triangles.push_back({0, i, i - 1});
        plate.triangles.push_back({n, n + i - 1, n + i});
    }
    for (std::uint32_t i = 0; i < n; ++i) {
        const std::uint32_t next = (i + 1) % n;
        plate.triangles.push_back({i, next, n + next});
        plate.triangles.push_back({i, n + next, n + i});
    }
    return plate;
}

}  // namespace seamward
