// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/tables.h"

#include <algorithm>
#include <charconv>

#include "base/document.h"
#include "base/nearest_word.h"
#include "base/record.h"
#include "base/text.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 5> source_keys{"id", "title", "publisher", "year", "seen"};
constexpr std::array<std::string_view, 3> seen_words{"read", "secondary", "memory"};
constexpr std::array<std::string_view, 3> confidence_words{"high", "medium", "low"};
constexpr std::array<std::string_view, 4> basis_words{"measured", "advice", "harborage", "claim"};
constexpr std::array<std::string_view, 11> pest_keys{"id",     "name",  "scientific", "slit",       "hole", "margin",
                                                     "climbs", "flies", "gnaws",      "confidence", "note"};
constexpr std::array<std::string_view, 3> size_keys{"size", "source", "basis"};
constexpr std::array<std::string_view, 7> gauge_keys{"id", "name", "thickness", "computed", "source", "confidence", "note"};
constexpr std::array<std::string_view, 5> treatment_keys{"id", "name", "leaves", "gnawed", "source"};
constexpr std::array<std::string_view, 2> leaves_words{"nothing", "mesh"};

/// The frame that all tables share: head, sources, rows with ids of their own.
template <class Row>
class TableReader {
public:
    TableReader(std::string_view yaml, const std::string& shown_as, std::string_view called)
        : document_(parse_yaml(yaml, shown_as)),
          diagnostics_(shown_as),
          called_(called),
          keys_{"catalog", "edition", "sources", called},
          record_(document_.root(), keys_, "table", diagnostics_) {}

    template <class ReadRow>
    Table<Row> read(ReadRow&& read_row) {
        record_.require({"sources", called_});
        const std::string kind = record_.required_line("catalog");
        if (!kind.empty() && kind != called_)
            record_.report(record_["catalog"].place(), "this is a table of " + in_quotes(kind),
                           "it should say " + std::string(called_));
        table_.edition = record_.required_line("edition");
        record_.each("sources", [&](Node node) {
            const Record source(node, source_keys, "source", diagnostics_);
            source.require({"year", "seen"});
            CatalogSource read{source.required_line("id"), source.required_line("title"), source.required_line("publisher"), 0,
                               static_cast<CatalogSource::Seen>(source.word("seen", seen_words).value_or(2))};
            const std::string year = source.required_line("year");
            const auto [end, error] = std::from_chars(year.data(), year.data() + year.size(), read.year);
            if (error != std::errc() || end != year.data() + year.size())
                source.report(source["year"].place(), "year is no whole number", "write 0 when it is not known");
            const bool twice = std::any_of(table_.sources.begin(), table_.sources.end(),
                                           [&](const CatalogSource& s) { return s.id == read.id; });
            if (twice) source.report(node.place(), "source " + read.id + " stands twice", "keep one");
            table_.sources.push_back(std::move(read));
        });
        record_.each(called_, [&](Node node) { add(node, read_row(node, diagnostics_)); });
        diagnostics_.throw_if_any();
        return std::move(table_);
    }

    /// The id of a source of this table.
    std::string source(const Record& record) {
        const std::string id = record.required_line("source");
        std::vector<std::string_view> known;
        for (const CatalogSource& source : table_.sources) known.emplace_back(source.id);
        if (!id.empty() && std::find(known.begin(), known.end(), id) == known.end()) {
            record.report(record["source"].place(), "unknown source \"" + id + '"', suggestion(id, known));
        }
        return id;
    }

private:
    void add(Node node, Row row) {
        if (!row.id.empty() && table_.find(row.id) != nullptr)
            diagnostics_.add(node.place(), "id " + row.id + " stands twice", "keep one");
        table_.rows.push_back(std::move(row));
    }

    Document document_;
    Diagnostics diagnostics_;
    std::string_view called_;
    std::array<std::string_view, 4> keys_;
    Record record_;
    Table<Row> table_;
};

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
