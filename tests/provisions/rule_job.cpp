// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/provisions/rule_job.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <stdexcept>

#include "catalog/shipped.h"
#include "materials/ventilation.h"
#include "provisions/gap_parts.h"

namespace seamward::test {

namespace {

constexpr double floor_area = 60, input = 40000;  // square meters, Btu an hour

const char* kind_word(SpaceKind kind) {
    constexpr std::array words{"outdoors", "cavity", "attached", "living", "harborage"};
    return words.at(static_cast<std::size_t>(kind));
}

const char* shape_word(ShapeKind kind) {
    constexpr std::array words{"slot", "hole", "ring", "mesh"};
    return words.at(static_cast<std::size_t>(kind));
}

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : ", ") + word;
    return "[" + text + "]";
}

}  // namespace

std::string digits(double value) {
    char text[64];
    std::snprintf(text, sizeof text, "%.15f", value);
    return text;
}

std::string quantity(Unit unit, double value) {
    switch (unit) {
        case Unit::length: return digits(value) + " m";
        case Unit::area: return digits(value) + " m2";
        case Unit::share: return digits(value * 100) + " %";
        case Unit::count: return std::to_string(std::lround(value));
        case Unit::answer: return value > 0 ? "true" : "false";
        case Unit::air_changes: break;
    }
    return digits(value) + " per hour";
}

const DutyCase* RuleJob::asked() const { return which_case < provision.gaps.size() ? &provision.gaps[which_case] : nullptr; }

Measure::Of RuleJob::of() const { return shipped_measures().find(provision.measure)->of; }

bool RuleJob::can_be_told() const { return !is("vent-to-corner") && !is("combustion-top") && !is("combustion-bottom"); }

std::string RuleJob::spaces() const {
    std::string first = "outdoors", second = "cavity", words;
    if (asked() != nullptr && !asked()->between[0].empty()) first = kind_word(asked()->between[0].front());
    if (asked() != nullptr && !asked()->between[1].empty()) second = kind_word(asked()->between[1].front());
    if (asked() != nullptr && !asked()->words.empty()) words = asked()->words.front() + "-";
    const bool crawl = provision.area_rule == "under-floor";
    std::string text = "spaces:\n  - {id: one, kind: " + first + "}\n  - {id: " + words + (crawl ? "crawl-" : "") +
                       "two, name: two, kind: " + second;
    if ((is("vent-area") || is("flood-area")) && dropped != Dropped::floor) text += ", floor: " + digits(floor_area) + " m2";
    return text + "}\n  - {id: room, kind: living}\n";
}

std::string RuleJob::kind_of_gap() const {
    std::string text;
    const DutyCase& when = *asked();
    if (!when.features.empty()) text += ", type: " + when.features.front();
    if (!when.any_of.empty()) text += ", substrates: [" + when.any_of.front() + "]";
    Duty duty = when.duties.empty() ? Duty::none : when.duties.front();
    if (is("exhaust-outdoors")) duty = Duty::exhaust;
    if (is("closed-rightly")) duty = Duty::movement;
    return text + ", duty: " + std::string(duty_word(duty));
}

std::string RuleJob::evidence() const {
    if (dropped == Dropped::measured_width) return ", evidence: {how: assumed}";
    const bool width = is("clear-width");
    return ", evidence: {how: measured" + (width && plus_minus > 0 ? ", plus_minus: " + digits(plus_minus) + " m}" : "}");
}

std::string RuleJob::shape(double value) const {
    const std::string width = is("clear-width") ? digits(value) + " m" : is("stays-open") && value == 0 ? "0 mm" : "5 mm";
    std::string kind = "slot";
    if (asked() != nullptr && !asked()->shapes.empty()) kind = shape_word(asked()->shapes.front());
    if (is("screened") && value > 0) kind = "mesh";
    double due = 0;
    if (is("vent-area")) due = vent_area_due(floor_area, provision.area_rule);
    if (is("combustion-area-two") || is("combustion-area-one")) due = combustion_air_due(input, provision.area_rule);
    if (due > 0 && dropped == Dropped::screened_area) return "mesh: {opening: 7 mm}";
    if (due > 0) return "slot: {width: 0.1 m, length: " + digits(value * due / 0.1) + " m}";
    if (kind == "slot") return "slot: {width: " + width + ", length: 1 m}";
    if (kind == "ring") return "ring: {width: " + width + ", around: 22 mm}";
    return kind == "hole" ? "hole: {diameter: " + width + "}" : "mesh: {opening: " + width + "}";
}

