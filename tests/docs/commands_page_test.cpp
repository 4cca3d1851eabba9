// SPDX-License-Identifier: GPL-3.0-or-later
// What docs/commands.md and docs/job-file.md show of the program is what the program says.
#include <gtest/gtest.h>

#include <filesystem>
#include <set>

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

/// The page's second job is on the house that its page shows.
TEST(JobFilePage, ShowsAJobOnAHouse) {
    const std::string text = page("docs/job-file.md"), houses = page("docs/house-file.md");
    std::size_t at = 0, house_at = 0;
    const ScratchFolder folder;
    folder.write("larkspur.yaml", block_after(houses, "# The house file", house_at));
    folder.write("job.yaml", block_after(text, "only says what it adds", at));
    const Ran ran = trace_in(folder.path().string(), "job.yaml");
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out.substr(0, ran.out.find('\n')), "Larkspur Court 4, second visit");
    EXPECT_NE(ran.out.find("(1 closed already)"), std::string::npos) << ran.out;
}

/// A folder with the scenarios and models that ship, where commands may write.
struct Workshop {
    Workshop() {
        for (const char* name : {"scenarios", "models"})
            std::filesystem::create_directory_symlink(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / name, folder.path() / name);
    }
    ScratchFolder folder;
};

/// Commands that the page lists do what they say: every one is understood.
TEST(CommandsPage, ListsCommandsThatWork) {
    const std::string text = page("docs/commands.md");
    const Workshop workshop;
    const std::string mock_up = shell_word((workshop.folder.path() / "mock-up.glb").string());
    const Ran exported = run_shell("cd " + shell_word(SEAMWARD_SOURCE_FOLDER) + " && " + shell_word(SEAMWARD_PROGRAM) +
                                   " export scenarios/wall-corner.yaml -o " + mock_up);
    EXPECT_EQ(exported.exit_code, 0) << exported.err;
    for (const char* section :
         {"trace", "quote", "completion", "worksheet", "audit", "find", "picture", "export", "lots", "sweep"}) {
        std::size_t at = text.find("\n## " + std::string(section) + '\n');
        const std::string commands = block_after(text, "| `-", at);
        std::size_t count = 0;
        for (std::size_t begin = 0; begin < commands.size(); begin = commands.find('\n', begin) + 1, ++count) {
            const std::string command = commands.substr(begin, commands.find('\n', begin) - begin);
            ASSERT_TRUE(command.starts_with("seamward " + std::string(section))) << command;
            const Ran ran = run_shell("cd " + shell_word(workshop.folder.path().string()) + " && " +
                                      shell_word(SEAMWARD_PROGRAM) + command.substr(std::string("seamward").size()));
            const bool draws_none = ran.err.find("without pictures") != std::string::npos;
            EXPECT_TRUE(ran.exit_code == 0 || draws_none) << command << '\n' << ran.err;
            const std::size_t file = command.find(" -o ");
            if (file == std::string::npos || draws_none) continue;
            const std::string name = command.substr(file + 4, command.find(' ', file + 4) - file - 4);
            EXPECT_TRUE(std::filesystem::exists(workshop.folder.path() / name)) << command;
        }
        EXPECT_GE(count, 2U) << section;
    }
    EXPECT_TRUE(std::filesystem::exists(workshop.folder.path() / "house.mtl"));
}

/// The words of a text that begin with two hyphens.
std::set<std::string> options_in(const std::string& text) {
    std::set<std::string> options;
    for (std::size_t at = text.find("--"); at != std::string::npos; at = text.find("--", at + 2)) {
        const std::size_t end = text.find_first_not_of("abcdefghijklmnopqrstuvwxyz-", at);
        if (end > at + 2) options.insert(text.substr(at, end - at));
    }
    return options;
}

/// Each command's table has the options of its help, no more and no fewer.
TEST(CommandsPage, ListsTheOptionsOfTheHelp) {
    const std::string text = page("docs/commands.md");
    for (const std::string command :
         {"trace", "quote", "completion", "worksheet", "audit", "find", "picture", "export", "lots", "sweep"}) {
        std::set<std::string> help = options_in(run_shell(shell_word(SEAMWARD_PROGRAM) + ' ' + command + " --help").out);
        EXPECT_EQ(help.erase("--help"), 1U);
        std::set<std::string> listed;
        for (const auto& [option, cells] : table_below(text, "## " + command)) listed.merge(options_in(option));
        EXPECT_EQ(listed, help) << command;
    }
}

}  // namespace
}  // namespace seamward::test
