// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/remainder.h"

#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Constrained_triangulation_face_base_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_2_algorithms.h>
#include <CGAL/Triangulation_face_base_with_info_2.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <stdexcept>

namespace seamward {

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using CgalPoint = Kernel::Point_2;

struct FaceInfo {
    enum class Of : std::uint8_t { unknown, remainder, rest } of = Of::unknown;
    int piece = -1;                ///< of the remainder; -1 elsewhere
    std::array<bool, 3> walked{};  ///< sides that a loop has gone along
};

using VertexBase = CGAL::Triangulation_vertex_base_with_info_2<std::uint32_t, Kernel>;
using FaceBase = CGAL::Constrained_triangulation_face_base_2<Kernel, CGAL::Triangulation_face_base_with_info_2<FaceInfo, Kernel>>;
using Structure = CGAL::Triangulation_data_structure_2<VertexBase, FaceBase>;
using CrossingTriangulation = CGAL::Constrained_Delaunay_triangulation_2<Kernel, Structure, CGAL::Exact_predicates_tag>;
using Triangulation = CGAL::Constrained_Delaunay_triangulation_2<Kernel, Structure, CGAL::No_constraint_intersection_tag>;
using Face = CrossingTriangulation::Face_handle;
using Vertex = CrossingTriangulation::Vertex_handle;

struct Bounds {
    Point2 least{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    Point2 most{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};

    explicit Bounds(const Loop& loop) {
        for (const Point2 p : loop) {
            least = {std::min(least.x, p.x), std::min(least.y, p.y)};
            most = {std::max(most.x, p.x), std::max(most.y, p.y)};
        }
    }
    [[nodiscard]] bool hold(Point2 p, double margin) const {
        return p.x >= least.x - margin && p.x <= most.x + margin && p.y >= least.y - margin && p.y <= most.y + margin;
    }
};

constexpr double on_edge = 1e-9;  ///< meters; crossings are rounded to doubles

bool lies_on(Point2 p, Point2 a, Point2 b) {
    const Point2 along = b - a;
    const double length = std::sqrt(dot(along, along));
    if (length == 0) return false;
    const double off = cross(along, p - a) / length, at = dot(along, p - a) / length;
    return std::abs(off) <= on_edge && at >= -on_edge && at <= length + on_edge;
}

Point2 ours(const CgalPoint& p) { return {p.x(), p.y()}; }

/// The triangulation of all loops, with its faces sorted into the pieces of the remainder.
class Arrangement {
public:
    Arrangement(const Loop& outline, std::span<const Loop> cuts) : outline_(outline), cuts_(cuts), outline_bounds_(outline) {
        insert(outline);
        for (const Loop& cut : cuts) {
            cut_bounds_.emplace_back(cut);
            insert(cut);
        }
        sort_faces();
    }

    std::vector<CutFigure> pieces() {
        std::vector<CutFigure> out(static_cast<std::size_t>(piece_count_));
        for (const Face face : triangulation_.finite_face_handles()) {
            if (face->info().piece < 0) continue;
            for (int side = 0; side < 3; ++side) {
                const bool border = face->neighbor(side)->info().piece != face->info().piece;
                if (border && !face->info().walked[static_cast<std::size_t>(side)])
                    add_loop(face, side, out[static_cast<std::size_t>(face->info().piece)]);
            }
        }
        for (CutFigure& piece : out) finish(piece);
        std::sort(out.begin(), out.end(), [](const CutFigure& a, const CutFigure& b) {
            return before(a.figure.outline.front(), b.figure.outline.front());
        });
        return out;
    }

private:
    void insert(const Loop& loop) {
        std::vector<Vertex> corners;
        for (const Point2 p : loop) corners.push_back(triangulation_.insert(CgalPoint(p.x, p.y)));
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const Vertex next = corners[(i + 1) % corners.size()];
            if (corners[i] != next) triangulation_.insert_constraint(corners[i], next);
        }
    }

