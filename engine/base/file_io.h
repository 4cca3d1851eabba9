// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

namespace seamward {

/// The whole content of a file. Throws BadInput, under the name `shown_as`, when it does not exist, is a folder,
/// cannot be read, or is larger than `most_bytes`.
[[nodiscard]] std::string read_file(const std::filesystem::path& path, const std::string& shown_as, std::uint64_t most_bytes);

}  // namespace seamward
