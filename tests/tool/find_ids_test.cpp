// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/find_ids.h"

#include <gtest/gtest.h>

#include "tool/wrong_usage.h"

namespace seamward::test {
namespace {

std::string message(const std::string& option, const std::string& id, const std::vector<std::string_view>& known) {
    try {
        fail_unknown(option, id, known);
    } catch (const WrongUsage& usage) {
        return usage.what();
    }
    return "";
}

/// Of words that several ids have, all are named, each once; also where another id differs by a letter only.
TEST(FailUnknown, NamesAllIdsThatHaveTheWord) {
    const std::vector<std::string_view> animals{"bat", "norway-rat", "roof-rat", "rattlesnake", "norway-rat"};
    EXPECT_EQ(message("--pest", "rat", animals), "--pest: unknown id \"rat\"; did you mean norway-rat or roof-rat?");
    EXPECT_EQ(message("--pest", "roof", animals), "--pest: unknown id \"roof\"; did you mean roof-rat?");
    EXPECT_EQ(message("--pest", "bta", animals), "--pest: unknown id \"bta\"; did you mean bat?");
    EXPECT_EQ(message("--pest", "a-b-c", {"a-b-c-1", "a-b-c-2", "a-b-c-3"}),
              "--pest: unknown id \"a-b-c\"; did you mean a-b-c-1, a-b-c-2 or a-b-c-3?");
}

TEST(FailUnknown, SaysWhereIdsOfThatSortStand) {
    const std::vector<std::string> ids(30, "aaaaaaaaaa");
    const std::vector<std::string_view> many(ids.begin(), ids.end());
    EXPECT_NE(message("--gap", "zzz", many).find("the house file and the job file list the gaps"), std::string::npos);
    EXPECT_NE(message("--to", "zzz", many).find("list the spaces"), std::string::npos);
    EXPECT_NE(message("--pest", "zzz", many).find("docs/catalog.md lists the animals"), std::string::npos);
    EXPECT_NE(message("--pest", "bat,rat", many).find("repeat --pest for each one"), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
