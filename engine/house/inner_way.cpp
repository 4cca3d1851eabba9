// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/inner_way.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <queue>
#include <tuple>
#include <utility>

#include "house/plane_grid.h"

namespace seamward {

namespace {

/// Points nearer than this are one point: far below any part of a house, far above the rounding of coordinates in meters.
constexpr double same_place = 1e-9;
/// The least that a point is kept off an edge, so that rounding cannot put it across.
constexpr double least_margin = 1e-6;
/// A sharp corner is passed at no more than this many clearances from its tip.
constexpr double farthest_off = 2;
constexpr double infinity = std::numeric_limits<double>::infinity();

double length_of(Point2 v) { return std::sqrt(dot(v, v)); }

bool is_finite(Point2 p) { return std::isfinite(p.x) && std::isfinite(p.y); }

/// An edge with the figure's inside to its left.
struct Side {
    Point2 a, b;

    [[nodiscard]] Point2 along() const { return (b - a) * (1 / length_of(b - a)); }
    [[nodiscard]] Point2 inward() const {
        const Point2 u = along();
        return {-u.y, u.x};
    }
};

/// Whether the two touch or cross.
bool meet(const Side& side, Point2 p, Point2 q) {
    if (std::max(p.x, q.x) < std::min(side.a.x, side.b.x) || std::min(p.x, q.x) > std::max(side.a.x, side.b.x)) return false;
    if (std::max(p.y, q.y) < std::min(side.a.y, side.b.y) || std::min(p.y, q.y) > std::max(side.a.y, side.b.y)) return false;
    const auto one_side = [](double first, double second) { return (first > 0 && second > 0) || (first < 0 && second < 0); };
    const Point2 along = side.b - side.a, step = q - p;
    return !one_side(cross(along, p - side.a), cross(along, q - side.a)) &&
           !one_side(cross(step, side.a - p), cross(step, side.b - p));
}

double distance_to(const Side& side, Point2 p) {
    const Point2 along = side.b - side.a;
    const double at = std::clamp(dot(p - side.a, along) / dot(along, along), 0.0, 1.0);
    return length_of(side.a + along * at - p);
}

bool loop_contains(const Loop& loop, Point2 p) {
    bool inside = false;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i], b = loop[i + 1 < loop.size() ? i + 1 : 0];
        if ((a.y > p.y) == (b.y > p.y)) continue;
        inside = inside != ((cross(b - a, p - a) > 0) == (b.y > a.y));
    }
    return inside;
}

/// The loop without repeated points, the way round that was asked for; empty when it bounds nothing.
Loop tidied(const Loop& loop, bool counterclockwise) {
    Loop kept;
    for (const Point2 p : loop) {
        if (is_finite(p) && (kept.empty() || length_of(p - kept.back()) > same_place)) kept.push_back(p);
    }
    while (kept.size() > 1 && length_of(kept.front() - kept.back()) <= same_place) kept.pop_back();
    if (kept.size() < 3) return {};
    if ((doubled_area(kept) > 0) != counterclockwise) std::reverse(kept.begin(), kept.end());
    return kept;
}

/// A figure made ready for questions.
class Room {
public:
    explicit Room(const Figure& figure) : outline_(tidied(figure.outline, true)) {
        for (const Loop& hole : figure.holes) {
            if (Loop loop = tidied(hole, false); !loop.empty()) holes_.push_back(std::move(loop));
        }
        add_sides(outline_);
        for (const Loop& hole : holes_) add_sides(hole);
        if (sides_.size() > few_sides) sort();
    }

    [[nodiscard]] bool contains(Point2 p) const {
        if (!loop_contains(outline_, p)) return false;
        if (!grid_) return std::none_of(holes_.begin(), holes_.end(), [&](const Loop& hole) { return loop_contains(hole, p); });
        const std::vector<std::size_t> near = hole_grid_->near(p, p);
        return std::none_of(near.begin(), near.end(), [&](std::size_t hole) { return loop_contains(holes_[hole], p); });
    }

    /// Inside, and not on an edge.
    [[nodiscard]] bool is_clear(Point2 p) const {
        const Point2 reach{same_place, same_place};
        return contains(p) &&
               !any_side(p - reach, p + reach, [&](const Side& side) { return distance_to(side, p) <= same_place; });
    }

    /// Whether a straight line between two clear points stays inside.
    [[nodiscard]] bool sees(Point2 p, Point2 q) const {
        const Point2 way = q - p;
        const double pieces = grid_ ? std::max(1.0, std::ceil(length_of(way) / stride)) : 1;
        for (double i = 0; i < pieces; ++i) {
            const Point2 a = p + way * (i / pieces), b = p + way * ((i + 1) / pieces);
            if (any_side(least_of(a, b), most_of(a, b), [&](const Side& side) { return meet(side, p, q); })) return false;
        }
        return true;
    }

