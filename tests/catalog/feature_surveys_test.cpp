// SPDX-License-Identifier: GPL-3.0-or-later
// Every gap of the three surveys, and the row of the table of features that makes such a gap.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <sstream>

#include "catalog/shipped.h"
#include "job_file/job.h"
#include "tests/catalog/surveyed_features.h"

namespace seamward::test {
namespace {

/// Every gap as it was found, those that were closed too.
Survey survey_of(const Scenario& scenario) {
    Job job = read_job(std::string(SEAMWARD_SOURCE_FOLDER) + '/' + scenario.name + ".yaml", RunContext());
    for (const ClosedGap& closed : job.closed) job.survey.gaps[closed.gap.value].shape = closed.before;
    return job.survey;
}

const FeatureGap& made_by(const Made& made) {
    const Feature* feature = shipped_features().find(made.feature);
    if (feature == nullptr) throw std::out_of_range(std::string("no feature ") + made.feature);
    const auto gap =
        std::find_if(feature->gaps.begin(), feature->gaps.end(), [&](const FeatureGap& g) { return g.id == made.gap; });
    if (gap == feature->gaps.end()) throw std::out_of_range(std::string(made.feature) + " has no gap " + made.gap);
    return *gap;
}

/// Calls `visit(surveyed gap, made gap)` for every line of a list.
template <class Visit>
void for_each_gap(const Scenario& scenario, const Survey& survey, Visit&& visit) {
    for (const Made& made : scenario.made) {
        const FeatureGap& gap = made_by(made);
        std::istringstream ids(made.surveyed);
        for (std::string id; ids >> id;) {
            const auto found = std::find_if(survey.gaps.begin(), survey.gaps.end(), [&](const Gap& g) { return g.id == id; });
            ASSERT_NE(found, survey.gaps.end()) << scenario.name << " has no gap " << id;
            visit(*found, gap);
        }
    }
}

TEST(FeaturesForTheSurveys, MakeEveryGapOnce) {
    for (const Scenario& scenario : scenarios) {
        const Survey survey = survey_of(scenario);
        std::map<std::string, int> times;
        for_each_gap(scenario, survey, [&](const Gap& surveyed, const FeatureGap&) { ++times[surveyed.id]; });
        for (const Gap& gap : survey.gaps) EXPECT_EQ(times[gap.id], 1) << scenario.name << ": " << gap.id;
    }
}

TEST(FeaturesForTheSurveys, HaveTheShapeAndTheDuty) {
    for (const Scenario& scenario : scenarios) {
        for_each_gap(scenario, survey_of(scenario), [&](const Gap& surveyed, const FeatureGap& made) {
            EXPECT_EQ(surveyed.shape.index(), static_cast<std::size_t>(made.shape)) << scenario.name << ": " << surveyed.id;
            EXPECT_EQ(surveyed.duty, made.duty) << scenario.name << ": " << surveyed.id;
            if (!surveyed.closing.never.empty()) {
                EXPECT_FALSE(made.never.text.empty()) << scenario.name << ": " << surveyed.id;
            }
        });
    }
}

/// A survey's width is no more than some multiples away, so that a row's starting value is of the right kind.
TEST(FeaturesForTheSurveys, StartFromWidthsLikeThose) {
    for (const Scenario& scenario : scenarios) {
        for_each_gap(scenario, survey_of(scenario), [&](const Gap& surveyed, const FeatureGap& made) {
            const double ratio = clear_width(surveyed.shape) / made.width;
            EXPECT_LT(ratio, 7) << scenario.name << ": " << surveyed.id;
            EXPECT_GT(ratio, 1.0 / 7) << scenario.name << ": " << surveyed.id;
            if (const Ring* ring = std::get_if<Ring>(&surveyed.shape)) {
                EXPECT_LT(std::abs(ring->around - made.around), 0.4 * made.around + 0.003)
                    << scenario.name << ": " << surveyed.id;
            }
        });
    }
}

/// What stands in the opening is among what the survey says that its sides are made of, but for one panel of vinyl.
TEST(FeaturesForTheSurveys, NameTheSubstrate) {
    for (const Scenario& scenario : scenarios) {
        for_each_gap(scenario, survey_of(scenario), [&](const Gap& surveyed, const FeatureGap& made) {
            if (made.insert.empty() || surveyed.id == "hose-bibb-living") return;
            EXPECT_NE(std::find(surveyed.substrates.begin(), surveyed.substrates.end(), made.insert), surveyed.substrates.end())
                << scenario.name << ": " << surveyed.id << " has no " << made.insert;
        });
    }
}

using Kinds = std::set<SpaceKind>;
constexpr SpaceKind outdoors = SpaceKind::outdoors, cavity = SpaceKind::cavity, attached = SpaceKind::attached,
                    living = SpaceKind::living, harborage = SpaceKind::harborage;

/// The kinds of spaces that a gap at a place may join, nearer to outdoors first.
std::pair<Kinds, Kinds> joined(FeatureGap::At at) {
    using At = FeatureGap::At;
    switch (at) {
        case At::outside: return {{outdoors, cavity}, {cavity, harborage}};
        case At::inside: return {{cavity, attached}, {living, attached, cavity}};
        case At::top: return {{outdoors, cavity}, {cavity, harborage}};
        case At::outer:
        case At::soffit:
        case At::soffit_wall:
        case At::soffit_fascia:
        case At::fascia:
        case At::deck: return {{outdoors}, {cavity}};
        case At::inner: return {{cavity}, {living}};
        case At::end: return {{outdoors, harborage}, {cavity}};
        case At::through: return {{outdoors, attached, cavity}, {cavity, attached, living}};
        default: return {{cavity}, {cavity}};
    }
}

TEST(FeaturesForTheSurveys, JoinSpacesOfTheSameKinds) {
    for (const Scenario& scenario : scenarios) {
        const Survey survey = survey_of(scenario);
        for_each_gap(scenario, survey, [&](const Gap& surveyed, const FeatureGap& made) {
            const auto [first, second] = joined(made.at);
            const SpaceKind a = survey[surveyed.between[0]].kind, b = survey[surveyed.between[1]].kind;
            EXPECT_TRUE((first.contains(a) && second.contains(b)) || (first.contains(b) && second.contains(a)))
                << scenario.name << ": " << surveyed.id;
        });
    }
}

}  // namespace
}  // namespace seamward::test
