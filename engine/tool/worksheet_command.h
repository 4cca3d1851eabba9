// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "job_file/job.h"
#include "plan/plan.h"
#include "tool/console.h"
#include "tool/planning.h"

namespace seamward {

/// `seamward worksheet` as it was asked for.
struct WorksheetRequest : Planning {};

/// Reads, plans and prints the sheet; false when there is no plan, which is told instead. Throws BadInput, and WrongUsage when an
/// animal asked for is not known or the day is none.
[[nodiscard]] bool run_worksheet(const WorksheetRequest& request, const Console& console, const RunContext& context);

/// The sheet that the crew carries: what to bring, each stop with a box, what must stay open, and what to write into the job file
/// when it is done. No prices. The plan must be feasible.
void print_worksheet(const Job& job, const std::string& heading, const PlanSettings& settings, const Plan& plan,
                     const Console& console);

/// The last part of the sheet: what to write into the job file when it is done. Lines that are ready to copy are not broken.
void print_entries(const Job& job, const Plan& plan, const Console& console);

}  // namespace seamward
