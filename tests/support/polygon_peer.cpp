// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/polygon_peer.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/Polygon_set_2.h>
#include <CGAL/Polygon_with_holes_2.h>

#include <algorithm>
#include <limits>
#include <map>
#include <utility>

namespace seamward::test {

namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Number = Kernel::FT;
using Polygon = CGAL::Polygon_2<Kernel>;
using PolygonSet = CGAL::Polygon_set_2<Kernel>;

Polygon polygon_of(const Loop& loop) {
    Polygon polygon;
    for (const Point2 p : loop) {
        const Kernel::Point_2 point(p.x, p.y);
        if (polygon.is_empty() || (polygon[polygon.size() - 1] != point && polygon[0] != point)) polygon.push_back(point);
    }
    return polygon;
}

PolygonSet set_of(const Loop& loop) {
    Polygon polygon = polygon_of(loop);
    if (polygon.size() < 3 || polygon.area() == 0) return {};
    if (polygon.is_clockwise_oriented()) polygon.reverse_orientation();
    return PolygonSet(polygon);
}

/// A loop that passes some places twice, as loops that do not.
std::vector<Polygon> simple_loops(const Loop& loop) {
    std::vector<Polygon> done;
    std::vector<Kernel::Point_2> open;
    for (const Point2 p : loop) {
        const Kernel::Point_2 point(p.x, p.y);
        const auto before = std::find(open.begin(), open.end(), point);
        if (before != open.end()) {
            done.emplace_back(before, open.end());
            open.erase(before, open.end());
        }
        open.push_back(point);
    }
    done.emplace_back(open.begin(), open.end());
    return done;
}

PolygonSet left_of(const Loop& outline, std::span<const Loop> cuts) {
    PolygonSet left = set_of(outline);
    for (const Loop& cut : cuts) left.difference(set_of(cut));
    return left;
}

/// Of the loop that a circulator goes round.
template <class Circulator>
Number area_round(Circulator first) {
    Number doubled = 0;
    Circulator at = first;
    do {
        const auto &a = at->source()->point(), &b = at->target()->point();
        doubled += a.x() * b.y() - a.y() * b.x();
    } while (++at != first);
    return doubled / 2;
}

/// The faces of the arrangement that a set covers, each with its exact area.
template <class Visit>
void for_each_piece(const PolygonSet& set, Visit&& visit) {
    const auto& arrangement = set.arrangement();
    for (auto face = arrangement.faces_begin(); face != arrangement.faces_end(); ++face) {
        if (!face->contained()) continue;
        Number area = 0;
        std::size_t holes = 0;
        for (auto ccb = face->outer_ccbs_begin(); ccb != face->outer_ccbs_end(); ++ccb) area += area_round(*ccb);
        for (auto ccb = face->inner_ccbs_begin(); ccb != face->inner_ccbs_end(); ++ccb, ++holes) area += area_round(*ccb);
        visit(area, holes);
    }
}

Number doubled_area_of(const std::array<Point2, 3>& corners) {
    const auto& [a, b, c] = corners;
    return (Number(b.x) - Number(a.x)) * (Number(c.y) - Number(a.y)) - (Number(b.y) - Number(a.y)) * (Number(c.x) - Number(a.x));
}

}  // namespace

std::vector<ExactPiece> exact_remainder(const Loop& outline, std::span<const Loop> cuts) {
    std::vector<ExactPiece> pieces;
    for_each_piece(left_of(outline, cuts), [&](const Number& area, std::size_t holes) {
        pieces.push_back({CGAL::to_double(area), holes});
    });
    std::sort(pieces.begin(), pieces.end(), [](const ExactPiece& a, const ExactPiece& b) { return a.area < b.area; });
    return pieces;
}

double area_of_difference(std::span<const Figure> pieces, const Loop& outline, std::span<const Loop> cuts) {
    PolygonSet ours;
    for (const Figure& piece : pieces) {
        PolygonSet set, holes;
        std::vector<Polygon> loops = simple_loops(piece.outline);
        for (const Loop& hole : piece.holes) {
            for (Polygon& loop : simple_loops(hole)) loops.push_back(std::move(loop));
        }
        for (Polygon& loop : loops) {
            if (loop.size() < 3 || !loop.is_simple()) return std::numeric_limits<double>::infinity();
            const bool outward = loop.is_counterclockwise_oriented();
            if (!outward) loop.reverse_orientation();
            (outward ? set : holes).join(loop);
        }
        set.difference(holes);
        ours.join(set);
    }
    ours.symmetric_difference(left_of(outline, cuts));
    Number total = 0;
    for_each_piece(ours, [&](const Number& area, std::size_t) { total += area; });
    return CGAL::to_double(total);
}

std::string fault_of_tiling(const Figure& figure, std::span<const std::array<std::uint32_t, 3>> triangles) {
    std::vector<Point2> corners;
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> open;  // edges of the figure, then of triangles, until met
    Number wanted = 0, covered = 0;
    const auto add = [&](const Loop& loop) {
        const auto first = static_cast<std::uint32_t>(corners.size()), size = static_cast<std::uint32_t>(loop.size());
        for (std::uint32_t i = 0; i < size; ++i) {
            const Point2 a = loop[i], b = loop[(i + 1) % size];
            wanted += Number(a.x) * Number(b.y) - Number(a.y) * Number(b.x);
            open[{first + (i + 1) % size, first + i}] = 1;  // a triangle meets it from inside
        }
        corners.insert(corners.end(), loop.begin(), loop.end());
    };
    add(figure.outline);
    for (const Loop& hole : figure.holes) add(hole);
    for (const auto& triangle : triangles) {
        const auto& [a, b, c] = triangle;
        if (std::max({a, b, c}) >= corners.size()) return "a corner has no point";
        const Number doubled = doubled_area_of({corners[a], corners[b], corners[c]});
        if (doubled <= 0) return "a triangle is flat or runs clockwise";
        covered += doubled;
        for (const auto& edge : {std::pair{a, b}, std::pair{b, c}, std::pair{c, a}}) {
            const auto other = open.find({edge.second, edge.first});
            if (other != open.end())
                open.erase(other);
            else if (!open.try_emplace(edge, 1).second)
                return "an edge is used twice";
        }
    }
    if (!open.empty()) return std::to_string(open.size()) + " edges have nothing beside them";
    return covered == wanted ? "" : "the triangles have another area";
}

}  // namespace seamward::test
