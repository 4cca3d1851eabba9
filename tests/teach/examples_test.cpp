// SPDX-License-Identifier: GPL-3.0-or-later
// Of each shipped drill there are answers of an invented trainee that pass, and answers that do harm.
#include <gtest/gtest.h>

#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

class Examples : public testing::TestWithParam<std::string> {
protected:
    const DrillRound& round = shipped_drill(GetParam());
    [[nodiscard]] DrillResult result_of(const std::string& ending) const {
        const std::filesystem::path path =
            source_folder / "scenarios/drills/examples" / (round.drill.id + "-" + ending + ".yaml");
        return score(round, read_answers(path, round));
    }
};

TEST_P(Examples, Pass) {
    const DrillResult result = result_of("passes");
    EXPECT_TRUE(result.passed) << result.points << " of " << result.most;
    EXPECT_TRUE(result.harms.empty());
}

/// With nearly all points, and failed all the same.
TEST_P(Examples, DoHarm) {
    const DrillResult result = result_of("harms");
    EXPECT_FALSE(result.passed);
    EXPECT_FALSE(result.harms.empty());
    EXPECT_GE(result.share(), round.drill.pass_mark);
}

INSTANTIATE_TEST_SUITE_P(All, Examples, testing::ValuesIn(drill_names()), [](const auto& given) {
    std::string name = given.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return "drill_" + name;
});

}  // namespace
}  // namespace seamward::test
