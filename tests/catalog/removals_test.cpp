// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/removals.h"

#include <gtest/gtest.h>

#include <set>

#include "base/diagnostics.h"
#include "catalog/prices.h"
#include "catalog/shipped.h"

namespace seamward {
namespace {

Date day_of(const char* text) { return parse_date(text).value.value(); }

const Removal& row_of(const char* animal) { return *removal_of(shipped_removals(), animal); }

std::string faults_of(const std::string& rows) {
    const std::string head =
        "catalog: removals\nedition: now\nsources: [{id: s, title: t, publisher: p, year: 0, seen: memory}]\n";
    try {
        (void)read_removals(head + "removals:\n" + rows, "removals.yaml", shipped_pests());
    } catch (const BadInput& bad) {
        return bad.what();
    }
    return "";
}

// Arizona Game and Fish, as a news report of 2024 gives it: "Bat maternity season runs from May to September".
TEST(Removals, BatsOfArizonaFromMayToSeptember) {
    const Removal& bats = row_of("bat");
    EXPECT_EQ(bats.by, Removal::By::one_way);
    EXPECT_FALSE(closed_season(bats, "AZ", day_of("2026-04-30")));
    const auto first = closed_season(bats, "AZ", day_of("2026-05-01"));
    const auto last = closed_season(bats, "AZ", day_of("2026-09-30"));
    ASSERT_TRUE(first && last);
    EXPECT_EQ(date_text(first->over), "2026-10-01");
    EXPECT_EQ(date_text(last->over), "2026-10-01");
    EXPECT_EQ(first->season->source, "az-bats");
    EXPECT_FALSE(closed_season(bats, "AZ", day_of("2026-10-01")));
}

TEST(Removals, AStateWithoutRowsHasTheGeneralOnes) {
    const Removal& bats = row_of("bat");
    EXPECT_EQ(date_text(closed_season(bats, "NM", day_of("2026-06-01"))->over), "2026-09-01");
    EXPECT_FALSE(closed_season(bats, "NM", day_of("2026-09-15")));
    EXPECT_EQ(date_text(closed_season(bats, "", day_of("2026-06-01"))->over), "2026-10-01") << "no state said: all rows hold";
}

// A Massachusetts wildlife society: young from March to May and in August and September.
TEST(Removals, SquirrelsHaveTwoSeasons) {
    const Removal& squirrels = row_of("tree-squirrel");
    EXPECT_EQ(date_text(closed_season(squirrels, "MA", day_of("2026-03-15"))->over), "2026-06-01");
    EXPECT_FALSE(closed_season(squirrels, "MA", day_of("2026-07-01")));
    EXPECT_EQ(date_text(closed_season(squirrels, "MA", day_of("2026-08-01"))->over), "2026-10-01");
}

TEST(Removals, ASeasonMayGoPastTheEndOfTheYear) {
    const ClosedSeason winter{"", std::chrono::November / 15, std::chrono::February / 28, "asleep", "s"};
    EXPECT_TRUE(winter.holds_on(day_of("2026-11-15")));
    EXPECT_TRUE(winter.holds_on(day_of("2027-01-10")));
    EXPECT_TRUE(winter.holds_on(day_of("2027-02-28")));
    EXPECT_FALSE(winter.holds_on(day_of("2027-03-01")));
    EXPECT_FALSE(winter.holds_on(day_of("2026-11-14")));
}

TEST(Removals, SeasonsThatFollowEachOtherAreOne) {
    Removal removal;
    removal.seasons = {{"", std::chrono::March / 1, std::chrono::May / 31, "eggs", "s"},
                       {"", std::chrono::June / 1, std::chrono::August / 15, "young", "s"}};
    EXPECT_EQ(date_text(closed_season(removal, "", day_of("2026-03-10"))->over), "2026-08-16");
}

TEST(Removals, EveryAnimalOfTheCatalogHasARow) {
    for (const Pest& pest : shipped_pests().rows) EXPECT_NE(removal_of(shipped_removals(), pest.id), nullptr) << pest.id;
    EXPECT_EQ(removal_of(shipped_removals(), "unicorn"), nullptr);
}

/// Vertebrates and colonies that sting are never shut in; whoever is has its quiet nights, and what is set up is in the price
/// book.
TEST(Removals, NobodyWithABackboneIsShutIn) {
    const std::set<std::string> never{"bat",      "house-mouse", "roof-rat",    "norway-rat", "tree-squirrel", "house-sparrow",
                                      "starling", "snake",       "house-gecko", "honey-bee",  "yellowjacket"};
    for (const std::string& animal : never) {
        EXPECT_NE(row_of(animal.c_str()).by, Removal::By::nothing) << animal;
        EXPECT_GT(row_of(animal.c_str()).quiet_nights, 0U) << animal;
        EXPECT_FALSE(row_of(animal.c_str()).cautions.empty()) << animal;
    }
    for (const Removal& row : shipped_removals().rows) {
        EXPECT_TRUE(row.material.empty() || shipped_prices().find(row.material) != nullptr) << row.material;
    }
}

TEST(Removals, FaultsAreToldWithTheirLines) {
    const std::string fine = "  - {id: a, animals: [bat], by: one-way, how: out, source: s}\n";
    EXPECT_EQ(faults_of(fine), "");
    EXPECT_NE(faults_of("  - {id: a, animals: [bta], by: one-way, how: out, source: s}\n")
                  .find("removals.yaml:5:23: error: unknown animal \"bta\"; did you mean bat?"),
              std::string::npos);
    EXPECT_NE(faults_of(fine + "  - {id: b, animals: [bat], by: trapping, how: out, source: s}\n").find("stands twice"),
              std::string::npos);
    EXPECT_NE(faults_of("  - {id: a, animals: [bat], by: magic, how: out, source: s}\n").find("unknown by \"magic\""),
              std::string::npos);
    EXPECT_NE(faults_of("  - {id: a, animals: [bat], by: one-way, how: out, source: x}\n").find("unknown source"),
              std::string::npos);
    EXPECT_NE(faults_of("  - {id: a, animals: [bat], by: one-way, how: out, source: s, seasons: [{from: 5-1, to: 09-30, why: y, "
                        "source: s}]}\n")
                  .find("from: \"5-1\" is no day of the year"),
              std::string::npos);
}

}  // namespace
}  // namespace seamward
