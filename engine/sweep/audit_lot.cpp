// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include "base/measure_text.h"
#include "exchange/read_model.h"
#include "provisions/audit.h"
#include "provisions/gap_parts.h"
#include "sweep/detail_rows.h"
#include "sweep/lot_work.h"

namespace seamward {

namespace {

GapParts parts_of(const Job& job, const RunContext& context) {
    if (!job.model) return parts_of_house(job);
    ReadSettings settings;
    settings.unit = job.model->unit;
    settings.up = job.model->up;
    return parts_near(job.survey, read_model(job.model->path, job.model->path.string(), settings, context));
}

LeakingDetail detail_of(const Finding& finding, const Survey& survey) {
    LeakingDetail detail;
    detail.id = finding.key;
    detail.name = finding.title.english();
    if (!finding.gap) return detail;
    const Gap& gap = survey[*finding.gap];
    detail.feature = gap.feature;
    detail.stays = gap.must_stay_open();
    detail.width = answer_millimeters(clear_width(gap.shape));
    return detail;
}

}  // namespace

void audit_lot(const Job& job, const SweepSettings& settings, const RunContext& context, LotRow& row) {
    AuditSettings asked;
    asked.date = settings.date;
    asked.pests = settings.against.empty() ? job.pests : animals_for(job, settings);
    const Audit answer = audit(job, parts_of(job, context), asked, context);
    std::array<std::size_t, 4> verdicts{};
    std::vector<std::string> failed;
    for (const ProvisionResult& result : answer.results) {
        ++verdicts[static_cast<std::size_t>(result.verdict)];
        if (result.verdict == Verdict::fail) failed.push_back(result.provision.id);
    }
    for (const std::size_t count : verdicts) row.cells.emplace_back(double(count));
    row.cells.emplace_back(ids_in_turn(failed));
    row.cells.emplace_back(double(answer.findings.size()));
    row.cells.emplace_back(double(answer.ways.size()));
    row.result = answer.findings.empty() ? LotResult::shut : LotResult::open;
    for (const Finding& finding : answer.findings) {
        if (finding.rule != way_in) row.details.push_back(detail_of(finding, job.survey));
    }
}

}  // namespace seamward
