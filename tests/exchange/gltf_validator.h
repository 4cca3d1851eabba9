// SPDX-License-Identifier: GPL-3.0-or-later
// The validator of Khronos, makers of the format, by Node.js. docs/dependencies.md says where it comes from.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace seamward::test {

struct Validation {
    bool ran = false;    ///< whether there was a validator
    bool valid = false;  ///< no errors in any file
    std::string words;   ///< all that it said; when it did not run, why
};

/// Checks GLB files. The first call fetches the validator by npm into the folder of the build, as the lock file says.
[[nodiscard]] Validation validate_glb(const std::vector<std::filesystem::path>& files);

}  // namespace seamward::test
