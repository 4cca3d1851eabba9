// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace seamward::bench {

/// One line of the result: our time and a peer's for the same answer, seconds, medians.
struct Row {
    std::string name;
    double ours = 0;
    double peer = 0;
    std::string note;

    [[nodiscard]] double ratio() const { return peer / ours; }
};

/// Median of five runs in seconds, after one that is not counted.
[[nodiscard]] double median_seconds(const std::function<void()>& run);

/// Stops the benchmark: two answers that must agree do not.
void require(bool holds, const std::string& what);

/// The benchmarks, one function a file; each compares answers before it times.
[[nodiscard]] std::vector<Row> bench_pinches();
[[nodiscard]] std::vector<Row> bench_ranked_paths();
[[nodiscard]] std::vector<Row> bench_reading();
[[nodiscard]] std::vector<Row> bench_houses();
[[nodiscard]] std::vector<Row> bench_cuts();
[[nodiscard]] std::vector<Row> bench_find();
[[nodiscard]] std::vector<Row> bench_viewer();
[[nodiscard]] std::vector<Row> bench_sweep();

/// Prints time and memory of `find` on models of 10^4 to 10^6 triangles, a line each, but of those with more than `most`; of one
/// model unless `only` is empty. Starts a process for each, so no thread may have been started before. Takes minutes.
void print_find_curve(std::size_t most, const std::string& only);

}  // namespace seamward::bench
