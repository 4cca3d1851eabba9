// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/random_house.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <random>
#include <string_view>
#include <vector>

#include "geometry/remainder.h"
#include "geometry/straight_skeleton.h"
#include "house/layout.h"
#include "tests/support/random_loops.h"

namespace seamward::test {

namespace {

std::string meters(double value) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%.4f m", value);
    return text.data();
}

std::string point(Point2 p) { return "[" + meters(p.x) + ", " + meters(p.y) + "]"; }

class Generator {
public:
    Generator(unsigned seed, bool wild) : random_(seed), wild_(wild) {}

    std::string house() {
        text_ = "seamward-house: 1\nname: random house\n";
        choose_outline();
        choose_walls();
        text_ += std::string("foundation: ") +
                 std::array{"{kind: slab}", "{kind: slab, height: 80 mm, space: fill}", "{kind: crawl-space, height: 0.7 m}",
                            "{kind: basement, height: 2.2 m, above_grade: 0.4 m}"}
                     .at(pick(random_, 4)) +
                 "\n";
        stories_ = 1 + pick(random_, 3);
        text_ += "stories:\n";
        for (std::size_t i = 0; i < stories_; ++i)
            text_ +=
                "  - {height: " + meters(uniform(random_, 2.3, 3.2)) + ", floor: " + meters(uniform(random_, 0.2, 0.4)) + "}\n";
        choose_roof();
        for (std::size_t story = 0; story < stories_; ++story) divide(story);
        text_ += list("partitions", partitions_) + list("rooms", rooms_);
        choose_openings();
        choose_features();
        return text_ + list("openings", openings_) + list("features", features_);
    }

private:
    static std::string list(const std::string& key, const std::string& lines) { return lines.empty() ? "" : key + ":\n" + lines; }

    void choose_outline() {
        const std::size_t kind = pick(random_, 4);
        rectilinear_ = kind < 2;
        const Loop loop = rectilinear_ ? random_rectilinear(random_, 4 + 2 * pick(random_, 9), 0.8)
                          : kind == 2  ? random_star(random_, 5 + pick(random_, 8), 0.8)
                                       : random_convex(random_, 4 + pick(random_, 7), 0.8);
        text_ += "outline: [";
        for (const Point2 p : loop) {  // as the file says it, rounded
            outline_.push_back({std::round(p.x * 1e4) / 1e4, std::round(p.y * 1e4) / 1e4});
            text_ += (outline_.size() > 1 ? ", " : "") + point(outline_.back());
        }
        text_ += "]\n";
    }

    [[nodiscard]] std::string wall(std::size_t edge) const { return "wall-" + std::to_string(edge + 1); }
    [[nodiscard]] Point2 corner(std::size_t edge) const { return outline_[edge % outline_.size()]; }
    [[nodiscard]] double length(std::size_t edge) const {
        const Point2 along = corner(edge + 1) - corner(edge);
        return std::hypot(along.x, along.y);
    }

    void choose_walls() {
        const bool brick = pick(random_, 4) == 0;
        cladding_ = brick ? 0.126 : 0.033;
        const double studs = wild_ ? uniform(random_, 0.03, 0.3) : pick(random_, 2) == 0 ? 0.089 : 0.14;
        inside_ = studs + 0.013;
        text_ += "assemblies:\n  - id: wall\n    layers: [";
        text_ += brick ? "{of: brick, thick: 90 mm}, {air: true, thick: 25 mm}, {of: wood, thick: 11 mm}"
                       : "{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}";
        text_ += ", {air: true, thick: " + meters(studs) + "}, {of: drywall, thick: 13 mm}]\n";
        text_ +=
            "  - {id: partition, layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 89 mm}, {of: drywall, thick: 13 "
            "mm}]}\n";
        text_ += "wall_assembly: wall\n";
    }

