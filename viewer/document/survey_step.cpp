// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/survey_step.h"

namespace seamward::viewer {

std::size_t SurveyStep::bytes() const {
    std::size_t sum = sizeof(SurveyStep);
    for (const Part& part : parts) sum += sizeof(Part) + part.change.removed.size() + part.change.inserted.size();
    return sum;
}

}  // namespace seamward::viewer
