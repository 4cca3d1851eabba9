// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/read_feature.h"

#include <algorithm>

#include "base/nearest_word.h"
#include "base/read_evidence.h"
#include "base/text.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 19> feature_keys{"id",   "type",   "name",   "on",    "along",   "up",     "at",
                                                        "side", "story",  "space",  "count", "spacing", "source", "note",
                                                        "gap",  "around", "length", "size",  "evidence"};
constexpr std::array<std::string_view, 9> gap_keys{"id",   "name",     "gap",     "around", "length",
                                                   "size", "evidence", "closing", "note"};
constexpr std::array<std::string_view, 2> space_keys{"id", "name"};

void read_size(const Record& record, FeatureDescription::Sizes& sizes, Diagnostics& diagnostics) {
    if (record.has("gap")) sizes.width = record.length("gap");
    if (record.has("around")) sizes.around = record.length("around");
    if (record.has("length")) sizes.length = record.distance("length");
    if (record.has("size")) {
        if (const auto size = read_point(record["size"], "size", diagnostics)) {
            if (size->x > 0 && size->y > 0)
                sizes.size = {size->x, size->y};
            else
                record.report(record["size"].place(), "a size is more than 0");
        }
    }
    if (record.has("evidence")) sizes.evidence = read_evidence(record, diagnostics);
}

}  // namespace

std::optional<Point2> read_point(Node node, std::string_view called, Diagnostics& diagnostics) {
    if (!node.is_sequence() || node.size() != 2) {
        diagnostics.add(node.place(), std::string(called) + " is a point of two lengths", "write [4.5 m, 2 m]");
        return std::nullopt;
    }
    std::array<double, 2> point{};
    std::size_t axis = 0;
    bool whole = true;
    node.for_each_item([&](Node coordinate) {
        const Parsed<double> parsed = coordinate.is_scalar()
                                          ? parse_coordinate(coordinate.text())
                                          : Parsed<double>{std::nullopt, {"a coordinate is a length", "write for example 4.5 m"}};
        const bool near = parsed && std::abs(*parsed) <= 1000;
        if (near)
            point.at(axis) = *parsed;
        else
            diagnostics.add(coordinate.place(),
                            std::string(called) + ": " + (parsed ? "more than 1000 m from the origin" : parsed.fault.what),
                            parsed ? "put the origin near the house" : parsed.fault.mend);
        whole = whole && near;
        ++axis;
    });
    if (!whole) return std::nullopt;
    return Point2{point[0], point[1]};
}

std::size_t read_story(const Record& record, std::size_t stories) {
    const std::uint32_t story = record.count("story").value_or(1);
    if (story <= stories) return story - 1;
    if (stories == 0) return 0;  // reported where they are listed
    record.report(record["story"].place(), "there is no story " + std::to_string(story),
                  "the house has " + std::to_string(stories));
    return 0;
}

FeatureDescription FeatureReader::read(Node node) {
    FeatureDescription feature;
    feature.place = node.place();
    // The keys of a feature depend on its type: find that first, with nothing reported.
    const Feature* type = nullptr;
    if (node.is_mapping()) {
        node.for_each_pair([&](Node key, Node value) {
            if (key.text() == "type") type = shipped_features().find(std::string(value.text()));
        });
    }
    std::vector<std::string_view> keys(feature_keys.begin(), feature_keys.end());
    keys.emplace_back("closing");
    for (const Feature& row : shipped_features().rows) {
        if (type != nullptr && type != &row) continue;  // of an unknown type, any gap may be meant
        for (const FeatureGap& gap : row.gaps) {
            if (std::find(keys.begin(), keys.end(), gap.id) == keys.end()) keys.emplace_back(gap.id);
        }
    }
    if (node.size() > Record::most_keys) {
        diagnostics_.add(node.place(), "a feature has more than " + std::to_string(Record::most_keys) + " keys",
                         "make several features of it");
        node = {};
    }
    const Record record(node, keys, "feature", diagnostics_);
    feature.id = record.required_line("id");
    if (!feature.id.empty() && !ids_.insert(feature.id).second)
        record.report(node.place(), "feature id \"" + feature.id + "\" stands twice", "give each its own");
    const std::string word = record.required_line("type");
    if (type == nullptr) {
        if (!word.empty()) {
            std::vector<std::string_view> known;
            for (const Feature& row : shipped_features().rows) known.emplace_back(row.id);
            record.report(record["type"].place(), "unknown type of feature " + in_quotes(word), suggestion(word, known));
        }
        type = &shipped_features().rows.front();
    }
    feature.type = type;
    feature.name = record.line("name").value_or("");
    (void)record.text("note");
    if (record.has("on")) {
        const Node on = record["on"];
        if (on.is_sequence())
            on.for_each_item([&](Node item) { feature.on.push_back(read_line(item, "on", diagnostics_).value_or("?")); });
        else
            feature.on.push_back(read_line(on, "on", diagnostics_).value_or("?"));
    }
    if (record.has("along")) feature.along = record.distance("along");
    if (record.has("up")) {
        const Node up = record["up"];
        const Parsed<double> parsed = parse_coordinate(up.text());
        if (parsed)
            feature.up = *parsed;
        else
            record.report(up.place(), "up: " + parsed.fault.what, parsed.fault.mend);
    }
    if (record.has("at")) feature.at = read_point(record["at"], "at", diagnostics_);
    feature.side = record.line("side").value_or("");
    feature.story = read_story(record, stories_);
    if (record.has("space")) {
        const Node space = record["space"];
        if (space.is_scalar()) {
            feature.space.id = read_line(space, "space", diagnostics_).value_or("");
        } else {
            const Record named(space, space_keys, "space", diagnostics_);
            feature.space = {named.required_line("id"), named.line("name").value_or("")};
        }
    }
    feature.source = record.truth("source").value_or(false);
    if (record.has("count")) feature.count = record.count("count");
    if (feature.count && *feature.count > 10'000) record.report(record["count"].place(), "a feature makes at most 10000 alike");
    if (record.has("spacing")) feature.spacing = record.distance("spacing");
    FeatureDescription::Sizes all;
    read_size(record, all, diagnostics_);
    all.closing = read_closing(record, diagnostics_);
    for (const FeatureGap& row : type->gaps) {
        feature.gaps.push_back(all);
        if (record.has(row.id)) read_gap(record[row.id], row, feature.gaps.back());
    }
    return feature;
}

void FeatureReader::read_gap(Node node, const FeatureGap& row, FeatureDescription::Sizes& sizes) {
    if (node.is_scalar()) {
        if (node.text() == "none") {
            sizes.left_out = true;
            return;
        }
        const Parsed<double> parsed = parse_length(node.text());
        if (parsed)
            sizes.width = *parsed;
        else
            diagnostics_.add(node.place(), row.id + ": " + parsed.fault.what,
                             "write its clear width, for example 1/8 in, or none when there is no such opening");
        return;
    }
    const Record record(node, gap_keys, row.id, diagnostics_);
    sizes.id = record.line("id").value_or("");
    sizes.name = record.line("name").value_or("");
    (void)record.text("note");
    read_size(record, sizes, diagnostics_);
    if (record.has("closing")) sizes.closing = read_closing(record, diagnostics_);
}

}  // namespace seamward
