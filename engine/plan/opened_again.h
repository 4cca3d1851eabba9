// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job_file/job.h"

namespace seamward {

/// A closed gap with the opening that it was found with, and how far that may be off.
[[nodiscard]] Gap opened_gap(const ClosedGap& closed, const Gap& gap);

/// Puts that into a survey.
void open_again(const ClosedGap& closed, Survey& survey);

/// Whether a closing that holds was made with something that this animal gnaws through: to it the gap is as it was.
[[nodiscard]] bool is_gnawed_by(const ClosedGap& closed, const Pest& pest);

/// The house as it stands to one animal: what was closed with something that it gnaws through is open. O(spaces + gaps).
[[nodiscard]] Survey as_it_stands_to(const Job& job, const Pest& pest);

}  // namespace seamward
