// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "base/run_context.h"
#include "paths/ordered_steps.h"
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

/// Finds the best way on from a space to an end that uses none of the used spaces and takes one of the allowed first
/// steps: by widths, then by length, then by gap ids. A* with the best ways on as its potential; of the steps out of a
/// space, a further one is looked at only when the one before it has had its turn.
class DetourFinder {
public:
    /// All arguments must outlive the object.
    DetourFinder(const Survey& survey, const Network& network, RemainingWays& ways, OrderedSteps& ordered,
                 const RunContext& context);

    /// `first_steps` in the order of OrderedSteps; of these only links for which `allowed` says true. `last_link`: the
    /// link by which the space was entered, if any; lengths are counted from it. The answer is the beginning of the way:
    /// after its last step, unless that ends, it goes on by RemainingWays::best_after.
    [[nodiscard]] std::optional<std::vector<Step>> find(std::span<const Step> first_steps,
                                                        const std::function<bool(std::uint32_t link)>& allowed,
                                                        std::optional<std::uint32_t> last_link, const UsedSpaces& used);

private:
    static constexpr std::uint32_t none = static_cast<std::uint32_t>(-1);

    /// The steps out of one place of the search, of which the first `next` have been pushed or passed over.
    struct Branch {
        std::span<const Step> steps;
        std::size_t next = 0;
        std::uint32_t parent = none;                       ///< the label that leads here
        std::uint32_t group = 0;                           ///< number of the group pushed last
        WidthTallies::Tally before = WidthTallies::empty;  ///< of the steps that lead here
        std::int64_t length = 0;                           ///< to the gap of the last of them
        std::optional<std::uint32_t> last_link = std::nullopt;
    };
    /// A way from the start of the search: its last step, and the branch that it is one of.
    struct Label {
        Step step;
        std::uint32_t branch = 0;
        std::uint32_t group = 0;
        std::uint32_t depth = 1;
        std::int64_t length = 0;         ///< to the gap of this step
        std::int64_t whole_length = -1;  ///< with the best way on; worked out when first needed
    };
    /// A space that was left once: the tally it was reached with, and by which links (those with that tally).
    struct Reached {
        WidthTallies::Sum sum;
        std::vector<std::uint32_t> links;
    };

    [[nodiscard]] WidthTallies::Sum so_far(const Label& label) const;
    [[nodiscard]] WidthTallies::Sum whole(const Label& label) const;
    [[nodiscard]] std::int64_t whole_length(std::uint32_t label);
    [[nodiscard]] bool comes_later(std::uint32_t x, std::uint32_t y);
    [[nodiscard]] int compare_ids(std::uint32_t x, std::uint32_t y) const;
    [[nodiscard]] std::uint32_t parent_of(std::uint32_t label) const { return branches_[labels_[label].branch].parent; }
    [[nodiscard]] bool first_arrival(const Label& label);
    void push_group(std::uint32_t branch, const std::function<bool(std::uint32_t)>& allowed, const UsedSpaces& used);
    [[nodiscard]] bool goes_straight_on(Step step, const UsedSpaces& used);
    [[nodiscard]] std::vector<Step> steps_to(std::uint32_t label) const;

    const Survey& survey_;
    const Network& network_;
    RemainingWays& ways_;
    OrderedSteps& ordered_;
    const RunContext& context_;
    std::vector<Branch> branches_;
    std::vector<Label> labels_;
    std::vector<std::uint32_t> waiting_;  ///< heap of labels
    std::unordered_map<std::uint32_t, Reached> reached_;
};

}  // namespace seamward
