// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/throat.h"

#include <algorithm>
#include <numeric>
#include <queue>
#include <unordered_map>

#include "interior/mouth_way.h"

namespace seamward {

namespace {

constexpr std::size_t most_stands = 96;
constexpr double narrower = 0.85;   // stands where a ball of this fraction does not fit are not on the way
constexpr double missed = 1.2;      // so much more is looked for at a time
constexpr double worth_it = 1.005;  // a stand worth to be taken up elsewhere
constexpr double exit = 1.4;        // where a ball larger by this fits, one is out of the opening
constexpr double grown = 1.02;      // a way wider by this than the ball led before is another one
constexpr int most_rounds = 6;      // of looking for a still wider way
constexpr int effort = 80;
constexpr int turns = 5;

/// The stands around the widest passage and the passages between them, with better stands.
class Throat {
public:
    Throat(const Passages& passages, const Bodies& bodies, const Openings& openings, std::size_t which, std::uint32_t start,
           double radius, double tolerance, bool by_cells, const std::vector<Gate>& gates, double widest)
        : passages_(passages),
          bodies_(bodies),
          openings_(openings),
          which_(which),
          opening_(openings.list[which]),
          tolerance_(tolerance),
          by_cells_(by_cells && !opening_.stray),
          gates_(gates),
          widest_(std::max(widest, radius)) {
        opening_.radius = radius;
        opening_.widest = start;
        collect();
        for (Local& local : stands_) improve(local);
        for (int turn = 0; turn < 2; ++turn) echo();
    }

    ThroatWay way() {
        std::vector<std::uint32_t> order(edges_.size());
        for (Edge& edge : edges_)
            edge.clearance =
                std::min({stands_[edge.from].stand.clearance, stands_[edge.to].stand.clearance, missed * opening_.radius});
        const auto after = [&](std::uint32_t a, std::uint32_t b) {
            return edges_[a].clearance != edges_[b].clearance ? edges_[a].clearance < edges_[b].clearance : a > b;
        };
        std::iota(order.begin(), order.end(), 0u);
        std::make_heap(order.begin(), order.end(), after);
        parent_.resize(stands_.size());
        std::iota(parent_.begin(), parent_.end(), 0u);
        tree_.resize(stands_.size());
        std::uint32_t ends[2] = {none, none};  // the exits of a side hang together from the start
        for (std::uint32_t i = 0; i < stands_.size(); ++i) {
            if (stands_[i].side < 0) continue;
            std::uint32_t& end = ends[stands_[i].side];
            if (end == none) end = i;
            parent_[find(i)] = find(end);
        }
        if (ends[0] == none || ends[1] == none) return {};
        while (!order.empty() && find(ends[0]) != find(ends[1])) {
            std::pop_heap(order.begin(), order.end(), after);
            const std::uint32_t i = order.back();
            order.pop_back();
            Edge& edge = edges_[i];
            const std::uint32_t a = find(edge.from), b = find(edge.to);
            if (a == b) continue;
            if (!edge.led) {
                edge.led = true;
                const double seemed = edge.clearance;
                edge.way = passages_.way(edge.passage, stands_[edge.from].global, stands_[edge.from].stand.at,
                                         stands_[edge.to].stand.at, {seemed, 1 - tolerance_, turns, narrower * opening_.radius});
                if (edge.way.clearance >= seemed) {  // nothing on it is nearer than at its ends
                    const Stand &a_stand = stands_[edge.from].stand, &b_stand = stands_[edge.to].stand;
                    edge.way.tightest = a_stand.clearance <= b_stand.clearance ? a_stand.at : b_stand.at;
                }
                edge.clearance = std::min(seemed, edge.way.clearance);
                if (edge.clearance < seemed * (1 - 2 * tolerance_)) {
                    order.push_back(i);
                    std::push_heap(order.begin(), order.end(), after);
                    continue;
                }
            }
            parent_[a] = b;
            tree_[edge.from].push_back(i);
            tree_[edge.to].push_back(i);
        }
        return trace();
    }

private:
    static constexpr std::uint32_t none = 0xffffffff;

