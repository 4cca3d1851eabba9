// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace seamward::test {

/// What docs/job.schema.json says of a job file in YAML: empty when it accepts the text, else the keyword and the place
/// that reject it. RapidJSON's validator is the judge.
[[nodiscard]] std::string verdict(const std::string& yaml);

/// Whether the program reads the text as a job file.
[[nodiscard]] bool program_accepts(const std::string& yaml);

}  // namespace seamward::test
