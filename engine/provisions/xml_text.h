// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace seamward {

/// The text on one line, without what XML 1.0 has no place for: `?` stands for control characters, for bytes that are no UTF-8
/// and for the two code points that are no characters, a space for line ends and tabs.
[[nodiscard]] std::string xml_line(std::string_view text);

/// The same with line ends kept, all of them as line feeds.
[[nodiscard]] std::string xml_lines(std::string_view text);

}  // namespace seamward
