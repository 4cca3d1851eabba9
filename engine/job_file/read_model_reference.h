// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "base/record.h"
#include "job_file/job.h"

/// For the readers of this folder only.
namespace seamward {

/// The value of the key `model` of a job file: the 3D file that the survey is drawn on. Reports a file that is not there or is of
/// no kind that can be read; the file itself is not opened. Nothing when the key is absent, empty or faulty.
[[nodiscard]] std::optional<ModelReference> read_model_reference(const Record& file, Diagnostics& diagnostics);

}  // namespace seamward
