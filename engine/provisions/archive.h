// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace seamward {

struct ArchiveEntry {
    std::string name;  ///< with `/` between folders; a folder's own ends in one
    std::string bytes;
};

/// The bytes of a zip archive with these entries, in their order, without times: the same for the same entries. No name may
/// stand there twice. Throws std::runtime_error when the archive cannot be made.
[[nodiscard]] std::string zip_bytes(const std::vector<ArchiveEntry>& entries);

}  // namespace seamward
