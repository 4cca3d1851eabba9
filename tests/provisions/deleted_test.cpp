// SPDX-License-Identifier: GPL-3.0-or-later
// What is taken out of a survey makes its provisions unknown and lets none pass: over all provisions, and over the scenarios that
// ship.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "catalog/shipped.h"
#include "provisions/gap_parts.h"
#include "tests/house/described_jobs.h"
#include "tests/provisions/rule_job.h"

namespace seamward::test {
namespace {

double passing(const Provision& provision) { return provision.at_least.value_or(provision.at_most.value_or(0)); }

TEST(Deleted, TakingOutAnyOneMeasurementLeavesNoProvisionPassed) {
    std::size_t tried = 0;
    for (const Provision& provision : shipped_provisions().rows) {
        for (std::size_t which = 0; which < std::max<std::size_t>(1, provision.gaps.size()); ++which) {
            RuleJob job{provision, which};
            if (!job.can_be_told()) continue;
            const double value = passing(provision);
            ASSERT_EQ(job.held(value).verdict, Verdict::pass) << provision.id;
            EXPECT_FALSE(job.rests_on().empty()) << provision.id;
            for (const Dropped dropped : job.rests_on()) {
                job.dropped = dropped;
                const ProvisionResult result = job.held(value);
                ++tried;
                if (dropped == Dropped::construction && result.verdict == Verdict::pass) {
                    // An attic that is called so stands there whether or not anybody says that the house has one.
                    const auto& asked = provision.applies;
                    const std::set<std::string> shown{"attic", "garage", "fuel-appliances", "dryer", "flood-zone", "chimney"};
                    EXPECT_TRUE(asked.cladding.empty()) << provision.id;
                    for (const std::string& word : asked.has) EXPECT_TRUE(shown.contains(word)) << provision.id << ' ' << word;
                    continue;
                }
                EXPECT_STREQ(verdict_word(result.verdict), "unknown")
                    << provision.id << ", without " << static_cast<int>(dropped) << '\n'
                    << job.text(value);
                EXPECT_FALSE(result.why.empty()) << provision.id;
            }
        }
    }
    EXPECT_GT(tried, 150U);
}

using Verdicts = std::map<std::string, Verdict>;

/// Only the provisions: no way in is large enough for a thing of a meter.
Audit provisions_of(const Job& job) {
    AuditSettings settings;
    settings.pests.emplace_back();
    settings.pests.back().size = {1, 1};
    return audit(job, parts_of_house(job), settings, RunContext());
}

Verdicts verdicts(const Job& job) {
    Verdicts all;
    for (const ProvisionResult& result : provisions_of(job).results) all.emplace(result.provision.id, result.verdict);
    return all;
}

/// The provisions that passed and those that pass after something was taken out.
std::string newly_passed(const Verdicts& before, const Verdicts& after) {
    std::string text;
    for (const auto& [id, verdict] : after) {
        if (verdict == Verdict::pass && before.at(id) != Verdict::pass) text += id + " ";
    }
    return text;
}

std::vector<std::string> all_scenarios() {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(SEAMWARD_SOURCE_FOLDER "/scenarios")) {
        if (entry.path().extension() == ".yaml") names.push_back(entry.path().stem());
    }
    std::sort(names.begin(), names.end());
    return names;
}

class DeletedFrom : public testing::TestWithParam<std::string> {};

TEST_P(DeletedFrom, TakingOutOneDetailOrOneInputLetsNothingPass) {
    const Job job = described_job(GetParam(), Make::solids);
    const Verdicts before = verdicts(job);
    EXPECT_EQ(before.size(), shipped_provisions().rows.size());
    for (std::size_t i = 0; i < job.details.size(); ++i) {
        Job less = job;
        less.details.erase(less.details.begin() + static_cast<std::ptrdiff_t>(i));
        const Verdicts after = verdicts(less);
        EXPECT_EQ(newly_passed(before, after), "") << "without " << job.details[i].measure << " at " << job.details[i].at;
        for (const Provision& provision : shipped_provisions().rows) {
            const bool rests = provision.measure == job.details[i].measure && !job.details[i].gap;
            EXPECT_FALSE(rests && after.at(provision.id) == Verdict::pass) << provision.id;
        }
    }
    for (std::size_t i = 0; i < job.inputs.size(); ++i) {
        Job less = job;
        less.inputs.erase(less.inputs.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_EQ(newly_passed(before, verdicts(less)), "");
    }
    for (std::size_t i = 0; i < job.vented.size(); ++i) {
        Job less = job;
        less.vented.erase(less.vented.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_EQ(newly_passed(before, verdicts(less)), "");
    }
    for (std::size_t i = 0; i < job.built_of.has.size(); ++i) {
        Job less = job;
        less.built_of.has.erase(less.built_of.has.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_EQ(newly_passed(before, verdicts(less)), "") << "without " << job.built_of.has[i];
    }
}

/// Of every gap in turn the width becomes a guess. What measured it then cannot pass.
TEST_P(DeletedFrom, AGuessInPlaceOfAWidthLetsNothingPass) {
    Job job = described_job(GetParam(), Make::solids);
    const Verdicts before = verdicts(job);
    const std::set<std::string> of_widths{"clear-width", "stays-open", "screened", "spacing"};
    // Gaps that are alike for every provision stand for one another, so that large houses take no hour.
    std::set<std::string> seen;
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        Gap& gap = job.survey.gaps[i];
        const auto kind = [&](SpaceIndex space) { return std::to_string(static_cast<int>(job.survey[space].kind)); };
        const std::string alike = gap.feature + " " + std::to_string(static_cast<int>(gap.duty)) + " " + kind(gap.between[0]) +
                                  kind(gap.between[1]) + std::to_string(gap.shape.index());
        const bool is_closed =
            std::any_of(job.closed.begin(), job.closed.end(), [&](const ClosedGap& c) { return c.gap.value == i; });
        if (is_closed || !seen.insert(alike).second) continue;
        const Evidence kept = gap.evidence;
        gap.evidence = {Evidence::How::assumed, 0};
        const Audit after = provisions_of(job);
        for (const ProvisionResult& result : after.results) {
            const bool newly = result.verdict == Verdict::pass && before.at(result.provision.id) != Verdict::pass;
            EXPECT_FALSE(newly) << gap.id << ' ' << result.provision.id;
            for (const Checked& one : result.checked) {
                const bool rests = one.gap == GapIndex{i} && of_widths.contains(result.provision.measure);
                EXPECT_FALSE(rests && one.verdict == Verdict::pass) << gap.id << ' ' << result.provision.id;
            }
        }
        gap.evidence = kept;
    }
    EXPECT_FALSE(seen.empty());
}

std::string name_of_scenario(const testing::TestParamInfo<std::string>& info) {
    std::string name = info.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(Scenarios, DeletedFrom, testing::ValuesIn(all_scenarios()), name_of_scenario);

}  // namespace
}  // namespace seamward::test
