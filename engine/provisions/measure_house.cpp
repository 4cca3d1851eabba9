// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <limits>

#include "catalog/shipped.h"
#include "provisions/measures.h"

namespace seamward {

namespace {

/// How many of the gaps looked at are open, told of each of them. That a house shows none says nothing: somebody has to look.
std::vector<Measured> gaps_there(const AuditFacts& facts, const Provision& provision) {
    std::vector<Measured> out;
    std::size_t open = 0, closed = 0;
    for (const GapIndex gap : facts.gaps_of(provision)) {
        const bool shut = is_shut(facts.survey()[gap].shape), sure = !shut || !facts.is_guess(gap);
        Measured one = subject_of(facts, gap);
        one.remark = sure ? closing_doubt(facts, gap, provision) : Message("nobody looked whether it is open");
        const bool known = one.remark.empty();
        open += shut ? 0 : facts.survey()[gap].count;
        closed += shut && known ? 1 : 0;
        if (!shut || !known) out.push_back(std::move(one));
    }
    for (Measured& one : out) {
        if (one.remark.empty()) one.value = static_cast<double>(open);
    }
    if (!out.empty()) return out;
    Measured none;
    none.subject = "the house";
    if (closed > 0)
        none.value = 0;
    else
        none.remark = "nobody says that there is none";
    return {none};
}

/// From each corner that stands out, to the nearest piece of the vents looked at, level.
std::vector<Measured> corners(const AuditFacts& facts, const Provision& provision) {
    const Loop& outline = facts.job.house.outline;
    const std::vector<GapIndex> vents = facts.gaps_of(provision);
    std::vector<Measured> out;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const std::size_t before = (i + outline.size() - 1) % outline.size();
        const Point2 &at = outline[i], &from = outline[before], &to = outline[(i + 1) % outline.size()];
        if (cross(at - from, to - at) <= 0) continue;
        Measured one;
        one.subject =
            message("corner of {} and {}", {as_named(facts.job.house.walls[before]), as_named(facts.job.house.walls[i])});
        one.at = Point{at.x, at.y, 0};
        double best = std::numeric_limits<double>::infinity();
        for (const GapIndex vent : vents) {
            const GapPlace place = place_of(facts, vent);
            if (is_shut(facts.survey()[vent].shape)) continue;
            if (place.along_usual || (facts.survey()[vent].count > 1 && place.spacing_usual)) {
                one.remark = place_not_said;
                continue;
            }
            for (const TriangleTree::Triangle& face : facts.faces(vent)) {
                const Point near = nearest_of(
                    {Point{face[0].x, face[0].y, 0}, Point{face[1].x, face[1].y, 0}, Point{face[2].x, face[2].y, 0}}, *one.at);
                const double away = std::hypot(near.x - at.x, near.y - at.y);
                if (away >= best) continue;
                best = away;
                one.gap = vent;
                one.gaps = {vent};
            }
        }
        // A vent whose place is not known may be nearer.
        const bool may_be_nearer = !one.remark.empty() && provision.at_most && best > *provision.at_most;
        if (best < std::numeric_limits<double>::infinity() && !may_be_nearer) {
            one.value = best;
            one.remark = "measured on the house's solids";
        } else if (vents.empty()) {
            one.remark = "the house has no such vent";
        }
        out.push_back(std::move(one));
    }
    if (!outline.empty()) return out;
    Measured all;
    all.subject = "the corners of the house";
    return {all};
}

/// What the survey states of the house, or of places of it, which say nothing of the others.
std::vector<Measured> stated_places(const AuditFacts& facts, const Provision& provision) {
    std::vector<Measured> out;
    bool of_house = false;
    for (const Detail& detail : facts.job.details) {
        if (detail.measure != provision.measure) continue;
        Measured one;
        one.subject = detail.at.empty() ? Message("the house") : as_named(detail.at);
        one.value = detail.value;
        one.plus_minus = detail.plus_minus;
        one.remark = "as the survey states it";
        of_house = of_house || detail.at.empty();
        out.push_back(std::move(one));
    }
    if (of_house) return out;
    Measured rest;
    rest.subject = out.empty() ? Message("the house") : Message("the rest of the house");
    if (!out.empty())
        rest.remark =
            "places were looked at one by one; what holds for the whole house is stated without `at`, where it is worst";
    out.push_back(std::move(rest));
    return out;
}

}  // namespace

std::vector<Measured> measure_house(const AuditFacts& facts, const Provision& provision) {
    if (provision.measure == "gaps-there") return gaps_there(facts, provision);
    if (provision.measure == "vent-to-corner") return corners(facts, provision);
    return stated_places(facts, provision);
}

std::vector<Measured> measure(const AuditFacts& facts, const Provision& provision) {
    const Measure* row = shipped_measures().find(provision.measure);
    std::vector<Measured> all;
    switch (row->of) {
        case Measure::Of::gap: all = measure_gaps(facts, provision); break;
        case Measure::Of::space: all = measure_spaces(facts, provision); break;
        case Measure::Of::house: all = measure_house(facts, provision); break;
    }
    for (Measured& one : all) {
        if (!one.value && one.remark.empty()) one.remark = message("still to be looked up: {}", {Message(row->ask)});
    }
    return all;
}

}  // namespace seamward
