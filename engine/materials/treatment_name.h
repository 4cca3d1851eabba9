// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "base/message.h"

namespace seamward {

/// The name of a treatment for people; of one that the table does not have, that the survey states its price.
[[nodiscard]] Message treatment_name(std::string_view id);

}  // namespace seamward
