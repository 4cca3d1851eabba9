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
    Message covers, callback;
    std::vector<Message> void_if;
};

/// What stands in a quote beside the options and their prices, as whole sentences.
struct QuoteTerms {
    Message warning;                  ///< that prices are invented; empty: they are the user's own
    std::vector<Message> exclusions;  ///< what the price does not cover
    std::size_t stays_open = 0;       ///< so many of these, the first ones, tell what nothing closes
    std::vector<Message> approvals;   ///< what has to be settled, and with whom, before the work begins
    Warranty warranty;
    std::vector<Message> cautions;  ///< what can hurt the customer, not who works there; each names its source
    std::vector<Message> checks;    ///< by a licensed person when the work is done; not in the price
    std::vector<Message> notes;
};

/// For each animal that lives in the house and that an option's closings leave a way out: that it stays.
[[nodiscard]] std::vector<Message> who_stays_inside(const Job& job, const Plan& plan);

/// The terms for all options together. A sentence that holds for some of them names these by their position, counted from 1.
[[nodiscard]] QuoteTerms terms_of(const Job& job, const QuoteSettings& settings, const Quote& quote);

}  // namespace seamward
