// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "provisions/facts.h"

/// For this folder only.
namespace seamward {

/// One thing that a provision looks at, and what was measured of it.
struct Measured {
    Message subject;
    std::optional<double> value;  ///< in the measure's unit; nothing: not known
    double plus_minus = 0;        ///< likewise
    Message remark;               ///< why it is not known, or how it was measured; may be empty
    std::optional<GapIndex> gap;
    std::optional<Point> at;
    std::vector<GapIndex> gaps;  ///< all that it is made of; of one gap, that
};

/// The things that a provision is held against; none where there is nothing of the kind. What a survey states takes the place of
/// what the solids say.
[[nodiscard]] std::vector<Measured> measure(const AuditFacts& facts, const Provision& provision);

/// Of measures of gaps, of spaces, and of the house.
[[nodiscard]] std::vector<Measured> measure_gaps(const AuditFacts& facts, const Provision& provision);
[[nodiscard]] std::vector<Measured> measure_spaces(const AuditFacts& facts, const Provision& provision);
[[nodiscard]] std::vector<Measured> measure_house(const AuditFacts& facts, const Provision& provision);

/// A gap as a thing to measure, with its name and place.
[[nodiscard]] Measured subject_of(const AuditFacts& facts, GapIndex gap);

/// Why the closing of a gap that is shut does not show that it is closed as a provision asks; empty where it does, or where there
/// is none.
[[nodiscard]] Message closing_doubt(const AuditFacts& facts, GapIndex gap, const Provision& provision);

/// Where a gap is; no way through where that is not known.
[[nodiscard]] GapPlace place_of(const AuditFacts& facts, GapIndex gap);

/// Why a place of the house's solids tells nothing.
inline constexpr const char* place_not_said =
    "the file of the house does not say where it is: what the tables start with is a guess";

/// What the survey states of a gap, or of the house where `gap` is none; null: nothing.
[[nodiscard]] const Detail* stated(const AuditFacts& facts, const std::string& measure, std::optional<GapIndex> gap);

/// How far a gap's lower edge is over earth and over paving, where that is least, by the solids; nothing where they do not tell.
struct GroundClearance {
    std::optional<double> earth, paving;  ///< meters; nothing: none lies under it
    Point earth_at, paving_at;            ///< of the gap's edge
};
[[nodiscard]] std::optional<GroundClearance> clearance_over_ground(const AuditFacts& facts, GapIndex gap);

/// How far the pieces of a gap are apart along its wall, from middle to middle.
struct Spacing {
    double narrowest = 0;
    /// Also from the wall's ends and from doors to the next piece: so long is the longest stretch of wall without one.
    double widest = 0;
};
/// Nothing where it has fewer than two pieces or no solids.
[[nodiscard]] std::optional<Spacing> spacing_of(const AuditFacts& facts, GapIndex gap);

}  // namespace seamward
