// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/contacts.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "geometry/box_tree.h"

namespace seamward {

namespace {

constexpr double facing = -0.9998;     // cosine between normals that look at each other
constexpr double least_sine = 0.02;    // between planes that cross
constexpr double clip_margin = 1e-10;  // meters

/// The plane of a facet, its normal pointing out of the part.
Plane3 outward_plane(const FlatFacets& facets, const Facet& facet) {
    const Plane3& plane = facets.planes[facet.plane];
    return facet.flipped ? Plane3{plane.normal * -1, -plane.offset} : plane;
}

AxisBox box_of(const Facet& facet, double around) {
    AxisBox box{facet.corners[0], facet.corners[0]};
    for (const Point& p : facet.corners) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
    }
    const Vector more{around, around, around};
    return {box.low + more * -1, box.high + more};
}

bool meet(const AxisBox& a, const AxisBox& b) {
    return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y && a.low.z <= b.high.z &&
           b.low.z <= a.high.z;
}

/// What lies within both of two polygons of about one plane, moved onto it; counterclockwise around its normal, as `window` is.
ConvexPolygon common_piece(const ConvexPolygon& polygon, const ConvexPolygon& window, const Plane3& plane) {
    ConvexPolygon rest, inside, outside;
    for (const Point& p : polygon) rest.push_back(p + plane.normal * -plane.height_of(p));
    if (dot(doubled_area(rest), plane.normal) < 0) std::reverse(rest.begin(), rest.end());
    for (std::size_t i = 0; i < window.size() && !rest.empty(); ++i) {
        Vector inward = cross(plane.normal, window[(i + 1) % window.size()] - window[i]);
        const double size = length(inward);
        if (size < 1e-9) continue;
        inward = inward * (1 / size);
        const Point& on = window[i];
        split(rest, {inward, dot(inward, {on.x, on.y, on.z})}, clip_margin, inside, outside);
        rest.swap(inside);
    }
    return rest;
}

/// About how wide a polygon is at its narrowest, in meters.
double width_of(const ConvexPolygon& polygon) {
    double longest = 0;
    for (const Point& p : polygon) {
        for (const Point& q : polygon) longest = std::max(longest, distance(p, q));
    }
    return longest > 0 ? length(doubled_area(polygon)) / (2 * longest) : 0;
}

/// Where a facet goes from the outside of a plane to its inside: two points, and whether both are at an edge that lies in it.
struct Crossing {
    std::array<Point, 2> ends;
    bool at_edge = false;
};

/// Corners within the tolerance of the plane count as outside, so that what only touches it from there does not cross it.
bool cross_plane(const Facet& facet, const Plane3& plane, double tolerance, Crossing& crossing) {
    std::size_t found = 0, touching = 0;
    const std::size_t n = facet.corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point &p = facet.corners[i], &q = facet.corners[(i + 1) % n];
        const double a = plane.height_of(p), b = plane.height_of(q);
        if ((a < -tolerance) == (b < -tolerance)) continue;
        const bool p_outside = a >= -tolerance;
        const double out = std::max(0.0, p_outside ? a : b), in = p_outside ? b : a;
        const Point &from = p_outside ? p : q, &to = p_outside ? q : p;
        if (out <= tolerance) ++touching;
        if (found < 2) crossing.ends.at(found) = from + (to - from) * (out / (out - in));
        ++found;
    }
    crossing.at_edge = touching == 2;
    return found == 2;
}

/// The contacts of one facet with others, and on which planes both parts go on side by side.
struct Met {
    std::vector<Contact> contacts;
    struct Level {
        std::uint32_t one, other, plane;
    };
    std::vector<Level> level;
    struct AtEdge {
        std::size_t contact;        ///< a line along an edge of a part ...
        std::uint32_t part, plane;  ///< ... that lies in a plane
    };
    std::vector<AtEdge> at_edge;
};

class Meeting {
public:
    Meeting(const FlatFacets& facets, double tolerance, Met& met) : facets_(facets), tolerance_(tolerance), met_(met) {}

