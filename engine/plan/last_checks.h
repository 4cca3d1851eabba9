// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"

namespace seamward {

/// What has to be checked when the work is done: where fuel is burned in the house, a combustion safety test by a licensed person
/// and the carbon monoxide alarms. Empty: nothing.
[[nodiscard]] std::vector<Message> last_checks(const Job& job);

/// What tells that fuel is burned in the house: the label of an opening of a flue, a chimney or an appliance's air, or of a space
/// whose appliances the job states. Empty: nothing does.
[[nodiscard]] Message where_fuel_burns(const Job& job);

}  // namespace seamward
