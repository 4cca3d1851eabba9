// SPDX-License-Identifier: GPL-3.0-or-later
// bench OUTPUT.json [pinches|paths|reading|houses|cuts|find|viewer|sweep]: runs every benchmark, or those of one sort, prints
// `name  ours  peer  ratio` and writes the same as JSON.
// bench --curve [MOST_TRIANGLES [MODEL]]: time and memory of `find` as models grow.
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <stdexcept>
#include <string>

#include "base/json_writer.h"
#include "tests/bench/bench.h"

namespace seamward::bench {

double median_seconds(const std::function<void()>& run) {
    run();
    std::array<double, 5> seconds{};
    for (double& s : seconds) {
        const auto begin = std::chrono::steady_clock::now();
        run();
        s = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    }
    std::sort(seconds.begin(), seconds.end());
    return seconds[2];
}

void require(bool holds, const std::string& what) {
    if (!holds) throw std::runtime_error("answers differ: " + what);
}

}  // namespace seamward::bench

int main(int argc, char** argv) try {
    using seamward::bench::Row;
    if (argc > 1 && std::string(argv[1]) == "--curve") {
        seamward::bench::print_find_curve(argc > 2 ? std::stoul(argv[2]) : 1'000'000, argc > 3 ? argv[3] : "");
        return 0;
    }
    if (argc < 2 || argv[1][0] == '-') {
        std::fputs("usage: seamward_bench OUTPUT.json [SORT], or --curve [MOST_TRIANGLES [MODEL]]\n", stderr);
        return 2;
    }
    seamward::JsonWriter json;
    json.begin_object().key("benchmarks").begin_array();
    std::printf("%-44s %12s %12s %8s\n", "name", "ours [s]", "peer [s]", "ratio");
    using Bench = std::vector<Row> (*)();
    constexpr std::array<std::pair<const char*, Bench>, 8> all{{{"pinches", &seamward::bench::bench_pinches},
                                                                {"paths", &seamward::bench::bench_ranked_paths},
                                                                {"reading", &seamward::bench::bench_reading},
                                                                {"houses", &seamward::bench::bench_houses},
                                                                {"cuts", &seamward::bench::bench_cuts},
                                                                {"find", &seamward::bench::bench_find},
                                                                {"viewer", &seamward::bench::bench_viewer},
                                                                {"sweep", &seamward::bench::bench_sweep}}};
    for (const auto& [sort, bench] : all) {
        if (argc > 2 && std::string(argv[2]) != sort) continue;
        for (const Row& row : bench()) {
            std::printf("%-44s %12.6f %12.6f %8.1f  %s\n", row.name.c_str(), row.ours, row.peer, row.ratio(), row.note.c_str());
            std::fflush(stdout);
            json.begin_object().key("name").value(row.name).key("ours_s").value(row.ours).key("peer_s").value(row.peer);
            json.key("ratio").value(row.ratio()).key("note").value(row.note).end_object();
        }
    }
    json.end_array().end_object();
    std::ofstream(argv[1]) << json.text();
    return 0;
} catch (const std::exception& fault) {
    std::fprintf(stderr, "bench: %s\n", fault.what());
    return 1;
}
