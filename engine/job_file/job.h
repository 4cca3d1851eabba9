// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "base/run_context.h"
#include "base/survey.h"
#include "base/vented.h"
#include "catalog/tables.h"
#include "house/build_house.h"

namespace seamward {

/// A gap that was closed already.
struct ClosedGap {
    GapIndex gap;
    std::string with;  ///< id of a treatment; empty when the file does not say
    Shape before;      ///< the opening as it was found
};

/// One visit to one house, as its job file tells it.
struct Job {
    std::string name;
    std::string address, surveyed, surveyor, notes;
    /// As the house stands now: what is listed as closed has the opening that its treatment left.
    Survey survey;
    std::vector<Pest> pests;  ///< in the file's order; a profile of the file's own has no sources
    std::vector<ClosedGap> closed;
    std::vector<SpaceArea> vented;   ///< floors of spaces that are vented, as far as known
    std::vector<SpaceInput> inputs;  ///< of appliances that burn fuel, as far as known
    /// The described house, when the job has one and its solids were asked for. Its survey is the job's.
    House house;
};

/// Reads a job file (YAML, or JSON when its name ends in `.json`). Throws BadInput with all faults of the file,
/// each with its line and column; faults of the house's file likewise. O(file size) time and memory, and what building the house
/// takes.
[[nodiscard]] Job read_job(const std::filesystem::path& path, const RunContext& context, Make make = Make::survey);

/// The same from text in memory; a file that the text refers to is looked for beside `shown_as`.
[[nodiscard]] Job parse_job_yaml(std::string_view text, const std::string& shown_as);

/// The name of a job for a heading: its own, or its file's.
[[nodiscard]] std::string heading(const Job& job, const std::filesystem::path& path);

}  // namespace seamward
