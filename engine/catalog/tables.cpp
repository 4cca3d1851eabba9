// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/tables.h"

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 3> confidence_words{"high", "medium", "low"};
constexpr std::array<std::string_view, 4> basis_words{"measured", "advice", "harborage", "claim"};
constexpr std::array<std::string_view, 11> pest_keys{"id",     "name",  "scientific", "slit",       "hole", "margin",
                                                     "climbs", "flies", "gnaws",      "confidence", "note"};
constexpr std::array<std::string_view, 3> size_keys{"size", "source", "basis"};
constexpr std::array<std::string_view, 7> gauge_keys{"id", "name", "thickness", "computed", "source", "confidence", "note"};
constexpr std::array<std::string_view, 25> treatment_keys{
    "id",    "name",       "leaves",   "gnawed", "source",     "opening", "movement",   "unstated", "fits",
    "takes", "work",       "access",   "steps",  "conditions", "drying",  "shelf_life", "finish",   "colors",
    "tools", "protection", "cautions", "owner",  "sources",    "keeps",   "years"};
constexpr std::array<std::string_view, 2> leaves_words{"nothing", "mesh"};
constexpr std::array<std::string_view, 10> fits_keys{"shapes",  "sides",  "widths", "around",   "depth",
                                                     "only_on", "not_on", "duties", "features", "not_at"};
constexpr std::array<std::string_view, 4> shape_words{"slot", "hole", "ring", "mesh"};
constexpr std::array<std::string_view, 3> side_words{"outside", "inside", "attic"};
/// As in job files.
constexpr std::array<std::string_view, 10> duty_words_of_files{"none",           "drain", "weep",   "vent",     "exhaust",
                                                               "combustion-air", "flood", "relief", "movement", "operable"};
constexpr std::array<std::string_view, 2> range_keys{"from", "to"};
constexpr std::array<std::string_view, 6> take_keys{"material", "as", "depth", "overlap", "step", "every"};
constexpr std::array<std::string_view, 9> as_words{"bead", "rod", "fill", "cut", "rim", "along", "length", "piece", "whole"};
constexpr std::array<std::string_view, 3> work_keys{"setup", "piece", "meter"};
constexpr std::array<std::string_view, 2> access_keys{"ladder", "attic"};
constexpr std::array<std::string_view, 2> drying_keys{"rain", "paint"};
constexpr std::array<std::string_view, 2> caution_keys{"text", "source"};

using Reader = TableReader<Treatment>;

/// The position of a word in a list of words; reports an unknown one.
std::optional<std::size_t> word_of(Node node, std::string_view called, Words words, const Record& record) {
    const auto found = node.is_scalar() ? std::find(words.begin(), words.end(), node.text()) : words.end();
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    record.report(node.place(), "unknown " + std::string(called) + ' ' + in_quotes(node.text()), suggestion(node.text(), words));
    return std::nullopt;
}

double minutes_of(const Record& record, std::string_view key) {
    const Node node = record[key];
    if (!node.present()) return 0;
    const Parsed<double> time = node.is_scalar() ? parse_duration(node.text())
                                                 : Parsed<double>{std::nullopt, {"a time is due", "write for example 5 min"}};
    if (!time) record.report(node.place(), std::string(key) + ": " + time.fault.what, time.fault.mend);
    return time.value.value_or(0);
}

std::vector<std::string> lines_of(const Record& record, std::string_view key, Diagnostics& diagnostics) {
    std::vector<std::string> lines;
    record.each(key, [&](Node node) {
        if (std::optional<std::string> line = read_text(node, key, diagnostics)) lines.push_back(std::move(*line));
    });
    return lines;
}

Caution read_caution(Node node, std::string_view called, Reader& reader) {
    if (!node.present()) return {};
    const Record record = reader.record(node, caution_keys, called);
    return {record.required_line("text"), reader.source(record)};
}