    /// How far it is from an edge, in a direction away from it, to the next one.
    [[nodiscard]] double depth(Point2 from, Point2 direction) const {
        double nearest = infinity;
        const auto take = [&](const Side& side) {
            const Point2 along = side.b - side.a;
            const double turn = cross(direction, along);
            if (turn == 0) return false;
            const double at = cross(side.a - from, along) / turn, where = cross(side.a - from, direction) / turn;
            if (at > same_place && where >= 0 && where <= 1) nearest = std::min(nearest, at);
            return false;
        };
        if (!grid_) {
            (void)any_side({}, {}, take);
            return nearest;
        }
        for (double far = 0; far < reach_; far += stride) {
            const Point2 a = from + direction * far, b = from + direction * (far + stride);
            (void)any_side(least_of(a, b), most_of(a, b), take);
            if (nearest <= far + stride) break;
        }
        return nearest;
    }

    /// How far it is from a corner to the nearest edge that does not touch it: how narrow a passage beside it is.
    [[nodiscard]] double room_at(Point2 corner) const {
        double nearest = infinity;
        for (const Side& side : sides_) {
            if (const double distance = distance_to(side, corner); distance > same_place) nearest = std::min(nearest, distance);
        }
        return nearest;
    }

    [[nodiscard]] std::optional<Point2> moved_in(Point2 p, double margin) const;
    [[nodiscard]] std::vector<Point2> posts(double clearance) const;

private:
    void add_sides(const Loop& loop) {
        for (std::size_t i = 0; i < loop.size(); ++i) sides_.push_back({loop[i], loop[i + 1 < loop.size() ? i + 1 : 0]});
    }
    void add_posts(const Loop& loop, double clearance, std::vector<Point2>& posts) const;

    static Point2 least_of(Point2 a, Point2 b) { return {std::min(a.x, b.x), std::min(a.y, b.y)}; }
    static Point2 most_of(Point2 a, Point2 b) { return {std::max(a.x, b.x), std::max(a.y, b.y)}; }

    void sort() {
        Point2 low = outline_.empty() ? Point2{} : outline_.front(), high = low;
        grid_.emplace(stride);
        hole_grid_.emplace(stride);
        const Point2 rim{1e-6, 1e-6};
        for (std::size_t i = 0; i < sides_.size(); ++i) {
            const Point2 least = least_of(sides_[i].a, sides_[i].b), most = most_of(sides_[i].a, sides_[i].b);
            grid_->add(i, least - rim, most + rim);
            low = least_of(low, least);
            high = most_of(high, most);
        }
        for (std::size_t i = 0; i < holes_.size(); ++i) {
            Point2 least = holes_[i].front(), most = least;
            for (const Point2 p : holes_[i]) {
                least = least_of(least, p);
                most = most_of(most, p);
            }
            hole_grid_->add(i, least - rim, most + rim);
        }
        reach_ = 2 * length_of(high - low) + stride;
    }

    /// Whether a test holds for a side that may meet a box; all are asked where there are few.
    template <class Test>
    bool any_side(Point2 least, Point2 most, Test test) const {
        if (!grid_) return std::any_of(sides_.begin(), sides_.end(), test);
        const std::vector<std::size_t> near = grid_->near(least, most);
        return std::any_of(near.begin(), near.end(), [&](std::size_t side) { return test(sides_[side]); });
    }

    [[nodiscard]] std::optional<Point2> beside(const Side& side, Point2 p, double margin) const {
        const double length = length_of(side.b - side.a);
        const double off_ends = std::min(margin, length / 2);
        const Point2 foot = side.a + side.along() * std::clamp(dot(p - side.a, side.along()), off_ends, length - off_ends);
        const Point2 inside = foot + side.inward() * std::min(margin, depth(foot, side.inward()) / 2);
        return is_clear(inside) ? std::optional(inside) : std::nullopt;
    }

    static constexpr std::size_t few_sides = 256;  ///< up to here it is faster to look at all
    static constexpr double stride = 0.5;          ///< meters

    Loop outline_;
    std::vector<Loop> holes_;
    std::vector<Side> sides_;
    std::optional<PlaneGrid> grid_, hole_grid_;
    double reach_ = 0;  ///< no edge is farther from a point inside
};

std::optional<Point2> Room::moved_in(Point2 p, double margin) const {
    if (is_clear(p)) return p;
    // Side by side, the nearest first; where there are many, within a circle that grows.
    double looked_at = -1;
    for (double circle = grid_ ? stride : infinity;; circle *= 2) {
        std::vector<std::pair<double, std::size_t>> nearest;
        const auto take = [&](std::size_t i) {
            const double distance = distance_to(sides_[i], p);
            if (distance > looked_at && distance <= circle) nearest.emplace_back(distance, i);
        };
        if (grid_ && circle < 2 * reach_) {
            for (const std::size_t i : grid_->near(p - Point2{circle, circle}, p + Point2{circle, circle})) take(i);
        } else {
            circle = infinity;
            for (std::size_t i = 0; i < sides_.size(); ++i) take(i);
        }
        std::sort(nearest.begin(), nearest.end());
        for (const auto& [distance, i] : nearest) {
            if (const std::optional<Point2> inside = beside(sides_[i], p, margin)) return inside;
        }
        if (circle == infinity) return std::nullopt;
        looked_at = circle;
    }
}

