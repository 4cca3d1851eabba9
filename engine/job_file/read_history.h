// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/record.h"
#include "job_file/id_index.h"
#include "job_file/job.h"

/// For the readers of this folder only.
namespace seamward {

/// A job file whose spaces, gaps and pests have been read.
struct HistorySource {
    const Record& file;
    const IdIndex& spaces;
    const IdIndex& gaps;
    Diagnostics& diagnostics;
};

/// Reads what happened at the house and what is known of the place: `closed`, `occupied`, `sightings`, `checks`, `site`. Closed
/// gaps get the opening that their treatment left.
void read_history(const HistorySource& source, Job& job);

}  // namespace seamward
