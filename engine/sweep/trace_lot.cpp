// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "base/measure_text.h"
#include "paths/trace.h"
#include "sweep/detail_rows.h"
#include "sweep/leaking_gaps.h"
#include "sweep/lot_work.h"

namespace seamward {

void trace_lot(const Job& job, const SweepSettings& settings, const RunContext& context, LotRow& row) {
    TraceSettings asked;
    asked.pests = animals_for(job, settings);
    asked.top = 1;
    const Trace answer = trace(job.survey, asked, context);
    const auto rooms_open = rooms_open_to(job.survey, asked.to, answer.rooms, job.pests);
    std::vector<bool> inside(job.pests.size(), false);
    for (const std::vector<std::size_t>& animals : rooms_open) {
        for (const std::size_t animal : animals) inside[animal] = true;
    }
    std::vector<std::string> animals_in;
    for (std::size_t i = 0; i < inside.size(); ++i) {
        if (inside[i]) animals_in.push_back(job.pests[i].id);
    }
    const auto open_rooms =
        std::count_if(answer.rooms.begin(), answer.rooms.end(), [](const RoomPinch& room) { return room.pinch.has_value(); });
    const std::vector<GapIndex> leaking = leaking_gaps(job.survey, asked.pests);
    row.result = answer.paths.empty() ? LotResult::shut : LotResult::open;
    if (answer.paths.empty()) {
        row.cells.resize(7);
    } else {
        const RankedPath& best = answer.paths.front();
        std::vector<std::string> open_to_ids;
        for (const std::size_t pest : open_to(job.survey, best.path, job.pests)) open_to_ids.push_back(job.pests[pest].id);
        row.cells = {answer_millimeters(best.pinch), job.survey[best.pinch_gap].id,       job.survey[best.path.from()].id,
                     job.survey[best.path.to()].id,  gap_ids(job.survey, best.path.gaps), best.maybe ? Cell("yes") : Cell(),
                     ids_in_turn(open_to_ids)};
    }
    row.cells.emplace_back(double(answer.rooms.size()));
    row.cells.emplace_back(double(open_rooms));
    row.cells.emplace_back(ids_in_turn(animals_in));
    row.cells.emplace_back(double(leaking.size()));
    for (const GapIndex gap : leaking) row.details.push_back(detail_of(job.survey[gap]));
}

}  // namespace seamward
