// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "catalog/passage.h"
#include "job_file/job.h"
#include "plan/plan.h"

namespace seamward {

/// An entry (a gap that leads out of an outdoors or source space) and how much of what was seen it explains.
struct EntryShare {
    GapIndex gap;
    double share = 0;     ///< probability that an animal seen came in here
    bool cut = false;     ///< once the steps are done, nothing gets from here into the rooms
    bool closed = false;  ///< it is closed then, or was since; otherwise the animal still gets in here
};

/// Another room that was open to an animal when it was seen where no way leads, by its widest way in.
struct OtherRoom {
    OpenWay way;        ///< OpenWay::pest is 0
    bool still = true;  ///< this way is open in the house as it stands, too
};

/// Animals seen in one space.
struct SeenIn {
    SpaceIndex room;
    std::uint64_t count = 0;
};

/// Where the animals of one kind came in, as far as the model of docs/plans.md tells.
struct SightingsOfPest {
    Pest pest;
    std::uint64_t seen = 0;               ///< animals: explained, unexplained and those seen where ways begin
    std::uint64_t explained = 0;          ///< animals to whose rooms some open way leads
    std::vector<EntryShare> entries;      ///< best first; the shares add up to 1, unless nothing is explained
    double cut_share = 0;                 ///< sum of the shares of entries that are cut
    std::vector<SeenIn> rooms;            ///< all that was seen, in the order of the job
    std::vector<SeenIn> unexplained;      ///< no way leads there along gaps that the animal passes
    std::optional<OtherRoom> other_room;  ///< by which what is unexplained may have come: the widest way into any room
    std::vector<SeenIn> at_starts;        ///< seen outdoors or in a source space that is no room: that takes no way in
};

/// For each kind of animal that was seen, in the order of the job, the probabilities of its entries: every animal came alone, got
/// in where the mouth that it passes is long, and wandered at random until a room or the open air. Solved exactly, as a sparse
/// linear system of the inner spaces (a graph Laplacian: Doyle and Snell, "Random Walks and Electric Networks", 1984). An animal
/// whose day is known meets the house as it was: closings of that day or later are open.
[[nodiscard]] std::vector<SightingsOfPest> explain_sightings(const Job& job, std::span<const PlanStep> steps, Sizing sizing);

/// The length of a gap's mouth, all pieces together, in meters: a slot's length, a ring's mid circumference, a hole's
/// circumference, four sides of a mesh's area (where none is stated, the mouth of what the mesh was put over, or else the four
/// sides of one opening). A gap of width 0 that is only perhaps open counts with its plus_minus.
[[nodiscard]] double mouth_length(const Gap& gap);

}  // namespace seamward
