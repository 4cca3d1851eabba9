// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "geometry/convex_polygon.h"
#include "geometry/triangle_tree.h"

namespace seamward {

/// A point in the air and the radius of the ball that fits around it, in meters.
struct Stand {
    Point at;
    double clearance = 0;
};

/// The best stand within a polygon, and a radius that no stand in it exceeds.
struct Highest {
    Stand stand;
    double at_most = 0;
};

/// A way for a ball: from one point to another over `corners`, which may be none.
struct ClearWay {
    double clearance = 0;        ///< of the largest ball that the way is clear for, at most what was asked for
    Point tightest;              ///< where on the way
    std::vector<Point> corners;  ///< between its ends
};

/// Radii of balls among the triangles of a model. All of them are exact distances, cut off at `cap` meters: what lies beyond is
/// room enough.
class Clearance {
public:
    Clearance(const TriangleTree& tree, double cap) : tree_(tree), cap_(cap) {}

    [[nodiscard]] double cap() const { return cap_; }
    [[nodiscard]] double at(const Point& p) const { return tree_.nearest(p, cap_).distance; }
    [[nodiscard]] const TriangleTree& tree() const { return tree_; }

    /// How hard to look for the best stand.
    struct Search {
        double tolerance = 1e-3;  ///< a fraction of the radius that the answer may miss
        int effort = 100;         ///< pieces that are looked at, at most
        double floor = 0;         ///< meters; stands of no more do not matter: pieces without a better one are left out
        double enough = 1e300;    ///< meters; the first stand of so much will do
    };
    /// Branch and bound over the polygon. The upper radius holds in any case (or is `floor`): a distance to a triangle is a
    /// convex function, and so is any average of several, which is therefore largest at a corner of a piece of the polygon.
    [[nodiscard]] Highest highest(const ConvexPolygon& polygon, const Search& search) const;

    /// What holds the ball around a point of the air: the triangle nearest to it and one on another side, with their directions
    /// from there, as far as they are within the cap.
    struct Hold {
        std::uint32_t triangle = 0;
        Vector toward;  ///< of length 1
    };
    [[nodiscard]] std::vector<Hold> holds_of(const Point& p) const;

    /// What ball to lead, and how hard to try.
    struct Lead {
        double wanted = 0;  ///< meters; its radius
        double enough = 1;  ///< the fraction of it that will do
        int turns = 0;      ///< steps aside: up to 2^turns - 1
        double least = 0;   ///< meters; ways for a ball of no more do not matter: of these any is told
    };
    /// Leads a ball from `a` to `b`: straight, or, when less than enough gets through there, around what is in the way.
    [[nodiscard]] ClearWay way(const Point& a, const Point& b, const Lead& lead) const;

private:
    struct Piece;
    [[nodiscard]] Stand step_aside(const Point& from, const Vector& along, const Lead& lead) const;
    struct Ground;
    double bound(const Ground& ground, const Piece& piece, Stand& best) const;

    const TriangleTree& tree_;
    double cap_;
};

}  // namespace seamward
