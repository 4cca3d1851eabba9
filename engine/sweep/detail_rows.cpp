// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/detail_rows.h"

#include "base/measure_text.h"

namespace seamward {

LeakingDetail detail_of(const Gap& gap) {
    return {gap.id,      gap.called().english(), gap.feature, gap.must_stay_open(), answer_millimeters(clear_width(gap.shape)),
            std::nullopt};
}

std::string ids_in_turn(const std::vector<std::string>& ids) {
    std::string text;
    for (const std::string& id : ids) text += (text.empty() ? "" : " ") + id;
    return text;
}

std::string gap_ids(const Survey& survey, const std::vector<GapIndex>& gaps) {
    std::vector<std::string> ids;
    for (const GapIndex gap : gaps) ids.push_back(survey[gap].id);
    return ids_in_turn(ids);
}

}  // namespace seamward
