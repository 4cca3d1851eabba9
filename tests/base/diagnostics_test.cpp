// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/diagnostics.h"

#include <gtest/gtest.h>

#include "tests/support/diagnostic_matchers.h"

namespace seamward::test {
namespace {

TEST(DiagnosticText, NamesFileLineColumnWhatAndMend) {
    EXPECT_EQ(to_text({"job.yaml", {3, 7}, "a bare number", "write 5 mm"}), "job.yaml:3:7: error: a bare number; write 5 mm");
    EXPECT_EQ(to_text({"job.yaml", {3, 7}, "a bare number", ""}), "job.yaml:3:7: error: a bare number");
    EXPECT_EQ(to_text({"job.yaml", {}, "no such file", "check the path"}), "job.yaml: error: no such file; check the path");
}

/// Text of a file must not move the cursor or begin another line of the list.
TEST(DiagnosticText, HasNoControlCharacters) {
    const std::string text = to_text({"f", {1, 1}, "unknown \"a\nb\x1b[31m\x7f\"", "remove\r\t"});
    for (const char c : text) EXPECT_TRUE(static_cast<unsigned char>(c) >= 0x20 && c != 0x7f) << text;
    EXPECT_NE(to_text({"f", {1, 1}, "unknown \"漢é\"", ""}).find("漢é"), std::string::npos);
}

TEST(Diagnostics, AreThrownInFileOrder) {
    Diagnostics diagnostics("job.yaml");
    EXPECT_TRUE(diagnostics.empty());
    diagnostics.add({9, 2}, "fourth");
    diagnostics.add({2, 5}, "second");
    diagnostics.add({2, 5}, "third");
    diagnostics.add({2, 1}, "first");
    EXPECT_FALSE(diagnostics.empty());
    EXPECT_EQ(diagnostics.file(), "job.yaml");
    const auto faults = faults_in(diagnostics);
    ASSERT_EQ(faults.size(), 4U);
    EXPECT_EQ(faults[0].what, "first");
    EXPECT_EQ(faults[1].what, "second");
    EXPECT_EQ(faults[2].what, "third");
    EXPECT_EQ(faults[3].what, "fourth");
    EXPECT_EQ(faults[3].file, "job.yaml");
}

TEST(Diagnostics, WithoutFaultsThrowNothing) {
    Diagnostics diagnostics("job.yaml");
    EXPECT_NO_THROW(diagnostics.throw_if_any());
}

TEST(BadInputMessage, HasALineForEachFault) {
    const BadInput bad({{"a.yaml", {1, 2}, "one", "mend one"}, {"a.yaml", {3, 4}, "two", ""}});
    EXPECT_STREQ(bad.what(), "a.yaml:1:2: error: one; mend one\na.yaml:3:4: error: two");
    EXPECT_EQ(bad.diagnostics().size(), 2U);
}

TEST(Diagnostics, CountWhatTheyNoLongerList) {
    Diagnostics diagnostics("job.yaml");
    const auto many = static_cast<std::uint32_t>(Diagnostics::most_listed + 25);
    for (std::uint32_t line = 1; line <= many; ++line) diagnostics.add({line, 1}, "bad");
    const auto faults = faults_in(diagnostics);
    ASSERT_EQ(faults.size(), Diagnostics::most_listed + 1);
    EXPECT_NE(faults.back().what.find("25 more"), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
