// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/triangle_tree.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace seamward {

namespace {

constexpr std::uint32_t leaf_size = 4;

double square(Vector v) { return dot(v, v); }

double coordinate(const Point& p, int axis) { return axis == 0 ? p.x : axis == 1 ? p.y : p.z; }

Point lower(const Point& a, const Point& b) { return {std::min(a.x, b.x), std::min(a.y, b.y), std::min(a.z, b.z)}; }

Point upper(const Point& a, const Point& b) { return {std::max(a.x, b.x), std::max(a.y, b.y), std::max(a.z, b.z)}; }

struct Pair {
    Point first, second;
    double square = 0;
};

/// The places of two segments nearest to each other (the same, 5.1.9).
Pair nearest_of(const Point& p1, const Point& q1, const Point& p2, const Point& q2) {
    const Vector d1 = q1 - p1, d2 = q2 - p2, r = p1 - p2;
    const double a = dot(d1, d1), e = dot(d2, d2), f = dot(d2, r);
    double s = 0, t = 0;
    if (a <= 0) {
        t = e > 0 ? std::clamp(f / e, 0.0, 1.0) : 0;
    } else {
        const double c = dot(d1, r);
        if (e <= 0) {
            s = std::clamp(-c / a, 0.0, 1.0);
        } else {
            const double b = dot(d1, d2), denominator = a * e - b * b;
            if (denominator > 0) s = std::clamp((b * f - c * e) / denominator, 0.0, 1.0);
            t = (b * s + f) / e;
            if (t < 0) {
                t = 0;
                s = std::clamp(-c / a, 0.0, 1.0);
            } else if (t > 1) {
                t = 1;
                s = std::clamp((b - c) / a, 0.0, 1.0);
            }
        }
    }
    Pair pair{p1 + d1 * s, p2 + d2 * t, 0};
    pair.square = square(pair.first - pair.second);
    return pair;
}

bool crosses_inside(const TriangleTree::Triangle& t, const Point& a, const Point& b, Point& at) {
    const Vector ab = b - a, e1 = t[1] - t[0], e2 = t[2] - t[0], n = cross(e1, e2);
    const double along = dot(n, ab);
    if (along == 0) return false;
    const double s = dot(n, t[0] - a) / along;
    if (!(s >= 0 && s <= 1)) return false;
    at = a + ab * s;
    return square(nearest_of(t, at) - at) <= 1e-24;
}

struct Segment {
    Point a, b;
    Vector ab, inverse;

    Segment(const Point& from, const Point& to) : a(from), b(to), ab(to - from), inverse{1 / ab.x, 1 / ab.y, 1 / ab.z} {}

    /// Whether the segment comes into a box that is larger than the given one by `around` on all sides.
    [[nodiscard]] bool meets(const Point& low, const Point& high, double around) const {
        double from = 0, to = 1;
        return narrow(a.x, ab.x, inverse.x, low.x - around, high.x + around, from, to) &&
               narrow(a.y, ab.y, inverse.y, low.y - around, high.y + around, from, to) &&
               narrow(a.z, ab.z, inverse.z, low.z - around, high.z + around, from, to);
    }

private:
    static bool narrow(double at, double along, double inverse, double low, double high, double& from, double& to) {
        if (along == 0) return at >= low && at <= high;
        const double s = (low - at) * inverse, t = (high - at) * inverse;
        from = std::max(from, std::min(s, t));
        to = std::min(to, std::max(s, t));
        return from <= to;
    }
};

}  // namespace

// Ericson, Real-Time Collision Detection, 2005, 5.1.5.
Point nearest_of(const TriangleTree::Triangle& t, const Point& p) {
    const Vector ab = t[1] - t[0], ac = t[2] - t[0], ap = p - t[0];
    const double d1 = dot(ab, ap), d2 = dot(ac, ap);
    if (d1 <= 0 && d2 <= 0) return t[0];
    const Vector bp = p - t[1];
    const double d3 = dot(ab, bp), d4 = dot(ac, bp);
    if (d3 >= 0 && d4 <= d3) return t[1];
    const double vc = d1 * d4 - d3 * d2;
    if (vc <= 0 && d1 >= 0 && d3 <= 0) return t[0] + ab * (d1 - d3 > 0 ? d1 / (d1 - d3) : 0);
    const Vector cp = p - t[2];
    const double d5 = dot(ab, cp), d6 = dot(ac, cp);
    if (d6 >= 0 && d5 <= d6) return t[2];
    const double vb = d5 * d2 - d1 * d6;
    if (vb <= 0 && d2 >= 0 && d6 <= 0) return t[0] + ac * (d2 - d6 > 0 ? d2 / (d2 - d6) : 0);
    const double va = d3 * d6 - d5 * d4;
    if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
        const double length = d4 - d3 + d5 - d6;
        return t[1] + (t[2] - t[1]) * (length > 0 ? (d4 - d3) / length : 0);
    }
    const double whole = va + vb + vc;
    if (!(whole > 0)) return t[0];
    return t[0] + ab * (vb / whole) + ac * (vc / whole);
}

