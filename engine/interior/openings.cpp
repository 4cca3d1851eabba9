// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/openings.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <tuple>
#include <utility>

#include "geometry/box_tree.h"
#include "graph/union_find.h"
#include "interior/cell_shares.h"

namespace seamward {

namespace {

constexpr double in_line = 2e-5;  // meters: edges that lie on each other

/// A portal between cells of two bodies.
struct BorderPortal {
    std::int32_t first = 0, second = 0;
    std::uint32_t portal = 0;
    AxisBox box;
};

std::vector<BorderPortal> mouths_of(const Passages& passages, const CellShares& shares) {
    const CellComplex& complex = passages.air().complex;
    std::vector<BorderPortal> mouths;
    for (std::uint32_t i = 0; i < complex.portals.size(); ++i) {
        if (!shares.is_border(i)) continue;
        const std::int32_t front = shares[complex.portals[i].front], back = shares[complex.portals[i].back];
        const std::span<const Point> corners = complex.corners_of(complex.portals[i]);
        BorderPortal mouth{std::min(front, back), std::max(front, back), i, {corners[0], corners[0]}};
        auto& [low, high] = mouth.box;
        for (const Point& p : corners) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
        mouths.push_back(mouth);
    }
    std::sort(mouths.begin(), mouths.end(), [](const BorderPortal& a, const BorderPortal& b) {
        return std::tie(a.first, a.second, a.box.low.x, a.portal) < std::tie(b.first, b.second, b.box.low.x, b.portal);
    });
    return mouths;
}

bool are_near(const AxisBox& a, const AxisBox& b) {
    return a.low.x <= b.high.x + in_line && b.low.x <= a.high.x + in_line && a.low.y <= b.high.y + in_line &&
           b.low.y <= a.high.y + in_line && a.low.z <= b.high.z + in_line && b.low.z <= a.high.z + in_line;
}

/// Whether two portals touch along a stretch of edge that is open to the air.
bool touch(const Passages& passages, const BorderPortal& a, const BorderPortal& b) {
    const CellComplex& complex = passages.air().complex;
    const std::span<const Point> of_a = complex.corners_of(complex.portals[a.portal]),
                                 of_b = complex.corners_of(complex.portals[b.portal]);
    const double wanted = 0.2 * std::min(passages[a.portal].clearance, passages[b.portal].clearance);
    for (std::size_t i = 0; i < of_a.size(); ++i) {
        const Point& from = of_a[i];
        Vector along = of_a[(i + 1) % of_a.size()] - from;
        const double size = length(along);
        if (size < in_line) continue;
        along = along * (1 / size);
        for (std::size_t j = 0; j < of_b.size(); ++j) {
            const Vector p = of_b[j] - from, q = of_b[(j + 1) % of_b.size()] - from;
            const double s = dot(p, along), t = dot(q, along);
            if (length(p - along * s) > in_line || length(q - along * t) > in_line) continue;
            const double low = std::max(0.0, std::min(s, t)), high = std::min(size, std::max(s, t));
            if (high - low < in_line) continue;
            for (const double part : {0.5, 0.25, 0.75, 0.1, 0.9}) {
                if (passages.clearance().at(from + along * (low + (high - low) * part)) >= wanted) return true;
            }
        }
    }
    return false;
}

/// A box around places.
class Box {
public:
    void add(const Point& p) {
        low_ = {std::min(low_.x, p.x), std::min(low_.y, p.y), std::min(low_.z, p.z)};
        high_ = {std::max(high_.x, p.x), std::max(high_.y, p.y), std::max(high_.z, p.z)};
    }
    [[nodiscard]] double distance_to(const Point& p) const {
        return length(Vector{std::max({low_.x - p.x, p.x - high_.x, 0.0}), std::max({low_.y - p.y, p.y - high_.y, 0.0}),
                             std::max({low_.z - p.z, p.z - high_.z, 0.0})});
    }

private:
    Point low_{1e300, 1e300, 1e300}, high_{-1e300, -1e300, -1e300};
};

/// Openings by the bodies that they lie between, with boxes around the tightest places of their passages.
class OpeningsBetween {
public:
    explicit OpeningsBetween(const Passages& passages) : passages_(passages) {}

