// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/quote.h"
#include "plan/quote_terms.h"
#include "tool/console.h"
#include "tool/planning.h"

namespace seamward {

/// `seamward quote` as it was asked for.
struct QuoteRequest : Planning {};

/// Reads, plans and answers; false when there is no plan against any of the animals. Throws BadInput, and WrongUsage when an
/// animal asked for is not known or the day is none.
[[nodiscard]] bool run_quote(const QuoteRequest& request, const Console& console, const RunContext& context);

/// The answer for programs.
[[nodiscard]] std::string quote_answer(const Job& job, const std::string& heading, const QuoteSettings& settings,
                                       const Quote& quote, const QuoteTerms& terms);

/// The answer for people.
void print_quote_table(const Job& job, const std::string& heading, const QuoteSettings& settings, const Quote& quote,
                       const QuoteTerms& terms, const Console& console);

}  // namespace seamward
