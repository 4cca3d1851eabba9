// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalog/tables.h"

namespace seamward {

/// One figure for sealed joints.
struct JointFigure {
    enum class Kind : std::uint8_t { length, share, rod, sealant_class, expansion, degrees };

    std::string id;
    Kind kind = Kind::length;
    double value = 0;    ///< meters, a share of one, growth for a kelvin, or kelvin
    double shrinks = 0;  ///< of a class: by what share the joint may get narrower
    std::string source;
    std::string note;
};

/// The rules for a joint's width and depth, picked out of the table. Meters and shares of one.
struct JointRules {
    double width_least = 0, depth_share = 0, depth_least = 0, depth_most = 0, caulk_below = 0, stock_step = 0;
    double rod_larger = 0, rod_larger_small = 0, rod_small_to = 0;
    double range = 0;  ///< of temperature where nothing is known of it, kelvin
};

/// Reads the table of figures for joints. Throws BadInput that names file, line and column when a key is unknown, missing or says
/// nothing of its kind, rods are not in rising order, or one of the figures of `JointRules` is missing.
[[nodiscard]] Table<JointFigure> read_joints(std::string_view yaml, const std::string& shown_as);

/// The rules of a table that read_joints() made.
[[nodiscard]] JointRules joint_rules(const Table<JointFigure>& table);

}  // namespace seamward