    void add(std::size_t index, const Opening& opening) {
        of_[{opening.first, opening.second}].push_back(index);
        boxes_.resize(std::max(boxes_.size(), index + 1));
        for (const std::uint32_t i : opening.passages) widen(index, i);
    }
    void widen(std::size_t index, std::uint32_t passage) { boxes_[index].add(passages_.passage(passage).tightest); }

    /// The first that was added of those between two bodies with a tightest place as near to a point as `reach(index)`, in
    /// meters.
    template <typename Reach>
    [[nodiscard]] std::optional<std::size_t> first_near(std::int32_t first, std::int32_t second, const Point& at,
                                                        const std::vector<Opening>& openings, Reach&& reach) const {
        const auto known = of_.find({first, second});
        if (known == of_.end()) return {};
        for (const std::size_t index : known->second) {
            const double most = reach(index);
            if (boxes_[index].distance_to(at) > most) continue;
            const bool is_near = std::ranges::any_of(
                openings[index].passages, [&](std::uint32_t i) { return distance(passages_.passage(i).tightest, at) <= most; });
            if (is_near) return index;
        }
        return {};
    }

private:
    const Passages& passages_;
    std::map<std::pair<std::int32_t, std::int32_t>, std::vector<std::size_t>> of_;
    std::vector<Box> boxes_;  ///< by opening
};

/// Places along a passage where the ball is held nearly as tightly as anywhere on it.
std::vector<Point> tight_places_of(const Passages& passages, std::uint32_t passage) {
    constexpr double nearly = 1.5, apart = 0.01;  // of the radius; meters
    constexpr int most_looks = 256;               // on a straight piece
    const Passage& p = passages.passage(passage);
    std::vector<Point> way{passages[p.from].at}, places{p.tightest};
    for (const Point& corner : passages.corners_of(passage)) way.push_back(corner);
    way.push_back(passages[p.to].at);
    for (std::size_t i = 0; i + 1 < way.size(); ++i) {
        const int looks = std::clamp(static_cast<int>(distance(way[i], way[i + 1]) / apart), 1, most_looks);
        for (int k = 0; k < looks; ++k) {
            const Point at = way[i] + (way[i + 1] - way[i]) * ((k + 0.5) / looks);
            if (passages.clearance().at(at) <= nearly * p.clearance) places.push_back(at);
        }
    }
    return places;
}

/// Drops the openings from `first_new` on that lie beside a wider one between the same bodies, or lead through it.
void drop_beside(const Passages& passages, std::size_t first_new, double beside, std::vector<Opening>& openings) {
    OpeningsBetween between(passages);
    for (std::size_t i = 0; i < openings.size(); ++i) between.add(i, openings[i]);
    std::vector<char> dropped(openings.size(), 0);
    for (std::size_t i = first_new; i < openings.size(); ++i) {
        const Opening& mine = openings[i];
        const auto reach = [&](std::size_t j) {
            const bool is_wider = openings[j].radius > mine.radius || (openings[j].radius == mine.radius && j < i);
            return j != i && !dropped[j] && is_wider ? beside : -1;
        };
        dropped[i] = std::ranges::any_of(tight_places_of(passages, mine.widest), [&](const Point& at) {
            return between.first_near(mine.first, mine.second, at, openings, reach).has_value();
        });
    }
    std::size_t kept = 0;
    for (std::size_t i = 0; i < openings.size(); ++i) {
        if (dropped[i]) continue;
        if (kept != i) openings[kept] = std::move(openings[i]);
        ++kept;
    }
    openings.resize(kept);
}

/// Passages that no mouth was found on the way of, because a cell reaches from one body through the opening into the other: those
/// that are close together are an opening, with their narrower portals as its mouth. Beside a wider opening they are its own.
void gather_stray(const Passages& passages, const Bodies& bodies, const std::vector<std::uint32_t>& stray,
                  std::vector<Opening>& openings) {
    constexpr double close = 6;      // radii
    constexpr double beside = 0.04;  // meters
    const std::size_t first_new = openings.size();
    OpeningsBetween fresh(passages);
    for (const std::uint32_t i : stray) {
        const Passage& p = passages.passage(i);
        const std::int32_t first = std::min(bodies.of[p.from], bodies.of[p.to]),
                           second = std::max(bodies.of[p.from], bodies.of[p.to]);
        const auto reach = [&](std::size_t other) { return close * std::max(openings[other].radius, p.clearance); };
        const std::size_t index = fresh.first_near(first, second, p.tightest, openings, reach).value_or(openings.size());
        if (index == openings.size()) {
            openings.push_back({first, second, {}, {}, i, 0, false, true});
            fresh.add(index, openings.back());
        }
        Opening& opening = openings[index];
        opening.passages.push_back(i);
        fresh.widen(index, i);
        const bool from_narrower = passages[p.from].clearance <= passages[p.to].clearance;
        const std::uint32_t narrower = from_narrower == passages.is_portal(p.from) || !passages.is_portal(p.to) ? p.from : p.to;
        if (passages.is_portal(narrower)) opening.mouth.push_back(narrower);
        if (p.clearance > opening.radius) {
            opening.radius = p.clearance;
            opening.widest = i;
        }
    }
    for (std::size_t i = first_new; i < openings.size(); ++i) {
        std::vector<std::uint32_t>& mouth = openings[i].mouth;
        std::sort(mouth.begin(), mouth.end());
        mouth.erase(std::unique(mouth.begin(), mouth.end()), mouth.end());
    }
    drop_beside(passages, first_new, beside, openings);
}

/// Follows a passage that was added from cell to cell.
class Trail {
public:
    Trail(const Passages& passages, const std::vector<char>& is_border, const std::vector<std::int32_t>& body_of_cell)
        : passages_(passages), is_border_(is_border), body_of_cell_(body_of_cell) {}

