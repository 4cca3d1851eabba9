// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "base/diagnostics.h"
#include "geometry/prism.h"
#include "house/description.h"
#include "house/house.h"

namespace seamward {

/// A part in the making.
struct Panel {
    std::string id, name, material;
    Layer layer = Layer::framing;
    std::vector<Prism> prisms;  ///< what features cut is the first
};

/// Panels one behind the other that keep two bodies of air apart. Features cut through all of them at once.
struct Skin {
    std::string name;  ///< for people: "stucco of the north wall"
    Frame frame;
    double back = 0, front = 0;       ///< along n
    double along = 0, up = 0;         ///< how much n rises along u and v: of a roof
    std::vector<std::size_t> panels;  ///< from back to front
    Loop extent;                      ///< where features may be, in the frame's plane

    /// A height that runs along with the skin.
    [[nodiscard]] Height height(double out) const { return {out, along, up}; }
    [[nodiscard]] Point at(Point2 p, double out) const { return frame.at(p.x, p.y, height(out).at(p)); }
};

/// Air inside of a wall, between two of its skins.
struct WallCavity {
    double back = 0, front = 0;
    SpaceIndex space;                                 ///< of the first bay, when studs part it
    std::vector<std::pair<Figure, SpaceIndex>> bays;  ///< in u and v; empty: all of it is one space
    std::optional<std::size_t> closer;                ///< panel round the air behind a cladding; its first cut is the air
    std::vector<Loop> returns;                        ///< what closes the air round openings
    Loop inner;                                       ///< between studs and plates, openings not taken off

    /// The space at a place of the wall; invalid where framing stands.
    [[nodiscard]] SpaceIndex at(Point2 p) const;
    /// The bay at a place of the wall, as a position in `bays`; nothing where framing stands, or where studs part nothing.
    [[nodiscard]] std::optional<std::size_t> bay_at(Point2 p) const;
};

/// A wall of one story, or a partition.
struct WallLayout {
    std::string id, name;
    std::string described;  ///< id in the description; walls of upper stories share it
    std::size_t story = 0;
    bool exterior = false;
    bool open_below = false, open_above = false;   ///< of a partition: whether its air goes on through the floor, the ceiling
    bool meets_left = false, meets_right = false;  ///< of a partition: whether all of that end stands against another wall
    Frame frame;  ///< from its left end as seen from outside (from its right side, for a partition), at the floor; n outward
    double length = 0;  ///< at n = 0
    Slant slant;
    double bottom = 0, top = 0;                 ///< of the outer skin, heights over the story's floor
    double plate_top = 0;                       ///< of the framing
    std::vector<Skin> skins;                    ///< from outside in
    std::vector<std::size_t> outer_panels;      ///< all that may go on up into a gable
    std::vector<WallCavity> cavities;           ///< one fewer
    Skin top_plate, bottom_plate;               ///< level ones; without panels where the air goes on
    std::size_t left_post = 0, right_post = 0;  ///< panels that end the air between its studs
    std::vector<Loop> openings;                 ///< doors and windows, in u and v
    [[nodiscard]] double outside() const { return skins.front().front; }
    [[nodiscard]] double inside() const { return skins.back().back; }
};

/// The edge of a framed floor at one wall. Its skins reach from the air under the floor to that which is nearest outside: behind
/// a cladding on an air gap, else outdoors. In the frame of the wall over it.
struct RimLayout {
    Skin rim, sill;            ///< rim joist; sill plate on a foundation, without panels where there is none
    double low = 0, high = 0;  ///< of the rim joist
    double joint = 0;          ///< height of the joint under the rim joist
    double masonry = 0;        ///< height of the joint under the sill plate
    SpaceIndex front;          ///< what is before it
    double air = 0;            ///< depth of the air gap there; 0: none
};

/// A room, or a chase: a piece of the plan of one story.
struct RoomLayout {
    Figure figure;
    SpaceIndex space;
    Skin ceiling;  ///< without panels where the room is open up into the next story
};

/// A box under a ceiling.
struct BulkheadLayout {
    std::string id;
    std::size_t story = 0;
    Loop plan;
    SpaceIndex space;
    Skin bottom;
};

struct StoryLayout {
    double floor = 0;                                        ///< height of the floor
    double ceiling = 0;                                      ///< of the ceiling's lower side
    double plate_top = 0;                                    ///< of the walls' framing, flush with the ceiling's upper side
    SpaceIndex below;                                        ///< crawl space, settled fill, joist void; invalid: solid ground
    std::vector<std::pair<Figure, SpaceIndex>> parts_below;  ///< of an upper story: the air between the joists, part by part
    std::vector<RoomLayout> rooms;
    Skin floor_skin;              ///< slab or subfloor
    std::vector<RimLayout> rims;  ///< of the framed floor, one for each edge of the outline
};

/// One plane of the roof.
struct RoofFace {
    Loop plan;
    Height bottom;  ///< of the deck, over the plan
    Skin skin;      ///< level frame
};

/// The box under the eave of one wall.
struct EaveLayout {
    bool present = false;  ///< whether there is a box
    SpaceIndex air;        ///< in the box
    bool blocked = false;  ///< whether blocking stands on the wall
    Skin soffit;           ///< level; frame: u along the wall, v into the house
    Skin blocking;         ///< upright, between the rafters
    Skin fascia;           ///< upright
    double soffit_bottom = 0;
};

/// Something with a face of its own that features go into: a door leaf, a window, a duct's end.
struct LeafLayout {
    Skin skin;
    SpaceIndex front, back;
    double width = 0, height = 0;
};

/// One straight piece of a block wall.
struct BlockRun {
    std::string id;  ///< of the block wall
    std::size_t number = 0;
    Frame frame;  ///< along the middle; v from the ground up
    double length = 0, height = 0;
    SpaceIndex cells;
    Skin right, left, top;
    std::optional<Skin> start, end;  ///< where it meets the house: in the frame of the house's wall
    std::size_t start_wall = 0, end_wall = 0;
};

/// A house in the making: spaces, gaps and panels. The stages add to it in turn.
struct Layout {
    const HouseDescription& described;
    Diagnostics& faults;
    const std::map<std::string, double>& widths;  ///< clear widths that were measured anew, by id of the gap
    House house;
    std::vector<Panel> panels;
    std::unordered_map<std::string, int> panel_ids;         ///< with the number that the last of that id got
    std::unordered_map<std::string, SpaceIndex> space_ids;  ///< the first of each id
    std::unordered_set<std::uint32_t> airs_of_features;     ///< spaces that features enclose, which others may share
    std::vector<Place> space_places, gap_places;            ///< in the description
    SpaceIndex outdoors, attic;
    std::vector<StoryLayout> stories;
    std::vector<WallLayout> walls;  ///< exterior ones, story by story, then partitions
    std::vector<RoofFace> roof;
    std::vector<EaveLayout> eaves;             ///< one for each edge of the outline
    std::vector<WallLayout> foundation_walls;  ///< one for each edge of the outline, when there is air behind
    std::vector<BulkheadLayout> bulkheads;
    std::map<std::string, LeafLayout> leaves;  ///< by opening; the ends of a hollow sill as "ID/outer" and "ID/inner"
    std::vector<BlockRun> block_runs;
    std::map<std::uint32_t, std::pair<Skin, Point2>> duct_caps;  ///< by the air in them: what closes ducts over the roof
    double ground = 0;                                           ///< height of the yard
    const RunContext* context = nullptr;                         ///< asked in what may take long; none: it never stops

