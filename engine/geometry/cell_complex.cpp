// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/cell_complex.h"

#include <oneapi/tbb/parallel_for.h>
#include <oneapi/tbb/parallel_invoke.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <unordered_map>

#include "geometry/convex_polygon.h"

namespace seamward {

namespace {

constexpr double clip_tolerance = 1e-9;  // meters, for openings that are cut by planes
constexpr double least_area = 1e-12;     // square meters

constexpr std::uint32_t leaf_flag = CellComplex::is_cell;
constexpr std::uint32_t nothing = 0xffffffff;

struct Piece {
    std::uint32_t plane = 0;
    ConvexPolygon corners;
};

struct Node {
    Plane3 plane;
    std::uint32_t child[2] = {nothing, nothing};  ///< front, back: a node, or a cell with leaf_flag
    std::uint32_t parent = nothing;
    std::uint8_t side = 0;               ///< of the parent: 0 front, 1 back
    std::uint32_t first = 0, count = 0;  ///< facets in the plane, in `on_planes_`
};

class Partition {
public:
    Partition(const FlatFacets& facets, const Point& low, const Point& high, double tolerance, const RunContext& run)
        : facets_(facets), low_(low), high_(high), tolerance_(tolerance), run_(run) {}

    CellComplex result() {
        std::vector<Piece> pieces;
        pieces.reserve(facets_.facets.size());
        for (const Facet& facet : facets_.facets) {
            Piece piece{facet.plane, ConvexPolygon(facet.corners.begin(), facet.corners.end())};
            if (length(doubled_area(piece.corners)) > 0) pieces.push_back(std::move(piece));
        }
        Branch whole;
        root_ = divide(std::move(pieces), nothing, 0, whole);
        nodes_ = std::move(whole.nodes);
        on_planes_ = std::move(whole.on_planes);
        complex_.cells.resize(whole.cells);
        sums_.resize(complex_.cells.size());
        join_all();
        close_the_box();
        settle_cells();
        complex_.cuts.reserve(nodes_.size());
        complex_.cut_above.assign(nodes_.size(), 0);
        complex_.cut_of_cell.assign(complex_.cells.size(), 0);
        for (std::uint32_t i = 0; i < nodes_.size(); ++i) {
            const Node& node = nodes_[i];
            complex_.cuts.push_back({node.plane, {node.child[0], node.child[1]}});
            for (const std::uint32_t child : node.child)
                (child & leaf_flag ? complex_.cut_of_cell[child & ~leaf_flag] : complex_.cut_above[child]) = i;
        }
        return std::move(complex_);
    }

private:
    struct Bounds {
        Point low, high;
    };
    struct Sums {
        Vector weighted;
        double area = 0;
        double volume = 0;
    };

    /// Nodes as they are made, from the top down, what is ahead of each before what is behind it, and cells likewise.
    struct Branch {
        std::vector<Node> nodes;
        std::vector<ConvexPolygon> on_planes;
        std::uint32_t cells = 0;

        /// Adds another as what is behind a node. Returns its top.
        std::uint32_t take(Branch other, std::uint32_t top, std::uint32_t parent) {
            const auto nodes_before = static_cast<std::uint32_t>(nodes.size()),
                       planes_before = static_cast<std::uint32_t>(on_planes.size());
            const auto moved = [&](std::uint32_t child) {
                return child & leaf_flag ? ((child & ~leaf_flag) + cells) | leaf_flag : child + nodes_before;
            };
            for (Node& node : other.nodes) {
                node.parent = node.parent == nothing ? parent : node.parent + nodes_before;
                node.first += planes_before;
                for (std::uint32_t& child : node.child) child = moved(child);
                nodes.push_back(node);
            }
            std::move(other.on_planes.begin(), other.on_planes.end(), std::back_inserter(on_planes));
            const std::uint32_t at = moved(top);
            cells += other.cells;
            return at;
        }
    };

