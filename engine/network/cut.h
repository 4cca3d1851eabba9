// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "base/money.h"
#include "network/network.h"

namespace seamward {

/// A gap that lets something through, and what it costs to shut it.
struct PricedLink {
    SpaceIndex a, b;
    GapIndex gap;
    double width = 0;            ///< clear width that it counts with, meters
    std::optional<Money> price;  ///< nothing: it cannot be shut
};

/// A way in, as gaps from outdoors to a living space; no space stands in it twice.
using LinkPath = std::vector<std::uint32_t>;

/// A share of the proof that nothing cheaper will do: closing this way in takes at least `amount`, whatever is paid elsewhere.
struct CutRoute {
    LinkPath links;
    Money amount;
};

/// The cheapest set of links without which nothing leads in.
struct Cut {
    bool possible = true;
    Money price;                       ///< of all of `links`; equal to the sum of the routes' amounts
    std::vector<std::uint32_t> links;  ///< positions in what was given, rising; each of them is needed
    std::vector<CutRoute> routes;      ///< amounts of no link add up to more than its price
    LinkPath open_path;                ///< where there is no such set: a way in none of whose links can be shut
};

/// The minimum cut between all spaces where paths start and all where they end; no space may be both. Of several cheapest ones,
/// the one nearest to the starts. Throws std::overflow_error when prices add up to more than 2^61 cents. Time: see GrowingFlow.
[[nodiscard]] Cut cheapest_cut(const Roles& roles, std::size_t space_count, std::span<const PricedLink> links);

/// What it takes to keep out everything as wide as `width` or wider.
struct Rung {
    double width = 0;  ///< the least for which this set does, meters
    Money price;
    std::vector<std::uint32_t> links;  ///< rising
};

/// The cheapest cut for every width. Prices rise from rung to rung and widths fall.
struct CutLadder {
    std::vector<Rung> rungs;
    std::size_t left_out = 0;  ///< rungs between those listed
    LinkPath stopped_by;       ///< where it ends early: a way in none of whose links can be shut
};

/// One flow for all widths: links are opened in falling order of width, and each new one only adds to it. A rung that costs
/// nothing is left out. Of more than `most_rungs` (2 or more) that many are listed, evenly by their number, the first and the
/// last among them: the sets of all would take memory of the square of the links. Throws as `cheapest_cut`.
[[nodiscard]] CutLadder cut_ladder(const Roles& roles, std::size_t space_count, std::span<const PricedLink> links,
                                   std::size_t most_rungs = 1000);

}  // namespace seamward
