// SPDX-License-Identifier: GPL-3.0-or-later
// What the program as a whole leaves behind: exit codes, files, streams. Single command lines: command_cases.cmake.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

const std::string program = shell_word(SEAMWARD_PROGRAM);

constexpr std::string_view good_job = R"(seamward: 1
spaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]
gaps: [{id: screed, between: [yard, kitchen], slot: {width: 1.2 mm, length: 9 m}}]
)";

/// Every file of a folder with its content, as one text.
std::string content(const ScratchFolder& folder) {
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder.path())) {
        files.push_back(entry.path().string() + (entry.is_regular_file() ? '\n' + read_file(entry.path(), "", 1 << 20) : ""));
    }
    std::sort(files.begin(), files.end());
    std::string all;
    for (const std::string& file : files) all += file + '\n';
    return all;
}

TEST(Tool, ChangesNothingOnDisk) {
    const ScratchFolder folder;
    folder.write("good.yaml", good_job);
    folder.write("bad.yaml", "seamward: 2\n");
    const std::string before = content(folder);
    const auto run = [&](const std::string& arguments) {
        return run_shell("cd " + shell_word(folder.path().string()) + " && " + program + ' ' + arguments);
    };
    EXPECT_EQ(run("trace good.yaml").exit_code, 0);
    EXPECT_EQ(run("trace good.yaml --json").exit_code, 0);
    EXPECT_EQ(run("trace bad.yaml").exit_code, 1);
    EXPECT_EQ(run("trace bad.yaml --json").exit_code, 1);
    EXPECT_EQ(run("trace good.yaml --top 0").exit_code, 2);
    EXPECT_EQ(run("trace good.yaml --pest zebra").exit_code, 2);
    EXPECT_EQ(run("--help").exit_code, 0);
    EXPECT_EQ(content(folder), before);
}

TEST(Tool, KeepsItsStreamsApart) {
    const ScratchFolder folder;
    const std::string good = shell_word(folder.write("good.yaml", good_job).string());
    const std::string bad = shell_word(folder.write("bad.yaml", "seamward: 2\n").string());
    const Ran answer = run_shell(program + " trace " + good);
    EXPECT_FALSE(answer.out.empty());
    EXPECT_TRUE(answer.err.empty());
    const Ran fault = run_shell(program + " trace " + bad);
    EXPECT_TRUE(fault.out.empty());
    EXPECT_NE(fault.err.find("bad.yaml:1:11: error: "), std::string::npos) << fault.err;
    const Ran usage = run_shell(program + " trace " + good + " --top 0");
    EXPECT_TRUE(usage.out.empty());
    EXPECT_FALSE(usage.err.empty());
}

TEST(Tool, SaysTheSameInJsonAndOnStandardError) {
    const ScratchFolder folder;
    const std::string bad = shell_word(folder.write("bad.yaml", "seamward: 2\n").string());
    EXPECT_EQ(run_shell(program + " trace " + bad + " --json").err, run_shell(program + " trace " + bad).err);
}

TEST(Tool, ReadsAJobFromAPipe) {
    const ScratchFolder folder;
    const std::string good = shell_word(folder.write("good.yaml", good_job).string());
    const Ran ran = run_shell("cat " + good + " | " + program + " trace /dev/stdin --json");
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_NE(ran.out.find("\"pinch_mm\": 1.2"), std::string::npos);
}

TEST(Tool, ReadsFilesWhoseNamesHaveSpacesAndQuotes) {
    const ScratchFolder folder;
    const std::string odd = shell_word(folder.write("it's a \"job\" é.yaml", good_job).string());
    EXPECT_EQ(run_shell(program + " trace " + odd).exit_code, 0);
}

/// An answer that could not be written is no success.
TEST(Tool, FailsWhenTheAnswerCannotBeWritten) {
    if (!std::filesystem::exists("/dev/full")) GTEST_SKIP() << "no /dev/full";
    const ScratchFolder folder;
    const std::string good = shell_word(folder.write("good.yaml", good_job).string());
    EXPECT_EQ(run_shell(program + " trace " + good + " > /dev/full").exit_code, 4);
    EXPECT_EQ(run_shell(program + " trace " + good + " --json > /dev/full").exit_code, 4);
}

/// Names that a file gives are shown in messages; none of them may drive the terminal.
TEST(Tool, PrintsNoControlCharactersOfAFile) {
    const ScratchFolder folder;
    const std::string spaces = "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]\n";
    const std::filesystem::path files[] = {
        folder.write("key.yaml", spaces + "\"a\\e[31mb\\r\": 1\n"),
        folder.write("end.yaml", spaces + "gaps: [{id: g, between: [yard, \"\\e]0;x\\a\"], hole: {diameter: 5 mm}}]\n"),
        folder.write("id.yaml", spaces + "gaps: [{id: \"a\\x9b31mb\", between: [yard, kitchen], hole: {diameter: 5 mm}}]\n"),
        folder.write("lines.yaml",
                     spaces + "gaps: [{id: \"a\\nNo way in.\\nb\", between: [yard, kitchen], hole: {diameter: 5 mm}}]\n"),
        folder.write("quantity.yaml", spaces + "gaps: [{id: g, between: [yard, kitchen], hole: {diameter: \"5 \\e[31m\"}}]\n")};
    for (const std::filesystem::path& file : files) {
        const Ran ran = run_shell(program + " trace " + shell_word(file.string()));
        for (const char c : ran.out + ran.err)
            ASSERT_TRUE(static_cast<unsigned char>(c) >= 0x20 || c == '\n') << file << '\n' << ran.out << ran.err;
        EXPECT_EQ((ran.out + ran.err).find("\xC2\x9B"), std::string::npos) << file;
        EXPECT_EQ(ran.out.find("\nNo way in."), std::string::npos) << file << '\n' << ran.out;
    }
}

}  // namespace
}  // namespace seamward::test
