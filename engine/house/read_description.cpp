// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>

#include "base/nearest_word.h"
#include "base/record.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "geometry/remainder.h"
#include "house/description.h"
#include "house/read_feature.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 19> house_keys{"seamward-house", "name",          "outdoors",   "assemblies", "outline",
                                                      "walls",          "wall_assembly", "foundation", "stories",    "partitions",
                                                      "rooms",          "openings",      "roof",       "yard",       "features",
                                                      "paving",         "block_walls",   "stud_bays",  "bulkheads"};
constexpr std::array<std::string_view, 2> assembly_keys{"id", "layers"};
constexpr std::array<std::string_view, 3> layer_keys{"of", "air", "thick"};
constexpr std::array<std::string_view, 4> foundation_keys{"kind", "above_grade", "height", "space"};
constexpr std::array<std::string_view, 3> foundation_words{"slab", "crawl-space", "basement"};
constexpr std::array<std::string_view, 5> story_keys{"height", "floor", "void", "voids", "cavities"};
constexpr std::array<std::string_view, 3> void_keys{"id", "name", "at"};
constexpr std::array<std::string_view, 9> partition_keys{"id",    "name",     "from",       "to",    "assembly",
                                                         "story", "to_story", "from_below", "cavity"};
constexpr std::array<std::string_view, 7> room_keys{"id", "name", "kind", "source", "at", "story", "to_story"};
constexpr std::array<std::string_view, 3> attic_keys{"id", "name", "source"};
constexpr std::array<std::string_view, 10> opening_keys{"id",    "name",  "kind",   "in",   "story",
                                                        "along", "width", "height", "sill", "frame"};
constexpr std::array<std::string_view, 5> opening_words{"door", "window", "garage-door", "sliding-door", "crawl-door"};
constexpr std::array<std::string_view, 10> roof_keys{"shape", "pitch",   "overhang", "rake",  "gables",
                                                     "low",   "parapet", "of",       "attic", "eave"};
constexpr std::array<std::string_view, 4> roof_words{"hip", "gable", "shed", "flat"};
constexpr std::array<std::string_view, 1> yard_keys{"margin"};
constexpr std::array<std::string_view, 3> paving_keys{"id", "name", "corners"};
constexpr std::array<std::string_view, 4> block_wall_keys{"id", "name", "points", "height"};
constexpr std::array<std::string_view, 2> bay_keys{"on", "spacing"};
constexpr std::array<std::string_view, 6> bulkhead_keys{"id", "name", "story", "from", "to", "drop"};
constexpr std::array<std::string_view, 2> space_keys{"id", "name"};
constexpr std::array<std::string_view, 5> kind_words{"outdoors", "cavity", "attached", "living", "harborage"};

/// Limits that no honest description reaches.
constexpr std::size_t most_corners = 2000;
constexpr double largest = 1000, thinnest_layer = 0.001, thickest_layer = 1;

class DescriptionReader {
public:
    explicit DescriptionReader(const Document& document)
        : diagnostics_(document.file()), file_(document.root(), house_keys, "house", diagnostics_) {
        house_.file = document.file();
    }

    HouseDescription read() {
        check_version();
        file_.require({"assemblies", "outline", "stories", "rooms", "roof"});
        house_.name = file_.line("name").value_or("");
        if (file_.has("outdoors")) house_.outdoors = read_space(file_["outdoors"]);
        read_assemblies();
        read_outline();
        read_foundation();
        read_stories();
        read_partitions();
        read_rooms();
        read_openings();
        read_stud_bays();
        read_bulkheads();
        read_roof();
        read_yard();
        FeatureReader features(diagnostics_, house_.stories.size());
        file_.each("features", [&](Node node) { house_.features.push_back(features.read(node)); });
        diagnostics_.throw_if_any();
        return std::move(house_);
    }

private:
    void check_version() {
        if (!file_.require({"seamward-house"})) return;
        const Node node = file_["seamward-house"];
        if (node.kind() == Document::Kind::plain && node.text() == "1") return;
        file_.report(node.place(), "unknown format version " + in_quotes(node.text()), "this program reads seamward-house: 1");
    }

    NamedSpace read_space(Node node) {
        if (node.is_scalar()) {
            const auto id = read_line(node, "space", diagnostics_);
            return {id.value_or(""), ""};
        }
        const Record record(node, space_keys, "space", diagnostics_);
        return {record.required_line("id"), record.line("name").value_or("")};
    }

