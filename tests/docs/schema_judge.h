// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace seamward::test {

/// What docs/job.schema.json says of a job file in YAML: empty when it accepts the text, else the keyword and the place
/// that reject it. RapidJSON's validator is the judge.
[[nodiscard]] std::string verdict(const std::string& yaml);

/// The same of docs/house.schema.json and a house file.
[[nodiscard]] std::string house_verdict(const std::string& yaml);

/// The same of docs/drill.schema.json and a drill file, and of docs/answers.schema.json and an answers file.
[[nodiscard]] std::string drill_verdict(const std::string& yaml);
[[nodiscard]] std::string answers_verdict(const std::string& yaml);

/// Whether the program reads the text as a job file.
[[nodiscard]] bool program_accepts(const std::string& yaml);

/// Whether the program reads the text as a house file; the house is not built.
[[nodiscard]] bool program_accepts_house(const std::string& yaml);

/// A file with `@` in it, with `what` in its place.
[[nodiscard]] std::string put(const std::string& file, const std::string& what);

}  // namespace seamward::test
