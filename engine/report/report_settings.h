// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "catalog/translator.h"
#include "plan/plan.h"

namespace seamward {

/// Whom a report is for.
enum class Audience : std::uint8_t {
    homeowner,
    crew,     ///< who does the work
    builder,  ///< who answers for the details
    diy,      ///< an owner who does a part of the work
    survey    ///< who looks for gaps: a sheet to fill in
};

/// "homeowner", "crew", "builder", "diy", "survey"
[[nodiscard]] const char* audience_id(Audience audience);

enum class Lengths : std::uint8_t {
    inches,  ///< with millimeters beside them
    millimeters
};

enum class Paper : std::uint8_t { letter, a4 };

struct ReportSettings {
    Audience audience = Audience::homeowner;
    Language language = Language::english;
    Lengths lengths = Lengths::inches;
    Paper paper = Paper::letter;
    bool printed = false;         ///< for paper alone: without scripts
    PlanSettings planning;        ///< `against` may be empty: then there is no plan, and the rest of the report
    bool invented_prices = true;  ///< the prices are the shipped ones
};

}  // namespace seamward
