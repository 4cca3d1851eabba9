// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/survey.h"
#include "house/house.h"
#include "interior/find.h"

namespace seamward {

/// Spaces and gaps that were found in a model as a survey, in the same order, and after the gaps the joints: slots of no width.
/// Sizes and places are rounded to whole nanometers, as a job file states them, so that what is read back from one is the same to
/// the last bit. Every width is `modeled`, and may be off by what the finder left open. Places beyond the 100 km that a job file
/// can state are left out.
[[nodiscard]] Survey found_survey(const Found& found);

/// The ways through the same gaps and joints, to a tenth of a millimeter; empty where a job file cannot state a place of it.
[[nodiscard]] std::vector<GapPlace> found_places(const Found& found);

/// Meters to the nearest whole nanometer.
[[nodiscard]] double to_nanometers(double meters);

/// A name from a file of others as text in one line: every run of spaces, line ends and the like is one space, none at its ends;
/// `?` stands for control characters and for bytes that are no UTF-8. A long one is cut and ends in dots.
[[nodiscard]] std::string one_line(std::string_view text);

}  // namespace seamward
