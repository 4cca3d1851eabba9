// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/passages.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>

namespace seamward {

namespace {

constexpr std::size_t few = 12;        // of so many stands in a cell each is joined with each
constexpr std::size_t neighbors = 8;   // of more, each with so many near ones
constexpr double rough = 0.02;         // how exactly stands are placed, as a fraction of their clearance
constexpr int tries = 24;              // pieces of a portal that are looked at,
constexpr int more_tries = 160;        // and of one longer than
constexpr double long_portal = 0.5;    // meters, which may have a roomy corner far off
constexpr double good_enough = 0.985;  // a ball that much smaller than wanted is not led around corners
constexpr int turns = 2;

}  // namespace

Passages::Passages(const Air& air, const Clearance& clearance, double least, const RunContext& run)
    : air_(air), clearance_(clearance), least_(least), portals_(static_cast<std::uint32_t>(air.complex.portals.size())) {
    run.stage("measuring openings");
    place_stands();
    run.check();
    join_stands();
}

double Passages::volume_of(std::uint32_t stand) const {
    return is_portal(stand) ? 0 : air_.complex.cells[stand - portals_].volume;
}

void Passages::place_stands() {
    const CellComplex& complex = air_.complex;
    stands_.resize(portals_ + complex.cells.size());
    tbb::parallel_for(std::size_t{0}, complex.portals.size(), [&](std::size_t i) {
        const Portal& portal = complex.portals[i];
        if (!air_.open(portal)) return;
        const std::span<const Point> corners = complex.corners_of(portal);
        double span = 0;
        for (const Point& p : corners) span = std::max(span, distance(p, corners[0]));
        stands_[i] = clearance_
                         .highest(ConvexPolygon(corners.begin(), corners.end()),
                                  {.tolerance = rough, .effort = span > long_portal ? more_tries : tries, .floor = least_})
                         .stand;
    });
    tbb::parallel_for(std::size_t{0}, complex.cells.size(), [&](std::size_t i) {
        if (air_.solid[i]) return;
        const Point& middle = complex.cells[i].middle;
        stands_[portals_ + i] = {middle, clearance_.at(middle)};
    });
}

void Passages::join_stands() {
    const CellComplex& complex = air_.complex;
    std::vector<std::uint32_t> first(complex.cells.size() + 1, 0);
    const auto for_each_side = [&](auto&& visit) {
        for (std::uint32_t i = 0; i < portals_; ++i) {
            if (stands_[i].clearance < least_) continue;
            visit(complex.portals[i].front, i);
            visit(complex.portals[i].back, i);
        }
    };
    for_each_side([&](std::uint32_t cell, std::uint32_t) { ++first[cell + 1]; });
    for (std::size_t i = 1; i < first.size(); ++i) first[i] += first[i - 1];
    std::vector<std::uint32_t> of_cell(first.back()), next(first.begin(), first.end() - 1);
    for_each_side([&](std::uint32_t cell, std::uint32_t portal) { of_cell[next[cell]++] = portal; });

    const auto join = [&](std::uint32_t a, std::uint32_t b) {
        const double most = std::min(stands_[a].clearance, stands_[b].clearance);
        if (most >= least_) passages_.push_back({a, b, most, Passage::Known::ends, {}});
    };
    std::vector<std::pair<double, std::uint32_t>> near;
    for (std::uint32_t cell = 0; cell < complex.cells.size(); ++cell) {
        if (air_.solid[cell]) continue;
        const std::span<const std::uint32_t> portals{of_cell.data() + first[cell], first[cell + 1] - first[cell]};
        const std::uint32_t middle = middle_of(cell);
        for (const std::uint32_t p : portals) join(p, middle);
        const bool roomy = stands_[middle].clearance >= clearance_.cap();
        if (!roomy && portals.size() <= few) {
            for (std::size_t i = 0; i < portals.size(); ++i) {
                for (std::size_t j = i + 1; j < portals.size(); ++j) join(portals[i], portals[j]);
            }
        } else if (!roomy) {
            for (const std::uint32_t p : portals) {
                near.clear();
                for (const std::uint32_t q : portals) {
                    if (p != q) near.emplace_back(distance(stands_[p].at, stands_[q].at), q);
                }
                std::partial_sort(near.begin(), near.begin() + neighbors, near.end());
                for (std::size_t k = 0; k < neighbors; ++k) join(p, near[k].second);
            }
        }
    }
    straight_ = passages_.size();
    list_by_stand();
}

void Passages::list_by_stand() {
    first_.assign(stands_.size() + 1, 0);
    for (const Passage& p : passages_) {
        ++first_[p.from + 1];
        ++first_[p.to + 1];
    }
    for (std::size_t i = 1; i < first_.size(); ++i) first_[i] += first_[i - 1];
    list_.resize(first_.back());
    std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
    for (std::uint32_t i = 0; i < passages_.size(); ++i) {
        list_[next[passages_[i].from]++] = i;
        list_[next[passages_[i].to]++] = i;
    }
}

std::uint32_t Passages::add(std::uint32_t from, std::uint32_t to, double clearance, std::vector<Point> corners) {
    passages_.push_back({from, to, clearance, Passage::Known::led, stands_[from].at});
    corners_.push_back(std::move(corners));
    return static_cast<std::uint32_t>(passages_.size() - 1);
}

ClearWay Passages::way(std::uint32_t i, std::uint32_t start, const Point& from, const Point& to,
                       const Clearance::Lead& lead) const {
    const std::span<const Point> corners = corners_of(i);
    if (corners.empty()) return clearance_.way(from, to, lead);
    ClearWay bent{lead.wanted, start == passages_[i].from ? from : to, {}};  // from there it only widens
    Point at = from;
    for (std::size_t k = 0; k <= corners.size() && bent.clearance > 0; ++k) {
        const bool last = k == corners.size();
        const Point& next = last ? to : start == passages_[i].from ? corners[k] : corners[corners.size() - 1 - k];
        Clearance::Lead rest = lead;
        rest.wanted = bent.clearance;
        ClearWay on = clearance_.way(at, next, rest);
        if (on.clearance < bent.clearance) {
            bent.clearance = on.clearance;
            bent.tightest = on.tightest;
        }
        bent.corners.insert(bent.corners.end(), on.corners.begin(), on.corners.end());
        if (!last) bent.corners.push_back(next);
        at = next;
    }
    if (bent.clearance >= lead.wanted * lead.enough) return bent;
    ClearWay straight = clearance_.way(from, to, lead);
    return bent.clearance >= straight.clearance ? bent : straight;
}

const Passage& Passages::lead(std::uint32_t i) {
    Passage& passage = passages_[i];
    if (passage.led()) return passage;
    const bool straight = passage.known == Passage::Known::ends;
    const Point &from = stands_[passage.from].at, &to = stands_[passage.to].at;
    const double wanted = std::min(stands_[passage.from].clearance, stands_[passage.to].clearance);
    if (straight) {
        const Nearest tight = clearance_.tree().nearest(from, to, wanted, wanted * good_enough);
        if (tight.distance < wanted * good_enough) {
            passage.known = Passage::Known::straight;
            passage.clearance = wanted * good_enough;
            return passage;
        }
        passage.tightest = tight.on_query;
        passage.clearance = tight.distance;
    } else {
        const ClearWay way = clearance_.way(from, to, {wanted, good_enough, turns, least_});
        passage.tightest = way.tightest;
        passage.clearance = std::min(wanted, way.clearance);
    }
    passage.known = Passage::Known::led;
    return passage;
}

const Passage& Passages::led(std::uint32_t i) {
    while (!passages_[i].led()) lead(i);
    return passages_[i];
}

}  // namespace seamward
