// SPDX-License-Identifier: GPL-3.0-or-later
// Pipes, boxes and ducts stand in bodies of air: lines along the middle of the air, and from there to gaps, go round them.
#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <unordered_map>

#include "house/inner_way.h"
#include "house/layout.h"
#include "house/plane_grid.h"
#include "house/route.h"

namespace seamward {

namespace {

constexpr double step = 0.01;            ///< a way that something stands beside goes on by so much until it is past, meters
constexpr double farthest = 0.5;         ///< at most so far
constexpr std::size_t most_corners = 8;  ///< what has more corners is taken for its box

struct Box {
    Point2 least, most;

    explicit Box(const Loop& loop) : least(loop.front()), most(loop.front()) {
        for (const Point2 p : loop) {
            least = {std::min(least.x, p.x), std::min(least.y, p.y)};
            most = {std::max(most.x, p.x), std::max(most.y, p.y)};
        }
    }
    [[nodiscard]] bool overlaps(const Box& other) const {
        constexpr double least_overlap = 1e-6;
        return std::min(most.x, other.most.x) - std::max(least.x, other.least.x) > least_overlap &&
               std::min(most.y, other.most.y) - std::max(least.y, other.least.y) > least_overlap;
    }
};

/// A prism that may stand in the way.
class Obstacle {
public:
    explicit Obstacle(const Prism& prism) : prism_(prism), box_(prism.outline) {
        for (const Point2 corner : rectangle(box_.least, box_.most)) {
            low_ = std::min(low_, prism.heights.front().at(corner));
            high_ = std::max(high_, prism.heights.back().at(corner));
        }
        const Point2 middle = (box_.least + box_.most) * 0.5, off = box_.most - middle;
        middle_ = prism.frame.at(middle.x, middle.y, (low_ + high_) / 2);
        radius_ = length({off.x, off.y, (high_ - low_) / 2});
        constexpr std::size_t few = 8;  // up to here it is faster to look at all
        if (prism.cuts.size() <= few) return;
        auto cuts = std::make_shared<PlaneGrid>(0.5);
        for (std::size_t i = 0; i < prism.cuts.size(); ++i) {
            const Box cut(prism.cuts[i]);
            cuts->add(i, cut.least, cut.most);
        }
        cuts_ = std::move(cuts);
    }

    /// Whether some of it may be as near to a straight line.
    [[nodiscard]] bool is_near(const Point& from, const Point& to, double far) const {
        const Vector along = to - from, off = middle_ - from;
        const double size = dot(along, along), at = size == 0 ? 0 : std::clamp(dot(off, along) / size, 0.0, 1.0);
        return length(off - along * at) <= radius_ + far;
    }

    /// Whether a straight line meets it, its outline taken for the box around it.
    [[nodiscard]] bool stops(const Point& from, const Point& to) const {
        const Vector a = own(from), way = own(to) - a;
        double begin = 0, end = 1;
        const auto clip = [&](double inside, double growing) {  // keeps where inside + growing * t is not negative
            if (growing == 0 && inside < 0) end = -1;
            if (growing > 0) begin = std::max(begin, -inside / growing);
            if (growing < 0) end = std::min(end, -inside / growing);
        };
        clip(a.x - box_.least.x, way.x);
        clip(box_.most.x - a.x, -way.x);
        clip(a.y - box_.least.y, way.y);
        clip(box_.most.y - a.y, -way.y);
        const Height &back = prism_.heights.front(), &front = prism_.heights.back();
        clip(a.z - back.at({a.x, a.y}), way.z - back.along * way.x - back.up * way.y);
        clip(front.at({a.x, a.y}) - a.z, front.along * way.x + front.up * way.y - way.z);
        if (begin > end) return false;
        const Point2 first{a.x + way.x * begin, a.y + way.y * begin}, last{a.x + way.x * end, a.y + way.y * end};
        const auto holds = [&](const Loop& cut) { return is_inside(cut, first) && is_inside(cut, last); };
        if (!cuts_) return std::none_of(prism_.cuts.begin(), prism_.cuts.end(), holds);
        const std::vector<std::size_t> near = cuts_->near(first, first);
        return std::none_of(near.begin(), near.end(), [&](std::size_t cut) { return holds(prism_.cuts[cut]); });
    }