    struct End {
        bool found = false;                     ///< false where it was lost on the way
        std::uint32_t border = Openings::none;  ///< the first portal between the cells of two bodies
    };
    [[nodiscard]] End follow(std::uint32_t passage) const {
        constexpr std::size_t most_cells = 64;
        constexpr double touching = 1e-8;  // meters: ways begin in corners, where portals meet
        const Air& air = passages_.air();
        const Passage& p = passages_.passage(passage);
        std::vector<Point> way{passages_[p.from].at};
        for (const Point& corner : passages_.corners_of(passage)) way.push_back(corner);
        way.push_back(passages_[p.to].at);
        std::uint32_t cell = first_cell(p.from, way[1] - way[0]), entered = p.from;
        std::size_t cells = 0;
        for (std::size_t i = 0; i + 1 < way.size(); ++i) {
            for (double done = 0; cells < most_cells; ++cells) {
                double first = 2;
                std::uint32_t exit = Openings::none;
                for (const std::uint32_t portal : air.portals_of(cell)) {
                    if (portal == entered || portal == p.to) continue;
                    if (!leaves(cell, portal, way[i + 1] - way[i])) continue;
                    const auto part = crossing(air.complex.corners_of(air.complex.portals[portal]), way[i], way[i + 1], touching);
                    if (!part || *part < done || *part >= first) continue;
                    first = *part;
                    exit = portal;
                }
                if (exit == Openings::none) break;
                if (is_border_[exit]) return {true, exit};
                done = first;
                cell = beyond(exit, cell);
                entered = exit;
            }
            entered = Openings::none;
        }
        if (touches(p.to, cell)) return {true, Openings::none};
        std::uint32_t border = first_border(p, way, in_line);  // it was lost at an edge of a portal
        if (border == Openings::none) border = first_border(p, way, p.clearance);
        return {border != Openings::none, border};
    }

private:
    /// Looks from place to place along a way for where the cells of one body end and those of another begin, with a portal
    /// between them no farther off than that, in meters.
    [[nodiscard]] std::uint32_t first_border(const Passage& p, const std::vector<Point>& way, double off) const {
        constexpr int looks = 32, halvings = 24;
        const CellComplex& complex = passages_.air().complex;
        Point last_at = way[0];
        std::uint32_t last = first_cell(p.from, way[1] - way[0]);  // which corners of portals, where ways begin, do not tell
        for (std::size_t i = 0; i + 1 < way.size(); ++i) {
            for (int k = 0; k < looks; ++k) {
                const Point at = way[i] + (way[i + 1] - way[i]) * ((k + 0.5) / looks), before_at = std::exchange(last_at, at);
                const std::uint32_t cell = complex.cell_at(at), before = std::exchange(last, cell);
                if (!is_between_bodies(before, cell)) continue;
                std::uint32_t front = before, back = cell;
                double low = 0, high = 1;
                for (int turn = 0; turn < halvings; ++turn) {
                    const double middle = (low + high) / 2;
                    const std::uint32_t there = complex.cell_at(before_at + (at - before_at) * middle);
                    const bool beyond = is_between_bodies(before, there);
                    (beyond ? high : low) = middle;
                    if (body_of_cell_[there] >= 0) (beyond ? back : front) = there;
                }
                const std::uint32_t border = border_beside(front, back, before_at + (at - before_at) * low, off);
                if (border != Openings::none) return border;
            }
        }
        const std::uint32_t end = first_cell(p.to, way[way.size() - 2] - way.back());
        return is_between_bodies(last, end) ? border_beside(last, end, way.back(), off) : Openings::none;
    }

