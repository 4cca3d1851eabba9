// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/text_table.h"

#include <algorithm>
#include <array>

#include "base/document.h"
#include "base/message.h"
#include "base/record.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 3> table_keys{"catalog", "edition", "texts"};
constexpr std::array<std::string_view, 2> row_keys{"en", "es"};

/// The parts that a pattern puts in, rising; the first is 0.
std::vector<std::size_t> parts_of(std::string_view pattern) {
    std::vector<std::size_t> parts;
    std::size_t turn = 0;
    for_each_slot(pattern, [&](const MessageSlot& slot) { parts.push_back(slot.which ? *slot.which : turn++); });
    std::sort(parts.begin(), parts.end());
    return parts;
}

void check_parts(const Record& row, const std::string& english, const std::string& spanish) {
    const std::vector<std::size_t> parts = parts_of(english);
    if (parts_of(spanish) == parts) return;
    const std::string due = std::to_string(parts.size()) + (parts.size() == 1 ? " part" : " parts");
    row.report(row["es"].place(), "en puts in " + due + ", es does not put in each of them once",
               parts.empty() ? "leave {} out of es" : "write {} for each in the same order, or {1}, {2} ... in any order");
}

}  // namespace

TextTable read_texts(std::string_view yaml, const std::string& shown_as) {
    const Document document = parse_yaml(yaml, shown_as);
    Diagnostics diagnostics(shown_as);
    const Record table(document.root(), table_keys, "table", diagnostics);
    table.require({"texts"});
    (void)table.required_line("edition");
    if (const std::string kind = table.required_line("catalog"); !kind.empty() && kind != "spanish")
        table.report(table["catalog"].place(), "this is no table of Spanish texts", "it should say spanish");
    TextTable texts;
    table.each("texts", [&](Node node) {
        const Record row(node, row_keys, "text", diagnostics);
        if (!row.usable()) return;
        const std::string english = row.required_line("en");
        const std::string spanish = row.required_line("es");
        if (english.empty() || spanish.empty()) return;
        check_parts(row, english, spanish);
        if (!texts.emplace(english, spanish).second)
            row.report(node.place(), "the text \"" + english + "\" stands twice", "keep one");
    });
    diagnostics.throw_if_any();
    return texts;
}

}  // namespace seamward
