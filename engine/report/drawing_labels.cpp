// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_labels.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace seamward {

namespace {

constexpr double marks_apart = 1.8;       ///< mm between marks of gaps
constexpr double before_row = 3.5;        ///< mm from the drawing to the nearest row
constexpr double between = 0.9;           ///< mm between balloons
constexpr double farther = 5;             ///< mm by which rows go out when there is no room
constexpr int most_rows_out = 12;         ///< so often at most, once there are places enough
constexpr double flattest = 0.42;         ///< sine of the angle between a leader and its row
constexpr double too_flat = 1000;         ///< mm that a flatter leader counts more
constexpr double leader_clearance = 0.4;  ///< mm between a leader and another balloon

double size_of(Point2 v) { return std::hypot(v.x, v.y); }

/// A place for a balloon.
struct Port {
    Point2 at, inward;
};

void add_row(Point2 from, Point2 to, Point2 inward, double pitch, std::vector<Port>& ports) {
    const double run = size_of(to - from);
    const auto count = static_cast<int>(std::floor(run / pitch)) + 1;
    const Point2 along = (to - from) * (1 / std::max(run, 1e-9));
    const double spare = (run - (count - 1) * pitch) / 2;
    for (int i = 0; i < count; ++i) ports.push_back({from + along * (spare + i * pitch), inward});
}

std::vector<Port> ports_around(const PaperBox& row, bool right, double pitch) {
    std::vector<Port> ports;
    const double corner = pitch * 0.8;  // so that balloons of two rows do not meet
    add_row({row.low.x, row.low.y}, {row.high.x, row.low.y}, {0, 1}, pitch, ports);
    add_row({row.low.x, row.high.y}, {row.high.x, row.high.y}, {0, -1}, pitch, ports);
    if (row.height() > 2 * corner) {
        add_row({row.low.x, row.low.y + corner}, {row.low.x, row.high.y - corner}, {1, 0}, pitch, ports);
        if (right) add_row({row.high.x, row.low.y + corner}, {row.high.x, row.high.y - corner}, {-1, 0}, pitch, ports);
    }
    return ports;
}

double cost_of(Point2 site, const Port& port) {
    const double run = size_of(site - port.at);
    return dot(site - port.at, port.inward) < flattest * run ? run + too_flat : run;
}

void part_sites(std::vector<Balloon>& balloons, const PaperBox& drawing) {
    for (int round = 0; round < 200; ++round) {
        bool moved = false;
        for (std::size_t i = 0; i < balloons.size(); ++i) {
            for (std::size_t j = i + 1; j < balloons.size(); ++j) {
                const Point2 off = balloons[j].site - balloons[i].site;
                const double away = size_of(off);
                if (away >= marks_apart - 1e-6) continue;
                moved = true;
                // Those on one place part along the drawing's longer side.
                const Point2 along = away > 0.05 ? off * (1 / away) : Point2{1, 0};
                const Point2 push = along * ((marks_apart - away) / 2);
                balloons[i].site = balloons[i].site - push;
                balloons[j].site = balloons[j].site + push;
            }
        }
        for (Balloon& balloon : balloons) {
            balloon.site.x = std::clamp(balloon.site.x, drawing.low.x, drawing.high.x);
            balloon.site.y = std::clamp(balloon.site.y, drawing.low.y, drawing.high.y);
        }
        if (!moved) return;
    }
}

bool crosses(const Balloon& a, const Balloon& b) { return segments_meet(a.site, a.leader_end(), b.site, b.leader_end()); }

bool runs_through(const Balloon& leader, const Balloon& other) {
    return distance_to_segment(other.at, leader.site, leader.leader_end()) < other.size / 2 + leader_clearance;
}

/// Exchanges ends of leaders that are in each other's way as long as that helps.
void untangle(std::vector<Balloon>& balloons) {
    for (int round = 0; round < 50; ++round) {
        bool changed = false;
        for (std::size_t i = 0; i < balloons.size(); ++i) {
            for (std::size_t j = i + 1; j < balloons.size(); ++j) {
                Balloon &a = balloons[i], &b = balloons[j];
                if (!crosses(a, b) && !runs_through(a, b) && !runs_through(b, a)) continue;
                std::swap(a.at, b.at);
                if (crosses(a, b) || runs_through(a, b) || runs_through(b, a))
                    std::swap(a.at, b.at);
                else
                    changed = true;
            }
        }
        if (!changed) return;
    }
}

/// Puts balloons on places; what that costs: conflicts, then leaders that are too flat.
double assign(std::vector<Balloon>& balloons, const std::vector<Port>& ports) {
    std::vector<std::vector<double>> costs(balloons.size());
    for (std::size_t i = 0; i < balloons.size(); ++i) {
        for (const Port& port : ports) costs[i].push_back(cost_of(balloons[i].site, port));
    }
    const std::vector<std::size_t> places = least_assignment(costs);
    double flat = 0;
    for (std::size_t i = 0; i < balloons.size(); ++i) {
        balloons[i].at = ports[places[i]].at;
        flat += costs[i][places[i]] >= too_flat ? 1 : 0;
    }
    untangle(balloons);
    return static_cast<double>(label_conflicts(balloons)) * too_flat + flat;
}

}  // namespace

