// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/run_context.h"
#include "base/survey.h"
#include "base/vector.h"
#include "exchange/model.h"
#include "geometry/clean_part.h"

namespace seamward {

/// A point in a room that somebody knows, and what to call the air around it.
struct RoomSeed {
    std::string id;
    SpaceKind kind = SpaceKind::living;
    Point at;
};

struct FindSettings {
    std::vector<RoomSeed> rooms;
    double smallest = 0.3e-3;  ///< meters; what is narrower counts as shut
    double widest = 25e-3;     ///< meters; air on both sides of a wider passage is one space
};

/// One connected body of air.
struct FoundSpace {
    std::string id;
    SpaceKind kind = SpaceKind::cavity;
    std::optional<double> volume;     ///< cubic meters; none outdoors
    Point at;                         ///< a point within it
    std::vector<std::string> labels;  ///< what the file calls the spaces of the building that lie in it
};

/// A way for air between two spaces. Positions count through Found::spaces and Found::parts.
struct FoundGap {
    std::string id;
    std::string name;  ///< for people, after the parts on both sides
    std::array<std::size_t, 2> between{};
    Shape shape;                 ///< the slot's length and the like as below
    double width = 0;            ///< meters: the diameter of the largest ball that was led through
    double at_most = 0;          ///< meters: no ball larger than this gets through
    double length = 0;           ///< meters, of its mouth, along the middle
    double depth = 0;            ///< meters, as far as it is hardly wider than at its narrowest
    Point at;                    ///< where it is narrowest on the way of that ball
    std::vector<Point> through;  ///< the middle of the ball on its way, from air where a ball of `widest` stands to such air
    std::array<std::size_t, 2> parts{};  ///< that the ball touches there
    std::uint32_t openings = 1;          ///< of a mesh, or of slots side by side that are alike: how many
};

/// Where two parts touch or run into each other between two spaces: shut as drawn, and a place that can open.
struct FoundJoint {
    std::string id;
    std::string name;  ///< for people, after the parts
    std::array<std::size_t, 2> between{}, parts{};
    double length = 0;           ///< meters, of the shorter of its two mouths
    double depth = 0;            ///< meters, from mouth to mouth, the median along both
    Point at;                    ///< in the middle of `along`
    std::vector<Point> through;  ///< from air of the first space over `at` and the other mouth to air of the second
    std::vector<Point> along;    ///< its mouth in the first space
};

/// Narrow air that leads nowhere: a slot that ends or comes out in the space that it began in, or air shut in on all sides.
struct FoundPocket {
    std::string id;
    std::optional<std::size_t> space;  ///< that it opens to; none: it is shut in
    double width = 0;                  ///< meters: of the largest ball in its mouth; of shut-in air the largest anywhere
    double depth = 0;                  ///< meters from its mouth to its farthest place; 0 where it is shut in
    double volume = 0;                 ///< cubic meters
    Point at;
    std::array<std::size_t, 2> parts{};
};

/// What was found of a part of the model.
struct FoundPart {
    std::string id, name, ifc_class, global_id;
    PartFaults faults;
    std::optional<std::size_t> same_as;  ///< the part that it doubles
    bool shares_name = false;            ///< with another part: only its id tells which it is
};

struct Found {
    std::vector<FoundSpace> spaces;    ///< outdoors first, then by falling volume
    std::vector<FoundGap> gaps;        ///< by falling width
    std::vector<FoundJoint> joints;    ///< by falling length
    std::vector<FoundPocket> pockets;  ///< by falling volume
    std::vector<FoundPart> parts;      ///< in the order of the model
    Vector size;                       ///< meters, of the box around the model
    std::vector<std::string> notes;
};

/// `12.40 x 8.00 x 5.25 m`
[[nodiscard]] std::string size_text(const Vector& size);

/// Spaces and gaps of a model from its solids alone. Throws BadInput on rooms that are nowhere in the air.
[[nodiscard]] Found find_gaps(const Model& model, const FindSettings& settings, const RunContext& run);

}  // namespace seamward
