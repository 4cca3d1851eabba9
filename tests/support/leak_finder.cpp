// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/leak_finder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>
#include <map>
#include <optional>
#include <string>

#include "house/build_house.h"
#include "house/inner_way.h"

namespace seamward::test {

namespace {

using Coordinates = std::array<double, 3>;
using Box = std::array<std::int64_t, 3>;

Coordinates coordinates(const Point& p) { return {p.x, p.y, p.z}; }

struct Triangle {
    std::array<Coordinates, 3> corners;
};

/// Whether the line from one point to another meets no triangle.
bool sees(const std::vector<Triangle>& triangles, const Coordinates& from, const Coordinates& to) {
    const auto minus = [](const Coordinates& p, const Coordinates& q) {
        return Coordinates{p[0] - q[0], p[1] - q[1], p[2] - q[2]};
    };
    const auto times = [](const Coordinates& p, const Coordinates& q) {
        return Coordinates{p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]};
    };
    const auto dot = [](const Coordinates& p, const Coordinates& q) { return p[0] * q[0] + p[1] * q[1] + p[2] * q[2]; };
    const Coordinates along = minus(to, from);
    for (const Triangle& triangle : triangles) {
        const auto& [a, b, c] = triangle.corners;
        if (std::max({a[0], b[0], c[0]}) < std::min(from[0], to[0]) || std::min({a[0], b[0], c[0]}) > std::max(from[0], to[0]))
            continue;
        const Coordinates ab = minus(b, a), ac = minus(c, a), cross = times(along, ac);
        const double volume = dot(ab, cross);
        if (std::abs(volume) < 1e-18) continue;
        const Coordinates off = minus(from, a), turned = times(off, ab);
        const double s = dot(off, cross) / volume, t = dot(along, turned) / volume, at = dot(ac, turned) / volume;
        if (s >= -1e-9 && t >= -1e-9 && s + t <= 1 + 1e-9 && at >= -1e-9 && at <= 1 + 1e-9) return false;
    }
    return true;
}

std::vector<Triangle> triangles_of(const House& house) {
    std::vector<Triangle> out;
    for (const Part& part : house.parts) {
        for (const auto& [a, b, c] : part.mesh.triangles)
            out.push_back(
                {{coordinates(part.mesh.points[a]), coordinates(part.mesh.points[b]), coordinates(part.mesh.points[c])}});
    }
    return out;
}

}  // namespace

House shut_house(const HouseDescription& described) {
    const RunContext context;
    std::map<std::string, double> widths;
    for (const Gap& gap : build_house(described, {}, Make::survey, context).survey.gaps) widths[gap.id] = 0;
    return build_house(described, widths, Make::solids, context);
}

double pitch_for(const HouseDescription& described, const House& house) {
    constexpr double most_boxes = 30e6, coarsest = 0.05;
    double thinnest = coarsest;
    for (const Assembly& assembly : described.assemblies) {
        for (const WallLayer& layer : assembly.layers) {
            if (layer.is_air()) thinnest = std::min(thinnest, layer.thickness * 0.95);
        }
    }
    Coordinates low, high;
    low.fill(std::numeric_limits<double>::infinity());
    high.fill(-std::numeric_limits<double>::infinity());
    for (const Part& part : house.parts) {
        if (part.layer == Layer::ground) continue;
        for (const Point& point : part.mesh.points) {
            for (std::size_t a = 0; a < 3; ++a) {
                low[a] = std::min(low[a], coordinates(point)[a]);
                high[a] = std::max(high[a], coordinates(point)[a]);
            }
        }
    }
    return std::min(thinnest, std::cbrt((high[0] - low[0]) * (high[1] - low[1]) * (high[2] - low[2]) / most_boxes));
}

struct AirMap::Impl {
    Impl(const House& house, const LeakSearch& search) : house_(house), pitch_(search.pitch), triangles_(triangles_of(house)) {
        Coordinates low, high;
        low.fill(std::numeric_limits<double>::infinity());
        high.fill(-std::numeric_limits<double>::infinity());
        for (const Part& part : house.parts) {
            if (part.layer == Layer::ground || part.id.starts_with("paving/")) continue;
            for (const Point& point : part.mesh.points) {
                for (std::size_t a = 0; a < 3; ++a) {
                    low[a] = std::min(low[a], coordinates(point)[a]);
                    high[a] = std::max(high[a], coordinates(point)[a]);
                }
            }
        }
        constexpr double margin = 0.25;  // of open air round the house
        // No middle of a box lies in a plane that anyone would describe.
        constexpr Coordinates odd{0.382, 0.618, 0.271};
        for (std::size_t a = 0; a < 3; ++a) {
            const double step = odd[a] + search.shift * 0.7548776662 * (static_cast<double>(a) + 1);
            origin_[a] = low[a] - margin + pitch_ * (step - std::floor(step));
            size_[a] = static_cast<std::int64_t>((high[a] + margin - origin_[a]) / pitch_) + 1;
        }
        walls_.assign(static_cast<std::size_t>(size_[0] * size_[1] * size_[2]), 0);
        for (const Triangle& triangle : triangles_) {
            for (std::size_t axis = 0; axis < 3; ++axis) put_wall(triangle, axis);
        }
        sort_air();
    }

