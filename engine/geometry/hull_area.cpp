// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/hull_area.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/ch_graham_andrew.h>

#include <cmath>
#include <iterator>
#include <vector>

namespace seamward {

double hull_area(std::span<const Point> points, const Vector& normal) {
    using Plane = CGAL::Exact_predicates_inexact_constructions_kernel;
    Vector u = cross(normal, std::abs(normal.x) < 0.7 * length(normal) ? Vector{1, 0, 0} : Vector{0, 1, 0});
    u = u * (1 / length(u));
    const Vector v = cross(normal, u) * (1 / length(normal));
    std::vector<Plane::Point_2> flat, hull;
    for (const Point& p : points) flat.emplace_back(dot(u, p - points[0]), dot(v, p - points[0]));
    CGAL::ch_graham_andrew(flat.begin(), flat.end(), std::back_inserter(hull));
    double doubled = 0;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Plane::Point_2 &a = hull[i], &b = hull[(i + 1) % hull.size()];
        doubled += a.x() * b.y() - a.y() * b.x();
    }
    return doubled / 2;
}

}  // namespace seamward
