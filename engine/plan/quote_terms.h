// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "plan/quote.h"

namespace seamward {

/// What is promised for the closings.
struct Warranty {
    std::uint32_t months = 0;  ///< from the last visit on; 0: none is promised
    std::string covers, callback;
    std::vector<std::string> void_if;
};

/// What stands in a quote beside the options and their prices, as whole sentences.
struct QuoteTerms {
    std::string warning;                  ///< that prices are invented; empty: they are the user's own
    std::vector<std::string> exclusions;  ///< what the price does not cover
    std::vector<std::string> approvals;   ///< what has to be settled, and with whom, before the work begins
    Warranty warranty;
    std::vector<std::string> cautions;  ///< what can hurt the customer, not who works there; each names its source
    std::vector<std::string> checks;    ///< by a licensed person when the work is done; not in the price
    std::vector<std::string> notes;
};

/// For each animal that lives in the house and that an option's closings leave a way out: that it stays.
[[nodiscard]] std::vector<std::string> who_stays_inside(const Job& job, const Plan& plan);

/// The terms for all options together. A sentence that holds for some of them names these by their position, counted from 1.
[[nodiscard]] QuoteTerms terms_of(const Job& job, const QuoteSettings& settings, const Quote& quote);

}  // namespace seamward
