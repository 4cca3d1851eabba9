// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstddef>
#include <deque>
#include <mutex>
#include <string>
#include <vector>

#include "base/run_context.h"
#include "sweep/results.h"
#include "sweep/sweep.h"

namespace seamward {

/// Rank 0's books: what is still to be done, and rows that wait to be written. Several threads may use it.
class Books {
public:
    /// `workers`: threads of all ranks together. All that is referred to must live longer.
    Books(std::vector<std::string> todo, std::size_t workers, const std::string& settings, SweepResults& results,
          SweepTally& tally, const RunContext& context);

    /// Lots to do next, noted as begun; none: there are no more. Fewer at a time toward the end, so that all end together.
    [[nodiscard]] std::vector<std::string> take();
    /// Keeps a row, and writes those that wait when there are enough of them or a second has gone by.
    void put(LotRow row);
    void write_waiting();

private:
    void write();
    void tell();

    std::mutex mutex_;
    std::deque<std::string> todo_;
    std::size_t workers_;
    const std::string& settings_;
    SweepResults& results_;
    SweepTally& tally_;
    const RunContext& context_;
    std::vector<LotRow> waiting_;
    std::size_t told_ = 0;  ///< tenths of all lots
    std::chrono::steady_clock::time_point written_ = std::chrono::steady_clock::now();
};

}  // namespace seamward
