// SPDX-License-Identifier: GPL-3.0-or-later
// What CGAL's alpha wrapping says of air. A wrap shrinks onto triangles through facets whose smallest circumscribed ball that
// holds no point of the wrap has a radius of more than alpha: so it gets through straits wider than 2 alpha, and no others (CGAL
// 5.5 User Manual, 3D Alpha Wrapping, "Algorithm" and "Choosing Parameters"; C. Portaneri et al., Alpha wrapping with an offset,
// ACM Trans. Graph. 41 (2022)). In library seamward_solid_support.
#pragma once

#include <cstddef>
#include <span>

#include "exchange/model.h"

namespace seamward::test {

struct WrapAnswer {
    bool joined = false;        ///< the wrap leaves the point out, which is in the air: it got there from outside
    std::size_t triangles = 0;  ///< of the wrap
};

/// The wrap with balls of a diameter, in meters. It keeps a thirtieth of alpha off the triangles, as CGAL takes itself, and its
/// balls stand between points instead of surfaces: so leave a margin of a tenth or two.
[[nodiscard]] WrapAnswer ask_wrap(std::span<const ModelPart> parts, const Point& at, double diameter);

}  // namespace seamward::test
