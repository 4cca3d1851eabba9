// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "sweep/lots.h"
#include "sweep/results.h"

namespace seamward {

/// How often one detail of a plan leaks.
struct DetailTally {
    std::string plan, id, name, feature;
    bool stays = true;               ///< open by its duty, on every lot where it leaks
    std::size_t lots = 0;            ///< of the plan, without those that could not be done
    std::size_t leaks = 0;           ///< of these, lots where it leaks
    double widest = 0;               ///< millimeters
    std::string widest_lot;          ///< the first file with that width
    double median = 0;               ///< width where it leaks
    std::size_t closed = 0;          ///< lots whose plan closes it
    Money least, middle, most, sum;  ///< of closing it on those
};

/// What closing costs on the lots of a plan with an option.
struct CostTally {
    std::string plan, option;
    std::size_t lots = 0, errors = 0, open = 0, no_plan = 0;  ///< `open`: with a way in, whether or not there is a plan
    std::size_t planned = 0;         ///< lots that have a way in and a plan; 0: nothing was planned, there are no amounts
    Money least, middle, most, sum;  ///< over those
};

/// What all lots together tell. Details: most leaks first, by plan. Middles are medians, of an even number the lower one of the
/// two, so that they are amounts which stand in the rows.
struct RollUp {
    std::vector<DetailTally> details;
    std::vector<CostTally> costs;
};

[[nodiscard]] RollUp roll_up(const LotFiles& files, LotWork work, SweepResults& results, const RunContext& context);

/// Writes lots.csv, details.csv and costs.csv, all or none.
void write_tables(const std::filesystem::path& folder, const LotFiles& files, LotWork work, const RollUp& sums,
                  SweepResults& results);

}  // namespace seamward
