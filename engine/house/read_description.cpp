// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/read_description.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "base/nearest_word.h"
#include "base/text.h"
#include "house/read_feature.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 19> house_keys{"seamward-house", "name",          "outdoors",   "assemblies", "outline",
                                                      "walls",          "wall_assembly", "foundation", "stories",    "partitions",
                                                      "rooms",          "openings",      "roof",       "yard",       "features",
                                                      "paving",         "block_walls",   "stud_bays",  "bulkheads"};
constexpr std::array<std::string_view, 2> space_keys{"id", "name"};

bool has_host(const Feature& type, Host host) {
    return std::find(type.hosts.begin(), type.hosts.end(), host) != type.hosts.end();
}

}  // namespace

HouseReader::HouseReader(const Document& document)
    : diagnostics_(document.file()), root_(document.root()), file_(root_, house_keys, "house", diagnostics_) {
    house_.file = document.file();
}

HouseDescription HouseReader::read() {
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
    read_features();
    diagnostics_.throw_if_any();
    return std::move(house_);
}

void HouseReader::check_version() {
    if (!file_.require({"seamward-house"})) return;
    const Node node = file_["seamward-house"];
    if (node.kind() == Document::Kind::plain && node.text() == "1") return;
    file_.report(node.place(), "unknown format version " + in_quotes(node.text()), "this program reads seamward-house: 1");
}

NamedSpace HouseReader::read_space(Node node) {
    if (node.is_scalar()) {
        const auto id = read_line(node, "space", diagnostics_);
        return {id.value_or(""), ""};
    }
    const Record record(node, space_keys, "space", diagnostics_);
    return {record.required_line("id"), record.line("name").value_or("")};
}

Loop HouseReader::read_points(const Record& record, std::string_view key, std::size_t least) {
    Loop loop;
    record.each(key, [&](Node node) {
        if (loop.size() < most_corners) {
            if (const auto point = read_point(node, "a corner", diagnostics_)) loop.push_back(*point);
        }
    });
    if (record.has(key) && record[key].is_sequence() && record[key].size() > most_corners)
        record.report(record[key].place(), "more than " + std::to_string(most_corners) + " corners");
    if (record.has(key) && record[key].size() < least)
        record.report(record[key].place(), std::string(key) + " needs " + std::to_string(least) + " points or more");
    return loop;
}

std::size_t HouseReader::read_story(const Record& record) const { return seamward::read_story(record, house_.stories.size()); }

std::size_t HouseReader::read_last_story(const Record& record, std::size_t first) const {
    if (!record.has("to_story")) return first;
    const std::size_t last = record.count("to_story").value_or(0);
    if (last > first && last <= house_.stories.size()) return last - 1;
    record.report(record["to_story"].place(),
                  "to_story is a story from " + std::to_string(first + 1) + " to " + std::to_string(house_.stories.size()),
                  "the house has " + std::to_string(house_.stories.size()));
    return first;
}

std::optional<double> HouseReader::distance(const Record& record, std::string_view key, double least, double most) {
    constexpr std::array<std::pair<const char*, double>, 4> units{{{"in", 0.0254}, {"cm", 0.01}, {"mm", 0.001}, {"ft", 0.3048}}};
    const Node node = record[key];
    double number = 0;
    if (node.present() && node.is_scalar()) {
        const std::string_view text = node.text();
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
        const bool bare = error == std::errc() && end == text.data() + text.size();
        const auto fits = [&](double meters) { return meters >= least && meters <= most; };
        const auto unit = std::find_if(units.begin(), units.end(), [&](const auto& u) { return fits(number * u.second); });
        if (bare && !fits(number) && unit != units.end()) {
            record.report(node.place(), std::string(key) + ": a length needs a unit: " + in_quotes(text) + " is a bare number",
                          "write " + std::string(text) + ' ' + unit->first);
            return std::nullopt;
        }
    }
    return record.distance(key);
}

void HouseReader::take_host(const std::string& id, const std::string& called, Place place) {
    if (id.empty()) return;
    const auto [first, fresh] = hosts_.emplace(id, called);
    if (!fresh)
        diagnostics_.add(place,
                         called + " id \"" + id + "\" stands twice" +
                             (first->second == called ? "" : " (" + first->second + " and " + called + ")"),
                         "give each its own");
}

