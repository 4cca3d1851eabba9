// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "interior/find.h"
#include "interior/spaces.h"

namespace seamward {

/// Adds the bodies to `found.spaces`: outdoors first, then by falling volume, with ids, kinds and a note on what was guessed.
/// Bodies must start with outdoors and the rooms of the settings. The result tells for each body its space.
[[nodiscard]] std::vector<std::size_t> name_spaces(const Passages& passages, const Bodies& bodies, const Model& model,
                                                   const FindSettings& settings, Found& found);

}  // namespace seamward
