// SPDX-License-Identifier: GPL-3.0-or-later
// A second opinion by CGAL on what is air in a house, in a library of its own: link seamward_solid_support.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "base/solid.h"

namespace seamward::test {

/// Answers where solids stand, from the triangles of all parts alone.
class HouseSpace {
public:
    explicit HouseSpace(std::span<const Part> parts);
    ~HouseSpace();
    HouseSpace(const HouseSpace&) = delete;
    HouseSpace& operator=(const HouseSpace&) = delete;

    /// A part that a line runs into or touches.
    struct Hit {
        std::size_t part = 0;
        Point at;  ///< one of the places, the nearest to the line's begin
    };
    /// The parts whose surfaces a straight line meets, ends included; each part once, nearest first. Exact predicates; `at` is
    /// rounded.
    [[nodiscard]] std::vector<Hit> met_by(const Point& from, const Point& to) const;
    /// The parts that a point lies in or on. Exact. A part whose mesh is no closed surface is left out.
    [[nodiscard]] std::vector<std::size_t> around(const Point& point) const;

private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

}  // namespace seamward::test
