// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/hidden_lines.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

#include "geometry/edge_uses.h"
#include "geometry/view_faces.h"

namespace seamward {

namespace {

constexpr double sharp = 0.906;          ///< cosine of 25 degrees
constexpr double flat_turn = 0.9995;     ///< cosine of 2 degrees: faces that look the same way
constexpr double flush = 4e-3;           ///< meters: steps between faces that are no lines
constexpr double step = 0.05;            ///< meters: what lies so much farther back makes an outline
constexpr double deepest_screen = 0.15;  ///< meters: what is deeper is drawn line by line, whatever the number of lines
constexpr double seen_from_side = 1e-6;  ///< meters on the paper: what is no wider is seen from the side, and folds there
constexpr double sample_length = 0.5;    ///< meters of a line that are judged by their middle

using Edge = std::array<ViewPoint, 2>;

/// The points of a mesh in a view, equal ones made one.
struct WeldedView {
    std::vector<ViewPoint> points;
    std::vector<Corners> triangles;
};

WeldedView welded_view(const TriangleMesh& mesh, const Frame& view) {
    std::vector<std::uint32_t> order(mesh.points.size());
    std::iota(order.begin(), order.end(), 0U);
    const auto key = [&](std::uint32_t i) {
        const Point& p = mesh.points[i];
        return std::tuple(p.x, p.y, p.z);
    };
    std::sort(order.begin(), order.end(), [&](std::uint32_t i, std::uint32_t j) { return key(i) < key(j); });
    WeldedView welded;
    std::vector<std::uint32_t> place(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (i == 0 || key(order[i]) != key(order[i - 1])) welded.points.push_back(in_view(view, mesh.points[order[i]]));
        place[order[i]] = static_cast<std::uint32_t>(welded.points.size() - 1);
    }
    welded.triangles.reserve(mesh.triangles.size());
    for (const auto& [a, b, c] : mesh.triangles) welded.triangles.push_back({place[a], place[b], place[c]});
    return welded;
}

/// The convex hull of points on the paper, counterclockwise (Andrew 1979).
std::vector<Point2> hull_of(const std::vector<ViewPoint>& points) {
    std::vector<Point2> sorted;
    for (const ViewPoint& p : points) sorted.push_back({p.x, p.y});
    std::sort(sorted.begin(), sorted.end(), [](Point2 a, Point2 b) { return std::tie(a.x, a.y) < std::tie(b.x, b.y); });
    std::vector<Point2> hull;
    const auto add = [&](Point2 p, std::size_t keep) {
        while (hull.size() > keep && cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= 1e-12) hull.pop_back();
        hull.push_back(p);
    };
    for (const Point2 p : sorted) add(p, 1);
    const std::size_t lower = hull.size();
    for (std::size_t i = sorted.size(); i-- > 1;) add(sorted[i - 1], lower);
    if (hull.size() > 1) hull.pop_back();
    return hull;
}

double size_of(Point2 v) { return std::hypot(v.x, v.y); }

}  // namespace

/// Gathers the edges and the faces of solids.
class LineView::Maker {
public:
    explicit Maker(LineView& to) : view_(to.view_), settings_(to.settings_), edges_(to.edges_), faces_(*to.faces_) {}

    void add(const ViewedSolid& solid) {
        const WeldedView mesh = welded_view(*solid.mesh, view_);
        std::vector<Vector> normals;
        normals.reserve(mesh.triangles.size());
        for (const auto& [a, b, c] : mesh.triangles) {
            const Vector n = cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
            const double size = length(n);
            normals.push_back(size > 0 ? n * (1 / size) : Vector{0, 0, 0});
        }
        const std::size_t before = edges_.size();
        add_edges(mesh, normals, solid.closed);
        double drawn = 0;
        for (std::size_t i = before; i < edges_.size(); ++i)
            drawn += size_of({edges_[i][1].x - edges_[i][0].x, edges_[i][1].y - edges_[i][0].y});
        const std::vector<Point2> hull = hull_of(mesh.points);
        if (hull.size() > 2 && drawn * settings_.finest > doubled_area(hull) / 2) {
            const auto [back, front] = std::minmax_element(mesh.points.begin(), mesh.points.end(),
                                                           [](const ViewPoint& a, const ViewPoint& b) { return a.z < b.z; });
            if (front->z - back->z <= deepest_screen) {
                edges_.resize(before);
                add_hull(hull, front->z, solid.look);
                return;
            }
        }
        for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
            if (solid.closed && normals[i].z <= 0) continue;
            const auto& [a, b, c] = mesh.triangles[i];
            faces_.add(mesh.points[a], mesh.points[b], mesh.points[c], solid.look);
        }
    }

private:
    void add_edges(const WeldedView& mesh, const std::vector<Vector>& normals, bool closed) {
        const std::vector<EdgeUse> uses = edge_uses(mesh.points.size(), mesh.triangles);
        for_each_edge(std::span(uses), [&](std::span<const EdgeUse> edge) {
            const ViewPoint& a = mesh.points[edge.front().low];
            const ViewPoint& b = mesh.points[edge.front().high];
            if (a.z >= settings_.below && b.z >= settings_.below) return;
            if (a.x == b.x && a.y == b.y) return;
            if (closed && std::all_of(edge.begin(), edge.end(), [&](const EdgeUse& use) { return normals[use.triangle].z <= 0; }))
                return;
            if (edge.size() == 2 && is_smooth(mesh, normals, edge[0], edge[1])) return;
            edges_.push_back({a, b});
        });
    }

