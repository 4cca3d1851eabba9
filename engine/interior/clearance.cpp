// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/clearance.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

#include "geometry/near_triangles.h"

namespace seamward {

namespace {

Point middle_of(const ConvexPolygon& polygon) { return middle_of(polygon.data(), polygon.size()); }

/// The two corners farthest apart.
Vector longest(const ConvexPolygon& polygon) {
    Vector far;
    double square = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        for (std::size_t j = i + 1; j < polygon.size(); ++j) {
            const Vector d = polygon[j] - polygon[i];
            if (dot(d, d) > square) {
                square = dot(d, d);
                far = d;
            }
        }
    }
    return far;
}

/// Triangles that hold a ball, with the directions from them to its middle within the plane of the polygon.
struct Holders {
    static constexpr std::size_t most = 6;
    std::array<std::uint32_t, most> triangle{};
    std::array<Vector, most> away{};
    std::size_t count = 0;

    void add(std::uint32_t t, const Vector& direction) {
        if (count == most) return;
        for (std::size_t i = 0; i < count; ++i) {
            if (triangle[i] == t) return;
        }
        triangle[count] = t;
        away[count++] = direction;
    }
};

/// The largest average of distances over the corners of a piece, for weights of two or three holders that bring the average of
/// their directions to nothing, or as near to it as can be: where a ball is held from all sides, such an average is flat.
class Averages {
public:
    Averages(const Holders& holders, const Vector& normal) : holders_(holders), normal_(normal) {}

    void add_corner(const std::array<double, Holders::most>& distances) { corners_.push_back(distances); }

    /// The least of them, and of the distances from single holders.
    [[nodiscard]] double least() const {
        double least = 1e300;
        for (std::size_t i = 0; i < holders_.count; ++i) {
            take({1, 0, 0}, {i, i, i}, least);
            for (std::size_t j = i + 1; j < holders_.count; ++j) {
                pair(i, j, least);
                for (std::size_t k = j + 1; k < holders_.count; ++k) three(i, j, k, least);
            }
        }
        return least;
    }

private:
    void pair(std::size_t i, std::size_t j, double& least) const {
        const Vector &a = holders_.away[i], &b = holders_.away[j];
        const Vector ab = b - a;
        const double size = dot(ab, ab);
        if (size <= 0) return;
        const double t = -dot(a, ab) / size;
        if (t > 0 && t < 1) take({1 - t, t, 0}, {i, j, j}, least);
    }

    void three(std::size_t i, std::size_t j, std::size_t k, double& least) const {
        const Vector &a = holders_.away[i], &b = holders_.away[j], &c = holders_.away[k];
        const double u = dot(normal_, cross(b, c)), v = dot(normal_, cross(c, a)), w = dot(normal_, cross(a, b));
        const double sum = u + v + w;
        if (std::abs(sum) < 1e-9 || u * sum < 0 || v * sum < 0 || w * sum < 0) return;
        take({u / sum, v / sum, w / sum}, {i, j, k}, least);
    }

    void take(const std::array<double, 3>& weights, const std::array<std::size_t, 3>& of, double& least) const {
        double most = 0;
        for (const auto& d : corners_) {
            most = std::max(most, weights[0] * d[of[0]] + weights[1] * d[of[1]] + weights[2] * d[of[2]]);
            if (most >= least) return;
        }
        least = most;
    }

    const Holders& holders_;
    const Vector& normal_;
    std::vector<std::array<double, Holders::most>> corners_;
};

}  // namespace

/// The polygon that is searched.
struct Clearance::Ground {
    const ConvexPolygon& polygon;
    Vector normal;

    /// Where one gets to on the straight line from a point of the polygon to another of its plane without leaving it.
    [[nodiscard]] Point toward(const Point& from, const Point& to) const {
        double part = 1;
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Point& a = polygon[i];
            const Vector inward = cross(normal, polygon[i + 1 < polygon.size() ? i + 1 : 0] - a);
            const double at = dot(inward, from - a), then = dot(inward, to - a);
            if (then < 0 && at > then) part = std::min(part, std::max(0.0, at / (at - then)));
        }
        return from + (to - from) * part;
    }
};

struct Clearance::Piece {
    double at_most = 0;
    ConvexPolygon polygon;
    Point middle;
    double radius = 0;                          ///< from the middle to the farthest corner
    std::shared_ptr<const NearTriangles> near;  ///< around it or a larger piece; none when they are too many there
    double asked = 1e300;                       ///< meters; the radius of the piece that they were last gathered for

