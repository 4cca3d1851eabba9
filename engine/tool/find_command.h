// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "interior/find.h"
#include "job_file/job.h"
#include "paths/trace.h"
#include "tool/console.h"
#include "tool/model_options.h"

namespace seamward {

/// `seamward find` as it was asked for. What is empty was left out.
struct FindRequest : ModelOptions {
    std::string model, output;
    bool json = false;
};

/// What was found, and the ways in that it makes.
struct FindOutcome {
    FindSettings settings;
    Found found;
    std::vector<LostProducts> lost;
    std::vector<std::string> notes;  ///< of the reading and of the finding
    Job job;                         ///< its survey has the spaces, gaps and joints of `found`, in the same order
    Trace trace;
};

/// Reads a model, finds spaces and gaps, and answers; with `-o` it writes a job file first. Throws BadInput, and WrongUsage for
/// options that make no sense; then nothing was written.
void run_find(const FindRequest& request, const Console& console, const RunContext& context);

/// The answer for programs.
[[nodiscard]] std::string find_answer(const FindOutcome& finding);

/// The answer for people.
void print_find_table(const FindOutcome& finding, const Console& console);

}  // namespace seamward
