// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/drill_scores.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "tests/support/diagnostic_matchers.h"

namespace seamward::test {
namespace {

const std::string head =
    "catalog: drill_scores\nedition: e\nsources: [{id: s, title: t, publisher: none, year: 0, seen: memory}]\ndrill_scores:\n";

std::vector<Diagnostic> faults(const std::string& rows) {
    return faults_of([&] { (void)read_drill_scores(head + rows, "drill_scores.yaml"); });
}

TEST(DrillScores, HaveAFigureOfEachSort) {
    using Of = DrillScore::Of;
    const Table<DrillScore>& table = shipped_drill_scores();
    EXPECT_EQ(drill_figure(table, Of::found), 4);
    EXPECT_EQ(drill_figure(table, Of::width_share), 0.25);
    EXPECT_EQ(drill_figure(table, Of::width_least), 0.0005);
    EXPECT_EQ(drill_figure(table, Of::pass_mark), 0.7);
    for (const DrillScore& row : table.rows) EXPECT_EQ(row.source, "common-practice") << row.id;
}

TEST(DrillScores, NameEachFaultWithItsPlace) {
    EXPECT_TRUE(has_fault(faults("  - {id: fuond, points: 4, text: t, source: s}\n"), {5, 10}, "unknown id \"fuond\"", "found"));
    EXPECT_TRUE(
        has_fault(faults("  - {id: found, share: 4 %, text: t, source: s}\n"), {5, 24}, "share says nothing here", "points"));
    EXPECT_TRUE(has_fault(faults("  - {id: near, text: t, source: s}\n"), {5, 5}, "figure has no length", "add length"));
    EXPECT_TRUE(has_fault(faults("  - {id: found, points: -4, text: t, source: s}\n"), {5, 25}, "points", ""));
    EXPECT_TRUE(has_fault(faults("  - {id: found, points: 4, text: t, source: s}\n"), {0, 0}, "no row for width", "add one"));
}

}  // namespace
}  // namespace seamward::test
