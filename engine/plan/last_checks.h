// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "job_file/job.h"

namespace seamward {

struct PlanStep;

/// What has to be checked when the work is done: where fuel is burned in the house, a combustion safety test by a licensed person
/// and the carbon monoxide alarms. Empty: nothing.
[[nodiscard]] std::vector<std::string> last_checks(const Job& job, std::span<const PlanStep> steps);

/// The openings that tell of an appliance that burns fuel and has a flue or takes air from outdoors.
[[nodiscard]] std::vector<GapIndex> signs_of_burning(const Survey& survey);

}  // namespace seamward
