// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "base/file_io.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

/// The fenced block after `mark`, without its fences; `after` is moved behind it.
std::string block_after(const std::string& page, const std::string& mark, std::size_t& after) {
    const std::size_t fence = page.find("```", page.find(mark, after));
    const std::size_t begin = page.find('\n', fence) + 1;
    const std::size_t end = page.find("```", begin);
    after = end + 3;
    return page.substr(begin, end - begin);
}

/// What README shows as a survey and as its answer is what the program says.
TEST(Readme, TheSurveyInTenLinesIsAnsweredAsShown) {
    const std::filesystem::path readme = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "README.md";
    const std::string page = read_file(readme, readme.string(), 1 << 20);
    std::size_t at = 0;
    const std::string survey = block_after(page, "## A survey in ten lines", at);
    const std::string answer = block_after(page, "answers:", at);
    const ScratchFolder folder;
    folder.write("kitchen.yaml", survey);
    const Ran ran =
        run_shell("cd " + shell_word(folder.path().string()) + " && " + shell_word(SEAMWARD_PROGRAM) + " trace kitchen.yaml");
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out, answer);
}

}  // namespace
}  // namespace seamward::test
