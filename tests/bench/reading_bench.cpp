// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a JSON job of 10^6 gaps into a checked survey, against RapidJSON loading the same text into its own tree.
#include <rapidjson/document.h>
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>

#include "base/file_io.h"
#include "base/json_writer.h"
#include "job_file/job.h"
#include "tests/bench/bench.h"
#include "tests/support/job_text.h"
#include "tests/support/random_survey.h"

namespace seamward::bench {

std::vector<Row> bench_reading() {
    const Survey survey = test::random_survey(
        {.spaces = 100'000, .gaps = 1'000'000, .outdoors_share = 0.0001, .living_share = 0.02, .located_share = 0}, 1);
    const std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("seamward-bench-" + std::to_string(getpid()) + ".json");
    std::ofstream(path) << test::job_json(survey);
    const RunContext context;
    const auto ours = [&] { return read_job(path, context); };
    const auto peer = [&] {
        const std::string text = read_file(path, path.string(), 1ULL << 30U);
        rapidjson::Document document;
        document.Parse(text.c_str());
        return document["gaps"].Size();
    };
    require(ours().survey.gaps.size() == peer(), "number of gaps read");
    std::vector<Row> rows{{"reading a JSON job of 1e6 gaps", median_seconds([&] { (void)ours(); }),
                           median_seconds([&] { (void)peer(); }), "peer: RapidJSON document, nothing checked"}};
    std::filesystem::remove(path);
    return rows;
}

}  // namespace seamward::bench
