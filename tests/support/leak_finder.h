// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "house/description.h"
#include "house/house.h"

namespace seamward::test {

/// Two bodies of air that are one, and a way from the first to the second.
struct Leak {
    SpaceIndex from, to;
    std::vector<Point> way;  ///< through middles of boxes; one step is `pitch` long
};

/// The house with all its gaps shut.
[[nodiscard]] House shut_house(const HouseDescription& described);

/// Boxes so small that the thinnest air of a house holds some, and no more of them than can be looked at in a few seconds.
/// Meters.
[[nodiscard]] double pitch_for(const HouseDescription& described, const House& house);

struct LeakSearch {
    double pitch = 0.025;  ///< meters; no more than the thinnest space, so that some box's middle lies in it
    int shift = 0;         ///< moves the boxes; a crack much thinner than a box is met by chance, so try several
};

/// The air of a house, given with every gap shut, sorted into its spaces. A second opinion that knows nothing of how the parts
/// were made: the house is filled with boxes, and air goes from one to the next where the line between their middles crosses no
/// triangle. It starts on the spaces' middle surfaces, and outdoors above the roof. Memory: 3 bytes a box.
class AirMap {
public:
    AirMap(const House& shut, const LeakSearch& search);
    ~AirMap();
    AirMap(const AirMap&) = delete;
    AirMap& operator=(const AirMap&) = delete;

    /// Air that gets from one space into another past all parts.
    [[nodiscard]] const std::vector<Leak>& leaks() const;
    /// Spaces with a middle surface of which no box's middle sees a point.
    [[nodiscard]] const std::vector<SpaceIndex>& unseen() const;
    /// The space whose air is at a point; invalid where there is none near, as in a solid.
    [[nodiscard]] SpaceIndex space_at(const Point& at) const;

private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

/// Whether a way from point to point crosses no triangle of a house.
[[nodiscard]] bool is_clear(const House& house, std::span<const Point> way);

}  // namespace seamward::test