    /// Whether two triangles go on in each other: neither sharp nor folded over on the paper.
    static bool is_smooth(const WeldedView& mesh, const std::vector<Vector>& normals, const EdgeUse& one, const EdgeUse& other) {
        const double turn = dot(normals[one.triangle], normals[other.triangle]);
        if ((one.forward != other.forward ? turn : -turn) < sharp) return false;
        const ViewPoint& a = mesh.points[one.low];
        const ViewPoint& b = mesh.points[one.high];
        const auto side = [&](const EdgeUse& use) {
            for (const std::uint32_t corner : mesh.triangles[use.triangle]) {
                if (corner == use.low || corner == use.high) continue;
                return cross(Point2{b.x - a.x, b.y - a.y}, Point2{mesh.points[corner].x - a.x, mesh.points[corner].y - a.y});
            }
            return 0.0;
        };
        const double least = seen_from_side * size_of({b.x - a.x, b.y - a.y});
        return (side(one) > least && side(other) < -least) || (side(one) < -least && side(other) > least);
    }

    /// A screen too fine to be drawn, as its outline at its front.
    void add_hull(const std::vector<Point2>& hull, double front, std::uint32_t look) {
        const auto at = [&](std::size_t i) { return ViewPoint{hull[i].x, hull[i].y, front}; };
        for (std::size_t i = 0; i < hull.size(); ++i) edges_.push_back({at(i), at(i + 1 < hull.size() ? i + 1 : 0)});
        for (std::size_t i = 2; i < hull.size(); ++i) faces_.add(at(0), at(i - 1), at(i), look);
    }

    const Frame& view_;
    const ViewSettings& settings_;
    std::vector<Edge>& edges_;
    ViewFaces& faces_;
};

namespace {

/// Tells what seen edges part.
class LineJudge {
public:
    LineJudge(const ViewFaces& faces, double finest) : faces_(faces), finest_(finest) {}

    /// The share of an edge from one place to another, which is seen, in pieces by what lies beside it.
    void add_lines(const Edge& edge, double from, double to, std::vector<ViewLine>& lines) const {
        const Point2 a{edge[0].x, edge[0].y}, along{edge[1].x - edge[0].x, edge[1].y - edge[0].y};
        const double run = size_of(along);
        if (!(run > 0)) return;
        const auto pieces = std::max(1, static_cast<int>(std::ceil((to - from) * run / sample_length)));
        const double share = (to - from) / pieces;
        bool going_on = false;
        for (int i = 0; i < pieces; ++i) {
            const double begin = from + share * i, end = i + 1 < pieces ? begin + share : to;
            ViewLineKind kind{};
            if (!kind_at(a + along * ((begin + end) / 2), along * (1 / run), kind)) {
                going_on = false;
                continue;
            }
            if (going_on && lines.back().kind == kind)
                lines.back().to = a + along * end;
            else
                lines.push_back({a + along * begin, a + along * end, kind});
            going_on = true;
        }
    }

private:
    /// What a line parts at a point; false: nothing.
    bool kind_at(Point2 p, Point2 along, ViewLineKind& kind) const {
        const Point2 aside = Point2{-along.y, along.x} * (finest_ / 2);
        const ViewFace* left = faces_.seen_at(p + aside);
        const ViewFace* right = faces_.seen_at(p - aside);
        if (left == nullptr && right == nullptr) return false;
        kind = ViewLineKind::profile;
        if (left == nullptr || right == nullptr) return true;
        kind = ViewLineKind::outline;
        // Both as they would go on at the line; a steep one is not followed farther than it reaches.
        const auto height = [&](const ViewFace& face) {
            return std::clamp(face.height_at(p), face.least_height, face.most_height);
        };
        const double back = std::abs(height(*left) - height(*right));
        if (back > step) return true;
        kind = ViewLineKind::surface;
        return left->look != right->look || back > flush || turn_between(*left, *right) < flat_turn;
    }

    static double turn_between(const ViewFace& one, const ViewFace& other) {
        const Vector a{-one.height[0], -one.height[1], 1}, b{-other.height[0], -other.height[1], 1};
        return dot(a, b) / (length(a) * length(b));
    }

    const ViewFaces& faces_;
    double finest_;
};

}  // namespace

LineView::LineView(std::span<const ViewedSolid> solids, const Frame& view, const ViewSettings& settings)
    : view_(view), settings_(settings), faces_(std::make_unique<ViewFaces>()) {
    Maker maker(*this);
    for (const ViewedSolid& solid : solids) maker.add(solid);
    faces_->finish();
}

LineView::~LineView() = default;

std::vector<ViewLine> LineView::lines() const {
    const LineJudge judge(*faces_, settings_.finest);
    std::vector<ViewLine> lines;
    for (const Edge& edge : edges_) {
        for (const auto& [from, to] : faces_->seen_shares(edge[0], edge[1])) judge.add_lines(edge, from, to, lines);
    }
    return merged_lines(std::move(lines), settings_.finest / 2, settings_.finest);
}

bool LineView::sees(const Point& p, double within) const {
    const ViewPoint at = in_view(view_, p);
    const ViewFace* before = faces_->seen_at({at.x, at.y});
    return before == nullptr || before->height_at({at.x, at.y}) <= at.z + within;
}

}  // namespace seamward
