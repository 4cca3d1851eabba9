// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <string_view>

namespace seamward {

/// English texts and what they are in another language.
using TextTable = std::map<std::string, std::string, std::less<>>;

/// Reads a table of Spanish texts. Throws BadInput with all faults: a text that stands twice or is empty, and a translation that
/// does not put in each part of its text exactly once.
[[nodiscard]] TextTable read_texts(std::string_view yaml, const std::string& shown_as);

}  // namespace seamward
