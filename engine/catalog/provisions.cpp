// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/provisions.h"

#include <cmath>

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 6> measure_keys{"id", "name", "unit", "of", "stated", "ask"};
constexpr std::array<std::string_view, 6> unit_words{"length", "area", "share", "count", "answer", "air-changes"};
constexpr std::array<std::string_view, 3> of_words{"gap", "space", "house"};
constexpr std::array<std::string_view, 3> stated_words{"gap", "place", "no"};
constexpr std::array<std::string_view, 22> provision_keys{
    "id",          "name",    "text",   "group",     "applies",    "gaps",     "classes",  "into",    "outside_walls",
    "closed_with", "measure", "limit",  "area_rule", "lower_rule", "lower_if", "document", "edition", "section",
    "confidence",  "mend",    "source", "note"};
constexpr std::array<std::string_view, 2> into_words{"attic", "garage"};
constexpr std::array<std::string_view, 3> applies_keys{"cladding", "foundation", "has"};
constexpr std::array<std::string_view, 2> class_keys{"one", "other"};
constexpr std::array<std::string_view, 3> limit_keys{"at_least", "at_most", "is"};
constexpr std::array<std::string_view, 3> confidence_words{"high", "medium", "low"};
constexpr std::array<std::string_view, 3> foundations{"slab", "crawl-space", "basement"};
constexpr std::array<std::string_view, 11> built_with{
    "attic",     "garage",     "fuel-appliances",       "dryer", "chimney", "flood-zone", "party-wall", "hot-zone",
    "cold-zone", "metal-flue", "level-combustion-ducts"};

class ProvisionReader {
public:
    ProvisionReader(TableReader<Provision>& reader, const Table<Measure>& measures, const Table<Feature>& features,
                    const Table<FreeAreaRule>& areas)
        : reader_(reader), measures_(measures), features_(features), areas_(areas) {}

    Provision read(Node node, Diagnostics& diagnostics) {
        const Record record(node, provision_keys, "provision", diagnostics);
        Provision row;
        if (!record.usable()) return row;
        row.id = record.required_line("id");
        row.name = record.required_line("name");
        row.text = record.required_line("text");
        row.group = record.required_line("group");
        row.mend = record.required_line("mend");
        row.document = record.required_line("document");
        row.edition = record.required_line("edition");
        row.section = record.required_line("section");
        if (record.require({"confidence"}))
            row.confidence = static_cast<Confidence>(record.word("confidence", confidence_words).value_or(2));
        row.source = reader_.source(record);
        (void)record.line("note");
        if (record.has("applies")) read_applies(reader_.record(record["applies"], applies_keys, "applies"), row, diagnostics);
        read_gaps(record, row, diagnostics);
        row.closed_with = read_lines(record, "closed_with", "treatment", diagnostics);
        if (record.has("classes")) {
            const Record classes = reader_.record(record["classes"], class_keys, "classes");
            classes.require({"one", "other"});
            for (std::size_t side = 0; side < 2; ++side)
                row.classes.at(side) = read_lines(classes, class_keys.at(side), "class", diagnostics);
        }
        read_measure(record, row);
        return row;
    }

private:
    /// One case, or a list of them.
    void read_gaps(const Record& record, Provision& row, Diagnostics& diagnostics) {
        const auto read = [&](Node node) {
            row.gaps.push_back(read_duty_case(reader_.record(node, duty_case_keys(), "gaps"), features_, diagnostics));
        };
        if (!record.has("gaps")) return;
        if (record["gaps"].is_sequence())
            record.each("gaps", read);
        else
            read(record["gaps"]);
    }

    void read_applies(const Record& record, Provision& row, Diagnostics& diagnostics) {
        if (!record.usable()) return;
        row.applies.cladding = read_lines(record, "cladding", "cladding", diagnostics);
        row.applies.foundation = words_of(record, "foundation", foundations, diagnostics);
        row.applies.has = words_of(record, "has", built_with, diagnostics);
    }

