// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/survey.h"
#include "catalog/tables.h"

namespace seamward {

/// A part of a house that features are placed on. `wall` stands between outdoors and rooms, `gable` between outdoors and the
/// attic, `partition` between rooms (chases and party walls too); `rim` is the edge of a framed floor, `eave` one run of soffit,
/// fascia and blocking, `opening` a door or a window, `duct` air that another feature encloses.
enum class Host : std::uint8_t { wall, gable, partition, ceiling, floor, roof, eave, foundation, rim, opening, block_wall, duct };

/// Why something must not be done, or must be done with care.
struct Advice {
    std::string text;    ///< empty: nothing is said
    std::string source;  ///< id of a source of the table
};

/// The alternatives of `Shape`, in its order.
enum class ShapeKind : std::uint8_t { slot, hole, ring, mesh };

/// A side of a door leaf, of a window, of the skin of a wall.
enum class Edge : std::uint8_t { bottom, top, left, right };

/// One gap that a feature makes. Meters; a size that the row does not state is 0.
struct FeatureGap {
    /// What it leads through, hence the two spaces that it joins. A gap at a skin that its wall does not have is left out.
    enum class At : std::uint8_t {
        outside,      ///< the outermost skin of a wall, a face of a block wall; of an opening: past its frame into the wall
        sheathing,    ///< the skin between the air gap behind brick and the studs
        inside,       ///< the skin toward the room (of a partition: on the side that the house file names)
        through,      ///< the whole host, from one side to the other; of an opening: past the leaf
        top,          ///< up through the plate of a wall; over a foundation, under the sill plate; into the cells of a block wall
        bottom,       ///< down through the plate of a wall
        end,          ///< the end of an eave; where a block wall meets the house
        soffit,       ///< the board
        soffit_wall,  ///< between the board and the wall
        soffit_fascia,  ///< between the board and the fascia
        fascia,         ///< between two fascia boards
        deck,           ///< between fascia and roof deck
        blocking,       ///< from the eave over the top plate into the attic
        outer,          ///< from outdoors into the air that the feature encloses, or into an opening's hollow frame
        inner,          ///< from that air into the room
        back,           ///< from that air into the host's cavity
        side            ///< from what a duct runs through into the duct
    };
    /// How a slot lies.
    enum class Form : std::uint8_t {
        plain,   ///< no slot
        around,  ///< all round a box of `size`
        beside,  ///< along the first side of a box of `size`, tight at the other three
        line,    ///< a joint `length` long, or as long as its host; with `spacing` in rows, together one gap
        cut,     ///< short pieces `length` long, each one of `count`
        edge,    ///< along the whole of each of `edges`, together one gap
        corner   ///< `length` of the bottom edge, from each of `edges` (left, right) on, each one of `count`
    };

    std::string id;    ///< of its own within the feature; the word of `at` where the row gives none
    std::string name;  ///< for people; the feature's where the row gives none
    At at = At::through;
    ShapeKind shape = ShapeKind::slot;
    Form form = Form::plain;
    double width = 0;   ///< the clear width: of a slot or ring its width, a hole's diameter, a mesh's opening
    double around = 0;  ///< ring: outer diameter of what stands in it
    double length = 0;
    std::array<double, 2> size{};  ///< of the box in a slot, of the screened rectangle of a mesh: across and up
    std::vector<Edge> edges;       ///< of the host that the gap lies at
    bool upright = false;          ///< line and cut: runs up, not across
    double rise = 0;               ///< so far above the feature's own place
    std::uint32_t count = 1;       ///< 0: as many as the host has room for at `spacing`
    double spacing = 0;            ///< from middle to middle; 0: the row does not say
    Duty duty = Duty::none;
    std::string insert;  ///< substrate word of what stands in the opening; empty: nothing but the host
    std::string usual;   ///< id of a treatment; empty: none is usual
    Advice never;        ///< why the gap must never be closed; its text is empty where it may be
};

/// Something that is placed on a part of a house, and the gaps that this makes. Sizes are starting values for a house file.
struct Feature {
    std::string id;
    std::string name;
    std::vector<Host> hosts;           ///< any of these
    std::vector<FeatureGap> gaps;      ///< from outside in, or from below up
    std::string air;                   ///< the body of air that the feature encloses ("dryer duct"); empty: none
    double up = 0;                     ///< usual height above the floor of the story; 0: not said
    double reach = 0;                  ///< how far it stands out of its host's face; 0: not said
    Advice caution;                    ///< for whoever works at it
    bool hire = false;                 ///< gas, service equipment, flues: no work for an owner
    std::vector<std::string> sources;  ///< ids of the sources of its sizes
    std::string note;
};

/// The places that gaps of a host may have.
[[nodiscard]] std::span<const FeatureGap::At> places_of(Host host);

/// The words of features.yaml: "block-wall", "soffit-wall", "beside".
[[nodiscard]] std::string_view host_word(Host host);
[[nodiscard]] std::string_view place_word(FeatureGap::At at);
[[nodiscard]] std::string_view form_word(FeatureGap::Form form);

/// Reads the table of features; `usual` names treatments of `treatments`. Throws BadInput that names file, line and column
/// when a key is unknown, missing or says nothing of its shape, a place is none of a host's, a size is 0, a treatment or a source
/// unknown, or a gap that serves as an opening has neither a reason why it is never closed nor a mesh as its usual treatment.
[[nodiscard]] Table<Feature> read_features(std::string_view yaml, const std::string& shown_as,
                                           const Table<Treatment>& treatments);

}  // namespace seamward