    void read_assemblies() {
        file_.each("assemblies", [&](Node node) {
            const Record record(node, assembly_keys, "assembly", diagnostics_);
            Assembly assembly;
            assembly.id = record.required_line("id");
            record.require({"layers"});
            bool air = false;
            record.each("layers", [&](Node item) {
                const Record layer(item, layer_keys, "layer", diagnostics_);
                WallLayer read;
                layer.require({"thick"});
                const bool is_air = layer.truth("air").value_or(false);
                if (is_air == layer.has("of"))
                    layer.report(layer.place(), "a layer is either of something or air",
                                 "write {of: stucco, thick: 22 mm} or {air: true, thick: 89 mm}");
                if (layer.has("of")) read.material = layer.required_line("of");
                if (read.material.empty() && !(is_air && !layer.has("of"))) read.material = "?";
                read.thickness = layer.length("thick").value_or(thinnest_layer);
                if (read.thickness < thinnest_layer || read.thickness > thickest_layer)
                    layer.report(layer.place(), "a layer is between 1 mm and 1 m thick");
                if (is_air && !assembly.layers.empty() && assembly.layers.back().is_air())
                    layer.report(layer.place(), "two layers of air follow each other", "make one of them");
                air = air || is_air;
                assembly.layers.push_back(std::move(read));
            });
            if (!record.usable()) return;
            if (record.has("layers") && (!air || assembly.layers.front().is_air() || assembly.layers.back().is_air()))
                record.report(record.place(), "a wall has solid layers outside and inside, and air between two of them",
                              "list its layers from outside in: stucco, sheathing, air, drywall");
            for (const Assembly& other : house_.assemblies) {
                if (other.id == assembly.id && !assembly.id.empty())
                    record.report(record.place(), "assembly id \"" + assembly.id + "\" stands twice", "give each its own");
            }
            house_.assemblies.push_back(std::move(assembly));
        });
        check_not_empty(file_, "assemblies", "describe the layers of the walls, from outside in");
        if (file_.has("wall_assembly")) house_.wall_assembly = assembly_named(file_, "wall_assembly");
    }

    static void check_not_empty(const Record& record, const std::string& key, const std::string& mend) {
        const Node list = record[key];
        if (list.present() && (list.is_null() || (list.is_sequence() && list.size() == 0)))
            record.report(list.place(), key + " is empty", mend);
    }

    std::size_t assembly_named(const Record& record, std::string_view key) {
        const std::string id = record.required_line(key);
        std::vector<std::string_view> known;
        for (std::size_t i = 0; i < house_.assemblies.size(); ++i) {
            if (house_.assemblies[i].id == id) return i;
            known.emplace_back(house_.assemblies[i].id);
        }
        if (!id.empty()) record.report(record[key].place(), "unknown assembly \"" + id + '"', suggestion(id, known));
        return 0;
    }

    std::optional<Point2> read_point(Node node, std::string_view called) {
        return seamward::read_point(node, called, diagnostics_);
    }

    Loop read_points(const Record& record, std::string_view key, std::size_t least) {
        Loop loop;
        record.each(key, [&](Node node) {
            if (loop.size() < most_corners) {
                if (const auto point = read_point(node, "a corner")) loop.push_back(*point);
            }
        });
        if (record.has(key) && record[key].is_sequence() && record[key].size() > most_corners)
            record.report(record[key].place(), "more than " + std::to_string(most_corners) + " corners");
        if (record.has(key) && record[key].size() < least)
            record.report(record[key].place(), std::string(key) + " needs " + std::to_string(least) + " points or more");
        return loop;
    }

    void read_outline() {
        house_.outline = read_points(file_, "outline", 3);
        const Loop& outline = house_.outline;
        const Place place = file_.has("outline") ? file_["outline"].place() : Place();
        // Corners with faults count too: what is meant are so many walls.
        const std::size_t corners = file_.has("outline") ? std::min(file_["outline"].size(), most_corners) : 0;
        if (outline.size() >= 3 && outline.size() == corners) {
            if (!is_simple(outline))
                file_.report(place, "the outline crosses or touches itself",
                             "list the corners in order round the house, each once");
            else if (doubled_area(outline) < 0)
                file_.report(place, "the outline runs clockwise", "list the corners counterclockwise as seen from above");
            for (std::size_t i = 0; i < outline.size(); ++i) {
                const Point2 edge = outline[(i + 1) % outline.size()] - outline[i];
                if (std::sqrt(dot(edge, edge)) < 0.5)
                    file_.report(place, "wall " + std::to_string(i + 1) + " of the outline is shorter than 0.5 m",
                                 "leave such jogs out");
            }
        }
        file_.each("walls", [&](Node node) {
            house_.walls.push_back(read_line(node, "wall", diagnostics_).value_or(""));
            take_host(house_.walls.back(), "wall", node.place());
        });
        const bool unnamed = house_.walls.empty();
        for (std::size_t i = 0; unnamed && i < corners; ++i) {
            house_.walls.push_back("wall-" + std::to_string(i + 1));
            take_host(house_.walls.back(), "wall", place);
        }
        if (house_.walls.size() != corners && corners >= 3)
            file_.report(file_["walls"].place(),
                         "there are " + std::to_string(house_.walls.size()) + " names for " + std::to_string(corners) + " walls",
                         "name the walls from the first corner on, one for each side of the outline");
    }