void HouseReader::check_wall(Node node, const std::string& id) {
    std::vector<std::string_view> known(house_.walls.begin(), house_.walls.end());
    for (const PartitionDescription& partition : house_.partitions) known.emplace_back(partition.id);
    if (id.empty() || std::find(known.begin(), known.end(), id) != known.end()) return;
    if (misspelled("partitions") || misspelled("walls")) return;  // it may stand there
    diagnostics_.add(node.place(), "unknown wall \"" + id + '"', suggestion(id, known));
}

std::size_t HouseReader::wall_named(const Record& record, Node node) {
    const auto wall = std::find(house_.walls.begin(), house_.walls.end(), node.text());
    if (wall != house_.walls.end()) return static_cast<std::size_t>(wall - house_.walls.begin());
    if (!misspelled("walls"))
        record.report(node.place(), "unknown wall " + in_quotes(node.text()),
                      suggestion(node.text(), std::vector<std::string_view>(house_.walls.begin(), house_.walls.end())));
    return 0;
}

void HouseReader::check_not_empty(const Record& record, const std::string& key, const std::string& mend) {
    const Node list = record[key];
    if (list.present() && (list.is_null() || (list.is_sequence() && list.size() == 0)))
        record.report(list.place(), key + " is empty", mend);
}

bool HouseReader::misspelled(std::string_view key) const {
    bool found = false;
    if (!root_.present() || !root_.is_mapping()) return false;
    root_.for_each_pair([&](Node name, Node) {
        const bool known = std::find(house_keys.begin(), house_keys.end(), name.text()) != house_keys.end();
        found = found || (!known && nearest_word(name.text(), house_keys) == key);
    });
    return found;
}

void HouseReader::unfit(Place place, std::string what, std::string mend) {
    house_.unfit.push_back({house_.file, place, std::move(what), std::move(mend)});
}

void HouseReader::read_features() {
    FeatureReader features(diagnostics_, house_.stories.size());
    file_.each("features", [&](Node node) {
        house_.features.push_back(features.read(node));
        check_feature(house_.features.back());
    });
}

/// What goes wrong with features and can be told more plainly here than where they are placed.
void HouseReader::check_feature(const FeatureDescription& feature) {
    const std::string& on = feature.on.empty() ? "" : feature.on.front();
    for (const OpeningDescription& opening : house_.openings) {
        if (opening.kind == OpeningKind::archway && opening.id == on)
            diagnostics_.add(feature.place, "feature " + feature.id + ": archway " + on + " has no leaf and no frame to be on",
                             "leave the feature out, or give the opening another kind");
    }
    const Feature& type = *feature.type;
    const bool solid_ground = house_.foundation.kind == FoundationKind::slab && house_.foundation.space.id.empty();
    if (has_host(type, Host::ceiling) && has_host(type, Host::floor) && type.air.empty() && feature.on.empty() && feature.at &&
        feature.story == 0 && solid_ground)
        diagnostics_.add(feature.place,
                         "feature " + feature.id + ": a " + type.id +
                             " is on the floor where on is left out, and there is no air under a slab",
                         "write on: ceiling");
    // A wall and no place on it: told once, not once for each of its gaps.
    const bool wall = hosts_.contains(on) && (hosts_.at(on) == "wall" || hosts_.at(on) == "partition");
    const bool placed = std::any_of(type.gaps.begin(), type.gaps.end(), [](const FeatureGap& gap) {
        return gap.shape != ShapeKind::slot || gap.form == FeatureGap::Form::around || gap.form == FeatureGap::Form::beside;
    });
    const bool upright = has_host(type, Host::wall) || has_host(type, Host::partition);
    const bool elsewhere = has_host(type, Host::foundation) || has_host(type, Host::rim) || type.id == "weep-screed" ||
                           !type.air.empty();  // a duct may come down another way
    if (wall && placed && upright && !elsewhere && type.gaps.size() > 1 && !feature.along)
        unfit(feature.place, "feature " + feature.id + ": along is missing", "write along: 3.2 m, counted from its left end");
}

HouseDescription read_house_description(const std::filesystem::path& path, const std::string& shown_as,
                                        const RunContext& context) {
    const Document document = read_document(path, shown_as);
    context.check();
    return HouseReader(document).read();
}

HouseDescription parse_house_yaml(std::string_view text, const std::string& shown_as) {
    const Document document = parse_yaml(text, shown_as);
    return HouseReader(document).read();
}

}  // namespace seamward
