// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/envelope.h"

#include <set>

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 9> keys{"id", "part", "name", "purpose", "water", "pests", "may", "never", "sources"};

}  // namespace

Table<EnvelopePart> read_envelope(std::string_view yaml, const std::string& shown_as) {
    TableReader<EnvelopePart> reader(yaml, shown_as, "envelope");
    std::set<std::string> drawn;
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, keys, "part", diagnostics);
        EnvelopePart row;
        if (!record.usable()) return row;
        row.id = record.required_line("id");
        row.part = record.required_line("part");
        if (!row.part.empty() && !drawn.insert(row.part).second)
            record.report(record["part"].place(), "two rows are drawn as " + in_quotes(row.part), "give each its own");
        row.name = record.required_line("name");
        row.purpose = record.required_line("purpose");
        row.water = record.required_line("water");
        row.pests = record.required_line("pests");
        row.may = record.required_line("may");
        row.never = record.required_line("never");
        row.sources = reader.sources(record);
        return row;
    });
}

}  // namespace seamward
