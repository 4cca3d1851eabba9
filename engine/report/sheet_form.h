// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "report/page_writer.h"

namespace seamward {

// What a survey sheet has when it is filled in on a screen. All of it is hidden until the script shows it.

/// How lengths are written, and what is kept while one writes.
void sheet_settings(PageWriter& page);

/// Boxes for one new gap, and the list of those that were added.
void new_gap_form(PageWriter& page);

/// The button that gives a job file back, and what is wrong with what was written.
void sheet_end(PageWriter& page);

/// What the script is told: the job file, its gaps and spaces, and what to say; JSON that can stand within a script element.
[[nodiscard]] std::string sheet_data(const PageWriter& page);

}  // namespace seamward