    std::uint32_t divide(std::vector<Piece> pieces, std::uint32_t parent, std::uint8_t side, Branch& branch) const {
        constexpr std::size_t many = 1000;  // pieces: what is ahead and behind is divided at the same time
        if (pieces.empty()) return branch.cells++ | leaf_flag;
        run_.check();
        std::vector<Node>& nodes = branch.nodes;
        std::vector<ConvexPolygon>& on_planes = branch.on_planes;
        const auto at = static_cast<std::uint32_t>(nodes.size());
        nodes.emplace_back();
        const std::uint32_t chosen = choose(pieces);
        const Plane3 plane = facets_.planes[chosen];
        nodes[at].plane = plane;
        nodes[at].parent = parent;
        nodes[at].side = side;
        nodes[at].first = static_cast<std::uint32_t>(on_planes.size());
        std::vector<Piece> front, back;
        for (Piece& piece : pieces) {
            const Reach r = piece.plane == chosen ? Reach{} : reach(piece.corners, plane);
            if (r.high <= tolerance_ && r.low >= -tolerance_) {
                on_planes.push_back(std::move(piece.corners));
            } else if (r.low >= -tolerance_) {
                front.push_back(std::move(piece));
            } else if (r.high <= tolerance_) {
                back.push_back(std::move(piece));
            } else {
                Piece ahead{piece.plane, {}}, behind{piece.plane, {}};
                split(piece.corners, plane, tolerance_, ahead.corners, behind.corners);
                if (!ahead.corners.empty()) front.push_back(std::move(ahead));
                if (!behind.corners.empty()) back.push_back(std::move(behind));
            }
        }
        nodes[at].count = static_cast<std::uint32_t>(on_planes.size()) - nodes[at].first;
        pieces = {};
        std::uint32_t ahead = 0, behind = 0;
        if (std::min(front.size(), back.size()) < many) {
            ahead = divide(std::move(front), at, 0, branch);
            behind = divide(std::move(back), at, 1, branch);
        } else {
            Branch apart;
            std::uint32_t top = 0;
            tbb::parallel_invoke([&] { ahead = divide(std::move(front), at, 0, branch); },
                                 [&] { top = divide(std::move(back), nothing, 1, apart); });
            behind = branch.take(std::move(apart), top, at);
        }
        nodes[at].child[0] = ahead;
        nodes[at].child[1] = behind;
        return at;
    }

    /// Large faces first: they bound spaces, and what is small should be cut by them and not the other way round. Among the
    /// largest, the plane that cuts least and halves best, tried on a sample of the pieces.
    std::uint32_t choose(const std::vector<Piece>& pieces) const {
        const std::size_t n = pieces.size();
        constexpr std::size_t most_candidates = 16, most_sampled = 192, small = 256;
        const std::size_t sampled = std::min(n, most_sampled);
        thread_local std::vector<std::uint32_t> planes;
        planes.clear();
        for (const Piece& piece : pieces) planes.push_back(piece.plane);
        if (n <= small) return *std::min_element(planes.begin(), planes.end());
        std::sort(planes.begin(), planes.end());
        planes.erase(std::unique(planes.begin(), planes.end()), planes.end());
        planes.resize(std::min(planes.size(), most_candidates));
        double best = 1e300;
        std::uint32_t chosen = pieces[0].plane;
        for (const std::uint32_t plane : planes) {
            const Plane3 cut = facets_.planes[plane];
            double ahead = 0, behind = 0, torn = 0, on = 0;
            for (std::size_t s = 0; s < sampled; ++s) {
                const Piece& piece = pieces[s * n / sampled];
                if (piece.plane == plane) {
                    ++on;
                    continue;
                }
                const Reach r = reach(piece.corners, cut);
                if (r.high <= tolerance_ && r.low >= -tolerance_) {
                    ++on;
                } else if (r.low >= -tolerance_) {
                    ++ahead;
                } else if (r.high <= tolerance_) {
                    ++behind;
                } else {
                    ++torn;
                }
            }
            const double score = 8 * torn + std::abs(ahead - behind) - on;
            if (score < best) {
                best = score;
                chosen = plane;
            }
        }
        return chosen;
    }

    /// The polygon of a node's plane within its region.
    ConvexPolygon section(std::uint32_t at) const {
        ConvexPolygon polygon = sheet(nodes_[at].plane);
        for (std::uint32_t child = at; nodes_[child].parent != nothing && !polygon.empty(); child = nodes_[child].parent) {
            clip(polygon, nodes_[nodes_[child].parent].plane, nodes_[child].side);
        }
        return polygon;
    }

