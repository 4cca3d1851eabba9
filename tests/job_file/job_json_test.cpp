// SPDX-License-Identifier: GPL-3.0-or-later
// A job in JSON is the same job.
#include "job_file/job_json.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "base/document.h"
#include "base/file_io.h"
#include "job_file/job.h"

namespace seamward::test {
namespace {

/// The same values in the same order; numbers and truths may be written otherwise.
void expect_same(Node a, Node b) {
    ASSERT_EQ(a.is_null(), b.is_null()) << a.place().line;
    ASSERT_EQ(a.is_scalar(), b.is_scalar()) << a.place().line;
    ASSERT_EQ(a.size(), b.size()) << a.place().line;
    if (a.is_scalar()) {
        EXPECT_EQ(a.text(), b.text());
    }
    std::vector<Node> of_b, keys_of_b;
    if (a.is_mapping()) {
        b.for_each_pair([&](Node key, Node value) {
            keys_of_b.push_back(key);
            of_b.push_back(value);
        });
        std::size_t i = 0;
        a.for_each_pair([&](Node key, Node value) {
            EXPECT_EQ(key.text(), keys_of_b[i].text());
            expect_same(value, of_b[i++]);
        });
    } else {
        b.for_each_item([&](Node item) { of_b.push_back(item); });
        std::size_t i = 0;
        a.for_each_item([&](Node item) { expect_same(item, of_b[i++]); });
    }
}

TEST(JobJson, HoldsAllOfEveryScenario) {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios")) {
        if (entry.path().extension() != ".yaml") continue;
        SCOPED_TRACE(entry.path().string());
        const std::string text = read_file(entry.path(), "job", Document::most_bytes);
        const std::string json = job_as_json(text, entry.path());
        expect_same(parse_yaml(text, "job.yaml").root(), parse_json(json, "job.json").root());
        std::filesystem::path beside = entry.path();
        beside.replace_extension(".json");  // need not exist; the house is found from its folder
        const Job job = parse_job(text, entry.path()), again = parse_job(json, beside);
        EXPECT_EQ(again.survey.gaps.size(), job.survey.gaps.size());
        EXPECT_EQ(again.pests.size(), job.pests.size());
        EXPECT_EQ(again.closed.size(), job.closed.size());
        for (std::size_t i = 0; i < job.survey.gaps.size(); ++i)
            EXPECT_EQ(clear_width(again.survey.gaps[i].shape), clear_width(job.survey.gaps[i].shape));
        EXPECT_EQ(job_as_json(json, beside), json);  // JSON stays as it is
        ++files;
    }
    EXPECT_GE(files, 6U);
}

TEST(JobJson, KeepsWhatLooksLikeSomethingElse) {
    const std::string text =
        "seamward: 1\n"
        "job: {name: \"1\", address: ~, notes: \"a\\nb \\u202E <script>\"}\n"
        "spaces:\n"
        "  - {id: &yard 007, kind: outdoors}\n"
        "  - {id: no, kind: living, source: false}\n"
        "gaps: [{id: 12345678901234567890, between: [*yard, no], hole: {diameter: 5 mm}, count: 30}]\n";
    const Job job = parse_job(text, "job.yaml"), again = parse_job(job_as_json(text, "job.yaml"), "job.json");
    EXPECT_EQ(again.name, "1");
    EXPECT_EQ(again.notes, job.notes);
    EXPECT_EQ(again.survey.spaces[0].id, "007");
    EXPECT_EQ(again.survey.spaces[1].id, "no");
    EXPECT_EQ(again.survey.gaps[0].id, "12345678901234567890");
    EXPECT_EQ(again.survey.gaps[0].count, 30U);
}

}  // namespace
}  // namespace seamward::test
