// SPDX-License-Identifier: GPL-3.0-or-later
// What a builder's page says of an audit is what the audit found, as a reader finds it that shares no code with what wrote it.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

struct Row {
    std::vector<std::string> cells;
};

/// Rows of the tables of rules, in the order of the page.
std::vector<Row> rule_rows(const PageElement& page) {
    const PageElement* section = page.with_id("provisions");
    std::vector<Row> rows;
    if (section == nullptr) return rows;
    for (const PageElement* line : section->named("tr")) {
        Row row;
        for (const PageElement& cell : line->children) row.cells.push_back(cell.text());
        if (!line->named("td").empty()) rows.push_back(std::move(row));
    }
    return rows;
}

bool has_row(const std::vector<Row>& rows, const std::string& name, const std::string& text) {
    return std::any_of(rows.begin(), rows.end(), [&](const Row& row) {
        return row.cells.front() == name && std::any_of(row.cells.begin() + 1, row.cells.end(), [&](const std::string& cell) {
                   return cell.find(text) != std::string::npos;
               });
    });
}

Job with_solids(const std::string& name) {
    return read_job(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios" / (name + ".yaml"), RunContext(), Make::solids);
}

class ProvisionsPart : public testing::TestWithParam<std::string> {};

TEST_P(ProvisionsPart, TellsEveryRuleThatFailedOrIsNotKnown) {
    Job job = with_solids(GetParam());
    const ReportSettings settings = settings_for(job, Audience::builder);
    const MadePage made(std::move(job), settings);
    ASSERT_TRUE(made.facts.audit.has_value());
    const std::vector<Row> rows = rule_rows(made.page);
    std::size_t told = 0;
    for (const ProvisionResult& result : made.facts.audit->results) {
        if (result.verdict == Verdict::unknown) {
            ++told;
            EXPECT_TRUE(has_row(rows, result.provision.name, result.why.english())) << result.provision.id;
        }
        if (result.verdict != Verdict::fail) continue;
        ++told;
        EXPECT_TRUE(has_row(rows, result.provision.name, result.provision.section)) << result.provision.id;
        for (const Checked& one : result.checked) {
            if (one.verdict != Verdict::fail) continue;
            EXPECT_TRUE(has_row(rows, result.provision.name, one.subject.english())) << result.provision.id;
        }
    }
    EXPECT_EQ(rows.size(), told);
    EXPECT_NE(made.page.with_id("provisions")->text().find(made.facts.audit->caution.english()), std::string::npos);
}

TEST_P(ProvisionsPart, IsForBuildersOnly) {
    Job job = scenario(GetParam());
    const ReportSettings settings = settings_for(job, Audience::homeowner);
    const MadePage made(std::move(job), settings);
    EXPECT_FALSE(made.facts.audit.has_value());
    EXPECT_EQ(made.page.with_id("provisions"), nullptr);
}

INSTANTIATE_TEST_SUITE_P(Scenarios, ProvisionsPart, testing::Values("demo", "new-build", "brick-crawl"), [](const auto& tested) {
    std::string name = tested.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

}  // namespace
}  // namespace seamward::test