    [[nodiscard]] const Point& middle() const { return middle_; }
    [[nodiscard]] double radius() const { return radius_; }

    /// Where a middle surface meets it, in the surface's frame.
    [[nodiscard]] std::vector<Loop> sections(const Frame& frame) const {
        const double turned = std::abs(dot(frame.n, prism_.frame.n));
        if (turned > 1 - 1e-9) return level_section(frame);
        if (turned < 1e-9) return upright_sections(frame);
        return {};
    }

private:
    [[nodiscard]] Vector own(const Point& p) const {
        const Vector off = p - prism_.frame.origin;
        return {dot(off, prism_.frame.u), dot(off, prism_.frame.v), dot(off, prism_.frame.n)};
    }
    [[nodiscard]] Point2 seen_in(const Frame& frame, double x, double y, double n) const {
        const Vector off = prism_.frame.at(x, y, n) - frame.origin;
        return {dot(off, frame.u), dot(off, frame.v)};
    }

    /// A surface along the prism's levels.
    [[nodiscard]] std::vector<Loop> level_section(const Frame& frame) const {
        const double height = own(frame.origin).z;
        if (height < low_ || height > high_) return {};
        Loop loop;
        const bool many = prism_.outline.size() > most_corners;
        for (const Point2 p : many ? rectangle(box_.least, box_.most) : prism_.outline)
            loop.push_back(seen_in(frame, p.x, p.y, height));
        return {loop};
    }

    /// A surface that the prism's height lies in: it meets the outline in stretches of a line.
    [[nodiscard]] std::vector<Loop> upright_sections(const Frame& frame) const {
        const Point2 across{dot(frame.n, prism_.frame.u), dot(frame.n, prism_.frame.v)}, along{-across.y, across.x};
        const double off = dot(frame.n, frame.origin - prism_.frame.origin);
        std::vector<double> ends;
        const auto meet = [&](const Loop& loop) {
            for (std::size_t i = 0; i < loop.size(); ++i) {
                const Point2 a = loop[i], b = loop[(i + 1) % loop.size()];
                const double at_a = dot(a, across) - off, at_b = dot(b, across) - off;
                if ((at_a > 0) != (at_b > 0)) ends.push_back(dot(a + (b - a) * (at_a / (at_a - at_b)), along));
            }
        };
        meet(prism_.outline);
        for (const Loop& cut : prism_.cuts) meet(cut);
        std::sort(ends.begin(), ends.end());
        std::vector<Loop> loops;
        for (std::size_t i = 1; i < ends.size(); ++i) {
            const auto at = [&](double t) { return across * off + along * t; };
            const Point2 middle = at((ends[i - 1] + ends[i]) / 2);
            if (!is_inside(prism_.outline, middle) ||
                std::any_of(prism_.cuts.begin(), prism_.cuts.end(), [&](const Loop& cut) { return is_inside(cut, middle); }))
                continue;
            const Point2 a = at(ends[i - 1]), b = at(ends[i]);
            loops.push_back({seen_in(frame, a.x, a.y, low_), seen_in(frame, b.x, b.y, low_), seen_in(frame, b.x, b.y, high_),
                             seen_in(frame, a.x, a.y, high_)});
        }
        return loops;
    }

    const Prism& prism_;
    Box box_;
    double low_ = 1e9, high_ = -1e9;
    Point middle_;
    double radius_ = 0;
    std::shared_ptr<const PlaneGrid> cuts_;  ///< of those with many
};

/// Obstacles by where they stand in the plan.
class Surroundings {
public:
    explicit Surroundings(std::vector<Obstacle> obstacles) : obstacles_(std::move(obstacles)), small_(square) {
        for (std::size_t i = 0; i < obstacles_.size(); ++i) {
            const Point2 at{obstacles_[i].middle().x, obstacles_[i].middle().y};
            if (obstacles_[i].radius() > most_radius)
                large_.push_back(i);
            else
                small_.add(i, at, at);
        }
    }

