// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/wrong_closings.h"

#include <algorithm>
#include <optional>

#include "catalog/shipped.h"
#include "materials/duty_rules.h"

namespace seamward {

namespace {

Gap as_found(const ClosedGap& closed, const Survey& survey) {
    Gap gap = survey[closed.gap];
    gap.shape = closed.before;
    gap.covered.reset();
    return gap;
}

/// Whether something that leaves no mesh may close it.
bool some_full_closing(const DutyRuling& ruling) {
    return ruling.may_close || std::any_of(ruling.treatments.begin(), ruling.treatments.end(), [&](const std::string& id) {
               const Treatment* treatment = shipped_treatments().find(id);
               return treatment != nullptr && !treatment->leaves_mesh() && ruling.allows(id, 0);
           });
}

/// The clear opening that a mesh left over a gap; where it is no finer than the gap it changed nothing, and is as coarse.
double opening_of(const Treatment& mesh, const Gap& now) {
    const Mesh* over = now.covered ? std::get_if<Mesh>(&now.shape) : nullptr;
    return over != nullptr ? over->opening : std::max(mesh.opening, clear_width(now.shape));
}

bool is_allowed(const ClosedGap& closed, const DutyRuling& ruling, const Gap& now) {
    const Treatment* treatment = shipped_treatments().find(closed.with);
    if (treatment == nullptr) return some_full_closing(ruling);
    // What the survey states a price for is offered wherever some full closing is allowed.
    if (now.closing.cost && ruling.may_close && closed.with == now.closing.with) return true;
    // Too coarse a mesh stops no air and no water.
    return ruling.allows(closed.with,
                         treatment->leaves_mesh() ? std::min(opening_of(*treatment, now), ruling.widest_opening) : 0);
}

}  // namespace

std::vector<WrongClosing> wrong_closings(const Job& job) {
    std::vector<WrongClosing> wrong;
    for (const ClosedGap& closed : job.closed) {
        if (!closed.holds()) continue;
        const DutyRuling ruling = ruling_on(as_found(closed, job.survey), job.survey);
        if (!ruling.restricted() || is_allowed(closed, ruling, job.survey[closed.gap])) continue;
        wrong.push_back({closed.gap, closed.with, !some_full_closing(ruling), ruling.why, ruling.source});
    }
    return wrong;
}

Message wrong_closing_text(const Survey& survey, const WrongClosing& wrong) {
    const Treatment* treatment = shipped_treatments().find(wrong.with);
    const Message gap = survey[wrong.gap].called();
    if (treatment == nullptr)
        return message(wrong.stays_open ? "{} is written down as closed. It must stay open: {}. Open it again"
                                        : "{} is written down as closed. That must not be there: {}. Open it again",
                       {gap, wrong.why});
    return message(wrong.stays_open ? "{} is written down as closed with {}. It must stay open: {}. Open it again"
                                    : "{} is written down as closed with {}. That must not be there: {}. Open it again",
                   {gap, treatment->name, wrong.why});
}

}  // namespace seamward
