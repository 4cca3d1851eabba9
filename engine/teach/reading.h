// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "base/record.h"
#include "base/survey.h"

namespace seamward {

/// For the readers of this folder only.

/// A point from a list of three lengths, meters; a fault is reported.
[[nodiscard]] std::optional<Point> read_at(Node node, Diagnostics& diagnostics);

/// Whether something stands under a key: neither nothing nor blank text.
[[nodiscard]] bool is_said(const Record& record, std::string_view key);

/// The same of a list, which may also be empty.
[[nodiscard]] bool is_listed(const Record& record, std::string_view key);

/// Reports a format version that is not 1.
void check_version(const Record& file, std::string_view key);

}  // namespace seamward