    [[nodiscard]] const Obstacle& operator[](std::size_t number) const { return obstacles_[number]; }

    /// The numbers of all that may come as near to a box of the plan, and of some more; in their order.
    [[nodiscard]] std::vector<std::size_t> near(Point2 least, Point2 most, double far) const {
        const Point2 reach{far + most_radius, far + most_radius};
        std::vector<std::size_t> found = small_.near(least - reach, most + reach);
        found.insert(found.end(), large_.begin(), large_.end());
        std::sort(found.begin(), found.end());
        return found;
    }

private:
    static constexpr double square = 1, most_radius = 2;  ///< meters; walls and floors are larger, and few
    std::vector<Obstacle> obstacles_;
    PlaneGrid small_;
    std::vector<std::size_t> large_;
};

/// Leads the ends of ways on, to where lines go straight into their space.
class WayEnds {
public:
    WayEnds(const House& house, const Surroundings& obstacles) : house_(house), obstacles_(obstacles) {}

    /// Until nothing stands between the end and the middle of the space, and nothing before it: sideways, then in the way's own
    /// direction, as little as it takes. Where that does not help, the way stays as it is.
    void lead_on(std::vector<Point>& way, SpaceIndex space) {
        const Point end = way.back();
        const Vector last = end - way[way.size() - 2];
        if (length(last) == 0) return;
        const Vector onward = last * (1 / length(last));
        space_ = space;
        if (const Figure& figure = middle().figure; !figure.outline.empty())
            room_ = &rooms_.try_emplace(space.value, figure).first->second;
        else
            room_ = nullptr;
        near_.clear();
        const Point entry = entry_of(middle(), room_, end).value_or(end);
        constexpr double far = longest_step + farthest;
        const Point2 least{std::min(end.x, entry.x), std::min(end.y, entry.y)},
            most{std::max(end.x, entry.x), std::max(end.y, entry.y)};
        for (const std::size_t number : obstacles_.near(least, most, far)) {
            const Obstacle& obstacle = obstacles_[number];
            if (obstacle.is_near(end, entry, far)) near_.push_back(&obstacle);
        }
        if (!find(way, end, onward, true)) find(way, end, onward, false);
    }

private:
    [[nodiscard]] const MiddleSurface& middle() const { return house_.middles[space_.value]; }

    /// What stopped the last line is asked first: most lines that are tried are stopped, by the same few things.
    [[nodiscard]] bool is_free(const Point& from, const Point& to) {
        const auto found =
            std::find_if(near_.begin(), near_.end(), [&](const Obstacle* obstacle) { return obstacle->stops(from, to); });
        if (found == near_.end()) return true;
        std::rotate(near_.begin(), found, found + 1);
        return false;
    }

    /// Whether a line may go on from there to other gaps, and also end in the space.
    [[nodiscard]] bool is_open(const Point& from, Vector onward, bool to_stay) {
        if (const std::optional<Point> entry = entry_of(middle(), room_, from); entry && !is_free(from, *entry)) return false;
        if (!to_stay) return true;
        Point at = from;
        for (const Point& next : steps_into(house_, space_, room_, from, onward, longest_step)) {
            if (!is_free(at, next)) return false;
            at = next;
        }
        return true;
    }

