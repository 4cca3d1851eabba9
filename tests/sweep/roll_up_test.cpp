// SPDX-License-Identifier: GPL-3.0-or-later
// What the roll-ups say, counted again from the rows by other means.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <set>

#include "tests/sweep/sweep_results.h"

namespace seamward::test {
namespace {

long cents(const std::string& text) {
    std::string digits = text;
    std::erase(digits, '.');
    return std::strtol(digits.c_str(), nullptr, 10);
}

class RollUpOf100 : public testing::Test {
protected:
    static void SetUpTestSuite() {
        all = new Subdivision(100, 51, 5);
        all->sweep("plan", "out", "--threads 2");
    }
    static void TearDownTestSuite() {
        delete all;
        all = nullptr;
    }
    static std::vector<CsvRow> table(const std::string& name) { return read_csv_file(all->path("out/" + name)); }

    static Subdivision* all;
};

Subdivision* RollUpOf100::all = nullptr;

TEST_F(RollUpOf100, CostsAreThoseOfTheRows) {
    std::map<std::pair<std::string, std::string>, std::vector<long>> costs;
    std::map<std::pair<std::string, std::string>, std::map<std::string, int>> results;
    for (const CsvRow& row : table("lots.csv")) {
        const std::pair key(row.at("plan"), row.at("option"));
        ++results[key][row.at("result")];
        if (row.at("result") == "open") costs[key].push_back(cents(row.at("cost")));
    }
    const std::vector<CsvRow> sums = table("costs.csv");
    ASSERT_EQ(sums.size(), results.size());
    for (const CsvRow& sum : sums) {
        const std::pair key(sum.at("plan"), sum.at("option"));
        std::map<std::string, int>& counts = results[key];
        EXPECT_EQ(sum.at("lots"), std::to_string(counts["open"] + counts["shut"] + counts["no-plan"] + counts["error"]));
        EXPECT_EQ(sum.at("open"), std::to_string(counts["open"] + counts["no-plan"]));
        EXPECT_EQ(sum.at("no_plan"), std::to_string(counts["no-plan"]));
        EXPECT_EQ(sum.at("errors"), std::to_string(counts["error"]));
        std::vector<long>& amounts = costs[key];
        if (amounts.empty()) {
            EXPECT_EQ(sum.at("cost_sum"), "");
            continue;
        }
        std::sort(amounts.begin(), amounts.end());
        long total = 0;
        for (const long amount : amounts) total += amount;
        EXPECT_EQ(cents(sum.at("cost_least")), amounts.front());
        EXPECT_EQ(cents(sum.at("cost_median")), amounts[(amounts.size() - 1) / 2]);
        EXPECT_EQ(cents(sum.at("cost_most")), amounts.back());
        EXPECT_EQ(cents(sum.at("cost_sum")), total);
    }
}

TEST(RollUp, HasNoCostsWhereNothingWasPlanned) {
    const Subdivision all(12, 23);
    for (const char* work : {"trace", "audit"}) {
        all.sweep(work, work);
        int open = 0;
        for (const CsvRow& row : read_csv_file(all.path(std::string(work) + "/costs.csv"))) {
            open += std::stoi(row.at("open"));
            for (const char* column : {"cost_least", "cost_median", "cost_most", "cost_sum"}) EXPECT_EQ(row.at(column), "");
        }
        EXPECT_GT(open, 0) << work;
    }
    // A vent whose screen fails a rule is a vent all the same.
    std::map<std::string, std::set<std::string>> stays;
    for (const CsvRow& row : read_csv_file(all.path("audit/details.csv"))) stays[row.at("feature")].insert(row.at("stays_open"));
    EXPECT_EQ(stays["gable-vent"], (std::set<std::string>{"yes"}));
    EXPECT_EQ(stays["sill-plate-joint"], (std::set<std::string>{""}));
}

TEST_F(RollUpOf100, DetailsAddUpToThePlans) {
    std::map<std::string, std::map<std::string, int>> closed;
    std::map<std::string, long> of_rows, of_details;
    std::map<std::string, std::set<std::string>> leaking;
    for (const CsvRow& row : table("lots.csv")) {
        of_rows[row.at("plan")] += cents(row.at("cost"));
        std::string word;
        for (const char letter : row.at("closings") + " ") {
            if (letter != ' ') {
                word += letter;
            } else if (!word.empty()) {
                ++closed[row.at("plan")][word.substr(0, word.find(':'))];
                word.clear();
            }
        }
    }
    for (const CsvRow& row : table("details.csv")) {
        of_details[row.at("plan")] += cents(row.at("cost_sum"));
        EXPECT_EQ(row.at("closed"), std::to_string(closed[row.at("plan")][row.at("detail")])) << row.at("detail");
        EXPECT_TRUE(leaking[row.at("plan")].insert(row.at("detail")).second) << "one row a detail";
        EXPECT_LE(std::stoi(row.at("closed")), std::stoi(row.at("leaks")));
        EXPECT_LE(std::stoi(row.at("leaks")), std::stoi(row.at("lots")));
    }
    for (const auto& [plan, sum] : of_details) EXPECT_EQ(sum, of_rows[plan]) << plan;
    for (const auto& [plan, gaps] : closed) {
        for (const auto& [gap, count] : gaps) EXPECT_TRUE(leaking[plan].contains(gap)) << "what is closed leaks: " << gap;
    }
}

TEST_F(RollUpOf100, DetailsComeWithMostLeaksFirst) {
    std::string plan;
    int before = 0;
    for (const CsvRow& row : table("details.csv")) {
        const int leaks = std::stoi(row.at("leaks"));
        EXPECT_TRUE(row.at("plan") > plan || (row.at("plan") == plan && leaks <= before)) << row.at("detail");
        plan = row.at("plan");
        before = leaks;
    }
}

TEST_F(RollUpOf100, SqliteHasTheSameRows) {
    const std::filesystem::path file = all->path("out/sweep.sqlite");
    EXPECT_EQ(query(file, "PRAGMA integrity_check")[0][0], "ok");
    EXPECT_EQ(query(file, "PRAGMA foreign_key_check").size(), 0U);
    const auto rows = query(file, "SELECT file, result, error, cost_cents, steps, \"option\" FROM lots ORDER BY file");
    const std::vector<CsvRow> csv = table("lots.csv");
    ASSERT_EQ(rows.size(), csv.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i][0], csv[i].at("file"));
        EXPECT_EQ(rows[i][1], csv[i].at("result"));
        EXPECT_EQ(rows[i][2], csv[i].at("error"));
        EXPECT_EQ(std::strtol(rows[i][3].c_str(), nullptr, 10), cents(csv[i].at("cost")));
        EXPECT_EQ(std::strtod(rows[i][4].c_str(), nullptr), std::strtod(csv[i].at("steps").c_str(), nullptr));
        EXPECT_EQ(rows[i][5], csv[i].at("option"));
    }
    for (const CsvRow& row : table("details.csv")) {
        const auto worst =
            query(file, "SELECT max(k.width_mm), count(*) FROM leaks k JOIN details d ON d.id = k.detail WHERE d.detail = '" +
                            row.at("detail") + "' AND d.plan = '" + row.at("plan") + "'");
        ASSERT_EQ(worst.size(), 1U);
        EXPECT_NEAR(std::strtod(worst[0][0].c_str(), nullptr), std::strtod(row.at("widest_mm").c_str(), nullptr), 1e-6);
        EXPECT_EQ(worst[0][1], row.at("leaks"));
    }
}

}  // namespace
}  // namespace seamward::test
