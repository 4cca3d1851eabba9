// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "report/report_facts.h"

namespace seamward {

/// What stands in one cell: nothing, a text, a number, an amount.
using Cell = std::variant<std::monostate, std::string, double, Money>;

/// A table for spreadsheets. Numbers in the units that its heads name.
struct DataTable {
    struct Column {
        Message head;
        bool summed = false;  ///< numbers or amounts whose sum means something
    };
    std::string id;  ///< "gaps"
    Message title;
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;  ///< each as long as `columns`
};

/// The plan's steps in working order; what is to be bought; every gap of the survey in its order.
[[nodiscard]] DataTable closings_table(const ReportFacts& facts, const Translator& say);
[[nodiscard]] DataTable materials_table(const ReportFacts& facts, const Translator& say);
[[nodiscard]] DataTable gaps_table(const ReportFacts& facts, const Translator& say);

/// By RFC 4180, UTF-8, one line of heads. Amounts without a currency sign. A text that spreadsheets would take for a formula has
/// an apostrophe before it.
[[nodiscard]] std::string csv_text(const DataTable& table, const Translator& say);

/// A workbook (Office Open XML, ECMA-376) with one sheet a table, below it the sums as formulas. The same tables give the same
/// bytes. Throws std::runtime_error when the library cannot write its temporary files.
[[nodiscard]] std::string xlsx_bytes(const std::vector<DataTable>& tables, const ReportFacts& facts, const Translator& say);

}  // namespace seamward
