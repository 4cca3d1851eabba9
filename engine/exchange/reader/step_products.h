// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace seamward {

/// A product as it stands in the text of a STEP file: `#514=IFCSPACE('0BTBFw6f90Nfh9rP1dlXrr',...)`.
struct StepProduct {
    std::int64_t number = 0;  ///< 514
    std::string ifc_class;    ///< "IFCSPACE"
    std::string global_id;
    bool has_shape = false;  ///< it names a representation
};

/// The products of a building in the order of the text, of whatever class and schema: what has a GlobalId and a place or a
/// shape. Left out is what is no thing in the house: storeys and sites without a shape, zones, openings, grids, annotations,
/// ports and the like. Comments and texts are respected; it is no parser of the whole format.
[[nodiscard]] std::vector<StepProduct> products_in_step(std::string_view text);

}  // namespace seamward
