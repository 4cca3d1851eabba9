// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace seamward {

/// For the writers of this folder only.

/// A text as YAML has it in double quotes.
[[nodiscard]] std::string yaml_quoted(const std::string& text);

/// `1.2 mm`, with as many digits as it takes that reading gives the same double.
[[nodiscard]] std::string yaml_length(double meters);

}  // namespace seamward
