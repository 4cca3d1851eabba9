// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace seamward {

/// The name of a treatment by its id; what the survey prices has none in the table.
[[nodiscard]] std::string treatment_name(const std::string& id);

}  // namespace seamward
