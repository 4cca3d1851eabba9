// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "report/report_facts.h"

namespace seamward {

/// What a report can be written as.
enum class ReportKind : std::uint8_t { html, pdf, csv, xlsx };

/// By the ending of a file's name; nothing when it is none of `.html`, `.pdf`, `.csv`, `.xlsx`.
[[nodiscard]] std::optional<ReportKind> report_kind(const std::filesystem::path& file);

/// What a CSV file has.
enum class ReportTable : std::uint8_t { gaps, closings, materials };

/// What is asked of a report.
struct ReportOrder {
    ReportKind kind = ReportKind::html;
    ReportTable table = ReportTable::gaps;  ///< of a CSV file
    std::string heading;
    ReportSettings settings;         ///< `printed` goes by the kind
    std::filesystem::path job_path;  ///< photos are looked for from its folder on; a sheet takes its name
    std::string job_text;            ///< what stands in that file; of sheets to fill in only
    const Job* before = nullptr;     ///< the job as it was at another visit, to compare with
};

struct MadeReport {
    std::string bytes;                 ///< of the whole file
    std::vector<GapIndex> unreadable;  ///< gaps whose photos cannot be shown, and were left out
};

/// Makes a report of a job that was read with its solids, where it has a house or a model. Throws BadInput when it cannot be
/// printed or the text of the job is none, and Cancelled. Deterministic for a date.
[[nodiscard]] MadeReport make_report(const Job& job, const ReportOrder& order, const RunContext& context);

/// Takes the solids from a job that has more triangles than a page on a phone can draw; how many, when it did so.
[[nodiscard]] std::optional<std::size_t> drop_heavy_solids(Job& job);

}  // namespace seamward
