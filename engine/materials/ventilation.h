// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/survey.h"
#include "base/vented.h"

namespace seamward {

/// The share of a mesh's face that is open, from its clear opening in meters: (opening / (opening + wire)) squared, with the wire
/// of the mesh of the table whose opening is nearest; of two as near, the one that leaves less.
[[nodiscard]] double open_share(double opening);

/// Net free area of one piece of the gap as it stands, in square meters: of a slot width times length, of a hole or ring its
/// area, of a mesh the open share of its screened area. A mesh that was put over an opening leaves its open share of that
/// opening's free area. Nothing where a screened area was not stated.
[[nodiscard]] std::optional<double> free_area(const Gap& gap);

/// Free area that is due, in square meters; `rule` is an id of the table of free areas. `floor`: of the vented space, of the
/// enclosure of flood openings, square meters. `btu_per_hour`: input of all appliances; the area is due of each opening. Throws
/// std::out_of_range when the table has no such rule of that kind, as do the next two.
[[nodiscard]] double vent_area_due(double floor, std::string_view rule = "attic");
[[nodiscard]] double flood_area_due(double floor);
[[nodiscard]] double combustion_air_due(double btu_per_hour, std::string_view rule = "combustion-two");
/// The face of a louver that has that free area, in square meters.
[[nodiscard]] double louver_face(double free, std::string_view rule = "metal-louver");

/// How much air a space gets before and after a treatment.
struct VentCheck {
    SpaceIndex space;
    double before = 0, after = 0;    ///< net free area, square meters; of combustion air, of the smallest opening
    std::optional<double> required;  ///< likewise; nothing where floor or input is not known
    std::size_t unstated = 0;        ///< openings whose screened area the survey does not state; they count as none above
    bool starved = false;            ///< the treatment must be refused
    bool doubtful = false;           ///< nobody can tell, and more than a little is lost: warn
    Message text;                    ///< for people
    Message source;                  ///< for people; of `required`
};

/// Above this share of the free area a loss is told. Two wires that are both sold as quarter-inch mesh differ by 9 %, so a
/// smaller loss is within what nobody knows of a mesh.
inline constexpr double told_loss = 0.1;

/// One check for each space of `floor_areas` that vents lead into, and one for each group of vented spaces of which no floor area
/// is given, of the innermost; by space. `after` is `before` with gaps treated: same spaces, same gaps, same order. Air
/// may come through other vented spaces, as into an attic through its eaves: what counts is the largest flow of free area from
/// outdoors, each vent passed once. Starved is a space that
/// - had the area that its rule asks for and has it no more; an attic that had less is held to the rule for balanced vents; or
/// - was short before and loses more than `told_loss`.
/// O(spaces x vents squared) at worst.
[[nodiscard]] std::vector<VentCheck> check_ventilation(const Survey& before, const Survey& after,
                                                       std::span<const SpaceArea> floor_areas);

/// One check for each space that combustion air is let into, by space. Each opening must have the area due, so the smallest
/// counts. Starved is a space where it had that and has it no more, or was short and loses any; doubtful, where no input is known
/// and any is lost.
[[nodiscard]] std::vector<VentCheck> check_combustion_air(const Survey& before, const Survey& after,
                                                          std::span<const SpaceInput> inputs);

}  // namespace seamward
