// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <charconv>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/document.h"
#include "base/nearest_word.h"
#include "base/record.h"
#include "base/text.h"
#include "catalog/tables.h"

/// For the readers of this folder only.
namespace seamward {

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
            constexpr std::array<std::string_view, 5> keys{"id", "title", "publisher", "year", "seen"};
            constexpr std::array<std::string_view, 3> seen{"read", "secondary", "memory"};
            const Record source(node, keys, "source", diagnostics_);
            source.require({"year", "seen"});
            CatalogSource read{source.required_line("id"), source.required_line("title"), source.required_line("publisher"), 0,
                               static_cast<CatalogSource::Seen>(source.word("seen", seen).value_or(2))};
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

    /// A mapping of the table; its faults are the table's.
    Record record(Node node, Words keys, std::string_view called) { return Record(node, keys, called, diagnostics_); }

    /// The id of a source of this table, from the key `source`.
    std::string source(const Record& record) {
        const std::string id = record.required_line("source");
        if (!id.empty()) check_source(id, record["source"]);
        return id;
    }

    /// The ids of one or more sources of this table, from the list `sources`.
    std::vector<std::string> sources(const Record& record) {
        std::vector<std::string> ids;
        if (!record.require({"sources"})) return ids;
        record.each("sources", [&](Node node) {
            const std::optional<std::string> id = read_line(node, "source", diagnostics_);
            if (!id) return;
            check_source(*id, node);
            ids.push_back(*id);
        });
        if (record["sources"].is_null() || (record["sources"].is_sequence() && record["sources"].size() == 0))
            record.report(record["sources"].place(), "sources is empty", "name a source of the list at the top");
        return ids;
    }

private:
    void check_source(const std::string& id, Node node) {
        std::vector<std::string_view> known;
        for (const CatalogSource& source : table_.sources) known.emplace_back(source.id);
        if (std::find(known.begin(), known.end(), id) == known.end())
            diagnostics_.add(node.place(), "unknown source \"" + id + '"', suggestion(id, known));
    }

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

}  // namespace seamward
