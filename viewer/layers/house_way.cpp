// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_way.h"

#include <algorithm>
#include <cmath>

namespace seamward::viewer {

namespace {

constexpr double same_place = 1e-4;  ///< meters
constexpr double led_on = 0.9;       ///< meters outdoors before the first gap
constexpr double steep = 0.8;        ///< of the length of a step, its rise
constexpr double led_in = 0.6;       ///< meters into the room behind the last gap

std::vector<Point> without_repeats(const std::vector<Point>& line) {
    std::vector<Point> apart;
    for (const Point& at : line) {
        if (apart.empty() || distance(apart.back(), at) > same_place) apart.push_back(at);
    }
    return apart;
}

/// Straight from place to place through a path's gaps.
std::vector<Point> through_gaps(const House& house, const EntryPath& path) {
    std::vector<Point> line;
    for (std::size_t i = 0; i < path.gaps.size(); ++i) {
        const GapIndex gap = path.gaps[i];
        std::vector<Point> through;
        if (gap.value < house.places.size()) through = house.places[gap.value].through;
        if (through.empty() && house.survey[gap].at) through.push_back(*house.survey[gap].at);
        if (i < path.spaces.size() && house.survey[gap].between[0] != path.spaces[i])
            std::reverse(through.begin(), through.end());
        line.insert(line.end(), through.begin(), through.end());
    }
    return line;
}

/// How far the line runs before it first comes close to a point.
double length_until(const std::vector<Point>& line, const Point& at) {
    double sum = 0;
    double nearest = 1e300;
    double until = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (i > 0) sum += distance(line[i - 1], line[i]);
        if (distance(line[i], at) >= nearest) continue;
        nearest = distance(line[i], at);
        until = sum;
    }
    return until;
}

}  // namespace

std::optional<Point> gap_middle(const House& house, GapIndex gap) {
    if (house.survey[gap].at) return house.survey[gap].at;
    if (gap.value >= house.places.size() || house.places[gap.value].through.empty()) return std::nullopt;
    const std::vector<Point>& through = house.places[gap.value].through;
    return through[through.size() / 2];
}

std::optional<Vector> opens_toward(const House& house, GapIndex gap, SpaceIndex space) {
    if (gap.value >= house.places.size() || house.places[gap.value].through.size() < 2) return std::nullopt;
    const std::vector<Point>& through = house.places[gap.value].through;
    Vector out = through.front() - through.back();
    if (house.survey[gap].between[0] != space) out = out * -1;
    const double whole = length(out);
    const double level = std::hypot(out.x, out.y);
    if (!(level > 0.3 * whole) || !(level > 1e-6)) return std::nullopt;
    return Vector{out.x / level, out.y / level, 0};
}

std::vector<Point> line_of_way(const House& house, const HouseFrame& frame, const DrawnPath& path) {
    const EntryPath& way = path.way.path;
    std::vector<Point> line = without_repeats(path.route.empty() ? through_gaps(house, way) : path.route);
    if (line.empty() || way.gaps.empty()) return {};
    const auto first = gap_middle(house, way.gaps.front());
    const auto last = gap_middle(house, way.gaps.back());
    std::vector<Point> backward(line.rbegin(), line.rend());
    if (first && length_until(line, *first) < led_on / 2) {
        // Beside the wall where it opens downward, as a screed does: straight away from the house.
        Vector out = opens_toward(house, way.gaps.front(), way.from()).value_or(Vector{});
        const Vector back = line.size() > 1 ? line[0] - line[1] : Vector{};
        const bool comes_down = back.z > steep * length(back);  // through a roof
        if (comes_down) out = back * (1 / length(back));
        if (out.x == 0 && out.y == 0 && !comes_down) {
            const Point at = frame.to_scene(line.front());
            const double to_x = std::min(frame.house.high.x - at.x, at.x - frame.house.low.x);
            const double to_y = std::min(frame.house.high.y - at.y, at.y - frame.house.low.y);
            out = to_x < to_y ? Vector{at.x < 0 ? -1.0 : 1.0, 0, 0} : Vector{0, at.y < 0 ? -1.0 : 1.0, 0};
        }
        line.insert(line.begin(), line.front() + out * led_on);
    }
    if (last && length_until(backward, *last) < led_in / 2 && line.size() > 1) {
        const Vector in = line.back() - line[line.size() - 2];
        line.push_back(line.back() + in * (led_in / length(in)));
    }
    for (Point& at : line) at = frame.to_scene(at);
    return line;
}

std::vector<Point> rounded(const std::vector<Point>& line, double radius) {
    if (line.size() < 3) return line;
    constexpr int pieces = 6;
    std::vector<Point> smooth{line.front()};
    for (std::size_t i = 1; i + 1 < line.size(); ++i) {
        const Vector back = line[i - 1] - line[i];
        const Vector ahead = line[i + 1] - line[i];
        const double cut = std::min({radius, length(back) * 0.45, length(ahead) * 0.45});
        const Point from = line[i] + back * (cut / length(back));
        const Point to = line[i] + ahead * (cut / length(ahead));
        for (int piece = 0; piece <= pieces; ++piece) {
            const double t = static_cast<double>(piece) / pieces;
            // The curve of second degree that touches both legs.
            smooth.push_back(line[i] + (from - line[i]) * ((1 - t) * (1 - t)) + (to - line[i]) * (t * t));
        }
    }
    smooth.push_back(line.back());
    return without_repeats(smooth);
}

std::vector<Point> way_through_gap(const House& house, const HouseFrame& frame, GapIndex gap) {
    if (gap.value >= house.places.size()) return {};
    std::vector<Point> way = house.places[gap.value].through;
    const auto rank = [&](SpaceIndex side) {
        const Space& space = house.survey[side];
        return space.starts_paths() ? 0 : space.is_living() ? 3 : space.kind == SpaceKind::attached ? 2 : 1;
    };
    const std::array<SpaceIndex, 2>& sides = house.survey[gap].between;
    if (rank(sides[1]) < rank(sides[0])) std::reverse(way.begin(), way.end());
    for (Point& at : way) at = frame.to_scene(at);
    return without_repeats(way);
}

WayLine way_line_along(const House& house, const HouseFrame& frame, const DrawnPath& path) {
    WayLine way;
    const std::vector<Point> line = line_of_way(house, frame, path);
    const std::vector<GapIndex>& gaps = path.way.path.gaps;
    std::size_t from = 0;  // where the line has come to
    for (std::size_t step = 0; step < gaps.size() && from < line.size(); ++step) {
        const auto middle = gap_middle(house, gaps[step]);
        if (!middle) continue;
        const Point at = frame.to_scene(*middle);
        std::size_t nearest = from;
        for (std::size_t i = from; i < line.size(); ++i) {
            if (distance(line[i], at) < distance(line[nearest], at)) nearest = i;
        }
        const std::vector<Point> between(line.begin() + static_cast<std::ptrdiff_t>(from),
                                         line.begin() + static_cast<std::ptrdiff_t>(nearest) + 1);
        if (way.stops.empty()) {
            way.before = between;
        } else {
            const bool sure = way.stops.back().step + 1 == step;
            way.legs.push_back({between.size() > 1 ? between : std::vector<Point>(), sure});
        }
        way.stops.push_back({step, line[nearest]});
        from = nearest;
    }
    if (!way.stops.empty()) way.after.assign(line.begin() + static_cast<std::ptrdiff_t>(from), line.end());
    return way;
}

}  // namespace seamward::viewer
