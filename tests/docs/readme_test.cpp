// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tests/docs/page.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

/// What README shows as a survey and as its answer is what the program says.
TEST(Readme, TheSurveyInTenLinesIsAnsweredAsShown) {
    const std::string readme = page("README.md");
    std::size_t at = 0;
    const std::string survey = block_after(readme, "## A survey in ten lines", at);
    const std::string answer = block_after(readme, "answers:", at);
    const ScratchFolder folder;
    folder.write("kitchen.yaml", survey);
    const Ran ran =
        run_shell("cd " + shell_word(folder.path().string()) + " && " + shell_word(SEAMWARD_PROGRAM) + " trace kitchen.yaml");
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out, answer);
}

}  // namespace
}  // namespace seamward::test
