// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/run_context.h"
#include "paths/remaining_ways.h"

namespace seamward {

/// Spaces that a path has used up, kept as stamps so that forgetting them all costs nothing.
class UsedSpaces {
public:
    explicit UsedSpaces(std::size_t space_count) : stamps_(space_count, 0) {}

    void forget() { ++stamp_; }
    void add(SpaceIndex space) { stamps_[space.value] = stamp_; }
    [[nodiscard]] bool has(SpaceIndex space) const { return stamps_[space.value] == stamp_; }

private:
    std::vector<std::uint32_t> stamps_;
    std::uint32_t stamp_ = 1;
};

/// Finds the best way on from a space to an end that uses none of the used spaces and whose first step is one of
/// those allowed: by widths, then by length, then by gap ids.
class DetourFinder {
public:
    DetourFinder(const Survey& survey, const Network& network, const Roles& roles, RemainingWays& ways,
                 const RunContext& context);

    /// All steps out of a space that end, or from which an end can be reached.
    void steps_from(SpaceIndex space, std::vector<Step>& steps) const;

    /// `last_link`: the link by which the space was entered, if any; lengths are counted from it.
    [[nodiscard]] std::optional<std::vector<Step>> find(std::span<const Step> first_steps, std::optional<std::uint32_t> last_link,
                                                        const UsedSpaces& used);

private:
    static constexpr std::uint32_t none = static_cast<std::uint32_t>(-1);

    /// A way from the start of the search: its last step and the label before it.
    struct Label {
        Step step;
        std::uint32_t parent = none;
        std::uint32_t depth = 1;
        WidthTallies::Tally before = WidthTallies::empty;  ///< of the steps before this one
        std::int64_t length = 0;                           ///< to the gap of this step
        std::int64_t whole_length = -1;                    ///< with the best way on; worked out when first needed
    };
    /// A space that was left once: the tally it was reached with, and by which links (those with that tally).
    struct Reached {
        WidthTallies::Sum sum;
        std::vector<std::uint32_t> links;
    };

    [[nodiscard]] WidthTallies::Sum whole(const Label& label) const;
    [[nodiscard]] std::int64_t whole_length(std::uint32_t label);
    [[nodiscard]] bool comes_later(std::uint32_t x, std::uint32_t y);
    [[nodiscard]] int compare_ids(std::uint32_t x, std::uint32_t y) const;
    [[nodiscard]] bool first_arrival(const Label& label);
    void push(const Label& label);
    [[nodiscard]] std::optional<std::vector<Step>> straight_on(std::uint32_t label, const UsedSpaces& used);

    const Survey& survey_;
    const Network& network_;
    const Roles& roles_;
    RemainingWays& ways_;
    const RunContext& context_;
    std::vector<Label> labels_;
    std::vector<std::uint32_t> waiting_;  ///< heap of labels
    std::unordered_map<std::uint32_t, Reached> reached_;
    std::vector<Step> scratch_;
};

}  // namespace seamward
