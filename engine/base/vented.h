// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/index.h"

namespace seamward {

/// The floor of a space that is vented, in square meters, and the rule that holds there: an id of the table of free areas.
struct SpaceArea {
    SpaceIndex space;
    double floor = 0;
    std::string rule = "attic";
};

/// The input of the appliances in a space, and how they get their air.
struct SpaceInput {
    SpaceIndex space;
    double btu_per_hour = 0;
    std::string rule = "combustion-two";
};

}  // namespace seamward
