// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/read_gap.h"

#include <array>

#include "base/nearest_word.h"
#include "base/read_evidence.h"
#include "base/record.h"
#include "base/text.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 19> gap_keys{
    "id",    "name",          "between",    "slot",     "hole",    "ring", "mesh", "count",   "duty", "at",
    "depth", "joint_spacing", "substrates", "evidence", "closing", "note", "type", "through", "photo"};
constexpr std::array<std::string_view, 4> shape_words{"slot", "hole", "ring", "mesh"};
constexpr std::array<std::string_view, 2> slot_keys{"width", "length"};
constexpr std::array<std::string_view, 1> hole_keys{"diameter"};
constexpr std::array<std::string_view, 2> ring_keys{"width", "around"};
constexpr std::array<std::string_view, 2> mesh_keys{"opening", "area"};
constexpr std::array<std::string_view, 10> duty_file_words{"none",           "drain", "weep",   "vent",     "exhaust",
                                                           "combustion-air", "flood", "relief", "movement", "operable"};

Shape read_shape(std::string_view word, Node node, Diagnostics& diagnostics) {
    if (word == "slot") {
        const Record slot(node, slot_keys, word, diagnostics);
        slot.require({"width", "length"});
        return Slot{slot.length("width").value_or(0), slot.distance("length").value_or(0)};
    }
    if (word == "hole") {
        const Record hole(node, hole_keys, word, diagnostics);
        hole.require({"diameter"});
        return Hole{hole.length("diameter").value_or(0)};
    }
    if (word == "ring") {
        const Record ring(node, ring_keys, word, diagnostics);
        ring.require({"width", "around"});
        return Ring{ring.length("width").value_or(0), ring.length("around").value_or(0)};
    }
    const Record mesh(node, mesh_keys, word, diagnostics);
    mesh.require({"opening"});
    return Mesh{mesh.length("opening").value_or(0), mesh.area("area")};
}

void read_the_shape(const Record& record, Gap& gap, Diagnostics& diagnostics) {
    std::string_view first;
    for (const std::string_view word : shape_words) {
        if (!record.has(word)) continue;
        const Shape shape = read_shape(word, record[word], diagnostics);
        if (first.empty()) {
            first = word;
            gap.shape = shape;
        } else {
            record.report(record[word].place(),
                          "a gap has exactly one shape, this one is a " + std::string(first) + " and a " + std::string(word),
                          "keep one, or make two gaps of it");
        }
    }
    if (first.empty())
        record.report(record.place(), "gap has no shape", "add slot: {width: ..., length: ...}, or hole, ring or mesh");
}

void read_ends(const Record& record, const IdIndex& spaces, Gap& gap, Diagnostics& diagnostics) {
    if (!record.has("between")) {
        record.report(record.place(), "gap has no between", "add between: [SPACE, SPACE]");
        return;
    }
    const Node node = record["between"];
    if (!node.is_sequence() || node.size() != 2) {
        const std::string found = node.is_sequence() ? "here stand " + std::to_string(node.size()) : "here stands no list";
        record.report(node.place(), "a gap joins exactly two spaces, " + found, "write between: [SPACE, SPACE]");
        return;
    }
    std::size_t end = 0;
    record.each("between", [&](Node id) {
        if (const auto position = spaces.resolve(id, "space", diagnostics)) gap.between[end] = {*position};
        ++end;
    });
    if (gap.between[0].valid() && gap.between[0] == gap.between[1]) {
        record.report(node.place(), "this gap leads from a space to itself", "name the spaces on its two sides");
    }
}

/// A point under a key; nothing when it is faulty.
std::optional<Point> read_point(Node node, const std::string& key, Diagnostics& diagnostics) {
    if (!node.is_sequence() || node.size() != 3) {
        const bool one = key == "at";
        diagnostics.add(node.place(), (one ? "at is a point" : "a point of " + key + " is a list") + " of three coordinates",
                        std::string(one ? "write at: " : "write ") + "[4.5 m, 9 m, 0.05 m]");
        return std::nullopt;
    }
    std::array<double, 3> point{};
    std::size_t axis = 0;
    bool whole = true;
    node.for_each_item([&](Node coordinate) {
        const Parsed<double> parsed = coordinate.is_scalar()
                                          ? parse_coordinate(coordinate.text())
                                          : Parsed<double>{std::nullopt, {"a coordinate is a length", "write for example 4.5 m"}};
        if (parsed)
            point.at(axis) = *parsed;
        else
            diagnostics.add(coordinate.place(), key + ": " + parsed.fault.what, parsed.fault.mend);
        whole = whole && parsed;
        ++axis;
    });
    return whole ? std::optional(Point{point[0], point[1], point[2]}) : std::nullopt;
}

