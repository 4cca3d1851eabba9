// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "job_file/job.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {

/// A house of one room, 12 m by 8 m, whose sizes are all known, and a job on it. What stands here may be changed.
struct HouseJob {
    /// Outer face of the framing to that of the cladding: stucco 22 mm on boards 11 mm.
    static constexpr double cladding = 0.033;

    std::string wall =
        "[{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}, {air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]";
    std::string outline = "[[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [0 m, 8 m]]";
    std::string walls = "[south, east, north, west]";
    std::string foundation = "{kind: slab, above_grade: 0.15 m}";
    std::string rooms = "[{id: room, at: [2 m, 2 m]}]";
    std::string more;      ///< further keys of the house: openings, paving, partitions
    std::string features;  ///< of the house, one a line
    std::string job;       ///< further keys of the job

    [[nodiscard]] std::string house_text() const {
        return "seamward-house: 1\nassemblies:\n  - id: wall\n    layers: " + wall +
               "\n  - id: partition\n    layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 89 mm}, {of: drywall, thick: "
               "13 mm}]\noutline: " +
               outline + "\nwalls: " + walls + "\nwall_assembly: wall\nfoundation: " + foundation +
               "\nstories: [{height: 2.5 m}]\nrooms: " + rooms +
               "\nroof: {shape: hip, pitch: 4/12, overhang: 0.6 m}\nyard: {margin: 2 m}\n" + more +
               (features.empty() ? "" : "features:\n" + features);
    }

    /// Reads it with its solids.
    [[nodiscard]] Job read() const {
        const ScratchFolder folder;
        folder.write("house.yaml", house_text());
        folder.write("job.yaml", "seamward: 1\nhouse: house.yaml\n" + job);
        return read_job(folder.path() / "job.yaml", RunContext(), Make::solids);
    }
};

}  // namespace seamward::test