    [[nodiscard]] bool remains(Point2 p) const {
        if (!outline_bounds_.hold(p, 0) || !is_inside(outline_, p)) return false;
        for (std::size_t i = 0; i < cuts_.size(); ++i) {
            if (cut_bounds_[i].hold(p, 0) && is_inside(cuts_[i], p)) return false;
        }
        return true;
    }

    void sort_faces() {
        using Of = FaceInfo::Of;
        for (const Face face : triangulation_.all_face_handles())
            face->info().of = triangulation_.is_infinite(face) ? Of::rest : Of::unknown;
        for (const Face start : triangulation_.finite_face_handles()) {
            if (start->info().of != Of::unknown) continue;
            // No constraint runs through a region: one point tells for all of it, best one in its largest triangle.
            const auto region = reach(
                start,
                [](Face face, int side) { return !face->is_constrained(side) && face->neighbor(side)->info().of == Of::unknown; },
                [](Face face) { face->info().of = Of::rest; });
            const Face widest =
                *std::max_element(region.begin(), region.end(), [](Face a, Face b) { return doubled(a) < doubled(b); });
            if (!remains(middle(widest))) continue;
            for (const Face face : region) face->info().of = Of::remainder;
        }
        for (const Face start : triangulation_.finite_face_handles()) {
            if (start->info().of != Of::remainder || start->info().piece >= 0) continue;
            const int piece = piece_count_++;
            (void)reach(
                start,
                [](Face face, int side) {
                    const FaceInfo& next = face->neighbor(side)->info();
                    return next.of == Of::remainder && next.piece < 0;
                },
                [piece](Face face) { face->info().piece = piece; });
        }
    }

    /// All faces that can be reached from `start` across sides where `goes` says so; each is marked when it is met.
    template <class Goes, class Mark>
    static std::vector<Face> reach(Face start, Goes goes, Mark mark) {
        std::vector<Face> met{start};
        mark(start);
        for (std::size_t i = 0; i < met.size(); ++i) {
            for (int side = 0; side < 3; ++side) {
                if (!goes(met[i], side)) continue;
                met.push_back(met[i]->neighbor(side));
                mark(met.back());
            }
        }
        return met;
    }

    static double doubled(Face face) {
        const Point2 a = ours(face->vertex(0)->point()), b = ours(face->vertex(1)->point()), c = ours(face->vertex(2)->point());
        return cross(b - a, c - a);
    }
    static Point2 middle(Face face) {
        const Point2 a = ours(face->vertex(0)->point()), b = ours(face->vertex(1)->point()), c = ours(face->vertex(2)->point());
        return (a + b + c) * (1.0 / 3);
    }

    /// Walks along the border that begins with one side of a face, the piece on the left.
    static void add_loop(Face face, int side, CutFigure& piece) {
        Loop loop;
        const int own = face->info().piece;
        while (!face->info().walked[static_cast<std::size_t>(side)]) {
            face->info().walked[static_cast<std::size_t>(side)] = true;
            loop.push_back(ours(face->vertex(CrossingTriangulation::ccw(side))->point()));
            // Turn about the end of this edge, inside of the piece, to the next border.
            const Vertex end = face->vertex(CrossingTriangulation::cw(side));
            side = CrossingTriangulation::cw(face->index(end));
            while (face->neighbor(side)->info().piece == own) {
                face = face->neighbor(side);
                side = CrossingTriangulation::cw(face->index(end));
            }
        }
        if (doubled_area(loop) > 0)
            piece.figure.outline = std::move(loop);
        else
            piece.figure.holes.push_back(std::move(loop));
    }

    static bool before(Point2 p, Point2 q) { return p.x != q.x ? p.x < q.x : p.y < q.y; }

    void finish(CutFigure& piece) const {
        begin_with_least(piece.figure.outline);
        for (Loop& hole : piece.figure.holes) begin_with_least(hole);
        std::sort(piece.figure.holes.begin(), piece.figure.holes.end(),
                  [](const Loop& a, const Loop& b) { return before(a.front(), b.front()); });
        const auto name_edges = [&](const Loop& loop) {
            for (std::size_t i = 0; i < loop.size(); ++i)
                piece.cut_of_edge.push_back(cut_of((loop[i] + loop[(i + 1) % loop.size()]) * 0.5));
        };
        name_edges(piece.figure.outline);
        for (const Loop& hole : piece.figure.holes) name_edges(hole);
    }

