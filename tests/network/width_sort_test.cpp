// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/width_sort.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace seamward::test {
namespace {

struct Item {
    double width;
    int number;
};

/// Against std::sort, for widths that are even, bunched, equal, zero, denormal, or of very different size.
TEST(WidthSort, AgreesWithTheStandardLibrary) {
    std::mt19937_64 dice(11);
    const std::vector<double (*)(std::mt19937_64&)> families{
        [](std::mt19937_64& d) { return static_cast<double>(d() % 25'000'000) * 1e-9; },
        [](std::mt19937_64& d) { return static_cast<double>(d() % 3) * 1e-3; },
        [](std::mt19937_64& d) { return std::pow(10.0, -static_cast<double>(d() % 300)); },
        [](std::mt19937_64& d) { return 0.001 + static_cast<double>(d() % 1000) * 1e-18; },
        [](std::mt19937_64& d) {
            return d() % 2 == 0 ? 0.0 : std::numeric_limits<double>::denorm_min() * static_cast<double>(d() % 50);
        },
        [](std::mt19937_64&) { return 0.0015; },
    };
    for (std::size_t family = 0; family < families.size(); ++family) {
        for (const std::size_t size : {0U, 1U, 2U, 255U, 257U, 5000U}) {
            std::vector<Item> items;
            for (std::size_t i = 0; i < size; ++i) items.push_back({families[family](dice), static_cast<int>(i)});
            std::vector<double> expected;
            for (const Item& item : items) expected.push_back(item.width);
            std::sort(expected.begin(), expected.end(), std::greater<>());
            sort_wide_to_narrow(items);
            std::vector<bool> seen(size, false);
            for (std::size_t i = 0; i < size; ++i) {
                ASSERT_EQ(items[i].width, expected[i]) << "family " << family << ", size " << size << ", at " << i;
                ASSERT_FALSE(seen[static_cast<std::size_t>(items[i].number)]);
                seen[static_cast<std::size_t>(items[i].number)] = true;
            }
        }
    }
}

}  // namespace
}  // namespace seamward::test
