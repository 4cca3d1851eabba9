// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "base/json_writer.h"
#include "job_file/job.h"
#include "paths/trace.h"
#include "tool/console.h"

namespace seamward {

/// `seamward trace` as it was asked for.
struct TraceRequest {
    std::string job;
    std::vector<std::string> pests;
    std::vector<std::string> to;
    std::size_t top = 10;
    bool json = false;
};

/// Reads, traces and answers. Throws BadInput, and WrongUsage when a pest or space asked for is not known.
void run_trace(const TraceRequest& request, const Console& console, const RunContext& context);

/// The answer for programs.
[[nodiscard]] std::string trace_answer(const Job& job, const TraceSettings& settings, const Trace& trace);

/// Its key `paths`, which other answers have too.
void write_paths(const Job& job, const Trace& trace, JsonWriter& json);

/// The answer for people.
void print_trace_table(const Job& job, const std::string& heading, const TraceSettings& settings, const Trace& trace,
                       const Console& console);

/// What of it comes below the summary: what to check, the ways in, the rooms. `with_options`: and which options show
/// more.
void print_ways_in(const Job& job, const TraceSettings& settings, const Trace& trace, const Console& console, bool with_options);

}  // namespace seamward
