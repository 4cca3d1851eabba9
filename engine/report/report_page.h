// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "report/report_facts.h"

namespace seamward {

/// A report as one HTML file that needs nothing else. `missing`: gets the texts that have no translation, when it is given.
[[nodiscard]] std::string report_page(const ReportFacts& facts, std::set<std::string, std::less<>>* missing = nullptr);

}  // namespace seamward