Treatment::Fits read_fits(const Record& treatment, Reader& reader, Diagnostics& diagnostics) {
    const Record record = reader.record(treatment["fits"], fits_keys, "fits");
    Treatment::Fits fits;
    if (!record.usable() || !record.require({"shapes", "sides", "widths"})) return fits;
    record.each("shapes", [&](Node node) {
        if (const auto word = word_of(node, "shape", shape_words, record)) fits.shapes.at(*word) = true;
    });
    record.each("sides", [&](Node node) {
        if (const auto word = word_of(node, "side", side_words, record)) fits.sides.at(*word) = true;
    });
    record.each("duties", [&](Node node) {
        if (const auto word = word_of(node, "duty", duty_words_of_files, record)) fits.duties.push_back(static_cast<Duty>(*word));
    });
    const Record widths = reader.record(record["widths"], range_keys, "widths");
    widths.require({"from", "to"});
    fits.from = widths.length("from").value_or(0);
    fits.to = widths.length("to").value_or(fits.from);
    if (fits.to < fits.from) record.report(widths.place(), "widths end before they begin", "write the smaller one in from");
    fits.around = record.length("around").value_or(fits.around);
    fits.depth = record.length("depth").value_or(0);
    fits.only_on = lines_of(record, "only_on", diagnostics);
    fits.not_on = lines_of(record, "not_on", diagnostics);
    fits.features = lines_of(record, "features", diagnostics);
    fits.not_at = lines_of(record, "not_at", diagnostics);
    return fits;
}

/// The sizes that one way of counting needs; any other says nothing of it.
void check_take(const Record& record, Take::As as) {
    constexpr std::array<std::string_view, 4> sizes{"depth", "overlap", "step", "every"};
    const auto needs = [as](std::string_view key) {
        const bool over = as == Take::As::cut || as == Take::As::rim || as == Take::As::along;
        return (key == "depth" && as == Take::As::fill) || (key == "every" && as == Take::As::along) ||
               (over && (key == "overlap" || key == "step"));
    };
    for (const std::string_view key : sizes) {
        if (needs(key))
            record.require({key});
        else if (record.has(key))
            record.report(record[key].place(),
                          std::string(key) + " says nothing of as: " + std::string(as_words.at(static_cast<std::size_t>(as))),
                          "remove it");
        if (record.length(key).value_or(1) <= 0) record.report(record[key].place(), std::string(key) + " must be more than 0");
    }
}

Take read_take(Node node, Reader& reader) {
    const Record record = reader.record(node, take_keys, "material taken");
    Take take;
    if (!record.usable()) return take;
    record.require({"as"});
    take.material = record.required_line("material");
    const std::optional<std::size_t> as = record.word("as", as_words);
    if (!as) return take;
    take.as = static_cast<Take::As>(*as);
    check_take(record, take.as);
    take.depth = record.length("depth").value_or(0);
    take.overlap = record.length("overlap").value_or(0);
    take.step = record.length("step").value_or(0);
    take.every = record.length("every").value_or(0);
    return take;
}

void read_work(const Record& treatment, Treatment& row, Reader& reader) {
    const Record work = reader.record(treatment["work"], work_keys, "work");
    row.work = {minutes_of(work, "setup"), minutes_of(work, "piece"), minutes_of(work, "meter")};
    const Record access = reader.record(treatment["access"], access_keys, "access");
    row.access = {minutes_of(access, "ladder"), minutes_of(access, "attic")};
    const Record drying = reader.record(treatment["drying"], drying_keys, "drying");
    row.rain = minutes_of(drying, "rain");
    row.paint = minutes_of(drying, "paint");
}

void read_mesh(const Record& record, bool full, Treatment& row) {
    row.opening = record.length("opening").value_or(0);
    if (record.has("opening") && full)
        record.report(record["opening"].place(), "only a mesh leaves an opening", "write leaves: mesh, or leave opening out");
    if (record.has("opening") && row.opening <= 0) record.report(record["opening"].place(), "opening must be more than 0");
    row.unstated = record.length("unstated").value_or(0);
    if (row.fits.shapes[3] && row.unstated <= 0)
        record.report(record.place(), row.id + " fits meshes and does not say how large one is taken to be",
                      "add unstated: ..., the side of a screened opening whose area is not stated");
}

}  // namespace