Point2 Balloon::leader_end() const {
    const Point2 off = site - at;
    const double run = size_of(off);
    return run > size / 2 ? at + off * (size / 2 / run) : site;
}

bool segments_meet(Point2 a, Point2 b, Point2 c, Point2 d) {
    const auto side = [](Point2 from, Point2 to, Point2 p) { return cross(to - from, p - from); };
    const double c_side = side(a, b, c), d_side = side(a, b, d), a_side = side(c, d, a), b_side = side(c, d, b);
    if (c_side * d_side > 0 || a_side * b_side > 0) return false;
    // On one line: whether they reach to each other.
    return std::max(std::min(a.x, b.x), std::min(c.x, d.x)) <= std::min(std::max(a.x, b.x), std::max(c.x, d.x)) &&
           std::max(std::min(a.y, b.y), std::min(c.y, d.y)) <= std::min(std::max(a.y, b.y), std::max(c.y, d.y));
}

double distance_to_segment(Point2 p, Point2 a, Point2 b) {
    const Point2 step = b - a;
    const double size = dot(step, step);
    const double share = size > 0 ? std::clamp(dot(p - a, step) / size, 0.0, 1.0) : 0;
    return size_of(p - (a + step * share));
}

std::vector<std::size_t> least_assignment(const std::vector<std::vector<double>>& costs) {
    const std::size_t things = costs.size(), places = things == 0 ? 0 : costs.front().size();
    constexpr double far = std::numeric_limits<double>::infinity();
    std::vector<double> of_thing(things + 1, 0), of_place(places + 1, 0);
    std::vector<std::size_t> taken_by(places + 1, 0), before(places + 1, 0);  // things count from 1; 0: nobody
    for (std::size_t thing = 1; thing <= things; ++thing) {
        taken_by[0] = thing;
        std::size_t place = 0;
        std::vector<double> least(places + 1, far);
        std::vector<char> done(places + 1, 0);
        do {
            done[place] = 1;
            const std::size_t of = taken_by[place];
            double step = far;
            std::size_t next = 0;
            for (std::size_t j = 1; j <= places; ++j) {
                if (done[j]) continue;
                const double cost = costs[of - 1][j - 1] - of_thing[of] - of_place[j];
                if (cost < least[j]) {
                    least[j] = cost;
                    before[j] = place;
                }
                if (least[j] < step) {
                    step = least[j];
                    next = j;
                }
            }
            for (std::size_t j = 0; j <= places; ++j) {
                if (done[j]) {
                    of_thing[taken_by[j]] += step;
                    of_place[j] -= step;
                } else {
                    least[j] -= step;
                }
            }
            place = next;
        } while (taken_by[place] != 0);
        while (place != 0) {
            taken_by[place] = taken_by[before[place]];
            place = before[place];
        }
    }
    std::vector<std::size_t> place_of(things);
    for (std::size_t j = 1; j <= places; ++j) {
        if (taken_by[j] != 0) place_of[taken_by[j] - 1] = j - 1;
    }
    return place_of;
}

PaperBox place_balloons(std::vector<Balloon>& balloons, const PaperBox& drawing, const LabelRoom& room) {
    const auto row_at = [&](double away) {
        const double beside = std::min(away, room.margin);
        return PaperBox{drawing.low - Point2{beside, away}, drawing.high + Point2{room.right ? beside : 0, away}};
    };
    if (balloons.empty()) return row_at(0);
    part_sites(balloons, drawing);
    const double size = balloons.front().size;
    std::vector<Balloon> best;
    PaperBox best_row{};
    double best_cost = std::numeric_limits<double>::infinity();
    int tries = 0;
    for (double away = before_row + size / 2; best_cost > 0 && tries <= most_rows_out; away += farther) {
        const PaperBox row = row_at(away);
        const std::vector<Port> ports = ports_around(row, room.right, size + between);
        if (ports.size() < balloons.size()) continue;
        ++tries;
        std::vector<Balloon> placed = balloons;
        const double cost = assign(placed, ports);
        if (!(cost < best_cost)) continue;
        best_cost = cost;
        best = std::move(placed);
        best_row = row;
    }
    balloons = std::move(best);
    return best_row;
}

std::size_t label_conflicts(const std::vector<Balloon>& balloons) {
    std::size_t conflicts = 0;
    for (std::size_t i = 0; i < balloons.size(); ++i) {
        for (std::size_t j = i + 1; j < balloons.size(); ++j) {
            if (size_of(balloons[i].at - balloons[j].at) < (balloons[i].size + balloons[j].size) / 2) ++conflicts;
            if (crosses(balloons[i], balloons[j])) ++conflicts;
            if (runs_through(balloons[i], balloons[j])) ++conflicts;
            if (runs_through(balloons[j], balloons[i])) ++conflicts;
        }
    }
    return conflicts;
}

}  // namespace seamward
