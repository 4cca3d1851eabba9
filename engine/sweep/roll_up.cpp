// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/roll_up.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

#include "catalog/translator.h"
#include "exchange/write_whole_file.h"

namespace seamward {

namespace {

/// Sorted; the lower one of two in the middle.
template <class Value>
Value middle_of(std::vector<Value>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>((values.size() - 1) / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

template <class Tally>
void add_up(std::vector<Money>& costs, Tally& tally) {
    if (costs.empty()) return;
    for (const Money cost : costs) tally.sum = tally.sum + cost;
    tally.least = *std::min_element(costs.begin(), costs.end());
    tally.most = *std::max_element(costs.begin(), costs.end());
    tally.middle = middle_of(costs);
}

/// Rows of one detail come one after another.
class DetailCounter {
public:
    explicit DetailCounter(const std::map<std::string, std::size_t>& lots_of_plan) : lots_of_plan_(lots_of_plan) {}

    void add(const DetailRow& row) {
        if (tallies_.empty() || tallies_.back().plan != row.plan || tallies_.back().id != row.id) {
            finish();
            const auto lots = lots_of_plan_.find(row.plan);
            tallies_.push_back({row.plan, row.id, row.name, row.feature, true, lots != lots_of_plan_.end() ? lots->second : 0});
        }
        DetailTally& tally = tallies_.back();
        // Jobs may call a gap of their own as they like.
        if (std::tie(row.name, row.feature) < std::tie(tally.name, tally.feature)) {
            tally.name = row.name;
            tally.feature = row.feature;
        }
        tally.stays = tally.stays && row.stays;
        ++tally.leaks;
        if (row.width > tally.widest || tally.widest_lot.empty()) tally.widest_lot = row.file;
        tally.widest = std::max(tally.widest, row.width);
        widths_.push_back(row.width);
        if (row.cost) costs_.push_back(*row.cost);
    }

    std::vector<DetailTally> finished() {
        finish();
        std::stable_sort(tallies_.begin(), tallies_.end(), [](const DetailTally& a, const DetailTally& b) {
            return std::tie(a.plan, b.leaks) < std::tie(b.plan, a.leaks);
        });
        return std::move(tallies_);
    }

private:
    void finish() {
        if (tallies_.empty()) return;
        DetailTally& tally = tallies_.back();
        tally.median = middle_of(widths_);
        tally.closed = costs_.size();
        add_up(costs_, tally);
        widths_.clear();
        costs_.clear();
    }

    const std::map<std::string, std::size_t>& lots_of_plan_;
    std::vector<DetailTally> tallies_;
    std::vector<double> widths_;
    std::vector<Money> costs_;
};

constexpr std::array row_heads{"file", "lot", "name", "plan", "option", "result", "error"};
constexpr std::array detail_heads{"plan",       "detail",        "name",      "feature",    "stays_open", "lots",
                                  "leaks",      "leaks_percent", "widest_mm", "widest_lot", "median_mm",  "closed",
                                  "cost_least", "cost_median",   "cost_most", "cost_sum"};
constexpr std::array cost_heads{"plan",    "option",     "lots",        "errors",    "open",
                                "no_plan", "cost_least", "cost_median", "cost_most", "cost_sum"};

template <class Heads>
DataTable table_with(const Heads& heads) {
    DataTable table;
    for (const auto& head : heads) table.columns.push_back({as_it_stands(std::string(head))});
    return table;
}

/// Tables of any length without all of their rows in memory at once.
class CsvText {
public:
    explicit CsvText(DataTable table) : table_(std::move(table)) {}
    void add(std::vector<Cell> row) {
        table_.rows.push_back(std::move(row));
        if (table_.rows.size() >= 1000) flush();
    }
    std::string finished() {
        if (text_.empty() || !table_.rows.empty()) flush();
        return std::move(text_);
    }

private:
    void flush() {
        const std::string piece = csv_text(table_, english_);
        text_ += text_.empty() ? piece : piece.substr(piece.find("\r\n") + 2);
        table_.rows.clear();
    }

    DataTable table_;
    Translator english_{Language::english};
    std::string text_;
};

/// Amounts, or as many empty cells where there was nothing to add up.
void put_costs(std::size_t count, const auto& tally, std::vector<Cell>& row) {
    for (const Money cost : {tally.least, tally.middle, tally.most, tally.sum}) {
        if (count > 0)
            row.emplace_back(cost);
        else
            row.emplace_back();
    }
}

void put_texts(std::initializer_list<std::string> texts, std::vector<Cell>& row) {
    for (const std::string& text : texts) row.emplace_back(text);
}

void put_counts(std::initializer_list<std::size_t> counts, std::vector<Cell>& row) {
    for (const std::size_t count : counts) row.emplace_back(double(count));
}

std::string lots_csv(const LotFiles& files, LotWork work, SweepResults& results) {
    DataTable table = table_with(row_heads);
    for (const LotColumn& column : columns_of(work)) table.columns.push_back({as_it_stands(std::string(column.name))});
    CsvText text(std::move(table));
    results.each_row(files.names, [&](const LotRow& row) {
        std::vector<Cell> cells;
        put_texts({row.file, row.lot, row.name, row.plan, row.option, result_word(row.result), row.error}, cells);
        cells.insert(cells.end(), row.cells.begin(), row.cells.end());
        text.add(std::move(cells));
    });
    return text.finished();
}

std::string details_csv(const RollUp& sums) {
    CsvText text(table_with(detail_heads));
    for (const DetailTally& tally : sums.details) {
        std::vector<Cell> row;
        put_texts({tally.plan, tally.id, tally.name, tally.feature, tally.stays ? "yes" : ""}, row);
        put_counts({tally.lots, tally.leaks}, row);
        // A detail has leaked on some lot of its plan that was done.
        row.emplace_back(100.0 * double(tally.leaks) / double(tally.lots));
        row.emplace_back(tally.widest);
        row.emplace_back(tally.widest_lot);
        row.emplace_back(tally.median);
        put_counts({tally.closed}, row);
        put_costs(tally.closed, tally, row);
        text.add(std::move(row));
    }
    return text.finished();
}

std::string costs_csv(const RollUp& sums) {
    CsvText text(table_with(cost_heads));
    for (const CostTally& tally : sums.costs) {
        std::vector<Cell> row;
        put_texts({tally.plan, tally.option}, row);
        put_counts({tally.lots, tally.errors, tally.open, tally.no_plan}, row);
        put_costs(tally.planned, tally, row);
        text.add(std::move(row));
    }
    return text.finished();
}

}  // namespace

RollUp roll_up(const LotFiles& files, LotWork work, SweepResults& results, const RunContext& context) {
    context.stage("adding up");
    std::map<std::string, std::size_t> lots_of_plan;
    std::map<std::pair<std::string, std::string>, std::pair<CostTally, std::vector<Money>>> costs;
    results.each_row(files.names, [&](const LotRow& row) {
        auto& [tally, amounts] = costs[{row.plan, row.option}];
        tally.plan = row.plan;
        tally.option = row.option;
        ++tally.lots;
        if (row.result == LotResult::error)
            ++tally.errors;
        else
            ++lots_of_plan[row.plan];
        if (row.result == LotResult::open || row.result == LotResult::no_plan) ++tally.open;
        if (row.result == LotResult::no_plan) ++tally.no_plan;
        if (work == LotWork::plan && row.result == LotResult::open) amounts.push_back(std::get<Money>(row.cells.front()));
    });
    RollUp sums;
    for (auto& [key, entry] : costs) {
        entry.first.planned = entry.second.size();
        add_up(entry.second, entry.first);
        sums.costs.push_back(std::move(entry.first));
    }
    DetailCounter counter(lots_of_plan);
    results.each_detail([&](const DetailRow& row) {
        context.check();
        counter.add(row);
    });
    sums.details = counter.finished();
    return sums;
}

void write_tables(const std::filesystem::path& folder, const LotFiles& files, LotWork work, const RollUp& sums,
                  SweepResults& results) {
    const std::filesystem::path lots = folder / "lots.csv", details = folder / "details.csv", costs = folder / "costs.csv";
    const std::string lots_text = lots_csv(files, work, results), details_text = details_csv(sums), costs_text = costs_csv(sums);
    const std::array<WholeFile, 3> all{WholeFile{lots, lots.string(), lots_text},
                                       WholeFile{details, details.string(), details_text},
                                       WholeFile{costs, costs.string(), costs_text}};
    write_whole_files(all);
}

}  // namespace seamward
