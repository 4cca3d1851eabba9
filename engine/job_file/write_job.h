// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"

namespace seamward {

/// A job as the text of a job file in YAML: its name, its model, its spaces and gaps with shape, place, depth, evidence and way
/// through. What else a job may have is left out. Lengths have as many digits as whole nanometers need. `head`: lines of comment
/// to begin with, which must be plain ASCII. A gap of no width takes one line, so that whoever finds it open has one line to
/// change.
///
/// Names and ids must be valid UTF-8 in one line without control characters; they are quoted so that read_job() reads the same.
[[nodiscard]] std::string job_text(const Job& job, const std::vector<std::string>& head);

}  // namespace seamward
