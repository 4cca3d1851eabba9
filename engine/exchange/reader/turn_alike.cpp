// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/turn_alike.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <tuple>
#include <utility>
#include <vector>

#include "base/vector.h"

namespace seamward {

namespace {

/// One side of a triangle, its lower point first.
struct Side {
    std::uint32_t low = 0, high = 0, triangle = 0;
    bool upward = false;  ///< the triangle runs along it from its lower point to its higher

    [[nodiscard]] bool same_edge(const Side& other) const { return low == other.low && high == other.high; }
};

struct Neighbor {
    std::uint32_t triangle = 0;
    bool agrees = false;
};

class Turning {
public:
    explicit Turning(TriangleMesh& mesh)
        : mesh_(mesh), neighbors_(mesh.triangles.size()), open_(mesh.triangles.size()), turn_(mesh.triangles.size(), unknown) {
        find_neighbors();
    }

    std::size_t run() {
        std::size_t turned = 0;
        for (std::uint32_t first = 0; first < turn_.size(); ++first) {
            if (turn_[first] == unknown) turned += settle(patch_from(first));
        }
        return turned;
    }

private:
    static constexpr std::int8_t unknown = -1;

    struct Patch {
        std::vector<std::uint32_t> triangles;
        bool agrees = true;  ///< as it is
        bool can_agree = true;
        bool closed = true;
    };

    void find_neighbors() {
        std::vector<Side> sides;
        for (std::uint32_t t = 0; t < mesh_.triangles.size(); ++t) {
            for (std::size_t i = 0; i < 3; ++i) {
                const std::uint32_t from = mesh_.triangles[t].at(i);
                const std::uint32_t to = mesh_.triangles[t].at((i + 1) % 3);
                sides.push_back({std::min(from, to), std::max(from, to), t, from < to});
            }
        }
        std::sort(sides.begin(), sides.end(), [](const Side& a, const Side& b) {
            return std::tie(a.low, a.high, a.triangle) < std::tie(b.low, b.high, b.triangle);
        });
        for (std::size_t begin = 0, end = 0; begin < sides.size(); begin = end) {
            while (end < sides.size() && sides[end].same_edge(sides[begin])) ++end;
            const Side& one = sides[begin];
            const Side& other = sides[end - 1];
            if (end - begin == 2) {
                neighbors_[one.triangle].push_back({other.triangle, one.upward != other.upward});
                neighbors_[other.triangle].push_back({one.triangle, one.upward != other.upward});
            } else {
                for (std::size_t i = begin; i < end; ++i) open_[sides[i].triangle] = true;
            }
        }
    }

    /// Goes from neighbor to neighbor, and notes which to turn so that all agree with the first.
    Patch patch_from(std::uint32_t first) {
        Patch patch{{first}};
        turn_[first] = 0;
        for (std::size_t next = 0; next < patch.triangles.size(); ++next) {
            const std::uint32_t here = patch.triangles[next];
            if (open_[here]) patch.closed = false;
            for (const Neighbor& neighbor : neighbors_[here]) {
                if (!neighbor.agrees) patch.agrees = false;
                const auto wanted = static_cast<std::int8_t>(neighbor.agrees ? turn_[here] : 1 - turn_[here]);
                if (turn_[neighbor.triangle] == unknown) {
                    turn_[neighbor.triangle] = wanted;
                    patch.triangles.push_back(neighbor.triangle);
                } else if (turn_[neighbor.triangle] != wanted) {
                    patch.can_agree = false;
                }
            }
        }
        return patch;
    }

    std::size_t settle(const Patch& patch) {
        if (patch.agrees || !patch.can_agree) return 0;
        double volume = 0;
        double kept_area = 0;
        double turned_area = 0;
        const Point origin = mesh_.points[mesh_.triangles[patch.triangles[0]][0]];
        for (const std::uint32_t t : patch.triangles) {
            const auto& [a, b, c] = mesh_.triangles[t];
            const Vector normal = cross(mesh_.points[b] - mesh_.points[a], mesh_.points[c] - mesh_.points[a]);
            const double share = dot(mesh_.points[a] - origin, normal);
            volume += turn_[t] == 0 ? share : -share;
            (turn_[t] == 0 ? kept_area : turned_area) += length(normal);
        }
        const bool other_way = patch.closed ? volume < 0 : turned_area > kept_area;
        std::size_t turned = 0;
        for (const std::uint32_t t : patch.triangles) {
            if ((turn_[t] != 0) == other_way) continue;
            std::swap(mesh_.triangles[t][1], mesh_.triangles[t][2]);
            ++turned;
        }
        return turned;
    }

    TriangleMesh& mesh_;
    std::vector<std::vector<Neighbor>> neighbors_;
    std::vector<bool> open_;         ///< a triangle with an edge that not exactly two share
    std::vector<std::int8_t> turn_;  ///< by triangle: 1 to turn it, so that it agrees with the first of its patch
};

}  // namespace

std::size_t turn_alike(TriangleMesh& mesh) { return Turning(mesh).run(); }

}  // namespace seamward
