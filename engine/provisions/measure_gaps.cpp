// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <map>
#include <string_view>

#include "base/drawn_shut.h"
#include "catalog/shipped.h"
#include "materials/wrong_closings.h"
#include "provisions/judge.h"
#include "provisions/measures.h"

namespace seamward {

namespace {

constexpr const char* guessed_width = "its width is an estimate: measure it";
constexpr const char* not_seen = "nobody looked: what the tables start with is a guess";
constexpr const char* tight = "the model draws it tight, which says nothing of the house: measure it there";

/// Whether a gap kept to the limit before it was closed, as it was measured then: what is narrow enough open is so closed, too.
bool kept_before(const AuditFacts& facts, const ClosedGap& closed, const Provision& provision) {
    if (provision.measure != "clear-width") return false;
    const Evidence::How how = facts.survey()[closed.gap].evidence.how;
    if (how == Evidence::How::assumed || (how == Evidence::How::modeled && is_shut(closed.before))) return false;
    return judge(provision, clear_width(closed.before), closed.plus_minus) == Verdict::pass;
}

void take_clear_width(const AuditFacts& facts, GapIndex index, const Provision& provision, Measured& out) {
    const Gap& gap = facts.survey()[index];
    if (Message doubt = closing_doubt(facts, index, provision); !doubt.empty()) {
        out.remark = std::move(doubt);
        return;
    }
    if (facts.is_guess(index)) {
        out.remark = is_drawn_shut(gap) ? tight : guessed_width;
        return;
    }
    out.value = clear_width(gap.shape);
    out.plus_minus = gap.evidence.plus_minus;
}

void take_open(const AuditFacts& facts, GapIndex index, const Provision& /*provision*/, Measured& out) {
    const Gap& gap = facts.survey()[index];
    const double width = clear_width(gap.shape), off = gap.evidence.plus_minus;
    if (facts.is_guess(index))
        out.remark = is_drawn_shut(gap) ? tight : not_seen;
    else if (off > 0 && width <= off)
        out.remark = "its width may be off by so much that it may be shut or open: measure it better";
    else
        out.value = is_shut(gap.shape) ? 0 : 1;
}

/// A mesh that is no finer than the opening changes nothing of the opening, and is a screen all the same.
void take_screened(const AuditFacts& facts, GapIndex index, const Provision& /*provision*/, Measured& out) {
    const ClosedGap* closed = facts.closing_of(index);
    const Treatment* with = closed != nullptr ? shipped_treatments().find(closed->with) : nullptr;
    if (with != nullptr && with->leaves_mesh())
        out.value = 1;
    else if (facts.is_guess(index))
        out.remark = not_seen;
    else
        out.value = std::holds_alternative<Mesh>(facts.survey()[index].shape) ? 1 : 0;
}

void take_height(const AuditFacts& facts, GapIndex index, bool earth, Measured& out) {
    const std::optional<GroundClearance> clear = clearance_over_ground(facts, index);
    if (!clear) return;
    const std::optional<double>& height = earth ? clear->earth : clear->paving;
    if (!height) return;
    if (facts.job.house.grade_usual || place_of(facts, index).height_usual) {
        out.remark = place_not_said;
        return;
    }
    out.value = std::max(0.0, *height);
    out.at = earth ? clear->earth_at : clear->paving_at;
    out.remark = *height < 0 ? "measured on the house's solids: it is buried" : "measured on the house's solids";
}

void take_spacing(const AuditFacts& facts, GapIndex index, const Provision& provision, Measured& out) {
    if (facts.is_guess(index)) {
        out.remark = not_seen;
        return;
    }
    if (place_of(facts, index).spacing_usual) {
        out.remark = place_not_said;
        return;
    }
    const std::optional<Spacing> spacing = spacing_of(facts, index);
    if (!spacing) return;
    const double value = provision.at_most ? spacing->widest : spacing->narrowest;
    if (!std::isfinite(value)) return;
    out.value = value;
    out.remark = "measured on the house's solids";
}

using Faces = std::vector<TriangleTree::Triangle>;

Faces flat(Faces faces) {
    for (TriangleTree::Triangle& face : faces) {
        for (Point& corner : face) corner.z = 0;
    }
    return faces;
}

/// Exact but where two edges pass each other askew, by less than the smaller of the two.
double between(const Faces& ones, const Faces& others) {
    double best = std::numeric_limits<double>::infinity();
    for (const TriangleTree::Triangle& one : ones) {
        for (const TriangleTree::Triangle& other : others) {
            for (const Point& corner : one) best = std::min(best, distance(other, corner));
            for (const Point& corner : other) best = std::min(best, distance(one, corner));
        }
    }
    return best;
}

/// Openings into the building: doors and windows of outside walls, and what lets air in from outdoors.
std::vector<Faces> ways_into_building(const AuditFacts& facts) {
    std::vector<Faces> all;
    for (const Part& part : facts.job.house.parts) {
        if (part.layer != Layer::opening || !facts.is_outside(part)) continue;
        Faces faces;
        for (const auto& [a, b, c] : part.mesh.triangles)
            faces.push_back({part.mesh.points[a], part.mesh.points[b], part.mesh.points[c]});
        all.push_back(std::move(faces));
    }
    for (std::uint32_t i = 0; i < facts.survey().gaps.size(); ++i) {
        const Gap& gap = facts.survey().gaps[i];
        const bool lets_in = gap.duty == Duty::vent || gap.duty == Duty::combustion_air || gap.duty == Duty::flood;
        const auto outdoors = [&](SpaceIndex space) { return facts.survey()[space].kind == SpaceKind::outdoors; };
        if (lets_in && (outdoors(gap.between[0]) || outdoors(gap.between[1]))) all.push_back(facts.faces({i}));
    }
    return all;
}

/// From the gap's faces to the nearest opening into the building.
void take_distance_to_openings(const AuditFacts& facts, GapIndex index, const Provision& provision, Measured& out) {
    const GapPlace place = place_of(facts, index);
    const auto nearest = [&](bool in_plan) {
        double best = std::numeric_limits<double>::infinity();
        const auto seen = [&](Faces faces) { return in_plan ? flat(std::move(faces)) : faces; };
        for (const Faces& opening : ways_into_building(facts))
            best = std::min(best, between(seen(facts.faces(index)), seen(opening)));
        return best;
    };
    const double best = nearest(place.height_usual);  // in the plan it is no farther, however high it is
    if (!(best < std::numeric_limits<double>::infinity())) return;
    if (place.along_usual || (place.height_usual && provision.at_least && best < *provision.at_least)) {
        out.remark = place_not_said;
        return;
    }
    out.value = best;
    out.remark = "measured on the house's solids";
}

/// Closings that hold, of the gaps looked at.
std::vector<Measured> closings(const AuditFacts& facts, const Provision& provision) {
    const std::vector<WrongClosing> wrong = wrong_closings(facts.job);
    const std::vector<GapIndex> gaps = facts.gaps_of(provision);
    std::vector<Measured> all;
    for (const ClosedGap& closed : facts.job.closed) {
        if (!closed.holds() || std::find(gaps.begin(), gaps.end(), closed.gap) == gaps.end()) continue;
        Measured one = subject_of(facts, closed.gap);
        const auto is = std::find_if(wrong.begin(), wrong.end(), [&](const WrongClosing& w) { return w.gap == closed.gap; });
        if (is != wrong.end()) {
            one.value = 0;
            one.remark = is->why;
        } else if (closed.with.empty()) {
            one.remark = "nobody says what it was closed with";
        } else {
            one.value = 1;
        }
        all.push_back(std::move(one));
    }
    return all;
}

using Taker = std::function<void(const AuditFacts&, GapIndex, const Provision&, Measured&)>;

const std::map<std::string_view, Taker>& takers() {
    static const std::map<std::string_view, Taker> all{
        {"clear-width", take_clear_width},
        {"stays-open", take_open},
        {"screened", take_screened},
        {"height-over-earth", [](const AuditFacts& f, GapIndex g, const Provision&, Measured& m) { take_height(f, g, true, m); }},
        {"height-over-paving",
         [](const AuditFacts& f, GapIndex g, const Provision&, Measured& m) { take_height(f, g, false, m); }},
        {"spacing", take_spacing},
        {"distance-to-openings", take_distance_to_openings},
    };
    return all;
}

bool is_height(const std::string& measure) { return measure == "height-over-earth" || measure == "height-over-paving"; }

/// Whether the solids show that nothing of the kind lies under a gap: all paving, or all earth.
bool lies_elsewhere(const AuditFacts& facts, GapIndex gap, const std::string& measure) {
    if (!is_height(measure)) return false;
    const std::optional<GroundClearance> clear = clearance_over_ground(facts, gap);
    if (!clear) return false;
    return measure == "height-over-earth" ? !clear->earth : !clear->paving;
}

std::vector<Measured> measure_each(const AuditFacts& facts, const Provision& provision) {
    std::vector<Measured> all;
    for (const GapIndex gap : facts.gaps_of(provision)) {
        Measured one = subject_of(facts, gap);
        if (const Detail* detail = stated(facts, provision.measure, gap)) {
            one.value = detail->value;
            one.plus_minus = detail->plus_minus;
            one.remark = "as the survey states it";
        } else {
            if (lies_elsewhere(facts, gap, provision.measure)) continue;
            const auto taker = takers().find(provision.measure);
            if (taker != takers().end()) taker->second(facts, gap, provision, one);
        }
        all.push_back(std::move(one));
    }
    return all;
}

/// How much a thing says against a house; of two that say the same the one farther past the limit.
std::pair<int, double> against(const Provision& provision, const Measured& one) {
    const Verdict verdict = judge(provision, one.value, one.plus_minus);
    return {verdict == Verdict::fail      ? 2
            : verdict == Verdict::unknown ? 1
                                          : 0,
            one.value ? past_limit(provision, *one.value) : 0};
}

/// Several gaps that one line of the house makes are one thing, as the lines of a weep screed: the one that says most against it
/// counts.
void keep_worst(const AuditFacts& facts, const Provision& provision, std::vector<Measured>& all) {
    std::vector<Measured> kept;
    std::vector<std::string> features;
    for (Measured& one : all) {
        const std::uint32_t gap = one.gap->value;
        const std::string feature = gap < facts.job.house.places.size() ? facts.job.house.places[gap].feature : "";
        const auto at = feature.empty() ? features.end() : std::find(features.begin(), features.end(), feature);
        if (at == features.end()) {
            features.push_back(feature);
            kept.push_back(std::move(one));
            continue;
        }
        Measured& known = kept[static_cast<std::size_t>(at - features.begin())];
        std::vector<GapIndex> gaps = known.gaps;
        gaps.push_back(*one.gap);
        if (against(provision, one) > against(provision, known)) {
            one.subject = known.subject;
            known = std::move(one);
        }
        known.gaps = std::move(gaps);
    }
    all = std::move(kept);
}

}  // namespace

Message closing_doubt(const AuditFacts& facts, GapIndex gap, const Provision& provision) {
    const ClosedGap* closed = facts.closing_of(gap);
    if (closed == nullptr || provision.closed_with.empty() || !is_shut(facts.survey()[gap].shape)) return {};
    if (kept_before(facts, *closed, provision)) return {};
    if (closed->with.empty()) return "nobody says with what it was closed";
    if (std::find(provision.closed_with.begin(), provision.closed_with.end(), closed->with) != provision.closed_with.end())
        return {};
    const Treatment* with = shipped_treatments().find(closed->with);
    return message("closed with {}: whether that counts here, the official decides",
                   {with != nullptr ? Message(with->name) : as_named(closed->with)});
}

GapPlace place_of(const AuditFacts& facts, GapIndex gap) {
    return gap.value < facts.job.house.places.size() ? facts.job.house.places[gap.value] : GapPlace{gap, {}};
}

Measured subject_of(const AuditFacts& facts, GapIndex gap) {
    Measured out;
    out.subject = facts.survey()[gap].called();
    out.gap = gap;
    out.at = facts.survey()[gap].at;
    out.gaps = {gap};
    return out;
}

const Detail* stated(const AuditFacts& facts, const std::string& measure, std::optional<GapIndex> gap) {
    for (const Detail& detail : facts.job.details) {
        if (detail.measure == measure && detail.gap == gap) return &detail;
    }
    return nullptr;
}

std::vector<Measured> measure_gaps(const AuditFacts& facts, const Provision& provision) {
    if (provision.measure == "closed-rightly") return closings(facts, provision);
    std::vector<Measured> all = measure_each(facts, provision);
    if (is_height(provision.measure)) keep_worst(facts, provision, all);
    return all;
}

}  // namespace seamward
