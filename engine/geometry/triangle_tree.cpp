// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/triangle_tree.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace seamward {

namespace {

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

/// The edges pass all on one side of the line from `a` to `b`, looked at from there, so that it does not matter how far from the
/// origin all is.
bool crosses_inside(const TriangleTree::Triangle& t, const Point& a, const Point& b, Point& at) {
    const Vector ab = b - a, p = t[0] - a, q = t[1] - a, r = t[2] - a, n = cross(q - p, r - p);
    const double along = dot(n, ab);
    if (along == 0) return false;
    const double s = dot(n, p) / along;
    if (!(s >= 0 && s <= 1)) return false;
    const double u = dot(ab, cross(p, q)), v = dot(ab, cross(q, r)), w = dot(ab, cross(r, p));
    if (std::min({u, v, w}) < 0 && std::max({u, v, w}) > 0) return false;
    at = a + ab * s;
    // Where the segment lies in the plane of the triangle all of that is rounding.
    constexpr double touching = 1e-9;  // meters
    const TriangleTree::Triangle from_a{Point{} + p, Point{} + q, Point{} + r};
    const Point on = Point{} + ab * s;
    return square(nearest_of(from_a, on) - on) <= touching * touching;
}

/// Whether a segment lies beyond the plane of a triangle, or beyond a plane on one of its edges, by more than the root of
/// `limit`. Often it does not while that is true, but it is told soon.
bool is_beyond(const TriangleTree::Triangle& t, const Point& a, const Point& b, double limit) {
    const Vector e = t[1] - t[0], f = t[2] - t[0], n = cross(e, f);
    if (dot(n, n) <= 1e-20 * dot(e, e) * dot(f, f)) return false;  // a needle, whose normal is rounding
    const auto beyond = [&](const Vector& direction, const Point& from) {
        const double p = dot(direction, a - from), q = dot(direction, b - from);
        const double off = p > 0 && q > 0 ? std::min(p, q) : 0;
        return off * off > limit * dot(direction, direction);
    };
    const double p = dot(n, a - t[0]), q = dot(n, b - t[0]);
    const double off = p * q > 0 ? std::min(std::abs(p), std::abs(q)) : 0;
    if (off * off > limit * dot(n, n)) return true;
    for (std::size_t k = 0; k < 3; ++k) {
        if (beyond(cross(t[(k + 1) % 3] - t[k], n), t[k])) return true;
    }
    return false;
}

/// The next number of single precision that is not above, or not below.
float rounded_down(double value) {
    const auto near = static_cast<float>(value);
    return near > value ? std::nextafter(near, -std::numeric_limits<float>::infinity()) : near;
}

float rounded_up(double value) {
    const auto near = static_cast<float>(value);
    return near < value ? std::nextafter(near, std::numeric_limits<float>::infinity()) : near;
}

double median(const std::vector<Point>& points, int axis) {
    std::vector<double> along(points.size());
    std::transform(points.begin(), points.end(), along.begin(), [&](const Point& p) { return coordinate(p, axis); });
    const auto half = along.begin() + static_cast<std::ptrdiff_t>(along.size() / 2);
    std::nth_element(along.begin(), half, along.end());
    return *half;
}

/// One over a number, or something so large that it says the same.
float inverse_of(float value) {
    constexpr float most = 1e30F;
    return value == 0 ? most : std::clamp(1 / value, -most, most);
}

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
    middle_ = {median(middles, 0), median(middles, 1), median(middles, 2)};
    nodes_.reserve(triangles_.size() / 2 + 1);
    build(0, static_cast<std::uint32_t>(triangles_.size()), 0, middles);
    std::vector<Triangle> sorted(triangles_.size());
    for (std::uint32_t i = 0; i < given_.size(); ++i) {
        sorted[i] = triangles_[given_[i]];
        place_[given_[i]] = i;
    }
    triangles_ = std::move(sorted);
}

