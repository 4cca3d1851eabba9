// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/straight_skeleton.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/create_straight_skeleton_2.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace seamward {

std::vector<SkeletonFace> straight_skeleton(const Loop& outline) {
    using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
    std::vector<Kernel::Point_2> points;
    for (const Point2 p : outline) points.emplace_back(p.x, p.y);
    const auto skeleton = CGAL::create_interior_straight_skeleton_2(points.begin(), points.end(), Kernel());
    if (!skeleton) throw std::logic_error("the outline has no straight skeleton");

    std::vector<SkeletonFace> faces(outline.size());
    for (auto face = skeleton->faces_begin(); face != skeleton->faces_end(); ++face) {
        // The border edge of the outline inside of the face, found by its corners, which are the outline's own.
        auto edge = face->halfedge();
        for (std::size_t turn = 0; !(edge->vertex()->is_contour() && edge->opposite()->vertex()->is_contour()); ++turn) {
            edge = edge->next();
            if (turn > 10 * outline.size()) throw std::logic_error("a face of the skeleton has no edge of the outline");
        }
        const Point2 begin{edge->opposite()->vertex()->point().x(), edge->opposite()->vertex()->point().y()};
        const auto corner = std::find(outline.begin(), outline.end(), begin);
        if (corner == outline.end()) throw std::logic_error("a face of the skeleton begins at no corner of the outline");
        SkeletonFace& out = faces[static_cast<std::size_t>(corner - outline.begin())];
        out.outline.push_back(begin);
        out.distances.push_back(0);
        for (auto around = edge; around != edge->prev(); around = around->next()) {
            out.outline.push_back({around->vertex()->point().x(), around->vertex()->point().y()});
            out.distances.push_back(around->vertex()->time());
        }
    }
    for (const SkeletonFace& face : faces) {
        if (face.outline.size() < 3) throw std::logic_error("an edge of the outline has no face in the skeleton");
    }
    return faces;
}

}  // namespace seamward
