// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/options.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "catalog/shipped.h"
#include "job_file/job.h"
#include "materials/duty_rules.h"
#include "tests/support/random_survey.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

using Ids = std::vector<std::string>;

const Job& demo() {
    static const Job job = read_job(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios/demo.yaml", RunContext());
    return job;
}

const Gap& gap_of(const Survey& survey, const std::string& id) {
    const auto found = std::find_if(survey.gaps.begin(), survey.gaps.end(), [&](const Gap& gap) { return gap.id == id; });
    if (found == survey.gaps.end()) throw std::out_of_range(id);
    return *found;
}

GapOptions demo_options(const std::string& gap) {
    return options_for(gap_of(demo().survey, gap), demo().survey, shipped_prices());
}

const Option* find(const GapOptions& found, const std::string& treatment) {
    for (const Option& option : found.options) {
        if (option.treatment == treatment) return &option;
    }
    return nullptr;
}

Ids refused(const GapOptions& found) {
    Ids ids;
    for (const Refusal& refusal : found.refused) ids.push_back(refusal.treatment);
    return ids;
}

struct Amount {
    const char* material;
    double amount;
};

/// The shipped prices: labor $84.00 an hour, $1.40 a minute; a cartridge of sealant holds 298.6926 cm3 for $9.50; waste 10 %.
void expect_option(const char* gap, const char* treatment, double minutes, std::int64_t cents, std::vector<Amount> needs) {
    SCOPED_TRACE(testing::Message() << gap << ": " << treatment);
    const GapOptions found = demo_options(gap);
    const Option* option = find(found, treatment);
    ASSERT_NE(option, nullptr);
    EXPECT_NEAR(option->minutes, minutes, 1e-5);
    EXPECT_EQ(option->cost.cents, cents);
    ASSERT_EQ(option->needs.size(), needs.size());
    for (std::size_t i = 0; i < needs.size(); ++i) {
        EXPECT_EQ(option->needs[i].material, needs[i].material);
        EXPECT_NEAR(option->needs[i].amount / needs[i].amount, 1, 1e-6) << needs[i].material;
    }
}

/// 1.2 mm x 11.68 m. Sealant 6 mm x 6 mm x 11.68 m x 1.1 = 462.528 cm3, 1.548508 cartridges, $14.711.
/// 3 + 1 + 2 x 11.68 = 27.36 min, $38.304.
TEST(DemoOptions, BeadUnderTheWeepScreed) { expect_option("screed-joint-east", "bead", 27.36, 5301, {{"sealant", 462.528e-6}}); }

/// 2 mm x 3 m. Sealant 6 x 6 mm x 3 m x 1.1 = 118.8 cm3, 0.397733 cartridges, $3.778. 3 + 1 + 2 x 3 = 10 min, $14.000.
TEST(DemoOptions, BeadAlongABaseboard) { expect_option("bedroom-2-baseboard", "bead", 10, 1778, {{"sealant", 118.8e-6}}); }

/// Ring of 1/8 in round 22 mm: pi x 25.175 mm = 79.08960 mm. Sealant 36 mm2 x 79.0896 mm x 1.1 = 3.131948 cm3, $0.0996.
/// 3 + 1 + 2 x 0.0790896 = 4.158179 min, $5.8215.
TEST(DemoOptions, BeadRoundAHoseBibb) { expect_option("hose-bibb-north", "bead", 4.158179, 592, {{"sealant", 3.131948e-6}}); }

/// Ring of 7.5 mm round 48 mm: pi x 55.5 mm = 174.3584 mm. Rod of 7.5 mm + 1/8 in = 10.675 mm: 1/2 in; 174.3584 mm x 1.1 =
/// 191.7942 mm of a roll of 20 ft for $5.00, $0.1573. Sealant 7.5 x 6 mm2 x 174.3584 mm x 1.1 = 8.630740 cm3, $0.2745.
/// 4 + 2 + 4 x 0.1743584 = 6.697434 min, $9.3764.
TEST(DemoOptions, BackerRodRoundALineSet) {
    expect_option("line-set-north", "backer-and-bead", 6.697434, 981, {{"backer-rod-1-2", 0.1917942}, {"sealant", 8.630740e-6}});
}

/// 2 rings at $4.00. 2 + 2 x 3 = 8 min, $11.20. Pieces have no waste.
TEST(DemoOptions, RingsUnderASink) { expect_option("kitchen-sink-stubs", "ring", 8, 1920, {{"pipe-ring", 2}}); }

/// 7 holes of 5/8 in: pi / 4 x (15.875 mm)2 = 197.9326 mm2, 25 mm deep, x 7 x 1.1 = 38.10203 cm3 of rolls of 1.5 l for $18.00,
/// $0.4572. 4 + 12 for the attic + 7 x (2 + 6 x pi x 0.015875) = 16 + 14 + 2.094656 = 32.094656 min, $44.9325.
TEST(DemoOptions, MetalWoolInATopPlate) {
    expect_option("top-plate-north", "metal-wool", 32.094656, 4539, {{"metal-wool", 38.10203e-6}});
}

/// Hole of 3/4 in, 50 mm of its 200 mm depth: 285.0230 mm2 x 50 mm x 1.1 = 15.67626 cm3 of bags of 2.3 l for $7.00, $0.0477.
/// 12 + 4 + 10 x pi x 0.01905 = 16.598473 min, $23.2379.
TEST(DemoOptions, MortarInASleeve) { expect_option("irrigation-sleeve", "mortar", 16.598473, 2329, {{"mortar", 15.67626e-6}}); }

/// 870 mm wide: 0.87 m x 1.1 = 0.957 m of sweeps of 3 ft for $16.00, $16.7454. 5 + 15 + 3 x 0.87 = 22.61 min, $31.654.
TEST(DemoOptions, SweepUnderTheFrontDoor) { expect_option("front-door-sweep", "sweep", 22.61, 4840, {{"sweep", 0.957}}); }

/// 2.5192 m round the hatch x 1.1 = 2.77112 m of rolls of 17 ft (5.1816 m) for $12.00, $6.4176.
/// 3 + 4 + 3 x 2.5192 = 14.5576 min, $20.3806.
TEST(DemoOptions, WeatherstripAtTheHatch) {
    expect_option("attic-hatch", "weatherstrip", 14.5576, 2680, {{"weatherstrip", 2.77112}});
}

/// 16 vents of 240 cm2, 154.9193 mm square. Cut 204.9193 mm, 8.07 in: 9 in = 228.6 mm square, 522.5796 cm2 x 16 x 1.1 =
/// 0.9197401 m2 of rolls of 10 ft2 for $14.00, $13.86. 914.4 mm round it: 10 screws each, 160 of boxes of 100 for $9.00, $14.40.
/// 6 + 8 for the ladder + 16 x (5 + 8 x 0.6196773) = 14 + 80 + 79.318694 = 173.318694 min, $242.6462.
TEST(DemoOptions, HardwareClothOverSoffitVents) {
    expect_option("soffit-vents", "mesh-1-4", 173.318694, 27091, {{"hardware-cloth-1-4", 0.9197401}, {"screw", 160}});
    EXPECT_DOUBLE_EQ(find(demo_options("soffit-vents"), "mesh-1-4")->opening, 0.00546);
}

/// 3 mm x 24 m x 25 mm x 1.1 = 1980 cm3 of wool, 1.32 rolls, $23.76; sealant 36 mm2 x 24 m x 1.1 = 950.4 cm3, $30.2277.
/// 5 + 3 + 9 x 24 = 224 min, $313.60.
TEST(DemoOptions, WoolAndBeadInTheBlockWall) {
    expect_option("block-joints-house-face", "metal-wool-and-bead", 224, 36759, {{"metal-wool", 1980e-6}, {"sealant", 950.4e-6}});
}

/// The survey prices a lower corner of the garage door at $21.00, with a garage door seal; there are two. 10 + 2 x (8 + 4 x 0.06)
/// = 26.48 min, 2 x 0.06 m x 1.1 = 0.132 m of seal.
TEST(DemoOptions, APriceOfTheSurveyIsTheOnlyOption) {
    const GapOptions found = demo_options("garage-door-corner");
    ASSERT_EQ(found.options.size(), 1U);
    EXPECT_EQ(found.options[0].treatment, "garage-door-seal");
    EXPECT_EQ(found.options[0].cost.cents, 4200);
    EXPECT_NEAR(found.options[0].minutes, 26.48, 1e-9);
    ASSERT_EQ(found.options[0].needs.size(), 1U);
    EXPECT_NEAR(found.options[0].needs[0].amount, 0.132, 1e-9);
    EXPECT_FALSE(found.options[0].gnawed) << "what the survey prices counts as sound";
    EXPECT_TRUE(found.refused.empty());
}

/// A price without a method: nobody knows how long it takes or what it takes.
TEST(DemoOptions, APriceWithoutAMethodSaysSo) {
    Gap gap = *std::find_if(demo().survey.gaps.begin(), demo().survey.gaps.end(),
                            [](const Gap& one) { return one.id == "garage-door-corner"; });
    gap.closing.with.clear();
    const GapOptions found = options_for(gap, demo().survey, shipped_prices());
    ASSERT_EQ(found.options.size(), 1U);
    EXPECT_EQ(found.options[0].treatment, stated_closing);
    EXPECT_EQ(found.options[0].minutes, 0);
    EXPECT_TRUE(found.options[0].needs.empty());
    EXPECT_NE(found.options[0].steps.at(0).english().find("ask the estimator"), std::string::npos);
}

/// Whoever does it is warned of what is there all the same.
TEST(DemoOptions, APriceWithoutAMethodKeepsTheCautionOfThePlace) {
    Gap gap = *std::find_if(demo().survey.gaps.begin(), demo().survey.gaps.end(),
                            [](const Gap& one) { return one.id == "flue-collar"; });
    gap.closing.cost = Money{4000};
    gap.closing.with.clear();
    const GapOptions found = options_for(gap, demo().survey, shipped_prices());
    ASSERT_EQ(found.options.size(), 1U);
    ASSERT_EQ(found.options[0].cautions.size(), 1U);
    EXPECT_NE(found.options[0].cautions[0].english().find("never foam"), std::string::npos);
}

TEST(DemoOptions, WhatMustStayOpenIsRefusedOnce) {
    for (const char* gap : {"screed-holes-north", "stucco-line-east", "dryer-hood", "vent-pipe-mouths"}) {
        const GapOptions found = demo_options(gap);
        EXPECT_TRUE(found.options.empty()) << gap;
        EXPECT_EQ(refused(found), Ids{""}) << gap;
        EXPECT_FALSE(found.refused.at(0).why.empty()) << gap;
        EXPECT_FALSE(found.refused.at(0).source.empty()) << gap;
    }
}

/// Water gets down past a trap seal: the only thing that a floor drain takes. 10 min, $14.00, and one seal for $26.00.
TEST(DemoOptions, TrapSealUnderTheGrate) {
    EXPECT_EQ(demo_options("floor-drain-grate").options.size(), 1U);
    expect_option("floor-drain-grate", "trap-seal", 10, 4000, {{"trap-seal", 1}});
}

/// The screed's joint may be closed with sealant that sticks to the concrete, and with nothing else.
TEST(DemoOptions, TreatmentsThatADutyForbidsAreNamed) {
    const GapOptions found = demo_options("screed-joint-east");
    ASSERT_EQ(found.options.size(), 1U);
    const Ids named = refused(found);
    EXPECT_TRUE(std::find(named.begin(), named.end(), "plate") != named.end());
}

TEST(DemoOptions, ShutGapsHaveNone) {
    const GapOptions found = demo_options("hose-bibb-kitchen");
    EXPECT_TRUE(found.options.empty());
    EXPECT_TRUE(found.refused.empty());
}

/// Whatever is usual is offered where it fits, but for the row `mesh`, which has no opening of its own.
TEST(DemoOptions, KeepWhatIsUsual) {
    for (const Gap& gap : demo().survey.gaps) {
        if (gap.usual.empty() || gap.usual == "mesh" || is_shut(gap.shape) || gap.closing.cost) continue;
        const Treatment& usual = *shipped_treatments().find(gap.usual);
        const double width = clear_width(gap.shape);
        if (width < usual.fits.from || width > usual.fits.to || !ruling_on(gap, demo().survey).allows(usual.id, 0)) continue;
        const GapOptions found = options_for(gap, demo().survey, shipped_prices());
        EXPECT_NE(find(found, gap.usual), nullptr) << gap.id << " " << gap.usual;
    }
}

TEST(DemoOptions, FoamSaysItsLimit) {
    const GapOptions found = demo_options("top-plate-north");
    std::string all;
    for (const Message& caution : find(found, "foam")->cautions) all += caution.english() + '\n';
    EXPECT_NE(all.find("0.2 mg/m3"), std::string::npos) << all;
}

// What is out of reach from the ground takes 8 minutes more, wherever the survey puts its zero.
TEST(DemoOptions, TheLadderCountsFromTheYard) {
    Gap gap = *std::find_if(demo().survey.gaps.begin(), demo().survey.gaps.end(),
                            [](const Gap& one) { return one.id == "hose-bibb-north"; });
    const auto minutes = [&](double z, double ground) {
        gap.at->z = z;
        return find(options_for(gap, demo().survey, shipped_prices(), ground), "bead")->minutes;
    };
    EXPECT_DOUBLE_EQ(minutes(2.2, 0), minutes(0.5, 0) + 8);
    EXPECT_DOUBLE_EQ(minutes(102.0, 100), minutes(0.5, 0));
    EXPECT_DOUBLE_EQ(minutes(102.2, 100), minutes(0.5, 0) + 8);
}

/// A gap between two spaces of those kinds, nothing known but its shape.
GapOptions options_of(const Shape& shape, SpaceKind a, SpaceKind b) {
    SurveyBuilder builder;
    builder.space("a", a).space("b", b).slot("gap", "a", "b", 1);
    builder.last().shape = shape;
    return options_for(builder.survey().gaps[0], builder.survey(), shipped_prices());
}

/// Any gap that has no duty can be closed so that rodents do not get through.
TEST(Options, SomethingFullResistsGnawing) {
    const std::pair<SpaceKind, SpaceKind> places[] = {{SpaceKind::outdoors, SpaceKind::cavity},
                                                      {SpaceKind::cavity, SpaceKind::living},
                                                      {SpaceKind::cavity, SpaceKind::cavity},
                                                      {SpaceKind::outdoors, SpaceKind::living}};
    for (const auto& [a, b] : places) {
        for (int tenths = 3; tenths <= 300; ++tenths) {
            const double width = tenths * 1e-4;
            for (const Shape& shape :
                 {Shape(Slot{width, 0.5}), Shape(Hole{width}), Shape(Ring{width, 0.022}), Shape(Mesh{width, 0.01})}) {
                const GapOptions found = options_of(shape, a, b);
                EXPECT_TRUE(std::any_of(found.options.begin(), found.options.end(),
                                        [](const Option& option) { return option.opening == 0 && !option.gnawed; }))
                    << shape_word(shape) << ' ' << width;
            }
        }
    }
}

TEST(Options, MeshesAreFinerThanTheGap) {
    const GapOptions found = options_of(Mesh{0.00571, 0.01}, SpaceKind::outdoors, SpaceKind::cavity);
    EXPECT_NE(find(found, "mesh-1-4"), nullptr);
    const GapOptions fine = options_of(Mesh{0.00246, 0.01}, SpaceKind::outdoors, SpaceKind::cavity);
    EXPECT_EQ(find(fine, "mesh-1-4"), nullptr);
    EXPECT_EQ(find(fine, "mesh-1-8"), nullptr);
    EXPECT_NE(find(fine, "mesh-14"), nullptr);
    EXPECT_EQ(find(fine, "mesh"), nullptr);
}

/// Bead to 6 mm, backer rod from there to 1 1/4 in, foam from 1/2 in to 3 in: the borders belong to both.
TEST(Options, FitByWidth) {
    const auto fits = [](const char* treatment, double width) {
        return find(options_of(Slot{width, 1}, SpaceKind::cavity, SpaceKind::living), treatment) != nullptr;
    };
    EXPECT_TRUE(fits("bead", 0.006));
    EXPECT_FALSE(fits("bead", 0.0061));
    EXPECT_TRUE(fits("backer-and-bead", 0.006));
    EXPECT_FALSE(fits("backer-and-bead", 0.0059));
    EXPECT_TRUE(fits("backer-and-bead", 0.03175));
    EXPECT_FALSE(fits("backer-and-bead", 0.0318));
    EXPECT_FALSE(fits("foam", 0.0126));
    EXPECT_TRUE(fits("foam", 0.0127));
    EXPECT_TRUE(fits("foam", 0.0762));
    EXPECT_FALSE(fits("foam", 0.077));
    EXPECT_FALSE(fits("sweep", 0.005));  // not known to be a door
}

TEST(Options, FitByDepthAndMaterial) {
    SurveyBuilder builder;
    builder.outdoors("yard").cavity("wall").slot("gap", "yard", "wall", 8);
    const auto offers = [&](const char* treatment) {
        return find(options_for(builder.survey().gaps[0], builder.survey(), shipped_prices()), treatment) != nullptr;
    };
    EXPECT_TRUE(offers("mortar"));
    builder.last().substrates = {"wood"};
    EXPECT_FALSE(offers("mortar"));
    builder.last().substrates = {"brick", "copper"};
    EXPECT_TRUE(offers("mortar"));
    builder.last().depth = 0.003;
    EXPECT_FALSE(offers("mortar"));
    EXPECT_FALSE(offers("backer-and-bead"));
    EXPECT_TRUE(offers("plate"));
}

/// Plans take their steps from these: no metal wool at wires and in ducts, fire stops alone under an attic that is shared.
TEST(Options, OfferNoMetalWoolAtWiresAndDucts) {
    for (const char* feature :
         {"outlet", "switch", "exterior-light", "ceiling-light", "recessed-light", "doorbell", "duct-joint"}) {
        for (const char* side : {"drywall", "fire-rated"}) {
            SurveyBuilder builder;
            builder.cavity("wall").living("kitchen").slot("gap", "wall", "kitchen", 5);
            builder.last().shape = Ring{0.005, 0.1};
            builder.last().feature = feature;
            builder.last().substrates = {side};
            const GapOptions found = options_for(builder.survey().gaps[0], builder.survey(), shipped_prices());
            EXPECT_FALSE(found.options.empty()) << feature;
            for (const Option& option : found.options)
                EXPECT_EQ(option.treatment.find("metal-wool"), std::string::npos) << feature << ' ' << side;
        }
    }
}

TEST(Options, AreFireStopsUnderASharedAttic) {
    const auto ids = [](const char* attic) {
        SurveyBuilder builder;
        builder.cavity("wet-stack").cavity(attic).slot("stack", "wet-stack", attic, 10);
        builder.last().substrates = {"wood", "pvc"};
        Ids all;
        for (const Option& option : options_for(builder.survey().gaps[0], builder.survey(), shipped_prices()).options)
            all.push_back(option.treatment);
        std::sort(all.begin(), all.end());
        return all;
    };
    EXPECT_EQ(ids("common-attic"), (Ids{"fire-sealant", "metal-wool-and-fire-sealant"}));
    const Ids own = ids("attic");
    EXPECT_NE(std::find(own.begin(), own.end(), "backer-and-bead"), own.end());
}

TEST(Options, NeverMeansNever) {
    SurveyBuilder builder;
    builder.outdoors("yard").living("kitchen").slot("gap", "yard", "kitchen", 3);
    builder.last().closing.never = "the owner forbids it";
    const GapOptions found = options_for(builder.survey().gaps[0], builder.survey(), shipped_prices());
    EXPECT_TRUE(found.options.empty());
    ASSERT_EQ(refused(found), Ids{""});
    EXPECT_EQ(found.refused[0].why.english(), "the owner forbids it");
}

TEST(Options, AStatedPriceDoesNotOverrideADuty) {
    SurveyBuilder builder;
    builder.outdoors("yard").living("kitchen").slot("gap", "yard", "kitchen", 3);
    builder.last().closing.cost = Money{800};
    builder.last().count = 3;
    const auto found = [&] { return options_for(builder.survey().gaps[0], builder.survey(), shipped_prices()); };
    EXPECT_EQ(found().options.at(0).cost.cents, 2400);
    builder.last().duty = Duty::drain;
    EXPECT_TRUE(found().options.empty());
    EXPECT_EQ(refused(found()), Ids{""});
}

TEST(Options, NothingFitsIsSaid) {
    const GapOptions found = options_of(Hole{2}, SpaceKind::outdoors, SpaceKind::cavity);
    EXPECT_TRUE(found.options.empty());
    ASSERT_EQ(found.refused.size(), 1U);
    EXPECT_NE(found.refused[0].why.english().find("no treatment"), std::string::npos);
}

/// Half a cent goes up, once for an option: 4 min at $1.125 a minute are 450 cents, 5 min 562.5.
TEST(Options, HalfACentRoundsUp) {
    PriceBook book = shipped_prices();
    book.labor_per_hour = {6750};
    for (Material& material : book.materials) material.price = {};
    SurveyBuilder builder;
    builder.cavity("wall").living("room").slot("gap", "wall", "room", 3);
    builder.last().shape = Ring{0.003, 0.022};
    const GapOptions found = options_for(builder.survey().gaps[0], builder.survey(), book);
    EXPECT_EQ(find(found, "ring")->minutes, 5);
    EXPECT_EQ(find(found, "ring")->cost.cents, 563);
}

TEST(Options, AMeshOfUnknownAreaIsAsLargeAsWhatItCovers) {
    SurveyBuilder builder;
    builder.outdoors("yard").cavity("attic").slot("gap", "yard", "attic", 10);
    builder.last().shape = Mesh{0.005, std::nullopt};
    const auto cloth = [&] {
        const GapOptions found = options_for(builder.survey().gaps[0], builder.survey(), shipped_prices());
        return find(found, "mesh-1-8")->needs.at(0).amount;
    };
    EXPECT_NEAR(cloth(), 14 * 14 * 0.0254 * 0.0254 * 1.1, 1e-9);  // 300 mm + 50 mm = 13.8 in: 14 in
    builder.last().covered = Covered{Hole{0.02}, 0};
    EXPECT_NEAR(cloth(), 3 * 3 * 0.0254 * 0.0254 * 1.1, 1e-9);  // 20 mm + 50 mm = 2.76 in: 3 in
}

Survey random_gaps(std::uint64_t seed) {
    Survey survey = random_survey({.spaces = 8, .gaps = 40, .shapes = true}, seed);
    constexpr const char* substrates[] = {"wood", "stucco", "brick", "concrete", "metal", "drywall"};
    const std::vector<Feature>& features = shipped_features().rows;
    std::uint64_t turn = seed;
    for (Gap& gap : survey.gaps) {
        turn = turn * 6364136223846793005ULL + 1442695040888963407ULL;  // Knuth's linear congruence
        const auto pick = [&](std::uint64_t from, std::uint64_t n) { return static_cast<std::size_t>((turn >> from) % n); };
        gap.duty = pick(10, 2) == 0 ? Duty::none : static_cast<Duty>(pick(20, 10));
        if (pick(30, 2) == 0) gap.substrates = {substrates[pick(33, 6)], substrates[pick(40, 6)]};
        if (pick(45, 3) == 0) gap.feature = features[pick(47, features.size())].id;
        if (pick(55, 6) == 0) gap.closing.cost = Money{1234};
        gap.count = static_cast<std::uint32_t>(1 + pick(58, 5));
    }
    return survey;
}

TEST(RandomOptions, AreSortedAllowedPaidForAndTheSameEachTime) {
    std::size_t seen = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Survey survey = random_gaps(seed);
        for (const Gap& gap : survey.gaps) {
            const DutyRuling ruling = ruling_on(gap, survey);
            const GapOptions found = options_for(gap, survey, shipped_prices());
            const GapOptions again = options_for(gap, survey, shipped_prices());
            ASSERT_EQ(found.options.size(), again.options.size());
            ASSERT_EQ(refused(found), refused(again));
            for (std::size_t i = 0; i < found.options.size(); ++i) {
                const Option& option = found.options[i];
                ++seen;
                EXPECT_EQ(option.treatment, again.options[i].treatment);
                EXPECT_EQ(option.cost, again.options[i].cost);
                EXPECT_GT(option.cost.cents, 0);
                EXPECT_TRUE(ruling.allows(option.treatment, option.opening)) << gap.id << ' ' << option.treatment;
                if (option.opening > 0) {
                    EXPECT_LT(option.opening, clear_width(gap.shape));
                }
                if (i > 0) {
                    EXPECT_LE(found.options[i - 1].cost, option.cost);
                }
            }
            if (!is_shut(gap.shape)) {
                EXPECT_TRUE(!found.options.empty() || found.refused.size() == 1) << gap.id;
            }
        }
    }
    EXPECT_GT(seen, 1000U);
}

