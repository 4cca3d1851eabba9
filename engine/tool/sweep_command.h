// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sweep/lot_work.h"
#include "sweep/roll_up.h"
#include "sweep/sweep.h"
#include "tool/console.h"

namespace seamward {

/// `seamward sweep` as it was asked for.
struct SweepRequest {
    std::string lots;    ///< list or folder
    std::string work;    ///< a word of work_word()
    std::string folder;  ///< where results go
    std::size_t threads = 0;
    std::optional<std::string> date;
    std::vector<std::string> against;
    std::optional<std::string> prices;
    std::string version;  ///< of the program
};

/// Works through all lots, goes on where an earlier run ended, and writes the tables. On a signal it keeps what is done, says so
/// and ends the program. Throws BadInput when lots, folder or prices cannot be used, and WrongUsage; a bad lot is a row.
void run_sweep(const SweepRequest& request, const Console& console, RunContext& context);

/// What people are told at the end.
struct SweepEnd {
    const LotFiles& files;
    const SweepSettings& settings;
    const SweepTally& tally;
    const RollUp& sums;
    std::string folder;
    int ranks = 1;
    unsigned threads = 1;
};
void print_sweep_table(const SweepEnd& end, const Console& console);

}  // namespace seamward
