// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace seamward {

/// The GUID that a name has within another GUID: version 5 of RFC 4122, in small letters. Throws std::invalid_argument when
/// `within` is none.
[[nodiscard]] std::string name_guid(const std::string& within, std::string_view name);

}  // namespace seamward
