// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/json_writer.h"
#include "plan/plan.h"
#include "plan/sightings.h"
#include "tool/console.h"

namespace seamward {

/// Where the animals that were seen came in, for people: a section of a plan. Nothing where the job has no sightings.
void print_sightings(const Job& job, const Plan& plan, const PlanSettings& settings, const Console& console);

/// The same for programs, as the key `sightings`.
void write_sightings(const Job& job, const Plan& plan, const PlanSettings& settings, JsonWriter& json);

}  // namespace seamward
