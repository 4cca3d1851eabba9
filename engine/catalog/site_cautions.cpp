// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/site_cautions.h"

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 7> keys{"id", "when", "above", "before", "words", "text", "source"};
constexpr std::array<std::string_view, 14> when_words{"ladder",       "high-ladder",  "ladder-reach",  "roof",      "tile-roof",
                                                      "shingle-roof", "metal-roof",   "membrane-roof", "foam-roof", "attic",
                                                      "crawl-space",  "built-before", "droppings",     "named"};

using When = SiteCaution::When;

double read_limit(const Record& record, When when) {
    const bool length = when == When::ladder || when == When::high_ladder || when == When::ladder_reach;
    const bool year = when == When::built_before;
    if (length) record.require({"above"});
    if (year) record.require({"before"});
    if (!length && record.has("above")) record.report(record["above"].place(), "above says nothing here", "remove it");
    if (!year && record.has("before")) record.report(record["before"].place(), "before says nothing here", "remove it");
    return length ? record.length("above").value_or(0) : year ? record.count("before").value_or(0) : 0;
}

}  // namespace

Table<SiteCaution> read_site_cautions(std::string_view yaml, const std::string& shown_as) {
    TableReader<SiteCaution> reader(yaml, shown_as, "site_cautions");
    Table<SiteCaution> table = reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, keys, "caution of a place", diagnostics);
        SiteCaution row;
        if (!record.usable()) return row;
        record.require({"when"});
        row.id = record.required_line("id");
        row.when = static_cast<When>(record.word("when", when_words).value_or(0));
        row.limit = read_limit(record, row.when);
        if ((row.when == When::named) != record.has("words"))
            record.report(record.place(), "words and when: named go together", "add both, or none");
        record.each("words", [&](Node word) {
            if (std::optional<std::string> text = read_line(word, "word", diagnostics)) row.words.push_back(std::move(*text));
        });
        row.text = record.required_line("text");
        row.source = reader.source(record);
        return row;
    });
    Diagnostics missing(shown_as);
    for (std::size_t i = 0; i < when_words.size(); ++i) {
        const auto has = [&](const SiteCaution& row) { return row.when == static_cast<When>(i); };
        if (std::none_of(table.rows.begin(), table.rows.end(), has))
            missing.add({}, "no row for " + std::string(when_words[i]), "add one");
    }
    missing.throw_if_any();
    return table;
}

const SiteCaution& site_caution(const Table<SiteCaution>& table, When when) {
    return *std::find_if(table.rows.begin(), table.rows.end(), [&](const SiteCaution& row) { return row.when == when; });
}

}  // namespace seamward