    void meet(const Facet& a, const Facet& b) {
        const Facet& first = a.part < b.part ? a : b;
        const Facet& second = a.part < b.part ? b : a;
        const Plane3 one = outward_plane(facets_, first), other = outward_plane(facets_, second);
        const double cosine = dot(one.normal, other.normal);
        if (cosine < facing) {
            lie(first, second, one, other);
        } else if (a.plane == b.plane) {
            met_.level.push_back({first.part, second.part, a.plane});
        } else if (cosine < -facing) {
            run_in(first, second, one, other, cosine);
        }
    }

private:
    void lie(const Facet& first, const Facet& second, const Plane3& one, const Plane3& other) {
        ConvexPolygon piece = common_piece(second.corners, first.corners, one);
        if (piece.size() < 3 || width_of(piece) < 2 * tolerance_) return;
        if (first.plane != second.plane) {
            const Reach off = reach(piece, other);
            if (off.low < -tolerance_ || off.high > tolerance_) return;
        }
        met_.contacts.push_back({{first.part, second.part}, std::move(piece), one.normal, 1});
    }

    void run_in(const Facet& first, const Facet& second, const Plane3& one, const Plane3& other, double cosine) {
        Vector along = cross(one.normal, other.normal);
        const double sine = length(along);
        Crossing a, b;
        if (sine < least_sine || !cross_plane(first, other, tolerance_, a) || !cross_plane(second, one, tolerance_, b)) return;
        along = along * (1 / sine);
        const Point& origin = a.ends[0];
        const double end = dot(a.ends[1] - origin, along);
        double low = dot(b.ends[0] - origin, along), high = dot(b.ends[1] - origin, along);
        if (low > high) std::swap(low, high);
        low = std::max(low, std::min(0.0, end));
        high = std::min(high, std::max(0.0, end));
        if (high - low <= tolerance_) return;
        const Vector away = one.normal + other.normal;
        const double reach = std::sqrt((1 + cosine) / 2);
        if (a.at_edge) met_.at_edge.push_back({met_.contacts.size(), first.part, second.plane});
        if (b.at_edge) met_.at_edge.push_back({met_.contacts.size(), second.part, first.plane});
        met_.contacts.push_back(
            {{first.part, second.part}, {origin + along * low, origin + along * high}, away * (1 / length(away)), reach});
    }

    const FlatFacets& facets_;
    double tolerance_;
    Met& met_;
};

}  // namespace

std::vector<Contact> find_contacts(const FlatFacets& facets, double tolerance, const RunContext& run) {
    run.stage("looking where parts touch");
    std::vector<AxisBox> boxes;
    boxes.reserve(facets.facets.size());
    for (const Facet& facet : facets.facets) boxes.push_back(box_of(facet, tolerance));
    const BoxTree tree(boxes);
    std::vector<Met> met(facets.facets.size());
    tbb::parallel_for(std::size_t{0}, facets.facets.size(), [&](std::size_t i) {
        if (i % 256 == 0) run.check();
        Meeting meeting(facets, tolerance, met[i]);
        tree.walk([&](const AxisBox& box) { return meet(box, boxes[i]); },
                  [&](std::uint32_t j) {
                      if (j > i && facets.facets[j].part != facets.facets[i].part && meet(boxes[j], boxes[i]))
                          meeting.meet(facets.facets[i], facets.facets[j]);
                  });
    });
    // Where two parts that overlap have faces in one plane, the edges of both lie there: two lines where people see one.
    std::set<std::tuple<std::uint32_t, std::uint32_t, std::uint32_t>> level;
    for (const Met& m : met) {
        for (const Met::Level& l : m.level) level.emplace(l.one, l.other, l.plane);
    }
    std::vector<Contact> contacts;
    for (Met& m : met) {
        for (const Met::AtEdge& edge : m.at_edge) {
            const auto& [one, other] = m.contacts[edge.contact].parts;
            if (edge.part == other && level.contains({one, other, edge.plane})) m.contacts[edge.contact].corners.clear();
        }
        for (Contact& contact : m.contacts) {
            if (!contact.corners.empty()) contacts.push_back(std::move(contact));
        }
    }
    std::stable_sort(contacts.begin(), contacts.end(), [](const Contact& a, const Contact& b) { return a.parts < b.parts; });
    return contacts;
}

}  // namespace seamward