    /// A plane within the box.
    ConvexPolygon sheet(const Plane3& plane) const {
        const Vector n = plane.normal;
        const Vector least = std::abs(n.x) <= std::abs(n.y) && std::abs(n.x) <= std::abs(n.z) ? Vector{1, 0, 0}
                             : std::abs(n.y) <= std::abs(n.z)                                 ? Vector{0, 1, 0}
                                                                                              : Vector{0, 0, 1};
        Vector u = cross(n, least);
        u = u * (1 / length(u));
        const Vector v = cross(n, u);
        const Point middle{(low_.x + high_.x) / 2, (low_.y + high_.y) / 2, (low_.z + high_.z) / 2};
        const Point at = middle + n * -plane.height_of(middle);
        const double far = length(high_ - low_);
        ConvexPolygon polygon{at + u * -far + v * -far, at + u * far + v * -far, at + u * far + v * far, at + u * -far + v * far};
        for (int axis = 0; axis < 3 && !polygon.empty(); ++axis) {
            const Vector a{axis == 0 ? 1.0 : 0.0, axis == 1 ? 1.0 : 0.0, axis == 2 ? 1.0 : 0.0};
            clip(polygon, {a, dot(a, {low_.x, low_.y, low_.z})}, 0);
            if (!polygon.empty()) clip(polygon, {a, dot(a, {high_.x, high_.y, high_.z})}, 1);
        }
        return polygon;
    }

    static void clip(ConvexPolygon& polygon, const Plane3& plane, int side) {
        const Reach r = reach(polygon, plane);
        if (side == 0 ? r.low >= -clip_tolerance : r.high <= clip_tolerance) return;
        ConvexPolygon front, back;
        split(polygon, plane, clip_tolerance, front, back);
        polygon = side == 0 ? std::move(front) : std::move(back);
    }

    /// Hands the pieces of a polygon on the border of the region of `at` to the cells that have them on their border. The region
    /// lies on the side of the polygon that `inward` points to; of planes that coincide with it, it lies beyond.
    template <typename Take>
    void sift(std::uint32_t at, ConvexPolygon polygon, Vector inward, Take&& take) const {
        while (!(at & leaf_flag)) {
            const Node& node = nodes_[at];
            const Reach r = reach(polygon, node.plane);
            const bool ahead = r.low >= -clip_tolerance, behind = r.high <= clip_tolerance;
            if (ahead || behind) {
                at = node.child[ahead && behind ? (dot(node.plane.normal, inward) > 0 ? 1 : 0) : ahead ? 0 : 1];
                continue;
            }
            ConvexPolygon front, back;
            split(polygon, node.plane, clip_tolerance, front, back);
            if (!back.empty()) sift(node.child[1], std::move(back), inward, take);
            if (front.empty()) return;
            polygon = std::move(front);
            at = node.child[0];
        }
        take(at & ~leaf_flag, polygon);
    }

    /// What was found across the planes of some nodes.
    struct Joined {
        struct Face {
            std::uint32_t cell;
            Point middle;
            double area;
            double out;  ///< distance of its plane from the origin along the cell's outward normal
        };
        std::vector<Face> faces;
        std::vector<Portal> portals;
        std::vector<Point> corners;
    };

    /// Many nodes at a time, each run of them on its own; what they found is put together in their order.
    void join_all() {
        constexpr std::size_t run_of = 64, at_a_time = 64;
        std::vector<Joined> runs(at_a_time);
        for (std::size_t first = 0; first < nodes_.size(); first += run_of * at_a_time) {
            run_.check();
            const std::size_t count = std::min(at_a_time, (nodes_.size() - first + run_of - 1) / run_of);
            tbb::parallel_for(std::size_t{0}, count, [&](std::size_t k) {
                runs[k] = {};
                const std::size_t begin = first + k * run_of, end = std::min(begin + run_of, nodes_.size());
                for (std::size_t node = begin; node < end; ++node) join_across(static_cast<std::uint32_t>(node), runs[k]);
            });
            for (std::size_t k = 0; k < count; ++k) take(runs[k]);
        }
    }

