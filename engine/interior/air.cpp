// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/air.h"

#include <oneapi/tbb/parallel_for.h>
#include <oneapi/tbb/parallel_invoke.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "geometry/inside.h"

namespace seamward {

namespace {

constexpr double flat = 1e-5;               // meters: what lies in one plane
constexpr double thickest_open_part = 0.6;  // meters; walls are thinner, rooms are not

/// The thickness of a slab with the volume and the surface of the part.
double thickness(const TriangleMesh& mesh) {
    double volume = 0, area = 0;
    const Point& origin = mesh.points[mesh.triangles[0][0]];
    for (const auto& t : mesh.triangles) {
        const Vector a = mesh.points[t[0]] - origin, b = mesh.points[t[1]] - origin, c = mesh.points[t[2]] - origin;
        volume += dot(a, cross(b, c)) / 6;
        area += length(cross(b - a, c - a)) / 2;
    }
    return area > 0 ? 2 * std::abs(volume) / area : 0;
}

/// Tells which cells lie within parts.
class SolidTest {
public:
    SolidTest(const Air& air, std::span<const CleanPart> parts, const std::vector<char>& left_out) : air_(air) {
        closed_.resize(parts.size());
        for (std::size_t i = 0; i < parts.size(); ++i) {
            closed_[i] = parts[i].faults.closed;
            if (closed_[i] || left_out[i] || parts[i].mesh.triangles.empty() || thickness(parts[i].mesh) > thickest_open_part)
                continue;
            Open open{Inside(parts[i].mesh), {1e300, 1e300, 1e300}, {-1e300, -1e300, -1e300}};
            for (const Point& p : parts[i].mesh.points) {
                open.low = {std::min(open.low.x, p.x), std::min(open.low.y, p.y), std::min(open.low.z, p.z)};
                open.high = {std::max(open.high.x, p.x), std::max(open.high.y, p.y), std::max(open.high.z, p.z)};
            }
            open_.push_back(std::move(open));
        }
    }

    [[nodiscard]] bool operator()(const Point& at) const {
        struct Count {
            std::uint32_t part;
            int sum;
        };
        thread_local std::vector<Count> counts;
        counts.clear();
        air_.tree.above(at, [&](std::uint32_t triangle, bool upward) {
            const std::uint32_t part = air_.part_of[triangle];
            if (!closed_[part]) return;
            for (Count& count : counts) {
                if (count.part != part) continue;
                count.sum += upward ? 1 : -1;
                return;
            }
            counts.push_back({part, upward ? 1 : -1});
        });
        if (std::any_of(counts.begin(), counts.end(), [](const Count& c) { return c.sum > 0; })) return true;
        return std::any_of(open_.begin(), open_.end(), [&](const Open& open) {
            return at.x >= open.low.x && at.x <= open.high.x && at.y >= open.low.y && at.y <= open.high.y && at.z >= open.low.z &&
                   at.z <= open.high.z && std::abs(open.inside.winding(at)) > 0.5;
        });
    }

private:
    struct Open {
        Inside inside;
        Point low, high;
    };
    const Air& air_;
    std::vector<char> closed_;
    std::vector<Open> open_;
};

/// Sorts portals by the cells at their sides.
void sort_portals(Air& air) {
    const std::vector<Portal>& portals = air.complex.portals;
    air.first_portal.assign(air.complex.cells.size() + 1, 0);
    for (const Portal& portal : portals) {
        ++air.first_portal[portal.front + 1];
        ++air.first_portal[portal.back + 1];
    }
    for (std::size_t i = 1; i < air.first_portal.size(); ++i) air.first_portal[i] += air.first_portal[i - 1];
    air.portals.resize(air.first_portal.back());
    std::vector<std::uint32_t> next(air.first_portal.begin(), air.first_portal.end() - 1);
    for (std::uint32_t i = 0; i < portals.size(); ++i) {
        air.portals[next[portals[i].front]++] = i;
        air.portals[next[portals[i].back]++] = i;
    }
}

}  // namespace

std::vector<std::uint32_t> parts_around(const Air& air, const Point& at) {
    std::vector<std::pair<std::uint32_t, int>> counts;
    air.tree.above(at, [&](std::uint32_t triangle, bool upward) {
        const std::uint32_t part = air.part_of[triangle];
        if (air.closed[part]) counts.emplace_back(part, upward ? 1 : -1);
    });
    std::sort(counts.begin(), counts.end());
    std::vector<std::uint32_t> parts;
    for (std::size_t i = 0; i < counts.size();) {
        int sum = 0;
        const std::uint32_t part = counts[i].first;
        for (; i < counts.size() && counts[i].first == part; ++i) sum += counts[i].second;
        if (sum > 0) parts.push_back(part);
    }
    return parts;
}

Air cut_air(std::span<const CleanPart> parts, const std::vector<char>& left_out, double margin, const RunContext& run) {
    std::vector<TriangleTree::Triangle> triangles;
    std::vector<std::uint32_t> part_of;
    std::vector<TriangleMesh> meshes;
    Point low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300};
    for (std::size_t i = 0; i < parts.size(); ++i) {
        meshes.emplace_back();
        if (left_out[i]) continue;
        const TriangleMesh& mesh = parts[i].mesh;
        for (const auto& t : mesh.triangles) {
            triangles.push_back({mesh.points[t[0]], mesh.points[t[1]], mesh.points[t[2]]});
            part_of.push_back(static_cast<std::uint32_t>(i));
        }
        for (const Point& p : mesh.points) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
        meshes.back() = mesh;
    }
    run.stage("cutting the air into cells");
    Air air{TriangleTree({}), std::move(part_of), {}, {}, {}, {}, {}, {}};
    for (const CleanPart& part : parts) air.closed.push_back(part.faults.closed ? 1 : 0);
    tbb::parallel_invoke([&] { air.tree = TriangleTree(std::move(triangles)); },
                         [&] {
                             air.facets = flat_facets(meshes, flat);
                             meshes = {};
                             const Vector around{margin, margin, margin};
                             air.complex = cell_complex(air.facets, low + around * -1, high + around, flat, run);
                         });
    run.stage("telling air from solid");
    air.solid.resize(air.complex.cells.size());
    const SolidTest solid(air, parts, left_out);
    tbb::parallel_for(std::size_t{0}, air.solid.size(),
                      [&](std::size_t i) { air.solid[i] = solid(air.complex.cells[i].middle); });
    sort_portals(air);
    return air;
}

}  // namespace seamward
