// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <unordered_map>
#include <vector>

#include "base/run_context.h"
#include "network/network.h"
#include "paths/nearest_exit.h"
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
/// Building: one filtered Kruskal and, where widths tie, one Dijkstra on what it keeps. What lengths need is worked out
/// for a space when it is first asked for.
class RemainingWays {
public:
    /// `by_length`: every link's gap has a position, and length breaks ties. All arguments must outlive the object.
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

    /// The best first steps out of a space, in the order of their gaps' ids.
    struct Exits {
        std::vector<Step> steps;
        std::unique_ptr<NearestExit> by_length;  ///< once the lengths behind all of them are known
    };

    void keep_spanning_steps(const Roles& roles);
    void reach_all();
    [[nodiscard]] Exits& exits(SpaceIndex space);
    void measure(SpaceIndex space);
    [[nodiscard]] const Point& position(std::uint32_t link) const { return *survey_[network_.links()[link].gap].at; }

    const Survey& survey_;
    const Network& network_;
    const RunContext& context_;
    bool by_length_;
    WidthTallies tallies_;
    std::vector<WidthTallies::Rank> rank_;
    std::vector<WidthTallies::Tally> tally_;
    std::vector<std::uint32_t> first_step_;  ///< by node, and one past the last; the last node stands for all ends
    std::vector<Step> steps_;                ///< spanning edges, once from each of their nodes; those of the end node lead back
    bool forest_ = true;                     ///< no ties: the spanning edges are a forest
    std::vector<std::unique_ptr<Exits>> exits_;
    std::unordered_map<std::uint64_t, std::int64_t> length_ahead_;  ///< by link and the space that it leads to
};

}  // namespace seamward
