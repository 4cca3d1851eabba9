// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/plane.h"
#include "base/vector.h"
#include "catalog/features.h"
#include "house/description.h"
#include "job_file/job_edits.h"

namespace seamward::viewer {

/// A place on a described house where something can stand, as its file tells places. Meters.
struct FeaturePlace {
    /// The side of the house that the end lies at which `along` counts from.
    enum class Toward : std::uint8_t { west, east, south, north };

    std::vector<Host> hosts;     ///< what stands there goes on one of these
    std::string on;              ///< id of a wall, an opening ...; empty: the file names none
    std::string side;            ///< of a partition or a block wall
    std::string called;          ///< "north wall", "kitchen": of what it is, for people
    std::string room;            ///< for people: the room behind a wall, before a partition; empty: none is known
    std::size_t story = 0;       ///< from 0
    bool outside = false;        ///< of a wall: the face toward outdoors
    double along = 0, up = 0;    ///< on something upright; along may be edited up to `length`
    double base = 0;             ///< people count heights from there: 0, or the yard under the floor
    double length = 0;           ///< of what is upright
    Toward from = Toward::west;  ///< of what is upright
    Point2 at;                   ///< on something level, in the plan
    Point2 corner;               ///< of the room or the house, the least x and y: people count `at` from there
    bool compass = true;         ///< whether the house names its walls by the compass; otherwise by front, back, left, right
    bool sheathed = false;       ///< the wall has a skin between its cladding and its studs
    std::string cladding;        ///< substrate word of a wall's outermost layer
    double cavity = 0;           ///< depth of the air between the studs of a wall or a partition
    bool joists = false;         ///< of a floor: it lies on joists
    bool meets_house = false;    ///< of a block wall: one of its ends does
    OpeningKind opening = OpeningKind::door;
    bool hollow = false;  ///< the opening's sill is

    /// Whether `at` tells it; otherwise along and up do.
    [[nodiscard]] bool level() const;
    [[nodiscard]] bool is(Host host) const;
};

/// Whether a type goes on what is there.
[[nodiscard]] bool goes_on(const Feature& type, const FeaturePlace& place);

/// What has to be known of the place of a feature; the rest follows from what it is.
struct PlaceNeeds {
    bool along = false, up = false, at = false;
};

/// Where things can stand on a described house.
class FeaturePlaces {
public:
    /// Lays the house out from the text of its file, without what stands on it. Throws BadInput. Takes some milliseconds.
    FeaturePlaces(const std::string& house, const std::string& shown_as);
    ~FeaturePlaces();
    FeaturePlaces(const FeaturePlaces&) = delete;
    FeaturePlaces& operator=(const FeaturePlaces&) = delete;

    /// The place at a point of a solid, in the house's frame; `part`: the id or the name of that solid, decides at edges, may be
    /// empty. Nothing: no feature goes there, as on the ground.
    [[nodiscard]] std::optional<FeaturePlace> place(const Point& at, const std::string& part) const;
    /// The line of the list of features with that id, or null.
    [[nodiscard]] const FeatureDescription* feature(const std::string& id) const;
    /// The place of such a line, a gap of which is at that point. Nothing: it runs along several things, or through air that
    /// something else encloses, so that no one place tells where it is.
    [[nodiscard]] std::optional<FeaturePlace> place_of(const FeatureDescription& feature, const Point& gap) const;

private:
    struct House;
    std::unique_ptr<House> house_;
};

/// Types of the table that can stand there, in its order.
[[nodiscard]] std::vector<const Feature*> features_for(const FeaturePlace& place);

/// The gaps that a type makes there, in the order of the table.
[[nodiscard]] std::vector<const FeatureGap*> gaps_of(const Feature& type, const FeaturePlace& place);

[[nodiscard]] PlaceNeeds needs_of(const Feature& type, const FeaturePlace& place);

/// The entry for the file of the house. `along` and `up` are written as typed, where the file counts from where people do.
[[nodiscard]] AddFeature entry_of(const Feature& type, const FeaturePlace& place, const std::string& along,
                                  const std::string& up);

}  // namespace seamward::viewer
