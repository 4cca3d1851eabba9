// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/match.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "catalog/shipped.h"

namespace seamward {

namespace {

constexpr double nowhere = std::numeric_limits<double>::infinity();
/// Ways that run steeper than this go through a floor or a roof, not through a wall.
constexpr double level = 0.7;

/// The line along which a slot runs, from its middle both ways; a point for anything else. Meters.
Point half_run(const Job& job, GapIndex index) {
    const Gap& gap = job.survey[index];
    const Slot* slot = std::get_if<Slot>(gap.covered ? &gap.covered->shape : &gap.shape);
    const Feature* feature = shipped_features().find(gap.feature);
    if (slot == nullptr || feature == nullptr) return {};
    // Slots round a box lie within reach of its middle; those in one line may be as long as a wall.
    const auto runs = [](const FeatureGap& row) {
        return row.form == FeatureGap::Form::line || row.form == FeatureGap::Form::edge;
    };
    if (std::none_of(feature->gaps.begin(), feature->gaps.end(), runs)) return {};
    const bool upright =
        std::all_of(feature->gaps.begin(), feature->gaps.end(), [&](const FeatureGap& row) { return !runs(row) || row.upright; });
    const double half = slot->length / 2;
    if (upright) return {0, 0, half};
    const std::vector<Point>& through =
        index.value < job.house.places.size() ? job.house.places[index.value].through : std::vector<Point>();
    if (through.size() < 2) return {};
    const double x = through.back().x - through.front().x, y = through.back().y - through.front().y;
    const double z = through.back().z - through.front().z;
    const double flat = std::hypot(x, y);
    if (flat < level * std::hypot(flat, z)) return {};
    return {-y / flat * half, x / flat * half, 0};
}

}  // namespace

double distance_to(const Job& job, GapIndex gap, const Point& from) {
    const std::optional<Point>& at = job.survey[gap].at;
    if (!at) return nowhere;
    const Point run = half_run(job, gap);
    const double square = run.x * run.x + run.y * run.y + run.z * run.z;
    const double along =
        square > 0 ? ((from.x - at->x) * run.x + (from.y - at->y) * run.y + (from.z - at->z) * run.z) / square : 0;
    const double on = std::clamp(along, -1.0, 1.0);
    return distance(from, {at->x + on * run.x, at->y + on * run.y, at->z + on * run.z});
}

Matched match(const DrillRound& round, const FoundAt& where) {
    if (where.place) return {where.place, round.places[*where.place].gap, false};
    if (where.gap) {
        for (std::size_t i = 0; i < round.places.size(); ++i) {
            if (round.places[i].gap == where.gap) return {i, where.gap, false};
        }
        return {std::nullopt, where.gap, false};
    }
    Matched matched;
    if (!where.at) return matched;
    const double reach = drill_figure(shipped_drill_scores(), DrillScore::Of::near);
    double nearest = reach;
    const auto nearer = [&](double away) { return away < nearest || (away <= nearest && !matched.place && !matched.gap); };
    for (std::size_t i = 0; i < round.places.size(); ++i) {
        const DrillPlace& place = round.places[i];
        const double away = place.gap  ? distance_to(round.job, *place.gap, *where.at)
                            : place.at ? distance(*place.at, *where.at)
                                       : nowhere;
        if (!nearer(away)) continue;
        nearest = away;
        matched = {i, place.gap, false};
    }
    if (matched.place) return matched;
    for (std::uint32_t i = 0; i < round.job.survey.gaps.size(); ++i) {
        const double away = distance_to(round.job, {i}, *where.at);
        if (!nearer(away)) continue;
        nearest = away;
        matched.gap = GapIndex{i};
    }
    return matched;
}

std::vector<Matched> match_findings(const DrillRound& round, std::span<const PlaceAnswer> findings) {
    std::vector<Matched> all;
    all.reserve(findings.size());
    std::vector<double> away;
    for (const PlaceAnswer& finding : findings) {
        all.push_back(match(round, finding.where));
        const Matched& one = all.back();
        double distance_away = 0;  // by number or id
        if (finding.where.at && !finding.where.place && !finding.where.gap && one.place) {
            const DrillPlace& place = round.places[*one.place];
            distance_away =
                place.gap ? distance_to(round.job, *place.gap, *finding.where.at) : distance(*place.at, *finding.where.at);
        }
        away.push_back(distance_away);
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t j = 0; j < all.size() && !all[i].again; ++j) {
            if (i == j || !all[i].place || all[j].place != all[i].place) continue;
            const auto exact = [&](std::size_t k) { return findings[k].where.place || findings[k].where.gap; };
            const bool later = exact(i) != exact(j) ? exact(j) : away[j] < away[i] || (away[j] == away[i] && j < i);
            all[i].again = later;
        }
    }
    return all;
}

}  // namespace seamward
