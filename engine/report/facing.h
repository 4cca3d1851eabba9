// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "base/vector.h"
#include "house/house.h"

namespace seamward {

/// Tells from where one looks through a part of a house into it.
class Facings {
public:
    explicit Facings(const House& house);

    /// Of unit length: up for roofs and ceilings; level, out of the house or toward its nearer side, for walls. Nothing where
    /// the part is before nothing, as floors and pipes are. O(triangles).
    [[nodiscard]] std::optional<Vector> of(const Part& part) const;

private:
    [[nodiscard]] bool in_room(const Point& at) const;

    Point middle_;
    std::vector<const MiddleSurface*> rooms_;
};

/// The direction that most area of a mesh faces, or the opposite: the thickness of a plate. Of unit length.
[[nodiscard]] Vector main_axis(const TriangleMesh& mesh);

}  // namespace seamward
