// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>
#include <string>
#include <vector>

#include "base/plane.h"

namespace seamward::viewer {

/// A house as a few questions describe it. Meters. The street runs before the front wall, at y = 0; x counts to the right as seen
/// from the street, y away from it.
struct NewHouse {
    enum class Shape : std::uint8_t { rectangle, l, t, u, corners };
    enum class Roof : std::uint8_t { hip, gable, shed, flat };
    enum class Cladding : std::uint8_t { stucco, brick, siding };
    enum class Foundation : std::uint8_t { slab, crawl_space, basement };
    enum class Garage : std::uint8_t { none, one_car, two_cars };

    std::string name, address, surveyed;  ///< plain text; may be empty, but not the name
    Shape shape = Shape::rectangle;
    double length = 14, depth = 9;           ///< of the main body: along the street, and away from it
    double wing_length = 5, wing_depth = 4;  ///< of each wing at its back: along the street, and how far it reaches on
    Loop corners;                            ///< of Shape::corners, either way round; the first wall is the front
    int stories = 1;
    Roof roof = Roof::hip;
    Cladding cladding = Cladding::stucco;
    Foundation foundation = Foundation::slab;
    int bedrooms = 3, baths = 2;     ///< no bedrooms: a story is one room
    Garage garage = Garage::none;    ///< at the left end of the front; none in a house of typed corners
    std::vector<std::string> pests;  ///< ids of the catalog
};

/// Why a house cannot be made as it was described, for the question that it belongs to.
struct NewHouseFault {
    enum class Of : std::uint8_t { name, length, depth, wing_length, wing_depth, corners, roof, garage, rooms };
    Of of = Of::name;
    QString text;  ///< a sentence for people
};

/// The outline, counterclockwise, its first wall the front. Empty where too few corners were typed.
[[nodiscard]] Loop outline_of(const NewHouse& house);

/// Length and depth of the garage in the left front corner; zeros without one.
[[nodiscard]] Point2 garage_size(const NewHouse& house);

/// Walls of the outline that a gable can stand on, none beside another; by position.
[[nodiscard]] std::vector<std::size_t> gable_walls(const Loop& outline);

/// The wall that a shed roof over this outline can run off over, the longest; outline.size() when there is none.
[[nodiscard]] std::size_t low_wall(const Loop& outline);

/// All that stands in the way of making the house, one fault a question at most; empty: new_house_text() has an answer.
[[nodiscard]] std::vector<NewHouseFault> faults_of(const NewHouse& house);

/// A house file and a job file that names it.
struct NewHouseText {
    std::string house, job;
};

/// The house with what such a house usually has: doors, windows, pipes, vents, registers and lights at usual places, each marked
/// as assumed and to be checked on site. The same house gives the same bytes. `house_file` is how the job names the house file.
/// The house must be without faults.
[[nodiscard]] NewHouseText new_house_text(const NewHouse& house, const std::string& house_file);

/// A text in double quotes as YAML reads it.
[[nodiscard]] std::string yaml_quoted(const std::string& text);

/// A name as the beginning of a file's name: small letters, digits and hyphens. "house" where nothing is left.
[[nodiscard]] QString file_word(const QString& name);

}  // namespace seamward::viewer