    void choose_roof() {
        const double overhang = uniform(random_, 0.05, wild_ ? 2 : std::clamp(0.42 * narrowest(outline_), 0.06, 0.9));
        std::string shape = "hip";
        std::string more;
        const std::size_t kind = pick(random_, 5);
        if (kind == 0) {
            shape = "flat";
            more = ", parapet: " + meters(uniform(random_, 0.1, 1));
        } else if (kind == 1 && rectilinear_) {
            shape = "shed";
            more = ", low: " + wall(wild_ ? pick(random_, outline_.size()) : outermost());
        } else if (kind <= 3) {
            for (const std::size_t edge : gable_walls()) more += (more.empty() ? "" : ", ") + wall(edge);
            if (!more.empty()) {
                shape = "gable";
                more = ", gables: [" + more + "]";
            }
        }
        if (shape != "flat") more += ", pitch: " + std::to_string(1 + pick(random_, wild_ ? 36 : 9)) + "/12";
        text_ += "roof: {shape: " + shape + more + ", overhang: " + meters(overhang) +
                 ", rake: " + meters(uniform(random_, 0, wild_ ? 2 : overhang)) + "}\n";
    }

    /// A wall that no corner lies beyond.
    std::size_t outermost() {
        const std::size_t first = pick(random_, outline_.size());
        for (std::size_t i = 0; i < outline_.size(); ++i) {
            const std::size_t edge = (first + i) % outline_.size();
            const Point2 along = corner(edge + 1) - corner(edge);
            if (std::all_of(outline_.begin(), outline_.end(), [&](Point2 p) { return cross(along, p - corner(edge)) > -1e-9; }))
                return edge;
        }
        return 0;
    }

    /// Walls under a single hip end between square corners, some of them.
    std::vector<std::size_t> gable_walls() {
        std::vector<std::size_t> walls;
        const std::vector<SkeletonFace> faces = straight_skeleton(outline_);
        const auto square = [&](std::size_t at) {
            const Point2 a = corner(at) - corner(at + outline_.size() - 1), b = corner(at + 1) - corner(at);
            return std::abs(dot(a, b)) < 1e-9;
        };
        for (std::size_t e = 0; e < outline_.size(); ++e) {
            const bool beside = !walls.empty() && (walls.back() + 1 == e || (e + 1 == outline_.size() && walls.front() == 0));
            if (wild_ && pick(random_, 3) == 0) walls.push_back(e);
            if (!wild_ && faces[e].outline.size() == 3 && square(e) && square(e + 1) && !beside && pick(random_, 3) > 0)
                walls.push_back(e);
        }
        return walls;
    }

    /// Where a line along x or y from a wall to a wall across the plan leaves both ends clear of corners.
    bool add_partition(std::size_t story, std::vector<Loop>& solid) {
        const bool upright = pick(random_, 2) == 0;
        const auto flip = [&](Point2 p) { return upright ? p : Point2{p.y, p.x}; };
        const double at = uniform(random_, -1, 21);
        std::vector<double> meets;
        for (std::size_t e = 0; e < outline_.size(); ++e) {
            const Point2 a = flip(corner(e)), b = flip(corner(e + 1));
            const double low = std::min(a.x, b.x), high = std::max(a.x, b.x);
            if (at < low - 0.7 || at > high + 0.7 || a.y != b.y) continue;
            if (at < low + 0.7 || at > high - 0.7) return false;
            meets.push_back(a.y);
        }
        std::sort(meets.begin(), meets.end());
        if (meets.size() < 2) return false;
        const std::size_t first = 2 * pick(random_, meets.size() / 2);
        const double from = meets[first], to = meets[first + 1];
        if (to - from < 1.5) return false;
        const Point2 low = flip({at - 0.06, from}), high = flip({at + 0.06, to});
        const Loop plan =
            rectangle({std::min(low.x, high.x), std::min(low.y, high.y)}, {std::max(low.x, high.x), std::max(low.y, high.y)});
        for (const Loop& other : solid) {
            if (plan[0].x < other[2].x + 1 && other[0].x < plan[2].x + 1 && plan[0].y < other[2].y + 1 &&
                other[0].y < plan[2].y + 1)
                return false;
        }
        solid.push_back(plan);
        const std::string id = "partition-" + std::to_string(++partition_count_);
        partitions_ += "  - {id: " + id + ", from: " + point(flip({at, from})) + ", to: " + point(flip({at, to})) +
                       ", story: " + std::to_string(story + 1) + "}\n";
        if (pick(random_, 2) == 0)
            openings_ += "  - {id: door-" + id + ", kind: door, in: " + id + ", story: " + std::to_string(story + 1) +
                         ", along: " + meters((to - from) / 2) + ", width: 0.7 m, height: 2 m}\n";
        return true;
    }

