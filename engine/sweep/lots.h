// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "base/run_context.h"

namespace seamward {

/// The job files of a sweep.
struct LotFiles {
    std::filesystem::path folder;    ///< that `names` start at; empty: the one that the program runs in
    std::vector<std::string> names;  ///< as listed; no name stands twice

    [[nodiscard]] std::filesystem::path path_of(const std::string& name) const { return folder / name; }
};

/// The folder that the lots of a list or a folder start at.
[[nodiscard]] std::filesystem::path folder_of_lots(const std::filesystem::path& list_or_folder);

/// The lots that a list or a folder names. A list is a text file with one job file a line, from the folder of the list on, in its
/// order; what follows a `#` at the beginning of a line or after a space is a comment. Of a folder, and of no folder in it, all
/// .yaml, .yml and .json files, by name, but those that are no job files by their first key: house files, drills, price books,
/// tables. Throws BadInput when it cannot be read or names nothing.
[[nodiscard]] LotFiles read_lot_files(const std::filesystem::path& list_or_folder, const RunContext& context);

}  // namespace seamward
