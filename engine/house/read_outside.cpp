// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a house file that are over and round its walls: the roof, the yard, paving, block walls.
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "base/text.h"
#include "geometry/remainder.h"
#include "house/read_description.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 3> attic_keys{"id", "name", "source"};
constexpr std::array<std::string_view, 10> roof_keys{"shape", "pitch",   "overhang", "rake",  "gables",
                                                     "low",   "parapet", "of",       "attic", "eave"};
constexpr std::array<std::string_view, 4> roof_words{"hip", "gable", "shed", "flat"};
constexpr std::array<std::string_view, 1> yard_keys{"margin"};
constexpr std::array<std::string_view, 3> paving_keys{"id", "name", "corners"};
constexpr std::array<std::string_view, 4> block_wall_keys{"id", "name", "points", "height"};

constexpr double least_overhang = 0.05, most_overhang = 3, most_parapet = 3;
constexpr double least_margin = 0.5, most_margin = 1000;

}  // namespace

void HouseReader::read_roof() {
    const Record record(file_["roof"], roof_keys, "roof", diagnostics_);
    RoofDescription& roof = house_.roof;
    if (!record.usable()) return;
    roof.place = record.place();
    roof.shape = static_cast<RoofShape>(record.word("shape", roof_words).value_or(0));
    roof.pitch = roof.shape == RoofShape::flat ? 0 : read_pitch(record);
    roof.overhang = distance(record, "overhang", least_overhang, most_overhang).value_or(0.4);
    roof.rake = distance(record, "rake", 0, most_overhang).value_or(0.2);
    roof.parapet = distance(record, "parapet", 0, most_parapet).value_or(0.4);
    roof.material = record.line("of").value_or("tile");
    if (roof.overhang < least_overhang || roof.overhang > most_overhang)
        record.report(record.place(), "overhang is between 50 mm and 3 m");
    if (roof.rake > most_overhang) record.report(record.place(), "rake is between 0 and 3 m");
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
    check_roof_keys(record);
}

/// Keys that say nothing of a roof of that shape, and a parapet without measure.
void HouseReader::check_roof_keys(const Record& record) {
    const RoofDescription& roof = house_.roof;
    const std::string shape(roof_words.at(static_cast<std::size_t>(roof.shape)));
    const auto idle = [&](std::string_view key, const char* only) {
        const Node node = record[key];
        if (!node.present() || node.is_null() || (node.is_sequence() && node.size() == 0)) return;
        unfit(node.place(), std::string(key) + " says nothing of a " + shape + " roof",
              only == nullptr ? "leave it out" : "write shape: " + std::string(only) + ", or leave it out");
    };
    const bool flat = roof.shape == RoofShape::flat;
    if (roof.shape != RoofShape::gable) idle("gables", "gable");
    if (roof.shape != RoofShape::shed) idle("low", "shed");
    if (!flat) idle("parapet", "flat");
    if (flat) {
        for (const std::string_view key : {"pitch", "overhang", "rake", "eave"}) idle(key, nullptr);
    }
    for (std::size_t i = 0; i < roof.gables.size(); ++i) {
        if (std::find(roof.gables.begin(), roof.gables.begin() + static_cast<std::ptrdiff_t>(i), roof.gables[i]) !=
            roof.gables.begin() + static_cast<std::ptrdiff_t>(i))
            unfit(record["gables"].place(), "gables names a wall twice", "name each once");
    }
    if (flat && roof.parapet > most_parapet) unfit(record["parapet"].place(), "a parapet is at most 3 m high", "make it lower");
}

/// "4/12": so much rise for so much run, or degrees.
double HouseReader::read_pitch(const Record& record) {
    constexpr double least = 0.02, most = 3, right_angle = 90;
    const std::string text = record.required_line("pitch");
    double rise = 0, run = 1;
    const char* end = text.data() + text.size();
    auto [at, error] = std::from_chars(text.data(), end, rise);
    bool good = error == std::errc();
    if (good && at != end && *at == '/') {
        const auto second = std::from_chars(at + 1, end, run);
        good = second.ec == std::errc() && second.ptr == end && run > 0;
    } else if (good) {
        good = std::string_view(at, end) == " deg" && rise > 0 && rise < right_angle;  // beyond, the tangent comes back
        rise = std::tan(rise * std::acos(-1.0) / 180);
    }
    if (!text.empty() && (!good || !(rise / run >= least && rise / run <= most)))
        record.report(record["pitch"].place(), "pitch is no slope between 1/50 and 3/1: " + in_quotes(text),
                      "write pitch: 4/12, or pitch: 18 deg");
    return good ? rise / run : 0.3;
}

void HouseReader::read_paving(Node node) {
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
}

void HouseReader::read_block_wall(Node node) {
    constexpr double lowest = 0.3, highest = 6, shortest_run = 0.6;
    const Record record(node, block_wall_keys, "block wall", diagnostics_);
    BlockWallDescription wall{node.place(), record.required_line("id"), record.line("name").value_or(""), {}, 0};
    take_host(wall.id, "block wall", node.place());
    record.require({"points", "height"});
    wall.points = read_points(record, "points", 2);
    wall.height = distance(record, "height", lowest, highest).value_or(1.5);
    if (wall.height < lowest || wall.height > highest) record.report(node.place(), "a block wall is between 0.3 m and 6 m high");
    for (std::size_t i = 0; i + 1 < wall.points.size(); ++i) {
        const Point2 run = wall.points[i + 1] - wall.points[i];
        if (std::sqrt(dot(run, run)) < shortest_run)
            record.report(node.place(), "a run of the block wall is shorter than 0.6 m", "leave it out");
    }
    if (wall.points.size() >= 2) house_.block_walls.push_back(std::move(wall));
}

void HouseReader::read_yard() {
    const Record yard(file_["yard"], yard_keys, "yard", diagnostics_);
    house_.yard_margin = distance(yard, "margin", least_margin, most_margin).value_or(3);
    if (house_.yard_margin < least_margin || house_.yard_margin > most_margin)
        yard.report(yard.place(), "margin is between 0.5 m and 1000 m");
    file_.each("paving", [&](Node node) { read_paving(node); });
    file_.each("block_walls", [&](Node node) { read_block_wall(node); });
}

}  // namespace seamward