    struct Local {
        std::uint32_t global;
        Stand stand;
        int side = -1;  ///< 0 or 1 where one is out of the opening
    };
    struct Edge {
        std::uint32_t from, to;
        std::uint32_t passage;  ///< one of the model's
        double clearance = 0;
        bool led = false;
        ClearWay way;
    };

    std::uint32_t find(std::uint32_t x) {
        while (parent_[x] != x) x = parent_[x] = parent_[parent_[x]];
        return x;
    }

    [[nodiscard]] int side_of(std::uint32_t stand) const {
        if (passages_[stand].clearance < std::min(exit * widest_, passages_.clearance().cap() * 0.99)) return -1;
        const std::int32_t body = bodies_.of[stand];
        if (by_cells_ && body != openings_.body_at(passages_, stand)) return -1;
        return body == opening_.first ? 0 : body == opening_.second ? 1 : -1;
    }

    /// Whether a stand is in the mouth of another opening.
    [[nodiscard]] bool is_elsewhere(std::uint32_t stand) const {
        if (!passages_.is_portal(stand)) return false;
        const std::uint32_t opening = openings_.at_portal[stand];
        return opening != which_ && (opening != Openings::none || (by_cells_ && openings_.is_border[stand] != 0));
    }

    [[nodiscard]] bool is_shut(std::uint32_t passage) const {
        return openings_.leads_elsewhere(passages_, passage, which_) || is_any_crossed(gates_, passages_, passage);
    }

    bool add(std::uint32_t stand) {
        if (!local_.emplace(stand, static_cast<std::uint32_t>(stands_.size())).second) return false;
        stands_.push_back({stand, passages_[stand], side_of(stand)});
        return true;
    }

    /// Widest first, so that the ways out come in soon.
    void collect() {
        const Passage& start = passages_.passage(opening_.widest);
        struct Next {
            double clearance;
            std::uint32_t stand;
            bool operator<(const Next& o) const { return clearance != o.clearance ? clearance < o.clearance : stand > o.stand; }
        };
        std::queue<std::uint32_t> open;
        for (const std::uint32_t end : {start.from, start.to}) {
            if (add(end)) open.push(end);
        }
        while (!open.empty() && stands_.size() < most_stands) {
            const std::uint32_t at = open.front();
            open.pop();
            if (side_of(at) >= 0) continue;
            std::vector<Next> next;
            for (const std::uint32_t i : passages_.of(at)) {
                const Passage& p = passages_.passage(i);
                const std::uint32_t to = p.across(at);
                if (p.clearance < narrower * opening_.radius || passages_[to].clearance < narrower * opening_.radius ||
                    local_.contains(to))
                    continue;
                if (bodies_.of[to] != opening_.first && bodies_.of[to] != opening_.second) continue;
                if (is_elsewhere(to) || is_shut(i)) continue;
                next.push_back({passages_[to].clearance, to});
            }
            std::sort(next.begin(), next.end(), [](const Next& a, const Next& b) { return b < a; });
            for (const Next& n : next) {
                if (stands_.size() >= most_stands) break;
                if (add(n.stand)) open.push(n.stand);
            }
        }
        // Where no way out came in, the passage itself is one.
        for (const int side : {0, 1}) {
            if (!gates_.empty() || opening_.unled ||
                std::any_of(stands_.begin(), stands_.end(), [&](const Local& l) { return l.side == side; }))
                continue;
            const std::int32_t body = side == 0 ? opening_.first : opening_.second;
            stands_[bodies_.of[start.from] == body ? 0 : 1].side = side;
        }
        for (std::uint32_t a = 0; a < stands_.size(); ++a) {
            for (const std::uint32_t i : passages_.of(stands_[a].global)) {
                const Passage& p = passages_.passage(i);
                const auto to = local_.find(p.across(stands_[a].global));
                if (to == local_.end() || to->second <= a || is_shut(i)) continue;
                edges_.push_back({a, to->second, i, 0, false, {}});
            }
        }
    }

