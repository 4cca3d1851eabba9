// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "catalog/tables.h"

namespace seamward {

/// The sizes of an animal and what they rest on: `slit 1/16 in (1.59 mm), said, not measured, from memory; hole ...; unsure`
[[nodiscard]] std::string sizes_text(const Pest& pest);

}  // namespace seamward
