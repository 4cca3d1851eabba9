// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/random_loops.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace seamward::test {

namespace {

double length_of(Point2 v) { return std::hypot(v.x, v.y); }

double off_segment(Point2 p, Point2 a, Point2 b) {
    const Point2 along = b - a;
    const double at = std::clamp(dot(p - a, along) / dot(along, along), 0.0, 1.0);
    return length_of(a + along * at - p);
}

double shortest_edge(const Loop& loop) {
    double least = 1e9;
    for (std::size_t i = 0; i < loop.size(); ++i) least = std::min(least, length_of(loop[(i + 1) % loop.size()] - loop[i]));
    return least;
}

bool properly_cross(Point2 a, Point2 b, Point2 p, Point2 q) {
    return cross(b - a, p - a) * cross(b - a, q - a) < 0 && cross(q - p, a - p) * cross(q - p, b - p) < 0;
}

bool crosses_itself(const Loop& loop) {
    const std::size_t n = loop.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = i + 2; k < n; ++k) {
            if (properly_cross(loop[i], loop[i + 1], loop[k], loop[(k + 1) % n])) return true;
        }
    }
    return false;
}

bool is_good(const Loop& loop, double least_edge) {
    return shortest_edge(loop) >= least_edge && narrowest(loop) >= least_edge / 2 && !crosses_itself(loop) &&
           doubled_area(loop) > 0;
}

/// Moves a stretch of an edge outward or inward: two corners more at one end of the edge, four in its middle.
Loop notched(const Loop& loop, std::mt19937& random, bool in_middle, double least_edge) {
    const std::size_t edge = pick(random, loop.size());
    const Point2 a = loop[edge], b = loop[(edge + 1) % loop.size()], along = (b - a) * (1 / length_of(b - a));
    const double length = length_of(b - a), by = uniform(random, least_edge, 4) * (pick(random, 2) == 0 ? 1 : -1);
    const Point2 out = Point2{along.y, -along.x} * by;
    const double from = in_middle ? uniform(random, 0, length) : 0, to = uniform(random, from, length);
    Loop made(loop.begin(), loop.begin() + static_cast<std::ptrdiff_t>(edge) + 1);
    if (in_middle) made.push_back(a + along * from);
    if (!in_middle) made.back() = a + out;
    if (in_middle) made.push_back(a + along * from + out);
    made.push_back(a + along * to + out);
    made.push_back(a + along * to);
    made.insert(made.end(), loop.begin() + static_cast<std::ptrdiff_t>(edge) + 1, loop.end());
    return made;
}

/// Whether each edge runs along x or y: moving the end of an edge may have broken it.
bool is_rectilinear(const Loop& loop) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 step = loop[(i + 1) % loop.size()] - loop[i];
        if (step.x != 0 && step.y != 0) return false;
    }
    return true;
}

/// Rounding must not bend an edge by its last digit.
Loop straightened(Loop loop) {
    for (Point2& p : loop) p = {std::round(p.x * 1024) / 1024, std::round(p.y * 1024) / 1024};
    return loop;
}

}  // namespace

double uniform(std::mt19937& random, double low, double high) {
    return low + (high - low) * static_cast<double>(random()) / static_cast<double>(std::mt19937::max());
}

std::size_t pick(std::mt19937& random, std::size_t count) { return random() % count; }

double narrowest(const Loop& loop) {
    double least = 1e9;
    const std::size_t n = loop.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = 0; k < n; ++k) {
            if (k != i && (k + 1) % n != i) least = std::min(least, off_segment(loop[i], loop[k], loop[(k + 1) % n]));
        }
    }
    return least;
}

Loop random_rectilinear(std::mt19937& random, std::size_t corners, double least_edge) {
    const double width = uniform(random, 5, 20), depth = uniform(random, 4, 14);
    Loop loop = straightened({{0, 0}, {width, 0}, {width, depth}, {0, depth}});
    for (int tries = 0; tries < 2000 && loop.size() + 2 <= corners; ++tries) {
        const bool in_middle = loop.size() + 4 <= corners && pick(random, 2) == 0;
        const Loop next = straightened(notched(loop, random, in_middle, least_edge));
        if (is_rectilinear(next) && is_good(next, least_edge)) loop = next;
    }
    return loop;
}

Loop random_star(std::mt19937& random, std::size_t corners, double least_edge) {
    for (double size = 4;; size *= 1.05) {
        Loop loop;
        for (std::size_t i = 0; i < corners; ++i) {
            const double angle =
                2 * std::numbers::pi * (static_cast<double>(i) + uniform(random, 0, 0.7)) / static_cast<double>(corners);
            loop.push_back(Point2{std::cos(angle), std::sin(angle)} * (size * uniform(random, 0.5, 1.5)));
        }
        if (is_good(loop, least_edge)) return loop;
    }
}

Loop random_convex(std::mt19937& random, std::size_t corners, double least_edge) {
    for (double size = 4;; size *= 1.05) {
        Loop loop;
        const double flat = uniform(random, 0.5, 1);
        for (std::size_t i = 0; i < corners; ++i) {
            const double angle =
                2 * std::numbers::pi * (static_cast<double>(i) + uniform(random, 0, 0.7)) / static_cast<double>(corners);
            loop.push_back({std::cos(angle) * size, std::sin(angle) * size * flat});
        }
        if (is_good(loop, least_edge)) return turned_by(loop, uniform(random, 0, 2 * std::numbers::pi));
    }
}

Loop turned_by(const Loop& loop, double angle) {
    Loop turned;
    const double c = std::cos(angle), s = std::sin(angle);
    for (const Point2 p : loop) turned.push_back({c * p.x - s * p.y, s * p.x + c * p.y});
    return turned;
}

}  // namespace seamward::test
