// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/plan.h"

namespace seamward {

/// What commands that plan have in common, as typed.
struct Planning {
    std::string job;
    std::vector<std::string> against;  ///< ids of animals; none: the job's
    std::string prices;                ///< file of the user's own; empty: the shipped ones
    std::string date;                  ///< of the work; empty: today
    bool nominal = false;
    bool json = false;
};

/// The settings of a plan. Throws WrongUsage when an animal is not known, there is none, or the date is no date; BadInput when
/// the price book is bad.
[[nodiscard]] PlanSettings plan_settings(const Planning& planning, const Job& job);

}  // namespace seamward
