// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "geometry/remainder.h"
#include "house/shell.h"
#include "house/stories.h"

namespace seamward {

namespace {

double area_of(const Figure& figure) {
    double area = std::abs(doubled_area(figure.outline));
    for (const Loop& hole : figure.holes) area -= std::abs(doubled_area(hole));
    return area / 2;
}

bool boxes_touch(const Loop& a, const Loop& b) {
    const auto range = [](const Loop& loop, double Point2::*axis) {
        const auto [least, most] =
            std::minmax_element(loop.begin(), loop.end(), [&](Point2 p, Point2 q) { return p.*axis < q.*axis; });
        return std::pair{(*least).*axis, (*most).*axis};
    };
    for (double Point2::*axis : {&Point2::x, &Point2::y}) {
        const auto of_a = range(a, axis), of_b = range(b, axis);
        if (of_a.first > of_b.second || of_b.first > of_a.second) return false;
    }
    return true;
}

class PartitionCheck {
public:
    explicit PartitionCheck(Layout& layout) : layout_(layout) {
        for (const WallLayout& wall : layout.walls) {
            if (!wall.exterior) partitions_.push_back(&wall);
        }
        for (const PartitionDescription& partition : layout.described.partitions) places_.emplace(partition.id, partition.place);
    }

    void run() {
        within_the_house();
        if (told_) return;  // what follows would be told of partitions that are moved anyway
        for (std::size_t i = 0; i < partitions_.size(); ++i) {
            for (std::size_t k = i + 1; k < partitions_.size(); ++k) apart(*partitions_[i], *partitions_[k]);
        }
        if (told_) return;
        for (const OpeningDescription& opening : layout_.described.openings) {
            if (opening.kind != OpeningKind::crawl_door) clear_of_partitions(opening);
        }
    }

private:
    void report(Place place, std::string what, std::string mend) {
        layout_.faults.add(place, std::move(what), std::move(mend));
        told_ = true;
    }

    static double thickness(const WallLayout& wall) { return wall.outside() - wall.inside(); }

    [[nodiscard]] Place place_of(const WallLayout& wall) const { return places_.at(wall.described); }

    /// Partitions whose ends are not square to the outside wall reach into it a little.
    void within_the_house() {
        const Loop& framing = layout_.described.outline;
        const Loop inner = offset_outline(framing, std::vector<double>(layout_.edges(), layout_.walls.front().inside()));
        constexpr double slack = 1e-4;  // square meters
        for (const WallLayout* wall : partitions_) {
            if (wall->id != wall->described) continue;  // told in its first story
            const Loop plan = plan_of(*wall);
            const double whole = std::abs(doubled_area(plan)) / 2, into_wall = whole - shared_area(plan, inner);
            const double corner = thickness(*wall) * (thickness(*wall) + 0.04);
            if (whole - shared_area(plan, framing) > slack)
                report(place_of(*wall), "partition " + wall->described + " reaches out of the house",
                       "end it at an outside wall, or within the outline");
            else if (into_wall > 2 * corner)
                report(place_of(*wall), "partition " + wall->described + " stands in an outside wall",
                       "move it to where the room is");
        }
    }

    /// One that ends in the middle of another, further up in the list, shares half of that one's thickness with it; two that meet
    /// at another angle than a square one share a corner. Two that cross share all.
    void apart(const WallLayout& a, const WallLayout& b) {
        if (a.story != b.story || a.described == b.described) return;
        if (a.id != a.described && b.id != b.described) return;  // told of the story below
        const Loop one = plan_of(a), other = plan_of(b);
        if (!boxes_touch(one, other)) return;
        const double turned = std::abs(dot(a.frame.u, b.frame.u));
        const bool square = turned < 0.1 || turned > 0.995;
        const double corner = (square ? 0.75 : 1.5) * thickness(a) * thickness(b);
        if (shared_area(one, other) <= corner) return;
        report(place_of(b), "partitions " + a.described + " and " + b.described + " stand in each other",
               "where one ends at the other, put it further down in the list; where they cross, make two of one");
    }

    void clear_of_partitions(const OpeningDescription& opening) {
        for (const WallLayout& wall : layout_.walls) {
            if (wall.described != opening.in || wall.story != opening.story) continue;
            for (const WallLayout* partition : partitions_) {
                if (partition != &wall && partition->story == wall.story) clear_of(opening, wall, *partition);
            }
        }
    }

    void clear_of(const OpeningDescription& opening, const WallLayout& wall, const WallLayout& partition) {
        constexpr double before = 0.02, touch = 1e-5;
        const Loop plan = plan_of(partition);
        const auto at = [&](double u, double n) {
            const Point p = wall.frame.at(u, 0, n);
            return Point2{p.x, p.y};
        };
        const double left = opening.along - opening.width / 2, right = opening.along + opening.width / 2;
        for (const bool front : {false, true}) {
            if (front && wall.exterior) continue;
            const double low = front ? wall.outside() : wall.inside() - before, high = low + before;
            const Loop strip{at(left, low), at(right, low), at(right, high), at(left, high)};
            if (!boxes_touch(strip, plan) || shared_area(strip, plan) < touch) continue;
            double from = wall.length, to = 0;
            for (const Point2 p : plan) {
                const double u = dot(Point{p.x, p.y, 0} - wall.frame.origin, wall.frame.u);
                from = std::min(from, u);
                to = std::max(to, u);
            }
            report(opening.place, opening.id + " stands across the end of partition " + partition.described,
                   "keep it clear of " + in_meters(from) + " to " + in_meters(to) + " along " + wall.name +
                       ", where that partition stands");
            return;
        }
    }

    Layout& layout_;
    std::vector<const WallLayout*> partitions_;
    std::map<std::string, Place> places_;
    bool told_ = false;
};

}  // namespace

double shared_area(const Loop& a, const Loop& b) {
    const std::vector<Loop> cut{b};
    double left = 0;
    for (const CutFigure& piece : remainder(a, cut)) left += area_of(piece.figure);
    return std::abs(doubled_area(a)) / 2 - left;
}

void check_partitions(Layout& layout) { PartitionCheck(layout).run(); }

}  // namespace seamward
