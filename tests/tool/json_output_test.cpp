// SPDX-License-Identifier: GPL-3.0-or-later
// With --json, standard output is one JSON document and nothing else, whatever the exit code.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "base/document.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/document_text.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

const std::string program = shell_word(SEAMWARD_PROGRAM);
const std::filesystem::path source_folder = SEAMWARD_SOURCE_FOLDER;

void expect_one_json_document(const Ran& ran, const std::string& what) {
    const auto faults = faults_of([&] { (void)parse_json(ran.out, "standard output"); });
    EXPECT_TRUE(faults.empty()) << what << listing(faults) << '\n' << ran.out.substr(0, 400);
    EXPECT_TRUE(ran.out.starts_with('{') && ran.out.ends_with("}\n")) << what << '\n' << ran.out.substr(0, 400);
}

std::vector<std::filesystem::path> jobs() {
    std::vector<std::filesystem::path> paths;
    for (const char* folder : {"tests/tool/jobs", "scenarios"}) {
        for (const auto& entry : std::filesystem::directory_iterator(source_folder / folder)) paths.push_back(entry.path());
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

TEST(JsonOutput, OfEveryJobIsOneDocument) {
    ASSERT_GE(jobs().size(), 20U);
    for (const std::filesystem::path& job : jobs()) {
        const Ran ran = run_shell(program + " trace " + shell_word(job.string()) + " --json");
        expect_one_json_document(ran, job.string());
        EXPECT_TRUE(ran.exit_code == 0 || ran.exit_code == 1) << job;
        const Document answer = parse_json(ran.out, "answer");
        EXPECT_EQ(value_of(answer.root(), "paths").present(), ran.exit_code == 0) << job;
        EXPECT_EQ(value_of(answer.root(), "errors").present(), ran.exit_code == 1) << job;
    }
}

TEST(JsonOutput, OfEveryPlanIsOneDocument) {
    for (const std::filesystem::path& job : jobs()) {
        const Ran ran = run_shell(program + " plan " + shell_word(job.string()) + " --against bark-scorpion --json");
        expect_one_json_document(ran, job.string());
        EXPECT_TRUE(ran.exit_code == 0 || ran.exit_code == 1 || ran.exit_code == 3) << job << ran.err;
        const Document answer = parse_json(ran.out, "answer");
        EXPECT_EQ(value_of(answer.root(), "feasible").present(), ran.exit_code != 1) << job;
        EXPECT_EQ(value_of(answer.root(), "steps").present(), ran.exit_code == 0) << job;
        EXPECT_EQ(value_of(answer.root(), "open_path").present(), ran.exit_code == 3) << job;
    }
}

TEST(JsonOutput, OfEveryQuoteIsOneDocument) {
    for (const std::filesystem::path& job : jobs()) {
        const Ran ran = run_shell(program + " quote " + shell_word(job.string()) + " --against bark-scorpion --json");
        expect_one_json_document(ran, job.string());
        EXPECT_TRUE(ran.exit_code == 0 || ran.exit_code == 1 || ran.exit_code == 3) << job << ran.err;
        const Document answer = parse_json(ran.out, "answer");
        EXPECT_EQ(value_of(answer.root(), "options").present(), ran.exit_code != 1) << job;
        EXPECT_EQ(value_of(answer.root(), "errors").present(), ran.exit_code == 1) << job;
    }
}

TEST(JsonOutput, OfFaultsHasTheirPlaces) {
    const Ran ran =
        run_shell("cd " + shell_word(source_folder.string()) + " && " + program + " trace tests/tool/jobs/faults.yaml --json");
    EXPECT_EQ(ran.exit_code, 1);
    const Document answer = parse_json(ran.out, "answer");
    const Node first = item_of(value_of(answer.root(), "errors"), 0);
    EXPECT_EQ(value_of(first, "file").text(), "tests/tool/jobs/faults.yaml");
    EXPECT_EQ(value_of(first, "line").text(), "5");
    EXPECT_EQ(value_of(first, "column").text(), "25");
    EXPECT_EQ(value_of(first, "what").text(), "unknown kind \"livin\"");
    EXPECT_EQ(value_of(first, "mend").text(), "did you mean living?");
}

TEST(JsonOutput, OfWrongUsageIsOneDocument) {
    const std::string job = shell_word((source_folder / "tests/tool/jobs/one.yaml").string());
    for (const std::string& arguments : {std::string("--json"), std::string("trace --json"), "trace --json " + job + " --top 0",
                                         "trace " + job + " --json --pest zebra", "trcae " + job + " --json"}) {
        const Ran ran = run_shell(program + ' ' + arguments);
        EXPECT_EQ(ran.exit_code, 2) << arguments;
        expect_one_json_document(ran, arguments);
        EXPECT_FALSE(ran.err.empty()) << arguments;
    }
}

/// Text of a hostile file stands in the answer; the answer is JSON all the same, in UTF-8 (RFC 8259, section 8.1).
TEST(JsonOutput, IsUtf8WhateverIsInTheFile) {
    const ScratchFolder folder;
    const std::string spaces = "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]\n";
    std::string accents;
    for (int i = 0; i < 100; ++i) accents += "é";
    const std::filesystem::path files[] = {
        folder.write("key.yaml", spaces + accents + ": 1\n"),
        folder.write("odd-key.yaml", spaces + 'x' + accents + ": 1\n"),
        folder.write("unit.yaml", spaces + "gaps: [{id: g, between: [yard, kitchen], hole: {diameter: 5 " + accents + "}}]\n"),
        folder.write("odd-unit.yaml",
                     spaces + "gaps: [{id: g, between: [yard, kitchen], hole: {diameter: 5 x" + accents + "}}]\n"),
        folder.write("cost.yaml", spaces + "gaps: [{id: g, between: [yard, kitchen], hole: {diameter: 5 mm}, closing: {cost: $" +
                                      accents + "}}]\n"),
        folder.write(
            "odd-cost.yaml",
            spaces + "gaps: [{id: g, between: [yard, kitchen], hole: {diameter: 5 mm}, closing: {cost: $x" + accents + "}}]\n"),
        folder.write("version.yaml", "seamward: " + accents + '\n'),
        folder.write("odd-version.yaml", "seamward: x" + accents + '\n'),
        folder.write("latin-1.yaml", "seamward: 1\njob: {name: \"caf\xE9\"}\n"),
        folder.write("latin-1.json", "{\"seamward\": 1, \"job\": {\"name\": \"caf\xE9\"}}"),
        folder.write("surrogate.json",
                     R"({"seamward": 1, "spaces": [{"id": "a\udfe0", "kind": "outdoors"}, {"id": "b", "kind": "living"}],
            "gaps": [{"id": "g", "between": ["a\udfe0", "b"], "hole": {"diameter": "5 mm"}}]})"),
        folder.write("escapes.yaml",
                     spaces + "gaps: [{id: \"a\\nb \\\" \\u2028 \\x85\", between: [yard, kitchen], hole: {diameter: 5 mm}}]\n"),
        folder.write("zero.yaml", spaces + std::string("gaps: []\n\0\n", 11)),
        folder.write("name-\xFF.yaml", "seamward: 2\n")};
    for (const std::filesystem::path& file : files) {
        expect_one_json_document(run_shell(program + " trace " + shell_word(file.string()) + " --json"),
                                 file.filename().string());
    }
}

TEST(JsonOutput, KeepsNamesOfAnyScript) {
    const Ran ran =
        run_shell(program + " trace " + shell_word((source_folder / "tests/tool/jobs/names.yaml").string()) + " --json");
    EXPECT_EQ(ran.exit_code, 0);
    const Document answer = parse_json(ran.out, "answer");
    const Node paths = value_of(answer.root(), "paths");
    ASSERT_EQ(paths.size(), 3U);
    EXPECT_EQ(value_of(item_of(paths, 0), "pinch_gap").text(), "3/8\" hole");
    EXPECT_EQ(value_of(item_of(paths, 0), "to").text(), "12");
    EXPECT_EQ(value_of(item_of(paths, 1), "pinch_gap").text(), "🕳");
    EXPECT_EQ(value_of(item_of(paths, 1), "from").text(), "двор");
    EXPECT_EQ(value_of(item_of(paths, 2), "pinch_gap").text(), "~");
    EXPECT_EQ(value_of(item_of(paths, 2), "to").text(), "no");
}

}  // namespace
}  // namespace seamward::test
