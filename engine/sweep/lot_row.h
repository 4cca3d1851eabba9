// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "report/tables.h"

namespace seamward {

/// What is done for every lot.
enum class LotWork : std::uint8_t { trace, plan, audit };

/// `trace`, `plan`, `audit`
[[nodiscard]] const char* work_word(LotWork work);

/// What became of a lot.
enum class LotResult : std::uint8_t {
    open,     ///< a way in is open; of an audit: something fails
    shut,     ///< none is; of an audit: nothing fails
    no_plan,  ///< a way in is open and cannot be closed
    error     ///< the lot could not be done
};

/// `open`, `shut`, `no-plan`, `error`
[[nodiscard]] const char* result_word(LotResult result);

/// A detail of a house that something was found at: a gap on a way in, or a rule that a gap fails.
struct LeakingDetail {
    std::string id;             ///< of the gap; of an audit the rule's
    std::string name;           ///< for people, in English
    std::string feature;        ///< id of its kind in the table of features; may be empty
    bool stays = false;         ///< it is there to let water or air through, or must never be closed
    double width = 0;           ///< clear width as stated, millimeters; 0: there is none
    std::optional<Money> cost;  ///< of closing it, where the lot's plan does
};

/// A file that a row rests on besides the job file.
struct LotInput {
    std::string path;    ///< from where the program runs
    std::string digest;  ///< SHA-256 of its bytes
};

/// What a sweep tells of one lot.
struct LotRow {
    std::string file;                     ///< the job file, as listed
    std::string lot, name, plan, option;  ///< as the job file has them; `plan`: the house or model file, as the job file has it
    LotResult result = LotResult::error;
    std::string error;        ///< all that is wrong, in one line
    std::vector<Cell> cells;  ///< one for each of columns_of(); empty where there is an error
    std::vector<LeakingDetail> details;
    std::string digest;  ///< of the job file; empty where it could not be read
    std::vector<LotInput> inputs;
};

/// The columns of a kind of work, after those that all rows have. Texts are words, ids or lists of ids with spaces between.
struct LotColumn {
    enum class Holds : std::uint8_t { text, number, money };
    std::string_view name;
    Holds holds = Holds::text;
};
[[nodiscard]] std::span<const LotColumn> columns_of(LotWork work);

/// The row as bytes, for another process of the same build; and back. The second throws std::invalid_argument when they are none.
[[nodiscard]] std::string row_bytes(const LotRow& row);
[[nodiscard]] LotRow row_from_bytes(std::string_view bytes);

}  // namespace seamward
