// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward {

/// What whoever made the survey should look at again before trusting an answer, each a sentence for people: no start or
/// no end for a way in, rooms without a gap, spaces that nothing leads into, gaps between two rooms, openings that are
/// listed as closed though they must stay open, closings that an animal of the job gnaws through, a slot wider than long.
/// O(spaces + gaps).
[[nodiscard]] std::vector<std::string> remarks_on(const Job& job, const TraceSettings& settings);

}  // namespace seamward
