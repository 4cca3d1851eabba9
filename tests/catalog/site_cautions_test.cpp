// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/site_cautions.h"

#include <gtest/gtest.h>

#include "base/diagnostics.h"
#include "catalog/shipped.h"

namespace seamward {
namespace {

using When = SiteCaution::When;

// 40 CFR 745.83 is about housing built before 1978.
TEST(SiteCautions, LeadPaintBefore1978) {
    const SiteCaution& lead = site_caution(shipped_site_cautions(), When::built_before);
    EXPECT_EQ(lead.limit, 1978);
    EXPECT_NE(lead.text.find("lead"), std::string::npos);
}

// The county's sheet: "must extend at least 3 feet above the point of support", base at 1/4 of the working length.
TEST(SiteCautions, TheLadderRuleIsThatOfTheSheet) {
    const SiteCaution& ladder = site_caution(shipped_site_cautions(), When::ladder);
    EXPECT_NE(ladder.text.find("3 ft (0.9 m)"), std::string::npos);
    EXPECT_NE(ladder.text.find("quarter"), std::string::npos);
    EXPECT_LT(ladder.limit, site_caution(shipped_site_cautions(), When::high_ladder).limit);
}

std::string faults_of(const std::string& rows) {
    try {
        (void)read_site_cautions(
            "catalog: site_cautions\nedition: now\nsources: [{id: s, title: t, publisher: p, year: 0, seen: memory}]\n"
            "site_cautions:\n" +
                rows,
            "table.yaml");
    } catch (const BadInput& bad) {
        return bad.what();
    }
    return "";
}

TEST(SiteCautions, AKindWithoutARowIsAFault) {
    const std::string faults = faults_of("  - {id: a, when: roof, text: high, source: s}\n");
    EXPECT_NE(faults.find("no row for ladder"), std::string::npos);
    EXPECT_NE(faults.find("no row for droppings"), std::string::npos);
    EXPECT_EQ(faults.find("no row for roof;"), std::string::npos);
}

TEST(SiteCautions, ALimitStandsWhereOneIsDue) {
    EXPECT_NE(faults_of("  - {id: a, when: ladder, text: high, source: s}\n").find("has no above"), std::string::npos);
    EXPECT_NE(faults_of("  - {id: a, when: roof, above: 2 m, text: high, source: s}\n").find("above says nothing here"),
              std::string::npos);
    EXPECT_NE(faults_of("  - {id: a, when: roof, before: 1978, text: high, source: s}\n").find("before says nothing here"),
              std::string::npos);
    EXPECT_NE(faults_of("  - {id: a, when: ladder, above: 2, text: high, source: s}\n").find("needs a unit"), std::string::npos);
}

}  // namespace
}  // namespace seamward
