// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <string_view>

namespace seamward {

/// Writes a file in one go: into a new file beside it, which then takes its name. Whatever happens, the name stands for the
/// whole old content or the whole new one. A file that was there keeps its permissions, and a link goes on pointing to it. A
/// device or pipe is written to as it stands. Throws BadInput, under the name `shown_as`, when `path` cannot be written.
void write_whole_file(const std::filesystem::path& path, const std::string& shown_as, std::string_view bytes);

/// A file to be written.
struct WholeFile {
    std::filesystem::path path;
    std::string shown_as;
    std::string_view bytes;
};

/// The same for files that belong together: all are written beside their names before the first takes its name, so that one
/// which cannot be written leaves all of them as they were. What then takes its name takes it in this order. Devices and pipes
/// are written to last.
void write_whole_files(std::span<const WholeFile> files);

}  // namespace seamward