    void take(const Joined& joined) {
        for (const Joined::Face& face : joined.faces) {
            Sums& sums = sums_[face.cell];
            sums.weighted = sums.weighted + (face.middle - Point{}) * face.area;
            sums.area += face.area;
            sums.volume += face.out * face.area / 3;
        }
        const auto before = static_cast<std::uint32_t>(complex_.corners.size());
        for (Portal portal : joined.portals) {
            portal.first += before;
            complex_.portals.push_back(portal);
        }
        complex_.corners.insert(complex_.corners.end(), joined.corners.begin(), joined.corners.end());
    }

    void join_across(std::uint32_t at, Joined& joined) const {
        const ConvexPolygon whole = section(at);
        if (whole.empty()) return;
        const Node& node = nodes_[at];
        const std::vector<Bounds> boxes = boxes_of(node);
        const Vector normal = node.plane.normal;
        sift(node.child[0], whole, normal, [&](std::uint32_t front, const ConvexPolygon& half) {
            sift(node.child[1], half, normal * -1, [&](std::uint32_t back, const ConvexPolygon& opening) {
                const double area = length(doubled_area(opening)) / 2;
                if (area < least_area) return;
                const Point middle = middle_of(opening.data(), opening.size());
                joined.faces.push_back({front, middle, area, -node.plane.offset});
                joined.faces.push_back({back, middle, area, node.plane.offset});
                open(node, boxes, front, back, opening, joined);
            });
        });
    }

    /// Takes the facets in the node's plane out of an opening; what is left are portals.
    void open(const Node& node, const std::vector<Bounds>& boxes, std::uint32_t front, std::uint32_t back,
              const ConvexPolygon& opening, Joined& joined) const {
        std::vector<ConvexPolygon> left{opening}, next;
        for_facets_near(node, boxes, opening, [&](const ConvexPolygon& facet) {
            next.clear();
            for (const ConvexPolygon& piece : left) take_out(piece, facet, node.plane.normal, next);
            std::swap(left, next);
            return !left.empty();
        });
        for (const ConvexPolygon& piece : left) {
            if (length(doubled_area(piece)) / 2 < least_area) continue;
            joined.portals.push_back(
                {front, back, static_cast<std::uint32_t>(joined.corners.size()), static_cast<std::uint32_t>(piece.size())});
            joined.corners.insert(joined.corners.end(), piece.begin(), piece.end());
        }
    }

    /// The convex pieces of `piece` outside of `facet`; both lie in a plane with that normal.
    static void take_out(const ConvexPolygon& piece, const ConvexPolygon& facet, Vector normal, std::vector<ConvexPolygon>& out) {
        constexpr double touch = 1e-8;
        if (dot(doubled_area(facet), normal) < 0) normal = normal * -1;
        const std::size_t n = facet.size();
        std::vector<Plane3> edges;
        edges.reserve(n);
        for (std::size_t i = 0; i < n; ++i) {
            const Vector along = facet[i + 1 < n ? i + 1 : 0] - facet[i];
            const double size = length(along);
            if (size <= 0) continue;
            const Vector inward = cross(normal, along * (1 / size));
            const Plane3 edge{inward, dot(inward, {facet[i].x, facet[i].y, facet[i].z})};
            if (reach(piece, edge).high <= touch) {
                out.push_back(piece);
                return;
            }
            edges.push_back(edge);
        }
        ConvexPolygon rest = piece, inside, outside;
        const std::size_t before = out.size();
        for (const Plane3& edge : edges) {
            if (reach(rest, edge).low >= -touch) continue;
            split(rest, edge, clip_tolerance, inside, outside);
            if (!outside.empty()) out.push_back(outside);
            if (inside.empty() || length(doubled_area(inside)) / 2 < least_area) {  // they only touch
                out.resize(before);
                out.push_back(piece);
                return;
            }
            rest = inside;
        }
    }

    static Bounds bounds_of(const ConvexPolygon& polygon) {
        Bounds b{polygon[0], polygon[0]};
        for (const Point& p : polygon) {
            b.low = {std::min(b.low.x, p.x), std::min(b.low.y, p.y), std::min(b.low.z, p.z)};
            b.high = {std::max(b.high.x, p.x), std::max(b.high.y, p.y), std::max(b.high.z, p.z)};
        }
        return b;
    }