    [[nodiscard]] bool is_between_bodies(std::uint32_t a, std::uint32_t b) const {
        return body_of_cell_[a] >= 0 && body_of_cell_[b] >= 0 && body_of_cell_[a] != body_of_cell_[b];
    }

    /// Of the portals of two cells where the body of the one ends and that of the other begins the one nearest to a place.
    [[nodiscard]] std::uint32_t border_beside(std::uint32_t a, std::uint32_t b, const Point& at, double least) const {
        const CellComplex& complex = passages_.air().complex;
        const auto bodies = std::minmax(body_of_cell_[a], body_of_cell_[b]);
        std::uint32_t nearest = Openings::none;
        for (const std::uint32_t cell : {a, b}) {
            for (const std::uint32_t i : passages_.air().portals_of(cell)) {
                const Portal& p = complex.portals[i];
                if (!is_border_[i] || std::minmax(body_of_cell_[p.front], body_of_cell_[p.back]) != bodies) continue;
                const std::span<const Point> corners = complex.corners_of(p);
                for (std::size_t k = 2; k < corners.size(); ++k) {
                    const double off = distance(TriangleTree::Triangle{corners[0], corners[k - 1], corners[k]}, at);
                    if (off >= least) continue;
                    least = off;
                    nearest = i;
                }
            }
        }
        return nearest;
    }

    [[nodiscard]] std::uint32_t beyond(std::uint32_t portal, std::uint32_t cell) const {
        const Portal& p = passages_.air().complex.portals[portal];
        return p.front == cell ? p.back : p.front;
    }

    /// Whether one that goes that way through a portal of a cell comes out of the cell.
    [[nodiscard]] bool leaves(std::uint32_t cell, std::uint32_t portal, const Vector& along) const {
        const CellComplex& complex = passages_.air().complex;
        const std::span<const Point> corners = complex.corners_of(complex.portals[portal]);
        const Vector normal = doubled_area(corners);
        return (dot(normal, along) > 0) != (dot(normal, complex.cells[cell].middle - corners[0]) > 0);
    }

    [[nodiscard]] bool touches(std::uint32_t stand, std::uint32_t cell) const {
        if (!passages_.is_portal(stand)) return stand == passages_.middle_of(cell);
        const Portal& p = passages_.air().complex.portals[stand];
        return p.front == cell || p.back == cell;
    }

    /// Of the two cells of a portal that to whose side one sets out.
    [[nodiscard]] std::uint32_t first_cell(std::uint32_t stand, const Vector& along) const {
        const CellComplex& complex = passages_.air().complex;
        if (!passages_.is_portal(stand)) return stand - static_cast<std::uint32_t>(complex.portals.size());
        const Portal& p = complex.portals[stand];
        const std::span<const Point> corners = complex.corners_of(p);
        const Vector normal = doubled_area(corners);
        const bool to_front = dot(normal, complex.cells[p.front].middle - corners[0]) > 0;
        return (dot(normal, along) > 0) == to_front ? p.front : p.back;
    }