    static std::vector<std::string> words_of(const Record& record, std::string_view key, Words known, Diagnostics& diagnostics) {
        std::vector<std::string> lines = read_lines(record, key, key, diagnostics);
        for (const std::string& line : lines) {
            if (std::find(known.begin(), known.end(), line) == known.end())
                record.report(record[key].place(), "unknown word " + in_quotes(line), suggestion(line, known));
        }
        return lines;
    }

    const Measure* measure_named(const Record& record, std::string_view key) {
        const std::string id = record.required_line(key);
        if (id.empty()) return nullptr;
        const Measure* measure = measures_.find(id);
        if (measure == nullptr)
            record.report(record[key].place(), "unknown measure " + in_quotes(id), suggestion(id, measures_.ids()));
        return measure;
    }

    /// A rule of the table of free areas that says what is due for a floor, or for an input.
    std::string area_rule(const Record& record, std::string_view key, double FreeAreaRule::*kind) {
        std::string id = record.required_line(key);
        if (id.empty()) return id;
        std::vector<std::string_view> known;
        for (const FreeAreaRule& rule : areas_.rows) {
            if (rule.*kind > 0) known.emplace_back(rule.id);
        }
        const FreeAreaRule* rule = areas_.find(id);
        if (rule == nullptr || !(rule->*kind > 0))
            record.report(
                record[key].place(),
                rule == nullptr ? "unknown area rule " + in_quotes(id) : id + " says nothing of what this measure is of",
                suggestion(id, known));
        return id;
    }

    void read_measure(const Record& record, Provision& row) {
        const Measure* measure = measure_named(record, "measure");
        if (measure == nullptr) return;
        row.measure = measure->id;
        row.unit = measure->unit;
        read_limit(record, row);
        const bool of_input = measure->id.starts_with("combustion-area");
        const bool of_areas = measure->id == "vent-area" || measure->id == "flood-area" || of_input;
        const auto kind = of_input ? &FreeAreaRule::per_input : &FreeAreaRule::per_floor;
        if (of_areas) row.area_rule = area_rule(record, "area_rule", kind);
        if (!of_areas && record.has("area_rule"))
            record.report(record["area_rule"].place(), "this measure is of no area that is due", "remove it");
        if (record.has("lower_rule") != record.has("lower_if"))
            record.report(record.place(), "lower_rule and lower_if stand together", "add the other, or remove both");
        if (record.has("lower_rule")) {
            row.lower_rule = area_rule(record, "lower_rule", kind);
            const Measure* answer = measure_named(record, "lower_if");
            if (answer != nullptr) row.lower_if = answer->id;
            if (answer != nullptr && (answer->unit != Unit::answer || answer->stated != Measure::Stated::place))
                record.report(record["lower_if"].place(), answer->id + " is no answer that a survey states of the house",
                              "name a measure of unit answer, stated: place");
            if (measure->id != "vent-area")
                record.report(record["lower_rule"].place(), "only vents have a lower rule", "remove lower_rule and lower_if");
        }
        const bool about_gaps =
            measure->of != Measure::Of::house || measure->id == "gaps-there" || measure->id == "vent-to-corner";
        if (about_gaps && row.gaps.empty())
            record.report(record.place(), "gaps is missing", "say which gaps it looks at, gaps: {features: [...]}");
        if (!about_gaps && (record.has("gaps") || record.has("classes") || record.has("into")))
            record.report(record.place(), "this measure looks at no gap", "remove gaps, classes and into");
        if (record.has("into")) {
            if (const auto word = record.word("into", into_words)) row.into = into_words.at(*word);
        }
        row.outside_walls = record.truth("outside_walls").value_or(false);
    }