    /// Notes the id of something that openings and features go on. Reports one that stands twice.
    void take_host(const std::string& id, const std::string& called, Place place) {
        if (id.empty()) return;
        const auto [first, fresh] = hosts_.emplace(id, called);
        if (!fresh)
            diagnostics_.add(place,
                             called + " id \"" + id + "\" stands twice" +
                                 (first->second == called ? "" : " (" + first->second + " and " + called + ")"),
                             "give each its own");
    }

    void read_foundation() {
        FoundationDescription& foundation = house_.foundation;
        if (!file_.has("foundation")) return;
        const Record record(file_["foundation"], foundation_keys, "foundation", diagnostics_);
        foundation.kind = static_cast<FoundationKind>(record.word("kind", foundation_words).value_or(0));
        const bool slab = foundation.kind == FoundationKind::slab;
        foundation.above_grade = record.distance("above_grade").value_or(slab ? 0.15 : 0.6);
        foundation.height = record.distance("height").value_or(slab ? 0.1 : 0.6);
        if (record.has("space")) foundation.space = read_space(record["space"]);
        if (!slab && foundation.space.id.empty())
            foundation.space = {foundation.kind == FoundationKind::basement ? "basement" : "crawl-space", ""};
        if (foundation.above_grade < 0.03 || foundation.above_grade > 3)
            record.report(record.place(), "above_grade is between 30 mm and 3 m");
        if (foundation.height < 0.02 || foundation.height > 4) record.report(record.place(), "height is between 20 mm and 4 m");
    }

    void read_stories() {
        file_.each("stories", [&](Node node) {
            const Record record(node, story_keys, "story", diagnostics_);
            StoryDescription story;
            record.require({"height"});
            story.height = record.distance("height").value_or(2.5);
            story.floor = record.distance("floor").value_or(0.3);
            if (story.height < 1.8 || story.height > 12)
                record.report(record.place(), "the height of a story is between 1.8 m and 12 m");
            if (story.floor < 0.1 || story.floor > 1.5) record.report(record.place(), "a floor is between 0.1 m and 1.5 m thick");
            const std::string number = std::to_string(house_.stories.size());
            story.void_below = record.has("void") ? read_space(record["void"]) : NamedSpace{"joist-void-" + number, ""};
            record.each("voids", [&](Node part) {
                const Record named(part, void_keys, "part of a void", diagnostics_);
                VoidDescription read{part.place(), {named.required_line("id"), named.line("name").value_or("")}, {}};
                if (named.require({"at"})) read.at = read_point(named["at"], "at").value_or(Point2());
                story.voids.push_back(std::move(read));
            });
            record.each("cavities", [&](Node wall) {
                std::vector<NamedSpace> spaces;
                if (wall.is_sequence())
                    wall.for_each_item([&](Node item) { spaces.push_back(read_space(item)); });
                else
                    spaces.push_back(read_space(wall));
                story.cavities.push_back(std::move(spaces));
            });
            house_.stories.push_back(std::move(story));
        });
        if (file_.has("stories") && (house_.stories.empty() || house_.stories.size() > 60))
            file_.report(file_["stories"].place(), "a house has 1 to 60 stories");
    }

    std::size_t read_story(const Record& record) { return seamward::read_story(record, house_.stories.size()); }

    /// The last story that something runs through which begins in `first`.
    std::size_t read_last_story(const Record& record, std::size_t first) {
        if (!record.has("to_story")) return first;
        const std::size_t last = record.count("to_story").value_or(0);
        if (last > first && last <= house_.stories.size()) return last - 1;
        record.report(record["to_story"].place(),
                      "to_story is a story from " + std::to_string(first + 1) + " to " + std::to_string(house_.stories.size()),
                      "the house has " + std::to_string(house_.stories.size()));
        return first;
    }

