// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job_file/read_history.h"

/// For the readers of this folder only.
namespace seamward {

/// Btu an hour from `40000 Btu/h`, `40,000 Btu/h` or `12 kW`; nothing for what is none.
[[nodiscard]] std::optional<double> parse_input(std::string text);

/// Reads what codes ask of a house and its gaps do not tell: `construction`, `appliances` and `details`. Reports what contradicts
/// the described house, and measures that are none or cannot be stated.
void read_details(const HistorySource& source, bool has_house, Job& job);

}  // namespace seamward
