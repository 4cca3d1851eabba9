// SPDX-License-Identifier: GPL-3.0-or-later
// What ten steps of the demo's plan against all of its animals take, worked out by hand from the sizes of the gaps and from what
// the comments of treatments.yaml, joints.yaml and prices.yaml say, not taken from the program's answers.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "catalog/shipped.h"
#include "job_file/job.h"
#include "plan/plan.h"

namespace seamward {
namespace {

const Job& demo() {
    static const Job job = read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml", RunContext());
    return job;
}

const Plan& plan_against_all() {
    static const Plan plan = [] {
        PlanSettings settings;
        settings.against = demo().pests;
        return make_plan(demo(), settings, RunContext());
    }();
    return plan;
}

struct Amount {
    const char* material;
    double amount;
};

/// Labor is $84.00 an hour, $1.40 a minute; waste is 10 %; a cartridge of 10.1 fl oz, 298.6926 cm3, of sealant is $9.50.
void expect_step(const char* gap, const char* treatment, double minutes, std::int64_t cents, const std::vector<Amount>& needs) {
    SCOPED_TRACE(gap);
    const std::vector<PlanStep>& steps = plan_against_all().steps;
    const auto step = std::find_if(steps.begin(), steps.end(), [&](const PlanStep& s) { return demo().survey[s.gap].id == gap; });
    ASSERT_NE(step, steps.end());
    EXPECT_EQ(step->option.treatment, treatment);
    EXPECT_NEAR(step->option.minutes, minutes, 1e-5);
    EXPECT_EQ(step->option.cost.cents, cents);
    ASSERT_EQ(step->option.needs.size(), needs.size());
    for (std::size_t i = 0; i < needs.size(); ++i) {
        EXPECT_EQ(step->option.needs[i].material, needs[i].material);
        EXPECT_NEAR(step->option.needs[i].amount / needs[i].amount, 1, 1e-6) << needs[i].material;
    }
}

/// A door of 910 mm x 2030 mm. Its leaf is tight for 20 mm at either end of its head and for 70 mm of each side: 870 mm + 2 x
/// 1960 mm = 4.79 m, one piece. x 1.1 = 5.269 m of rolls of 17 ft (5.1816 m) for $12.00, 1.016867 rolls, $12.2024. 3 + 4 + 3
/// x 4.79 = 21.37 min, $29.918.
TEST(TenGaps, WeatherstripOfTheFrontDoor) {
    expect_step("front-door-weatherstrip", "weatherstrip", 21.37, 4212, {{"weatherstrip", 5.269}});
}

/// 40 mm from the corner on. x 1.1 = 44 mm of rolls of 17 ft for $12.00, $0.1019. 3 + 4 + 3 x 0.04 = 7.12 min, $9.968.
TEST(TenGaps, WeatherstripAtTheSlidersCorner) {
    expect_step("slider-corner", "weatherstrip", 7.12, 1007, {{"weatherstrip", 0.044}});
}

/// 870 mm x 1.1 = 957 mm of sweeps of 3 ft (914.4 mm) for $34.00, 1.046588 sweeps, $35.5840. 5 + 18 + 3 x 0.87 = 25.61 min,
/// $35.854. Mice gnaw through the sweep that is cheaper.
TEST(TenGaps, SweepWithMetalWoolUnderTheFrontDoor) {
    expect_step("front-door-sweep", "metal-core-sweep", 25.61, 7144, {{"metal-core-sweep", 0.957}});
}

/// The survey says $36.00 for a sweep with a core of metal wool. What it takes is the treatment's: a door's 810 mm less 2 x 20
/// mm, 770 mm x 1.1 = 847 mm. 5 + 18 + 3 x 0.77 = 25.31 min. Neither has a say in the price ($34.00 x 847 / 914.4 and $35.434).
TEST(TenGaps, APriceOfTheSurvey) {
    expect_step("garage-house-sweep", "metal-core-sweep", 25.31, 3600, {{"metal-core-sweep", 0.847}});
}

/// Ring of 6.4 mm round 152 mm: pi x 158.4 mm = 497.6283 mm. 6.4 mm x 497.6283 mm = 3184.821 mm2; drywall is 13 mm, less than
/// the 25 mm that wool is packed: 41.40267 cm3 x 1.1 = 45.54294 cm3 of rolls of 1.5 l for $18.00, $0.5465.
/// 4 + 2 + 6 x 0.4976283 = 8.985770 min, $12.5801.
TEST(TenGaps, MetalWoolRoundTheRangeHoodsDuct) {
    expect_step("range-hood-duct", "metal-wool", 8.985770, 1313, {{"metal-wool", 45.54294e-6}});
}

/// 9/32 in, 7.14375 mm, round a boot of 300 mm x 150 mm: its middle line is 900 mm + 4 x 7.14375 mm = 928.575 mm. 7.14375 mm x
/// 928.575 mm x 13 mm = 86.23560 cm3 x 1.1 = 94.85916 cm3 of rolls of 1.5 l for $18.00, $1.1383.
/// 4 + 2 + 6 x 0.928575 = 11.57145 min, $16.2000.
TEST(TenGaps, MetalWoolAroundARegister) {
    expect_step("supply-boot-bedroom-2", "metal-wool", 11.57145, 1734, {{"metal-wool", 94.85916e-6}});
}

/// Hole of 4.7 mm, its bead 6 mm thick and 6 mm deep: pi / 4 x 36 mm2 x 6 mm = 169.6460 mm3 x 1.1 = 0.1866106 cm3, $0.0059.
/// 3 + 1 + 2 x pi x 0.0047 = 4.029531 min, $5.6413.
TEST(TenGaps, BeadInTheHoleBehindTheChime) { expect_step("doorbell-hall", "bead", 4.029531, 565, {{"sealant", 0.1866106e-6}}); }

/// 7/32 in, 5.55625 mm, round 600 mm x 500 mm: 2200 mm + 4 x 5.55625 mm = 2.222225 m. Bead of 6 mm x 6 mm: 80.00010 cm3 x 1.1 =
/// 88.00011 cm3, 0.2946176 cartridges, $2.7989. 3 + 1 + 2 x 2.222225 = 8.44445 min, $11.8222.
TEST(TenGaps, BeadAroundTheReturnGrille) { expect_step("return-boot-hall", "bead", 8.44445, 1462, {{"sealant", 88.00011e-6}}); }

/// 6 rings of 2.7 mm round 152 mm: pi x 154.7 mm = 486.0044 mm. 36 mm2 x 486.0044 mm x 6 x 1.1 = 115.4746 cm3, $3.6727. Worked at
/// from the kitchen, so nothing for the attic: 3 + 6 x (1 + 2 x 0.4860044) = 14.832053 min, $20.7649.
TEST(TenGaps, BeadsRoundSixLights) {
    expect_step("recessed-lights-kitchen", "bead", 14.832053, 2444, {{"sealant", 115.4746e-6}});
}

/// 4 rings of 1.8 mm round 16 mm: pi x 17.8 mm = 55.92035 mm. 36 mm2 x 55.92035 mm x 4 x 1.1 = 8.857783 cm3, $0.2817.
/// 3 + 4 x (1 + 2 x 0.05592035) = 7.447363 min, $10.4263. 4 rings for pipes would be $16.00 alone.
TEST(TenGaps, BeadsRoundFourStubs) { expect_step("primary-sink-stubs", "bead", 7.447363, 1071, {{"sealant", 8.857783e-6}}); }

/// Every bead of the plan is in a gap of 6 mm or less, so 36 mm2 thick; their lengths in mm.
/// Rings, pi x (ring + pipe): lights of the kitchen 6 x 154.7 and of the great room 4 x 155.1, dryer 109.5 and 103.8, drains 52.2
///   and 45.96875, stubs 2 x 16.9, 2 x 17.4 and 4 x 17.8, toilets 18.2 and 18.1, showers and spout 24, 24.8 and 22.4, gas 24.2:
///   pi x 2131.56875 = 6696.521.
/// Boxes, around and 4 x width: grilles 2222.225 and 1806.4; registers 2 x 900 + 14.8 + 7.6, 2 x 600 + 9.6 + 7.2, 1200 + 17.2,
/// 700
///   + 10.4; fan 1100 + 13.6, laundry 900 + 12.8: 11021.825.
/// One side of a box: six of 80 and one of 60: 540. Baseboard: 3000.
/// 21258.346 mm x 36 mm2 x 1.1 = 841.8305 cm3, and 0.1866 cm3 in the chime's hole: 842.0171 cm3 of 298.6926 cm3, 2.82 cartridges:
/// 3 for $28.50. A case of 12 would be $99.00.
TEST(TenGaps, CartridgesOfSealantForTheWholePlan) {
    const std::vector<Purchase>& bought = plan_against_all().materials;
    const auto sealant = std::find_if(bought.begin(), bought.end(), [](const Purchase& p) { return p.material == "sealant"; });
    ASSERT_NE(sealant, bought.end());
    EXPECT_NEAR(sealant->needed, 842.0171e-6, 1e-10);
    EXPECT_EQ(sealant->cases, 0U);
    EXPECT_EQ(sealant->units, 3U);
    EXPECT_EQ(sealant->cost.cents, 2850);
}

}  // namespace
}  // namespace seamward
