// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <random>

#include "plan/plan.h"
#include "tests/support/random_survey.h"

namespace seamward {
namespace {

constexpr std::array serving{Duty::drain, Duty::weep, Duty::vent, Duty::exhaust, Duty::flood, Duty::combustion_air, Duty::relief};

/// A job of a few gaps, three or more of them with a duty that closing would defeat. Prices are the survey's own for most.
Job job_with_duties(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    Job job;
    job.survey =
        test::random_survey({.spaces = 6, .gaps = 12, .distinct_widths = 20, .source_share = 0, .shapes = true}, random());
    for (Gap& gap : job.survey.gaps) {
        if (random() % 4 != 0) gap.closing.cost = Money{static_cast<std::int64_t>(100 + random() % 5000)};
    }
    for (std::uint64_t left = 3 + random() % 3; left > 0; --left) {
        Gap& gap = job.survey.gaps[random() % job.survey.gaps.size()];
        gap.duty = serving[random() % serving.size()];
        if (random() % 2 == 0 && gap.closing.cost) gap.closing.cost = Money{10};  // tempting
    }
    Pest pest;
    pest.id = pest.name = "animal";
    pest.size = {1e-3 * static_cast<double>(1 + random() % 8), 8e-3};
    job.pests = {pest};
    return job;
}

int gaps_with_duty(const Job& job) {
    return static_cast<int>(
        std::count_if(job.survey.gaps.begin(), job.survey.gaps.end(), [](const Gap& gap) { return gap.duty != Duty::none; }));
}

/// What a duty allows, written down anew: vents, weeps and combustion air may have an open mesh, the rest nothing. Openings for
/// combustion air never have one under 1/4 in (NFPA 54, as a gas company's guide gives it).
bool defeats(Duty duty, const Option& option) {
    const bool may_have_mesh = duty == Duty::vent || duty == Duty::weep || duty == Duty::combustion_air;
    if (!may_have_mesh || option.opening == 0) return true;
    return duty == Duty::combustion_air && option.opening < 0.25 * 0.0254 - 1e-9;
}

TEST(DutyInPlans, NoDutyIsEverDefeated) {
    int jobs = 0, tempting = 0, impossible = 0;
    const RunContext context;
    for (std::uint64_t seed = 1; jobs < 10'000; ++seed) {
        const Job job = job_with_duties(seed);
        if (gaps_with_duty(job) < 3) continue;
        ++jobs;
        PlanSettings settings;
        settings.against = job.pests;
        const Plan plan = make_plan(job, settings, context);
        impossible += plan.feasible ? 0 : 1;
        for (const PlanStep& step : plan.steps) {
            const Duty duty = job.survey[step.gap].duty;
            if (duty == Duty::none) continue;
            ASSERT_FALSE(defeats(duty, step.option)) << seed << ' ' << job.survey[step.gap].id << ' ' << step.option.treatment;
        }
        for (const LadderRung& rung : plan.ladder) {
            for (const GapIndex gap : rung.gaps) ASSERT_EQ(job.survey[gap].duty, Duty::none) << seed;
        }
        // The same house without duties: is one of those gaps on the cheapest cut then?
        Job free = job;
        for (Gap& gap : free.survey.gaps) gap.duty = Duty::none;
        const Plan without = make_plan(free, settings, context);
        tempting += std::any_of(without.steps.begin(), without.steps.end(),
                                [&](const PlanStep& step) { return job.survey[step.gap].duty != Duty::none; })
                        ? 1
                        : 0;
    }
    EXPECT_GT(tempting, 4000);
    EXPECT_GT(impossible, 3000);
}

}  // namespace
}  // namespace seamward