    void improve(Local& local) const {
        if (local.side >= 0 || !passages_.is_portal(local.global) || local.stand.clearance >= missed * opening_.radius) return;
        const CellComplex& complex = passages_.air().complex;
        const std::span<const Point> corners = complex.corners_of(complex.portals[local.global]);
        const Stand better = passages_.clearance()
                                 .highest(ConvexPolygon(corners.begin(), corners.end()), {.tolerance = tolerance_,
                                                                                          .effort = effort,
                                                                                          .floor = narrower * opening_.radius,
                                                                                          .enough = missed * opening_.radius})
                                 .stand;
        if (better.clearance > local.stand.clearance) local.stand = better;
    }

    /// A long portal may have its best stand at another place than its neighbor. Beside each good stand its neighbors get one
    /// more.
    void echo() {
        const CellComplex& complex = passages_.air().complex;
        const std::size_t edges = edges_.size();
        struct Ask {
            std::uint32_t who, beside, passage;
        };
        std::vector<Ask> asked;
        for (std::size_t i = 0; i < edges; ++i) {
            for (const auto& [who, beside] : {std::pair(edges_[i].from, edges_[i].to), std::pair(edges_[i].to, edges_[i].from)}) {
                const Stand &mine = stands_[who].stand, &other = stands_[beside].stand;
                if (stands_[who].side >= 0 || stands_[beside].side >= 0 || !passages_.is_portal(stands_[who].global)) continue;
                if (other.clearance < worth_it * opening_.radius || distance(mine.at, other.at) < 3 * other.clearance) continue;
                asked.push_back({who, beside, edges_[i].passage});
            }
        }
        for (const auto& [who, beside, passage] : asked) {
            if (stands_.size() >= 2 * most_stands) return;
            const std::uint32_t global = stands_[who].global;
            const std::span<const Point> corners = complex.corners_of(complex.portals[global]);
            const ConvexPolygon near = clipped(ConvexPolygon(corners.begin(), corners.end()), stands_[beside].stand);
            if (near.empty()) continue;
            const Stand found =
                passages_.clearance()
                    .highest(
                        near,
                        {.tolerance = tolerance_, .effort = effort, .floor = opening_.radius, .enough = missed * opening_.radius})
                    .stand;
            if (found.clearance < worth_it * opening_.radius) continue;
            const bool known = std::any_of(stands_.begin(), stands_.end(), [&](const Local& l) {
                return l.global == global && distance(l.stand.at, found.at) < found.clearance;
            });
            if (known) continue;
            const auto added = static_cast<std::uint32_t>(stands_.size());
            stands_.push_back({global, found, -1});
            for (std::size_t i = 0; i < edges; ++i) {
                if (edges_[i].from == who) edges_.push_back({added, edges_[i].to, edges_[i].passage, 0, false, {}});
                if (edges_[i].to == who) edges_.push_back({edges_[i].from, added, edges_[i].passage, 0, false, {}});
            }
            edges_.push_back({added, beside, passage, 0, false, {}});
        }
    }

    /// What of a polygon lies in a box around the foot of a stand on its plane.
    static ConvexPolygon clipped(ConvexPolygon polygon, Stand around) {
        const double half = 2 * around.clearance;
        const Vector normal = doubled_area(polygon);
        if (const double size = dot(normal, normal); size > 0) {
            around.at = around.at + normal * (dot(normal, polygon[0] - around.at) / size);
        }
        ConvexPolygon front, back;
        for (const Vector axis : {Vector{1, 0, 0}, Vector{0, 1, 0}, Vector{0, 0, 1}}) {
            for (const double sign : {1.0, -1.0}) {
                if (polygon.empty()) return polygon;
                const Vector side = axis * sign;
                split(polygon, {side, dot(side, {around.at.x, around.at.y, around.at.z}) - half}, 0, front, back);
                polygon = front;
            }
        }
        return polygon;
    }

