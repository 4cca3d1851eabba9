// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/index.h"
#include "base/message.h"
#include "base/money.h"
#include "base/shapes.h"

namespace seamward {

/// A point in the frame of the job, in meters, z up.
struct Point {
    double x = 0, y = 0, z = 0;
};

/// Distance in meters.
[[nodiscard]] double distance(const Point& a, const Point& b);

enum class SpaceKind : std::uint8_t { outdoors, cavity, attached, living, harborage };

/// One connected body of air.
struct Space {
    std::string id;
    std::string name;  ///< for people; empty when the file gave none
    SpaceKind kind = SpaceKind::cavity;
    bool source = false;  ///< starts entry paths as outdoors does
    Message spoken;       ///< the name in its parts, where the program made it of these; empty: it did not

    [[nodiscard]] bool starts_paths() const { return kind == SpaceKind::outdoors || source; }
    [[nodiscard]] bool is_living() const { return kind == SpaceKind::living; }
    [[nodiscard]] const std::string& label() const { return name.empty() ? id : name; }
    [[nodiscard]] Message called() const { return spoken.empty() ? as_named(label()) : spoken; }
};

/// What a gap is there for.
enum class Duty : std::uint8_t { none, drain, weep, vent, exhaust, combustion_air, flood, relief, movement, operable };

/// Whether that duty is defeated by closing: drains, weeps, vents and the like, but not doors and movement joints.
[[nodiscard]] constexpr bool serves_as_opening(Duty duty) {
    return duty != Duty::none && duty != Duty::movement && duty != Duty::operable;
}

/// The duty for people: "drain", "combustion air", "flood opening".
[[nodiscard]] const char* duty_words(Duty duty);

/// How a size came to be known, and how far it may be off.
struct Evidence {
    enum class How : std::uint8_t { unstated, measured, modeled, assumed };
    How how = How::unstated;
    double plus_minus = 0;  ///< meters, applies to the clear width
};

/// What the survey itself says about closing a gap.
struct Closing {
    std::optional<Money> cost;  ///< full closing of one piece, labor included; then the only treatment
    std::string never;          ///< why it must never be closed; empty when it may be
    std::string never_source;   ///< where a reference table has `never` from; empty where the survey itself says it
    std::string with;           ///< the treatment that `cost` is for, an id; empty: the survey does not say
    bool mesh_allowed = false;  ///< `never` is said of a full closing; an open mesh may be put over it
};

/// An opening that a mesh was put over; whatever wants through has to pass both.
struct Covered {
    Shape shape;
    double plus_minus = 0;  ///< meters
};

/// An opening between two different spaces.
struct Gap {
    std::string id;
    std::string name;  ///< for people; empty when the file gave none
    std::array<SpaceIndex, 2> between;
    Shape shape;                     ///< as it stands now; where a mesh was put over it, the mesh
    std::optional<Covered> covered;  ///< what that mesh was put over
    std::uint32_t count = 1;         ///< that many alike, one gap in paths; sizes and cost are per piece
    Duty duty = Duty::none;
    std::optional<Point> at;
    std::optional<double> depth;          ///< meters, through the part
    std::optional<double> joint_spacing;  ///< meters to the next joint of its kind: so much wall grows and shrinks at this one
    std::vector<std::string> substrates;
    Evidence evidence;
    Closing closing;
    std::string feature;  ///< id of the kind of feature that makes it, in the table of features; empty: not known
    std::string usual;    ///< id of the treatment that is usual for it; empty: none is known
    std::string note;     ///< the survey's, for people
    std::string photo;    ///< a picture file, as a path from the folder of the job file; empty: none
    Message spoken;       ///< the name in its parts, where the program made it of these; empty: it did not

    [[nodiscard]] const std::string& label() const { return name.empty() ? id : name; }
    /// The label as it can be said in other languages.
    [[nodiscard]] Message called() const { return spoken.empty() ? as_named(label()) : spoken; }
    /// Whether the gap is there to let water or air through, or the survey says that it must never be closed.
    [[nodiscard]] bool must_stay_open() const { return !closing.never.empty() || serves_as_opening(duty); }
    /// The space at the other side of the gap.
    [[nodiscard]] SpaceIndex across(SpaceIndex from) const { return between[0] == from ? between[1] : between[0]; }
};

/// Puts a mesh of that clear opening over a gap, or shuts it where `opening` is 0. A mesh that is not finer than the gap changes
/// nothing, nor does anything put over a gap that is shut.
void close_gap(Gap& gap, double opening);

/// Everything known of a house as far as ways in are concerned: nodes and edges.
struct Survey {
    std::vector<Space> spaces;
    std::vector<Gap> gaps;

    [[nodiscard]] const Space& operator[](SpaceIndex i) const { return spaces[i.value]; }
    [[nodiscard]] const Gap& operator[](GapIndex i) const { return gaps[i.value]; }
};

}  // namespace seamward
