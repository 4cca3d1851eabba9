// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "job_file/job.h"

namespace seamward::viewer {

/// What a survey that was found in a builder's model can say and what it cannot: how many gaps the model draws, how many joints
/// it draws shut that nobody has measured, and what follows. Whole sentences; empty for any other survey.
[[nodiscard]] QString model_words(const Job& job);

/// The number of gaps of a model that are drawn shut, and have not been measured.
[[nodiscard]] int shut_joints(const Survey& survey);

/// Of the survey of a builder's model, for each gap whether it lies between two places indoors and on no way in, even if all that
/// is drawn shut were open: the clearances of cabinets and the like. All false for any other survey, and for one without
/// a living space. Linear.
[[nodiscard]] std::vector<bool> only_indoors(const Job& job);

}  // namespace seamward::viewer
