// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "base/survey.h"
#include "catalog/passage.h"
#include "catalog/tables.h"
#include "materials/options.h"
#include "network/network.h"

namespace seamward {

/// Animals as bits: position in ClosingProblem::pests.
using PestSet = std::uint64_t;

/// One treatment of a gap that stops somebody.
struct Choice {
    std::uint32_t option = 0;  ///< position in the gap's options
    Money cost;
    double leaves = 0;  ///< clear width that is left, meters
    PestSet stops = 0;  ///< animals that got through and no longer do
    PestSet gnaw = 0;   ///< animals that gnaw through it: to them nothing has changed

    /// Animals of `open_to` that no longer get through anything wider than `width` (meters).
    [[nodiscard]] PestSet stops_above(double width, PestSet open_to) const {
        return leaves <= width ? stops | (open_to & ~gnaw) : stops;
    }
};

/// A gap that lets some of the animals through.
struct Doorway {
    GapIndex gap;
    SpaceIndex a, b;
    double width = 0;  ///< clear width that it counts with, meters
    PestSet open_to = 0;
    std::vector<Choice> choices;  ///< cheapest first; none of them is outdone by another

    /// The cheapest choice that stops all of `pests`; of equally cheap ones the one that stops most. Null: there is none.
    [[nodiscard]] const Choice* cheapest_against(PestSet pests) const;
};

/// A choice that is made.
struct Pick {
    std::uint32_t doorway = 0, choice = 0;
    friend auto operator<=>(const Pick&, const Pick&) = default;
};

/// What to close so that no animal has a way in: who gets through which gap, and what stops whom at what price.
struct ClosingProblem {
    static constexpr std::size_t most_pests = 64;

    std::size_t space_count = 0;
    std::vector<Roles> roles;        ///< of all paths that must not be, see one_way_roles()
    std::vector<std::size_t> pests;  ///< positions in what was asked for; an animal that others stand for is left out
    std::vector<Doorway> doorways;   ///< in the order of the survey's gaps

    [[nodiscard]] PestSet everyone() const { return pests.empty() ? 0 : ~PestSet{0} >> (64 - pests.size()); }
    [[nodiscard]] Money cost_of(std::span<const Pick> picks) const;
    [[nodiscard]] const Choice& operator[](Pick pick) const { return doorways[pick.doorway].choices[pick.choice]; }
};

/// Which treatments are choices.
enum class Choices : std::uint8_t {
    stopping,       ///< those that stop some animal
    narrowing_too,  ///< also those that only leave a narrower way; a budget may have nothing better
};

/// `options` has one entry for each gap. An animal is left out when another gets through wherever it does and is stopped by
/// nothing that does not stop the first as well. Throws std::length_error when more than `most_pests` are left. O(gaps *
/// pests^2).
[[nodiscard]] ClosingProblem make_closing_problem(const Survey& survey, std::span<const Pest> against,
                                                  std::span<const GapOptions> options, Sizing sizing,
                                                  Choices choices = Choices::stopping);

/// The same, where only ways in count whose smallest width is more than `width` (meters): a gap that is left no wider is stopped.
[[nodiscard]] ClosingProblem only_wider_than(const ClosingProblem& problem, double width);

/// Animals that still have a way in. O(doorways * pests).
[[nodiscard]] PestSet still_open_to(const ClosingProblem& problem, std::span<const Pick> picks);

}  // namespace seamward
