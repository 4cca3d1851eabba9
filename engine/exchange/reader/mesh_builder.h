// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <unordered_map>
#include <vector>

#include "exchange/model.h"

namespace seamward {

/// Triangles that came from a file, over all of its parts.
struct TriangleTally {
    std::size_t most = 0;
    std::size_t kept = 0;
    std::size_t collapsed = 0;  ///< left out: two corners in one place
};

/// Puts a mesh together. Points in exactly one place become one; that others are near is for later stages to judge.
class MeshBuilder {
public:
    explicit MeshBuilder(TriangleTally& tally) : tally_(tally) {}

    /// Throws Refusal beyond the most triangles, and for a corner that is no number.
    void add(const Point& a, const Point& b, const Point& c);
    [[nodiscard]] bool empty() const { return mesh_.triangles.empty(); }
    [[nodiscard]] TriangleMesh take();

private:
    struct Hash {
        std::size_t operator()(const Point& p) const;
    };
    struct Same {
        bool operator()(const Point& a, const Point& b) const { return a.x == b.x && a.y == b.y && a.z == b.z; }
    };
    std::uint32_t index_of(const Point& point);

    TriangleTally& tally_;
    TriangleMesh mesh_;
    std::unordered_map<Point, std::uint32_t, Hash, Same> known_;
};

/// The mesh in pieces that share no point, in the order of their first triangles; the mesh itself when it is one piece, or
/// more than `most`.
[[nodiscard]] std::vector<TriangleMesh> pieces_of(TriangleMesh mesh, std::size_t most);

}  // namespace seamward
