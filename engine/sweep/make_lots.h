// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>

#include "base/run_context.h"

namespace seamward {

/// A subdivision to be made up.
struct MadeLots {
    std::uint32_t count = 100;
    std::uint64_t seed = 1;
    std::uint32_t bad = 0;  ///< so many of the files are faulty on purpose
};

/// Makes a folder of job files, lot-00001.yaml and so on, over described houses in its folder plans/. All of it is invented; the
/// head of each file says how. The same seed gives the same bytes everywhere, and the first lots of many are those of few, but
/// for bad ones. Throws BadInput when the folder is there and not empty, or cannot be written; then there is nothing new on the
/// disk.
void make_lots(const MadeLots& wanted, const std::filesystem::path& folder, const RunContext& context);

}  // namespace seamward
