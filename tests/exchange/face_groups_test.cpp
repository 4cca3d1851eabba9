// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/face_groups.h"

#include <gtest/gtest.h>

#include "tests/exchange/sample_parts.h"

namespace seamward::test {
namespace {

TEST(FaceGroups, OrdinaryFacesComeFirstThenGapsInTheOrderOfTheSurvey) {
    Part part = part_of("box", box({0, 0, 0}, {1, 1, 1}));
    bind(part, GapIndex{2}, {0, 5});
    bind(part, GapIndex{1}, {11});
    const std::vector<FaceGroup> groups = face_groups(part);
    ASSERT_EQ(groups.size(), 3U);
    EXPECT_FALSE(groups[0].gap.valid());
    EXPECT_EQ(groups[0].triangles, (std::vector<std::size_t>{1, 2, 3, 4, 6, 7, 8, 9, 10}));
    EXPECT_EQ(groups[1].gap, GapIndex{1});
    EXPECT_EQ(groups[1].triangles, std::vector<std::size_t>{11});
    EXPECT_EQ(groups[2].gap, GapIndex{2});
    EXPECT_EQ(groups[2].triangles, (std::vector<std::size_t>{0, 5}));
}

TEST(FaceGroups, LeavesOutEmptyGroups) {
    Part part = part_of("box", box({0, 0, 0}, {1, 1, 1}));
    EXPECT_EQ(face_groups(part).size(), 1U);
    part.bounds.assign(12, GapIndex{0});
    ASSERT_EQ(face_groups(part).size(), 1U);
    EXPECT_TRUE(face_groups(part).front().gap.valid());
    EXPECT_TRUE(face_groups(Part{}).empty());
}

TEST(FaceGroups, FacesThatBoundsLeavesOutBoundNoGap) {
    Part part = part_of("box", box({0, 0, 0}, {1, 1, 1}));
    part.bounds = {GapIndex{0}};
    const std::vector<FaceGroup> groups = face_groups(part);
    ASSERT_EQ(groups.size(), 2U);
    EXPECT_EQ(groups[0].triangles.size(), 11U);
    EXPECT_EQ(groups[1].triangles, std::vector<std::size_t>{0});
}

}  // namespace
}  // namespace seamward::test
