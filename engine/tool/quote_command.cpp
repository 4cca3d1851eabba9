// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/quote_command.h"

#include "base/text.h"

namespace seamward {

bool run_quote(const QuoteRequest& request, const Console& console, const RunContext& context) {
    const Job job = read_job(request.job, context);
    const PlanSettings planning = plan_settings(request, job);
    const QuoteSettings settings{planning.against, planning.prices, !request.prices, planning.date};
    const Quote quote = make_quote(job, settings, context);
    const QuoteTerms terms = terms_of(job, settings, quote);
    const std::string title = printable(heading(job, request.job));
    if (request.json)
        console.out << quote_answer(job, title, settings, quote, terms);
    else
        print_quote_table(job, title, settings, quote, terms, console);
    return quote.feasible();
}

}  // namespace seamward
