// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/duty_case.h"

#include <algorithm>
#include <optional>

#include "base/nearest_word.h"
#include "base/text.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 11> case_keys{"duties",      "features", "feature_unknown", "all_of", "any_of",
                                                     "nothing_but", "between",  "words",           "shapes", "least_length",
                                                     "below"};
/// As in job files.
constexpr std::array<std::string_view, 10> duty_file_words{"none",           "drain", "weep",   "vent",     "exhaust",
                                                           "combustion-air", "flood", "relief", "movement", "operable"};
constexpr std::array<std::string_view, 5> kind_words{"outdoors", "cavity", "attached", "living", "harborage"};
constexpr std::array<std::string_view, 4> shape_file_words{"slot", "hole", "ring", "mesh"};

/// The words of a list as positions in `known`.
template <class Value>
std::vector<Value> read_words(const Record& record, std::string_view key, std::string_view called, Words known) {
    std::vector<Value> values;
    record.each(key, [&](Node node) {
        const auto word = node.is_scalar() ? std::find(known.begin(), known.end(), node.text()) : known.end();
        if (word != known.end())
            values.push_back(static_cast<Value>(word - known.begin()));
        else
            record.report(node.place(), "unknown " + std::string(called) + " " + in_quotes(node.text()),
                          suggestion(node.text(), known));
    });
    return values;
}

void require_items(const Record& record, std::string_view key) {
    const Node node = record[key];
    if (node.present() && (node.is_null() || (node.is_sequence() && node.size() == 0)))
        record.report(node.place(), std::string(key) + " is empty", "remove it: what is left out is not asked");
}

void read_between(const Record& record, DutyCase& when, Diagnostics& diagnostics) {
    const Node node = record["between"];
    if (!node.present()) return;
    constexpr std::array<std::string_view, 2> keys{"one", "other"};
    const Record sides(node, keys, "between", diagnostics);
    if (!sides.usable() || !sides.require({"one", "other"})) return;
    for (std::size_t side = 0; side < 2; ++side) {
        require_items(sides, keys.at(side));
        when.between.at(side) = read_words<SpaceKind>(sides, keys.at(side), "kind", kind_words);
    }
}

}  // namespace

Words duty_case_keys() { return case_keys; }

std::string_view duty_word(Duty duty) { return duty_file_words.at(static_cast<std::size_t>(duty)); }

std::vector<std::string> read_lines(const Record& record, std::string_view key, std::string_view called,
                                    Diagnostics& diagnostics) {
    std::vector<std::string> lines;
    record.each(key, [&](Node node) {
        if (std::optional<std::string> line = read_line(node, called, diagnostics)) lines.push_back(std::move(*line));
    });
    return lines;
}

DutyCase read_duty_case(const Record& record, const Table<Feature>& features, Diagnostics& diagnostics) {
    DutyCase when;
    if (!record.usable()) return when;
    for (const std::string_view key : case_keys) require_items(record, key);
    when.duties = read_words<Duty>(record, "duties", "duty", duty_file_words);
    record.each("features", [&](Node node) {
        const std::optional<std::string> id = read_line(node, "feature", diagnostics);
        if (!id) return;
        if (features.find(*id) == nullptr)
            record.report(node.place(), "unknown feature " + in_quotes(*id), suggestion(*id, features.ids()));
        when.features.push_back(*id);
    });
    when.feature_unknown = record.truth("feature_unknown").value_or(false);
    if (when.feature_unknown && record.has("features"))
        record.report(record["features"].place(), "a feature that is not known is none of these",
                      "keep features or feature_unknown");
    when.all_of = read_lines(record, "all_of", "substrate", diagnostics);
    when.any_of = read_lines(record, "any_of", "substrate", diagnostics);
    when.nothing_but = read_lines(record, "nothing_but", "substrate", diagnostics);
    when.words = read_lines(record, "words", "word", diagnostics);
    when.shapes = read_words<ShapeKind>(record, "shapes", "shape", shape_file_words);
    when.least_length = record.distance("least_length").value_or(0);
    when.height = record.distance("below").value_or(when.height);
    read_between(record, when, diagnostics);
    std::size_t asked = 0;
    for (const std::string_view key : case_keys) asked += record.has(key) ? 1 : 0;
    if (asked == 0) record.report(record.place(), "a row that asks nothing fits every gap", "say which gaps it is for");
    return when;
}

bool DutyCase::takes(Duty duty) const { return duties.empty() || std::find(duties.begin(), duties.end(), duty) != duties.end(); }

bool DutyCase::asks_duty_only() const {
    return !duties.empty() && features.empty() && !feature_unknown && all_of.empty() && any_of.empty() && nothing_but.empty() &&
           between[0].empty() && between[1].empty() && words.empty() && shapes.empty() && least_length == 0 &&
           height == std::numeric_limits<double>::infinity();
}

}  // namespace seamward
