// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "catalog/tables.h"

namespace seamward {

/// A woven or welded mesh.
struct MeshKind {
    std::string id;
    std::string name;
    std::array<std::uint32_t, 2> counts{};  ///< openings to the inch, across and up
    double wire = 0;                        ///< its thickness, meters
    std::string source;                     ///< id of a source of the table

    /// The clear opening, of two the smaller: 1 in / count - wire. Meters.
    [[nodiscard]] double opening() const;
    /// The share of its face that is open: (opening x count) squared, of two counts the product.
    [[nodiscard]] double open_share() const;
};

/// How much free area is due, or how much of a louver is free. One of `per_floor`, `per_input` and `share` is more than 0.
struct FreeAreaRule {
    std::string id;
    std::string name;
    double free = 0;       ///< net free area that is due, square meters
    double per_floor = 0;  ///< for that much floor, square meters
    double per_input = 0;  ///< for that many Btu/h of the appliances' input, each opening
    double share = 0;      ///< of a louver's face that counts as free
    std::string source;    ///< id of a source of the table
};

/// Readers of the tables' YAML text. Each throws BadInput that names file, line and column when a key is unknown or missing, a
/// figure is 0, a wire leaves nothing open, a source is unknown, or a rule is none or several of its three kinds.
[[nodiscard]] Table<MeshKind> read_meshes(std::string_view yaml, const std::string& shown_as);
[[nodiscard]] Table<FreeAreaRule> read_free_areas(std::string_view yaml, const std::string& shown_as);

}  // namespace seamward
