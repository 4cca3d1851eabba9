// SPDX-License-Identifier: GPL-3.0-or-later
// What docs/quotes.md shows of a quote is what the program says.
#include <gtest/gtest.h>

#include <array>

#include "plan/quote.h"
#include "tests/docs/page.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

TEST(QuotesPage, ShowsTheSumOfItsExample) {
    const std::string text = page("docs/quotes.md");
    std::size_t at = 0;
    const std::string sum = block_after(text, "An example, `seamward quote tests/tool/jobs/plan.yaml`", at);
    const Ran ran = run_shell("cd " + shell_word(SEAMWARD_SOURCE_FOLDER) + " && " + shell_word(SEAMWARD_PROGRAM) +
                              " quote tests/tool/jobs/plan.yaml");
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_NE(ran.out.find("\nWhat it costs\n" + sum), std::string::npos) << ran.out;
}

TEST(QuotesPage, ListsTheLines) {
    const auto rows = table_below(page("docs/quotes.md"), "## The sum");
    constexpr std::array charges{Charge::closings, Charge::warranty, Charge::packs,    Charge::departures,
                                 Charge::visits,   Charge::least,    Charge::overhead, Charge::tax};
    EXPECT_EQ(rows.size(), charges.size());
    for (const Charge charge : charges) EXPECT_TRUE(rows.contains(charge_id(charge))) << charge_id(charge);
}

}  // namespace
}  // namespace seamward::test
