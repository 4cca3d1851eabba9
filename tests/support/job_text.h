// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/survey.h"

namespace seamward::test {

/// A survey written out as a job file in JSON: every gap as a slot of its clear width in millimeters.
[[nodiscard]] std::string job_json(const Survey& survey);

}  // namespace seamward::test
