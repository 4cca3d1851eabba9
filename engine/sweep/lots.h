// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "base/run_context.h"

namespace seamward {

/// The job files of a sweep.
struct LotFiles {
    std::filesystem::path folder;    ///< that `names` start at; empty: the one that the program runs in
    std::vector<std::string> names;  ///< as listed; no file stands twice
    /// Those of `names` that are no names of files: of files in the folder whose names cannot be told, with `?` for what cannot.
    std::vector<std::string> misnamed;

    [[nodiscard]] std::filesystem::path path_of(const std::string& name) const { return folder / name; }
};

/// The folder that the lots of a list or a folder start at.
[[nodiscard]] std::filesystem::path folder_of_lots(const std::filesystem::path& list_or_folder);

/// The lots that a list or a folder names. A list is a text file with one job file a line, from the folder of the list on, in its
/// order; what follows a `#` at the beginning of a line or after a space is a comment. Of a folder, and of no folder in it, all
/// .yaml, .yml and .json files, by name, but those that are no job files by their first key: house files, drills, price books,
/// tables. Throws BadInput when it cannot be read or names nothing.
[[nodiscard]] LotFiles read_lot_files(const std::filesystem::path& list_or_folder, const RunContext& context);

/// Throws BadInput, under the name `shown_as`, for a pipe or a device: to read one may never end. What is not there, or a folder,
/// is left to who reads it.
void refuse_pipes_and_devices(const std::filesystem::path& path, const std::string& shown_as);

/// The bytes of a job file. Throws BadInput when it cannot be read.
[[nodiscard]] std::string read_lot(const std::filesystem::path& path, const std::string& shown_as);

/// The files that a job's text names under the keys `house` and `file`, as seen from where the program runs. The text is looked
/// at by its letters only, and may be of any kind: a file that it does not name may be among them, one that is spelled with
/// escapes is not.
[[nodiscard]] std::vector<std::filesystem::path> files_named_in(std::string_view text, const std::filesystem::path& job_file);

}  // namespace seamward
