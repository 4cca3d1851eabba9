// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "catalog/tables.h"

namespace seamward {

/// One figure by which drills are scored.
struct DrillScore {
    enum class Of : std::uint8_t {
        found,
        width,
        connection,
        treatment,
        false_alarm,  ///< taken away
        entry,
        width_share,
        width_least,
        near,
        pass_mark
    };
    std::string id;
    Of of = Of::found;
    double value = 0;  ///< points, a share of one, or meters
    std::string text;
    std::string source;
};

/// Throws BadInput that names file, line and column when a key is unknown or missing, an id is none of those above, one of them
/// is missing, or a row has another sort of figure than its id is for.
[[nodiscard]] Table<DrillScore> read_drill_scores(std::string_view yaml, const std::string& shown_as);

/// The figure of one sort; every sort has one, the reader sees to it.
[[nodiscard]] double drill_figure(const Table<DrillScore>& table, DrillScore::Of of);

}  // namespace seamward
