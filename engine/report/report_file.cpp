// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/report_file.h"

#include <algorithm>
#include <array>

#include "job_file/job_json.h"
#include "report/pdf.h"
#include "report/photos.h"
#include "report/report_page.h"
#include "report/tables.h"

namespace seamward {

namespace {

constexpr std::size_t most_triangles = 400'000;  ///< a phone draws no more

std::string written(const ReportFacts& facts, const ReportOrder& order, const RunContext& context) {
    const Translator say(facts.settings.language);
    switch (order.kind) {
        case ReportKind::csv:
            switch (order.table) {
                case ReportTable::gaps: return csv_text(gaps_table(facts, say), say);
                case ReportTable::closings: return csv_text(closings_table(facts, say), say);
                case ReportTable::materials: break;
            }
            return csv_text(materials_table(facts, say), say);
        case ReportKind::xlsx:
            return xlsx_bytes({closings_table(facts, say), materials_table(facts, say), gaps_table(facts, say)}, facts, say);
        case ReportKind::pdf: return printed_page(report_page(facts), context);
        case ReportKind::html: break;
    }
    return report_page(facts);
}

}  // namespace

std::optional<ReportKind> report_kind(const std::filesystem::path& file) {
    constexpr std::array<std::string_view, 4> endings{".html", ".pdf", ".csv", ".xlsx"};
    const auto is = std::find(endings.begin(), endings.end(), file.extension().string());
    if (is == endings.end()) return std::nullopt;
    return static_cast<ReportKind>(is - endings.begin());
}

MadeReport make_report(const Job& job, const ReportOrder& order, const RunContext& context) {
    ReportSettings settings = order.settings;
    settings.printed = order.kind == ReportKind::pdf;
    ReportFacts facts = gather_facts(job, order.heading, settings, context);
    facts.before = order.before;
    if (settings.audience == Audience::survey)
        facts.job_file = {order.job_path.stem().string(), job_as_json(order.job_text, order.job_path)};
    facts.photos = read_photos(job, order.job_path.parent_path(), context);
    return {written(facts, order, context), facts.photos.unreadable};
}

std::optional<std::size_t> drop_heavy_solids(Job& job) {
    std::size_t triangles = 0;
    for (const Part& part : job.house.parts) triangles += part.mesh.triangles.size();
    if (triangles <= most_triangles) return std::nullopt;
    job.house.parts.clear();
    return triangles;
}

}  // namespace seamward
