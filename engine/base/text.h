// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace seamward {

/// The text in double quotes, for messages; a long one is cut after a whole letter and says so with dots.
[[nodiscard]] std::string in_quotes(std::string_view text);

/// Whether nothing but spaces, tabs and line ends stand there.
[[nodiscard]] bool is_blank(std::string_view text);

/// Whether the text is well-formed UTF-8 (no overlong forms, no surrogates).
[[nodiscard]] bool is_utf8(std::string_view text);

/// Whether it holds a control character other than a tab or a line end: C0, DEL or C1.
[[nodiscard]] bool has_control_character(std::string_view text);

/// The text with `?` for every control character and every byte that is not UTF-8: safe on a terminal and in JSON.
[[nodiscard]] std::string printable(std::string_view text);

}  // namespace seamward
