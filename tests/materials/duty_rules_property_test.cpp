// SPDX-License-Identifier: GPL-3.0-or-later
// Random gaps against the table of duties.
#include <gtest/gtest.h>

#include <random>
#include <set>

#include "catalog/shipped.h"
#include "materials/options.h"
#include "tests/materials/duty_gaps.h"

namespace seamward::test {
namespace {

/// Draws gaps of any duty, feature, substrates, shape and place.
class RandomGaps {
public:
    explicit RandomGaps(std::uint64_t seed) : engine_(seed), survey_(house()) {}

    Gap draw(bool with_duty, bool with_feature, const std::vector<std::string>& words) {
        Gap gap;
        gap.id = "gap";
        const std::uint32_t spaces = static_cast<std::uint32_t>(survey_.survey().spaces.size());
        const std::uint32_t a = below(spaces);
        gap.between = {SpaceIndex{a}, SpaceIndex{(a + 1 + below(spaces - 1)) % spaces}};
        if (with_duty) gap.duty = static_cast<Duty>(below(10));
        const std::vector<Feature>& features = shipped_features().rows;
        if (with_feature && below(3) > 0) gap.feature = features[below(static_cast<std::uint32_t>(features.size()))].id;
        for (std::uint32_t n = below(4); n > 0; --n)
            gap.substrates.push_back(words[below(static_cast<std::uint32_t>(words.size()))]);
        const double width = 0.0005 * (1 + below(60));
        switch (below(4)) {
            case 0: gap.shape = Slot{width, 0.1 * (1 + below(100))}; break;
            case 1: gap.shape = Hole{width}; break;
            case 2: gap.shape = Ring{width, 0.05}; break;
            default: gap.shape = Mesh{width, 0.01};
        }
        if (below(2) == 0) gap.at = Point{0, 0, 0.1 * below(40)};
        if (below(4) == 0) gap.closing.cost = Money{100 + below(5000)};
        if (with_duty && below(8) == 0) {
            gap.closing.never = "a reason";
            if (below(2) == 0) gap.closing.never_source = shipped_features().sources[below(5)].id;
            gap.closing.mesh_allowed = below(2) == 0;
        }
        gap.count = 1 + below(5);
        return gap;
    }
    [[nodiscard]] const Survey& survey() const { return survey_.survey(); }

private:
    std::uint32_t below(std::uint32_t n) { return static_cast<std::uint32_t>(engine_() % n); }

    std::mt19937_64 engine_;
    SurveyBuilder survey_;
};

const std::vector<std::string> plain_words{"wood", "metal", "concrete", "brick", "vinyl", "drywall", "pvc", "copper", "block"};

TEST(DutyRulesProperty, WhatServesAsAnOpeningIsNeverClosed) {
    RandomGaps gaps(20261126);
    std::vector<std::string> words = plain_words;
    words.insert(words.end(), {"stucco", "tile", "siding", "flashing", "fire-rated", "chimney", "screed"});
    std::size_t serving = 0;
    for (int i = 0; i < 20'000; ++i) {
        const Gap gap = gaps.draw(true, true, words);
        const DutyRuling said = ruling_on(gap, gaps.survey());
        if (!serves_as_opening(gap.duty) && gap.closing.never.empty()) continue;
        ++serving;
        ASSERT_TRUE(said.restricted());
        ASSERT_FALSE(said.may_close) << said.row;
        ASSERT_FALSE(said.source.empty()) << said.row;
        ASSERT_FALSE(said.allows(stated_closing, 0)) << said.row;
        ASSERT_FALSE(said.allows("a word of nobody", 0.005)) << said.row;
        for (const Treatment& treatment : shipped_treatments().rows) {
            // A trap seal lets water down past it.
            const bool drain_seal = treatment.id == "trap-seal" && gap.duty == Duty::drain && gap.feature == "floor-drain-grate";
            if (!drain_seal || said.source.english() == "the survey") {
                ASSERT_FALSE(said.allows(treatment.id, 0)) << said.row;
            }
        }
    }
    EXPECT_GT(serving, 12'000U);
}

TEST(DutyRulesProperty, WhatHasNoDutyFeatureAndStuccoIsFree) {
    RandomGaps gaps(7);
    std::size_t parting = 0;
    for (int i = 0; i < 20'000; ++i) {
        const Gap gap = gaps.draw(false, false, plain_words);
        const DutyRuling said = ruling_on(gap, gaps.survey());
        std::set<SpaceKind> kinds;
        for (const SpaceIndex space : gap.between) kinds.insert(gaps.survey()[space].kind);
        // But for what parts a garage from the house.
        const bool attic = gaps.survey()[gap.between[0]].id == "attic" || gaps.survey()[gap.between[1]].id == "attic";
        const bool attached = kinds.contains(SpaceKind::attached) && (kinds.contains(SpaceKind::living) || attic);
        if (attached) ++parting;
        ASSERT_TRUE(attached || !said.restricted()) << said.row;
        ASSERT_TRUE(said.may_close) << said.row;
    }
    EXPECT_GT(parting, 1'000U);
}

}  // namespace
}  // namespace seamward::test
