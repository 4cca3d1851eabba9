// SPDX-License-Identifier: GPL-3.0-or-later
// The shipped houses: every gap is open as wide as it says, joins the two spaces that it names, and nothing else joins any.
#include <gtest/gtest.h>

#include "tests/house/described_jobs.h"
#include "tests/house/plain_house.h"
#include "tests/support/gap_ruler.h"
#include "tests/support/leak_finder.h"

namespace seamward::test {
namespace {

std::string words(const House& house, const Leak& leak) {
    std::string text = house.survey[leak.from].id + " leaks into " + house.survey[leak.to].id + " by";
    for (std::size_t i = 0; i < leak.way.size(); ++i) {
        const Point &at = leak.way[i], &before = leak.way[i > 0 ? i - 1 : i],
                    &after = leak.way[std::min(i + 1, leak.way.size() - 1)];
        const Point middle{(before.x + after.x) / 2, (before.y + after.y) / 2, (before.z + after.z) / 2};
        if (i > 0 && i + 1 < leak.way.size() && distance(at, middle) < 1e-9) continue;  // straight on
        char point[64];
        std::snprintf(point, sizeof point, " (%.3f %.3f %.3f)", at.x, at.y, at.z);
        text += point;
    }
    return text;
}

class ShippedModel : public testing::TestWithParam<std::string> {};

TEST_P(ShippedModel, HasGapsAsWideAsStated) {
    const Job job = described_job(GetParam(), Make::solids);
    const GapRuler ruler(job.house.parts);
    // Of large houses some of the gaps: each is looked for among all triangles.
    constexpr std::size_t enough = 130;
    const std::size_t step = std::max<std::size_t>(1, job.house.places.size() / enough);
    for (std::size_t i = 0; i < job.house.places.size(); i += step) {
        const GapPlace& place = job.house.places[i];
        const Gap& gap = job.survey[place.gap];
        if (place.through.empty()) continue;
        // A gap that was closed since stands open in the solids, as it was built.
        const auto closed =
            std::find_if(job.closed.begin(), job.closed.end(), [&](const ClosedGap& c) { return c.gap == place.gap; });
        const double stated = clear_width(closed == job.closed.end() ? gap.shape : closed->before);
        EXPECT_NEAR(ruler.width_of(place.gap).smallest, stated, 1e-5) << gap.id;
    }
}

/// A line of the list makes gaps of its type only, and each gap of a type of feature is made by one line.
TEST_P(ShippedModel, TellsWhichLineMakesAGap) {
    const HouseDescription described = description_of(GetParam());
    const House house = build_house(described, {}, Make::survey, RunContext());
    std::size_t made = 0;
    for (const GapPlace& place : house.places) {
        const Gap& gap = house.survey[place.gap];
        EXPECT_EQ(place.feature.empty(), gap.feature.empty()) << gap.id;
        if (place.feature.empty()) continue;
        const auto line = std::find_if(described.features.begin(), described.features.end(),
                                       [&](const FeatureDescription& feature) { return feature.id == place.feature; });
        ASSERT_NE(line, described.features.end()) << gap.id;
        EXPECT_EQ(line->type->id, gap.feature) << gap.id;
        ++made;
    }
    EXPECT_GE(made, described.features.size());
}

TEST_P(ShippedModel, JoinsItsSpacesByGapsOnly) {
    const HouseDescription described = description_of(GetParam());
    const House house = shut_house(described), open = build_house(described, {}, Make::solids, RunContext());
    const AirMap air(house, {.pitch = pitch_for(described, house)});
    for (const SpaceIndex space : air.unseen()) ADD_FAILURE() << house.survey[space].id << " was not found";
    for (const Leak& leak : air.leaks()) ADD_FAILURE() << words(house, leak);

    // Each gap leads from the one of its spaces to the other.
    for (const GapPlace& place : open.places) {
        const Gap& gap = open.survey[place.gap];
        const std::array<Point, 2> ends{place.through.front(), place.through.back()};
        for (std::size_t side = 0; side < 2; ++side) {
            const SpaceIndex space = gap.between.at(side);
            if (open.survey[space].kind != SpaceKind::outdoors && open.middles[space.value].figure.outline.empty()) continue;
            const SpaceIndex found = air.space_at(ends.at(side));
            EXPECT_EQ(found, space) << gap.id << " begins or ends in " << (found.valid() ? open.survey[found].id : "no known air")
                                    << ", not in " << open.survey[space].id;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Shipped, ShippedModel, testing::ValuesIn(described_jobs()), name_of);

TEST(AirMap, FindsAnOpeningNobodyToldOf) {
    PlainHouse plain;
    plain.more =
        "openings: [{id: door, in: wall-1, along: 3 m, width: 0.9 m, height: 2 m}]\n"
        "features: [{id: corner, type: door-corner, on: door, gap: 60 mm, length: 80 mm}]\n";
    const House house = plain.build();
    const AirMap air(house, {.pitch = 0.04});
    ASSERT_EQ(air.leaks().size(), 1U);
    EXPECT_EQ(house.survey[air.leaks().front().from].id + " " + house.survey[air.leaks().front().to].id, "yard room");
    EXPECT_TRUE(is_clear(house, air.leaks().front().way));
    EXPECT_EQ(house.survey[air.space_at({6, 4, 1})].id, "yard");  // they are one now

    plain.more = plain.more.substr(0, plain.more.find("features"));
    const House closed = plain.build();
    const AirMap apart(closed, {.pitch = 0.04});
    EXPECT_TRUE(apart.leaks().empty());
    EXPECT_TRUE(apart.unseen().empty());
    EXPECT_EQ(closed.survey[apart.space_at({6, 4, 1})].id, "room");
    EXPECT_FALSE(apart.space_at({6, 4, -0.1}).valid());
}

}  // namespace
}  // namespace seamward::test