double distance(const TriangleTree::Triangle& triangle, const Point& to) { return length(nearest_of(triangle, to) - to); }

TriangleTree::TriangleTree(std::vector<Triangle> triangles)
    : triangles_(std::move(triangles)), given_(triangles_.size()), place_(triangles_.size()) {
    std::iota(given_.begin(), given_.end(), 0u);
    if (triangles_.empty()) return;
    std::vector<Point> middles(triangles_.size());
    for (std::size_t i = 0; i < triangles_.size(); ++i) {
        const Triangle& t = triangles_[i];
        const Point low = lower(lower(t[0], t[1]), t[2]), high = upper(upper(t[0], t[1]), t[2]);
        middles[i] = {(low.x + high.x) / 2, (low.y + high.y) / 2, (low.z + high.z) / 2};
    }
    nodes_.reserve(triangles_.size());
    build(0, static_cast<std::uint32_t>(triangles_.size()), 0, middles);
    std::vector<Triangle> sorted(triangles_.size());
    for (std::uint32_t i = 0; i < given_.size(); ++i) {
        sorted[i] = triangles_[given_[i]];
        place_[given_[i]] = i;
    }
    triangles_ = std::move(sorted);
}

std::uint32_t TriangleTree::build(std::uint32_t first, std::uint32_t last, int depth, const std::vector<Point>& middles) {
    const auto at = static_cast<std::uint32_t>(nodes_.size());
    nodes_.emplace_back();
    Box box{triangles_[given_[first]][0], triangles_[given_[first]][0]};
    Box spread{middles[given_[first]], middles[given_[first]]};
    for (std::uint32_t i = first; i < last; ++i) {
        for (const Point& p : triangles_[given_[i]]) {
            box.low = lower(box.low, p);
            box.high = upper(box.high, p);
        }
        spread.low = lower(spread.low, middles[given_[i]]);
        spread.high = upper(spread.high, middles[given_[i]]);
    }
    nodes_[at].box = box;
    if (last - first <= leaf_size) {
        nodes_[at].first = first;
        nodes_[at].count = last - first;
        return at;
    }
    // Below that depth halves are halves, so that no path is longer than what a walk of the tree has room for.
    constexpr int deep = 28;
    const std::uint32_t half = depth < deep ? divide(first, last, spread, middles) : first + (last - first) / 2;
    build(first, half, depth + 1, middles);
    nodes_[at].first = build(half, last, depth + 1, middles);
    return at;
}

/// Brings the triangles of a node in the order of its two halves and tells where the second begins: of planes along the three
/// axes the one for which the surfaces of the two boxes, weighed by what is in them, are least (Goldsmith and Salmon 1987; in
/// bins).
std::uint32_t TriangleTree::divide(std::uint32_t first, std::uint32_t last, const Box& spread,
                                   const std::vector<Point>& middles) {
    constexpr std::size_t bins = 16;
    struct Bin {
        Box box{{1e300, 1e300, 1e300}, {-1e300, -1e300, -1e300}};
        std::uint32_t count = 0;

        void add(const Point& low, const Point& high, std::uint32_t n) {
            box.low = lower(box.low, low);
            box.high = upper(box.high, high);
            count += n;
        }
        [[nodiscard]] double cost() const {
            const Vector d = box.high - box.low;
            return count == 0 ? 0 : (d.x * d.y + d.y * d.z + d.z * d.x) * count;
        }
    };
    const auto bin_of = [&](std::uint32_t triangle, int axis) {
        const double low = coordinate(spread.low, axis), size = coordinate(spread.high, axis) - low;
        const double part = (coordinate(middles[triangle], axis) - low) / size * bins;
        return std::min(static_cast<std::size_t>(std::max(part, 0.0)), bins - 1);
    };
    double least = 1e300;
    int best_axis = -1;
    std::size_t best_bin = 0;
    for (int axis = 0; axis < 3; ++axis) {
        if (!(coordinate(spread.high, axis) > coordinate(spread.low, axis))) continue;
        std::array<Bin, bins> bin;
        for (std::uint32_t i = first; i < last; ++i) {
            const Triangle& t = triangles_[given_[i]];
            bin[bin_of(given_[i], axis)].add(lower(lower(t[0], t[1]), t[2]), upper(upper(t[0], t[1]), t[2]), 1);
        }
        std::array<double, bins> after{};
        Bin sum;
        for (std::size_t k = bins; k-- > 1;) {
            sum.add(bin[k].box.low, bin[k].box.high, bin[k].count);
            after[k] = sum.cost();
        }
        sum = {};
        for (std::size_t k = 1; k < bins; ++k) {
            sum.add(bin[k - 1].box.low, bin[k - 1].box.high, bin[k - 1].count);
            if (sum.count == 0 || sum.count == last - first || sum.cost() + after[k] >= least) continue;
            least = sum.cost() + after[k];
            best_axis = axis;
            best_bin = k;
        }
    }
    std::uint32_t half = first + (last - first) / 2;
    if (best_axis >= 0) {
        const auto at = std::partition(given_.begin() + first, given_.begin() + last,
                                       [&](std::uint32_t i) { return bin_of(i, best_axis) < best_bin; });
        half = static_cast<std::uint32_t>(at - given_.begin());
    }
    return half;
}

