// SPDX-License-Identifier: GPL-3.0-or-later
// The shipped animals at openings that published guides speak of.
#include <gtest/gtest.h>

#include "catalog/passage.h"
#include "catalog/shipped.h"

namespace seamward::test {
namespace {

constexpr double mm = 0.001;
constexpr double inch = 0.0254;

bool gets_in(const char* pest, const Shape& opening) { return passes(shipped_pests().find(pest)->size, opening); }

/// FACTS.md, section 1, "Test idea"; the slot is Pima County's, "a quarter-inch by a half-inch".
TEST(PassageFacts, QuarterByHalfInchSlot) {
    const Slot slot{inch / 4, inch / 2};
    EXPECT_TRUE(gets_in("bat", slot));
    EXPECT_TRUE(gets_in("house-mouse", slot));
    EXPECT_FALSE(gets_in("roof-rat", slot));
    EXPECT_FALSE(gets_in("norway-rat", slot));
}

/// The same place: a 5/16 in hole is for a mouse and not for a bat.
TEST(PassageFacts, FiveSixteenthsInchHole) {
    const Hole hole{inch * 5 / 16};
    EXPECT_TRUE(gets_in("house-mouse", hole));
    EXPECT_FALSE(gets_in("bat", hole));
}

/// The same place: mouse 6 mm < rat 13 mm < squirrel 38 mm, cockroach 3 mm < mouse.
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

/// FACTS.md, section 4d: 1/4 in hardware cloth has clear openings of 5.71 mm (23 ga) or 5.46 mm (code-weight wire),
/// "just under the 6 mm mouse figure; a 1/4 in clear opening is not".
TEST(PassageFacts, QuarterInchHardwareClothStopsAMouse) {
    EXPECT_FALSE(gets_in("house-mouse", Mesh{5.46 * mm}));
    EXPECT_FALSE(gets_in("house-mouse", Mesh{5.71 * mm}));
    EXPECT_TRUE(gets_in("house-mouse", Mesh{inch / 4}));
}

/// FACTS.md, section 4d: 1/2 in hardware cloth is 11.66 mm clear; section 3: it is used to stop rats.
TEST(PassageFacts, HalfInchHardwareClothStopsARatAndNoMouse) {
    EXPECT_FALSE(gets_in("roof-rat", Mesh{11.66 * mm}));
    EXPECT_FALSE(gets_in("norway-rat", Mesh{11.66 * mm}));
    EXPECT_TRUE(gets_in("house-mouse", Mesh{11.66 * mm}));
}

/// FACTS.md, section 3, "Conflict worth encoding": the code's 1/4 in maximum for vents stops no scorpion, cockroach or bee.
TEST(PassageFacts, QuarterInchVentScreenStopsNoSmallAnimal) {
    const Mesh widest{inch / 4};
    for (const char* id : {"bark-scorpion", "bark-scorpion-young", "american-cockroach", "german-cockroach", "honey-bee"})
        EXPECT_TRUE(gets_in(id, widest)) << id;
}

/// The same place: 1/16 in screening stops scorpions; section 4d: insect screen of 16 and 18 meshes is finer still.
TEST(PassageFacts, InsectScreenStopsScorpions) {
    for (const double opening : {inch / 16, 1.53 * mm, 1.31 * mm, 1.13 * mm, 0.91 * mm}) {
        EXPECT_FALSE(gets_in("bark-scorpion", Mesh{opening})) << opening;
        EXPECT_FALSE(gets_in("american-cockroach", Mesh{opening})) << opening;
        EXPECT_FALSE(gets_in("honey-bee", Mesh{opening})) << opening;
    }
    for (const double opening : {1.31 * mm, 1.13 * mm, 0.91 * mm})
        EXPECT_FALSE(gets_in("bark-scorpion-young", Mesh{opening})) << opening;
}

/// FACTS.md, section 1a: 1/4 in hardware cloth keeps birds out; a sparrow needs 1-1/4 in, a starling 1-5/8 in.
TEST(PassageFacts, Birds) {
    EXPECT_FALSE(gets_in("house-sparrow", Mesh{5.71 * mm}));
    EXPECT_TRUE(gets_in("house-sparrow", Hole{inch * 5 / 4}));
    EXPECT_FALSE(gets_in("starling", Hole{inch * 5 / 4}));
    EXPECT_TRUE(gets_in("starling", Hole{inch * 13 / 8}));
}

/// FACTS.md, section 1b: 1/8 in mesh keeps yellowjackets out of what a 1/4 in hole lets them into.
TEST(PassageFacts, Yellowjackets) {
    EXPECT_FALSE(gets_in("yellowjacket", Mesh{inch / 8}));
    EXPECT_TRUE(gets_in("yellowjacket", Hole{inch / 4}));
}

/// FACTS.md, section 3: a door clearance of 3/8 in at most keeps rats out; section 1a: over 1/4 in lets mice in.
TEST(PassageFacts, UnderADoor) {
    EXPECT_FALSE(gets_in("norway-rat", Slot{inch * 3 / 8, 0.9}));
    EXPECT_TRUE(gets_in("norway-rat", Slot{inch / 2, 0.9}));
    EXPECT_TRUE(gets_in("house-mouse", Slot{inch / 4, 0.9}));
}

/// FACTS.md, section 2: the slit of two stacked cents (3.04 mm) is a cockroach's; a card's thickness is a young scorpion's.
TEST(PassageFacts, GaugesAsSlits) {
    EXPECT_TRUE(gets_in("american-cockroach", Slot{3.04 * mm, 1}));
    EXPECT_FALSE(gets_in("american-cockroach", Slot{2.15 * mm, 1}));
    EXPECT_TRUE(gets_in("bark-scorpion-young", Slot{0.76 * mm, 1}));
    EXPECT_FALSE(gets_in("bark-scorpion", Slot{0.76 * mm, 1}));
    EXPECT_FALSE(gets_in("bark-scorpion", Slot{1.52 * mm, 1}));
    EXPECT_TRUE(gets_in("bark-scorpion", Slot{1.75 * mm, 1}));
}

/// FACTS.md, section 1a: older guides, "mice can squeeze through a hole the size of a nickel" (0.835 in), rats through
/// one of a half dollar (1.205 in).
TEST(PassageFacts, CoinHoles) {
    EXPECT_TRUE(gets_in("house-mouse", Hole{0.835 * inch}));
    EXPECT_TRUE(gets_in("norway-rat", Hole{1.205 * inch}));
    EXPECT_FALSE(gets_in("tree-squirrel", Hole{1.205 * inch}));
}

}  // namespace
}  // namespace seamward::test
