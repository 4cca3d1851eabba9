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
constexpr std::array<std::string_view, 5> treatment_keys{"id", "name", "leaves", "gnawed", "source"};
constexpr std::array<std::string_view, 2> leaves_words{"nothing", "mesh"};

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
    TableReader<Treatment> reader(yaml, shown_as, "treatments");
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, treatment_keys, "treatment", diagnostics);
        record.require({"leaves", "gnawed"});
        return Treatment{record.required_line("id"), record.required_line("name"),
                         static_cast<Treatment::Leaves>(record.word("leaves", leaves_words).value_or(0)),
                         record.truth("gnawed").value_or(true), reader.source(record)};
    });
}

}  // namespace seamward