    ThroatWay trace() {
        ThroatWay way;
        way.radius = passages_.clearance().cap();
        std::vector<std::uint32_t> by(stands_.size(), none), queue;
        std::vector<char> seen(stands_.size(), 0);
        for (std::uint32_t i = 0; i < stands_.size(); ++i) {
            if (stands_[i].side != 0) continue;
            seen[i] = 1;
            queue.push_back(i);
        }
        std::uint32_t end = none;
        for (std::size_t k = 0; k < queue.size() && end == none; ++k) {
            if (stands_[queue[k]].side == 1) {
                end = queue[k];
                break;
            }
            for (const std::uint32_t i : tree_[queue[k]]) {
                const std::uint32_t to = edges_[i].from == queue[k] ? edges_[i].to : edges_[i].from;
                if (seen[to]) continue;
                seen[to] = 1;
                by[to] = i;
                queue.push_back(to);
            }
        }
        if (end == none) return {};
        way.ends[1] = stands_[end].global;
        way.corners.push_back(stands_[end].stand.at);
        while (by[end] != none) {
            const Edge& edge = edges_[by[end]];
            const bool forward = edge.to == end;
            std::vector<Point> corners = edge.way.corners;
            if (forward) std::reverse(corners.begin(), corners.end());
            way.corners.insert(way.corners.end(), corners.begin(), corners.end());
            if (edge.clearance < way.radius) {
                way.radius = edge.clearance;
                way.tightest = edge.way.tightest;
            }
            if (passages_.is_portal(stands_[end].global)) way.portals.push_back(stands_[end].global);
            end = forward ? edge.from : edge.to;
            way.corners.push_back(stands_[end].stand.at);
        }
        way.ends[0] = stands_[end].global;
        std::reverse(way.corners.begin(), way.corners.end());
        return way;
    }

