// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace seamward {

/// The same job file in JSON: all that stands in it, in its order, and it reads as the same job. Comments are lost, and what
/// stood for another place of the file (an alias) is spelled out. `path`: of the text, which is JSON when it ends in `.json`.
/// Throws BadInput when the text does not parse.
[[nodiscard]] std::string job_as_json(std::string_view text, const std::filesystem::path& path);

}  // namespace seamward
