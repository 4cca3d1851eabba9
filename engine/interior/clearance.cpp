// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/clearance.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <queue>

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

/// Triangles that hold a ball, with the directions from them to its middle.
struct Holders {
    std::array<std::uint32_t, 6> triangle{};
    std::array<Vector, 6> away{};
    std::size_t count = 0;

    void add(std::uint32_t t, const Vector& direction) {
        if (count == triangle.size()) return;
        for (std::size_t i = 0; i < count; ++i) {
            if (triangle[i] == t) return;
        }
        triangle[count] = t;
        away[count++] = direction;
    }

    /// Weights that sum to 1 and bring the weighted sum of directions near 0 (Frank and Wolfe 1956).
    [[nodiscard]] std::array<double, 6> weights() const {
        std::array<double, 6> w{};
        w[0] = 1;
        Vector sum = away[0];
        for (int turn = 0; turn < 60; ++turn) {
            std::size_t best = 0;
            double least = 1e300;
            for (std::size_t i = 0; i < count; ++i) {
                const double d = dot(sum, away[i]);
                if (d < least) {
                    least = d;
                    best = i;
                }
            }
            const Vector step = away[best] - sum;
            const double size = dot(step, step);
            if (size <= 0) break;
            const double t = std::clamp(-dot(sum, step) / size, 0.0, 1.0);
            if (t <= 1e-12) break;
            for (double& x : w) x *= 1 - t;
            w[best] += t;
            sum = sum + step * t;
        }
        return w;
    }
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

    bool operator<(const Piece& other) const { return at_most < other.at_most; }
};

/// No stand in the piece has a larger radius than what is returned; better stands that turn up are kept in `best`.
double Clearance::bound(const Ground& ground, const ConvexPolygon& piece, Stand& best) const {
    const Point middle = middle_of(piece);
    Holders holders;
    const auto look = [&](const Point& p) {
        const Nearest n = tree_.nearest(p, cap_);
        if (n.distance > best.clearance) best = {p, n.distance};
        if (!n.found()) return n;
        Vector away = p - n.on_triangle;
        away = away - ground.normal * dot(away, ground.normal);
        if (n.distance > 0) holders.add(n.triangle, away * (1 / n.distance));
        return n;
    };
    const Nearest here = look(middle);
    if (!here.found()) return cap_;
    double radius = 0;
    for (const Point& p : piece) radius = std::max(radius, length(p - middle));
    const double most = here.distance + radius;
    if (holders.count == 0) return std::min(most, cap_);
    // What stands opposite shows itself a step away from what is nearest; halfway between the two, what stands beside them.
    Point from = middle;
    for (int turn = 0; turn < 4; ++turn) {
        const Vector away = holders.away[holders.count - 1];
        const double size = length(away);
        if (size < 0.02) break;
        const std::size_t known = holders.count;
        const Nearest there = look(ground.toward(from, from + away * (here.distance * 0.1 / size)));
        if (!there.found()) return std::min(most, cap_);
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
    // Any one of them bounds the ball, and so does any average; the best average is flat where the ball is held from all sides.
    const std::array<double, 6> w = holders.weights();
    std::array<double, 6> alone{};
    double together = 0;
    for (const Point& p : piece) {
        double sum = 0;
        for (std::size_t i = 0; i < holders.count; ++i) {
            const double d = distance(tree_[holders.triangle[i]], p);
            alone[i] = std::max(alone[i], d);
            sum += w[i] * d;
        }
        together = std::max(together, sum);
    }
    const double by_holders =
        std::min(together, *std::min_element(alone.begin(), alone.begin() + static_cast<std::ptrdiff_t>(holders.count)));
    return std::min({most, by_holders, cap_});
}

Highest Clearance::highest(const ConvexPolygon& polygon, const Search& search) const {
    Ground ground{polygon, doubled_area(polygon)};
    const double size = length(ground.normal);
    if (size > 0) ground.normal = ground.normal * (1 / size);
    Stand best{middle_of(polygon), -1};
    std::priority_queue<Piece> open;
    open.push({bound(ground, polygon, best), polygon});
    double settled = 0;  // the most that pieces too small to divide may hold
    for (int tries = 1; !open.empty(); ++tries) {
        const double most = std::max(settled, open.top().at_most);
        if (best.clearance >= std::min(cap_, search.enough) ||
            most <= std::max(search.floor, best.clearance * (1 + search.tolerance)) || tries >= search.effort) {
            break;
        }
        const Piece piece = open.top();
        open.pop();
        const Vector far = longest(piece.polygon);
        const double span = length(far);
        if (span < 1e-7) {
            settled = std::max(settled, piece.at_most);
            continue;
        }
        const Point middle = middle_of(piece.polygon);
        const Vector along = far * (1 / span);
        ConvexPolygon halves[2];
        split(piece.polygon, {along, dot(along, {middle.x, middle.y, middle.z})}, 0, halves[0], halves[1]);
        for (ConvexPolygon& half : halves) {
            if (half.empty()) continue;
            const double most_here = bound(ground, half, best);
            open.push({std::min(most_here, piece.at_most), std::move(half)});
        }
    }
    const double most = std::max({settled, open.empty() ? 0.0 : open.top().at_most, best.clearance, search.floor});
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

ClearWay Clearance::way(const Point& a, const Point& b, double wanted, double enough, int turns) const {
    const Nearest tight = tree_.nearest(a, b, wanted);
    ClearWay straight{tight.distance, tight.on_query, {}};
    if (!tight.found() || turns == 0 || tight.distance >= wanted * enough) return straight;
    const Vector ab = b - a;
    const double span = length(ab);
    if (span < 1e-9) return straight;
    const Stand aside = step_aside(tight.on_query, ab * (1 / span), wanted);
    if (aside.clearance <= tight.distance * 1.0005 || distance(aside.at, a) < 1e-9 || distance(aside.at, b) < 1e-9)
        return straight;
    ClearWay first = way(a, aside.at, wanted, enough, turns - 1);
    if (first.clearance <= straight.clearance) return straight;
    const ClearWay second = way(aside.at, b, wanted, enough, turns - 1);
    if (second.clearance <= straight.clearance) return straight;
    first.corners.push_back(aside.at);
    first.corners.insert(first.corners.end(), second.corners.begin(), second.corners.end());
    if (second.clearance < first.clearance) {
        first.clearance = second.clearance;
        first.tightest = second.tightest;
    }
    return first;
}

/// From a point on a way to a better one across it.
Stand Clearance::step_aside(const Point& from, const Vector& along, double wanted) const {
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
    const Stand found = Clearance(tree_, wanted).highest(around, {1e-4, 24, best.clearance, wanted}).stand;
    return found.clearance > best.clearance ? found : best;
}

}  // namespace seamward
