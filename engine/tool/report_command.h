// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "base/run_context.h"
#include "tool/console.h"
#include "tool/planning.h"

namespace seamward {

/// `seamward report` as it was asked for.
struct ReportRequest : Planning {
    std::string file;                    ///< to write: .html, .pdf, .csv or .xlsx
    std::optional<std::string> before;   ///< job of another visit, to compare with
    std::string audience = "homeowner";  ///< as audience_id()
    std::string language = "en";
    std::string lengths = "in";
    std::string paper = "letter";
    std::string table = "gaps";  ///< of a .csv file: gaps, closings, materials
};

/// Reads, plans and writes. Throws BadInput, and WrongUsage for a word that is none.
void run_report(const ReportRequest& request, const Console& console, const RunContext& context);

}  // namespace seamward
