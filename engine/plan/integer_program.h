// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace seamward {

/// A linear program some of whose variables are whole: find the least sum of cost times value.
struct IntegerProgram {
    struct Column {
        double cost = 0, least = 0, most = 1;
        bool whole = false;
    };
    struct Row {
        std::vector<std::pair<std::size_t, double>> terms;  ///< column, factor
        double least, most;
    };

    std::vector<Column> columns;
    std::vector<Row> rows;

    std::size_t add(Column column) {
        columns.push_back(column);
        return columns.size() - 1;
    }
};

struct IntegerAnswer {
    enum class Found : std::uint8_t { solution, none_exists, none_within_limits };

    Found found = Found::solution;
    std::vector<double> values;  ///< of a solution; whole ones are whole
    bool proven = false;         ///< nothing has a lower cost than these values by more than the solver's tolerance
    double bound = 0;            ///< nothing has a lower cost than this
};

/// Solves with COIN-OR CBC, branch and cut; deterministic, since it stops after `most_nodes` of its tree and never by the clock.
[[nodiscard]] IntegerAnswer solve(const IntegerProgram& program, int most_nodes = 200'000);

}  // namespace seamward