// Brick between joints 24 ft apart, 130 F from the coldest to the hottest day (both as in Cornell's assignments):
// 3.6e-6 x 288 in x 130 = 0.134784 in = 3.4235 mm. Sealant that follows 25 % takes 4 x 3.4235 = 13.694 mm.
TEST(Options, AJointThatMovesTearsWhatIsTooNarrow) {
    Gap gap;
    gap.id = "joint";
    SurveyBuilder builder;
    builder.outdoors("yard").cavity("wall").slot("joint", "yard", "wall", 12.7);
    gap = builder.last();
    gap.substrates = {"brick"};
    gap.duty = Duty::movement;
    const auto has = [&](const GapOptions& found, const char* id) { return find(found, id) != nullptr; };
    EXPECT_TRUE(has(options_for(gap, builder.survey(), shipped_prices()), "backer-and-bead")) << "nothing known of its movement";
    gap.joint_spacing = 24 * 12 * 0.0254;
    const GapOptions narrow = options_for(gap, builder.survey(), shipped_prices());
    EXPECT_FALSE(has(narrow, "backer-and-bead"));
    const auto refused = std::find_if(narrow.refused.begin(), narrow.refused.end(),
                                      [](const Refusal& one) { return one.treatment == "backer-and-bead"; });
    ASSERT_NE(refused, narrow.refused.end());
    EXPECT_NE(refused->why.english().find("moves by 3.42 mm"), std::string::npos) << refused->why.english();
    EXPECT_NE(refused->why.english().find("takes a joint of 13.69 mm"), std::string::npos) << refused->why.english();
    EXPECT_NE(refused->source.english().find("Cornell"), std::string::npos) << refused->source.english();
    gap.shape = Slot{0.0137, 1};
    EXPECT_TRUE(has(options_for(gap, builder.survey(), shipped_prices()), "backer-and-bead"));
    gap.shape = Slot{0.0136, 1};
    EXPECT_FALSE(has(options_for(gap, builder.survey(), shipped_prices()), "backer-and-bead"));
}

// Mortar is rigid: in a joint that moves it cracks, in one that does not it may be used.
TEST(Options, RigidFillsCrackInAJointThatMoves) {
    SurveyBuilder builder;
    builder.outdoors("yard").cavity("wall").slot("joint", "yard", "wall", 10);
    Gap gap = builder.last();
    gap.substrates = {"block"};
    ASSERT_NE(find(options_for(gap, builder.survey(), shipped_prices()), "mortar"), nullptr);
    gap.joint_spacing = 6;
    EXPECT_EQ(find(options_for(gap, builder.survey(), shipped_prices()), "mortar"), nullptr);
    gap.joint_spacing = 0.1;  // 0.1 m x 10.8e-6 x 72 = 0.08 mm
    EXPECT_NE(find(options_for(gap, builder.survey(), shipped_prices()), "mortar"), nullptr);
}

}  // namespace
}  // namespace seamward::test