    void sort_air() {
        owner_.assign(walls_.size(), 0);
        std::vector<std::vector<std::size_t>> starts(house_.survey.spaces.size());
        for (std::size_t i = 0; i < starts.size(); ++i) {
            const Space& space = house_.survey.spaces[i];
            if (space.kind == SpaceKind::outdoors)
                starts[i] = {number({0, 0, size_[2] - 1})};
            else if (!house_.middles[i].figure.outline.empty())
                starts[i] = starts_on(house_.middles[i]);
            else
                continue;
            if (starts[i].empty()) unseen_.push_back({static_cast<std::uint32_t>(i)});
        }
        for (std::size_t i = 0; i < starts.size(); ++i) flood(starts[i], static_cast<std::uint16_t>(i + 1), leaks_, starts);
    }

    [[nodiscard]] std::size_t number(const Box& box) const {
        return static_cast<std::size_t>((box[2] * size_[1] + box[1]) * size_[0] + box[0]);
    }
    [[nodiscard]] Box box(std::size_t number) const {
        const auto n = static_cast<std::int64_t>(number);
        return {n % size_[0], n / size_[0] % size_[1], n / size_[0] / size_[1]};
    }
    [[nodiscard]] Coordinates middle(const Box& at) const {
        Coordinates out{};
        for (std::size_t a = 0; a < 3; ++a) out[a] = origin_[a] + pitch_ * static_cast<double>(at[a]);
        return out;
    }

    /// Marks where lines of middles along an axis cross a triangle; a line that meets an edge crosses.
    void put_wall(const Triangle& triangle, std::size_t axis) {
        const std::size_t u = (axis + 1) % 3, v = (axis + 2) % 3;
        const auto& [a, b, c] = triangle.corners;
        const double area = (b[u] - a[u]) * (c[v] - a[v]) - (b[v] - a[v]) * (c[u] - a[u]);
        if (std::abs(area) < 1e-15) return;
        const auto first = [&](std::size_t k) {
            const double low = std::min({a[k], b[k], c[k]});
            return std::max<std::int64_t>(0, static_cast<std::int64_t>(std::ceil((low - origin_[k]) / pitch_ - 1e-9)));
        };
        const auto last = [&](std::size_t k) {
            const double high = std::max({a[k], b[k], c[k]});
            return std::min<std::int64_t>(size_[k] - 1,
                                          static_cast<std::int64_t>(std::floor((high - origin_[k]) / pitch_ + 1e-9)));
        };
        Box at{};
        for (at[u] = first(u); at[u] <= last(u); ++at[u]) {
            for (at[v] = first(v); at[v] <= last(v); ++at[v]) {
                const double x = origin_[u] + pitch_ * static_cast<double>(at[u]) - a[u],
                             y = origin_[v] + pitch_ * static_cast<double>(at[v]) - a[v];
                const double s = (x * (c[v] - a[v]) - y * (c[u] - a[u])) / area,
                             t = ((b[u] - a[u]) * y - (b[v] - a[v]) * x) / area;
                constexpr double slack = 1e-9;
                if (s < -slack || t < -slack || s + t > 1 + slack) continue;
                const double where = a[axis] + s * (b[axis] - a[axis]) + t * (c[axis] - a[axis]);
                at[axis] = static_cast<std::int64_t>(std::floor((where - origin_[axis]) / pitch_));
                if (at[axis] >= 0 && at[axis] < size_[axis]) walls_[number(at)] |= static_cast<std::uint8_t>(1U << axis);
            }
        }
    }

    /// Boxes whose middles see a point of a middle surface.
    [[nodiscard]] std::vector<std::size_t> starts_on(const MiddleSurface& surface) const {
        Point2 least = surface.figure.outline.front(), most = least;
        for (const Point2 p : surface.figure.outline) {
            least = {std::min(least.x, p.x), std::min(least.y, p.y)};
            most = {std::max(most.x, p.x), std::max(most.y, p.y)};
        }
        constexpr int rows = 4;
        std::vector<std::size_t> out;
        for (int i = 0; i <= rows; ++i) {
            for (int j = 0; j <= rows; ++j) {
                const Point2 at{least.x + (most.x - least.x) * i / rows, least.y + (most.y - least.y) * j / rows};
                const std::optional<Point2> p = nearest_inside(surface.figure, at, 0.01);
                if (!p) continue;
                const std::vector<std::size_t> boxes = boxes_seen_from(coordinates(surface.frame.at(p->x, p->y, 0)));
                out.insert(out.end(), boxes.begin(), boxes.end());
            }
        }
        return out;
    }

