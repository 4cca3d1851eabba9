// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/remaining_ways.h"

#include <algorithm>
#include <numeric>
#include <queue>

#include "network/spanning.h"
#include "network/width_sort.h"
#include "paths/entry_path.h"

namespace seamward {

namespace {

/// The links' widths by rank, 0 for the smallest; equal widths have one rank.
struct Ranks {
    std::vector<WidthTallies::Rank> of_link;
    WidthTallies::Rank count = 0;
};

Ranks ranks_of(const Network& network) {
    struct Entry {
        double width;
        std::uint32_t link;
    };
    std::vector<Entry> entries;
    entries.reserve(network.links().size());
    for (std::uint32_t i = 0; i < network.links().size(); ++i) entries.push_back({network.links()[i].width, i});
    sort_wide_to_narrow(entries);
    Ranks ranks{std::vector<WidthTallies::Rank>(entries.size())};
    for (std::size_t i = entries.size(); i-- > 0;) {
        ranks.count += i + 1 == entries.size() || entries[i].width != entries[i + 1].width ? 1 : 0;
        ranks.of_link[entries[i].link] = ranks.count - 1;
    }
    return ranks;
}

/// An edge between two passable spaces, or between one and the node that stands for all ends.
struct Edge {
    std::uint32_t a, b;
    double width;
    std::uint32_t link;
    SpaceIndex end;  ///< the ending space when b is the end node
};

}  // namespace

RemainingWays::RemainingWays(const Survey& survey, const Network& network, const Roles& roles, bool by_length,
                             const RunContext& context)
    : survey_(survey),
      network_(network),
      context_(context),
      by_length_(by_length),
      tallies_(0),
      tally_(network.space_count() + 1, unreached),
      exits_(network.space_count()) {
    Ranks ranks = ranks_of(network);
    tallies_ = WidthTallies(ranks.count);
    rank_ = std::move(ranks.of_link);
    context.check();
    keep_spanning_steps(roles);
    context.check();
    reach_all();
}

void RemainingWays::keep_spanning_steps(const Roles& roles) {
    const auto end_node = static_cast<std::uint32_t>(network_.space_count());
    const auto for_each_edge = [&](auto&& wanted, auto&& sink) {
        for (std::uint32_t i = 0; i < network_.links().size(); ++i) {
            const Link& link = network_.links()[i];
            if (!wanted(link.width)) continue;
            const bool a = roles.passable(link.a);
            const bool b = roles.passable(link.b);
            if (a && b) sink(Edge{link.a.value, link.b.value, link.width, i, {}});
            if (a && roles.ends(link.b)) sink(Edge{link.a.value, end_node, link.width, i, link.b});
            if (b && roles.ends(link.a)) sink(Edge{link.b.value, end_node, link.width, i, link.a});
        }
    };
    UnionFind sets(end_node + 1);
    std::vector<Edge> kept;
    std::size_t joined = 0;
    visit_spanning_classes<Edge>(network_, sets, for_each_edge, [&](std::span<const Edge> alike) {
        for (const Edge& edge : alike) {
            kept.push_back(edge);
            const std::uint32_t a = sets.find(edge.a);
            const std::uint32_t b = sets.find(edge.b);
            if (a == b) continue;
            sets.join(a, b);
            ++joined;
        }
    });
    forest_ = joined == kept.size();
    first_step_.assign(end_node + 2, 0);
    for (const Edge& edge : kept) {
        ++first_step_[edge.a];
        ++first_step_[edge.b];
    }
    std::exclusive_scan(first_step_.begin(), first_step_.end(), first_step_.begin(), std::uint32_t{0});
    std::vector<std::uint32_t> next(first_step_.begin(), first_step_.end() - 1);
    steps_.resize(kept.size() * 2);
    for (const Edge& edge : kept) {
        const bool ends = edge.b == end_node;
        steps_[next[edge.a]++] = {edge.link, ends ? edge.end : SpaceIndex{edge.b}, ends};
        steps_[next[edge.b]++] = {edge.link, {edge.a}, false};
    }
}

void RemainingWays::reach_all() {
    const auto end_node = static_cast<std::uint32_t>(network_.space_count());
    struct Candidate {
        WidthTallies::Tally after;
        WidthTallies::Rank rank;
        std::uint32_t space;
    };
    const auto sum = [](const Candidate& c) { return WidthTallies::Sum{{c.after, WidthTallies::empty}, c.rank}; };
    const auto later = [&](const Candidate& x, const Candidate& y) { return tallies_.compare(sum(x), sum(y)) > 0; };
    std::vector<Candidate> waiting;  // a heap, or a stack where the spanning edges leave no choice
    const auto spread = [&](std::uint32_t node) {
        for (std::uint32_t i = first_step_[node]; i < first_step_[node + 1]; ++i) {
            if (steps_[i].ends || tally_[steps_[i].to.value] != unreached) continue;
            waiting.push_back({tally_[node], rank_[steps_[i].link], steps_[i].to.value});
            if (!forest_) std::push_heap(waiting.begin(), waiting.end(), later);
        }
    };
    tally_[end_node] = WidthTallies::empty;
    spread(end_node);
    std::size_t steps = 0;
    while (!waiting.empty()) {
        if (++steps % 4096 == 0) context_.check();
        if (!forest_) std::pop_heap(waiting.begin(), waiting.end(), later);
        const Candidate best = waiting.back();
        waiting.pop_back();
        if (tally_[best.space] != unreached) continue;
        tally_[best.space] = tallies_.plus(best.after, best.rank);
        spread(best.space);
    }
}

std::int64_t RemainingWays::hop(std::uint32_t from, std::uint32_t to) const {
    return by_length_ ? nanometers_between(position(from), position(to)) : 0;
}

RemainingWays::Exits& RemainingWays::exits(SpaceIndex space) {
    std::unique_ptr<Exits>& exits = exits_[space.value];
    if (exits) return *exits;
    exits = std::make_unique<Exits>();
    const WidthTallies::Sum best{{tally(space), WidthTallies::empty}};
    for (std::uint32_t i = first_step_[space.value]; i < first_step_[space.value + 1]; ++i) {
        const Step& step = steps_[i];
        if ((step.ends || open(step.to)) && tallies_.equal(ahead(step), best)) exits->steps.push_back(step);
    }
    const auto id = [&](const Step& step) -> const std::string& { return survey_[network_.links()[step.link].gap].id; };
    std::sort(exits->steps.begin(), exits->steps.end(), [&](const Step& a, const Step& b) { return id(a) < id(b); });
    return *exits;
}

/// Works out the lengths behind all exits of a space, and first those of the spaces that they lead to: best ways get
/// strictly better step by step, so that this ends. A stack of our own, since ways can be as long as there are spaces.
void RemainingWays::measure(SpaceIndex space) {
    std::vector<SpaceIndex> waiting{space};
    while (!waiting.empty()) {
        context_.check();
        Exits& here = exits(waiting.back());
        const std::size_t before = waiting.size();
        if (!here.by_length) {
            for (const Step& step : here.steps) {
                if (!step.ends && !exits(step.to).by_length) waiting.push_back(step.to);
            }
        }
        if (waiting.size() > before) continue;
        waiting.pop_back();
        if (here.by_length) continue;
        std::vector<NearestExit::Exit> measured;
        measured.reserve(here.steps.size());
        for (const Step& step : here.steps) {
            const Point& at = position(step.link);
            measured.push_back({at, step.ends ? 0 : exits(step.to).by_length->shortest(at)});
        }
        here.by_length = std::make_unique<NearestExit>(std::move(measured));
    }
}

std::int64_t RemainingWays::length_ahead(const Step& step) {
    if (!by_length_ || step.ends) return 0;
    const auto [known, is_new] = length_ahead_.try_emplace((std::uint64_t{step.link} << 32U) | step.to.value, 0);
    if (is_new) {
        measure(step.to);
        known->second = exits(step.to).by_length->shortest(position(step.link));
    }
    return known->second;
}

Step RemainingWays::best_after(const Step& step) {
    if (by_length_) measure(step.to);
    const Exits& here = exits(step.to);
    if (!by_length_ || here.steps.size() == 1) return here.steps.front();
    const Point& from = position(step.link);
    return here.steps[here.by_length->first_of_length(from, here.by_length->shortest(from))];
}

}  // namespace seamward
