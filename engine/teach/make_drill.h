// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "base/run_context.h"
#include "teach/drill.h"

namespace seamward {

/// A random drill: three files that belong together, whatever folder they are put in.
struct MadeDrill {
    std::string drill;  ///< drill.yaml
    std::string job;    ///< job.yaml, beside it
    std::string house;  ///< house.yaml, beside it: as it was given, under a first line that says who copied it
};

/// Makes a drill on a described house: some gaps open to its animals, with widths of its own; some that must stay open; some shut
/// tight. A hard one has an animal that lives in the house, where there is room for one. The same house, seed and difficulty give
/// the same texts. What comes out was read back, and its perfect answers have all points. Throws BadInput when the house has too
/// few gaps for that.
[[nodiscard]] MadeDrill make_drill(const std::filesystem::path& house, std::uint64_t seed, Difficulty difficulty,
                                   const RunContext& context);

/// Whether a text begins as one of the three files of a random drill does.
[[nodiscard]] bool is_made_by_us(std::string_view text);

/// Throws BadInput when a file of a random drill would take the place of one in that folder that none is.
void refuse_files_of_others(const std::filesystem::path& folder);

}  // namespace seamward
