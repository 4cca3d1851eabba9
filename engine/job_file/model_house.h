// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "job_file/job.h"

namespace seamward {

/// What a part of that IFC class belongs to in a picture; parts without a class, and those of other classes, are `interior`: what
/// stands before the rooms fades, floors and far walls stay.
[[nodiscard]] Layer layer_of_class(const std::string& ifc_class);

/// Reads the model that a job is drawn on and makes a house of its parts for pictures: it has the job's survey, no gap has solids
/// of its own, and no space has a middle. Throws BadInput for whatever is wrong with the file.
void read_model_house(Job& job, const RunContext& context);

}  // namespace seamward
