// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/lot_row.h"

#include <array>

#include "sweep/byte_strings.h"

namespace seamward {

namespace {

using Holds = LotColumn::Holds;

constexpr std::array trace_columns{LotColumn{"pinch_mm", Holds::number},
                                   LotColumn{"pinch_gap"},
                                   LotColumn{"from"},
                                   LotColumn{"to"},
                                   LotColumn{"way"},
                                   LotColumn{"maybe"},
                                   LotColumn{"open_to"},
                                   LotColumn{"rooms", Holds::number},
                                   LotColumn{"rooms_open", Holds::number},
                                   LotColumn{"animals_in"},
                                   LotColumn{"gaps_on_ways", Holds::number}};

constexpr std::array plan_columns{LotColumn{"cost", Holds::money},
                                  LotColumn{"minutes", Holds::number},
                                  LotColumn{"steps", Holds::number},
                                  LotColumn{"closings"},
                                  LotColumn{"proof"},
                                  LotColumn{"lower_bound", Holds::money},
                                  LotColumn{"refused", Holds::number},
                                  LotColumn{"open_pinch_mm", Holds::number},
                                  LotColumn{"open_pinch_gap"},
                                  LotColumn{"open_way"},
                                  LotColumn{"gaps_on_ways", Holds::number}};

constexpr std::array audit_columns{LotColumn{"pass", Holds::number},
                                   LotColumn{"fail", Holds::number},
                                   LotColumn{"unknown", Holds::number},
                                   LotColumn{"not_applicable", Holds::number},
                                   LotColumn{"failed"},
                                   LotColumn{"findings", Holds::number},
                                   LotColumn{"ways_in", Holds::number}};

/// The alternatives of a Cell, in their order.
enum class CellTag : std::uint8_t { nothing, text, number, money };

void put_cell(ByteWriter& out, const Cell& cell) {
    out.number(cell.index());
    if (const auto* text = std::get_if<std::string>(&cell)) out.text(*text);
    if (const auto* number = std::get_if<double>(&cell)) out.real(*number);
    if (const auto* money = std::get_if<Money>(&cell)) out.number(static_cast<std::uint64_t>(money->cents));
}

Cell take_cell(ByteReader& in) {
    switch (static_cast<CellTag>(in.number())) {
        case CellTag::nothing: return {};
        case CellTag::text: return in.text();
        case CellTag::number: return in.real();
        case CellTag::money: return Money{static_cast<std::int64_t>(in.number())};
    }
    throw std::invalid_argument("no cell");
}

}  // namespace

const char* work_word(LotWork work) {
    constexpr std::array words{"trace", "plan", "audit"};
    return words[static_cast<std::size_t>(work)];
}

const char* result_word(LotResult result) {
    constexpr std::array words{"open", "shut", "no-plan", "error"};
    return words[static_cast<std::size_t>(result)];
}

std::span<const LotColumn> columns_of(LotWork work) {
    switch (work) {
        case LotWork::trace: return trace_columns;
        case LotWork::plan: return plan_columns;
        case LotWork::audit: break;
    }
    return audit_columns;
}

std::string row_bytes(const LotRow& row) {
    ByteWriter out;
    for (const std::string* text : {&row.file, &row.lot, &row.name, &row.plan, &row.option, &row.error, &row.digest})
        out.text(*text);
    out.number(static_cast<std::uint64_t>(row.result));
    out.number(row.cells.size());
    for (const Cell& cell : row.cells) put_cell(out, cell);
    out.number(row.details.size());
    for (const LeakingDetail& detail : row.details) {
        for (const std::string* text : {&detail.id, &detail.name, &detail.feature}) out.text(*text);
        out.number(detail.stays ? 1 : 0).real(detail.width);
        Cell cost;
        if (detail.cost) cost = *detail.cost;
        put_cell(out, cost);
    }
    out.number(row.inputs.size());
    for (const LotInput& input : row.inputs) out.text(input.path).text(input.digest);
    return out.bytes();
}

LotRow row_from_bytes(std::string_view bytes) {
    ByteReader in(bytes);
    LotRow row;
    for (std::string* text : {&row.file, &row.lot, &row.name, &row.plan, &row.option, &row.error, &row.digest}) *text = in.text();
    row.result = static_cast<LotResult>(in.number_below(4));
    row.cells.resize(in.count());
    for (Cell& cell : row.cells) cell = take_cell(in);
    row.details.resize(in.count());
    for (LeakingDetail& detail : row.details) {
        for (std::string* text : {&detail.id, &detail.name, &detail.feature}) *text = in.text();
        detail.stays = in.number_below(2) == 1;
        detail.width = in.real();
        const Cell cost = take_cell(in);
        if (const auto* money = std::get_if<Money>(&cost)) detail.cost = *money;
    }
    row.inputs.resize(in.count());
    for (LotInput& input : row.inputs) {
        input.path = in.text();
        input.digest = in.text();
    }
    in.require_end();
    return row;
}

}  // namespace seamward