/// The points to bend at: one for each corner that stands out into the figure.
std::vector<Point2> Room::posts(double clearance) const {
    std::vector<Point2> posts;
    add_posts(outline_, clearance, posts);
    for (const Loop& hole : holes_) add_posts(hole, clearance, posts);
    return posts;
}

void Room::add_posts(const Loop& loop, double clearance, std::vector<Point2>& posts) const {
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 corner = loop[i];
        const Side before{loop[i > 0 ? i - 1 : loop.size() - 1], corner}, after{corner, loop[i + 1 < loop.size() ? i + 1 : 0]};
        const double turn = cross(before.along(), after.along());
        const bool tip = std::abs(turn) < same_place && dot(before.along(), after.along()) < 0;
        if (turn >= 0 && !tip) continue;
        const Point2 sum = before.inward() + after.inward();
        const Point2 away = tip ? before.along() : sum * (1 / length_of(sum));
        const double wanted = std::min(clearance, room_at(corner) / 2) / std::max(dot(away, before.inward()), 1 / farthest_off);
        const Point2 post = corner + away * std::min(wanted, depth(corner, away) / 2);
        if (is_clear(post)) posts.push_back(post);
    }
}

/// An edge of the visibility graph that was not looked at yet, by the length of the shortest way that could go over it.
struct Step {
    double total = 0;
    std::size_t from = 0, to = 0;

    friend bool operator>(const Step& a, const Step& b) {
        return std::tie(a.total, a.from, a.to) > std::tie(b.total, b.from, b.to);
    }
};

/// The way from the first of `points` to the last; empty when there is none.
std::vector<Point2> search(const Room& room, const std::vector<Point2>& points) {
    const std::size_t goal = points.size() - 1;
    std::vector<double> walked(points.size(), infinity);
    std::vector<std::size_t> parent(points.size(), 0);
    std::priority_queue<Step, std::vector<Step>, std::greater<>> waiting;
    const auto reach = [&](std::size_t at, double length) {
        walked[at] = length;
        for (std::size_t next = 1; next < points.size(); ++next) {
            if (walked[next] < infinity) continue;
            waiting.push({length + length_of(points[next] - points[at]) + length_of(points[goal] - points[next]), at, next});
        }
    };
    reach(0, 0);
    while (!waiting.empty() && walked[goal] == infinity) {
        const Step step = waiting.top();
        waiting.pop();
        if (walked[step.to] < infinity || !room.sees(points[step.from], points[step.to])) continue;
        parent[step.to] = step.from;
        reach(step.to, walked[step.from] + length_of(points[step.to] - points[step.from]));
    }
    if (walked[goal] == infinity) return {};
    std::vector<Point2> way{points[goal]};
    for (std::size_t at = goal; at != 0; at = parent[at]) way.push_back(points[parent[at]]);
    std::reverse(way.begin(), way.end());
    return way;
}

}  // namespace

std::vector<Point2> shortest_inside(const Figure& figure, Point2 from, Point2 to, double clearance) {
    const std::vector<Point2> straight{from, to};
    if (!is_finite(from) || !is_finite(to)) return straight;
    const Room room(figure);
    clearance = std::max(clearance, least_margin);
    const std::optional<Point2> start = room.moved_in(from, clearance), end = room.moved_in(to, clearance);
    if (!start || !end) return straight;
    if (room.sees(*start, *end)) return {*start, *end};
    std::vector<Point2> points = room.posts(clearance);
    points.insert(points.begin(), *start);
    points.push_back(*end);
    std::vector<Point2> way = search(room, points);
    return way.empty() ? straight : way;
}

struct InnerRoom::Prepared {
    Room room;
};

InnerRoom::InnerRoom(const Figure& figure) : prepared_(std::make_unique<Prepared>(Prepared{Room(figure)})) {}
InnerRoom::~InnerRoom() = default;
InnerRoom::InnerRoom(InnerRoom&&) noexcept = default;
InnerRoom& InnerRoom::operator=(InnerRoom&&) noexcept = default;

std::optional<Point2> InnerRoom::nearest_inside(Point2 point, double margin) const {
    if (!is_finite(point)) return std::nullopt;
    return prepared_->room.moved_in(point, std::max(margin, least_margin));
}

double InnerRoom::room_ahead(Point2 from, Point2 direction) const {
    return prepared_->room.is_clear(from) ? prepared_->room.depth(from, direction) : 0;
}

std::optional<Point2> nearest_inside(const Figure& figure, Point2 point, double margin) {
    return InnerRoom(figure).nearest_inside(point, margin);
}

double room_ahead(const Figure& figure, Point2 from, Point2 direction) { return InnerRoom(figure).room_ahead(from, direction); }

}  // namespace seamward
