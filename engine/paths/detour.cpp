// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/detour.h"

#include <algorithm>

namespace seamward {

DetourFinder::DetourFinder(const Survey& survey, const Network& network, RemainingWays& ways, OrderedSteps& ordered,
                           const RunContext& context)
    : survey_(survey), network_(network), ways_(ways), ordered_(ordered), context_(context) {}

std::optional<std::vector<Step>> DetourFinder::find(std::span<const Step> first_steps,
                                                    const std::function<bool(std::uint32_t)>& allowed,
                                                    std::optional<std::uint32_t> last_link, const UsedSpaces& used) {
    branches_.clear();
    labels_.clear();
    waiting_.clear();
    reached_.clear();
    branches_.push_back({.steps = first_steps, .last_link = last_link});
    push_group(0, allowed, used);
    const auto later = [this](std::uint32_t x, std::uint32_t y) { return comes_later(x, y); };
    while (!waiting_.empty()) {
        context_.check();
        std::pop_heap(waiting_.begin(), waiting_.end(), later);
        const std::uint32_t best = waiting_.back();
        waiting_.pop_back();
        const Label label = labels_[best];
        if (branches_[label.branch].group == label.group) push_group(label.branch, allowed, used);
        if (!label.step.ends && !first_arrival(label)) continue;
        if (goes_straight_on(label.step, used)) return steps_to(best);
        const WidthTallies::Tally before = ways_.tallies().plus(branches_[label.branch].before, ways_.rank(label.step.link));
        branches_.push_back({ordered_.from(label.step.to), 0, best, 0, before, label.length, label.step.link});
        push_group(static_cast<std::uint32_t>(branches_.size() - 1), allowed, used);
    }
    return std::nullopt;
}

/// Pushes the next step of a branch; where length counts, all that have the same widths, since their order depends on
/// where the branch comes from.
void DetourFinder::push_group(std::uint32_t index, const std::function<bool(std::uint32_t)>& allowed, const UsedSpaces& used) {
    const auto later = [this](std::uint32_t x, std::uint32_t y) { return comes_later(x, y); };
    Branch& branch = branches_[index];
    ++branch.group;
    std::optional<WidthTallies::Sum> widths;
    for (; branch.next < branch.steps.size(); ++branch.next) {
        const Step& step = branch.steps[branch.next];
        const WidthTallies::Sum ahead = ways_.ahead(step);
        if (widths && !(ways_.by_length() && ways_.tallies().equal(*widths, ahead))) return;
        if (used.has(step.to) || (branch.parent == none && !allowed(step.link))) continue;
        widths = ahead;
        const std::uint32_t depth = branch.parent == none ? 1 : labels_[branch.parent].depth + 1;
        const std::int64_t length = branch.length + (branch.last_link ? ways_.hop(*branch.last_link, step.link) : 0);
        labels_.push_back({step, index, branch.group, depth, length});
        waiting_.push_back(static_cast<std::uint32_t>(labels_.size() - 1));
        std::push_heap(waiting_.begin(), waiting_.end(), later);
    }
}

WidthTallies::Sum DetourFinder::so_far(const Label& label) const {
    return {{branches_[label.branch].before, WidthTallies::empty}, ways_.rank(label.step.link)};
}

WidthTallies::Sum DetourFinder::whole(const Label& label) const {
    WidthTallies::Sum sum = ways_.ahead(label.step);
    sum.parts[1] = branches_[label.branch].before;
    return sum;
}

std::int64_t DetourFinder::whole_length(std::uint32_t index) {
    Label& label = labels_[index];
    if (label.whole_length < 0) label.whole_length = label.length + ways_.length_ahead(label.step);
    return label.whole_length;
}

bool DetourFinder::comes_later(std::uint32_t x, std::uint32_t y) {
    const auto order = ways_.tallies().compare(whole(labels_[x]), whole(labels_[y]));
    if (order != 0) return order > 0;
    if (ways_.by_length()) {
        const std::int64_t x_length = whole_length(x);
        const std::int64_t y_length = whole_length(y);
        if (x_length != y_length) return x_length > y_length;
    }
    return compare_ids(x, y) > 0;
}

/// By the gap ids from the start on. Two labels that wait with the same widths differ in some gap: one that begins the
/// other has had its turn before the other was pushed.
int DetourFinder::compare_ids(std::uint32_t x, std::uint32_t y) const {
    while (labels_[x].depth > labels_[y].depth) x = parent_of(x);
    while (labels_[y].depth > labels_[x].depth) y = parent_of(y);
    int order = 0;
    for (; x != none && x != y; x = parent_of(x), y = parent_of(y)) {
        const std::uint32_t x_link = labels_[x].step.link;
        const std::uint32_t y_link = labels_[y].step.link;
        if (x_link != y_link) order = survey_[network_.links()[x_link].gap].id.compare(survey_[network_.links()[y_link].gap].id);
    }
    return order;
}

/// Whether the space is reached for the first time; where length counts, also whether by a new gap with the same
/// widths, since what lies behind the gap decides how long the rest is.
bool DetourFinder::first_arrival(const Label& label) {
    const WidthTallies::Sum sum = so_far(label);
    const auto [at, is_new] = reached_.try_emplace(label.step.to.value, Reached{sum, {label.step.link}});
    if (is_new) return true;
    Reached& reached = at->second;
    if (!ways_.by_length() || !ways_.tallies().equal(reached.sum, sum)) return false;
    if (std::find(reached.links.begin(), reached.links.end(), label.step.link) != reached.links.end()) return false;
    reached.links.push_back(label.step.link);
    return true;
}

bool DetourFinder::goes_straight_on(Step step, const UsedSpaces& used) {
    while (!step.ends) {
        step = ways_.best_after(step);
        if (used.has(step.to)) return false;
    }
    return true;
}

std::vector<Step> DetourFinder::steps_to(std::uint32_t label) const {
    std::vector<Step> steps;
    for (std::uint32_t i = label; i != none; i = parent_of(i)) steps.push_back(labels_[i].step);
    std::reverse(steps.begin(), steps.end());
    return steps;
}

}  // namespace seamward