/// The way through the gap, point by point; empty when it is not said.
std::vector<Point> read_way(const Record& record, Diagnostics& diagnostics) {
    std::vector<Point> way;
    if (!record.has("through")) return way;
    const Node node = record["through"];
    if (!node.is_sequence() || node.size() < 2) {
        record.report(node.place(), "through is a list of two points or more",
                      "write through: [[4.5 m, 9 m, 0.05 m], [4.5 m, 9.1 m, 0.05 m]]");
        return way;
    }
    node.for_each_item([&](Node item) {
        if (const auto point = read_point(item, "through", diagnostics)) way.push_back(*point);
    });
    return way;
}

/// What the gap belongs to, in the words of the table of features; empty: not said.
std::string read_type(const Record& record) {
    std::string type = record.line("type").value_or("");
    if (type.empty() || shipped_features().find(type) != nullptr) return type;
    std::string mend = suggestion(type, shipped_features().ids());
    if (mend.empty()) mend = "docs/catalog.md lists them under Features; leave it out where none fits";
    record.report(record["type"].place(), "unknown type " + in_quotes(type), mend);
    return "";
}

}  // namespace

Gap read_gap(Node node, const IdIndex& spaces, Diagnostics& diagnostics, std::vector<Point>* through) {
    const Record record(node, gap_keys, "gap", diagnostics);
    Gap gap;
    if (!record.usable()) return gap;
    gap.id = record.required_line("id");
    gap.name = record.line("name").value_or("");
    gap.note = record.text("note").value_or("");
    gap.photo = record.line("photo").value_or("");
    gap.feature = read_type(record);
    read_ends(record, spaces, gap, diagnostics);
    read_the_shape(record, gap, diagnostics);
    gap.count = record.count("count").value_or(1);
    gap.duty = static_cast<Duty>(record.word("duty", duty_file_words).value_or(0));
    if (record.has("at")) gap.at = read_point(record["at"], "at", diagnostics);
    std::vector<Point> way = read_way(record, diagnostics);
    if (through != nullptr && !way.empty()) *through = std::move(way);
    gap.depth = record.length("depth");
    gap.joint_spacing = record.distance("joint_spacing");
    record.each("substrates", [&](Node word) {
        if (std::optional<std::string> text = read_line(word, "substrate", diagnostics))
            gap.substrates.push_back(std::move(*text));
    });
    gap.evidence = read_evidence(record, diagnostics);
    gap.closing = read_closing(record, full_closings(), diagnostics);
    return gap;
}

GapUpdate read_gap_update(Node node, Diagnostics& diagnostics) {
    constexpr std::array<std::string_view, 10> update_keys{"id",   "slot",     "hole",    "ring", "mesh",
                                                           "duty", "evidence", "closing", "note", "photo"};
    constexpr std::array<std::pair<const char*, std::string_view>, 4> width_keys{
        {{"slot", "width"}, {"hole", "diameter"}, {"ring", "width"}, {"mesh", "opening"}}};
    const Record record(node, update_keys, "new measurement of a gap of the house", diagnostics);
    GapUpdate update;
    update.place = node.place();
    if (!record.usable()) return update;
    record.require({"id"});
    update.id = record["id"];
    update.note = record.text("note");
    update.photo = record.line("photo");
    for (const auto& [word, key] : width_keys) {
        if (!record.has(word)) continue;
        const std::array<std::string_view, 1> keys{key};
        const Record shape(record[word], keys, word, diagnostics);
        shape.require({key});
        update.width = shape.length(key);
        if (update.shape != nullptr) record.report(record[word].place(), "a gap has exactly one shape", "keep one");
        update.shape = word;
    }
    if (record.has("evidence")) update.evidence = read_evidence(record, diagnostics);
    if (record.has("closing")) update.closing = read_closing(record, full_closings(), diagnostics);
    if (record.has("duty")) update.duty = static_cast<Duty>(record.word("duty", duty_file_words).value_or(0));
    return update;
}

}  // namespace seamward