    /// The boxes round a point whose middles see it; `more` boxes farther to each side.
    [[nodiscard]] std::vector<std::size_t> boxes_seen_from(const Coordinates& eye, std::int64_t more = 0) const {
        std::vector<std::size_t> out;
        Box base{};
        for (std::size_t a = 0; a < 3; ++a) base[a] = static_cast<std::int64_t>(std::floor((eye[a] - origin_[a]) / pitch_));
        const std::int64_t side = 2 + 2 * more;
        for (std::int64_t i = 0; i < side * side * side; ++i) {
            const Box at{base[0] - more + i % side, base[1] - more + i / side % side, base[2] - more + i / side / side};
            const bool inside = std::all_of(at.begin(), at.end(), [](std::int64_t k) { return k >= 0; }) && at[0] < size_[0] &&
                                at[1] < size_[1] && at[2] < size_[2];
            if (inside && sees(triangles_, eye, middle(at))) out.push_back(number(at));
        }
        return out;
    }

    /// Calls `visit` for each box that air reaches from one.
    template <class Visit>
    void for_each_neighbor(std::size_t from, Visit visit) const {
        const Box at = box(from);
        std::size_t stride = 1;
        for (std::size_t axis = 0; axis < 3; ++axis) {
            const auto bit = static_cast<std::uint8_t>(1U << axis);
            if (at[axis] + 1 < size_[axis] && (walls_[from] & bit) == 0) visit(from + stride);
            if (at[axis] > 0 && (walls_[from - stride] & bit) == 0) visit(from - stride);
            stride *= static_cast<std::size_t>(size_[axis]);
        }
    }

    void flood(const std::vector<std::size_t>& starts, std::uint16_t own, std::vector<Leak>& found,
               const std::vector<std::vector<std::size_t>>& all) {
        std::vector<std::uint32_t> met;
        const auto meet = [&](std::size_t at) {
            if (owner_[at] == own) return;
            if (owner_[at] != 0) {
                const std::uint16_t other = owner_[at];
                const bool known = std::any_of(found.begin(), found.end(), [&](const Leak& leak) {
                    return leak.from.value + 1 == other && leak.to.value + 1U == own;
                });
                if (!known) found.push_back({{other - 1U}, {own - 1U}, way(all[other - 1U], at)});
                return;
            }
            owner_[at] = own;
            met.push_back(static_cast<std::uint32_t>(at));
        };
        for (const std::size_t start : starts) meet(start);
        for (std::size_t i = 0; i < met.size(); ++i) for_each_neighbor(met[i], meet);
    }

    [[nodiscard]] std::vector<Point> way(const std::vector<std::size_t>& from, std::size_t to) const {
        std::vector<std::size_t> before(walls_.size(), walls_.size()), met;
        for (const std::size_t start : from) {
            before[start] = start;
            met.push_back(start);
        }
        for (std::size_t i = 0; i < met.size() && before[to] == walls_.size(); ++i) {
            for_each_neighbor(met[i], [&](std::size_t at) {
                if (before[at] != walls_.size()) return;
                before[at] = met[i];
                met.push_back(at);
            });
        }
        std::vector<Point> out;
        for (std::size_t at = to; before[at] != walls_.size(); at = before[at]) {
            const Coordinates p = middle(box(at));
            out.push_back({p[0], p[1], p[2]});
            if (before[at] == at) break;
        }
        std::reverse(out.begin(), out.end());
        return out;
    }

    const House& house_;
    double pitch_;
    std::vector<Triangle> triangles_;
    Coordinates origin_{};
    Box size_{};
    std::vector<std::uint8_t> walls_;   ///< for each box: bit a is set when air cannot go on along axis a
    std::vector<std::uint16_t> owner_;  ///< number of the space, from 1
    std::vector<Leak> leaks_;
    std::vector<SpaceIndex> unseen_;
};

AirMap::AirMap(const House& shut, const LeakSearch& search) : impl_(std::make_unique<Impl>(shut, search)) {}

AirMap::~AirMap() = default;

const std::vector<Leak>& AirMap::leaks() const { return impl_->leaks_; }

const std::vector<SpaceIndex>& AirMap::unseen() const { return impl_->unseen_; }

SpaceIndex AirMap::space_at(const Point& at) const {
    for (const std::int64_t more : {0, 1}) {
        for (const std::size_t box : impl_->boxes_seen_from(coordinates(at), more)) {
            if (impl_->owner_[box] != 0) return {impl_->owner_[box] - 1U};
        }
    }
    return {};
}

bool is_clear(const House& house, std::span<const Point> way) {
    const std::vector<Triangle> triangles = triangles_of(house);
    for (std::size_t i = 0; i + 1 < way.size(); ++i) {
        if (!sees(triangles, coordinates(way[i]), coordinates(way[i + 1]))) return false;
    }
    return true;
}

}  // namespace seamward::test