TriangleTree::Box TriangleTree::box_of(std::uint32_t first, std::uint32_t last) const {
    Box box{triangles_[given_[first]][0], triangles_[given_[first]][0]};
    for (std::uint32_t i = first; i < last; ++i) {
        for (const Point& p : triangles_[given_[i]]) {
            box.low = lower(box.low, p);
            box.high = upper(box.high, p);
        }
    }
    return box;
}

/// Halves, and halves of what is most in number, are the children.
std::uint32_t TriangleTree::build(std::uint32_t first, std::uint32_t last, int depth, const std::vector<Point>& middles) {
    struct Range {
        std::uint32_t first, last;
        int depth;
    };
    const auto at = static_cast<std::uint32_t>(nodes_.size());
    nodes_.emplace_back();
    std::array<Range, wide> ranges{Range{first, last, depth}};
    std::size_t count = 1;
    while (count < wide) {
        const auto largest = std::max_element(ranges.begin(), ranges.begin() + static_cast<std::ptrdiff_t>(count),
                                              [](Range a, Range b) { return a.last - a.first < b.last - b.first; });
        const Range whole = *largest;
        if (whole.last - whole.first < 2) break;
        Box spread{middles[given_[whole.first]], middles[given_[whole.first]]};
        for (std::uint32_t i = whole.first; i < whole.last; ++i) {
            spread.low = lower(spread.low, middles[given_[i]]);
            spread.high = upper(spread.high, middles[given_[i]]);
        }
        // Below that depth halves are halves, so that no path is longer than what a walk of the tree has room for.
        constexpr int deep = 28;
        const std::uint32_t half =
            whole.depth < deep ? divide(whole.first, whole.last, spread, middles) : whole.first + (whole.last - whole.first) / 2;
        // In the order of the triangles, so that the children are.
        std::move_backward(largest + 1, ranges.begin() + static_cast<std::ptrdiff_t>(count),
                           ranges.begin() + static_cast<std::ptrdiff_t>(count + 1));
        *largest = {whole.first, half, whole.depth + 1};
        *(largest + 1) = {half, whole.last, whole.depth + 1};
        ++count;
    }
    for (std::size_t k = 0; k < wide; ++k) {
        if (k >= count) {
            for (std::size_t axis = 0; axis < 3; ++axis) {
                nodes_[at].low[axis][k] = std::numeric_limits<float>::infinity();
                nodes_[at].high[axis][k] = -std::numeric_limits<float>::infinity();
            }
            nodes_[at].child[k] = nothing;
            continue;
        }
        const Box box = box_of(ranges[k].first, ranges[k].last);
        for (int axis = 0; axis < 3; ++axis) {
            const double from = coordinate(middle_, axis);
            nodes_[at].low[static_cast<std::size_t>(axis)][k] = rounded_down(coordinate(box.low, axis) - from);
            nodes_[at].high[static_cast<std::size_t>(axis)][k] = rounded_up(coordinate(box.high, axis) - from);
        }
        const bool one = ranges[k].last - ranges[k].first == 1;
        const std::uint32_t child =
            one ? ranges[k].first | leaf : build(ranges[k].first, ranges[k].last, ranges[k].depth, middles);
        nodes_[at].child[k] = child;
    }
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
    const Seen p = seen(to);
    double limit = at_most * at_most;
    struct Entry {
        float square;
        std::uint32_t child;
    };
    std::array<Entry, most_waiting> stack;
    std::size_t depth = 0;
    stack[depth++] = {0, 0};
    while (depth > 0) {
        const Entry entry = stack[--depth];
        if (entry.square >= limit) continue;
        const Node& node = nodes_[entry.child];
        const Four off = squares(node, p);
        // The nearest on top.
        const std::size_t bottom = depth;
        for (std::size_t k = wide; k-- > 0;) {
            if (!(off[k] < limit)) continue;
            std::size_t slot = depth++;
            for (; slot > bottom && stack[slot - 1].square < off[k]; --slot) stack[slot] = stack[slot - 1];
            stack[slot] = {off[k], node.child[k]};
        }
        // Triangles at once, the nearest first; what waits are boxes.
        std::size_t boxes = bottom;
        for (std::size_t slot = depth; slot-- > bottom;) {
            if ((stack[slot].child & leaf) == 0 || stack[slot].square >= limit) continue;
            const std::uint32_t i = stack[slot].child & ~leaf;
            const Point at = nearest_of(triangles_[i], to);
            const double d = square(at - to);
            if (d < limit) {
                limit = d;
                best.triangle = given_[i];
                best.on_triangle = at;
            }
        }
        for (std::size_t slot = bottom; slot < depth; ++slot) {
            if ((stack[slot].child & leaf) == 0) stack[boxes++] = stack[slot];
        }
        depth = boxes;
    }
    if (best.found()) best.distance = std::sqrt(limit);
    return best;
}

