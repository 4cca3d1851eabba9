// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/screens.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <utility>

#include "geometry/hull_area.h"
#include "graph/union_find.h"

namespace seamward {

namespace {

constexpr double alike = 0.1;    // widths of one screen differ by less, as a fraction
constexpr double as_far = 1.05;  // widths between mouths: what is drawn one width apart is measured a little narrower
constexpr std::size_t few = 5;   // fewer are openings side by side

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

/// Openings that are put together: all as wide and as long as each other, and held by up to three parts, since wires that cross
/// may be drawn as two, and the outermost openings are held by the frame as well.
class Group {
public:
    explicit Group(const MeasuredOpening& of)
        : parts_{of.parts[0], of.parts[1]}, width_{of.width, of.width}, length_{of.length, of.length} {}

    [[nodiscard]] bool goes_with(const Group& other) const {
        if (!width_.with(other.width_).is_narrow() || !length_.with(other.length_).is_narrow()) return false;
        std::set<std::uint32_t> all = parts_;
        all.insert(other.parts_.begin(), other.parts_.end());
        return all.size() <= 3;
    }
    void take(const Group& other) {
        parts_.insert(other.parts_.begin(), other.parts_.end());
        width_ = width_.with(other.width_);
        length_ = length_.with(other.length_);
    }

private:
    struct Range {
        double least, most;
        [[nodiscard]] Range with(const Range& other) const { return {std::min(least, other.least), std::max(most, other.most)}; }
        [[nodiscard]] bool is_narrow() const { return most - least <= alike * most; }
    };

    std::set<std::uint32_t> parts_;
    Range width_, length_;
};

/// Square meters around all mouths, as seen along the cut across the widest: screens are flat.
double area_of(const std::vector<std::size_t>& members, const std::vector<MeasuredOpening>& measured) {
    const MeasuredOpening& widest = measured[members[0]];
    const Vector normal = widest.cut ? widest.cut->normal : cut_of(widest.mouth).normal;
    std::vector<Point> corners;
    for (const std::size_t i : members) {
        for (const ConvexPolygon& piece : measured[i].mouth) corners.insert(corners.end(), piece.begin(), piece.end());
    }
    return hull_area(corners, normal);
}

/// The coordinate along which openings are spread the most.
double Point::*longest_axis(const std::vector<std::size_t>& list, const std::vector<MeasuredOpening>& measured) {
    double Point::*best = &Point::x;
    double most = -1;
    for (double Point::*axis : {&Point::x, &Point::y, &Point::z}) {
        const auto [low, high] = std::ranges::minmax(list, {}, [&](std::size_t i) { return measured[i].low.*axis; });
        const double spread = measured[high].low.*axis - measured[low].low.*axis;
        if (spread > most) {
            most = spread;
            best = axis;
        }
    }
    return best;
}

}  // namespace

std::vector<Screen> find_screens(const std::vector<Opening>& openings, const std::vector<MeasuredOpening>& measured) {
    UnionFind joined(measured.size());
    std::vector<Group> group(measured.begin(), measured.end());
    std::map<std::array<std::int32_t, 2>, std::vector<std::size_t>> by_bodies;
    for (std::size_t i = 0; i < measured.size(); ++i) by_bodies[{openings[i].first, openings[i].second}].push_back(i);
    for (auto& [key, list] : by_bodies) {
        double Point::*axis = longest_axis(list, measured);
        std::ranges::stable_sort(list, {}, [&](std::size_t i) { return measured[i].low.*axis; });
        for (std::size_t k = 0; k < list.size(); ++k) {
            const MeasuredOpening& a = measured[list[k]];
            for (std::size_t l = k + 1; l < list.size() && measured[list[l]].low.*axis <= a.high.*axis + a.width * as_far; ++l) {
                const MeasuredOpening& b = measured[list[l]];
                const auto [x, y] = std::minmax(
                    {joined.find(static_cast<std::uint32_t>(list[k])), joined.find(static_cast<std::uint32_t>(list[l]))});
                if (x == y || !group[x].goes_with(group[y]) || !are_near(a, b, as_far * std::min(a.width, b.width))) continue;
                group[x].take(group[y]);
                joined.join(x, y);
            }
        }
    }
    std::map<std::uint32_t, std::vector<std::size_t>> groups;
    for (std::uint32_t i = 0; i < measured.size(); ++i) groups[joined.find(i)].push_back(i);
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
