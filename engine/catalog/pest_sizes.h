// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "catalog/tables.h"

namespace seamward {

/// The slit and the hole that an animal needs, and what these rest on: `slit 1/16 in (1.59 mm), said, not measured; hole 1/4 in
/// (6.35 mm), measured`. Sizes of a job's own profile say so.
[[nodiscard]] Message sizes_text(const Pest& pest);

}  // namespace seamward
