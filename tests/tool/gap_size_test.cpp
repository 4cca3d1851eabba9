// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/gap_size.h"

#include <gtest/gtest.h>

#include "base/phrases.h"

namespace seamward::test {
namespace {

std::string size_of(const Shape& shape, double plus_minus = 0, std::uint32_t count = 1) {
    Gap gap;
    gap.shape = shape;
    gap.count = count;
    gap.evidence = {Evidence::How::measured, plus_minus};
    return joined(gap_size(gap), ", ");
}

TEST(TapeText, IsInFeetFromOneFootOn) {
    EXPECT_EQ(tape_text(0.2), "7 7/8 in (200 mm)");
    EXPECT_EQ(tape_text(0.152), "6 in (152 mm)");
    EXPECT_EQ(tape_text(0.0005), "1/64 in (0.5 mm)");
    EXPECT_EQ(tape_text(0.3048), "1 ft (0.30 m)");
    EXPECT_EQ(tape_text(0.3), "1 ft (0.30 m)");
    EXPECT_EQ(tape_text(9), "29 ft 6 in (9.00 m)");
    EXPECT_EQ(tape_text(12.345), "40 ft 6 in (12.35 m)");
}

TEST(PlaceText, HasMetersAndFeetOfEitherSign) {
    EXPECT_EQ(place_text({4.5, 9, 0.05}), "at 4.50 m, 9.00 m, 0.05 m (14 ft 9 in, 29 ft 6 in, 2 in)");
    EXPECT_EQ(place_text({-1, -0.004, 0}), "at -1.00 m, 0.00 m, 0.00 m (-3 ft 3 in, 0 in, 0 in)");
}

TEST(GapSize, TellsEachShape) {
    EXPECT_EQ(size_of(Slot{0.003, 0.06}), "1/8 in (3 mm) wide, 2 3/8 in (60 mm) long");
    EXPECT_EQ(size_of(Hole{0.005}), "hole of 13/64 in (5 mm)");
    EXPECT_EQ(size_of(Ring{0.0025, 0.022}), "3/32 in (2.5 mm) wide, around 7/8 in (22 mm)");
    EXPECT_EQ(size_of(Mesh{0.0064, 0.01}), "mesh with openings of 1/4 in (6.4 mm), 16 in2 (100 cm2) in all");
    EXPECT_EQ(size_of(Mesh{0.0064, {}}), "mesh with openings of 1/4 in (6.4 mm)");
    EXPECT_EQ(size_of(Hole{0.005}, 0, 3), "3 pieces, each hole of 13/64 in (5 mm)");
}

TEST(GapSize, TellsTheMostWhereThatIsMore) {
    EXPECT_EQ(size_of(Hole{0.005}, 0.001), "hole of 13/64 in (5 mm), up to 15/64 in (6 mm)");
    EXPECT_EQ(size_of(Hole{0.005}, 0.0001), "hole of 13/64 in (5 mm), up to 5.1 mm");
    EXPECT_EQ(size_of(Slot{0.002, 1}, 0.0005), "5/64 in (2 mm) wide, up to 3/32 in (2.5 mm), 3 ft 3 in (1.00 m) long");
}

TEST(GapSize, SaysWhatAMeshWasPutOver) {
    Gap gap;
    gap.shape = Mesh{0.0064, {}};
    gap.covered = Covered{Hole{0.1}, 0.005};
    gap.evidence.how = Evidence::How::modeled;
    EXPECT_EQ(
        joined(gap_size(gap), ", "),
        "mesh with openings of 1/4 in (6.4 mm), over what was there: hole of 3 15/16 in (100 mm), up to 4 9/64 in (105 mm)");
}

TEST(GapSize, AsksForAMeasureWhereNobodyTookOne) {
    for (const auto& [how, asks] : {std::pair{Evidence::How::unstated, true}, std::pair{Evidence::How::assumed, true},
                                    std::pair{Evidence::How::measured, false}, std::pair{Evidence::How::modeled, false}}) {
        Gap gap;
        gap.shape = Hole{0.005};
        gap.evidence.how = how;
        EXPECT_EQ(gap_size(gap).back() == "not measured: measure first", asks);
    }
}

}  // namespace
}  // namespace seamward::test
