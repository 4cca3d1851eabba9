// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/solid.h"
#include "geometry/plane3.h"

namespace seamward {

/// A convex piece of the surface of a part.
struct Facet {
    std::uint32_t part = 0;   ///< position in the parts
    std::uint32_t plane = 0;  ///< position in `FlatFacets::planes`
    bool flipped = false;     ///< the outside is where the plane's normal points away from
    /// Counterclockwise seen from outside. Points of the part, not moved onto the plane: within the tolerance of it. None lies on
    /// the line between its neighbors; where points are noisy, some lie up to 1.5 times the tolerance inside of an edge's line.
    std::vector<Point> corners;
};

struct FlatFacets {
    std::vector<Plane3> planes;  ///< by falling area of the face that made them
    std::vector<Facet> facets;   ///< part by part
};

/// Puts triangles together to flat convex polygons, so that nothing further on depends on how a surface was cut into triangles.
///
/// In each part, triangles that share an edge join into one face as long as all corners of it lie within `tolerance` (meters) of
/// one plane and face alike; a face begins with its largest triangle. Corners in the middle of a straight edge (half the
/// tolerance) vanish. Faces that are not convex are cut along the diagonals of their constrained Delaunay triangulation, of
/// which those that are not needed are taken out again (Hertel and Mehlhorn 1983).
///
/// Planes are common to all parts: a face whose corners all lie within the tolerance of the plane of a larger face, on whichever
/// side its outside is, takes that plane. It is always compared with the plane itself, so that planes do not drift along a row of
/// faces. Faces no wider than half the tolerance are left out.
///
/// Wants parts as clean_part() returns them; of others it joins points within the tolerance, and takes the rest as it comes.
/// O(n log n). The same input gives the same bytes.
[[nodiscard]] FlatFacets flat_facets(std::span<const TriangleMesh> parts, double tolerance = 1e-5);

}  // namespace seamward
