// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "house/house.h"

namespace seamward::test {

/// Two bodies of air that are one, and a way from the first to the second.
struct Leak {
    SpaceIndex from, to;
    std::vector<Point> way;  ///< through middles of boxes; one step is `pitch` long
};

struct LeakSearch {
    double pitch = 0.025;  ///< meters; no more than the thinnest space, so that some box's middle lies in it
    int shift = 0;         ///< moves the boxes; a crack much thinner than a box is met by chance, so try several
};

/// Looks for air that gets from one space of a house into another past all of its parts, given with every gap shut. A second
/// opinion that knows nothing of how the parts were made: the house is filled with boxes, and air goes from one to the next where
/// the line between their middles crosses no triangle. It starts on the spaces' middle surfaces, and outdoors above the roof.
/// Spaces whose start no box's middle sees are named in `unseen`. Memory: 8 bytes a box.
[[nodiscard]] std::vector<Leak> leaks_of(const House& house, const LeakSearch& search, std::vector<std::string>& unseen);

}  // namespace seamward::test
