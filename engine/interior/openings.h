// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "interior/ways_home.h"

namespace seamward {

/// One hole, slot or the like between two bodies.
struct Opening {
    std::int32_t first = 0, second = 0;   ///< bodies; the first has the smaller number
    std::vector<std::uint32_t> mouth;     ///< portals that together shut it, where the second body begins to widen
    std::vector<std::uint32_t> passages;  ///< between stands of the two, through which one gets from one body to the other
    std::uint32_t widest = 0;             ///< of those, the one for the largest ball
    double radius = 0;                    ///< meters, of that ball
    bool hole = false;                    ///< its mouth is flat and shuts it, as between wires that cross
    bool stray = false;                   ///< its mouth is no border between cells of the two: a cell reaches through it
    bool unled = false;                   ///< stands on both sides of its mouth went with one body; its passage leads through the
                                          ///< mouth, but not from body to body
};

struct Openings {
    std::vector<Opening> list;  ///< by bodies, then by falling radius
    /// For each portal the opening whose mouth it belongs to, `untold` in a mouth that no passage belongs to, or `none`.
    std::vector<std::uint32_t> at_portal;
    static constexpr std::uint32_t none = 0xffffffff, untold = 0xfffffffd;
    std::vector<std::int32_t> body_of_cell;  ///< the body that each cell goes with, or -1
    std::vector<char> is_border;             ///< for each portal whether its cells go with two bodies, in a mouth or not

    /// The body that the cell, or both cells, of a stand go with, or -1.
    [[nodiscard]] std::int32_t body_at(const Passages& passages, std::uint32_t stand) const;
    /// Whether a passage that was added leads through the mouth of another opening than `which`, or from body to body where no
    /// opening is told: it goes through several cells.
    [[nodiscard]] bool leads_elsewhere(const Passages& passages, std::uint32_t passage, std::size_t which) const {
        if (!passages.was_added(passage)) return false;
        const std::uint32_t by = through[passage - (passages.count() - through.size())];
        return by != inside && by != which;
    }
    /// Whether it may lead through that one: one that was lost on the way may lead anywhere.
    [[nodiscard]] bool may_lead_through(const Passages& passages, std::uint32_t passage, std::size_t which) const {
        return !leads_elsewhere(passages, passage, which) || through[passage - (passages.count() - through.size())] == none;
    }
    static constexpr std::uint32_t inside = 0xfffffffe;
    std::vector<std::uint32_t> through;  ///< for each passage that was added: an opening, `none`, or `inside` of a body's cells
};

/// Gives every cell to a body and looks at the surface between: portals between cells of two bodies that hang together by edges
/// in the open are one opening. In a joint with parallel faces the surface is at the end where the second body begins.
[[nodiscard]] Openings find_openings(const Passages& passages, const Bodies& bodies, const WaysHome& home, const RunContext& run);

}  // namespace seamward
