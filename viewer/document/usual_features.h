// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "document/house_places.h"

namespace seamward::viewer {

/// Openings and features of a new house, each the inside of one entry of its list in a house file.
struct UsualParts {
    std::vector<std::string> openings, features;
};

/// What a house of that kind usually has, at the first places that are free. Takes those places.
[[nodiscard]] UsualParts usual_parts(const NewHouse& house, HousePlaces& places);

/// "4.25 m", to a tenth of a millimeter.
[[nodiscard]] std::string meters_text(double meters);

/// "[4.25 m, 2 m]"
[[nodiscard]] std::string point_text(Point2 point);

}  // namespace seamward::viewer
