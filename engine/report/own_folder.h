// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace seamward {

/// A temporary folder that only we may read, gone at the end with all that is in it. Throws BadInput when none can be made.
class OwnFolder {
public:
    OwnFolder();
    ~OwnFolder();
    OwnFolder(const OwnFolder&) = delete;
    OwnFolder& operator=(const OwnFolder&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

}  // namespace seamward
