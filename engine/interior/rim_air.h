// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "interior/spaces.h"

namespace seamward {

/// Tells whose air it is right beside the solids, where no ball has room.
class RimAir {
public:
    /// O(n) for the cells of the model.
    RimAir(const Passages& passages, const Bodies& bodies);

    /// The body that the air at a point a hair's breadth off the solids opens into, looking on in a direction; nothing within a
    /// part and in air that no body is joined to.
    /// `side`: of the cuts of space, holds the point.
    [[nodiscard]] std::optional<std::int32_t> body_at(const Point& at, const Vector& onward, std::uint32_t side) const;
    [[nodiscard]] std::uint32_t side_around(const Point& a, const Point& b, double reach) const {
        return passages_.air().complex.side_around(a, b, reach);
    }

private:
    void share_cells();
    void flood();
    [[nodiscard]] std::int32_t look_on(const Point& from, const Vector& onward) const;
    [[nodiscard]] std::int32_t of_nearest_stand(std::uint32_t cell, const Point& to) const;

    static constexpr std::int32_t nobody = -1, several = -2;
    const Passages& passages_;
    const Bodies& bodies_;
    std::vector<std::int32_t> body_;  ///< for each cell
};

}  // namespace seamward