    bool find(std::vector<Point>& way, const Point& end, Vector onward, bool to_stay) {
        const Vector axis = std::abs(onward.z) < 0.7 ? Vector{0, 0, 1} : Vector{1, 0, 0};
        const Vector across = cross(onward, axis), up = cross(across * (1 / length(across)), onward);
        const std::array<Vector, 4> sides{up, cross(onward, up), up * -1, cross(up, onward)};
        // What stops a line stops any longer one: by side, how far aside it is free, and from there how far on.
        constexpr int most = static_cast<int>(farthest / step) + 2;
        std::array<int, 4> free_aside{most, most, most, most};
        std::array<std::array<int, most>, 4> free_on{};
        for (auto& on : free_on) on.fill(most);
        for (int steps = 0; step * steps <= farthest; ++steps) {
            for (int aside = 0; aside == 0 || aside < steps; ++aside) {  // and on at last: the way points into the space
                for (std::size_t k = 0; k < sides.size(); ++k) {
                    if (aside == 0 && k > 0) break;
                    int& on = free_on.at(k).at(static_cast<std::size_t>(aside));
                    if (aside > free_aside.at(k) || steps - aside > on) continue;
                    const Point turn = end + sides.at(k) * (step * aside), out = turn + onward * (step * (steps - aside));
                    if (aside > 0 && !is_free(end, turn)) {
                        free_aside.at(k) = aside - 1;
                        continue;
                    }
                    if (steps > 0 && !is_free(turn, out)) {
                        on = steps - aside - 1;
                        continue;
                    }
                    if (!is_open(out, onward, to_stay)) continue;
                    if (aside > 0) way.push_back(turn);
                    if (steps > 0) way.push_back(out);
                    return true;
                }
            }
        }
        return false;
    }

    const House& house_;
    const Surroundings& obstacles_;
    std::unordered_map<std::uint32_t, InnerRoom> rooms_;  ///< figures made ready, by space
    std::vector<const Obstacle*> near_;
    SpaceIndex space_;
    const InnerRoom* room_ = nullptr;  ///< of that space; null when it has no middle surface
};

/// The box in the plan round a middle surface.
std::pair<Point2, Point2> box_in_plan(const MiddleSurface& middle) {
    const Box room(middle.figure.outline);
    Point2 least{1e9, 1e9}, most{-1e9, -1e9};
    for (const Point2 corner : rectangle(room.least, room.most)) {
        const Point p = middle.frame.at(corner.x, corner.y, 0);
        least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        most = {std::max(most.x, p.x), std::max(most.y, p.y)};
    }
    return {least, most};
}

}  // namespace

void go_round_obstacles(Layout& layout) {
    std::vector<Obstacle> all, standing;
    for (const Panel& panel : layout.panels) {
        for (const Prism& prism : panel.prisms) {
            all.emplace_back(prism);
            if (panel.layer == Layer::fixture) standing.push_back(all.back());
        }
    }
    const Surroundings fixtures(std::move(standing)), everything(std::move(all));
    for (MiddleSurface& middle : layout.house.middles) {
        if (middle.figure.outline.empty()) continue;
        layout.check();
        const Box room(middle.figure.outline);
        const auto [least, most] = box_in_plan(middle);
        for (const std::size_t number : fixtures.near(least, most, 0)) {
            for (Loop& section : fixtures[number].sections(middle.frame)) {
                const Box box(section);
                // What is all round the air is no obstacle in it.
                const bool round = box.least.x < room.least.x && box.least.y < room.least.y && box.most.x > room.most.x &&
                                   box.most.y > room.most.y;
                if (room.overlaps(box) && !round) middle.figure.holes.push_back(std::move(section));
            }
        }
    }
    WayEnds ends(layout.house, everything);
    for (std::size_t i = 0; i < layout.house.places.size(); ++i) {
        layout.check();
        std::vector<Point>& way = layout.house.places[i].through;
        for (const std::size_t side : {0U, 1U}) {
            if (way.size() < 2) break;
            const SpaceIndex space = layout.house.survey.gaps[i].between.at(side);
            const MiddleSurface& middle = layout.house.middles[space.value];
            if (middle.figure.outline.empty() && space != layout.outdoors) continue;
            if (side == 0) std::reverse(way.begin(), way.end());
            ends.lead_on(way, space);
            if (side == 0) std::reverse(way.begin(), way.end());
        }
    }
}

}  // namespace seamward
