// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward {

/// The animals that were named after `option`; a profile of the job's own goes before the catalog's. Throws WrongUsage when one
/// is not known.
[[nodiscard]] std::vector<Pest> pests_asked_for(const Job& job, const std::string& option, const std::vector<std::string>& ids);

/// The settings of a trace for the pests and spaces that were named on the command line; a profile of the job's own goes before
/// the catalog's. Throws WrongUsage when one is not known.
[[nodiscard]] TraceSettings trace_settings(const Job& job, const std::vector<std::string>& pests,
                                           const std::vector<std::string>& to, std::size_t top);

/// Ends with a WrongUsage that says which option had which unknown id, and what was probably meant.
[[noreturn]] void fail_unknown(const std::string& option, const std::string& id, const std::vector<std::string_view>& known);

}  // namespace seamward
