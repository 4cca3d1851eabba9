// SPDX-License-Identifier: GPL-3.0-or-later
// The loop from a described house through its solids and a 3D file to what is found in them, and back to the description.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "exchange/model.h"
#include "interior/find.h"
#include "job_file/job.h"
#include "tests/support/leak_finder.h"

namespace seamward::test {

/// The solids of a house as they come out of its GLB file, read by the reader's process.
[[nodiscard]] Model read_from_file(const Job& job);

/// Something in which the found and the declared do not agree.
struct LoopFault {
    enum class Kind : std::uint8_t {
        missing,  ///< nothing was found at the place of the gap, or of one of its openings
        differs,  ///< what was found there has another width, or leads between other spaces
        extra,    ///< was found and is not declared
        parted,   ///< of the gap more openings were found than it has
        space,    ///< a space that is none of the house, or several
    };
    Kind kind = Kind::missing;
    std::string
        gap;  ///< id of the declared gap; of something extra that of the gap that it is at or nearest to; of a space its id
    std::string words;          ///< for people: what, where, and what is nearest
    bool within_bounds = true;  ///< unless the bounds of what was found there leave the declared width out
};

struct LoopReport {
    std::size_t declared = 0;  ///< gaps of the house that were to be found
    std::size_t matched = 0;   ///< of them, those that were found as declared
    std::size_t joined = 0;    ///< gaps within air that is one by openings wider than `widest`: not to be found
    std::size_t found = 0;     ///< gaps that were found
    std::vector<LoopFault> faults;
};

/// A described house as what is found in its solids has to be.
///
/// Spaces joined by a gap wider than `widest` are one. A found gap leads between the spaces that the ends of its way lie in. It
/// is the declared gap whose faces hold its ball where that is held tightest, else one whose faces its ball passes on its way:
/// the solids know which triangles bound which gap. A declared gap with several openings (rows, counts, edges) is found once for
/// each, as wide as declared; a mesh as one or as several.
class DeclaredHouse {
public:
    /// `shut`: the same house with all gaps shut, which tells the air of one space from that of another. `limits` are the widths
    /// that find_gaps() looks for.
    DeclaredHouse(const Job& job, const AirMap& shut, const FindSettings& limits);

    /// With a room in each body of air that people or their things are in.
    [[nodiscard]] const FindSettings& settings() const { return settings_; }
    [[nodiscard]] LoopReport compare(const Found& found) const;

    [[nodiscard]] const Job& job() const { return job_; }
    /// Clear width of a gap as it was built, in meters; below 0: it has no solids.
    [[nodiscard]] double width(GapIndex gap) const { return widths_[gap.value]; }
    /// The first of the spaces that are one with a space.
    [[nodiscard]] SpaceIndex one_of(SpaceIndex space) const { return one_of_[space.value]; }
    /// The same of the space at a point; invalid where there is no air in the shut house.
    [[nodiscard]] SpaceIndex air_at(const Point& at) const;
    [[nodiscard]] SpaceIndex outdoors() const;

private:
    void join_spaces();
    void add_rooms();

    const Job& job_;
    const AirMap& shut_;
    FindSettings settings_;
    std::vector<double> widths_;
    std::vector<SpaceIndex> one_of_;
};

}  // namespace seamward::test