    const Passages& passages_;
    const std::vector<char>& is_border_;
    const std::vector<std::int32_t>& body_of_cell_;
};

/// Whether a mouth is flat and nothing near is narrower: a hole between wires, or one as long as wide with sharp edges.
bool is_hole(const Passages& passages, const CellShares& shares, const std::vector<std::uint32_t>& mouth) {
    constexpr double flat = 1e-6;    // meters off the plane
    constexpr double longest = 1.7;  // squares of its width
    const CellComplex& complex = passages.air().complex;
    const std::span<const Point> corners = complex.corners_of(complex.portals[mouth[0]]);
    Vector normal = doubled_area(corners);
    normal = normal * (1 / length(normal));
    double area = 0, radius = 0;
    bool of_screen = true;
    for (const std::uint32_t i : mouth) {
        const std::span<const Point> mine = complex.corners_of(complex.portals[i]);
        if (std::ranges::any_of(mine, [&](const Point& p) { return std::abs(dot(normal, p - corners[0])) > flat; })) return false;
        of_screen = of_screen && shares.is_hole(i);
        if (!shares.is_hole(i) && !shares.is_sharp(i)) return false;
        area += length(doubled_area(mine)) / 2;
        radius = std::max(radius, passages[i].clearance);
    }
    return of_screen || area <= longest * 4 * radius * radius;
}

/// To a hole that no passage between its bodies belongs to, one that begins in the widest place of its mouth. Other mouths
/// without any are pieces of such as have some, beside pipes.
void take_passage_in_mouth(const Passages& passages, Opening& opening) {
    if (!opening.passages.empty() || !opening.hole) return;
    const std::uint32_t widest =
        std::ranges::max(opening.mouth, {}, [&](std::uint32_t portal) { return passages[portal].clearance; });
    const std::span<const std::uint32_t> from_there = passages.of(widest);
    if (from_there.empty()) return;
    opening.widest = std::ranges::max(from_there, {}, [&](std::uint32_t i) { return passages.passage(i).clearance; });
    opening.passages = {opening.widest};
    opening.radius = passages[widest].clearance;
    opening.unled = true;
}

/// For each portal between two bodies the first of those that it hangs together with.
UnionFind hang_together(const Passages& passages, const std::vector<BorderPortal>& mouths) {
    UnionFind parts(mouths.size());
    for (std::uint32_t first = 0, last = 0; first < mouths.size(); first = last) {
        const auto bodies = std::tie(mouths[first].first, mouths[first].second);
        std::vector<AxisBox> boxes;
        for (last = first; last < mouths.size() && std::tie(mouths[last].first, mouths[last].second) == bodies; ++last)
            boxes.push_back(mouths[last].box);
        const BoxTree tree(boxes);
        for (std::uint32_t i = first; i < last; ++i) {
            const AxisBox& box = mouths[i].box;
            tree.walk([&](const AxisBox& other) { return are_near(box, other); },
                      [&](std::uint32_t k) {
                          const std::uint32_t j = first + k, a = parts.find(i), b = parts.find(j);
                          if (j <= i || a == b || !are_near(box, mouths[j].box)) return;
                          if (touch(passages, mouths[i], mouths[j])) parts.join(std::min(a, b), std::max(a, b));
                      });
        }
    }
    return parts;
}

/// Follows all passages that were added.
std::vector<Trail::End> follow_added(const Passages& passages, const std::vector<char>& is_border,
                                     const std::vector<std::int32_t>& body_of_cell, const RunContext& run) {
    const Trail trail(passages, is_border, body_of_cell);
    std::vector<Trail::End> ends(passages.added());
    tbb::parallel_for(std::size_t{0}, ends.size(), [&](std::size_t k) {
        run.check();
        ends[k] = trail.follow(static_cast<std::uint32_t>(passages.count() - ends.size() + k));
    });
    return ends;
}

/// For each passage between two bodies the portal between them that lies next on the way home from one of its ends, by its number
/// among `mouths`; `none` where there is none.
std::vector<std::uint32_t> mouths_on_ways(const Passages& passages, const Bodies& bodies, const WaysHome& home,
                                          const std::vector<BorderPortal>& mouths, const std::vector<Trail::End>& trails) {
    const std::size_t first_added = passages.count() - trails.size();
    std::vector<std::uint32_t> of_portal(passages.size(), Openings::none);  // by stand
    for (std::uint32_t i = 0; i < mouths.size(); ++i) of_portal[mouths[i].portal] = i;
    std::vector<std::uint32_t> found(bodies.between.size(), Openings::none);
    tbb::parallel_for(std::size_t{0}, found.size(), [&](std::size_t k) {
        const Passage& p = passages.passage(bodies.between[k]);
        const auto bodies_of = std::minmax(bodies.of[p.from], bodies.of[p.to]);
        std::uint32_t ends[2] = {p.from, p.to};
        const auto is_mouth = [&](std::uint32_t stand) {
            const std::uint32_t at = of_portal[stand];
            if (at == Openings::none || mouths[at].first != bodies_of.first || mouths[at].second != bodies_of.second)
                return false;
            found[k] = at;
            return true;
        };
        while (ends[0] != WaysHome::none || ends[1] != WaysHome::none) {
            for (std::uint32_t& end : ends) {
                if (end == WaysHome::none) continue;
                if (is_mouth(end)) return;
                const std::uint32_t by = home.passage(end);
                end = home.next(end);
                if (end == WaysHome::none || !passages.was_added(by)) continue;
                const std::uint32_t border = trails[by - first_added].border;
                if (border != Openings::none && is_mouth(border)) return;
            }
        }
    });
    return found;
}

}  // namespace

std::int32_t Openings::body_at(const Passages& passages, std::uint32_t stand) const {
    const std::vector<Portal>& portals = passages.air().complex.portals;
    if (!passages.is_portal(stand)) return body_of_cell[stand - portals.size()];
    const std::int32_t front = body_of_cell[portals[stand].front];
    return front == body_of_cell[portals[stand].back] ? front : -1;
}

Openings find_openings(const Passages& passages, const Bodies& bodies, const WaysHome& home, const RunContext& run) {
    const CellShares shares(passages, bodies);
    const std::vector<BorderPortal> mouths = mouths_of(passages, shares);
    UnionFind first_of = hang_together(passages, mouths);
    std::vector<Opening> openings(mouths.size());
    for (std::uint32_t i = 0; i < mouths.size(); ++i) {
        Opening& opening = openings[first_of.find(i)];
        opening.first = mouths[i].first;
        opening.second = mouths[i].second;
        opening.mouth.push_back(mouths[i].portal);
    }
    for (Opening& opening : openings) opening.hole = !opening.mouth.empty() && is_hole(passages, shares, opening.mouth);
    std::vector<char> is_border(passages.air().complex.portals.size());
    for (std::uint32_t i = 0; i < is_border.size(); ++i) is_border[i] = shares.is_border(i);
    const std::vector<Trail::End> trails = follow_added(passages, is_border, shares.list(), run);
    const std::vector<std::uint32_t> on_ways = mouths_on_ways(passages, bodies, home, mouths, trails);
    std::vector<std::uint32_t> stray;
    for (std::size_t k = 0; k < on_ways.size(); ++k) {
        const std::uint32_t i = bodies.between[k];
        if (on_ways[k] == Openings::none) {
            stray.push_back(i);
            continue;
        }
        Opening& opening = openings[first_of.find(on_ways[k])];
        opening.passages.push_back(i);
        if (passages.passage(i).clearance > opening.radius) {
            opening.radius = passages.passage(i).clearance;
            opening.widest = i;
        }
    }
    gather_stray(passages, bodies, stray, openings);
    for (Opening& opening : openings) take_passage_in_mouth(passages, opening);
    std::vector<std::uint32_t> at_portal(is_border.size(), Openings::none);
    std::erase_if(openings, [&](const Opening& o) {
        if (!o.passages.empty()) return false;
        for (const std::uint32_t portal : o.mouth) at_portal[portal] = Openings::untold;
        return true;
    });
    std::stable_sort(openings.begin(), openings.end(), [](const Opening& a, const Opening& b) {
        return std::tie(a.first, a.second, b.radius) < std::tie(b.first, b.second, a.radius);
    });
    Openings result{std::move(openings), std::move(at_portal), shares.list(), std::move(is_border), {}};
    for (std::uint32_t i = 0; i < result.list.size(); ++i) {
        for (const std::uint32_t portal : result.list[i].mouth) result.at_portal[portal] = i;
    }
    for (std::size_t k = 0; k < trails.size(); ++k) {
        const Passage& p = passages.passage(static_cast<std::uint32_t>(passages.count() - trails.size() + k));
        const auto& [is_found, border] = trails[k];
        const bool stays =
            border == Openings::none && (is_found || result.body_at(passages, p.from) == result.body_at(passages, p.to));
        std::uint32_t mouth = border;
        for (const std::uint32_t end : {p.from, p.to}) {  // one that begins in a mouth and was lost
            if (mouth == Openings::none && passages.is_portal(end) && result.is_border[end]) mouth = end;
        }
        result.through.push_back(stays ? Openings::inside : mouth == Openings::none ? Openings::none : result.at_portal[mouth]);
    }
    return result;
}

}  // namespace seamward
