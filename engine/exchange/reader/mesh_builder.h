// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
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

    /// Throws ReadRefusal beyond the most triangles, and for a corner that is no number.
    void add(const Point& a, const Point& b, const Point& c) { add({index_of(a), index_of(b), index_of(c)}); }
    /// The same for corners that index_of() gave.
    void add(const std::array<std::uint32_t, 3>& corners);
    /// The number of the point in that place, which is new or has been given before. Throws ReadRefusal for what is no number.
    [[nodiscard]] std::uint32_t index_of(const Point& point);
    [[nodiscard]] bool empty() const { return mesh_.triangles.empty(); }
    [[nodiscard]] TriangleMesh take();

private:
    void make_room();
    [[nodiscard]] std::uint32_t& slot_of(const Point& at);

    TriangleTally& tally_;
    TriangleMesh mesh_;
    /// Numbers of points by their hashes, or none: a power of two of them, at least half of them free. One block of memory, where
    /// a std::unordered_map takes one for each point, and most of the time with them.
    std::vector<std::uint32_t> slots_;
    bool any_left_out_ = false;
};

/// The mesh in pieces that share no point, in the order of their first triangles; the mesh itself when it is one piece, or
/// more than `most`.
[[nodiscard]] std::vector<TriangleMesh> pieces_of(TriangleMesh mesh, std::size_t most);

}  // namespace seamward
