// SPDX-License-Identifier: GPL-3.0-or-later
// The shipped animals at openings that published guides and codes speak of, and at openings of common meshes. The guides
// are listed with their publishers in engine/catalog/pests.yaml.
#include <gtest/gtest.h>

#include "catalog/passage.h"
#include "catalog/shipped.h"

namespace seamward::test {
namespace {

constexpr double mm = 0.001;
constexpr double inch = 0.0254;

bool gets_in(const char* pest, const Shape& opening) { return passes(shipped_pests().find(pest)->size, opening); }

/// Pima County, Arizona, bat-proofing page: bats get through a quarter inch by a half inch.
TEST(PassageFacts, QuarterByHalfInchSlot) {
    const Slot slot{inch / 4, inch / 2};
    EXPECT_TRUE(gets_in("bat", slot));
    EXPECT_TRUE(gets_in("house-mouse", slot));
    EXPECT_FALSE(gets_in("roof-rat", slot));
    EXPECT_FALSE(gets_in("norway-rat", slot));
}

/// Between the mouse's 6 mm (CDC) and the bat's 1/2 in (Pima County).
TEST(PassageFacts, FiveSixteenthsInchHole) {
    const Hole hole{inch * 5 / 16};
    EXPECT_TRUE(gets_in("house-mouse", hole));
    EXPECT_FALSE(gets_in("bat", hole));
}

/// CDC: mouse 6 mm; University of Nebraska: rats 1/2 in, tree squirrel 1 1/2 in; Jayaram and Full: cockroach 3 mm.
TEST(PassageFacts, AnimalsBySize) {
    const auto slit = [](const char* id) { return shipped_pests().find(id)->size.slit; };
    const auto hole = [](const char* id) { return shipped_pests().find(id)->size.hole; };
    EXPECT_LT(hole("house-mouse"), hole("roof-rat"));
    EXPECT_LT(hole("house-mouse"), hole("norway-rat"));
    EXPECT_LT(hole("roof-rat"), hole("tree-squirrel"));
    EXPECT_LT(hole("norway-rat"), hole("tree-squirrel"));
    EXPECT_LT(slit("american-cockroach"), slit("house-mouse"));
    EXPECT_LT(slit("bark-scorpion-young"), slit("bark-scorpion"));
    EXPECT_LT(hole("bark-scorpion-young"), hole("bark-scorpion"));
}

/// Worked out: 1/4 in from wire to wire less a wire of 0.025 in (5.71 mm) or 0.035 in (5.46 mm) is just under the mouse's
/// 6 mm; 1/4 in clear is not.
TEST(PassageFacts, QuarterInchHardwareClothStopsAMouse) {
    EXPECT_FALSE(gets_in("house-mouse", Mesh{5.46 * mm}));
    EXPECT_FALSE(gets_in("house-mouse", Mesh{5.71 * mm}));
    EXPECT_TRUE(gets_in("house-mouse", Mesh{inch / 4}));
}

/// Worked out: 1/2 in from wire to wire less a wire of 0.041 in is 11.66 mm, under the rats' 1/2 in.
TEST(PassageFacts, HalfInchHardwareClothStopsARatAndNoMouse) {
    EXPECT_FALSE(gets_in("roof-rat", Mesh{11.66 * mm}));
    EXPECT_FALSE(gets_in("norway-rat", Mesh{11.66 * mm}));
    EXPECT_TRUE(gets_in("house-mouse", Mesh{11.66 * mm}));
}

/// International Residential Code, R806.1, lets openings of vents be 1/4 in; that stops no scorpion, cockroach or bee.
TEST(PassageFacts, QuarterInchVentScreenStopsNoSmallAnimal) {
    const Mesh widest{inch / 4};
    for (const char* id : {"bark-scorpion", "bark-scorpion-young", "american-cockroach", "german-cockroach", "honey-bee"})
        EXPECT_TRUE(gets_in(id, widest)) << id;
}

/// The same section's least opening, 1/16 in; and insect screens, worked out: 14, 16 and 18 wires of 0.011 in to the inch
/// leave 1.53, 1.31 and 1.13 mm, 20 wires of 0.014 in leave 0.91 mm.
TEST(PassageFacts, InsectScreenStopsScorpions) {
    for (const double opening : {inch / 16, 1.53 * mm, 1.31 * mm, 1.13 * mm, 0.91 * mm}) {
        EXPECT_FALSE(gets_in("bark-scorpion", Mesh{opening})) << opening;
        EXPECT_FALSE(gets_in("american-cockroach", Mesh{opening})) << opening;
        EXPECT_FALSE(gets_in("honey-bee", Mesh{opening})) << opening;
    }
    for (const double opening : {1.31 * mm, 1.13 * mm, 0.91 * mm})
        EXPECT_FALSE(gets_in("bark-scorpion-young", Mesh{opening})) << opening;
}

/// A bird society's answers: nest holes of 1 1/4 in for a sparrow, 1 5/8 in for a starling.
TEST(PassageFacts, Birds) {
    EXPECT_FALSE(gets_in("house-sparrow", Mesh{5.71 * mm}));
    EXPECT_TRUE(gets_in("house-sparrow", Hole{inch * 5 / 4}));
    EXPECT_FALSE(gets_in("starling", Hole{inch * 5 / 4}));
    EXPECT_TRUE(gets_in("starling", Hole{inch * 13 / 8}));
}

/// From memory, as the catalog says: mesh of 1/8 in keeps yellowjackets out, a hole of 1/4 in does not.
TEST(PassageFacts, Yellowjackets) {
    EXPECT_FALSE(gets_in("yellowjacket", Mesh{inch / 8}));
    EXPECT_TRUE(gets_in("yellowjacket", Hole{inch / 4}));
}

/// City code of Fort Worth, Texas, against rats: a clearance of at most 3/8 in at a door. CDC: 1/4 in lets mice in.
TEST(PassageFacts, UnderADoor) {
    EXPECT_FALSE(gets_in("norway-rat", Slot{inch * 3 / 8, 0.9}));
    EXPECT_TRUE(gets_in("norway-rat", Slot{inch / 2, 0.9}));
    EXPECT_TRUE(gets_in("house-mouse", Slot{inch / 4, 0.9}));
}

/// Coins as minted (United States Mint) and a card (ISO/IEC 7810): two stacked cents are a cockroach's slit, a card is a
/// young scorpion's.
TEST(PassageFacts, GaugesAsSlits) {
    EXPECT_TRUE(gets_in("american-cockroach", Slot{3.04 * mm, 1}));
    EXPECT_FALSE(gets_in("american-cockroach", Slot{2.15 * mm, 1}));
    EXPECT_TRUE(gets_in("bark-scorpion-young", Slot{0.76 * mm, 1}));
    EXPECT_FALSE(gets_in("bark-scorpion", Slot{0.76 * mm, 1}));
    EXPECT_FALSE(gets_in("bark-scorpion", Slot{1.52 * mm, 1}));
    EXPECT_TRUE(gets_in("bark-scorpion", Slot{1.75 * mm, 1}));
}

/// Older wording of the CDC: mice get through a hole the size of a nickel, rats through one of a half dollar; diameters of
/// 0.835 and 1.205 in by the United States Mint.
TEST(PassageFacts, CoinHoles) {
    EXPECT_TRUE(gets_in("house-mouse", Hole{0.835 * inch}));
    EXPECT_TRUE(gets_in("norway-rat", Hole{1.205 * inch}));
    EXPECT_FALSE(gets_in("tree-squirrel", Hole{1.205 * inch}));
}

}  // namespace
}  // namespace seamward::test