    explicit Piece(ConvexPolygon of) : polygon(std::move(of)), middle(middle_of(polygon)) {
        for (const Point& p : polygon) radius = std::max(radius, distance(p, middle));
    }

    bool operator<(const Piece& other) const { return at_most < other.at_most; }

    [[nodiscard]] Nearest nearest(const TriangleTree& tree, const Point& p, double cap) const {
        return near ? near->nearest(p, cap) : tree.nearest(p, cap);
    }

    /// Gathers triangles for questions about this piece, when it is a good deal smaller than what those at hand were gathered
    /// for.
    void gather(const TriangleTree& tree, double cap) {
        constexpr double smaller = 0.4;
        constexpr std::size_t few = 12, most = 160;
        if (radius > smaller * asked || (near && near->size() <= few)) return;
        asked = radius;
        const double here = nearest(tree, middle, cap).distance;
        const double reach = std::min(here + radius, cap) + radius + here;
        auto now = near ? std::make_shared<const NearTriangles>(*near, middle, reach, most)
                        : std::make_shared<const NearTriangles>(tree, middle, reach, most);
        if (now->complete()) near = std::move(now);
    }
};

/// No stand in the piece has a larger radius than what is returned; better stands that turn up are kept in `best`.
double Clearance::bound(const Ground& ground, const Piece& piece, Stand& best) const {
    Holders holders;
    const auto look = [&](const Point& p) {
        const Nearest n = piece.nearest(tree_, p, cap_);
        if (n.distance > best.clearance) best = {p, n.distance};
        if (!n.found()) return n;
        Vector away = p - n.on_triangle;
        away = away - ground.normal * dot(away, ground.normal);
        if (n.distance > 0) holders.add(n.triangle, away * (1 / n.distance));
        return n;
    };
    const Nearest here = look(piece.middle);
    if (!here.found()) return cap_;
    const double most = std::min(here.distance + piece.radius, cap_);
    if (holders.count == 0) return most;
    // What stands opposite shows itself a step away from what is nearest; halfway between the two, what stands beside them.
    Point from = piece.middle;
    for (int turn = 0; turn < 4; ++turn) {
        const Vector away = holders.away[holders.count - 1];
        const double size = length(away);
        if (size < 0.02) break;
        const std::size_t known = holders.count;
        const Nearest there = look(ground.toward(from, from + away * (here.distance * 0.1 / size)));
        if (!there.found()) return most;
        if (holders.count == known) {  // still the same: on as far as it goes
            const Point far = ground.toward(from, from + away * (2 * here.distance / size));
            if (!look(far).found() || holders.count == known) break;
        }
        const double mine = distance(tree_[holders.triangle[known - 1]], from),
                     other = distance(tree_[holders.triangle[known]], from);
        const Point between = ground.toward(from, from + away * ((other - mine) / 2 / size));
        if (!look(between).found()) break;
        from = between;
    }
    Averages averages(holders, ground.normal);
    for (const Point& p : piece.polygon) {
        std::array<double, Holders::most> distances{};
        for (std::size_t i = 0; i < holders.count; ++i) distances[i] = distance(tree_[holders.triangle[i]], p);
        averages.add_corner(distances);
    }
    return std::min(most, averages.least());
}

Highest Clearance::highest(const ConvexPolygon& polygon, const Search& search) const {
    Ground ground{polygon, doubled_area(polygon)};
    const double size = length(ground.normal);
    if (size > 0) ground.normal = ground.normal * (1 / size);
    Piece whole(polygon);
    Stand best{whole.middle, -1};
    whole.at_most = bound(ground, whole, best);
    std::vector<Piece> open;  // a heap
    open.push_back(std::move(whole));
    double settled = 0;  // the most that pieces too small to divide may hold
    for (int tries = 1; !open.empty(); ++tries) {
        const double most = std::max(settled, open.front().at_most);
        if (best.clearance >= std::min(cap_, search.enough) ||
            most <= std::max(search.floor, best.clearance * (1 + search.tolerance)) || tries >= search.effort) {
            break;
        }
        std::pop_heap(open.begin(), open.end());
        Piece piece = std::move(open.back());
        open.pop_back();
        const Vector far = longest(piece.polygon);
        const double span = length(far);
        if (span < 1e-7) {
            settled = std::max(settled, piece.at_most);
            continue;
        }
        piece.gather(tree_, cap_);
        const Vector along = far * (1 / span);
        ConvexPolygon halves[2];
        split(piece.polygon, {along, dot(along, {piece.middle.x, piece.middle.y, piece.middle.z})}, 0, halves[0], halves[1]);
        for (ConvexPolygon& corners : halves) {
            if (corners.empty()) continue;
            Piece half(std::move(corners));
            half.near = piece.near;
            half.asked = piece.asked;
            half.at_most = std::min(bound(ground, half, best), piece.at_most);
            open.push_back(std::move(half));
            std::push_heap(open.begin(), open.end());
        }
    }
    const double most = std::max({settled, open.empty() ? 0.0 : open.front().at_most, best.clearance, search.floor});
    return {best, std::min(most, cap_)};
}

