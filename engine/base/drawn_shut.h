// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>

#include "base/survey.h"

namespace seamward {

/// Whether a gap is a joint of a model where parts touch: a slot of no width, as drawn. Nobody closed it, and nobody measured it.
[[nodiscard]] inline bool is_drawn_shut(const Gap& gap) {
    return std::holds_alternative<Slot>(gap.shape) && is_shut(gap.shape) && gap.evidence.how == Evidence::How::modeled;
}

/// How many of them a survey has.
[[nodiscard]] inline std::size_t drawn_shut(const Survey& survey) {
    return static_cast<std::size_t>(std::count_if(survey.gaps.begin(), survey.gaps.end(), is_drawn_shut));
}

}  // namespace seamward
