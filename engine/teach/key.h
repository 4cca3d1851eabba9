// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "teach/drill.h"

namespace seamward {

/// The treatment of a finding that says to leave the gap as it is.
inline constexpr std::string_view leave_open = "leave-open";

enum class PlaceState : std::uint8_t {
    open,        ///< an animal of the drill gets through, and it may be closed
    stays_open,  ///< what it is there for forbids a full closing
    narrow,      ///< open, and too narrow for every animal of the drill: neither due nor false
    tight        ///< nothing is open
};

/// A treatment that is right at a place.
struct RightTreatment {
    std::string id;
    double opening = 0;  ///< of the mesh that is left, meters
};

/// What is true of a place.
struct PlaceKey {
    PlaceState state = PlaceState::tight;
    double width = 0;  ///< clear width, meters
    double plus_minus = 0;
    std::vector<std::size_t> passes;    ///< animals of the drill that get through, perhaps; positions in Drill::animals
    std::vector<RightTreatment> right;  ///< closings, the cheapest first; each stops as many of those as any can
    bool leave = false;                 ///< leaving it open is right
    bool gnawed = false;                ///< something fits that animals that get through gnaw

    /// Whether an answer is expected there.
    [[nodiscard]] bool due() const { return state == PlaceState::open || state == PlaceState::stays_open; }
    [[nodiscard]] bool treatment_asked() const { return leave || !right.empty(); }
};

/// The key of every place. Right are the treatments that fit the gap (options_for), that its duty allows, that starve no vent and
/// no appliance, and that stop the most of the animals that get through; what rodents gnaw stops none of them.
[[nodiscard]] std::vector<PlaceKey> drill_key(const DrillRound& round);

/// Whether that treatment is right; `opening` of a mesh whose kind does not say it, meters.
[[nodiscard]] bool is_right(const PlaceKey& key, std::string_view treatment, double opening);

/// A tape is read to its nearest mark, 1/16 in, meters; or to a millimeter, which is less. Common practice, no published source.
inline constexpr double tape_mark = 0.0254 / 16;

/// Whether a width is more than any of the gauges of the table tells, so that a tape is held to it.
[[nodiscard]] bool read_on_tape(double width);

/// How far a width may be off and count as right, meters; of one that is read on a tape never less than a mark of it.
[[nodiscard]] double width_slack(const PlaceKey& key, const WidthTolerance& tolerance);

}  // namespace seamward