    void read_partitions() {
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
                partition.from = read_point(record["from"], "from").value_or(Point2());
                partition.to = read_point(record["to"], "to").value_or(Point2{1, 1});
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

    void read_rooms() {
        check_not_empty(file_, "rooms", "name every room, with a point inside of it");
        file_.each("rooms", [&](Node node) {
            const Record record(node, room_keys, "room", diagnostics_);
            RoomDescription room;
            room.place = node.place();
            room.id = record.required_line("id");
            room.name = record.line("name").value_or("");
            room.kind =
                static_cast<SpaceKind>(record.word("kind", kind_words).value_or(static_cast<std::size_t>(SpaceKind::living)));
            if (room.kind == SpaceKind::outdoors || room.kind == SpaceKind::harborage)
                record.report(node.place(), "a room is living, attached or a cavity",
                              "leave kind out for a room that is lived in");
            room.source = record.truth("source").value_or(false);
            room.story = read_story(record);
            room.to_story = read_last_story(record, room.story);
            if (record.require({"at"})) room.at = read_point(record["at"], "at").value_or(Point2());
            house_.rooms.push_back(std::move(room));
        });
    }

    void read_openings() {
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
            if (record.has("in")) check_wall(record["in"], opening.in);
            take_host(opening.id, "opening", node.place());
            house_.openings.push_back(std::move(opening));
        });
    }

    /// Reports an id that is neither a wall's nor a partition's.
    void check_wall(Node node, const std::string& id) {
        std::vector<std::string_view> known(house_.walls.begin(), house_.walls.end());
        for (const PartitionDescription& partition : house_.partitions) known.emplace_back(partition.id);
        if (!id.empty() && std::find(known.begin(), known.end(), id) == known.end())
            diagnostics_.add(node.place(), "unknown wall \"" + id + '"', suggestion(id, known));
    }

    void read_stud_bays() {
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
            bays.spacing = record.distance("spacing").value_or(0.4);
            if (bays.spacing < 0.15 || bays.spacing > 2) record.report(node.place(), "studs stand between 0.15 m and 2 m apart");
            house_.stud_bays.push_back(std::move(bays));
        });
    }

    void read_bulkheads() {
        file_.each("bulkheads", [&](Node node) {
            const Record record(node, bulkhead_keys, "bulkhead", diagnostics_);
            BulkheadDescription bulkhead;
            bulkhead.place = node.place();
            bulkhead.id = record.required_line("id");
            bulkhead.name = record.line("name").value_or("");
            take_host(bulkhead.id, "bulkhead", node.place());
            bulkhead.story = read_story(record);
            record.require({"from", "to", "drop"});
            bulkhead.drop = record.distance("drop").value_or(0.3);
            const Point2 a = record.has("from") ? read_point(record["from"], "from").value_or(Point2()) : Point2();
            const Point2 b = record.has("to") ? read_point(record["to"], "to").value_or(Point2{1, 1}) : Point2{1, 1};
            bulkhead.least = {std::min(a.x, b.x), std::min(a.y, b.y)};
            bulkhead.most = {std::max(a.x, b.x), std::max(a.y, b.y)};
            if (bulkhead.most.x - bulkhead.least.x < 0.15 || bulkhead.most.y - bulkhead.least.y < 0.15)
                record.report(node.place(), "a bulkhead is at least 0.15 m wide", "from and to are two corners of its plan");
            if (bulkhead.drop < 0.1 || bulkhead.drop > 1.5) record.report(node.place(), "drop is between 0.1 m and 1.5 m");
            house_.bulkheads.push_back(std::move(bulkhead));
        });
    }

    std::size_t wall_named(const Record& record, Node node) {
        const auto wall = std::find(house_.walls.begin(), house_.walls.end(), node.text());
        if (wall != house_.walls.end()) return static_cast<std::size_t>(wall - house_.walls.begin());
        record.report(node.place(), "unknown wall " + in_quotes(node.text()),
                      suggestion(node.text(), std::vector<std::string_view>(house_.walls.begin(), house_.walls.end())));
        return 0;
    }

    void read_roof() {
        const Record record(file_["roof"], roof_keys, "roof", diagnostics_);
        RoofDescription& roof = house_.roof;
        if (!record.usable()) return;
        roof.place = record.place();
        roof.shape = static_cast<RoofShape>(record.word("shape", roof_words).value_or(0));
        roof.pitch = roof.shape == RoofShape::flat ? 0 : read_pitch(record);
        roof.overhang = record.distance("overhang").value_or(0.4);
        roof.rake = record.distance("rake").value_or(0.2);
        roof.parapet = record.distance("parapet").value_or(0.4);
        roof.material = record.line("of").value_or("tile");
        if (roof.overhang < 0.05 || roof.overhang > 3) record.report(record.place(), "overhang is between 50 mm and 3 m");
        record.each("gables", [&](Node node) { roof.gables.push_back(wall_named(record, node)); });
        if (roof.shape == RoofShape::gable && record.require({"gables"}))
            check_not_empty(record, "gables", "name the walls under gables, or write shape: hip");
        if (roof.shape == RoofShape::shed && record.require({"low"})) roof.low = wall_named(record, record["low"]);
        roof.attic = {"attic", "attic"};
        if (record.has("attic") && record["attic"].is_scalar()) {
            roof.attic = read_space(record["attic"]);
        } else if (record.has("attic")) {
            const Record attic(record["attic"], attic_keys, "space", diagnostics_);
            roof.attic = {attic.required_line("id"), attic.line("name").value_or("")};
            roof.attic_source = attic.truth("source").value_or(false);
        }
        roof.eave = record.has("eave") ? read_space(record["eave"]) : NamedSpace{"eave", "boxed eave"};
    }

    /// "4/12": so much rise for so much run, or degrees.
    double read_pitch(const Record& record) {
        const std::string text = record.required_line("pitch");
        double rise = 0, run = 1;
        const char* end = text.data() + text.size();
        auto [at, error] = std::from_chars(text.data(), end, rise);
        bool good = error == std::errc();
        if (good && at != end && *at == '/') {
            const auto second = std::from_chars(at + 1, end, run);
            good = second.ec == std::errc() && second.ptr == end && run > 0;
        } else if (good) {
            good = std::string_view(at, end) == " deg";
            rise = std::tan(rise * std::acos(-1.0) / 180);
        }
        if (!text.empty() && (!good || !(rise / run >= 0.02 && rise / run <= 3)))
            record.report(record["pitch"].place(), "pitch is no slope between 1/50 and 3/1: " + in_quotes(text),
                          "write pitch: 4/12, or pitch: 18 deg");
        return good ? rise / run : 0.3;
    }

    void read_yard() {
        const Record yard(file_["yard"], yard_keys, "yard", diagnostics_);
        house_.yard_margin = yard.distance("margin").value_or(3);
        if (house_.yard_margin < 0.5 || house_.yard_margin > largest)
            yard.report(yard.place(), "margin is between 0.5 m and 1000 m");
        file_.each("paving", [&](Node node) {
            const Record record(node, paving_keys, "paving", diagnostics_);
            PavingDescription paving{node.place(), record.required_line("id"), record.line("name").value_or(""), {}};
            for (const PavingDescription& other : house_.paving) {
                if (other.id == paving.id && !paving.id.empty())
                    record.report(node.place(), "paving id \"" + paving.id + "\" stands twice", "give each its own");
            }
            record.require({"corners"});
            paving.corners = read_points(record, "corners", 3);
            if (paving.corners.size() >= 3 && paving.corners.size() == record["corners"].size() && !is_simple(paving.corners))
                record.report(node.place(), "the paving's outline crosses itself", "list its corners in order");
            house_.paving.push_back(std::move(paving));
        });
        file_.each("block_walls", [&](Node node) {
            const Record record(node, block_wall_keys, "block wall", diagnostics_);
            BlockWallDescription wall{node.place(), record.required_line("id"), record.line("name").value_or(""), {}, 0};
            take_host(wall.id, "block wall", node.place());
            record.require({"points", "height"});
            wall.points = read_points(record, "points", 2);
            wall.height = record.distance("height").value_or(1.5);
            if (wall.height < 0.3 || wall.height > 6) record.report(node.place(), "a block wall is between 0.3 m and 6 m high");
            for (std::size_t i = 0; i + 1 < wall.points.size(); ++i) {
                const Point2 run = wall.points[i + 1] - wall.points[i];
                if (std::sqrt(dot(run, run)) < 0.6)
                    record.report(node.place(), "a run of the block wall is shorter than 0.6 m", "leave it out");
            }
            if (wall.points.size() >= 2) house_.block_walls.push_back(std::move(wall));
        });
    }

    HouseDescription house_;
    std::map<std::string, std::string> hosts_;  ///< by id, what it is
    Diagnostics diagnostics_;
    Record file_;
};

}  // namespace

HouseDescription read_house_description(const std::filesystem::path& path, const std::string& shown_as,
                                        const RunContext& context) {
    const Document document = read_document(path, shown_as);
    context.check();
    return DescriptionReader(document).read();
}

HouseDescription parse_house_yaml(std::string_view text, const std::string& shown_as) {
    const Document document = parse_yaml(text, shown_as);
    return DescriptionReader(document).read();
}

}  // namespace seamward
