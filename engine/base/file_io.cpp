// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/file_io.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <fstream>

#include "base/diagnostics.h"

namespace seamward {

std::string read_file(const std::filesystem::path& path, const std::string& shown_as, std::uint64_t most_bytes) {
    const auto fail = [&](std::string what, std::string mend) {
        throw BadInput({{shown_as, {}, std::move(what), std::move(mend)}});
    };
    std::error_code error;
    const std::filesystem::file_status status = std::filesystem::status(path, error);
    if (status.type() == std::filesystem::file_type::not_found) fail("no such file", "check the path");
    if (!std::filesystem::exists(status))
        fail("cannot be reached (" + error.message() + ')', "check the permissions of its folder");
    if (std::filesystem::is_directory(status)) fail("is a folder, not a file", "name a file in it");
    std::ifstream in(path, std::ios::binary);
    if (!in) fail(std::string("cannot be opened (") + std::strerror(errno) + ')', "check its permissions");
    std::string text;
    const std::uintmax_t size = std::filesystem::file_size(path, error);  // pipes have none
    if (!error && size <= most_bytes) text.reserve(size);
    std::array<char, 1 << 16> block{};
    while (in.read(block.data(), block.size()) || in.gcount() > 0) {
        text.append(block.data(), static_cast<std::size_t>(in.gcount()));
        if (text.size() > most_bytes) fail("is larger than " + std::to_string(most_bytes >> 20) + " MiB", "split it");
    }
    if (in.bad()) fail(std::string("cannot be read (") + std::strerror(errno) + ')', "check the disk");
    return text;
}

}  // namespace seamward
