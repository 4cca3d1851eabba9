// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <map>
#include <string_view>

#include "catalog/shipped.h"
#include "materials/ventilation.h"
#include "provisions/measures.h"

namespace seamward {

namespace {

constexpr const char* guessed_area = "the width of some opening is a guess of the tables: measure it";

/// Openings into one space.
struct Group {
    SpaceIndex space;
    std::vector<GapIndex> gaps;
    std::size_t pieces = 0;
};

/// The side of a gap that is not outdoors; where neither is, the one that appliances burn in, then the one nearer to rooms.
SpaceIndex inner(const AuditFacts& facts, const Gap& gap) {
    const auto [one, other] = gap.between;
    const Survey& survey = facts.survey();
    if (survey[one].kind == SpaceKind::outdoors) return other;
    if (survey[other].kind == SpaceKind::outdoors) return one;
    for (const SpaceInput& input : facts.job.inputs) {
        if (input.space == one || input.space == other) return input.space;
    }
    return survey[one].is_living() ? one : other;
}

std::vector<Group> groups(const AuditFacts& facts, const Provision& provision) {
    std::vector<Group> all;
    for (const GapIndex gap : facts.gaps_of(provision)) {
        const SpaceIndex space = inner(facts, facts.survey()[gap]);
        auto at = std::find_if(all.begin(), all.end(), [&](const Group& group) { return group.space == space; });
        if (at == all.end()) at = all.insert(all.end(), {space, {}, 0});
        at->gaps.push_back(gap);
        at->pieces += facts.survey()[gap].count;
    }
    return all;
}

Measured subject_of(const AuditFacts& facts, const Group& group) {
    Measured out;
    out.subject = facts.survey()[group.space].called();
    out.gaps = group.gaps;
    if (!group.gaps.empty()) {
        out.gap = group.gaps.front();
        out.at = facts.survey()[group.gaps.front()].at;
    }
    return out;
}

bool any_guess(const AuditFacts& facts, const std::vector<GapIndex>& gaps) {
    return std::any_of(gaps.begin(), gaps.end(), [&](GapIndex gap) { return facts.is_guess(gap); });
}

/// What counts of a vent's width: what was measured, that less or more what it may be off, or the guesses of the tables too.
enum class Widths : std::uint8_t { sure, least, most, guessed };

/// Net free area of a space's vents.
std::optional<VentCheck> vented(const AuditFacts& facts, const SpaceArea& floor, Widths widths) {
    Survey survey = facts.survey();
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        Gap& gap = survey.gaps[i];
        if (gap.duty != Duty::vent || is_shut(gap.shape)) continue;
        const double off = gap.evidence.plus_minus;
        if (widths != Widths::guessed && facts.is_guess({i}))
            gap.shape = widened(gap.shape, -clear_width(gap.shape));
        else if (widths == Widths::least || widths == Widths::most)
            gap.shape = widened(gap.shape, widths == Widths::least ? -off : off);
    }
    const std::vector<SpaceArea> floors{floor};
    for (const VentCheck& check : check_ventilation(survey, survey, floors)) {
        if (check.space == floor.space) return check;
    }
    return std::nullopt;
}

/// Whether the survey says that less is due, wherever it says anything of it; nothing: it says nothing.
std::optional<bool> answered(const AuditFacts& facts, const std::string& measure) {
    std::optional<bool> yes;
    for (const Detail& detail : facts.job.details) {
        if (detail.measure == measure) yes = yes.value_or(true) && detail.value > 0;
    }
    return yes;
}

void take_vent_area(const AuditFacts& facts, const Provision& provision, const SpaceArea& area, Measured& out) {
    const auto has = [&](Widths widths) {
        const std::optional<VentCheck> check = vented(facts, area, widths);
        return check ? check->before : 0;
    };
    const std::optional<VentCheck> all = vented(facts, area, Widths::guessed);
    const double sure = has(Widths::sure), least = has(Widths::least), most = has(Widths::most);
    const bool known = all && all->before == sure && all->unstated == 0;
    double due = vent_area_due(area.floor, provision.area_rule);
    std::optional<double> lower;
    if (!provision.lower_rule.empty()) lower = vent_area_due(area.floor, provision.lower_rule);
    const std::optional<bool> answer = provision.lower_if.empty() ? std::nullopt : answered(facts, provision.lower_if);
    if (lower && answer == std::optional<bool>(true)) due = *lower;
    if (all && !known && least < due) {
        out.remark = all->unstated > 0 ? Message("the screened area of some vent is not stated") : Message(guessed_area);
        return;
    }
    if (!all && !facts.described) {
        out.remark = "no vent of it is in the survey";
        return;
    }
    if (lower && !answer && least < due && most >= *lower) {
        out.remark = message("enough only if this is so, which nobody says: {}",
                             {Message(shipped_measures().find(provision.lower_if)->name)});
        return;
    }
    out.value = sure / due;
    out.plus_minus = std::max({0.0, sure - least, most - sure}) / due;
}

/// Whether vents lead from one space to the other without going outdoors.
bool joined_by_vents(const AuditFacts& facts, SpaceIndex from, SpaceIndex to) {
    std::vector<SpaceIndex> reached{from};
    for (std::size_t next = 0; next < reached.size(); ++next) {
        for (const Gap& gap : facts.survey().gaps) {
            if (gap.duty != Duty::vent || (gap.between[0] != reached[next] && gap.between[1] != reached[next])) continue;
            const SpaceIndex across = gap.across(reached[next]);
            if (facts.survey()[across].kind == SpaceKind::outdoors) continue;
            if (std::find(reached.begin(), reached.end(), across) == reached.end()) reached.push_back(across);
        }
    }
    return std::find(reached.begin(), reached.end(), to) != reached.end();
}

/// Whether two rules of the table of free areas are of one sort of space: `under-floor` and `under-floor-washington`.
bool same_sort(const std::string& one, const std::string& other) { return one.starts_with(other) || other.starts_with(one); }

std::vector<Measured> vent_areas(const AuditFacts& facts, const Provision& provision) {
    std::vector<Measured> out;
    std::vector<Group> openings = groups(facts, provision);
    for (const SpaceArea& area : facts.job.vented) {
        if (!same_sort(area.rule, provision.area_rule)) continue;
        Group group{area.space, {}, 0};
        const auto is = std::find_if(openings.begin(), openings.end(), [&](const Group& g) { return g.space == area.space; });
        if (is != openings.end()) {
            group = *is;
            openings.erase(is);
        }
        Measured one = subject_of(facts, group);
        take_vent_area(facts, provision, area, one);
        out.push_back(std::move(one));
    }
    for (const Group& group : openings) {
        const bool by_eaves = std::any_of(facts.job.vented.begin(), facts.job.vented.end(), [&](const SpaceArea& area) {
            return same_sort(area.rule, provision.area_rule) && joined_by_vents(facts, group.space, area.space);
        });
        if (by_eaves) continue;
        Measured one = subject_of(facts, group);
        one.remark = "the floor that it is due for is not stated";
        out.push_back(std::move(one));
    }
    return out;
}

std::optional<double> input_of(const AuditFacts& facts, SpaceIndex space) {
    for (const SpaceInput& input : facts.job.inputs) {
        if (input.space == space) return input.btu_per_hour;
    }
    return std::nullopt;
}

std::vector<Measured> combustion_areas(const AuditFacts& facts, const Provision& provision, bool two) {
    std::vector<Measured> out;
    for (const Group& group : groups(facts, provision)) {
        if ((group.pieces >= 2) != two) continue;
        Measured one = subject_of(facts, group);
        const std::optional<double> input = input_of(facts, group.space);
        constexpr double none = std::numeric_limits<double>::infinity();
        double sure = none, least = none, most = none;  // of the smallest opening
        bool stated = true;
        for (const GapIndex index : group.gaps) {
            Gap gap = facts.survey()[index];
            const Shape shape = gap.shape;
            const auto area = [&](double off) {
                gap.shape = is_shut(shape) ? shape : widened(shape, off);
                const std::optional<double> free = free_area(gap);
                stated = stated && free.has_value();
                return free.value_or(0);
            };
            sure = std::min(sure, area(0));
            least = std::min(least, area(-gap.evidence.plus_minus));
            most = std::min(most, area(gap.evidence.plus_minus));
        }
        if (!input)
            one.remark = "the input of the appliances there is not stated";
        else if (any_guess(facts, group.gaps))
            one.remark = guessed_area;
        else if (!stated)
            one.remark = "the screened area of some opening is not stated";
        else {
            const double due = combustion_air_due(*input, provision.area_rule);
            one.value = sure / due;
            one.plus_minus = std::max({0.0, sure - least, most - sure}) / due;
        }
        out.push_back(std::move(one));
    }
    return out;
}

/// From the ceiling down to the uppermost opening, or from the floor up to the lowest.
std::vector<Measured> combustion_heights(const AuditFacts& facts, const Provision& provision, bool top) {
    constexpr double into_room = 0.2;  // meters: past the wall
    std::vector<Measured> out;
    for (const Group& group : groups(facts, provision)) {
        if (!top && group.pieces < 2) continue;
        Measured one = subject_of(facts, group);
        for (const GapIndex gap : group.gaps) {
            const std::optional<Vector> outward = facts.outward(gap);
            if (facts.faces(gap).empty() || !outward || is_shut(facts.survey()[gap].shape)) continue;
            double low = std::numeric_limits<double>::infinity(), high = -low;
            for (const TriangleTree::Triangle& face : facts.faces(gap)) {
                for (const Point& p : face) {
                    low = std::min(low, p.z);
                    high = std::max(high, p.z);
                }
            }
            if (place_of(facts, gap).height_usual) {
                one.remark = one.value ? one.remark : Message(place_not_said);
                continue;
            }
            const std::vector<Point>& way = facts.job.house.places[gap.value].through;
            const auto depth = [&](const Point& p) { return p.x * outward->x + p.y * outward->y; };
            const Point end_of_way = depth(way.front()) < depth(way.back()) ? way.front() : way.back();
            const Point inside = end_of_way + *outward * -into_room;
            const std::optional<double> end = top ? facts.solid_above(inside) : facts.solid_below(inside);
            if (!end) continue;
            const double away = top ? *end - high : low - *end;
            if (one.value && *one.value <= away) continue;
            one.value = away;
            one.gap = gap;
            one.at = facts.survey()[gap].at;
            one.remark = "measured on the house's solids";
        }
        out.push_back(std::move(one));
    }
    return out;
}

/// Whether a space is the duct that the provision is about: something blows out of it, and no gap of it is of another feature.
bool is_duct(const AuditFacts& facts, SpaceIndex space, const std::vector<GapIndex>& looked_at) {
    if (facts.survey()[space].kind != SpaceKind::cavity) return false;
    for (const char* no_duct : {"attic", "crawl", "wall", "soffit", "eave"}) {
        if (called(facts.survey()[space], no_duct)) return false;
    }
    bool blows = false;
    for (std::uint32_t i = 0; i < facts.survey().gaps.size(); ++i) {
        const Gap& gap = facts.survey().gaps[i];
        if (gap.between[0] != space && gap.between[1] != space) continue;
        const bool of_it = std::find(looked_at.begin(), looked_at.end(), GapIndex{i}) != looked_at.end();
        if (!of_it && gap.feature != "duct-joint" && !gap.feature.empty()) return false;
        blows = blows || (of_it && gap.duty == Duty::exhaust);
    }
    return blows;
}

std::vector<Measured> exhausts(const AuditFacts& facts, const Provision& provision) {
    const std::vector<GapIndex> looked_at = facts.gaps_of(provision);
    std::map<std::uint32_t, Group> ducts;
    for (const GapIndex gap : looked_at) {
        for (const SpaceIndex space : facts.survey()[gap].between) {
            if (!is_duct(facts, space, looked_at)) continue;
            Group& group = ducts[space.value];
            group.space = space;
            group.gaps.push_back(gap);
        }
    }
    std::vector<Measured> out;
    for (const auto& [space, group] : ducts) {
        Measured one = subject_of(facts, group);
        const bool ends = std::any_of(group.gaps.begin(), group.gaps.end(), [&](GapIndex gap) {
            const Gap& of = facts.survey()[gap];
            return of.duty == Duty::exhaust && facts.survey()[of.across(group.space)].kind == SpaceKind::outdoors;
        });
        if (ends || facts.described)
            one.value = ends ? 1 : 0;
        else
            one.remark = "nobody says where it ends";
        out.push_back(std::move(one));
    }
    if (!out.empty() || looked_at.empty()) return out;
    Measured one = subject_of(facts, looked_at.front());
    one.remark = "nobody says where it ends";
    return {one};
}

std::vector<Measured> flood_counts(const AuditFacts& facts, const Provision& provision, bool walls) {
    std::vector<Measured> out;
    for (const Group& group : groups(facts, provision)) {
        Measured one = subject_of(facts, group);
        std::size_t open = 0;
        for (const GapIndex gap : group.gaps) open += is_shut(facts.survey()[gap].shape) ? 0 : facts.survey()[gap].count;
        if (!walls) {
            one.value = static_cast<double>(open);
        } else {
            std::vector<Vector> sides;
            bool known = true;
            for (const GapIndex gap : group.gaps) {
                if (is_shut(facts.survey()[gap].shape)) continue;
                const std::optional<Vector> out_of_wall = facts.outward(gap);
                known = known && out_of_wall.has_value();
                if (!out_of_wall) continue;
                const auto same = [&](const Vector& side) { return length(side - *out_of_wall) < 0.1; };
                if (std::none_of(sides.begin(), sides.end(), same)) sides.push_back(*out_of_wall);
            }
            if (known || sides.size() >= 2)
                one.value = static_cast<double>(sides.size());
            else
                one.remark = "it is not known which walls they are in";
        }
        out.push_back(std::move(one));
    }
    return out;
}

std::vector<Measured> flood_areas(const AuditFacts& facts, const Provision& provision) {
    std::vector<Measured> out;
    for (const Group& group : groups(facts, provision)) {
        Measured one = subject_of(facts, group);
        const auto floor = std::find_if(facts.job.vented.begin(), facts.job.vented.end(),
                                        [&](const SpaceArea& area) { return area.space == group.space; });
        double area = 0, off = 0;
        bool known = true;
        for (const GapIndex gap : group.gaps) {
            if (is_shut(facts.survey()[gap].shape)) continue;
            const Detail* detail = stated(facts, "open-area", gap);
            known = known && detail != nullptr;
            if (detail == nullptr) continue;
            area += detail->value * facts.survey()[gap].count;
            off += detail->plus_minus * facts.survey()[gap].count;
        }
        if (floor == facts.job.vented.end())
            one.remark = "the floor that it is due for is not stated";
        else if (!known)
            one.remark = "the open area of some flood opening is not stated";
        else {
            one.value = area / flood_area_due(floor->floor);
            one.plus_minus = off / flood_area_due(floor->floor);
        }
        out.push_back(std::move(one));
    }
    return out;
}

}  // namespace

std::vector<Measured> measure_spaces(const AuditFacts& facts, const Provision& provision) {
    using Measurer = std::function<std::vector<Measured>(const AuditFacts&, const Provision&)>;
    static const std::map<std::string_view, Measurer> all{
        {"vent-area", vent_areas},
        {"exhaust-outdoors", exhausts},
        {"combustion-area-two", [](const AuditFacts& f, const Provision& p) { return combustion_areas(f, p, true); }},
        {"combustion-area-one", [](const AuditFacts& f, const Provision& p) { return combustion_areas(f, p, false); }},
        {"combustion-top", [](const AuditFacts& f, const Provision& p) { return combustion_heights(f, p, true); }},
        {"combustion-bottom", [](const AuditFacts& f, const Provision& p) { return combustion_heights(f, p, false); }},
        {"flood-openings", [](const AuditFacts& f, const Provision& p) { return flood_counts(f, p, false); }},
        {"flood-walls", [](const AuditFacts& f, const Provision& p) { return flood_counts(f, p, true); }},
        {"flood-area", flood_areas},
    };
    return all.at(provision.measure)(facts, provision);
}

}  // namespace seamward
