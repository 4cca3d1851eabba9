// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "layers/house_layer.h"

namespace seamward::viewer::test {

/// Which coat a layer belongs to, from the pages on the window.
inline Coat coat_by_page(Layer layer) {
    switch (layer) {
        case Layer::roof:
        case Layer::eaves: return Coat::roof;
        case Layer::cladding:
        case Layer::opening: return Coat::walls;
        case Layer::framing: return Coat::framing;
        case Layer::interior: return Coat::linings;
        case Layer::fixture: return Coat::fixtures;
        default: return Coat::ground;
    }
}

/// All triangles of solids, one after the other: what a line meets.
class RayPeer {
public:
    struct Hit {
        double far = 0;  ///< meters
        std::uint32_t part = 0;
    };

    RayPeer(std::span<const Part> parts, Vector origin) {
        for (std::uint32_t p = 0; p < parts.size(); ++p) {
            for (const auto& [a, b, c] : parts[p].mesh.triangles) {
                const auto& points = parts[p].mesh.points;
                triangles_.push_back({points[a] - origin_of(origin), points[b] - points[a], points[c] - points[a], p});
            }
        }
        parts_ = static_cast<std::uint32_t>(parts.size());
    }

    /// The nearest hits along a direction of unit length, several where solids touch; only of parts that are solid. `cut`: what
    /// lies over it is gone, and a solid that it goes through is hit where it is cut.
    [[nodiscard]] std::vector<Hit> first(const Point& from, Vector way, const std::vector<bool>& solid,
                                         const std::optional<CutPlane>& cut) const {
        double plane = -1;  // where the line comes out of what is cut away
        if (cut && cut->over(from) > 0 && dot(way, cut->normal) < 0) plane = -cut->over(from) / dot(way, cut->normal);
        std::vector<Hit> all;
        std::vector<int> beyond(parts_);  // crossings behind the plane: odd when the plane cuts the solid there
        for (const Triangle& one : triangles_) {
            if (!solid[one.part]) continue;
            const auto far = met(one, from - Point{}, way);
            if (!far) continue;
            if (plane > 0 && *far > plane) ++beyond[one.part];
            if (cut && cut->over(from + way * *far) > 0) continue;
            all.push_back({*far, one.part});
        }
        for (std::uint32_t p = 0; plane > 0 && p < parts_; ++p) {
            if (beyond[p] % 2 == 1) all.push_back({plane, p});
        }
        std::ranges::sort(all, {}, &Hit::far);
        const auto end = std::ranges::find_if(all, [&](const Hit& hit) { return hit.far > all.front().far + 2e-5; });
        all.erase(end, all.end());
        return all;
    }

    /// A part inside of which a point is.
    [[nodiscard]] std::optional<std::uint32_t> inside(const Point& at) const {
        std::vector<int> crossings(parts_);
        const Vector way{0.36515, 0.54772, 0.75277};
        for (const Triangle& one : triangles_) {
            if (met(one, at - Point{}, way)) ++crossings[one.part];
        }
        for (std::uint32_t p = 0; p < parts_; ++p) {
            if (crossings[p] % 2 == 1) return p;
        }
        return std::nullopt;
    }

    /// The first stretch of a line from the one with that number on that goes through a triangle, with the triangle's part.
    [[nodiscard]] std::optional<std::pair<std::size_t, std::uint32_t>> crossed(std::span<const Point> line,
                                                                               std::size_t from = 0) const {
        constexpr std::size_t together = 24;
        for (std::size_t begin = from; begin + 1 < line.size(); begin += together) {
            const std::size_t end = std::min(line.size() - 1, begin + together);
            Point low = line[begin], high = line[begin];
            for (std::size_t i = begin; i <= end; ++i) {
                low = {std::min(low.x, line[i].x), std::min(low.y, line[i].y), std::min(low.z, line[i].z)};
                high = {std::max(high.x, line[i].x), std::max(high.y, line[i].y), std::max(high.z, line[i].z)};
            }
            for (const Triangle& one : triangles_) {
                if (apart(one, low, high)) continue;
                for (std::size_t i = begin; i < end; ++i) {
                    const double size = distance(line[i], line[i + 1]);
                    if (size < 1e-9) continue;
                    const auto far = met(one, line[i] - Point{}, (line[i + 1] - line[i]) * (1 / size));
                    if (far && *far <= size) return std::pair{i, one.part};
                }
            }
        }
        return std::nullopt;
    }

private:
    struct Triangle {
        Vector corner, first, second;  ///< scene; and the other corners from there
        std::uint32_t part = 0;
    };

    static Point origin_of(Vector origin) { return Point{} + origin; }

    static bool apart(const Triangle& one, const Point& low, const Point& high) {
        const auto off = [](double at, double a, double b, double from, double to) {
            return std::max({at, at + a, at + b}) < from || std::min({at, at + a, at + b}) > to;
        };
        return off(one.corner.x, one.first.x, one.second.x, low.x, high.x) ||
               off(one.corner.y, one.first.y, one.second.y, low.y, high.y) ||
               off(one.corner.z, one.first.z, one.second.z, low.z, high.z);
    }

    static std::optional<double> met(const Triangle& one, Vector from, Vector way) {
        const Vector across = cross(way, one.second);
        const double size = dot(one.first, across);
        if (std::abs(size) < 1e-15) return std::nullopt;
        const Vector off = from - one.corner;
        const double u = dot(off, across) / size;
        if (u < 0 || u > 1) return std::nullopt;
        const Vector turned = cross(off, one.first);
        const double v = dot(way, turned) / size;
        if (v < 0 || u + v > 1) return std::nullopt;
        const double far = dot(one.second, turned) / size;
        return far > 0 ? std::optional(far) : std::nullopt;
    }

    std::vector<Triangle> triangles_;
    std::uint32_t parts_ = 0;
};

}  // namespace seamward::viewer::test
