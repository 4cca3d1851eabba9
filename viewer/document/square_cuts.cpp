// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/square_cuts.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace seamward::viewer {

namespace {

constexpr double same = 1e-6;  ///< meters; coordinates of one line differ by rounding only

Point2 after(const Loop& loop, std::size_t i) { return loop[i + 1 < loop.size() ? i + 1 : 0]; }

double least_along(const Loop& loop, Axis axis) {
    double least = along(loop[0], axis);
    for (const Point2 point : loop) least = std::min(least, along(point, axis));
    return least;
}

double most_along(const Loop& loop, Axis axis) {
    double most = along(loop[0], axis);
    for (const Point2 point : loop) most = std::max(most, along(point, axis));
    return most;
}

/// Area on the low side of a line, by Green's theorem: only sides that run across the line count.
double area_below(const Loop& loop, Axis axis, double at) {
    double sum = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i];
        const Point2 b = after(loop, i);
        sum += along(a, across(axis)) * (std::min(along(b, axis), at) - std::min(along(a, axis), at));
    }
    return axis == Axis::x ? -sum : sum;
}

/// Whether a side of the loop runs through the inside of a box, or the box lies outside.
bool is_clear(const Loop& loop, Point2 low, Point2 high) {
    bool inside = false;
    const Point2 middle = (low + high) * 0.5;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i];
        const Point2 b = after(loop, i);
        const double left = std::min(a.x, b.x);
        const double right = std::max(a.x, b.x);
        const double bottom = std::min(a.y, b.y);
        const double top = std::max(a.y, b.y);
        if (left < high.x - same && right > low.x + same && bottom < high.y - same && top > low.y + same) return false;
        if ((a.y > middle.y) != (b.y > middle.y) && middle.x < a.x) inside = !inside;
    }
    return inside;
}

}  // namespace

bool is_square(const Loop& loop) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 side = after(loop, i) - loop[i];
        if (std::min(std::abs(side.x), std::abs(side.y)) > 0) return false;
    }
    return loop.size() >= 4;
}

std::optional<LoopCut> cut_at(const Loop& loop, Axis axis, double at, double least) {
    LoopCut cut;
    std::array<Point2, 2> ends{};
    std::size_t crossings = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i];
        const Point2 b = after(loop, i);
        const double from = along(a, axis);
        const double to = along(b, axis);
        if (std::abs(from - at) < least - same) return std::nullopt;
        (from < at ? cut.low : cut.high).push_back(a);
        if ((from < at) == (to < at)) continue;
        if (crossings == 2) return std::nullopt;
        const Point2 end = axis == Axis::x ? Point2{at, a.y} : Point2{a.x, at};
        cut.low.push_back(end);
        cut.high.push_back(end);
        ends.at(crossings++) = end;
    }
    if (crossings != 2) return std::nullopt;
    const bool in_order = along(ends[0], across(axis)) < along(ends[1], across(axis));
    cut.from = ends.at(in_order ? 0 : 1);
    cut.to = ends.at(in_order ? 1 : 0);
    return cut;
}

std::optional<LoopCut> cut_share(const Loop& loop, Axis axis, double share) {
    double low = least_along(loop, axis);
    double high = most_along(loop, axis);
    const double wanted = share * doubled_area(loop) / 2;
    for (int i = 0; i < 20; ++i) {
        const double middle = (low + high) / 2;
        (area_below(loop, axis, middle) < wanted ? low : high) = middle;
    }
    for (double away = 0; away < 1.05; away += 0.15) {
        for (const double at : {low + away, low - away}) {
            if (auto cut = cut_at(loop, axis, std::round(at * 100) / 100)) return cut;
        }
    }
    return std::nullopt;
}

bool holds_square(const Loop& loop, double side) {
    // A square that fits can be pushed on until it touches sides on its left and below.
    for (const Point2 a : loop) {
        for (const Point2 b : loop) {
            const Point2 low{a.x, b.y};
            if (is_clear(loop, low, low + Point2{side, side})) return true;
        }
    }
    return false;
}

Border border_of(const Loop& a, const Loop& b) {
    Border best;
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t j = 0; j < b.size(); ++j) {
            for (const Axis axis : {Axis::x, Axis::y}) {
                const double at = along(a[i], axis);
                if (std::abs(along(after(a, i), axis) - at) > same || std::abs(along(b[j], axis) - at) > same ||
                    std::abs(along(after(b, j), axis) - at) > same)
                    continue;
                const Axis other = across(axis);
                const auto [a_from, a_to] = std::minmax({along(a[i], other), along(after(a, i), other)});
                const auto [b_from, b_to] = std::minmax({along(b[j], other), along(after(b, j), other)});
                const double from = std::max(a_from, b_from);
                const double to = std::min(a_to, b_to);
                if (to - from > best.to - best.from) best = {axis, at, from, to};
            }
        }
    }
    return best;
}

double side_on(const Loop& loop, Point2 a, Point2 b) {
    // A loop of no width beside it: the line there and back.
    const Border border = border_of(loop, {a, b});
    return border.to - border.from;
}

}  // namespace seamward::viewer
