// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "base/survey.h"
#include "sweep/even_random.h"
#include "sweep/make_lots.h"

namespace seamward {

/// A variant of a plan: what it adds to the plan's gaps, as entries of a job file.
struct MadeOption {
    std::string_view name;
    std::string_view gaps;  ///< empty: nothing
};

/// One plan of the subdivision, as its lots are made from.
struct MadePlan {
    std::string_view id;
    std::vector<MadeOption> options;
    Survey usual;  ///< the house with every gap as wide as the table of features has it
};

/// All that lots have in common.
struct MadeSubdivision {
    static constexpr std::size_t crews = 5;

    std::uint64_t seed = 0;
    std::vector<MadePlan> plans;
    std::array<double, crews> workmanship{};  ///< factors of widths
    /// Kinds of features that a crew tends to leave open.
    std::array<std::vector<std::string>, crews> habits;
};

[[nodiscard]] MadeSubdivision make_subdivision(std::uint64_t seed, const RunContext& context);

/// The job file of one lot, counted from 1.
[[nodiscard]] std::string made_lot(const MadeSubdivision& subdivision, std::uint32_t number);

/// A job file with a fault; `kind` counts through the kinds of faults.
[[nodiscard]] std::string faulty_lot(std::uint32_t number, std::size_t kind);

}  // namespace seamward