    static void begin_with_least(Loop& loop) {
        std::rotate(loop.begin(), std::min_element(loop.begin(), loop.end(), before), loop.end());
    }

    [[nodiscard]] std::int32_t cut_of(Point2 p) const {
        for (std::size_t i = 0; i < cuts_.size(); ++i) {
            if (cut_bounds_[i].hold(p, on_edge) && edge_at(cuts_[i], p)) return static_cast<std::int32_t>(i);
        }
        return -1 - static_cast<std::int32_t>(edge_at(outline_, p).value_or(0));
    }

    /// The edge of a loop that a point lies on.
    static std::optional<std::size_t> edge_at(const Loop& loop, Point2 p) {
        for (std::size_t k = 0; k < loop.size(); ++k) {
            if (lies_on(p, loop[k], loop[(k + 1) % loop.size()])) return k;
        }
        return std::nullopt;
    }

    const Loop& outline_;
    std::span<const Loop> cuts_;
    Bounds outline_bounds_;
    std::vector<Bounds> cut_bounds_;
    CrossingTriangulation triangulation_;
    int piece_count_ = 0;
};

}  // namespace

std::vector<CutFigure> remainder(const Loop& outline, std::span<const Loop> cuts) { return Arrangement(outline, cuts).pieces(); }

std::vector<std::array<std::uint32_t, 3>> triangulate(const Figure& figure) try {
    Triangulation triangulation;
    std::uint32_t next = 0;
    const auto insert = [&](const Loop& loop) {
        std::vector<Triangulation::Vertex_handle> corners;
        for (const Point2 p : loop) {
            corners.push_back(triangulation.insert(CgalPoint(p.x, p.y)));
            corners.back()->info() = next++;
        }
        for (std::size_t i = 0; i < corners.size(); ++i)
            triangulation.insert_constraint(corners[i], corners[(i + 1) % corners.size()]);
    };
    insert(figure.outline);
    for (const Loop& hole : figure.holes) insert(hole);
    if (triangulation.number_of_vertices() != next) throw std::logic_error("a figure has two corners in one place");

    // The number of loops around a face is even outside of the figure and odd inside.
    std::vector<Triangulation::Face_handle> met{triangulation.infinite_face()};
    met.front()->info().piece = 0;
    for (std::size_t i = 0; i < met.size(); ++i) {
        for (int side = 0; side < 3; ++side) {
            const auto beside = met[i]->neighbor(side);
            if (beside->info().piece >= 0) continue;
            beside->info().piece = (met[i]->info().piece + (met[i]->is_constrained(side) ? 1 : 0)) % 2;
            met.push_back(beside);
        }
    }
    std::vector<std::array<std::uint32_t, 3>> triangles;
    for (const auto face : triangulation.finite_face_handles()) {
        if (face->info().piece == 1)
            triangles.push_back({face->vertex(0)->info(), face->vertex(1)->info(), face->vertex(2)->info()});
    }
    return triangles;
} catch (const Triangulation::Intersection_of_constraints_exception&) {
    throw std::logic_error("the edges of a figure cross");
}

bool is_inside(const Loop& loop, Point2 at) {
    bool inside = false;
    for (std::size_t i = 0, j = loop.size() - 1; i < loop.size(); j = i++) {
        const Point2 a = loop[i], b = loop[j];
        if ((a.y > at.y) != (b.y > at.y) && at.x < (b.x - a.x) * (at.y - a.y) / (b.y - a.y) + a.x) inside = !inside;
    }
    return inside;
}

bool is_simple(const Loop& loop) {
    std::vector<CgalPoint> points;
    for (const Point2 p : loop) points.emplace_back(p.x, p.y);
    return loop.size() >= 3 && CGAL::is_simple_2(points.begin(), points.end());
}

}  // namespace seamward
