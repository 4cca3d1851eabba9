// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace seamward {

/// The known word that `word` was most likely meant to be: fewest edits (insert, delete, replace, swap of
/// neighbors; optimal string alignment distance), at most a third of the longer word's letters and at least
/// one; else a known word that has it as a whole part, as house-mouse has mouse. The first such in the order of
/// `known`; nothing when no word is near. O(letters^2) a word.
[[nodiscard]] std::optional<std::string_view> nearest_word(std::string_view word, std::span<const std::string_view> known);

/// `did you mean X?`; `did you mean X-word or Y-word?` when a few known words have it as a part; or when nothing is near and the
/// list is short, `known: A, B, C`.
[[nodiscard]] std::string suggestion(std::string_view word, std::span<const std::string_view> known);

}  // namespace seamward
