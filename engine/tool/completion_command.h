// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/completion.h"
#include "tool/console.h"
#include "tool/planning.h"

namespace seamward {

/// `seamward completion` as it was asked for.
struct CompletionRequest : Planning {};

/// Reads, judges and answers. Throws BadInput, and WrongUsage when an animal asked for is not known or the day is none.
void run_completion(const CompletionRequest& request, const Console& console, const RunContext& context);

/// A job that was judged, and how to call it.
struct JudgedJob {
    const Job& job;
    std::string heading;
    const PlanSettings& settings;
    const Completion& completion;
    bool invented_prices = false;  ///< those that come with the program
};

/// A line of a page: a title, or text that hangs from `lead`. Both empty: a blank line.
struct PageLine {
    std::string lead, text;
    bool title = false;
};

/// The page that is left with the customer; nothing when the work is not complete.
[[nodiscard]] std::vector<PageLine> completion_statement(const JudgedJob& judged);

/// When to look at it again, a sentence or two.
[[nodiscard]] std::vector<std::string> when_to_look_again(const JudgedJob& judged);

/// `hose bibb, north wall: called back on 2026-04-01, the sealant pulled off; mended on 2026-04-03`
[[nodiscard]] std::string callback_text(const Job& job, const ClosedGap& closed);

/// The answer for programs.
[[nodiscard]] std::string completion_answer(const JudgedJob& judged);

/// The answer for people: the statement, or what keeps it from being given.
void print_completion(const JudgedJob& judged, const Console& console);

}  // namespace seamward