Table<Pest> read_pests(std::string_view yaml, const std::string& shown_as) {
    TableReader<Pest> reader(yaml, shown_as, "pests");
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, pest_keys, "pest", diagnostics);
        record.require({"slit", "hole", "margin", "climbs", "flies", "gnaws", "confidence"});
        Pest pest;
        pest.id = record.required_line("id");
        pest.name = record.required_line("name");
        pest.scientific = record.required_line("scientific");
        const auto read_size = [&](std::string_view key, double& size, std::string& source, Basis& basis) {
            const Record part(record[key], size_keys, key, diagnostics);
            part.require({"size", "basis"});
            const std::optional<double> length = part.length("size");
            size = length.value_or(0);
            source = reader.source(part);
            basis = static_cast<Basis>(part.word("basis", basis_words).value_or(3));
            return length.has_value();
        };
        const bool has_slit = read_size("slit", pest.size.slit, pest.slit_source, pest.slit_basis);
        const bool has_hole = read_size("hole", pest.size.hole, pest.hole_source, pest.hole_basis);
        if (has_slit && has_hole && pest.size.slit > pest.size.hole)
            record.report(record.place(), "the slit of " + pest.id + " is larger than its hole");
        if (has_slit && pest.size.slit <= 0) record.report(record.place(), "the slit of " + pest.id + " must be more than 0");
        pest.margin = record.percent("margin").value_or(0.1);
        pest.climbs = record.truth("climbs").value_or(false);
        pest.flies = record.truth("flies").value_or(false);
        pest.gnaws = record.truth("gnaws").value_or(false);
        pest.confidence = static_cast<Confidence>(record.word("confidence", confidence_words).value_or(2));
        pest.note = record.text("note").value_or("");
        return pest;
    });
}

Table<Gauge> read_gauges(std::string_view yaml, const std::string& shown_as) {
    TableReader<Gauge> reader(yaml, shown_as, "gauges");
    double thinner = 0;
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, gauge_keys, "gauge", diagnostics);
        record.require({"thickness", "confidence"});
        Gauge gauge;
        gauge.id = record.required_line("id");
        gauge.name = record.required_line("name");
        gauge.thickness = record.length("thickness").value_or(0);
        if (gauge.thickness <= thinner)
            record.report(record.place(), gauge.id + " is not thicker than the row before it", "sort the rows");
        thinner = gauge.thickness;
        gauge.source = reader.source(record);
        gauge.confidence = static_cast<Confidence>(record.word("confidence", confidence_words).value_or(2));
        gauge.computed = record.text("computed").value_or("");
        gauge.note = record.text("note").value_or("");
        return gauge;
    });
}

Table<Treatment> read_treatments(std::string_view yaml, const std::string& shown_as) {
    Reader reader(yaml, shown_as, "treatments");
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, treatment_keys, "treatment", diagnostics);
        Treatment row;
        if (!record.usable()) return row;
        record.require({"leaves", "gnawed", "fits", "takes", "work", "steps", "owner"});
        row.id = record.required_line("id");
        row.name = record.required_line("name");
        const std::optional<std::size_t> leaves = record.word("leaves", leaves_words);
        row.leaves = static_cast<Treatment::Leaves>(leaves.value_or(0));
        row.gnawed = record.truth("gnawed").value_or(true);
        row.source = reader.source(record);
        record.each("keeps", [&](Node keep) {
            if (const auto word = word_of(keep, "duty", duty_words_of_files, record))
                row.keeps.push_back(static_cast<Duty>(*word));
        });
        row.movement = record.percent("movement").value_or(0);
        if (record.has("fits")) row.fits = read_fits(record, reader, diagnostics);
        read_mesh(record, leaves && row.leaves == Treatment::Leaves::nothing, row);
        record.each("takes", [&](Node take) { row.takes.push_back(read_take(take, reader)); });
        read_work(record, row, reader);
        row.steps = lines_of(record, "steps", diagnostics);
        row.conditions = record.text("conditions").value_or("");
        row.shelf_life = record.text("shelf_life").value_or("");
        row.years = record.count("years").value_or(0);
        row.finish = record.text("finish").value_or("");
        row.colors = record.text("colors").value_or("");
        row.tools = lines_of(record, "tools", diagnostics);
        row.protection = lines_of(record, "protection", diagnostics);
        record.each("cautions", [&](Node caution) { row.cautions.push_back(read_caution(caution, "caution", reader)); });
        row.owner = record.truth("owner").value_or(false);
        row.sources = reader.sources(record);
        return row;
    });
}

}  // namespace seamward
