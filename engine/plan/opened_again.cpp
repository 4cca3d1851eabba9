// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/opened_again.h"

#include "catalog/shipped.h"

namespace seamward {

Gap opened_gap(const ClosedGap& closed, const Gap& gap) {
    Gap opened = gap;
    opened.shape = closed.before;
    opened.covered.reset();
    opened.evidence.plus_minus = closed.plus_minus;
    return opened;
}

void open_again(const ClosedGap& closed, Survey& survey) {
    Gap& gap = survey.gaps[closed.gap.value];
    gap = opened_gap(closed, gap);
}

bool is_gnawed_by(const ClosedGap& closed, const Pest& pest) {
    const Treatment* treatment = shipped_treatments().find(closed.with);
    return pest.gnaws && closed.holds() && treatment != nullptr && treatment->gnawed;
}

Survey as_it_stands_to(const Job& job, const Pest& pest) {
    Survey survey = job.survey;
    for (const ClosedGap& closed : job.closed) {
        if (is_gnawed_by(closed, pest)) open_again(closed, survey);
    }
    return survey;
}

}  // namespace seamward