Nearest TriangleTree::nearest(const Point& a, const Point& b, double at_most, double near_enough) const {
    Nearest best{at_most, Nearest::none, a, a};
    if (nodes_.empty()) return best;
    const Vector ab = b - a;
    const Seen from = seen(a), middle = seen(a + ab * 0.5);
    const std::array<float, 3> along{static_cast<float>(ab.x), static_cast<float>(ab.y), static_cast<float>(ab.z)};
    const std::array<float, 3> inverse{inverse_of(along[0]), inverse_of(along[1]), inverse_of(along[2])};
    const float slack = from.slack + 1e-6F * (std::abs(along[0]) + std::abs(along[1]) + std::abs(along[2]));
    double limit = at_most * at_most, around = at_most;
    const auto take = [&](std::uint32_t i, const Point& on_query, const Point& on_triangle, double d) {
        if (d >= limit) return;
        limit = d;
        around = std::sqrt(d);
        best.triangle = given_[i];
        best.on_query = on_query;
        best.on_triangle = on_triangle;
    };
    struct Entry {
        float square;  // from the middle of the segment
        std::uint32_t child;
    };
    std::array<Entry, most_waiting> stack;
    std::size_t depth = 0;
    stack[depth++] = {0, 0};
    while (depth > 0) {
        const Node& node = nodes_[stack[--depth].child];
        // The segment comes into a box that is larger by `around` on all sides.
        const float wider = static_cast<float>(around) * (1 + 1e-6F) + slack;
        Four in{0, 0, 0, 0}, out{1, 1, 1, 1};
        for (std::size_t axis = 0; axis < 3; ++axis) {
            const Four s = (node.low[axis] - from.at[axis] - wider) * inverse[axis],
                       t = (node.high[axis] - from.at[axis] + wider) * inverse[axis];
            const Four first = s < t ? s : t, last = s < t ? t : s;
            in = first > in ? first : in;
            out = last < out ? last : out;
        }
        const Four off = squares(node, middle);
        const std::size_t bottom = depth;
        for (std::size_t k = wide; k-- > 0;) {
            if (node.child[k] == nothing || in[k] > out[k]) continue;
            std::size_t slot = depth++;
            for (; slot > bottom && stack[slot - 1].square < off[k]; --slot) stack[slot] = stack[slot - 1];
            stack[slot] = {off[k], node.child[k]};
        }
        std::size_t boxes = bottom;
        for (std::size_t slot = depth; slot-- > bottom;) {
            if ((stack[slot].child & leaf) == 0) continue;
            const std::uint32_t i = stack[slot].child & ~leaf;
            const Triangle& t = triangles_[i];
            if (is_beyond(t, a, b, limit)) continue;
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
        }
        for (std::size_t slot = bottom; slot < depth; ++slot) {
            if ((stack[slot].child & leaf) == 0) stack[boxes++] = stack[slot];
        }
        depth = around < near_enough ? 0 : boxes;
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
