// SPDX-License-Identifier: GPL-3.0-or-later
// What was found in a scene against what the scene says of itself.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "interior/find.h"
#include "tests/support/scenes.h"

namespace seamward::test {

/// With the limits of the scene, and a room in each of its spaces but outdoors.
[[nodiscard]] Found found_in(const Scene& scene);

/// For each expected gap the found one between the same two spaces that is nearest to it in place and width, none of them twice.
[[nodiscard]] std::vector<std::optional<std::size_t>> matches(const Scene& scene, std::span<const ExpectedGap> expected,
                                                              const Found& found);

/// What differs, a line each: spaces and gaps too many or too few, widths, bounds, shapes, lengths. Empty when all agrees.
[[nodiscard]] std::string differences(const Scene& scene, const Found& found);

/// What is wrong with the ways that were found, a line each: a ball of the gap's width touches something on them, or they do not
/// lead from one of the gap's spaces to the other. For scenes of closed solids. Empty when all is well.
[[nodiscard]] std::string faults_of_ways(const Scene& scene, const Found& found);

}  // namespace seamward::test
