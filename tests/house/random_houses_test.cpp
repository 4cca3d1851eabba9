// SPDX-License-Identifier: GPL-3.0-or-later
// Hundreds of invented houses: each is refused in words, or all of its parts are sound solids.
#include <gtest/gtest.h>

#include <iostream>

#include "house/build_house.h"
#include "tests/support/random_house.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

/// In parts, so that they run side by side.
constexpr unsigned parts = 20, tame_houses = 25, wild_houses = 20;

/// Whether the house could be built; then all of its parts are sound.
bool builds(unsigned seed, bool wild) {
    const std::string text = random_house(seed, wild);
    House house;
    try {
        house = build_house(parse_house_yaml(text, "house.yaml"), {}, Make::solids, RunContext());
    } catch (const BadInput& bad) {
        for (const Diagnostic& fault : bad.diagnostics()) {
            EXPECT_FALSE(fault.what.empty());
            EXPECT_FALSE(fault.mend.empty()) << fault.what;
        }
        std::cout << "house " << seed << ": " << bad.diagnostics().front().what << '\n';
        return false;
    }
    EXPECT_GT(house.parts.size(), 20U) << seed;
    for (const Part& part : house.parts) {
        EXPECT_EQ(part.bounds.size(), part.mesh.triangles.size());
        EXPECT_EQ(fault_of_solid(part.mesh), "") << "house " << seed << ", " << part.id << '\n' << text;
    }
    return true;
}

class RandomHouses : public testing::TestWithParam<unsigned> {};

TEST_P(RandomHouses, AreBuiltOfSoundSolids) {
    unsigned built = 0;
    for (unsigned i = 0; i < tame_houses; ++i) built += builds(GetParam() * tame_houses + i, false) ? 1 : 0;
    std::cout << built << " of " << tame_houses << " built\n";
    EXPECT_GE(built, tame_houses * 8 / 10);
}

/// Roofs, overhangs and walls without regard for the outline: many cannot be built, and say why.
TEST_P(RandomHouses, AreBuiltOfSoundSolidsOrRefused) {
    unsigned built = 0;
    for (unsigned i = 0; i < wild_houses; ++i) built += builds(1000 + GetParam() * wild_houses + i, true) ? 1 : 0;
    std::cout << built << " of " << wild_houses << " built\n";
    EXPECT_GE(built, 1U);
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomHouses, testing::Range(0U, parts));

/// Of all, with nothing but the survey made.
TEST(RandomHouses, CanBeBuiltNineTimesOfTen) {
    unsigned built = 0;
    for (unsigned seed = 0; seed < parts * tame_houses; ++seed) {
        try {
            (void)build_house(parse_house_yaml(random_house(seed), "house.yaml"), {}, Make::survey, RunContext());
            ++built;
        } catch (const BadInput&) {}
    }
    std::cout << built << " of " << parts * tame_houses << " built\n";
    EXPECT_GE(built, parts * tame_houses * 9 / 10);
}

}  // namespace
}  // namespace seamward::test
