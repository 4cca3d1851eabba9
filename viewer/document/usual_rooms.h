// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "document/new_house.h"

namespace seamward::viewer {

/// What a room of a new house is for; `whole`: all of a story that is not divided.
enum class RoomUse : std::uint8_t { living, kitchen, hall, bedroom, bath, garage, whole };

struct UsualRoom {
    RoomUse use = RoomUse::whole;
    std::string id, name;
    int story = 1;
    Loop loop;  ///< along the outline, and along the middle of partitions
};

/// A partition, its ends in the middle of its thickness.
struct UsualPartition {
    std::string id, name;
    Point2 from, to;
    int story = 1;
};

struct UsualDoor {
    std::string id, name;
    std::size_t partition = 0;    ///< by position
    double along = 0, width = 0;  ///< as house files count them
    double of_line = 0;           ///< its middle from the partition's `from`
    bool archway = false;
};

/// How the stories of a new house are divided. Partitions that others end at come first.
struct RoomPlan {
    std::vector<UsualRoom> rooms;
    std::vector<UsualPartition> partitions;
    std::vector<UsualDoor> doors;
};

/// Rooms as such a house usually has them: by day a living room with the kitchen beside it, by night bedrooms and baths on both
/// sides of a hall, or beside each other; those all in the upper story where there is one. Every room has a door, and
/// a wall to the outdoors unless it is a hall. Nothing: they do not fit, or a side of the outline runs neither along the street
/// nor away from it. The outline must be sound. A house that is not to be divided has one room a story. Takes milliseconds; the
/// last answers of a thread are kept.
[[nodiscard]] std::optional<RoomPlan> usual_rooms(const NewHouse& house);

/// The most bedrooms, up to those wanted, that fit with as many baths as wanted, or with one; 0: none do.
struct RoomCount {
    int bedrooms = 0, baths = 0;
};
[[nodiscard]] RoomCount most_rooms(const NewHouse& house);

}  // namespace seamward::viewer
