// SPDX-License-Identifier: GPL-3.0-or-later
// The text of a new house: its shell, and what such a house usually has.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string_view>

#include "document/house_places.h"
#include "document/usual_features.h"

namespace seamward::viewer {

std::string meters_text(double meters) {
    char text[32];
    std::snprintf(text, sizeof text, "%.4f", std::abs(meters) < 5e-5 ? 0.0 : meters);
    std::string digits = text;
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.back() == '.') digits.pop_back();
    return digits + " m";
}

std::string point_text(Point2 point) { return "[" + meters_text(point.x) + ", " + meters_text(point.y) + "]"; }

namespace {

constexpr std::string_view inside_wall =
    "  - {id: partition, layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 89 mm}, "
    "{of: drywall, thick: 13 mm}]}\n";

std::string wall_layers(NewHouse::Cladding cladding) {
    switch (cladding) {
        case NewHouse::Cladding::stucco: return "{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}";
        case NewHouse::Cladding::brick: return "{of: brick, thick: 90 mm}, {air: true, thick: 25 mm}, {of: wood, thick: 12 mm}";
        case NewHouse::Cladding::siding: break;
    }
    return "{of: wood, thick: 30 mm}";
}

std::string foundation_text(NewHouse::Foundation foundation) {
    const std::string floor = meters_text(UsualSizes::stem_wall);
    switch (foundation) {
        case NewHouse::Foundation::slab: return "{kind: slab, above_grade: 6 in}";
        case NewHouse::Foundation::crawl_space:
            return "{kind: crawl-space, above_grade: " + floor +
                   ", height: 0.8 m, space: {id: crawl-space, name: \"crawl space\"}}";
        case NewHouse::Foundation::basement: break;
    }
    return "{kind: basement, above_grade: " + floor + ", height: 2.2 m, space: {id: basement, name: \"basement\"}}";
}

std::string stories_text(const NewHouse& house, const HousePlaces& places) {
    std::string text;
    for (int story = 1; story <= house.stories; ++story) {
        text += "  - height: " + meters_text(UsualSizes::story) + "\n";
        if (story > 1)
            text += "    void: {id: joist-void-" + std::to_string(story - 1) + ", name: \"air between the floor joists\"}\n";
        text += "    cavities:\n";
        for (std::size_t i = 0; i < places.walls().size(); ++i) {
            const std::string end = story > 1 ? "-" + std::to_string(story) : "";
            const std::string where = places.wall_name(i) + (story > 1 ? ", upper floor" : "");
            text += "      - [";
            if (house.cladding == NewHouse::Cladding::brick)
                text += "{id: " + places.walls()[i] + end + "-air, name: \"air behind the brick, " + where + "\"}, ";
            text += "{id: " + places.walls()[i] + end + ", name: \"inside of the " + where + "\"}]\n";
        }
    }
    return text;
}

std::string roof_text(const NewHouse& house, const HousePlaces& places) {
    std::string text = "roof:\n";
    const auto line = [&](const std::string& words) { text += "  " + words + "\n"; };
    switch (house.roof) {
        case NewHouse::Roof::hip: line("shape: hip"); break;
        case NewHouse::Roof::gable: {
            std::string walls;
            for (const std::size_t wall : gable_walls(places.outline()))
                walls += (walls.empty() ? "" : ", ") + places.walls()[wall];
            line("shape: gable");
            line("gables: [" + walls + "]");
            break;
        }
        case NewHouse::Roof::shed:
            line("shape: shed");
            line("low: " + places.walls()[low_wall(places.outline())]);
            break;
        case NewHouse::Roof::flat:
            line("shape: flat");
            line("of: membrane");
            line("attic: {id: attic, name: \"air under the roof\"}");
            return text;
    }
    line(house.roof == NewHouse::Roof::shed ? "pitch: 2/12" : "pitch: 4/12");
    line("overhang: " + meters_text(UsualSizes::overhang));
    // Over gables as far as over eaves: which walls can carry one then follows from the outline alone.
    if (house.roof != NewHouse::Roof::hip) line("rake: " + meters_text(UsualSizes::overhang));
    line("of: shingle");
    line("attic: {id: attic, name: \"attic\"}");
    line("eave: {id: eave, name: \"boxed eave\"}");
    return text;
}

std::string list_text(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) text += "  - {" + line + "}\n";
    return text;
}

std::string rooms_text(HousePlaces& places) {
    std::string text = "rooms:\n";
    for (const UsualRoom& room : places.plan().rooms) {
        const auto at = places.inside_of(room);
        text += "  - {id: " + room.id + ", name: \"" + room.name + "\"" +
                (room.use == RoomUse::garage ? ", kind: attached" : "") + ", at: " + point_text(at) +
                (room.story > 1 ? ", story: " + std::to_string(room.story) : "") + "}\n";
    }
    return text;
}

std::string partitions_text(const HousePlaces& places) {
    std::string text;
    for (const UsualPartition& partition : places.plan().partitions)
        text += "  - {id: " + partition.id + ", name: \"" + partition.name + "\", from: " + point_text(partition.from) +
                ", to: " + point_text(partition.to) + (partition.story > 1 ? ", story: " + std::to_string(partition.story) : "") +
                "}\n";
    return text.empty() ? text : "\npartitions:\n" + text;
}

std::string house_text(const NewHouse& house) {
    HousePlaces places(house);
    std::string text =
        "# A house as a few questions described it. Lengths count from the left end of the front wall, x along the street, y "
        "away "
        "from it.\n"
        "# Doors, windows and all features stand at usual places with usual widths, none of them seen or measured yet: check "
        "each\n"
        "# on site, move it, add what is missing and take out what is not there. docs/house-file.md has every key.\n"
        "seamward-house: 1\n";
    text += "name: " + yaml_quoted(house.name) + "\n\nassemblies:\n  - {id: outside-wall, layers: [" +
            wall_layers(house.cladding) + ", {air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]}\n" +
            std::string(inside_wall);
    std::string corners;
    std::string walls;
    for (std::size_t i = 0; i < places.outline().size(); ++i) {
        corners += (i == 0 ? "" : ", ") + point_text(places.outline()[i]);
        walls += (i == 0 ? "" : ", ") + places.walls()[i];
    }
    text += "\noutline: [" + corners + "]\nwalls: [" + walls + "]\nfoundation: " + foundation_text(house.foundation) +
            "\nstories:\n" + stories_text(house, places) + roof_text(house, places);
    text += partitions_text(places) + "\n" + rooms_text(places);
    const UsualParts parts = usual_parts(house, places);
    return text + "\nopenings:\n" + list_text(parts.openings) + "\nyard: {margin: 2.5 m}\n\nfeatures:\n" +
           list_text(parts.features);
}

std::string job_text(const NewHouse& house, const std::string& house_file) {
    std::string text =
        "# The first visit to a new house. Say here what was measured, closed and seen; docs/job-file.md has every key.\n"
        "seamward: 1\n\njob:\n  name: " +
        yaml_quoted(house.name) + "\n";
    if (!house.address.empty()) text += "  address: " + yaml_quoted(house.address) + "\n";
    if (!house.surveyed.empty()) text += "  surveyed: " + yaml_quoted(house.surveyed) + "\n";
    text += "\nhouse: " + yaml_quoted(house_file) + "\n\npests: [";
    for (std::size_t i = 0; i < house.pests.size(); ++i) text += (i == 0 ? "" : ", ") + house.pests[i];
    return text + "]\n";
}

}  // namespace

NewHouseText new_house_text(const NewHouse& house, const std::string& house_file) {
    return {house_text(house), job_text(house, house_file)};
}

}  // namespace seamward::viewer