    const Passages& passages_;
    const Bodies& bodies_;
    const Openings& openings_;
    std::size_t which_;
    Opening opening_;
    double tolerance_;
    bool by_cells_;  ///< whether an end of the opening is where cells, too, go with the body
    const std::vector<Gate>& gates_;
    double widest_;  ///< meters; of the balls that get through the opening and through the gates
    std::vector<Local> stands_;
    std::unordered_map<std::uint32_t, std::uint32_t> local_;
    std::vector<Edge> edges_;
    std::vector<std::uint32_t> parent_;
    std::vector<std::vector<std::uint32_t>> tree_;
};

/// Looks for the widest way, each time for one a little wider than the last. A way as wide as was looked for has to be found
/// again when a wider one is looked for: else it left the opening by a side where only a small ball is told to be out.
ThroatWay look_around(const Passages& passages, const Bodies& bodies, const Openings& openings, std::size_t which,
                      double tolerance, bool by_cells, const Beside& start, const std::vector<Gate>& gates, double widest) {
    double known = start.clearance;
    ThroatWay best;
    bool sure = true;
    for (int round = 0; round < most_rounds; ++round) {
        ThroatWay way = Throat(passages, bodies, openings, which, start.passage, known, tolerance, by_cells, gates, widest).way();
        if (way.radius >= best.radius * (1 - 2 * tolerance)) sure = true;
        if (way.radius <= best.radius) break;
        best = std::move(way);
        if (best.radius < known * grown) break;
        sure = best.radius < known * missed * (1 - tolerance);
        known = best.radius;
    }
    return sure ? best : ThroatWay{};
}

}  // namespace

void lead_home(const Passages& passages, const WaysHome& home, std::uint32_t from, double tolerance, ThroatWay& way) {
    const Clearance& clearance = passages.clearance();
    Point at = way.corners.back();
    while (clearance.at(at) < clearance.cap() * 0.98) {
        const std::uint32_t next = home.next(from);
        if (next == WaysHome::none) break;
        const ClearWay on = passages.way(home.passage(from), from, at, passages[next].at, {way.radius, 1 - tolerance, turns});
        if (on.clearance < way.radius) {
            way.radius = on.clearance;
            way.tightest = on.tightest;
        }
        way.corners.insert(way.corners.end(), on.corners.begin(), on.corners.end());
        way.corners.push_back(passages[next].at);
        at = passages[next].at;
        from = next;
    }
}

namespace {

/// Cuts off corners that are close together, where the ball gets through straight: steps aside leave loops behind.
void straighten(const Passages& passages, ThroatWay& way) {
    constexpr double close = 1;  // radii
    const TriangleTree& tree = passages.clearance().tree();
    std::vector<Point> corners{way.corners[0]};
    for (std::size_t at = 0; at + 1 < way.corners.size();) {
        std::size_t next = at + 1;
        for (std::size_t k = at + 2; k < way.corners.size(); ++k) {
            if (distance(way.corners[at], way.corners[k]) <= close * way.radius &&
                !tree.is_near(way.corners[at], way.corners[k], way.radius))
                next = k;
        }
        corners.push_back(way.corners[next]);
        at = next;
    }
    if (corners.size() == way.corners.size()) return;
    way.corners = std::move(corners);
    double least = passages.clearance().cap(), off = 1e300;
    Point tightest, as_before;
    for (std::size_t i = 0; i + 1 < way.corners.size(); ++i) {
        const Point& from = way.corners[i];
        const Vector along = way.corners[i + 1] - from;
        const double size = dot(along, along);
        const Point near = from + along * (size > 0 ? std::clamp(dot(way.tightest - from, along) / size, 0.0, 1.0) : 0);
        if (distance(near, way.tightest) < off) {
            off = distance(near, way.tightest);
            as_before = near;
        }
        const Nearest tight = tree.nearest(from, way.corners[i + 1], least);
        if (!tight.found()) continue;
        least = tight.distance;
        tightest = tight.on_query;
    }
    constexpr double as_tight = 1.001;  // of places that are, the one stays that was the tightest
    way.tightest = passages.clearance().at(as_before) <= as_tight * least ? as_before : tightest;
    way.radius = least;
}

void lead_home_both(const Passages& passages, const WaysHome& home, double tolerance, ThroatWay& way) {
    straighten(passages, way);
    lead_home(passages, home, way.ends[1], tolerance, way);
    std::reverse(way.corners.begin(), way.corners.end());
    lead_home(passages, home, way.ends[0], tolerance, way);
    std::reverse(way.corners.begin(), way.corners.end());
}

}  // namespace

ThroatWay widest_way(const Passages& passages, const Bodies& bodies, const WaysHome& home, const Openings& openings,
                     std::size_t which, double tolerance) {
    const Opening& opening = openings.list[which];
    ThroatWay best = look_around(passages, bodies, openings, which, tolerance, true, {opening.widest, opening.radius}, {}, 0);
    // Much wider than the ball that was led through before: it may have got out beside the opening. Of two ways to tell where
    // that ends, the one that keeps the ball in is right.
    if ((best.corners.empty() || best.radius > opening.radius * grown) && !opening.stray) {
        ThroatWay other =
            look_around(passages, bodies, openings, which, tolerance, false, {opening.widest, opening.radius}, {}, 0);
        if (!other.corners.empty() && (best.corners.empty() || other.radius < best.radius)) best = std::move(other);
    }
    if (best.corners.empty() && opening.unled) {
        best = way_through_mouth(passages, bodies, openings, opening, tolerance);
        if (best.corners.empty()) return {};
    }
    if (best.corners.empty()) {
        const Passage& p = passages.passage(opening.widest);
        const bool first = bodies.of[p.from] == opening.first;
        best.ends = first ? std::array{p.from, p.to} : std::array{p.to, p.from};
        const ClearWay way = passages.way(opening.widest, best.ends[0], passages[best.ends[0]].at, passages[best.ends[1]].at,
                                          {opening.radius, 1 - tolerance, turns});
        best.radius = std::min({opening.radius, way.clearance});
        best.tightest = way.tightest;
        best.corners = way.corners;
        best.corners.insert(best.corners.begin(), passages[best.ends[0]].at);
        best.corners.push_back(passages[best.ends[1]].at);
        for (const std::uint32_t end : best.ends) {
            if (passages.is_portal(end)) best.portals.push_back(end);
        }
    }
    lead_home_both(passages, home, tolerance, best);
    return best;
}

ThroatWay widest_way_beside(const Passages& passages, const Bodies& bodies, const WaysHome& home, const Openings& openings,
                            std::size_t which, const Beside& start, double tolerance, const std::vector<Gate>& gates,
                            double widest) {
    ThroatWay way = look_around(passages, bodies, openings, which, tolerance, false, start, gates, widest);
    if (!way.corners.empty()) lead_home_both(passages, home, tolerance, way);
    return way;
}

}  // namespace seamward
