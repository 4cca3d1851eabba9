// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/survey.h"
#include "catalog/prices.h"
#include "materials/quantities.h"

namespace seamward {

/// One way to treat all pieces of a gap.
struct Option {
    std::string treatment;  ///< id of the table of treatments; `stated_closing` where the survey states the price
    Money cost;             ///< of all pieces: material used (no whole packs) and labor
    double minutes = 0;     ///< of all pieces
    double opening = 0;     ///< clear opening of the mesh that is left over the gap, meters; 0: nothing is left
    bool gnawed = false;    ///< rodents get through it
    std::vector<Need> needs;
    std::vector<Message> steps;     ///< what to do, in order: preparation, work, drying
    std::vector<Message> cautions;  ///< what can hurt somebody here
};

/// A treatment that is not offered, and why.
struct Refusal {
    std::string treatment;  ///< empty: nothing is offered
    Message why;
    Message source;
};

/// How a gap can be treated.
struct GapOptions {
    std::vector<Option> options;  ///< cheapest first, then in the order of the table
    std::vector<Refusal> refused;
};

/// The treatment of a gap whose price the survey states.
inline constexpr const char* stated_closing = "stated-closing";

/// Every treatment that fits the gap's shape, size, depth, substrates and duty, with quantities and price. A price stated by the
/// survey is then the only option, unless the gap's duty forbids it. `ground`: height of the yard, meters. O(treatments).
[[nodiscard]] GapOptions options_for(const Gap& gap, const Survey& survey, const PriceBook& prices, double ground = 0);

}  // namespace seamward
