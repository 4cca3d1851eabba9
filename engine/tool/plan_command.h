// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/plan.h"
#include "tool/console.h"

namespace seamward {

/// `seamward plan` as it was asked for.
struct PlanRequest {
    std::string job;
    std::vector<std::string> against;  ///< ids of animals; none: the job's
    std::string budget;                ///< as typed; empty: none
    std::string prices;                ///< file of the user's own; empty: the shipped ones
    bool nominal = false;
    bool explain = false;
    bool json = false;
};

/// Reads, plans and answers; false when there is no plan. Throws BadInput, and WrongUsage when an animal asked for is not known.
[[nodiscard]] bool run_plan(const PlanRequest& request, const Console& console, const RunContext& context);

/// The answer for programs.
[[nodiscard]] std::string plan_answer(const Job& job, const PlanSettings& settings, const Plan& plan);

/// The answer for people.
void print_plan_table(const Job& job, const std::string& heading, const PlanSettings& settings, const Plan& plan,
                      const Console& console);

}  // namespace seamward
