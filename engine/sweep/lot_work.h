// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "catalog/prices.h"
#include "job_file/job.h"
#include "sweep/house_cache.h"
#include "sweep/lot_row.h"
#include "sweep/lots.h"

namespace seamward {

/// What is done for each lot of a sweep, and how.
struct SweepSettings {
    LotWork work = LotWork::trace;
    std::vector<Pest> against;  ///< a job's own profile of the same id goes first; none: the job's, of a trace every path
    PriceBook prices = shipped_prices();
    std::string prices_file;  ///< of the user's own; empty: the shipped ones
    Date date;                ///< of the work and of the audit
    std::string version;      ///< of the program
};

/// The digest of all of it that a row of that work can depend on, and of the tables that the program ships.
[[nodiscard]] std::string settings_digest(const SweepSettings& settings);

/// Reads one lot and does the work. What is wrong with the lot becomes the row's error. Throws Cancelled only.
[[nodiscard]] LotRow do_lot(const LotFiles& files, const std::string& name, const SweepSettings& settings, HouseCache& houses,
                            const RunContext& context);

/// One function for each kind of work: fill in the row's result, cells and details. The first answers as `seamward trace`,
/// the second as `seamward plan`, the third as `seamward audit`.
void trace_lot(const Job& job, const SweepSettings& settings, const RunContext& context, LotRow& row);
void plan_lot(const Job& job, const SweepSettings& settings, const RunContext& context, LotRow& row);
void audit_lot(const Job& job, const SweepSettings& settings, const RunContext& context, LotRow& row);

/// The animals of a sweep as a job has them.
[[nodiscard]] std::vector<Pest> animals_for(const Job& job, const SweepSettings& settings);

}  // namespace seamward