    std::vector<Bounds> boxes_of(const Node& node) const {
        std::vector<Bounds> boxes;
        boxes.reserve(node.count);
        for (std::uint32_t i = 0; i < node.count; ++i) boxes.push_back(bounds_of(on_planes_[node.first + i]));
        return boxes;
    }

    template <typename Take>
    void for_facets_near(const Node& node, const std::vector<Bounds>& boxes, const ConvexPolygon& polygon, Take&& take) const {
        const Bounds b = bounds_of(polygon);
        for (std::uint32_t i = 0; i < node.count; ++i) {
            const Bounds& f = boxes[i];
            if (f.low.x > b.high.x + 1e-5 || f.high.x < b.low.x - 1e-5 || f.low.y > b.high.y + 1e-5 ||
                f.high.y < b.low.y - 1e-5 || f.low.z > b.high.z + 1e-5 || f.high.z < b.low.z - 1e-5) {
                continue;
            }
            if (!take(on_planes_[node.first + i])) return;
        }
    }

    void close_the_box() {
        Joined box;
        for (int axis = 0; axis < 3; ++axis) {
            const Vector a{axis == 0 ? 1.0 : 0.0, axis == 1 ? 1.0 : 0.0, axis == 2 ? 1.0 : 0.0};
            for (int side = 0; side < 2; ++side) {
                const Point& corner = side == 0 ? low_ : high_;
                const double offset = dot(a, {corner.x, corner.y, corner.z});
                sift(root_, sheet({a, offset}), a * (side == 0 ? 1.0 : -1.0), [&](std::uint32_t cell, const ConvexPolygon& face) {
                    const double area = length(doubled_area(face)) / 2;
                    box.faces.push_back({cell, middle_of(face.data(), face.size()), area, side == 0 ? -offset : offset});
                });
            }
        }
        take(box);
    }

    void settle_cells() {
        for (std::size_t i = 0; i < sums_.size(); ++i) {
            if (sums_[i].area > 0) complex_.cells[i].middle = Point{} + sums_[i].weighted * (1 / sums_[i].area);
            complex_.cells[i].volume = std::max(0.0, sums_[i].volume);
        }
    }

    const FlatFacets& facets_;
    Point low_, high_;
    double tolerance_;
    const RunContext& run_;
    std::vector<Node> nodes_;
    std::vector<ConvexPolygon> on_planes_;
    std::vector<Sums> sums_;
    std::uint32_t root_ = 0;
    CellComplex complex_;
};

}  // namespace

std::uint32_t CellComplex::cell_at(const Point& at, std::uint32_t side) const {
    while (!(side & is_cell)) side = cuts[side].side[cuts[side].plane.height_of(at) >= 0 ? 0 : 1];
    return side & ~is_cell;
}

std::uint32_t CellComplex::side_around(const Point& a, const Point& b, double reach) const {
    std::uint32_t side = whole();
    while (!(side & is_cell)) {
        const Cut& cut = cuts[side];
        const double from = cut.plane.height_of(a), to = cut.plane.height_of(b);
        if (std::min(from, to) <= reach && std::max(from, to) >= -reach) break;
        side = cut.side[from > 0 ? 0 : 1];
    }
    return side;
}

ConvexPolygon CellComplex::within(std::uint32_t cell, ConvexPolygon polygon) const {
    if (cuts.empty()) return polygon;
    ConvexPolygon front, back;
    std::uint32_t child = cell | is_cell;
    for (std::uint32_t at = cut_of_cell[cell];; at = cut_above[at]) {
        const Plane3& plane = cuts[at].plane;
        const bool ahead = cuts[at].side[0] == child;
        const Reach r = reach(polygon, plane);
        if (ahead ? r.low < -clip_tolerance : r.high > clip_tolerance) {
            split(polygon, plane, clip_tolerance, front, back);
            polygon = ahead ? front : back;
            if (polygon.empty()) return polygon;
        }
        if (at == 0) return polygon;
        child = at;
    }
}

CellComplex cell_complex(const FlatFacets& facets, const Point& low, const Point& high, double tolerance, const RunContext& run) {
    return Partition(facets, low, high, tolerance, run).result();
}

}  // namespace seamward
