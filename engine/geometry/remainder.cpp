// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/remainder.h"

// It warns of many crossings of crossings, in debug builds: here edges cross a few others.
#define CGAL_NO_CDT_2_WARNING
#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Constrained_triangulation_face_base_2.h>
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_2_algorithms.h>
#include <CGAL/Triangulation_face_base_with_info_2.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <stdexcept>
#include <utility>

namespace seamward {

namespace {

using Quick = CGAL::Exact_predicates_inexact_constructions_kernel;
using Exact = CGAL::Exact_predicates_exact_constructions_kernel;

struct FaceInfo {
    enum class Of : std::uint8_t { unknown, remainder, rest } of = Of::unknown;
    int piece = -1;                ///< of the remainder; -1 elsewhere
    std::array<bool, 3> walked{};  ///< sides that a loop has gone along
};

template <class Kernel, class VertexInfo, class Tag>
using TriangulationOf = CGAL::Constrained_Delaunay_triangulation_2<
    Kernel,
    CGAL::Triangulation_data_structure_2<
        CGAL::Triangulation_vertex_base_with_info_2<VertexInfo, Kernel>,
        CGAL::Constrained_triangulation_face_base_2<Kernel, CGAL::Triangulation_face_base_with_info_2<FaceInfo, Kernel>>>,
    Tag>;

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

constexpr double on_edge = 1e-9;      ///< meters; crossings are rounded to doubles
constexpr double least_area = 1e-12;  ///< square meters; what is smaller is left by rounding between edges that should meet

bool lies_on(Point2 p, Point2 a, Point2 b) {
    const Point2 along = b - a;
    const double length = std::sqrt(dot(along, along));
    if (length == 0) return false;
    const double off = cross(along, p - a) / length, at = dot(along, p - a) / length;
    return std::abs(off) <= on_edge && at >= -on_edge && at <= length + on_edge;
}

Point2 ours(const Quick::Point_2& p) { return {p.x(), p.y()}; }
Point2 ours(const Exact::Point_2& p) { return {CGAL::to_double(p.x().exact()), CGAL::to_double(p.y().exact())}; }

/// The triangulation of all loops, with its faces sorted into the pieces of the remainder.
template <class Kernel, class Tag>
class Arrangement {
public:
    using Triangulation = TriangulationOf<Kernel, Point2, Tag>;
    using Face = typename Triangulation::Face_handle;
    using Vertex = typename Triangulation::Vertex_handle;

    Arrangement(const Loop& outline, std::span<const Loop> cuts) : outline_(outline), cuts_(cuts), outline_bounds_(outline) {
        insert(outline);
        for (const Loop& cut : cuts) {
            cut_bounds_.emplace_back(cut);
            insert(cut);
        }
        for (const Vertex vertex : triangulation_.finite_vertex_handles()) vertex->info() = ours(vertex->point());
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
        std::erase_if(out, [](const CutFigure& piece) { return doubled_area(piece.figure.outline) < 2 * least_area; });
        for (CutFigure& piece : out) finish(piece);
        std::sort(out.begin(), out.end(), [](const CutFigure& a, const CutFigure& b) {
            return before(a.figure.outline.front(), b.figure.outline.front());
        });
        return out;
    }

private:
    void insert(const Loop& loop) {
        std::vector<Vertex> corners;
        for (const Point2 p : loop) corners.push_back(triangulation_.insert(typename Kernel::Point_2(p.x, p.y)));
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
        const Point2 a = face->vertex(0)->info(), b = face->vertex(1)->info(), c = face->vertex(2)->info();
        return cross(b - a, c - a);
    }
    static Point2 middle(Face face) {
        const Point2 a = face->vertex(0)->info(), b = face->vertex(1)->info(), c = face->vertex(2)->info();
        return (a + b + c) * (1.0 / 3);
    }

