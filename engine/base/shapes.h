// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <numbers>
#include <optional>
#include <variant>

namespace seamward {

/// A long opening between two faces. Meters.
struct Slot {
    double width = 0;
    double length = 0;
};

/// A round opening. Meters.
struct Hole {
    double diameter = 0;
};

/// The annular space around a pipe. Meters. `width` is the hole's radius less the pipe's (for an off-center
/// pipe: the widest side), `around` is the pipe's outer diameter.
struct Ring {
    double width = 0;
    double around = 0;
};

/// A screened opening. `opening` is the clear side of one square mesh in meters, never its nominal count;
/// `area` is the screened area in square meters, when it was stated.
struct Mesh {
    double opening = 0;
    std::optional<double> area;
};

using Shape = std::variant<Slot, Hole, Ring, Mesh>;

/// The one number that a gap is ranked by, in meters: a slot's or ring's width, a hole's diameter, a mesh's
/// clear opening.
[[nodiscard]] double clear_width(const Shape& shape);

/// The same shape with its clear width changed by `by` meters (never below 0); every other size is kept.
[[nodiscard]] Shape widened(const Shape& shape, double by);

/// Whether nothing at all gets through: one of the sizes that must be positive is 0.
[[nodiscard]] bool is_shut(const Shape& shape);

/// Length of the middle line of a ring, in meters.
[[nodiscard]] constexpr double mid_circumference(const Ring& ring) { return std::numbers::pi * (ring.around + ring.width); }

/// "slot", "hole", "ring" or "mesh".
[[nodiscard]] const char* shape_word(const Shape& shape);

}  // namespace seamward
