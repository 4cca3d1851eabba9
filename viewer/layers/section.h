// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "base/solid.h"
#include "base/vector.h"

namespace seamward::viewer {

/// A plane that cuts solids in two.
struct CutPlane {
    Point at;
    Vector normal{1, 0, 0};  ///< of unit length: what lies on that side is taken away

    [[nodiscard]] double over(const Point& point) const { return dot(point - at, normal); }
};

/// Where a part is cut.
struct CutFace {
    /// Where a triangle that bounds a gap is cut.
    struct GapEdge {
        GapIndex gap;
        Point from, to;
    };

    std::string material;  ///< of the part
    Layer layer = Layer::framing;
    TriangleMesh mesh;                             ///< in the plane; faces the side that was taken away
    std::vector<std::pair<Point, Point>> outline;  ///< the border of the mesh, not in order
    std::vector<GapEdge> gap_edges;

    void move(Vector by);
};

/// What is left of parts.
struct Section {
    std::vector<Part> parts;  ///< closed again by the faces of the cut, which bound no gap; without those that are gone
    std::vector<CutFace> faces;
};

/// The parts behind a plane. Triangles keep the gap that they bound. O(triangles), and the faces of the cut.
[[nodiscard]] Section section(std::span<const Part> parts, const CutPlane& plane);

}  // namespace seamward::viewer