std::vector<Clearance::Hold> Clearance::holds_of(const Point& p) const {
    std::vector<Hold> holds;
    const Nearest first = tree_.nearest(p, cap_);
    if (!first.found() || first.distance <= 0) return holds;
    const Vector away = (p - first.on_triangle) * (1 / first.distance);
    holds.push_back({first.triangle, away * -1});
    // A little farther from it, what holds the ball on the other side is nearer.
    for (const double step : {0.02, 0.1, 0.3}) {
        const Point from = p + away * (first.distance * step);
        const Nearest other = tree_.nearest(from, cap_);
        if (!other.found() || other.distance <= 0) continue;
        const Vector toward = (other.on_triangle - from) * (1 / other.distance);
        if (dot(toward, away) < -0.2) continue;
        holds.push_back({other.triangle, toward});
        break;
    }
    return holds;
}

ClearWay Clearance::way(const Point& a, const Point& b, const Lead& lead) const {
    const Nearest tight = tree_.nearest(a, b, lead.wanted);
    ClearWay straight{tight.distance, tight.on_query, {}};
    if (!tight.found() || lead.turns == 0 || tight.distance >= lead.wanted * lead.enough) return straight;
    const Vector ab = b - a;
    const double span = length(ab);
    if (span < 1e-9) return straight;
    Lead on = lead;
    on.least = std::max(lead.least, tight.distance);
    const Stand aside = step_aside(tight.on_query, ab * (1 / span), on);
    if (aside.clearance <= std::max(lead.least, tight.distance * 1.0005) || distance(aside.at, a) < 1e-9 ||
        distance(aside.at, b) < 1e-9)
        return straight;
    --on.turns;
    ClearWay first = way(a, aside.at, on);
    if (first.clearance <= on.least) return straight;
    const ClearWay second = way(aside.at, b, on);
    if (second.clearance <= on.least) return straight;
    first.corners.push_back(aside.at);
    first.corners.insert(first.corners.end(), second.corners.begin(), second.corners.end());
    if (second.clearance < first.clearance) {
        first.clearance = second.clearance;
        first.tightest = second.tightest;
    }
    return first;
}

/// From a point on a way to a better one across it.
Stand Clearance::step_aside(const Point& from, const Vector& along, const Lead& lead) const {
    const double wanted = lead.wanted;
    Stand best{from, tree_.nearest(from, wanted).distance};
    double step = wanted;
    for (int turn = 0; turn < 8 && step > wanted * 0.02 && best.clearance < wanted; ++turn) {
        const Nearest near = tree_.nearest(best.at, wanted);
        if (!near.found()) break;
        Vector away = best.at - near.on_triangle;
        if (near.distance < 1e-9) {  // on a surface: to the side that the triangle faces
            const TriangleTree::Triangle& t = tree_[near.triangle];
            away = cross(t[1] - t[0], t[2] - t[0]);
        }
        if (const double size = length(away); size > 0) away = away * (1 / size);
        const Vector across = away - along * dot(away, along);
        const double size = length(across);
        const Vector direction = size > 0.1 ? across * (1 / size) : away;
        const Point next = best.at + direction * std::min(step, 1.5 * (wanted - best.clearance) + wanted * 1e-3);
        const double there = tree_.nearest(next, wanted).distance;
        if (there > best.clearance) {
            best = {next, there};
        } else {
            step /= 2;
        }
    }
    if (best.clearance >= wanted * 0.9999) return best;
    // Between more than two sides that way zigzags; then all around is searched.
    Vector u = cross(along, std::abs(along.x) < 0.7 ? Vector{1, 0, 0} : Vector{0, 1, 0});
    u = u * (wanted / length(u));
    const Vector v = cross(along, u);
    const Point& m = best.at;
    const ConvexPolygon around{m + u * -1 + v * -1, m + u + v * -1, m + u + v, m + u * -1 + v};
    const Stand found = Clearance(tree_, wanted).highest(around, {1e-4, 24, std::max(best.clearance, lead.least), wanted}).stand;
    return found.clearance > best.clearance ? found : best;
}

}  // namespace seamward
