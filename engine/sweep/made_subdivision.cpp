// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/made_subdivision.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "house/build_house.h"
#include "sweep/shipped_plans.h"

namespace seamward {

namespace {

/// Options of the plans. All sizes are invented.
std::vector<MadeOption> options_of(std::string_view plan) {
    if (plan == "quillfeather")
        return {
            {"shingle roof", ""},
            {"tile roof",
             "  - {id: tile-ends, name: \"tile ends at the eave, no bird stops\", between: [yard, attic], slot: {width: 14 mm, "
             "length: 0.25 m}, count: 30, evidence: {how: measured, plus_minus: 1 mm}}\n"},
            {"tile roof, softener loop",
             "  - {id: tile-ends, name: \"tile ends at the eave, no bird stops\", between: [yard, attic], slot: {width: 14 mm, "
             "length: 0.25 m}, count: 30, evidence: {how: measured, plus_minus: 1 mm}}\n"
             "  - {id: softener-drain, name: \"softener drain through the garage wall\", between: [yard, garage], ring: {width: "
             "3 mm, "
             "around: 27 mm}, evidence: {how: measured, plus_minus: 0.3 mm}}\n"}};
    if (plan == "larkspur")
        return {
            {"standard", ""},
            {"covered patio",
             "  - {id: patio-ledger, name: \"joint over the patio's ledger\", between: [yard, north-wall], slot: {width: 2.2 mm, "
             "length: 4.2 m}, evidence: {how: measured, plus_minus: 0.3 mm}}\n"}};
    return {{"wood stove",
             "  - {id: stove-thimble, name: \"stove pipe through the chimney chase\", between: [chimney-chase, living-room], "
             "ring: {width: "
             "6 mm, around: 203 mm}, evidence: {how: measured, plus_minus: 0.5 mm}}\n"},
            {"no stove", ""}};
}

// How the widths of a lot are drawn. All of it is invented: nobody measured a subdivision for it.
constexpr double crew_spread = 0.25, lot_spread = 0.15, gap_spread = 0.35;  ///< of the logarithms of widths
constexpr double sealed_when_built = 0.45, closed_since = 0.05, not_measured = 0.08, nothing_wrong = 0.04;
constexpr double habit_holds = 0.6, habit_factor = 1.8;
constexpr std::size_t habits_of_a_crew = 3;
constexpr double widest_scaled = 0.02;  ///< meters: what is wider was made so on purpose and is the same on every lot

/// The house with every gap as wide as the table of features has it, whatever this house was measured at; large openings, which
/// were made to fit their place, as they are.
Survey usual_survey(const ShippedPlan& plan, const RunContext& context) {
    HouseDescription described = parse_house_yaml(plan.text, "models/" + std::string(plan.id) + ".yaml");
    for (FeatureDescription& feature : described.features) {
        for (std::size_t i = 0; i < feature.gaps.size(); ++i) {
            const double usual = feature.type->gaps[i].width;
            if (usual > 0 && usual <= widest_scaled) feature.gaps[i].width.reset();
        }
    }
    return build_house(described, {}, Make::survey, context).survey;
}

/// A width in whole tenths of a millimeter, as a job file has it.
std::string tenths_text(double meters) {
    const auto tenths = static_cast<std::int64_t>(std::floor(meters * 10'000 + 0.5));
    return std::to_string(tenths / 10) + (tenths % 10 != 0 ? '.' + std::to_string(tenths % 10) : "") + " mm";
}

std::string shape_text(const Gap& gap, double width) {
    const char* size = std::holds_alternative<Hole>(gap.shape) ? "diameter" : "width";
    return std::string(shape_word(gap.shape)) + ": {" + size + ": " + tenths_text(width) + '}';
}

class LotMaker {
public:
    LotMaker(const MadeSubdivision& all, std::uint32_t number)
        : all_(all),
          number_(number),
          random_(all.seed, number),
          plan_(all.plans[random_.below(all.plans.size())]),
          option_(plan_.options[random_.below(plan_.options.size())]),
          crew_(random_.below(MadeSubdivision::crews)),
          right_(random_.happens(nothing_wrong)),
          workmanship_(all.workmanship[crew_] * random_.factor(lot_spread)) {}

    std::string text() {
        for (const Gap& gap : plan_.usual.gaps) measure(gap);
        std::string lot = std::to_string(number_), all = head();
        all += "seamward: 1\njob: {name: \"Wrenfeather Terrace, lot " + lot + "\", lot: \"" + lot + "\", option: \"" +
               std::string(option_.name) + "\", surveyor: \"made up\", notes: \"Built by crew " + char('A' + crew_) + ".\"}\n";
        all += "house: plans/" + std::string(plan_.id) + ".yaml\ngaps:\n" + gaps_ + (right_ ? "" : std::string(option_.gaps));
        all += "pests: [bark-scorpion, american-cockroach, house-mouse]\n";
        if (!closed_.empty()) all += "closed:\n" + closed_;
        return all;
    }

private:
    [[nodiscard]] std::string head() const {
        return "# Made up by seamward lots, seed " + std::to_string(all_.seed) +
               ": the street, the crew, every width. A width is the usual one of the\n"
               "# table of features, times the crew's workmanship, times this lot's, times chance; about half of the gaps were "
               "sealed when\n"
               "# the house was built, and each crew has details that it tends to leave wide.\n";
    }

    void measure(const Gap& gap) {
        if (std::holds_alternative<Mesh>(gap.shape)) return;
        const double usual = clear_width(gap.shape);
        // Drawn whether or not they are used, so that one gap does not move what the next ones get.
        const bool sealed = random_.happens(sealed_when_built), since = random_.happens(closed_since);
        const bool guessed = random_.happens(not_measured), habit = random_.happens(habit_holds);
        const double chance = random_.factor(gap_spread);
        const std::vector<std::string>& habits = all_.habits[crew_];
        const bool left_wide = habit && std::find(habits.begin(), habits.end(), gap.feature) != habits.end();
        double width =
            usual <= widest_scaled ? usual * std::clamp(workmanship_ * chance * (left_wide ? habit_factor : 1), 0.3, 1.7) : usual;
        if (!gap.must_stay_open() && (right_ || (sealed && !left_wide))) width = 0;
        if (guessed && width > 0) return;
        const std::string exact = tenths_text(std::clamp(width * 0.15, 0.0002, 0.001));
        gaps_ += "  - {id: " + gap.id + ", " + shape_text(gap, width) +
                 ", evidence: {how: measured, plus_minus: " + (width > 0 ? exact : "0 mm") + "}}\n";
        if (since && width > 0 && !gap.must_stay_open() && gap.usual == "bead")
            closed_ += "  - {gap: " + gap.id + ", with: bead}\n";
    }

    const MadeSubdivision& all_;
    std::uint32_t number_;
    EvenRandom random_;
    const MadePlan& plan_;
    const MadeOption& option_;
    std::size_t crew_;
    bool right_;
    double workmanship_;
    std::string gaps_, closed_;
};

std::string nested(std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); }

}  // namespace

MadeSubdivision make_subdivision(std::uint64_t seed, const RunContext& context) {
    MadeSubdivision all;
    all.seed = seed;
    std::set<std::string> kinds;
    for (const ShippedPlan& plan : shipped_plans()) {
        all.plans.push_back({plan.id, options_of(plan.id), usual_survey(plan, context)});
        for (const Gap& gap : all.plans.back().usual.gaps) {
            if (!gap.must_stay_open() && !gap.feature.empty()) kinds.insert(gap.feature);
        }
    }
    const std::vector<std::string> known(kinds.begin(), kinds.end());
    EvenRandom random(seed, ~std::uint64_t{0});
    for (std::size_t crew = 0; crew < MadeSubdivision::crews; ++crew) {
        all.workmanship[crew] = random.factor(crew_spread);
        for (std::size_t i = 0; i < habits_of_a_crew; ++i) all.habits[crew].push_back(known[random.below(known.size())]);
    }
    return all;
}

std::string made_lot(const MadeSubdivision& subdivision, std::uint32_t number) { return LotMaker(subdivision, number).text(); }

std::string faulty_lot(std::uint32_t number, std::size_t kind) {
    const std::string lot = std::to_string(number);
    const std::string head = "# Faulty on purpose, made by seamward lots.\nseamward: 1\njob: {lot: \"" + lot + "\"}\n";
    const std::string rooms = "spaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]\n";
    switch (kind % 10) {
        case 0: return head + "gaps: [{id: screed, between: [yard\n";
        case 1: return head + "house: plans/larkspur.yaml\ngapps: []\n";
        case 2: return head + "house: plans/never-drawn.yaml\n";
        case 3: return head + "house: plans/larkspur.yaml\ngaps:\n  - {id: no-such-gap, slot: {width: 1 mm}}\n";
        case 4: return head + "spaces: " + nested(5000) + "\n";
        case 5: return "";
        case 6: return head + rooms + "gaps: [{id: screed, between: [yard, kitchen], slot: {width: 1.2, length: 9 m}}]\n";
        case 7: return head + rooms + "gaps: [{id: screed, between: [yard, yard], slot: {width: -2 mm, length: 9 m}}]\n";
        case 8: return std::string("\x89GLB\0\x01\xff\xfe", 8) + lot;
        default: break;
    }
    return head + "house: ../" + std::string(300, 'x') + ".yaml\n";
}

}  // namespace seamward
