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

House built(const std::string& text, Make make) {
    return build_house(parse_house_yaml(text, "house.yaml"), {}, make, RunContext());
}

/// Takes out the lines of openings that faults name.
void without_openings(std::string& text, const std::vector<Diagnostic>& faults) {
    for (auto fault = faults.rbegin(); fault != faults.rend(); ++fault) {
        std::size_t begin = 0;
        for (std::uint32_t line = 1; line < fault->place.line; ++line) begin = text.find('\n', begin) + 1;
        const std::string_view rest = std::string_view(text).substr(begin);
        if (!rest.starts_with("  - {id: opening-") && !rest.starts_with("  - {id: door-")) continue;
        text.erase(begin, rest.find('\n') + 1);
    }
}

/// An invented house. Openings are invented without regard for partitions and eaves, flat roofs with an overhang: what cannot
/// be is left out.
std::string fitting_house(unsigned seed, bool wild) {
    std::string text = random_house(seed, wild);
    const std::size_t flat = text.find("shape: flat"), more = text.find(", overhang: ", flat);
    if (flat != std::string::npos && more != std::string::npos) text.erase(more, text.find('}', more) - more);
    try {
        (void)built(text, Make::survey);
    } catch (const BadInput& bad) {
        without_openings(text, bad.diagnostics());
    }
    return text;
}

/// Whether the house could be built; then all of its parts are sound.
bool builds(unsigned seed, bool wild) {
    const std::string text = fitting_house(seed, wild);
    House house;
    try {
        house = built(text, Make::solids);
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
    unsigned count = 0;
    for (unsigned i = 0; i < tame_houses; ++i) count += builds(GetParam() * tame_houses + i, false) ? 1 : 0;
    std::cout << count << " of " << tame_houses << " built\n";
    EXPECT_GE(count, tame_houses * 8 / 10);
}

/// Roofs, overhangs and walls without regard for the outline: many cannot be built, and say why.
TEST_P(RandomHouses, AreBuiltOfSoundSolidsOrRefused) {
    unsigned count = 0;
    for (unsigned i = 0; i < wild_houses; ++i) count += builds(1000 + GetParam() * wild_houses + i, true) ? 1 : 0;
    std::cout << count << " of " << wild_houses << " built\n";
    EXPECT_GE(count, 1U);
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomHouses, testing::Range(0U, parts));

/// Of all, with nothing but the survey made.
TEST(RandomHouses, CanBeBuiltNineTimesOfTen) {
    unsigned count = 0;
    for (unsigned seed = 0; seed < parts * tame_houses; ++seed) {
        try {
            (void)built(fitting_house(seed, false), Make::survey);
            ++count;
        } catch (const BadInput&) {}
    }
    std::cout << count << " of " << parts * tame_houses << " built\n";
    EXPECT_GE(count, parts * tame_houses * 9 / 10);
}

}  // namespace
}  // namespace seamward::test
