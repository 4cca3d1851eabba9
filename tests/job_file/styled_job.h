// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <random>
#include <string>

#include "job_file/job.h"

namespace seamward::test {

/// Ways in which people write a job file.
struct FileStyle {
    std::string newline = "\n";
    bool ends_with_newline = true;
    bool json = false;
};

/// A job file of `gaps` gaps, each written in a way of its own: by lines or in brackets, over several lines or in one, with
/// quotes of either sort or none, with comments, letters beyond ASCII, spaces and tabs.
[[nodiscard]] std::string styled_job(std::mt19937& random, int gaps, const FileStyle& style);

/// All that a job says of its spaces and gaps, a line each, so that two jobs can be compared.
[[nodiscard]] std::string told(const Job& job);

}  // namespace seamward::test