std::string RuleJob::gaps(double value) const {
    if (asked() == nullptr || dropped == Dropped::thing) return "";
    const std::string words = asked()->words.empty() ? "" : asked()->words.front() + "-";
    const std::string two = words + (provision.area_rule == "under-floor" ? "crawl-" : "") + "two";
    const bool ends = !is("exhaust-outdoors") || value > 0;
    std::string one = "{id: g, between: [" + std::string(ends ? "one" : "room") + ", " + two + "], " + shape(value) +
                      kind_of_gap() + evidence();
    std::uint32_t count = 1;
    if (is("flood-openings")) count = static_cast<std::uint32_t>(std::lround(value));
    if (is("combustion-area-two")) count = 2;
    if (count > 1) one += ", count: " + std::to_string(count);
    std::string text = "gaps:\n  - " + one;
    if (!is("flood-walls")) return text + "}\n";
    const bool two_walls = value >= 2;
    text += ", through: [[0 m, -1 m, 0 m], [0 m, 1 m, 0 m]]}\n";
    return text + "  - {id: h, between: [one, two], slot: {width: 5 mm, length: 1 m}, duty: flood, through: " +
           (two_walls ? "[[-1 m, 0 m, 0 m], [1 m, 0 m, 0 m]]" : "[[3 m, -1 m, 0 m], [3 m, 1 m, 0 m]]") + "}\n";
}

std::string RuleJob::construction() const {
    if (dropped == Dropped::construction) return "";
    std::string text;
    const auto add = [&](const std::string& more) { text += (text.empty() ? "" : ", ") + more; };
    if (!provision.applies.cladding.empty()) add("cladding: [" + provision.applies.cladding.front() + "]");
    if (!provision.applies.foundation.empty()) add("foundation: " + provision.applies.foundation.front());
    if (!provision.applies.has.empty()) add("has: " + listed(provision.applies.has));
    return text.empty() ? "" : "construction: {" + text + "}\n";
}

std::string RuleJob::stated(double value) const {
    std::string text;
    if (provision.measure.starts_with("combustion-area") && dropped != Dropped::input)
        text += "appliances:\n  - {in: two, burns: 40000 Btu/h}\n";
    if (dropped == Dropped::detail) return text;
    const Measure& measure = *shipped_measures().find(provision.measure);
    const std::string off = plus_minus > 0 ? ", plus_minus: " + quantity(provision.unit, plus_minus) : "";
    if (measure.stated == Measure::Stated::gap && dropped != Dropped::thing)
        text += "details:\n  - {what: " + measure.id + ", gap: g, is: " + quantity(provision.unit, value) + off + "}\n";
    if (measure.stated == Measure::Stated::place)
        text += "details:\n  - {what: " + measure.id + ", is: " + quantity(provision.unit, value) + off + "}\n";
    if (!provision.lower_if.empty()) text += "details:\n  - {what: " + provision.lower_if + ", is: false}\n";
    if (is("flood-area") && dropped != Dropped::thing)
        text += "details:\n  - {what: open-area, gap: g, is: " + digits(value * flood_area_due(floor_area)) + " m2}\n";
    if (is("closed-rightly") && dropped != Dropped::thing)
        text += dropped == Dropped::closed_with
                    ? "closed:\n  - {gap: g}\n"
                    : std::string("closed:\n  - {gap: g, with: ") + (value > 0 ? "backer-and-bead" : "mortar") + "}\n";
    if (is("gaps-there") && value == 0 && dropped != Dropped::thing) text += "closed:\n  - {gap: g, with: plate}\n";
    return text;
}

std::string RuleJob::text(double value) const {
    return "seamward: 1\n" + spaces() + gaps(value) + construction() + stated(value);
}

std::vector<Dropped> RuleJob::rests_on() const {
    const Measure& measure = *shipped_measures().find(provision.measure);
    std::vector<Dropped> all;
    if (measure.stated != Measure::Stated::no || is("flood-area")) all.push_back(Dropped::detail);
    for (const char* of_width :
         {"clear-width", "stays-open", "screened", "vent-area", "combustion-area-two", "combustion-area-one"})
        if (is(of_width)) all.push_back(Dropped::measured_width);
    if (provision.measure.starts_with("combustion-area")) all.insert(all.end(), {Dropped::input, Dropped::screened_area});
    if (is("vent-area")) all.insert(all.end(), {Dropped::floor, Dropped::screened_area});
    if (is("flood-area")) all.push_back(Dropped::floor);
    if (is("closed-rightly"))
        all.push_back(Dropped::closed_with);
    else if (asked() != nullptr)
        all.push_back(Dropped::thing);
    if (!construction().empty()) all.push_back(Dropped::construction);
    return all;
}

ProvisionResult RuleJob::held(double value) const { return result_of(audited(text(value)), provision.id); }

Audit audited(const std::string& text) {
    const Job job = parse_job(text, "job.yaml");
    return audit(job, parts_of_house(job), AuditSettings(), RunContext());
}

const ProvisionResult& result_of(const Audit& audit, const std::string& id) {
    for (const ProvisionResult& result : audit.results) {
        if (result.provision.id == id) return result;
    }
    throw std::out_of_range("no such provision: " + id);
}

}  // namespace seamward::test
