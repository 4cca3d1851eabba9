// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/starved_vents.h"

#include <gtest/gtest.h>

#include "tests/support/survey_builder.h"

namespace seamward {
namespace {

using test::SurveyBuilder;

constexpr double square_inch = 0.0254 * 0.0254;

/// A louver of 1/4 in, 14 in2, that a heater of a closet breathes through, and a vent of the attic of the same size.
Survey louver_and_vent() {
    SurveyBuilder build;
    build.outdoors("yard").space("closet", SpaceKind::attached).cavity("attic");
    build.slot("louver", "yard", "closet", 1).last().duty = Duty::combustion_air;
    build.slot("vent", "yard", "attic", 1).last().duty = Duty::vent;
    Survey survey = build.survey();
    for (Gap& gap : survey.gaps) gap.shape = Mesh{0.25 * 0.0254, 14 * square_inch};
    return survey;
}

/// Wire of 0.035 in leaves (6.35 / 7.239)^2 x 14 in2 = 10.8 in2, and hardware cloth of 5.46 mm over it (5.46 / 6.349)^2 of that,
/// 8.0 in2. 40,000 Btu/h ask for 10 in2 of each opening, one square inch for 4,000 Btu/h. The attic is not looked at by floor.
TEST(StarvingMeshes, NamesTheOpeningThatAnApplianceBreathesThrough) {
    const Survey survey = louver_and_vent();
    const std::vector<TreatedGap> treated{{{0}, 5.46e-3}, {{1}, 5.46e-3}};
    const auto starving = [&](double btu_per_hour) {
        const std::vector<SpaceInput> inputs{{{1}, btu_per_hour}};
        std::vector<Message> doubts;
        return starving_meshes(survey, treated, {{}, inputs}, doubts);
    };
    const std::vector<StarvingMesh> found = starving(40'000);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].gap, GapIndex{0});
    EXPECT_EQ(found[0].opening, 5.46e-3);
    EXPECT_NE(found[0].why.english().find("in2"), std::string::npos) << found[0].why.english();
    EXPECT_TRUE(starving(30'000).empty()) << "7.5 in2 are enough";
}

}  // namespace
}  // namespace seamward
