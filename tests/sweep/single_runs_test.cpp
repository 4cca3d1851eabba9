// SPDX-License-Identifier: GPL-3.0-or-later
// Rows say what single runs of the other commands say, number for number.
#include <gtest/gtest.h>
#include <rapidjson/document.h>

#include <cstdlib>

#include "tests/sweep/sweep_results.h"

namespace seamward::test {
namespace {

using Json = rapidjson::Value;

std::string joined(const Json& ids) {
    std::string text;
    for (const Json& id : ids.GetArray()) text += (text.empty() ? "" : " ") + std::string(id.GetString());
    return text;
}

double number(const CsvRow& row, const char* column) { return std::strtod(row.at(column).c_str(), nullptr); }

rapidjson::Document answer_of(const Subdivision& all, const std::string& arguments, const CsvRow& row) {
    const Ran ran = all.run(arguments);
    rapidjson::Document document;
    document.Parse(ran.out.c_str());
    EXPECT_FALSE(document.HasParseError()) << arguments << ran.err;
    if (row.at("result") == "error") {
        EXPECT_EQ(ran.exit_code, 1) << arguments;
        std::string lines = ran.err.substr(0, ran.err.size() - 1);
        for (std::size_t at = lines.find('\n'); at != std::string::npos; at = lines.find('\n', at)) lines.replace(at, 1, " | ");
        EXPECT_EQ(row.at("error"), lines);
    }
    return document;
}

void expect_trace(const CsvRow& row, const Json& answer) {
    const auto paths = answer["paths"].GetArray();
    EXPECT_EQ(row.at("result"), paths.Empty() ? "shut" : "open");
    if (!paths.Empty()) {
        const Json& best = paths[0];
        EXPECT_NEAR(number(row, "pinch_mm"), best["pinch_mm"].GetDouble(), 1e-6);
        EXPECT_EQ(row.at("pinch_gap"), best["pinch_gap"].GetString());
        EXPECT_EQ(row.at("from"), best["from"].GetString());
        EXPECT_EQ(row.at("to"), best["to"].GetString());
        EXPECT_EQ(row.at("way"), joined(best["gaps"]));
        EXPECT_EQ(row.at("open_to"), joined(best["open_to"]));
        EXPECT_EQ(row.at("maybe"), best.HasMember("maybe") ? "yes" : "");
    }
    int open = 0;
    for (const Json& room : answer["rooms"].GetArray()) open += room["pinch_mm"].IsNull() ? 0 : 1;
    EXPECT_EQ(number(row, "rooms"), answer["rooms"].Size());
    EXPECT_EQ(number(row, "rooms_open"), open);
    EXPECT_EQ(number(row, "gaps_on_ways") > 0, !paths.Empty());
}

void expect_plan(const CsvRow& row, const Json& answer) {
    EXPECT_EQ(number(row, "refused"), answer["refused"].Size());
    if (!answer["feasible"].GetBool()) {
        EXPECT_EQ(row.at("result"), "no-plan");
        EXPECT_EQ(row.at("cost"), "");
        EXPECT_NEAR(number(row, "open_pinch_mm"), answer["open_path"]["pinch_mm"].GetDouble(), 1e-6);
        EXPECT_EQ(row.at("open_pinch_gap"), answer["open_path"]["pinch_gap"].GetString());
        EXPECT_EQ(row.at("open_way"), joined(answer["open_path"]["gaps"]));
        return;
    }
    EXPECT_EQ(row.at("result"), answer["steps"].Empty() ? "shut" : "open");
    EXPECT_NEAR(number(row, "cost"), answer["cost"].GetDouble(), 1e-9);
    EXPECT_NEAR(number(row, "minutes"), answer["minutes"].GetDouble(), 1e-6);
    EXPECT_EQ(number(row, "steps"), answer["steps"].Size());
    EXPECT_EQ(row.at("proof"), answer["proof"]["kind"].GetString());
    EXPECT_NEAR(number(row, "lower_bound"), answer["proof"]["lower_bound"].GetDouble(), 1e-9);
    std::string closings;
    for (const Json& step : answer["steps"].GetArray())
        closings += (closings.empty() ? "" : " ") + std::string(step["gap"].GetString()) + ':' + step["treatment"].GetString();
    EXPECT_EQ(row.at("closings"), closings);
}

TEST(SingleRuns, TraceSaysTheSameOfEveryLot) {
    const Subdivision all(60, 21, 6);
    all.sweep("trace", "out", "--against bark-scorpion --against house-mouse");
    const std::vector<CsvRow> rows = read_csv_file(all.path("out/lots.csv"));
    ASSERT_EQ(rows.size(), 60U);
    for (const CsvRow& row : rows) {
        SCOPED_TRACE(row.at("file"));
        const auto answer =
            answer_of(all, "trace lots/" + row.at("file") + " --json --pest bark-scorpion --pest house-mouse", row);
        if (row.at("result") != "error") expect_trace(row, answer);
    }
}

TEST(SingleRuns, PlanSaysTheSameOfEveryLot) {
    const Subdivision all(60, 22, 6);
    all.sweep("plan", "out");
    const std::vector<CsvRow> rows = read_csv_file(all.path("out/lots.csv"));
    ASSERT_EQ(rows.size(), 60U);
    for (const CsvRow& row : rows) {
        SCOPED_TRACE(row.at("file"));
        const auto answer = answer_of(all, "plan lots/" + row.at("file") + " --json --on 2026-06-15", row);
        if (row.at("result") != "error") expect_plan(row, answer);
    }
}

TEST(SingleRuns, AuditSaysTheSame) {
    const Subdivision all(12, 23, 2);
    all.sweep("audit", "out");
    for (const CsvRow& row : read_csv_file(all.path("out/lots.csv"))) {
        SCOPED_TRACE(row.at("file"));
        const auto answer = answer_of(all, "audit lots/" + row.at("file") + " --json --on 2026-06-15", row);
        if (row.at("result") == "error") continue;
        std::map<std::string, int> counts;
        std::string failed;
        for (const Json& rule : answer["rules"].GetArray()) {
            ++counts[rule["result"].GetString()];
            if (std::string(rule["result"].GetString()) == "fail")
                failed += (failed.empty() ? "" : " ") + std::string(rule["id"].GetString());
        }
        for (const char* verdict : {"pass", "fail", "unknown"}) EXPECT_EQ(number(row, verdict), counts[verdict]) << verdict;
        EXPECT_EQ(number(row, "not_applicable"), counts["not-applicable"]);
        EXPECT_EQ(row.at("failed"), failed);
        EXPECT_EQ(number(row, "findings"), answer["findings"].Size());
    }
}

TEST(SingleRuns, PlanHasOneNameHoweverItIsSpelled) {
    const Subdivision all(1, 1);
    const std::string whole = std::filesystem::canonical(all.path("lots/plans/larkspur.yaml")).string();
    std::ofstream(all.path("a.yaml")) << "seamward: 1\nhouse: lots/plans/larkspur.yaml\n";
    std::ofstream(all.path("b.yaml")) << "seamward: 1\nhouse: ./lots/../lots/plans/larkspur.yaml\n";
    std::ofstream(all.path("c.yaml")) << "seamward: 1\nhouse: " << whole << '\n';
    std::ofstream(all.path("list.txt")) << "a.yaml\nb.yaml\nc.yaml\n";
    const std::string list = (std::filesystem::canonical(all.path("")) / "list.txt").string();
    for (const std::string& spelled : {std::string("list.txt"), std::string("lots/../list.txt"), list}) {
        const Ran ran = all.run("sweep " + shell_word(spelled) + " --do trace -o out");
        ASSERT_EQ(ran.exit_code, 0) << ran.err;
        for (const CsvRow& row : read_csv_file(all.path("out/lots.csv")))
            EXPECT_EQ(row.at("plan"), "lots/plans/larkspur.yaml") << row.at("file") << row.at("error");
        EXPECT_EQ(read_csv_file(all.path("out/costs.csv")).size(), 1U);
        std::filesystem::remove_all(all.path("out"));
    }
}

TEST(SingleRuns, LotsWithoutAHouseAndLotsOfAListAreDoneToo) {
    const Subdivision all(1, 1);
    const std::string job =
        "seamward: 1\njob: {lot: \"A\", option: \"none\"}\nspaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]\n"
        "gaps: [{id: screed, between: [yard, kitchen], slot: {width: 1.2 mm, length: 9 m}, closing: {cost: $8.00}}]\n"
        "pests: [bark-scorpion-young]\n";
    std::ofstream(all.path("a.yaml")) << job;
    std::ofstream(all.path("list.txt")) << "a.yaml\nlots/lot-00001.yaml\nmissing.yaml\n";
    const Ran ran = all.run("sweep list.txt --do plan -o out --on 2026-06-15");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    const std::vector<CsvRow> rows = read_csv_file(all.path("out/lots.csv"));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].at("cost"), "8.00");
    EXPECT_EQ(rows[0].at("plan"), "");
    EXPECT_EQ(rows[0].at("lot"), "A");
    EXPECT_EQ(rows[0].at("option"), "none");
    EXPECT_EQ(rows[1].at("plan").substr(0, 11), "lots/plans/");
    EXPECT_EQ(rows[2].at("error"), "missing.yaml: error: no such file; check the path");
}

}  // namespace
}  // namespace seamward::test
