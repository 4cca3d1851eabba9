// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/plan.h"
#include "tool/console.h"
#include "tool/planning.h"

namespace seamward {

/// `seamward plan` as it was asked for.
struct PlanRequest : Planning {
    std::optional<std::string> budget;  ///< as typed
    bool explain = false;
    bool diy = false;  ///< tell what an owner can do
};

/// Reads, plans and answers; false when there is no plan. Throws BadInput, and WrongUsage when an animal asked for is not known.
[[nodiscard]] bool run_plan(const PlanRequest& request, const Console& console, const RunContext& context);

/// The answer for programs.
[[nodiscard]] std::string plan_answer(const Job& job, const PlanSettings& settings, const Plan& plan, bool diy);

/// The answer for people.
void print_plan_table(const Job& job, const std::string& heading, const PlanSettings& settings, const Plan& plan, bool diy,
                      const Console& console);

}  // namespace seamward