Nearest TriangleTree::nearest(const Point& to, double at_most) const {
    Nearest best{at_most, Nearest::none, to, to};
    if (nodes_.empty()) return best;
    double limit = at_most * at_most;
    struct Entry {
        std::uint32_t node;
        double square;
    };
    std::array<Entry, 64> stack;
    std::size_t depth = 0;
    stack[depth++] = {0, square_to_box(to, nodes_[0].box.low, nodes_[0].box.high)};
    while (depth > 0) {
        const Entry entry = stack[--depth];
        if (entry.square >= limit) continue;
        const Node& node = nodes_[entry.node];
        if (node.count > 0) {
            for (std::uint32_t i = node.first; i < node.first + node.count; ++i) {
                const Point at = nearest_of(triangles_[i], to);
                const double d = square(at - to);
                if (d < limit) {
                    limit = d;
                    best.triangle = given_[i];
                    best.on_triangle = at;
                }
            }
            continue;
        }
        const std::uint32_t left = entry.node + 1, right = node.first;
        const double l = square_to_box(to, nodes_[left].box.low, nodes_[left].box.high);
        const double r = square_to_box(to, nodes_[right].box.low, nodes_[right].box.high);
        if (l <= r) {
            stack[depth++] = {right, r};
            stack[depth++] = {left, l};
        } else {
            stack[depth++] = {left, l};
            stack[depth++] = {right, r};
        }
    }
    if (best.found()) best.distance = std::sqrt(limit);
    return best;
}

Nearest TriangleTree::nearest(const Point& a, const Point& b, double at_most, double near_enough) const {
    Nearest best{at_most, Nearest::none, a, a};
    if (nodes_.empty()) return best;
    const Segment segment(a, b);
    const Point middle = a + segment.ab * 0.5;
    double limit = at_most * at_most, around = at_most;
    const auto take = [&](std::uint32_t i, const Point& on_query, const Point& on_triangle, double d) {
        if (d >= limit) return;
        limit = d;
        around = std::sqrt(d);
        best.triangle = given_[i];
        best.on_query = on_query;
        best.on_triangle = on_triangle;
    };
    std::array<std::uint32_t, 64> stack;
    std::size_t depth = 0;
    stack[depth++] = 0;
    while (depth > 0) {
        const std::uint32_t at = stack[--depth];
        const Node& node = nodes_[at];
        if (!segment.meets(node.box.low, node.box.high, around)) continue;
        if (node.count == 0) {
            const std::uint32_t left = at + 1, right = node.first;
            const bool left_first = square_to_box(middle, nodes_[left].box.low, nodes_[left].box.high) <=
                                    square_to_box(middle, nodes_[right].box.low, nodes_[right].box.high);
            stack[depth++] = left_first ? right : left;
            stack[depth++] = left_first ? left : right;
            continue;
        }
        for (std::uint32_t i = node.first; i < node.first + node.count; ++i) {
            const Triangle& t = triangles_[i];
            Point low = lower(lower(t[0], t[1]), t[2]), high = upper(upper(t[0], t[1]), t[2]);
            if (!segment.meets(low, high, around)) continue;
            Point cut;
            if (crosses_inside(t, a, b, cut)) take(i, cut, cut, 0);
            for (const Point& end : {a, b}) {
                const Point on = nearest_of(t, end);
                take(i, end, on, square(on - end));
            }
            for (std::size_t k = 0; k < 3; ++k) {
                const Pair pair = nearest_of(a, b, t[k], t[(k + 1) % 3]);
                take(i, pair.first, pair.second, pair.square);
            }
            if (around < near_enough) depth = 0;
        }
    }
    if (best.found()) best.distance = std::sqrt(limit);
    return best;
}

/// +1 or -1 when the upright ray above `from` crosses the triangle, by the way it faces; edges belong to the side of smaller
/// coordinates, so that a ray meets just one of two triangles at an edge.
int TriangleTree::crosses(const Triangle& t, const Point& from) {
    int winding = 0;
    for (std::size_t k = 0; k < 3; ++k) {
        const Point& p = t[k];
        const Point& q = t[(k + 1) % 3];
        const bool p_right = p.x > from.x, q_right = q.x > from.x;
        if (p_right == q_right) continue;
        // The edge taken from its left end, so that both triangles at it compute the same number.
        const Point& l = p_right ? q : p;
        const Point& r = p_right ? p : q;
        const double side = (r.x - l.x) * (from.y - l.y) - (r.y - l.y) * (from.x - l.x);
        if (side < 0) winding += q_right ? 1 : -1;  // the edge passes above in plan
    }
    if (winding == 0) return 0;
    const Vector n = cross(t[1] - t[0], t[2] - t[0]);
    if (n.z == 0) return 0;
    const double z = t[0].z - (n.x * (from.x - t[0].x) + n.y * (from.y - t[0].y)) / n.z;
    if (!(z > from.z)) return 0;
    return n.z > 0 ? 1 : -1;
}

}  // namespace seamward
