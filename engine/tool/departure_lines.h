// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job_file/job.h"
#include "plan/departures.h"
#include "tool/console.h"

namespace seamward {

/// Of one animal that lives in the house: what waits for it, how it leaves, where its device goes, from which day on what waits
/// may be closed, and what can hurt somebody.
void print_departure(const Job& job, const Departure& departure, const Console& console);

}  // namespace seamward
