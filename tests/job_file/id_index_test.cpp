// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/id_index.h"

#include <gtest/gtest.h>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/document_text.h"

namespace seamward::test {
namespace {

TEST(IdIndex, FindsPositionsInTheOrderOfAdding) {
    IdIndex ids(3);
    EXPECT_TRUE(ids.add("yard"));
    EXPECT_TRUE(ids.add("wall"));
    EXPECT_TRUE(ids.add("kitchen"));
    EXPECT_EQ(ids.find("yard"), 0U);
    EXPECT_EQ(ids.find("wall"), 1U);
    EXPECT_EQ(ids.find("kitchen"), 2U);
    EXPECT_EQ(ids.find("attic"), std::nullopt);
    EXPECT_EQ(ids.find(""), std::nullopt);
}

TEST(IdIndex, KeepsTheFirstOfARepeatedIdAndCountsTheRest) {
    IdIndex ids(0);
    EXPECT_TRUE(ids.add("a"));
    EXPECT_FALSE(ids.add("a"));
    EXPECT_FALSE(ids.add("a"));
    EXPECT_TRUE(ids.add("b"));
    EXPECT_EQ(ids.find("a"), 0U);
    EXPECT_EQ(ids.find("b"), 3U);
}

TEST(IdIndex, TellsIdsApartToTheLetter) {
    IdIndex ids(3);
    for (const char* id : {"Wall", "wall", "wall ", "12", "012", "~"}) EXPECT_TRUE(ids.add(id)) << id;
    EXPECT_EQ(ids.find("WALL"), std::nullopt);
    EXPECT_EQ(ids.find("012"), 4U);
}

TEST(IdIndex, ResolvesANodeOrNamesTheNearest) {
    IdIndex ids(2);
    ids.add("north-wall");
    ids.add("kitchen");
    const Document document = parse_yaml("[kitchen, north-wal, zebra, [x], ~]", "f.yaml");
    Diagnostics diagnostics("f.yaml");
    EXPECT_EQ(ids.resolve(item_of(document.root(), 0), "space", diagnostics), 1U);
    EXPECT_TRUE(diagnostics.empty());
    for (std::size_t i = 1; i < 5; ++i)
        EXPECT_EQ(ids.resolve(item_of(document.root(), i), "space", diagnostics), std::nullopt) << i;
    const auto faults = faults_in(diagnostics);
    EXPECT_EQ(faults.size(), 4U);
    EXPECT_TRUE(has_fault(faults, {1, 11}, "unknown space \"north-wal\"", "did you mean north-wall?"));
    EXPECT_TRUE(has_fault(faults, {1, 22}, "unknown space \"zebra\"", "kitchen, north-wall"));
    EXPECT_TRUE(has_fault(faults, {1, 29}, "space holds a list", ""));
    EXPECT_TRUE(has_fault(faults, {1, 34}, "space holds nothing", ""));
}

}  // namespace
}  // namespace seamward::test