    void read_limit(const Record& record, Provision& row) {
        if (!record.require({"limit"})) return;
        const Record limit = reader_.record(record["limit"], limit_keys, "limit");
        if (!limit.usable()) return;
        if (row.unit == Unit::answer) {
            limit.require({"is"});
            for (const std::string_view key : {"at_least", "at_most"}) {
                if (limit.has(key)) limit.report(limit[key].place(), "an answer is yes or no", "write is: true or is: false");
            }
            if (const std::optional<bool> is = limit.truth("is")) (*is ? row.at_least : row.at_most) = *is ? 1 : 0;
            return;
        }
        if (limit.has("is")) limit.report(limit["is"].place(), "only an answer is something", "write at_least or at_most");
        if (limit.has("at_least")) row.at_least = read_value(limit, "at_least", row.unit);
        if (limit.has("at_most")) row.at_most = read_value(limit, "at_most", row.unit);
        if (!limit.has("at_least") && !limit.has("at_most") && !limit.has("is"))
            limit.report(limit.place(), "this limits nothing", "write at_least, at_most or both");
        if (row.at_least && *row.at_least == 0 && !limit.has("at_most"))
            limit.report(limit["at_least"].place(), "nothing is less than 0: this limits nothing", "write more, or at_most");
        if (row.at_least && row.at_most && *row.at_least > *row.at_most)
            limit.report(limit["at_most"].place(), "at_most is less than at_least", "change one of them");
    }

    TableReader<Provision>& reader_;
    const Table<Measure>& measures_;
    const Table<Feature>& features_;
    const Table<FreeAreaRule>& areas_;
};

/// A number of 0 or more with nothing after it but `ending`.
std::optional<double> number(std::string_view text, std::string_view ending) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || !std::isfinite(value) || value < 0 || std::signbit(value)) return std::nullopt;
    if (text.substr(static_cast<std::size_t>(end - text.data())) != ending) return std::nullopt;
    return value;
}

}  // namespace

Words foundation_words() { return foundations; }
Words built_with_words() { return built_with; }

std::optional<double> read_value(const Record& record, std::string_view key, Unit unit) {
    switch (unit) {
        case Unit::length: return record.distance(key);
        case Unit::area: return record.area(key);
        case Unit::share: return record.percent(key);
        case Unit::answer: {
            const std::optional<bool> answer = record.truth(key);
            return answer ? std::optional<double>(*answer ? 1 : 0) : std::nullopt;
        }
        case Unit::count:
        case Unit::air_changes: break;
    }
    const std::string ending = unit == Unit::count ? "" : " per hour";
    const Node node = record[key];
    const std::optional<double> value = node.is_scalar() ? number(node.text(), ending) : std::nullopt;
    const bool whole = unit != Unit::count || (value && *value == std::floor(*value));
    if (value && whole) return value;
    record.report(node.place(), std::string(key) + (unit == Unit::count ? " is a whole number" : " is a number of air changes"),
                  unit == Unit::count ? "write for example 2" : "write for example 4.2 per hour");
    return std::nullopt;
}

Table<Measure> read_measures(std::string_view yaml, const std::string& shown_as) {
    TableReader<Measure> reader(yaml, shown_as, "measures");
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, measure_keys, "measure", diagnostics);
        Measure measure;
        if (!record.usable()) return measure;
        measure.id = record.required_line("id");
        measure.name = record.required_line("name");
        measure.ask = record.required_line("ask");
        record.require({"unit", "of", "stated"});
        measure.unit = static_cast<Unit>(record.word("unit", unit_words).value_or(0));
        measure.of = static_cast<Measure::Of>(record.word("of", of_words).value_or(0));
        measure.stated = static_cast<Measure::Stated>(record.word("stated", stated_words).value_or(0));
        return measure;
    });
}

Table<Provision> read_provisions(std::string_view yaml, const std::string& shown_as, const Table<Measure>& measures,
                                 const Table<Feature>& features, const Table<FreeAreaRule>& areas) {
    TableReader<Provision> reader(yaml, shown_as, "provisions");
    ProvisionReader rows(reader, measures, features, areas);
    return reader.read([&](Node node, Diagnostics& diagnostics) { return rows.read(node, diagnostics); });
}

}  // namespace seamward
