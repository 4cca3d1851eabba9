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

/// What people call things, and the type of feature that is meant.
constexpr std::array<std::pair<std::string_view, std::string_view>, 54> everyday_types{{
    {"ac-line", "line-set"},
    {"ac-lines", "line-set"},
    {"air-conditioner", "line-set"},
    {"attic-access", "attic-hatch"},
    {"attic-door", "attic-hatch"},
    {"attic-ladder", "attic-stair"},
    {"attic-stairs", "attic-stair"},
    {"bathroom-fan", "bath-fan"},
    {"can-light", "recessed-light"},
    {"can-lights", "recessed-light"},
    {"coax", "cable-entry"},
    {"door-gap", "door-sweep"},
    {"door-seal", "door-weatherstrip"},
    {"downlight", "recessed-light"},
    {"dryer", "dryer-outlet"},
    {"dryer-duct", "dryer-outlet"},
    {"dryer-exhaust", "dryer-outlet"},
    {"dryer-vent", "dryer-outlet"},
    {"electric-meter", "meter-can"},
    {"electrical-outlet", "outlet"},
    {"exhaust-fan", "bath-fan"},
    {"exterior-lamp", "exterior-light"},
    {"fan", "bath-fan"},
    {"faucet", "hose-bibb"},
    {"foundation-vent", "crawl-vent"},
    {"garage-seal", "garage-door-bottom"},
    {"gas-line", "gas-riser"},
    {"gas-meter", "gas-riser"},
    {"gas-pipe", "gas-riser"},
    {"hole", "outside-hole"},
    {"hose-bib", "hose-bibb"},
    {"internet", "fiber-entry"},
    {"light-switch", "switch"},
    {"outdoor-light", "exterior-light"},
    {"outdoor-outlet", "exterior-outlet"},
    {"pipe", "wall-pipe"},
    {"plumbing-vent", "vent-pipe-boot"},
    {"porch-light", "exterior-light"},
    {"pot-light", "recessed-light"},
    {"power-meter", "meter-can"},
    {"receptacle", "outlet"},
    {"refrigerant-line", "line-set"},
    {"register", "supply-register"},
    {"return-air", "return-grille"},
    {"scuttle", "attic-hatch"},
    {"smoke-detector", "smoke-alarm"},
    {"spigot", "hose-bibb"},
    {"stovepipe", "flue-collar"},
    {"threshold", "door-sweep"},
    {"toilet", "toilet-stub"},
    {"vent-stack", "vent-pipe-boot"},
    {"water-heater-flue", "flue-collar"},
    {"weather-strip", "door-weatherstrip"},
    {"wire-hole", "top-plate-hole"},
}};

std::string type_suggestion(const std::string& word) {
    const auto meant =
        std::find_if(everyday_types.begin(), everyday_types.end(), [&](const auto& pair) { return pair.first == word; });
    if (meant != everyday_types.end()) return "did you mean " + std::string(meant->second) + '?';
    std::vector<std::string_view> known;
    for (const Feature& row : shipped_features().rows) known.emplace_back(row.id);
    const std::string near = suggestion(word, known);
    return near.empty() ? "docs/catalog.md lists the types" : near;
}

void read_size(const Record& record, FeatureDescription::Sizes& sizes, bool evidence_stated, Diagnostics& diagnostics) {
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
    // Where the file states a width but not how it became known, it was modeled; what it leaves to the catalog is assumed.
    if (record.has("evidence"))
        sizes.evidence = read_evidence(record, diagnostics);
    else if (record.has("gap") && sizes.evidence.how == Evidence::How::assumed && !evidence_stated)
        sizes.evidence.how = Evidence::How::modeled;
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
    report_unknown_keys(node, keys, type);
    const Record record(node, keys, "feature", diagnostics_);
    feature.id = record.required_line("id");
    if (!feature.id.empty() && !ids_.insert(feature.id).second)
        record.report(node.place(), "feature id \"" + feature.id + "\" stands twice", "give each its own");
    feature.type = read_type(record, type);
    feature.name = record.line("name").value_or("");
    read_place(record, feature);
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
    read_gaps(record, feature);
    return feature;
}

/// Keys that are unlike any that the feature may have: the message names those of its single gaps. They are then known, so that
/// they are told once.
void FeatureReader::report_unknown_keys(Node node, std::vector<std::string_view>& keys, const Feature* type) {
    if (!node.present() || !node.is_mapping() || type == nullptr) return;
    std::vector<std::string_view> told;
    node.for_each_pair([&](Node key, Node value) {
        const bool known = std::find(keys.begin(), keys.end(), key.text()) != keys.end();
        const bool number = value.is_null() && !key.text().empty() && key.text().front() >= '0' && key.text().front() <= '9';
        if (known || number || nearest_word(key.text(), keys)) return;  // the record tells of the last two
        std::string gaps;
        for (const FeatureGap& gap : type->gaps) gaps += (gaps.empty() ? "" : ", ") + gap.id;
        diagnostics_.add(key.place(), "unknown key " + in_quotes(key.text()) + " in feature",
                         "a clear width is gap; the key" +
                             std::string(type->gaps.size() == 1 ? " of its one gap is " : "s of its gaps are ") + gaps +
                             "; docs/house-file.md lists all others");
        told.push_back(key.text());
    });
    keys.insert(keys.end(), told.begin(), told.end());
}

const Feature* FeatureReader::read_type(const Record& record, const Feature* found) {
    const std::string word = record.required_line("type");
    if (found != nullptr) return found;
    if (!word.empty()) record.report(record["type"].place(), "unknown type of feature " + in_quotes(word), type_suggestion(word));
    return &shipped_features().rows.front();
}

void FeatureReader::read_place(const Record& record, FeatureDescription& feature) {
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
}

void FeatureReader::read_gaps(const Record& record, FeatureDescription& feature) {
    if (record.has("count")) feature.count = record.count("count");
    if (feature.count && *feature.count > 10'000) record.report(record["count"].place(), "a feature makes at most 10000 alike");
    if (record.has("spacing")) feature.spacing = record.distance("spacing");
    FeatureDescription::Sizes all;
    read_size(record, all, false, diagnostics_);
    all.closing = read_closing(record, full_closings(), diagnostics_);
    all.note = record.text("note").value_or("");
    evidence_stated_ = record.has("evidence");
    for (const FeatureGap& row : feature.type->gaps) {
        feature.gaps.push_back(all);
        if (record.has(row.id)) read_gap(record[row.id], row, feature.gaps.back());
    }
}

void FeatureReader::read_gap(Node node, const FeatureGap& row, FeatureDescription::Sizes& sizes) {
    if (node.is_scalar()) {
        if (node.text() == "none") {
            sizes.left_out = true;
            return;
        }
        const Parsed<double> parsed = parse_length(node.text());
        if (parsed) {
            sizes.width = *parsed;
            if (!evidence_stated_) sizes.evidence.how = Evidence::How::modeled;
        } else {
            diagnostics_.add(node.place(), row.id + ": " + parsed.fault.what,
                             "write its clear width, for example 1/8 in, or none when there is no such opening");
        }
        return;
    }
    const Record record(node, gap_keys, row.id, diagnostics_);
    sizes.id = record.line("id").value_or("");
    sizes.name = record.line("name").value_or("");
    if (const auto note = record.text("note")) sizes.note = *note;
    read_size(record, sizes, evidence_stated_, diagnostics_);
    if (record.has("closing")) sizes.closing = read_closing(record, full_closings(), diagnostics_);
}

}  // namespace seamward
