// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "base/run_context.h"
#include "network/network.h"
#include "paths/width_tally.h"

namespace seamward {

/// One step from a space through a gap, to a passable space or to an end.
struct Step {
    std::uint32_t link = 0;
    SpaceIndex to;
    bool ends = false;
};

/// For every passable space the best way on to an end: the potentials that steer the search for ranked paths.
///
/// Best in the order of paths: by the tally of widths, then (when every gap counts a position) by length, then by
/// gap ids. Only edges of some maximum spanning forest can be on a best way, so that the rest is never looked at.
/// Building: one filtered Kruskal and, where widths tie, one Dijkstra on what it keeps.
class RemainingWays {
public:
    /// `by_length`: every link's gap has a position, and length breaks ties.
    RemainingWays(const Survey& survey, const Network& network, const Roles& roles, bool by_length, const RunContext& context);

    /// Whether an end can be reached from a passable space at all.
    [[nodiscard]] bool open(SpaceIndex space) const { return tally_[space.value] != unreached; }
    /// The tally of the best way on from an open space.
    [[nodiscard]] WidthTallies::Tally tally(SpaceIndex space) const { return tally_[space.value]; }
    /// What a step brings: its own width and the best way on after it.
    [[nodiscard]] WidthTallies::Sum ahead(const Step& step) const {
        return {{step.ends ? WidthTallies::empty : tally(step.to), WidthTallies::empty}, rank(step.link)};
    }
    [[nodiscard]] WidthTallies::Rank rank(std::uint32_t link) const { return rank_[link]; }
    [[nodiscard]] WidthTallies& tallies() { return tallies_; }
    [[nodiscard]] const WidthTallies& tallies() const { return tallies_; }
    [[nodiscard]] bool by_length() const { return by_length_; }

    /// Length in nanometers from the gap of a step to the last gap of the best way on; 0 when length does not count.
    [[nodiscard]] std::int64_t length_ahead(const Step& step);
    /// Nanometers between the gaps of two links; 0 when length does not count.
    [[nodiscard]] std::int64_t hop(std::uint32_t from, std::uint32_t to) const;
    /// The first step of the best way on, from the space that `step` led to.
    [[nodiscard]] Step best_after(const Step& step);

private:
    static constexpr WidthTallies::Tally unreached = static_cast<WidthTallies::Tally>(-1);

    [[nodiscard]] std::uint64_t state(const Step& step) const { return (std::uint64_t{step.link} << 32U) | step.to.value; }
    template <class Visit>
    void for_each_best_step(SpaceIndex space, Visit&& visit) const;
    void keep_spanning_steps(const Roles& roles);
    void reach_all(const RunContext& context);

    const Survey& survey_;
    const Network& network_;
    bool by_length_;
    WidthTallies tallies_;
    std::vector<WidthTallies::Rank> rank_;
    std::vector<WidthTallies::Tally> tally_;
    std::vector<std::uint32_t> first_step_;  ///< by space, and one past the last; the last "space" is the end node
    std::vector<Step> steps_;                ///< spanning edges, seen from their far side: `to` is where one comes from
    bool forest_ = true;                     ///< no ties: the spanning edges are a forest
    std::unordered_map<std::uint64_t, std::int64_t> length_;
};

}  // namespace seamward
