// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostics.h"
#include "base/plane.h"
#include "base/run_context.h"
#include "base/survey.h"
#include "catalog/features.h"

namespace seamward {

/// One layer of a wall, listed from outside in.
struct WallLayer {
    std::string material;  ///< a substrate word; empty for air
    double thickness = 0;  ///< meters
    [[nodiscard]] bool is_air() const { return material.empty(); }
};

/// Layers of a wall from outside in; begins and ends with a solid one.
struct Assembly {
    std::string id;
    std::vector<WallLayer> layers;
};

/// A space as the file names it.
struct NamedSpace {
    std::string id, name;
    Message spoken = {};  ///< the name in its parts, where the program made it of these
};

/// A part of the air between joists, by a point of the plan in it.
struct VoidDescription {
    Place place;
    NamedSpace space;
    Point2 at;
};

struct StoryDescription {
    double height = 0;                              ///< floor to ceiling
    double floor = 0;                               ///< thickness of the floor structure under it; not for the first story
    NamedSpace void_below;                          ///< the air between the joists under it
    std::vector<VoidDescription> voids;             ///< more of it, where partitions that go through the floor part it
    std::vector<std::vector<NamedSpace>> cavities;  ///< for each wall the air in it from outside in, where the file names it
};

struct PartitionDescription {
    Place place;
    std::string id, name;
    std::size_t assembly = 0, story = 0;
    std::size_t to_story = 0;  ///< its air goes on up to that story; the same as `story` when it does not
    bool from_below = false;   ///< its air begins over the ceiling of the story below
    Point2 from, to;
    NamedSpace cavity;
};

struct RoomDescription {
    Place place;
    std::string id, name;
    SpaceKind kind = SpaceKind::living;
    bool source = false;
    std::size_t story = 0;
    std::size_t to_story = 0;  ///< it is open up to the ceiling of that story
    Point2 at;
};

enum class OpeningKind : std::uint8_t { door, window, garage_door, sliding_door, crawl_door, archway };

struct OpeningDescription {
    Place place;
    std::string id, name;
    OpeningKind kind = OpeningKind::door;
    std::string in;  ///< id of a wall or partition
    std::size_t story = 0;
    double along = 0, width = 0, height = 0,
           sill = 0;   ///< `along` to the middle; sill over the floor, a crawl door's over the yard
    NamedSpace frame;  ///< the air in its hollow sill; empty id: the sill is solid
};

enum class RoofShape : std::uint8_t { hip, gable, shed, flat };

struct RoofDescription {
    Place place;
    RoofShape shape = RoofShape::hip;
    double pitch = 0;  ///< rise over run
    double overhang = 0, rake = 0;
    std::vector<std::size_t> gables;  ///< walls under gables
    std::size_t low = 0;              ///< of a shed roof: the wall that it falls toward
    double parapet = 0;               ///< of a flat roof: height of the wall above it
    std::string material = "tile";
    NamedSpace attic, eave;
    bool attic_source = false;
};

enum class FoundationKind : std::uint8_t { slab, crawl_space, basement };

struct FoundationDescription {
    FoundationKind kind = FoundationKind::slab;
    double above_grade = 0.15;
    bool above_grade_stated = false;
    double height = 0;  ///< clear height of the space under the floor; of a slab: the settled fill's
    NamedSpace space;   ///< empty id under a slab: the fill has not settled
    SpaceKind space_kind = SpaceKind::cavity;
};

/// A wall of hollow blocks along a line of points; where an end comes near a wall of the house, it meets it.
struct BlockWallDescription {
    Place place;
    std::string id, name;
    Loop points;  ///< not closed
    double height = 0;
};

struct PavingDescription {
    Place place;
    std::string id, name;
    Loop corners;
};

/// Walls and partitions whose studs part their cavity into bays, each a space of its own.
struct StudBaysDescription {
    Place place;
    std::vector<std::string> on;
    double spacing = 0;
};

/// A box under a ceiling: a dropped soffit over cabinets, a cover over ducts.
struct BulkheadDescription {
    Place place;
    std::string id, name;
    std::size_t story = 0;
    Point2 least, most;  ///< of its plan
    double drop = 0;     ///< from the ceiling down
};

/// One line of the list of features.
struct FeatureDescription {
    Place place;
    std::string id, name;
    const Feature* type = nullptr;
    std::vector<std::string> on;      ///< ids of walls, partitions, openings ...
    std::optional<double> along, up;  ///< on something upright
    std::optional<Point2> at;         ///< on something level
    std::string side;                 ///< of a partition: the room on that side; of an opening: an edge
    std::size_t story = 0;
    std::optional<double> spacing;
    std::optional<std::uint32_t> count;
    NamedSpace space;     ///< the air inside, of features that have some
    bool source = false;  ///< whether animals come out of that air
    /// What the line says of single gaps: as many as the type has, in its order.
    struct Sizes {
        bool left_out = false;  ///< `none`: this opening was never made
        std::optional<double> width, around, length;
        std::optional<std::array<double, 2>> size;
        std::string id, name;
        Evidence evidence{Evidence::How::assumed, 0};  ///< modeled where the file states the width
        Closing closing;
        std::string note;
    };
    std::vector<Sizes> gaps;
};

/// A house as its file describes it. Lengths in meters; places are in that file.
struct HouseDescription {
    std::string file, name;
    NamedSpace outdoors{"yard", "yard"};
    std::vector<Assembly> assemblies;
    Loop outline;  ///< outer face of the framing, counterclockwise
    std::vector<std::string> walls;
    std::size_t wall_assembly = 0;
    FoundationDescription foundation;
    std::vector<StoryDescription> stories;
    std::vector<PartitionDescription> partitions;
    std::vector<StudBaysDescription> stud_bays;
    std::vector<BulkheadDescription> bulkheads;
    std::vector<RoomDescription> rooms;
    std::vector<OpeningDescription> openings;
    RoofDescription roof;
    double yard_margin = 4;
    std::vector<PavingDescription> paving;
    std::vector<BlockWallDescription> block_walls;
    std::vector<FeatureDescription> features;
    /// What the text says and the house has no use for: told when it is built.
    std::vector<Diagnostic> unfit;
};

/// Reads the description of a house. Throws BadInput with all faults that show without building it.
[[nodiscard]] HouseDescription read_house_description(const std::filesystem::path& path, const std::string& shown_as,
                                                      const RunContext& context);
[[nodiscard]] HouseDescription parse_house_yaml(std::string_view text, const std::string& shown_as);

}  // namespace seamward
