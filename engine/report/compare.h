// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "catalog/tables.h"
#include "job_file/job.h"
#include "report/page_writer.h"

namespace seamward {

/// One house at two visits. The same id is the same space and the same gap. Widths are clear widths as stated, meters; 0: shut,
/// or of a room: nothing leads in.
struct Comparison {
    struct Room {
        SpaceIndex room;  ///< of the job now
        double then = 0, now = 0;
    };
    struct Width {
        GapIndex gap;  ///< of the job now
        double then = 0, now = 0;
    };
    struct Count {
        std::size_t then = 0, now = 0;
    };
    bool same_house = true;                              ///< else nothing below is told: no gap is in both
    std::vector<Room> rooms;                             ///< living spaces of both visits, in the order of now
    std::vector<Width> closed;                           ///< open then, and listed as closed since
    std::vector<Width> anew;                             ///< another width or evidence than then, and not closed since
    std::vector<GapIndex> added;                         ///< of the job now
    std::vector<GapIndex> gone;                          ///< of the job then
    Count entries;                                       ///< openings that begin a way into a room
    std::vector<std::size_t> animals_then, animals_now;  ///< that had and have a way in, positions in `animals`
};

/// O(spaces and gaps, for each animal).
[[nodiscard]] Comparison compare(const Job& then, const Job& now, const std::vector<Pest>& animals);

/// `section#since`: what changed since the visit of ReportFacts::before; nothing where there is none.
void comparison_part(PageWriter& page);

}  // namespace seamward