    void divide(std::size_t story) {
        std::vector<Loop> solid;
        if (rectilinear_) {
            for (std::size_t tries = pick(random_, 30); tries > 0 && solid.size() < 4; --tries) (void)add_partition(story, solid);
        }
        const Loop inner = offset_outline(outline_, std::vector<double>(outline_.size(), -inside_));
        for (const CutFigure& piece : remainder(inner, solid)) {
            const Figure& figure = piece.figure;
            Point2 middle;
            double widest = 0;
            std::vector<Point2> corners = figure.outline;
            for (const Loop& hole : figure.holes) corners.insert(corners.end(), hole.begin(), hole.end());
            for (const auto& [a, b, c] : triangulate(figure)) {
                const double area = cross(corners[b] - corners[a], corners[c] - corners[a]);
                if (area <= widest) continue;
                widest = area;
                middle = (corners[a] + corners[b] + corners[c]) * (1.0 / 3);
            }
            rooms_ += "  - {id: room-" + std::to_string(++room_count_) + ", at: " + point(middle) +
                      ", story: " + std::to_string(story + 1) + "}\n";
        }
    }

    void choose_openings() {
        for (std::size_t story = 0; story < stories_; ++story) {
            for (std::size_t edge = 0; edge < outline_.size(); ++edge) {
                if (length(edge) < 2.4 || pick(random_, 3) > 0) continue;
                const double width = uniform(random_, 0.6, 1.2),
                             along = uniform(random_, width / 2 + 0.4, length(edge) - width / 2 - 0.4);
                const bool door = story == 0 && pick(random_, 3) == 0;
                openings_ += "  - {id: opening-" + std::to_string(story + 1) + "-" + std::to_string(edge + 1) +
                             ", kind: " + (door ? "door" : "window") + ", in: " + wall(edge) +
                             ", story: " + std::to_string(story + 1) + ", along: " + meters(along) + ", width: " + meters(width) +
                             ", height: " + (door ? "2 m" : "1.1 m, sill: 0.8 m") + "}\n";
            }
        }
    }

    void choose_features() {
        for (std::size_t edge = 0; edge < outline_.size(); ++edge) {
            if (length(edge) < 1.6 || pick(random_, 3) > 0) continue;
            const std::string number = std::to_string(edge + 1),
                              on = ", on: " + wall(edge) + ", along: " + meters(0.5 + cladding_);
            const std::string type = std::array{"hose-bibb", "outlet", "top-plate-hole", "exterior-light"}.at(pick(random_, 4));
            features_ += "  - {id: feature-" + number + ", type: " + type + on + "}\n";
        }
    }

    std::mt19937 random_;
    bool wild_;
    std::string text_, partitions_, rooms_, openings_, features_;
    Loop outline_;
    bool rectilinear_ = false;
    double cladding_ = 0, inside_ = 0;
    std::size_t stories_ = 1, partition_count_ = 0, room_count_ = 0;
};

}  // namespace

std::string random_house(unsigned seed, bool wild) { return Generator(seed, wild).house(); }

}  // namespace seamward::test
