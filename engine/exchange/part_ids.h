// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/model.h"

namespace seamward {

/// Gives each part and room an id of its own, from what stands in its `id`, else its name: letters, digits and `-_./` of ASCII
/// stay, every run of others becomes one hyphen. What is left without any is "part-1", "part-2", ... ("room-1", ...). Of equal
/// ids the first keeps it, the others end in -2, -3, ...
void give_ids(Model& model);

}  // namespace seamward
