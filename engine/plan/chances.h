// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/survey.h"
#include "catalog/tables.h"
#include "network/reliability.h"

namespace seamward {

/// A gap whose width, known exactly, would change the chance of a way in.
struct WorthMeasuring {
    GapIndex gap;
    double passes = 0;   ///< probability that the animal gets through the gap
    double matters = 0;  ///< Birnbaum importance: P(way in | it does) - P(way in | it does not)
    double change = 0;  ///< by how much the chance of a way in changes on average once it is known: 2 passes (1 - passes) matters
};

/// How likely some way in is open to one animal.
struct PestChance {
    std::size_t pest = 0;  ///< position in what was asked for
    OpenChance open;
    std::vector<WorthMeasuring> measure;  ///< the gaps that matter most, by `change`; those without any are left out
};

/// The probability that a gap lets an animal through: its true width is taken to lie anywhere between its width less its
/// plus_minus and its width and plus_minus together, all widths alike likely, and no width below 0. Without a plus_minus 0 or 1.
/// A gap with a mesh over it lets through what passes both, the two taken as independent.
[[nodiscard]] double chance_to_pass(const Gap& gap, const PassageSize& pest);

/// For each animal the chance that some way in is open, gaps being independent, and the `most` gaps worth measuring again. Exact
/// at the size of a house, see open_chance(). Nothing where some living space is a source too: one pair of ends does not say it
/// all.
[[nodiscard]] std::optional<std::vector<PestChance>> open_chances(const Survey& survey, std::span<const Pest> pests,
                                                                  std::size_t most = 5);

}  // namespace seamward
