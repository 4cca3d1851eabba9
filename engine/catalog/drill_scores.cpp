// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/drill_scores.h"

#include <algorithm>

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 6> keys{"id", "points", "share", "length", "text", "source"};
constexpr std::array<std::string_view, 10> ids{"found", "width",       "connection",  "treatment", "false-alarm",
                                               "entry", "width-share", "width-least", "near",      "pass-mark"};
constexpr std::array<std::string_view, 10> figures{"points", "points", "points", "points", "points",
                                                   "points", "share",  "length", "length", "share"};

double read_figure(const Record& record, std::string_view due) {
    for (const std::string_view key : {keys[1], keys[2], keys[3]}) {
        if (key != due && record.has(key))
            record.report(record[key].place(), std::string(key) + " says nothing here", "write " + std::string(due) + " instead");
    }
    if (!record.require({due})) return 0;
    if (due == "points") return record.count(due).value_or(0);
    return due == "share" ? record.percent(due).value_or(0) : record.distance(due).value_or(0);
}

}  // namespace

Table<DrillScore> read_drill_scores(std::string_view yaml, const std::string& shown_as) {
    TableReader<DrillScore> reader(yaml, shown_as, "drill_scores");
    Table<DrillScore> table = reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, keys, "figure", diagnostics);
        DrillScore row;
        if (!record.usable()) return row;
        row.id = record.required_line("id");
        const auto known = record.word("id", ids);
        row.of = static_cast<DrillScore::Of>(known.value_or(0));
        if (known) row.value = read_figure(record, figures.at(*known));
        row.text = record.required_line("text");
        row.source = reader.source(record);
        return row;
    });
    Diagnostics missing(shown_as);
    for (const std::string_view id : ids) {
        if (table.find(id) == nullptr) missing.add({}, "no row for " + std::string(id), "add one");
    }
    missing.throw_if_any();
    return table;
}

double drill_figure(const Table<DrillScore>& table, DrillScore::Of of) {
    return std::find_if(table.rows.begin(), table.rows.end(), [&](const DrillScore& row) { return row.of == of; })->value;
}

}  // namespace seamward
