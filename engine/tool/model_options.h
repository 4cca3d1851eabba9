// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "exchange/read_model.h"
#include "interior/find.h"

namespace seamward {

/// What is said of a 3D file on the command line. What is empty was left out.
struct ModelOptions {
    std::vector<std::string> rooms;
    std::string smallest, widest, unit, up;
};

/// How to read the file and what to look for. Throw WrongUsage for what makes no sense.
[[nodiscard]] ReadSettings read_settings(const ModelOptions& options);
[[nodiscard]] FindSettings find_settings(const ModelOptions& options);

}  // namespace seamward