    /// Walks along the border that begins with one side of a face, the piece on the left.
    static void add_loop(Face face, int side, CutFigure& piece) {
        Loop loop;
        const int own = face->info().piece;
        while (!face->info().walked[static_cast<std::size_t>(side)]) {
            face->info().walked[static_cast<std::size_t>(side)] = true;
            const Point2 corner = face->vertex(Triangulation::ccw(side))->info();
            if (loop.empty() || loop.back() != corner) loop.push_back(corner);
            // Turn about the end of this edge, inside of the piece, to the next border.
            const Vertex end = face->vertex(Triangulation::cw(side));
            side = Triangulation::cw(face->index(end));
            while (face->neighbor(side)->info().piece == own) {
                face = face->neighbor(side);
                side = Triangulation::cw(face->index(end));
            }
        }
        if (loop.size() > 1 && loop.front() == loop.back()) loop.pop_back();
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
    Triangulation triangulation_;
    int piece_count_ = 0;
};

}  // namespace

std::vector<CutFigure> remainder(const Loop& outline, std::span<const Loop> cuts) {
    using Plain = Arrangement<Quick, CGAL::No_constraint_intersection_requiring_constructions_tag>;
    using Crossing = Arrangement<Exact, CGAL::Exact_intersections_tag>;
    try {
        return Plain(outline, cuts).pieces();
    } catch (const Plain::Triangulation::Intersection_of_constraints_exception&) {
        // Edges cross. A crossing rounded in the course of the work would bend its edges, and corners further along them would
        // no longer lie on them.
        return Crossing(outline, cuts).pieces();
    }
}

namespace {

struct CornerInfo {
    std::uint32_t number = 0;
    bool shared = false;  ///< by several corners, where a loop touches itself or another
};

using FigureTriangulation = TriangulationOf<Quick, CornerInfo, CGAL::No_constraint_intersection_tag>;

/// Triangles over the corners of a figure. Where several corners are in one place, each triangle takes the one between whose
/// edges it lies, so that solids over the figure are closed.
class FigureTriangles {
public:
    explicit FigureTriangles(const Figure& figure) {
        insert(figure.outline);
        for (const Loop& hole : figure.holes) insert(hole);
        sort_faces();
    }

    std::vector<std::array<std::uint32_t, 3>> list() const {
        std::vector<std::array<std::uint32_t, 3>> triangles;
        for (const Face face : triangulation_.finite_face_handles()) {
            if (face->info().piece == 1) triangles.push_back({corner(face, 0), corner(face, 1), corner(face, 2)});
        }
        return triangles;
    }

private:
    using Face = FigureTriangulation::Face_handle;
    using Vertex = FigureTriangulation::Vertex_handle;

    void insert(const Loop& loop) {
        std::vector<Vertex> corners;
        for (const Point2 p : loop) {
            const std::size_t before = triangulation_.number_of_vertices();
            corners.push_back(triangulation_.insert(Quick::Point_2(p.x, p.y)));
            corners.back()->info() = {next_, triangulation_.number_of_vertices() == before};
            ++next_;
        }
        const auto first = next_ - static_cast<std::uint32_t>(loop.size());
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const std::size_t end = (i + 1) % corners.size();
            if (corners[i] == corners[end]) throw std::logic_error("an edge of a figure has no length");
            triangulation_.insert_constraint(corners[i], corners[end]);
            entered_[{corners[i], corners[end]}] = first + static_cast<std::uint32_t>(end);
        }
    }

    /// The number of loops around a face is even outside of the figure and odd inside.
    void sort_faces() {
        std::vector<Face> met{triangulation_.infinite_face()};
        met.front()->info().piece = 0;
        for (std::size_t i = 0; i < met.size(); ++i) {
            for (int side = 0; side < 3; ++side) {
                const Face beside = met[i]->neighbor(side);
                if (beside->info().piece >= 0) continue;
                beside->info().piece = (met[i]->info().piece + (met[i]->is_constrained(side) ? 1 : 0)) % 2;
                met.push_back(beside);
            }
        }
    }

    [[nodiscard]] std::uint32_t corner(Face face, int i) const {
        const Vertex vertex = face->vertex(i);
        if (!vertex->info().shared) return vertex->info().number;
        int side = FigureTriangulation::ccw(i);
        while (!face->is_constrained(side)) {
            face = face->neighbor(side);
            side = FigureTriangulation::ccw(face->index(vertex));
        }
        return entered_.at({face->vertex(FigureTriangulation::cw(face->index(vertex))), vertex});
    }

    FigureTriangulation triangulation_;
    std::map<std::pair<Vertex, Vertex>, std::uint32_t> entered_;  ///< corners by the edges that end at them
    std::uint32_t next_ = 0;
};

}  // namespace

std::vector<std::array<std::uint32_t, 3>> triangulate(const Figure& figure) try {
    return FigureTriangles(figure).list();
} catch (const FigureTriangulation::Intersection_of_constraints_exception&) {
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
    std::vector<Quick::Point_2> points;
    for (const Point2 p : loop) points.emplace_back(p.x, p.y);
    return loop.size() >= 3 && CGAL::is_simple_2(points.begin(), points.end());
}

}  // namespace seamward
