// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a house file that make its walls: their layers, the outline, the stories and what they stand on.
#include <algorithm>
#include <array>
#include <cmath>

#include "base/nearest_word.h"
#include "geometry/remainder.h"
#include "house/read_description.h"
#include "house/read_feature.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 2> assembly_keys{"id", "layers"};
constexpr std::array<std::string_view, 3> layer_keys{"of", "air", "thick"};
constexpr std::array<std::string_view, 4> foundation_keys{"kind", "above_grade", "height", "space"};
constexpr std::array<std::string_view, 3> foundation_words{"slab", "crawl-space", "basement"};
constexpr std::array<std::string_view, 5> story_keys{"height", "floor", "void", "voids", "cavities"};
constexpr std::array<std::string_view, 3> void_keys{"id", "name", "at"};

/// Limits that no honest description reaches.
constexpr double thinnest_layer = 0.001, thickest_layer = 1, shortest_wall = 0.5;

}  // namespace

WallLayer HouseReader::read_layer(Node node) {
    const Record layer(node, layer_keys, "layer", diagnostics_);
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
    return read;
}

void HouseReader::read_assembly(Node node) {
    const Record record(node, assembly_keys, "assembly", diagnostics_);
    Assembly assembly;
    assembly.id = record.required_line("id");
    record.require({"layers"});
    bool air = false;
    record.each("layers", [&](Node item) {
        WallLayer layer = read_layer(item);
        if (layer.is_air() && !assembly.layers.empty() && assembly.layers.back().is_air())
            diagnostics_.add(item.place(), "two layers of air follow each other", "make one of them");
        air = air || layer.is_air();
        assembly.layers.push_back(std::move(layer));
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
}

void HouseReader::read_assemblies() {
    file_.each("assemblies", [&](Node node) { read_assembly(node); });
    check_not_empty(file_, "assemblies", "describe the layers of the walls, from outside in");
    if (file_.has("wall_assembly")) house_.wall_assembly = assembly_named(file_, "wall_assembly");
}

std::size_t HouseReader::assembly_named(const Record& record, std::string_view key) {
    const std::string id = record.required_line(key);
    std::vector<std::string_view> known;
    for (std::size_t i = 0; i < house_.assemblies.size(); ++i) {
        if (house_.assemblies[i].id == id) return i;
        known.emplace_back(house_.assemblies[i].id);
    }
    if (!id.empty()) record.report(record[key].place(), "unknown assembly \"" + id + '"', suggestion(id, known));
    return 0;
}

void HouseReader::check_outline(Place place) {
    const Loop& outline = house_.outline;
    if (!is_simple(outline))
        file_.report(place, "the outline crosses or touches itself", "list the corners in order round the house, each once");
    else if (doubled_area(outline) < 0)
        file_.report(place, "the outline runs clockwise", "list the corners counterclockwise as seen from above");
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 edge = outline[(i + 1) % outline.size()] - outline[i];
        if (std::sqrt(dot(edge, edge)) < shortest_wall)
            file_.report(place, "wall " + std::to_string(i + 1) + " of the outline is shorter than 0.5 m", "leave such jogs out");
    }
}

void HouseReader::read_outline() {
    house_.outline = read_points(file_, "outline", 3);
    const Place place = file_.has("outline") ? file_["outline"].place() : Place();
    // Corners with faults count too: what is meant are so many walls.
    const std::size_t corners = file_.has("outline") ? std::min(file_["outline"].size(), most_corners) : 0;
    if (house_.outline.size() >= 3 && house_.outline.size() == corners) check_outline(place);
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

void HouseReader::read_foundation() {
    constexpr double lowest_floor = 0.03, highest_floor = 3, least_height = 0.02, most_height = 4;
    FoundationDescription& foundation = house_.foundation;
    if (!file_.has("foundation")) return;
    const Record record(file_["foundation"], foundation_keys, "foundation", diagnostics_);
    foundation.kind = static_cast<FoundationKind>(record.word("kind", foundation_words).value_or(0));
    const bool slab = foundation.kind == FoundationKind::slab;
    foundation.above_grade = distance(record, "above_grade", lowest_floor, highest_floor).value_or(slab ? 0.15 : 0.6);
    foundation.above_grade_stated = record.has("above_grade");
    foundation.height = distance(record, "height", least_height, most_height).value_or(slab ? 0.1 : 0.6);
    if (record.has("space")) foundation.space = read_space(record["space"]);
    if (!slab && foundation.space.id.empty())
        foundation.space = {foundation.kind == FoundationKind::basement ? "basement" : "crawl-space", ""};
    if (foundation.above_grade < lowest_floor || foundation.above_grade > highest_floor)
        record.report(record.place(), "above_grade is between 30 mm and 3 m");
    if (foundation.height < least_height || foundation.height > most_height)
        record.report(record.place(), "height is between 20 mm and 4 m");
}

void HouseReader::read_stories() {
    constexpr double least_height = 1.8, most_height = 12, thinnest_floor = 0.1, thickest_floor = 1.5;
    file_.each("stories", [&](Node node) {
        const Record record(node, story_keys, "story", diagnostics_);
        StoryDescription story;
        record.require({"height"});
        story.height = distance(record, "height", least_height, most_height).value_or(2.5);
        story.floor = distance(record, "floor", thinnest_floor, thickest_floor).value_or(0.3);
        if (story.height < least_height || story.height > most_height)
            record.report(record.place(), "the height of a story is between 1.8 m and 12 m");
        if (story.floor < thinnest_floor || story.floor > thickest_floor)
            record.report(record.place(), "a floor is between 0.1 m and 1.5 m thick");
        const std::string number = std::to_string(house_.stories.size());
        story.void_below = record.has("void") ? read_space(record["void"]) : NamedSpace{"joist-void-" + number, ""};
        record.each("voids", [&](Node part) {
            const Record named(part, void_keys, "part of a void", diagnostics_);
            VoidDescription read{part.place(), {named.required_line("id"), named.line("name").value_or("")}, {}};
            if (named.require({"at"})) read.at = read_point(named["at"], "at", diagnostics_).value_or(Point2());
            story.voids.push_back(std::move(read));
        });
        for (const std::string_view key : {"void", "voids"}) {
            const bool said =
                record.has(key) && !record[key].is_null() && !(record[key].is_sequence() && record[key].size() == 0);
            if (house_.stories.empty() && said)
                unfit(record[key].place(), std::string(key) + " is no key of the first story: under it is the foundation",
                      "leave it out, or write it under foundation");
        }
        read_cavities(record, story);
        house_.stories.push_back(std::move(story));
    });
    if (file_.has("stories") && (house_.stories.empty() || house_.stories.size() > 60))
        file_.report(file_["stories"].place(), "a house has 1 to 60 stories");
}

void HouseReader::read_cavities(const Record& record, StoryDescription& story) {
    std::size_t airs = 0;
    if (house_.wall_assembly < house_.assemblies.size()) {
        const std::vector<WallLayer>& layers = house_.assemblies[house_.wall_assembly].layers;
        airs =
            static_cast<std::size_t>(std::count_if(layers.begin(), layers.end(), [](const WallLayer& l) { return l.is_air(); }));
    }
    record.each("cavities", [&](Node wall) {
        std::vector<NamedSpace> spaces;
        if (wall.is_sequence())
            wall.for_each_item([&](Node item) { spaces.push_back(read_space(item)); });
        else
            spaces.push_back(read_space(wall));
        if (spaces.size() > airs)
            unfit(wall.place(),
                  "cavities names " + std::to_string(spaces.size()) + " bodies of air in a wall that has " + std::to_string(airs),
                  "name the air in each wall, from outside in");
        story.cavities.push_back(std::move(spaces));
    });
    if (story.cavities.size() > house_.walls.size())
        unfit(record["cavities"].place(),
              "cavities has " + std::to_string(story.cavities.size()) + " entries for " + std::to_string(house_.walls.size()) +
                  " walls",
              "give each outside wall one, in order");
}

}  // namespace seamward
