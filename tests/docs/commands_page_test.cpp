// SPDX-License-Identifier: GPL-3.0-or-later
// What docs/commands.md and docs/job-file.md show of the program is what the program says.
#include <gtest/gtest.h>

#include "tests/docs/page.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

Ran trace_in(const std::string& folder, const std::string& arguments) {
    return run_shell("cd " + shell_word(folder) + " && " + shell_word(SEAMWARD_PROGRAM) + " trace " + arguments);
}

/// A page's survey with faults, in a file of the name that its messages give.
Ran trace_survey(const std::string& name, const std::string& survey, const std::string& arguments = "") {
    const ScratchFolder folder;
    folder.write(name, survey);
    return trace_in(folder.path().string(), name + ' ' + arguments);
}

TEST(CommandsPage, ShowsTheJsonAnswer) {
    const std::string text = page("docs/commands.md");
    std::size_t at = 0;
    const std::string command = block_after(text, "### The JSON answer", at);
    const std::string answer = block_after(text, "answers", at);
    const std::string start = "seamward trace ";
    ASSERT_TRUE(command.starts_with(start)) << command;
    ASSERT_EQ(command.find('\n'), command.size() - 1) << command;
    const Ran ran = trace_in(SEAMWARD_SOURCE_FOLDER, command.substr(start.size(), command.size() - start.size() - 1));
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out, answer);
}

TEST(CommandsPage, ShowsTheErrorsInJson) {
    const std::string text = page("docs/commands.md");
    std::size_t at = text.find("### Errors");
    const std::string survey = block_after(text, "`later.yaml`", at);
    const std::string errors = block_after(text, "gives", at);
    const Ran ran = trace_survey("later.yaml", survey, "--json");
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_EQ(ran.out, errors);
}

TEST(JobFilePage, ShowsTheErrors) {
    const std::string text = page("docs/job-file.md");
    std::size_t at = text.find("## Errors");
    const std::string survey = block_after(text, "This file", at);
    const std::string errors = block_after(text, "gives", at);
    const Ran ran = trace_survey("wrong.yaml", survey);
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_EQ(ran.out, "");
    EXPECT_EQ(ran.err, errors);
}

/// The example at the head of the page is a survey without faults.
TEST(JobFilePage, ShowsASurveyThatIsRead) {
    const std::string text = page("docs/job-file.md");
    std::size_t at = 0;
    const Ran ran = trace_survey("job.yaml", block_after(text, "# The job file", at));
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out.substr(0, ran.out.find('\n')), "Larkspur Court, unit 4");
}

/// Commands that the page lists do what they say: every one is understood.
TEST(CommandsPage, ListsCommandsThatWork) {
    const std::string text = page("docs/commands.md");
    std::size_t at = text.find("## trace");
    const std::string commands = block_after(text, "job's goes first.", at);
    std::size_t count = 0;
    for (std::size_t begin = 0; begin < commands.size(); begin = commands.find('\n', begin) + 1, ++count) {
        const std::string command = commands.substr(begin, commands.find('\n', begin) - begin);
        ASSERT_TRUE(command.starts_with("seamward ")) << command;
        const Ran ran = run_shell("cd " + shell_word(SEAMWARD_SOURCE_FOLDER) + " && " + shell_word(SEAMWARD_PROGRAM) +
                                  command.substr(std::string("seamward").size()));
        EXPECT_EQ(ran.exit_code, 0) << command << '\n' << ran.err;
    }
    EXPECT_GE(count, 3U);
}

}  // namespace
}  // namespace seamward::test
