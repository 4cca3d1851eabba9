// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "job_file/edit_tree.h"

/// For the editors of this folder only.
namespace seamward {

/// How the file at `path` writes values.
[[nodiscard]] Syntax syntax_of(const std::filesystem::path& path);

/// The file with the places of its values. Throws BadInput when it does not parse.
[[nodiscard]] Document with_spans(std::string_view text, const std::filesystem::path& path);

/// The text changed so that it holds `wanted`, and no more than that: comments, order, spacing and quotes of everything else stay
/// as they are. `document` is what `text` holds. New pairs and items go to the end of what they belong to. The answer was read
/// again and holds exactly `wanted`; throws BadInput where that cannot be had, such as through an alias. O(size of the text).
[[nodiscard]] std::string rewritten(std::string_view text, const Document& document, const EditTree& wanted);

}  // namespace seamward