    void check() const {
        if (context != nullptr) context->check();
    }

    [[nodiscard]] std::size_t edges() const { return described.outline.size(); }
    SpaceIndex add_space(const NamedSpace& named, SpaceKind kind, Place place, bool source = false);
    /// An id that is there already gets a number.
    std::size_t add_panel(Panel panel);
    /// A panel of one prism.
    std::size_t add_panel(std::string id, std::string name, std::string material, Layer layer, Prism prism);
    /// The middle of a space, when it has none yet.
    void set_middle(SpaceIndex space, const Frame& frame, Figure figure);
    /// The room of a story that a point of the plan lies in, or nothing.
    [[nodiscard]] const RoomLayout* room_at(std::size_t story, Point2 at) const;
    [[nodiscard]] SpaceIndex room_space(std::size_t story, Point2 at) const;
    /// What lies under the ceiling there: the room, or the air of a bulkhead.
    [[nodiscard]] SpaceIndex under_ceiling(std::size_t story, Point2 at) const;
    /// The bulkhead whose box a point of the house lies in, or nothing.
    [[nodiscard]] const BulkheadLayout* bulkhead_at(const Point& at) const;
    /// What lies over the ceiling there: the attic, the air between joists or in a partition that begins there.
    [[nodiscard]] SpaceIndex above_ceiling(std::size_t story, Point2 at) const;
    /// What lies under the floor there; invalid: solid ground.
    [[nodiscard]] SpaceIndex below_floor(std::size_t story, Point2 at) const;
};

/// All of the stages before lay_out_features(). Throws BadInput where a fault keeps it from going on; others are in `faults`.
void lay_out_house(Layout& layout);

/// The stages, in this order.
void lay_out_shell(Layout& layout);     ///< walls, floors, rooms, ceilings
void lay_out_openings(Layout& layout);  ///< doors and windows; before panels of walls are finished
void lay_out_foundation(Layout& layout);
void lay_out_rims(Layout& layout);         ///< after the foundation
void lay_out_crawl_doors(Layout& layout);  ///< after the foundation
void lay_out_roof(Layout& layout);
void lay_out_yard(Layout& layout);
/// Moves bulkheads that stand against walls to their faces, and takes away the boards there: the wall closes the box.
void open_bulkheads(Layout& layout);
void lay_out_features(Layout& layout);
/// Cuts what features stand in the air out of the middle surfaces, and leads ways through gaps past it; after all features.
/// About as long as there are things near each other.
void go_round_obstacles(Layout& layout);

/// A figure without cuts, pulled from one height to another.
[[nodiscard]] Prism plain_prism(const Frame& frame, Loop outline, double back, double front, const Slant& slant = {});
/// A rectangle, counterclockwise.
[[nodiscard]] Loop rectangle(Point2 least, Point2 most);
/// A regular polygon about a point, such that circles of that radius fit into it and touch all sides; corners first at half a
/// step.
[[nodiscard]] Loop around_circle(Point2 middle, double radius, int sides);
/// The hole round a convex part that leaves a gap of that width on all sides: sides parallel to the part's, corners rounded
/// about its corners. A ball in the gap is nowhere larger than the width by more than a fiftieth of a millimeter.
[[nodiscard]] Loop hole_round(const Loop& part, double width);
/// The outline with each edge moved outward by its own distance; corners where neighbors cross.
[[nodiscard]] Loop offset_outline(const Loop& outline, const std::vector<double>& outward);
/// An id as it is spoken: "north wall" for "north-wall".
[[nodiscard]] std::string spoken(std::string id);
/// Whether such an outline is simple and still has each edge, running the same way: no place was too narrow.
[[nodiscard]] bool keeps_shape(const Loop& outline, const Loop& moved);
/// Level frame at a height: u east, v north.
[[nodiscard]] Frame level_frame(double z);
/// Level frame along a wall: u along it, v into the house (against its n), n up.
[[nodiscard]] Frame plan_frame(const Frame& wall);

}  // namespace seamward
