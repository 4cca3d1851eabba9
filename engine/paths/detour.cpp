// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/detour.h"

#include <algorithm>

namespace seamward {

DetourFinder::DetourFinder(const Survey& survey, const Network& network, const Roles& roles, RemainingWays& ways,
                           const RunContext& context)
    : survey_(survey), network_(network), roles_(roles), ways_(ways), context_(context) {}

void DetourFinder::steps_from(SpaceIndex space, std::vector<Step>& steps) const {
    steps.clear();
    for (const Arc& arc : network_.arcs(space)) {
        if (roles_.ends(arc.to)) steps.push_back({arc.link, arc.to, true});
        if (roles_.passable(arc.to) && ways_.open(arc.to)) steps.push_back({arc.link, arc.to, false});
    }
}

std::optional<std::vector<Step>> DetourFinder::find(std::span<const Step> first_steps, std::optional<std::uint32_t> last_link,
                                                    const UsedSpaces& used) {
    labels_.clear();
    waiting_.clear();
    reached_.clear();
    for (const Step& step : first_steps)
        push({step, none, 1, WidthTallies::empty, last_link ? ways_.hop(*last_link, step.link) : 0});
    const auto later = [this](std::uint32_t x, std::uint32_t y) { return comes_later(x, y); };
    while (!waiting_.empty()) {
        context_.check();
        std::pop_heap(waiting_.begin(), waiting_.end(), later);
        const std::uint32_t best = waiting_.back();
        waiting_.pop_back();
        const Label label = labels_[best];
        if (!label.step.ends && !first_arrival(label)) continue;
        if (auto steps = straight_on(best, used)) return steps;
        const WidthTallies::Tally before = ways_.tallies().plus(label.before, ways_.rank(label.step.link));
        steps_from(label.step.to, scratch_);
        for (const Step& step : scratch_) {
            if (used.has(step.to)) continue;
            push({step, best, label.depth + 1, before, label.length + ways_.hop(label.step.link, step.link)});
        }
    }
    return std::nullopt;
}

void DetourFinder::push(const Label& label) {
    labels_.push_back(label);
    waiting_.push_back(static_cast<std::uint32_t>(labels_.size() - 1));
    std::push_heap(waiting_.begin(), waiting_.end(), [this](std::uint32_t x, std::uint32_t y) { return comes_later(x, y); });
}

WidthTallies::Sum DetourFinder::whole(const Label& label) const {
    WidthTallies::Sum sum = ways_.ahead(label.step);
    sum.parts[1] = label.before;
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

/// By the gap ids from the start on; a way that is the beginning of the other comes first.
int DetourFinder::compare_ids(std::uint32_t x, std::uint32_t y) const {
    const bool x_longer = labels_[x].depth > labels_[y].depth;
    const bool same_depth = labels_[x].depth == labels_[y].depth;
    while (labels_[x].depth > labels_[y].depth) x = labels_[x].parent;
    while (labels_[y].depth > labels_[x].depth) y = labels_[y].parent;
    int order = 0;
    for (; x != y; x = labels_[x].parent, y = labels_[y].parent) {
        const std::uint32_t x_link = labels_[x].step.link;
        const std::uint32_t y_link = labels_[y].step.link;
        if (x_link != y_link) order = survey_[network_.links()[x_link].gap].id.compare(survey_[network_.links()[y_link].gap].id);
        if (labels_[x].parent == none) break;
    }
    if (order != 0 || same_depth) return order;
    return x_longer ? 1 : -1;
}

/// Whether the space is reached for the first time; where length counts, also whether by a new gap with the same
/// widths, since what lies behind the gap decides how long the rest is.
bool DetourFinder::first_arrival(const Label& label) {
    const WidthTallies::Sum sum{{label.before, WidthTallies::empty}, ways_.rank(label.step.link)};
    const auto [at, is_new] = reached_.try_emplace(label.step.to.value, Reached{sum, {label.step.link}});
    if (is_new) return true;
    Reached& reached = at->second;
    if (!ways_.by_length() || !ways_.tallies().equal(reached.sum, sum)) return false;
    if (std::find(reached.links.begin(), reached.links.end(), label.step.link) != reached.links.end()) return false;
    reached.links.push_back(label.step.link);
    return true;
}

/// The label's way and the best way on after it, unless that runs into a used space.
std::optional<std::vector<Step>> DetourFinder::straight_on(std::uint32_t label, const UsedSpaces& used) {
    std::vector<Step> on;
    for (Step step = labels_[label].step; !step.ends;) {
        step = ways_.best_after(step);
        if (used.has(step.to)) return std::nullopt;
        on.push_back(step);
    }
    std::vector<Step> steps;
    for (std::uint32_t i = label; i != none; i = labels_[i].parent) steps.push_back(labels_[i].step);
    std::reverse(steps.begin(), steps.end());
    steps.insert(steps.end(), on.begin(), on.end());
    return steps;
}

}  // namespace seamward
