// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a house file that stand within its walls: partitions, rooms, openings, stud bays, bulkheads.
#include <algorithm>
#include <array>

#include "house/read_description.h"
#include "house/read_feature.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 9> partition_keys{"id",    "name",     "from",       "to",    "assembly",
                                                         "story", "to_story", "from_below", "cavity"};
constexpr std::array<std::string_view, 7> room_keys{"id", "name", "kind", "source", "at", "story", "to_story"};
constexpr std::array<std::string_view, 10> opening_keys{"id",    "name",  "kind",   "in",   "story",
                                                        "along", "width", "height", "sill", "frame"};
constexpr std::array<std::string_view, 6> opening_words{"door", "window", "garage-door", "sliding-door", "crawl-door", "archway"};
constexpr std::array<std::string_view, 2> bay_keys{"on", "spacing"};
constexpr std::array<std::string_view, 6> bulkhead_keys{"id", "name", "story", "from", "to", "drop"};
constexpr std::array<std::string_view, 5> kind_words{"outdoors", "cavity", "attached", "living", "harborage"};

}  // namespace

void HouseReader::read_partitions() {
    file_.each("partitions", [&](Node node) {
        const Record record(node, partition_keys, "partition", diagnostics_);
        PartitionDescription partition;
        partition.place = node.place();
        partition.id = record.required_line("id");
        partition.name = record.line("name").value_or("");
        partition.story = read_story(record);
        partition.to_story = read_last_story(record, partition.story);
        partition.from_below = record.truth("from_below").value_or(false);
        if (record.require({"from", "to"})) {
            partition.from = read_point(record["from"], "from", diagnostics_).value_or(Point2());
            partition.to = read_point(record["to"], "to", diagnostics_).value_or(Point2{1, 1});
        }
        if (record.has("assembly")) {
            partition.assembly = assembly_named(record, "assembly");
        } else if (house_.assemblies.size() > 1) {
            partition.assembly = 1;
        }
        if (record.has("cavity")) partition.cavity = read_space(record["cavity"]);
        take_host(partition.id, "partition", node.place());
        house_.partitions.push_back(std::move(partition));
    });
}

void HouseReader::read_rooms() {
    check_not_empty(file_, "rooms", "name every room, with a point inside of it");
    file_.each("rooms", [&](Node node) {
        const Record record(node, room_keys, "room", diagnostics_);
        RoomDescription room;
        room.place = node.place();
        room.id = record.required_line("id");
        room.name = record.line("name").value_or("");
        room.kind = static_cast<SpaceKind>(record.word("kind", kind_words).value_or(static_cast<std::size_t>(SpaceKind::living)));
        if (room.kind == SpaceKind::outdoors || room.kind == SpaceKind::harborage)
            record.report(node.place(), "a room is living, attached or a cavity", "leave kind out for a room that is lived in");
        room.source = record.truth("source").value_or(false);
        room.story = read_story(record);
        room.to_story = read_last_story(record, room.story);
        if (record.require({"at"})) room.at = read_point(record["at"], "at", diagnostics_).value_or(Point2());
        house_.rooms.push_back(std::move(room));
    });
}

void HouseReader::read_openings() {
    file_.each("openings", [&](Node node) {
        const Record record(node, opening_keys, "opening", diagnostics_);
        OpeningDescription opening;
        opening.place = node.place();
        opening.id = record.required_line("id");
        opening.name = record.line("name").value_or("");
        opening.kind = static_cast<OpeningKind>(record.word("kind", opening_words).value_or(0));
        opening.in = record.required_line("in");
        opening.story = read_story(record);
        record.require({"along", "width", "height"});
        opening.along = record.distance("along").value_or(1);
        opening.width = record.distance("width").value_or(1);
        opening.height = record.distance("height").value_or(1);
        const bool crawl_door = opening.kind == OpeningKind::crawl_door;
        opening.sill = record.distance("sill").value_or(crawl_door ? 0.05 : opening.kind == OpeningKind::window ? 0.9 : 0);
        if (opening.width < 0.2 || opening.height < 0.2)
            record.report(node.place(), "an opening is at least 0.2 m wide and high");
        if (record.has("frame")) opening.frame = read_space(record["frame"]);
        if (opening.kind == OpeningKind::archway && record.has("frame"))
            record.report(record["frame"].place(), "an archway has no hollow sill", "leave frame out");
        if (record.has("in")) check_wall(record["in"], opening.in);
        take_host(opening.id, "opening", node.place());
        house_.openings.push_back(std::move(opening));
    });
}

void HouseReader::read_stud_bays() {
    file_.each("stud_bays", [&](Node node) {
        const Record record(node, bay_keys, "entry of stud_bays", diagnostics_);
        StudBaysDescription bays;
        bays.place = node.place();
        record.require({"on", "spacing"});
        const auto take = [&](Node wall) {
            bays.on.push_back(read_line(wall, "on", diagnostics_).value_or(""));
            check_wall(wall, bays.on.back());
        };
        if (record.has("on") && record["on"].is_sequence())
            record["on"].for_each_item(take);
        else if (record.has("on"))
            take(record["on"]);
        bays.spacing = distance(record, "spacing", 0.15, 2).value_or(0.4);
        if (bays.spacing < 0.15 || bays.spacing > 2) record.report(node.place(), "studs stand between 0.15 m and 2 m apart");
        house_.stud_bays.push_back(std::move(bays));
    });
}

void HouseReader::read_bulkheads() {
    file_.each("bulkheads", [&](Node node) {
        const Record record(node, bulkhead_keys, "bulkhead", diagnostics_);
        BulkheadDescription bulkhead;
        bulkhead.place = node.place();
        bulkhead.id = record.required_line("id");
        bulkhead.name = record.line("name").value_or("");
        take_host(bulkhead.id, "bulkhead", node.place());
        bulkhead.story = read_story(record);
        record.require({"from", "to", "drop"});
        bulkhead.drop = distance(record, "drop", 0.1, 1.5).value_or(0.3);
        const auto corner = [&](std::string_view key, Point2 otherwise) {
            return record.has(key) ? read_point(record[key], key, diagnostics_).value_or(otherwise) : otherwise;
        };
        const Point2 a = corner("from", {}), b = corner("to", {1, 1});
        bulkhead.least = {std::min(a.x, b.x), std::min(a.y, b.y)};
        bulkhead.most = {std::max(a.x, b.x), std::max(a.y, b.y)};
        if (bulkhead.most.x - bulkhead.least.x < 0.15 || bulkhead.most.y - bulkhead.least.y < 0.15)
            record.report(node.place(), "a bulkhead is at least 0.15 m wide", "from and to are two corners of its plan");
        if (bulkhead.drop < 0.1 || bulkhead.drop > 1.5) record.report(node.place(), "drop is between 0.1 m and 1.5 m");
        house_.bulkheads.push_back(std::move(bulkhead));
    });
}

}  // namespace seamward
