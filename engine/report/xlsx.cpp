// SPDX-License-Identifier: GPL-3.0-or-later
#include <unistd.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <stdexcept>

#include "base/file_io.h"
#include "report/own_folder.h"
#include "report/tables.h"

namespace seamward {

namespace {

constexpr std::uint64_t most_bytes = 1U << 30;
constexpr std::size_t most_letters = 32767;  ///< of a cell, ECMA-376
constexpr double narrow = 8, wide = 60;      ///< columns, letters

void check(lxw_error error) {
    if (error != LXW_NO_ERROR) throw std::runtime_error(std::string("the workbook could not be written: ") + lxw_strerror(error));
}

/// At most so many bytes, cut after a whole character.
std::string cut(const std::string& text) {
    if (text.size() <= most_letters) return text;
    std::size_t end = most_letters;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
    return text.substr(0, end);
}

class Workbook {
public:
    Workbook(const std::filesystem::path& file, const std::filesystem::path& folder, const ReportFacts& facts,
             const Translator& say)
        : say_(say), folder_(folder.string()) {
        lxw_workbook_options options{};
        options.tmpdir = folder_.data();
        book_ = workbook_new_opt(file.c_str(), &options);
        if (book_ == nullptr) throw std::runtime_error("the workbook could not be begun");
        std::string title = facts.heading;
        lxw_doc_properties properties{};
        properties.title = title.data();
        // The day of the plan, so that the same plan gives the same bytes.
        properties.created = static_cast<time_t>(
            std::chrono::sys_seconds(std::chrono::sys_days(facts.settings.planning.date)).time_since_epoch().count());
        check(workbook_set_properties(book_, &properties));
        head_ = workbook_add_format(book_);
        format_set_bold(head_);
        format_set_text_wrap(head_);
        format_set_bottom(head_, LXW_BORDER_THIN);
        text_ = workbook_add_format(book_);
        format_set_text_wrap(text_);
        format_set_align(text_, LXW_ALIGN_VERTICAL_TOP);
        number_ = format("0.##");
        money_ = format("\"$\"#,##0.00");
        paper_ = facts.settings.paper;
    }
    ~Workbook() {
        if (book_ != nullptr) workbook_close(book_);
    }
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;

    void add(const DataTable& table) {
        lxw_worksheet* sheet = workbook_add_worksheet(book_, say_(table.title).c_str());
        if (sheet == nullptr) throw std::runtime_error("a sheet of the workbook could not be begun");
        for (std::size_t i = 0; i < table.columns.size(); ++i) column(sheet, table, static_cast<lxw_col_t>(i));
        for (std::size_t i = 0; i < table.rows.size(); ++i) {
            for (std::size_t j = 0; j < table.rows[i].size(); ++j)
                cell(sheet, static_cast<lxw_row_t>(i + 1), static_cast<lxw_col_t>(j), table.rows[i][j]);
        }
        sums(sheet, table);
        worksheet_freeze_panes(sheet, 1, 0);
        worksheet_repeat_rows(sheet, 0, 0);
        worksheet_set_landscape(sheet);
        constexpr std::uint8_t letter = 1, a4 = 9;  // ECMA-376, 18.3.1.63 pageSetup, paperSize
        worksheet_set_paper(sheet, paper_ == Paper::a4 ? a4 : letter);
        worksheet_fit_to_pages(sheet, 1, 0);
    }

    void close() {
        lxw_workbook* book = book_;
        book_ = nullptr;
        check(workbook_close(book));
    }

private:
    lxw_format* format(const char* pattern) {
        lxw_format* made = workbook_add_format(book_);
        format_set_num_format(made, pattern);
        format_set_align(made, LXW_ALIGN_VERTICAL_TOP);
        return made;
    }

    void column(lxw_worksheet* sheet, const DataTable& table, lxw_col_t at) {
        double width = narrow;
        for (const std::vector<Cell>& row : table.rows) {
            if (const auto* text = std::get_if<std::string>(&row[at]))
                width = std::clamp(static_cast<double>(text->size()), width, wide);
        }
        const std::string head = say_(table.columns[at].head);
        check(worksheet_set_column(sheet, at, at, std::max(width, static_cast<double>(std::min<std::size_t>(head.size(), 14))),
                                   nullptr));
        check(worksheet_write_string(sheet, 0, at, head.c_str(), head_));
    }

    void cell(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, const Cell& value) {
        if (const auto* text = std::get_if<std::string>(&value)) {
            if (!text->empty()) check(worksheet_write_string(sheet, row, column, cut(*text).c_str(), text_));
        } else if (const auto* number = std::get_if<double>(&value)) {
            check(worksheet_write_number(sheet, row, column, *number, number_));
        } else if (const auto* money = std::get_if<Money>(&value)) {
            check(worksheet_write_number(sheet, row, column, static_cast<double>(money->cents) / 100, money_));
        }
    }

    void sums(lxw_worksheet* sheet, const DataTable& table) {
        const auto below = static_cast<lxw_row_t>(table.rows.size() + 1);
        bool named = false;
        for (std::size_t j = 0; j < table.columns.size(); ++j) {
            if (!table.columns[j].summed || table.rows.empty()) continue;
            if (!named) check(worksheet_write_string(sheet, below, 0, say_("Total").c_str(), head_));
            named = true;
            Money money;
            double number = 0;
            for (const std::vector<Cell>& row : table.rows) {
                if (const auto* amount = std::get_if<Money>(&row[j])) money = money + *amount;
                if (const auto* value = std::get_if<double>(&row[j])) number += *value;
            }
            const auto column = static_cast<lxw_col_t>(j);
            char letters[LXW_MAX_COL_NAME_LENGTH];
            lxw_col_to_name(letters, column, LXW_FALSE);
            const std::string name = letters;
            const std::string formula = "=SUM(" + name + "2:" + name + std::to_string(below) + ")";
            const bool is_money = std::holds_alternative<Money>(table.rows.front()[j]);
            check(worksheet_write_formula_num(sheet, below, column, formula.c_str(), is_money ? money_ : number_,
                                              is_money ? static_cast<double>(money.cents) / 100 : number));
        }
    }

    const Translator& say_;
    std::string folder_;
    Paper paper_ = Paper::letter;
    lxw_workbook* book_ = nullptr;
    lxw_format *head_ = nullptr, *text_ = nullptr, *number_ = nullptr, *money_ = nullptr;
};

}  // namespace

std::string xlsx_bytes(const std::vector<DataTable>& tables, const ReportFacts& facts, const Translator& say) {
    const OwnFolder folder;
    const std::filesystem::path file = folder.path() / "tables.xlsx";
    Workbook book(file, folder.path(), facts, say);
    for (const DataTable& table : tables) book.add(table);
    book.close();
    return read_file(file, "XLSX", most_bytes);
}

}  // namespace seamward
