// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/hidden_lines.h"

namespace seamward {

namespace {

constexpr int directions = 360;  ///< lines are compared with those of the same and the next half degree

double size_of(Point2 v) { return std::hypot(v.x, v.y); }

int direction_of(const ViewLine& line) {
    double angle = std::atan2(line.to.y - line.from.y, line.to.x - line.from.x);
    if (angle < 0) angle += std::numbers::pi;
    return static_cast<int>(std::lround(angle / std::numbers::pi * directions)) % directions;
}

struct Stretch {
    double from = 0, to = 0;
};

/// A line that stays.
struct Kept {
    ViewLine line;
    Point2 along;
    double run = 0;
};

/// The stretch of a line, in meters from its beginning, that lies within a distance of a line that runs alongside.
Stretch covered(const ViewLine& line, Point2 along, double run, const Kept& kept, double apart) {
    const Point2 from = line.from - kept.line.from, to = line.to - kept.line.from;
    const double off_from = cross(kept.along, from), off_to = cross(kept.along, to);
    Stretch stretch{0, run};
    if (std::abs(off_from) > apart || std::abs(off_to) > apart) {
        if (std::min(std::abs(off_from), std::abs(off_to)) > apart || off_from == off_to) return {};
        // Lines that open like shears: the near part only.
        const double limit = (std::abs(off_from) > apart ? off_from : off_to) > 0 ? apart : -apart;
        const double cut = (limit - off_from) / (off_to - off_from) * run;
        (std::abs(off_from) > apart ? stretch.from : stretch.to) = cut;
    }
    double begin = dot(kept.line.from - line.from, along), end = dot(kept.line.to - line.from, along);
    if (begin > end) std::swap(begin, end);
    return {std::max(stretch.from, begin), std::min(stretch.to, end)};
}

class Merger {
public:
    Merger(double apart, double least) : apart_(apart), least_(least), by_direction_(directions) {}

    void add(const ViewLine& line) {
        const double run = size_of(line.to - line.from);
        if (run < least_) return;
        const Point2 along = (line.to - line.from) * (1 / run);
        const int direction = direction_of(line);
        std::vector<Stretch> taken;
        for (int turn = -1; turn <= 1; ++turn) {
            for (const std::size_t i : by_direction_[static_cast<std::size_t>((direction + turn + directions) % directions)]) {
                const Stretch stretch = covered(line, along, run, kept_[i], apart_);
                if (stretch.to > stretch.from) taken.push_back(stretch);
            }
        }
        std::sort(taken.begin(), taken.end(), [](const Stretch& p, const Stretch& q) { return p.from < q.from; });
        double reached = 0;
        const auto keep = [&](double from, double to) {
            if (to - from < least_) return;
            by_direction_[static_cast<std::size_t>(direction)].push_back(kept_.size());
            kept_.push_back({{line.from + along * from, line.from + along * to, line.kind}, along, to - from});
        };
        for (const Stretch& stretch : taken) {
            keep(reached, stretch.from);
            reached = std::max(reached, stretch.to);
        }
        keep(reached, run);
    }

    [[nodiscard]] std::vector<ViewLine> lines() const {
        std::vector<ViewLine> lines;
        for (const Kept& kept : kept_) lines.push_back(kept.line);
        return lines;
    }

private:
    double apart_, least_;
    std::vector<Kept> kept_;
    std::vector<std::vector<std::size_t>> by_direction_;
};

}  // namespace

std::vector<ViewLine> merged_lines(std::vector<ViewLine> lines, double apart, double least) {
    std::stable_sort(lines.begin(), lines.end(), [](const ViewLine& a, const ViewLine& b) {
        if (a.kind != b.kind) return a.kind < b.kind;
        return size_of(a.to - a.from) > size_of(b.to - b.from);
    });
    Merger merger(apart, least);
    for (const ViewLine& line : lines) merger.add(line);
    return merger.lines();
}

}  // namespace seamward
