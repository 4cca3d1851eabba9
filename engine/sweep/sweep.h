// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "base/run_context.h"
#include "sweep/lots.h"
#include "sweep/ranks.h"
#include "sweep/results.h"
#include "sweep/work_off.h"

namespace seamward {

/// How far a sweep has come.
struct SweepTally {
    std::size_t lots = 0;
    std::size_t kept = 0;  ///< rows of an earlier run that still hold
    std::size_t done = 0;  ///< rows of this run
    std::size_t died = 0;  ///< of those, lots that the program died at twice
};

/// Rank 0 tells the others the day of the work, or that there is none after all; they wait for it (nothing: there is none, or
/// the work is called off).
void begin_together(Ranks& ranks, const std::string& day);
void call_off(Ranks& ranks);
[[nodiscard]] std::optional<std::string> wait_to_begin(Ranks& ranks, const RunContext& context);

/// What rank 0 does then: finds out which lots have no row that still holds, tries those alone that an earlier run ended over,
/// hands the others out to all ranks, works on them itself, and keeps all rows. `settings`: digest of these. Whatever ends it,
/// the other ranks end too, what was done is kept, and `tally` says how much that is.
void sweep(const LotFiles& files, const std::string& settings, const LotDoer& doer, unsigned threads, SweepResults& results,
           Ranks& ranks, const RunContext& context, SweepTally& tally);

/// What every other rank does then, until rank 0 has no more.
void serve_sweep(const LotDoer& doer, unsigned threads, Ranks& ranks, const RunContext& context);

}  // namespace seamward
