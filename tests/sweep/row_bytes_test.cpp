// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <stdexcept>

#include "sweep/lot_row.h"

namespace seamward::test {
namespace {

LotRow sample() {
    LotRow row;
    row.file = "north/lot 1,\"x\".yaml";
    row.lot = "1";
    row.name = "Wrenfeather Terrace";
    row.plan = "plans/larkspur.yaml";
    row.option = "tile roof";
    row.result = LotResult::no_plan;
    row.cells.emplace_back();
    row.cells.emplace_back(std::string("screed door"));
    row.cells.emplace_back(1.2000000000000002);
    row.cells.emplace_back(Money{-12'345});
    row.details = {{"screed", "weep screed", "weep-screed", true, 1.2, Money{900}}, {"door", "", "", false, 0, std::nullopt}};
    row.digest = "00ff";
    row.inputs = {{"plans/larkspur.yaml", "abcd"}};
    return row;
}

TEST(RowBytes, ComeBackAsTheyWere) {
    const LotRow row = sample();
    const LotRow back = row_from_bytes(row_bytes(row));
    EXPECT_EQ(row_bytes(back), row_bytes(row));
    EXPECT_EQ(back.file, row.file);
    EXPECT_EQ(back.result, LotResult::no_plan);
    EXPECT_EQ(back.cells, row.cells);
    ASSERT_EQ(back.details.size(), 2U);
    EXPECT_TRUE(back.details[0].stays);
    EXPECT_EQ(back.details[0].cost, Money{900});
    EXPECT_FALSE(back.details[1].cost);
    EXPECT_EQ(back.inputs[0].digest, "abcd");
    EXPECT_EQ(row_bytes(row_from_bytes(row_bytes(LotRow()))), row_bytes(LotRow()));
}

TEST(RowBytes, CutOrLongerOnesAreRefused) {
    const std::string bytes = row_bytes(sample());
    for (std::size_t size = 0; size < bytes.size(); ++size)
        EXPECT_THROW((void)row_from_bytes(std::string_view(bytes).substr(0, size)), std::invalid_argument) << size;
    EXPECT_THROW((void)row_from_bytes(bytes + '\0'), std::invalid_argument);
}

TEST(RowBytes, HugeCountsAreRefused) {
    std::string bytes = row_bytes(sample());
    for (std::size_t at = 0; at + 8 <= bytes.size(); at += 8) {
        std::string wrong = bytes;
        wrong.replace(at, 8, 8, '\xff');
        try {
            (void)row_from_bytes(wrong);
        } catch (const std::invalid_argument&) {
            continue;
        }
    }
    bytes.replace(0, 8, 8, '\xff');
    EXPECT_THROW((void)row_from_bytes(bytes), std::invalid_argument);
}

}  // namespace
}  // namespace seamward::test
