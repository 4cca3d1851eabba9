// SPDX-License-Identifier: GPL-3.0-or-later
// The demo house, planned for real.
#include <gtest/gtest.h>

#include <map>

#include "base/money.h"
#include "catalog/shipped.h"
#include "paths/trace.h"
#include "plan/plan.h"

namespace seamward {
namespace {

const RunContext context;

const Job& demo() {
    static const Job job = read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml", context);
    return job;
}

PlanSettings against(std::vector<std::string> ids) {
    PlanSettings settings;
    for (const std::string& id : ids) settings.against.push_back(*shipped_pests().find(id));
    return settings;
}

Survey treated(const Survey& survey, const Plan& plan) {
    Survey after = survey;
    for (const PlanStep& step : plan.steps) close_gap(after.gaps[step.gap.value], step.option.opening);
    return after;
}

/// A way that one of the animals still has, by the trace that `seamward trace` makes; doubtful ones count.
bool open_to_any(const Survey& survey, const std::vector<Pest>& pests) {
    TraceSettings settings;
    settings.pests = pests;
    settings.top = 1;
    return !trace(survey, settings, context).paths.empty();
}

/// The amounts add up, every route is a way in for its animal, and none uses more of a gap than stopping that animal there costs.
void expect_proof(const Job& job, const PlanSettings& settings, const Plan& plan) {
    Money sum;
    std::map<std::pair<GapIndex, std::size_t>, Money> load;
    for (const ProofRoute& route : plan.proof.routes) {
        sum = sum + route.amount;
        const Pest& pest = settings.against[route.pest];
        ASSERT_FALSE(route.gaps.empty());
        for (const GapIndex gap : route.gaps) {
            EXPECT_TRUE(lets_through(job.survey[gap], pest.size, settings.sizing));
            load[{gap, route.pest}] = load[{gap, route.pest}] + route.amount;
        }
    }
    EXPECT_EQ(sum, plan.proof.lower_bound);
    EXPECT_LE(sum, plan.cost);
    for (const auto& [at, amount] : load) {
        const auto& [gap, pest] = at;
        for (const Option& option : options_for(job.survey[gap], job.survey, settings.prices).options) {
            Gap after = job.survey[gap];
            close_gap(after, option.opening);
            const Pest& animal = settings.against[pest];
            const bool stops = !(option.gnawed && animal.gnaws) && !lets_through(after, animal.size, settings.sizing);
            if (stops) {
                EXPECT_LE(amount, option.cost) << job.survey[gap].id;
            }
        }
    }
}

void expect_plan(const std::vector<std::string>& ids, Proof::Kind kind) {
    const PlanSettings settings = against(ids);
    const Plan plan = make_plan(demo(), settings, context);
    ASSERT_TRUE(plan.feasible);
    ASSERT_FALSE(plan.steps.empty());
    Money sum;
    double last = 1;
    for (const PlanStep& step : plan.steps) {
        sum = sum + step.option.cost;
        EXPECT_LE(step.widest_open_after, last);
        last = step.widest_open_after;
    }
    EXPECT_EQ(sum, plan.cost);
    EXPECT_EQ(last, 0);
    EXPECT_EQ(plan.proof.kind, kind);
    expect_proof(demo(), settings, plan);
    if (kind == Proof::Kind::flow) {
        EXPECT_EQ(plan.proof.lower_bound, plan.cost);
    }
    EXPECT_EQ(plan.proof.solver_gap, 0);
    EXPECT_TRUE(open_to_any(demo().survey, settings.against));
    EXPECT_FALSE(open_to_any(treated(demo().survey, plan), settings.against));
}

TEST(DemoPlan, AgainstTheMouse) { expect_plan({"house-mouse"}, Proof::Kind::flow); }
TEST(DemoPlan, AgainstTheRoach) { expect_plan({"american-cockroach"}, Proof::Kind::flow); }
TEST(DemoPlan, AgainstTheScorpion) { expect_plan({"bark-scorpion"}, Proof::Kind::flow); }
TEST(DemoPlan, AgainstTheYoungScorpion) { expect_plan({"bark-scorpion-young"}, Proof::Kind::flow); }

TEST(DemoPlan, AgainstAllOfThem) {
    expect_plan({"house-mouse", "american-cockroach", "bark-scorpion", "bark-scorpion-young"}, Proof::Kind::bound);
}

// The widest way in that is left by the trace without animals is narrower than each rung says.
TEST(DemoPlan, EveryRungOfTheLadderIsACut) {
    Job sized = demo();
    for (Gap& gap : sized.survey.gaps) {
        gap.shape = widened(gap.shape, gap.evidence.plus_minus);
        gap.evidence.plus_minus = 0;
    }
    const Plan plan = make_plan(sized, against({"bark-scorpion"}), context);
    ASSERT_GE(plan.ladder.size(), 5U);
    const LadderRung* before = nullptr;
    for (const LadderRung& rung : plan.ladder) {
        if (before != nullptr) {
            EXPECT_GT(rung.cost, before->cost);
            EXPECT_LT(rung.width, before->width);
        }
        before = &rung;
        Survey after = sized.survey;
        for (const GapIndex gap : rung.gaps) close_gap(after.gaps[gap.value], 0);
        TraceSettings widest;
        widest.top = 1;
        const Trace left = trace(after, widest, context);
        if (!left.paths.empty()) {
            EXPECT_LT(left.paths[0].pinch, rung.width);
        }
    }
    ASSERT_TRUE(plan.ladder_stop.has_value());
    EXPECT_FALSE(plan.ladder_stop->why.empty());
    EXPECT_TRUE(sized.survey[plan.ladder_stop->gap].must_stay_open());
}

TEST(DemoPlan, AtEqualPricesASmallerAnimalNeverCostsLess) {
    Job equal = demo();
    for (Gap& gap : equal.survey.gaps) {
        if (!gap.must_stay_open()) gap.closing.cost = Money{1000};
    }
    Money last;
    for (const char* id : {"norway-rat", "house-mouse", "american-cockroach", "bark-scorpion", "bark-scorpion-young"}) {
        const Plan plan = make_plan(equal, against({id}), context);
        ASSERT_TRUE(plan.feasible) << id;
        EXPECT_GE(plan.cost, last) << id;
        last = plan.cost;
    }
}

TEST(DemoPlan, ABudgetBuysTheTightestHouseThatItCan) {
    PlanSettings settings = against({"bark-scorpion"});
    const Plan whole = make_plan(demo(), settings, context);
    double last = 1;
    for (const std::int64_t cents : {0, 5000, 10000, 20000, 40000}) {
        settings.budget = Money{cents};
        const Plan plan = make_plan(demo(), settings, context);
        ASSERT_TRUE(plan.budget.has_value());
        EXPECT_LE(plan.cost, Money{cents});
        EXPECT_FALSE(plan.budget->reaches_all);
        EXPECT_EQ(plan.budget->full_cost, whole.cost);
        EXPECT_GE(plan.cost + plan.budget->still_to_pay, whole.cost);
        ASSERT_TRUE(plan.budget->left_open.has_value());
        EXPECT_LE(plan.budget->left_open->pinch, last);
        EXPECT_TRUE(plan.budget->proven);
        last = plan.budget->left_open->pinch;
    }
    settings.budget = whole.cost;
    const Plan plan = make_plan(demo(), settings, context);
    EXPECT_TRUE(plan.budget->reaches_all);
    EXPECT_FALSE(plan.budget->left_open.has_value());
    EXPECT_EQ(plan.cost, whole.cost);
}

TEST(DemoPlan, EndsWithACombustionTest) {
    const Plan plan = make_plan(demo(), against({"house-mouse"}), context);
    ASSERT_EQ(plan.last_checks.size(), 2U);
    EXPECT_NE(plan.last_checks[0].english().find("licensed person"), std::string::npos);
    EXPECT_NE(plan.last_checks[1].english().find("carbon monoxide alarms"), std::string::npos);
}

}  // namespace
}  // namespace seamward
