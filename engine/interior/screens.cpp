// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/screens.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <utility>

namespace seamward {

namespace {

constexpr double alike = 0.1;   // widths of one screen differ by less, as a fraction
constexpr std::size_t few = 5;  // fewer are openings side by side

/// Meters between two segments (Ericson 2005, 5.1.9).
double apart(const Point& a, const Point& b, const Point& c, const Point& d) {
    const Vector u = b - a, v = d - c, w = a - c;
    const double uu = dot(u, u), vv = dot(v, v), uv = dot(u, v), uw = dot(u, w), vw = dot(v, w);
    const double beside = uu * vv - uv * uv;
    double s = beside > 1e-12 * uu * vv ? std::clamp((uv * vw - uw * vv) / beside, 0.0, 1.0) : 0;
    double t = vv > 0 ? (uv * s + vw) / vv : 0;
    if (t < 0 || t > 1) {
        t = std::clamp(t, 0.0, 1.0);
        s = uu > 0 ? std::clamp((uv * t - uw) / uu, 0.0, 1.0) : 0;
    }
    return length(w + u * s - v * t);
}

/// Whether two mouths are no farther apart than that, edge to edge. Boxes around what lies askew overlap long before.
bool are_near(const MeasuredOpening& a, const MeasuredOpening& b, double most) {
    const double x = std::max({0.0, a.low.x - b.high.x, b.low.x - a.high.x});
    const double y = std::max({0.0, a.low.y - b.high.y, b.low.y - a.high.y});
    const double z = std::max({0.0, a.low.z - b.high.z, b.low.z - a.high.z});
    if (x * x + y * y + z * z > most * most) return false;
    for (const ConvexPolygon& p : a.mouth) {
        for (const ConvexPolygon& q : b.mouth) {
            for (std::size_t i = 0; i < p.size(); ++i) {
                for (std::size_t j = 0; j < q.size(); ++j) {
                    if (apart(p[i], p[(i + 1) % p.size()], q[j], q[(j + 1) % q.size()]) <= most) return true;
                }
            }
        }
    }
    return false;
}

bool are_alike(double a, double b) { return std::abs(a - b) <= alike * std::max(a, b); }

/// Parts that hold the ball in openings that are put together: up to three, since wires that cross may be drawn as two, and the
/// outermost openings are held by the frame as well.
class Holders {
public:
    explicit Holders(const MeasuredOpening& of) : parts_{of.parts[0], of.parts[1]} {}

    /// False, and nothing done, where it would be more.
    [[nodiscard]] bool take(const Holders& other) {
        std::set<std::uint32_t> all = parts_;
        all.insert(other.parts_.begin(), other.parts_.end());
        if (all.size() > 3) return false;
        parts_ = std::move(all);
        return true;
    }

private:
    std::set<std::uint32_t> parts_;
};

/// The two larger sides of the box around the openings, multiplied: screens are flat.
double area_of(const std::vector<std::size_t>& members, const std::vector<MeasuredOpening>& measured) {
    Point low = measured[members[0]].low, high = measured[members[0]].high;
    for (const std::size_t i : members) {
        const MeasuredOpening& m = measured[i];
        low = {std::min(low.x, m.low.x), std::min(low.y, m.low.y), std::min(low.z, m.low.z)};
        high = {std::max(high.x, m.high.x), std::max(high.y, m.high.y), std::max(high.z, m.high.z)};
    }
    std::array<double, 3> sides{high.x - low.x, high.y - low.y, high.z - low.z};
    std::sort(sides.begin(), sides.end());
    return sides[1] * sides[2];
}

}  // namespace

std::vector<Screen> find_screens(const std::vector<Opening>& openings, const std::vector<MeasuredOpening>& measured) {
    std::vector<std::size_t> parent(measured.size());
    std::iota(parent.begin(), parent.end(), std::size_t{0});
    const auto find = [&](std::size_t x) {
        while (parent[x] != x) x = parent[x] = parent[parent[x]];
        return x;
    };
    std::vector<Holders> holders(measured.begin(), measured.end());
    std::map<std::array<std::int32_t, 2>, std::vector<std::size_t>> by_bodies;
    for (std::size_t i = 0; i < measured.size(); ++i) by_bodies[{openings[i].first, openings[i].second}].push_back(i);
    for (auto& [key, list] : by_bodies) {
        std::sort(list.begin(), list.end(), [&](std::size_t i, std::size_t j) {
            return measured[i].low.x != measured[j].low.x ? measured[i].low.x < measured[j].low.x : i < j;
        });
        for (std::size_t k = 0; k < list.size(); ++k) {
            const MeasuredOpening& a = measured[list[k]];
            for (std::size_t l = k + 1; l < list.size() && measured[list[l]].low.x <= a.high.x + a.width * (1 + alike); ++l) {
                const MeasuredOpening& b = measured[list[l]];
                const std::size_t x = find(list[k]), y = find(list[l]);
                if (x == y || !are_alike(a.width, b.width) || !are_alike(a.length, b.length) ||
                    !are_near(a, b, std::min(a.width, b.width)))
                    continue;
                if (holders[std::min(x, y)].take(holders[std::max(x, y)])) parent[std::max(x, y)] = std::min(x, y);
            }
        }
    }
    std::map<std::size_t, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < measured.size(); ++i) groups[find(i)].push_back(i);
    std::vector<Screen> screens;
    for (auto& [first, members] : groups) {
        if (members.size() < few) {
            for (const std::size_t i : members) screens.push_back({{i}, 0});
            continue;
        }
        std::stable_sort(members.begin(), members.end(),
                         [&](std::size_t i, std::size_t j) { return measured[i].width > measured[j].width; });
        screens.push_back({members, area_of(members, measured)});
    }
    return screens;
}

}  // namespace seamward
