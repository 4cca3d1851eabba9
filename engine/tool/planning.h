// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/plan.h"

namespace seamward {

/// What commands that plan have in common, as typed.
struct Planning {
    std::string job;
    std::vector<std::string> against;   ///< ids of animals; none: the job's
    std::optional<std::string> prices;  ///< file of the user's own; none: the shipped ones
    std::optional<std::string> date;    ///< of the work; none: today
    bool nominal = false;
    bool json = false;
};

/// The settings of a plan. A value that is left empty, as of a variable of the shell that is not set, is wrong usage. Throws
/// WrongUsage when an animal is not known, there is none, or the date is no date; BadInput when the price book is bad.
[[nodiscard]] PlanSettings plan_settings(const Planning& planning, const Job& job);

/// The same, and `against` may be empty: for answers that tell of a house without a plan too.
[[nodiscard]] PlanSettings settings_of_any_job(const Planning& planning, const Job& job);

}  // namespace seamward
