// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/cut.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <stdexcept>

#include "graph/flow.h"
#include "graph/union_find.h"
#include "network/width_sort.h"

namespace seamward {

namespace {

constexpr std::uint32_t nowhere = std::numeric_limits<std::uint32_t>::max();
constexpr std::uint32_t blocked = nowhere - 1;  // of a space that no path leads to

/// The links as edges between few nodes: all starts are one, and so are all ends.
class Ways {
public:
    static constexpr std::uint32_t outside = 0, inside = 1;

    Ways(const Roles& roles, std::size_t space_count, std::span<const PricedLink> links) : links_(links) {
        node_.assign(space_count, nowhere);
        std::int64_t sum = 0;
        for (const PricedLink& link : links) {
            enter(roles, link.a);
            enter(roles, link.b);
            if (!link.price) continue;
            if (link.price->cents < 0 || link.price->cents >= GrowingFlow::most_flow - sum)
                throw std::overflow_error("prices add up to more than can be counted");
            sum += link.price->cents;
        }
    }

    [[nodiscard]] std::uint32_t nodes() const { return next_; }
    [[nodiscard]] std::uint32_t a(std::uint32_t link) const { return node_[links_[link].a.value]; }
    [[nodiscard]] std::uint32_t b(std::uint32_t link) const { return node_[links_[link].b.value]; }
    [[nodiscard]] const PricedLink& operator[](std::uint32_t link) const { return links_[link]; }
    [[nodiscard]] bool leads_somewhere(std::uint32_t link) const {
        return a(link) != b(link) && a(link) != blocked && b(link) != blocked;
    }

    [[nodiscard]] FlowEdge edge(std::uint32_t link) const {
        const std::optional<Money>& price = links_[link].price;
        const std::int64_t capacity = price ? price->cents : GrowingFlow::most_flow;
        return {a(link), b(link), capacity, capacity};
    }

private:
    void enter(const Roles& roles, SpaceIndex space) {
        std::uint32_t& node = node_[space.value];
        if (node != nowhere) return;
        node = roles.starts(space) ? outside : roles.ends(space) ? inside : roles.passable(space) ? next_++ : blocked;
    }

    std::span<const PricedLink> links_;
    std::vector<std::uint32_t> node_;
    std::uint32_t next_ = 2;
};

/// A way from outside to inside along the given links; empty when there is none. The fewest links; ties by their order.
LinkPath way_along(const Ways& ways, std::span<const std::uint32_t> links) {
    std::vector<std::vector<std::uint32_t>> at(ways.nodes());
    for (const std::uint32_t link : links) {
        at[ways.a(link)].push_back(link);
        at[ways.b(link)].push_back(link);
    }
    std::vector<std::uint32_t> by(ways.nodes(), nowhere);
    std::vector<std::uint32_t> waiting{Ways::outside};
    for (std::size_t i = 0; i < waiting.size() && by[Ways::inside] == nowhere; ++i) {
        for (const std::uint32_t link : at[waiting[i]]) {
            const std::uint32_t other = ways.a(link) == waiting[i] ? ways.b(link) : ways.a(link);
            if (other == Ways::outside || by[other] != nowhere) continue;
            by[other] = link;
            waiting.push_back(other);
        }
    }
    LinkPath path;
    if (by[Ways::inside] == nowhere) return path;
    for (std::uint32_t node = Ways::inside; node != Ways::outside;) {
        const std::uint32_t link = by[node];
        path.push_back(link);
        node = ways.a(link) == node ? ways.b(link) : ways.a(link);
    }
    std::reverse(path.begin(), path.end());
    return path;
}

/// The links from the source's side to the other one, less those behind which nothing leads inside: only links that cost
/// nothing can be such.
std::vector<std::uint32_t> links_across(const Ways& ways, const GrowingFlow& flow, std::span<const FlowEdge> edges,
                                        std::span<const std::uint32_t> order) {
    std::vector<std::uint32_t> across;
    bool free_ones = false;
    for (const std::uint32_t edge : flow.edges_across()) {
        across.push_back(order[edge]);
        free_ones = free_ones || edges[edge].along == 0;
    }
    std::sort(across.begin(), across.end());
    if (!free_ones) return across;
    UnionFind behind(ways.nodes());
    for (std::size_t i = 0; i < flow.open_edges(); ++i) {
        const std::uint32_t link = order[i];
        if (flow.on_source_side(ways.a(link)) || flow.on_source_side(ways.b(link))) continue;
        const std::uint32_t a = behind.find(ways.a(link));
        const std::uint32_t b = behind.find(ways.b(link));
        if (a != b) behind.join(a, b);
    }
    std::erase_if(across, [&](std::uint32_t link) {
        const std::uint32_t far = flow.on_source_side(ways.a(link)) ? ways.b(link) : ways.a(link);
        return behind.find(far) != behind.find(Ways::inside);
    });
    return across;
}

/// Takes a flow apart into ways in. Flow in circles is dropped.
class RouteFinder {
public:
    RouteFinder(const Ways& ways, const GrowingFlow& flow, std::span<const std::uint32_t> order)
        : left_(order.size()), place_(ways.nodes(), nowhere), out_(ways.nodes()) {
        for (std::uint32_t i = 0; i < order.size(); ++i) {
            const std::int64_t along = flow.flow(i);
            if (along == 0) continue;
            left_[i] = along < 0 ? -along : along;
            const std::uint32_t link = order[i];
            out_[along > 0 ? ways.a(link) : ways.b(link)].push_back({along > 0 ? ways.b(link) : ways.a(link), i});
        }
        order_ = order;
    }

    std::vector<CutRoute> all() {
        std::vector<CutRoute> routes;
        while (walk()) {
            std::int64_t amount = std::numeric_limits<std::int64_t>::max();
            for (const Step& step : steps_) amount = std::min(amount, left_[step.edge]);
            CutRoute route;
            for (const Step& step : steps_) {
                left_[step.edge] -= amount;
                route.links.push_back(order_[step.edge]);
            }
            route.amount = {amount};
            routes.push_back(std::move(route));
        }
        return routes;
    }

private:
    struct Step {
        std::uint32_t to, edge;
    };

    /// The next way from outside to inside, in `steps_`; false when no flow is left.
    bool walk() {
        for (const Step& step : steps_) place_[step.to] = nowhere;
        steps_.clear();
        place_[Ways::outside] = 0;
        std::uint32_t here = Ways::outside;
        while (here != Ways::inside) {
            std::vector<Step>& out = out_[here];
            while (!out.empty() && left_[out.back().edge] == 0) out.pop_back();
            if (out.empty()) return false;  // only outside: elsewhere as much leaves as comes in
            const Step step = out.back();
            steps_.push_back(step);
            here = step.to;
            if (place_[here] != nowhere)
                drop_circle(place_[here]);
            else
                place_[here] = static_cast<std::uint32_t>(steps_.size());
        }
        return true;
    }

    /// The steps from position `from` on lead round in a circle.
    void drop_circle(std::uint32_t from) {
        std::int64_t amount = std::numeric_limits<std::int64_t>::max();
        for (std::size_t i = from; i < steps_.size(); ++i) amount = std::min(amount, left_[steps_[i].edge]);
        for (std::size_t i = from; i < steps_.size(); ++i) {
            left_[steps_[i].edge] -= amount;
            if (i + 1 < steps_.size()) place_[steps_[i].to] = nowhere;
        }
        steps_.resize(from);
    }

    std::span<const std::uint32_t> order_;
    std::vector<std::int64_t> left_;
    std::vector<std::uint32_t> place_;  ///< how many steps lead to a node of the way under construction
    std::vector<std::vector<Step>> out_;
    std::vector<Step> steps_;
};

std::vector<FlowEdge> edges_of(const Ways& ways, std::span<const std::uint32_t> order) {
    std::vector<FlowEdge> edges;
    edges.reserve(order.size());
    for (const std::uint32_t link : order) edges.push_back(ways.edge(link));
    return edges;
}

/// Links that lead somewhere, in the order given.
std::vector<std::uint32_t> useful_links(const Ways& ways, std::size_t count) {
    std::vector<std::uint32_t> order;
    order.reserve(count);
    for (std::uint32_t link = 0; link < count; ++link) {
        if (ways.leads_somewhere(link)) order.push_back(link);
    }
    return order;
}

/// The same links in falling order of width. Of equally wide ones any may come first: the cut nearest to outdoors is the same.
std::vector<std::uint32_t> widest_first(std::vector<std::uint32_t> order, std::span<const PricedLink> links) {
    struct Sorted {
        double width;
        std::uint32_t link;
    };
    std::vector<Sorted> sorted;
    sorted.reserve(order.size());
    for (const std::uint32_t link : order) sorted.push_back({links[link].width, link});
    sort_wide_to_narrow(sorted);
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = sorted[i].link;
    return order;
}

/// Opens the links from the widest on.
class LadderClimber {
public:
    LadderClimber(const Ways& ways, std::span<const std::uint32_t> order)
        : ways_(ways), order_(order), edges_(edges_of(ways, order)) {}

    [[nodiscard]] std::size_t distinct_widths() const {
        std::size_t count = 0;
        for (std::size_t i = 0; i < order_.size(); ++i) count += i == 0 || width(i) != width(i - 1) ? 1 : 0;
        return count;
    }

    /// All rungs; those for whose number `wanted` says true with their links.
    template <class Wanted>
    [[nodiscard]] CutLadder climb(Wanted&& wanted) const {
        GrowingFlow flow(ways_.nodes(), Ways::outside, Ways::inside, edges_);
        UnionFind fixed(ways_.nodes());
        CutLadder ladder;
        std::vector<std::uint32_t> unshut;
        for (std::size_t begin = 0; begin < order_.size();) {
            std::size_t end = begin;
            for (; end < order_.size() && width(end) == width(begin); ++end) {
                if (ways_[order_[end]].price) continue;
                unshut.push_back(order_[end]);
                const std::uint32_t a = fixed.find(ways_.a(order_[end]));
                const std::uint32_t b = fixed.find(ways_.b(order_[end]));
                if (a != b) fixed.join(a, b);
            }
            if (fixed.find(Ways::outside) == fixed.find(Ways::inside)) {
                ladder.stopped_by = way_along(ways_, unshut);
                break;
            }
            const std::int64_t before = flow.value();
            flow.open(end - begin);
            if (flow.value() > before || !ladder.rungs.empty()) {
                // A width that costs nothing more belongs to the rung before; its set has to be one for that width too.
                if (flow.value() == before) ladder.rungs.pop_back();
                Rung rung{width(begin), {flow.value()}, {}};
                if (wanted(ladder.rungs.size())) rung.links = links_across(ways_, flow, edges_, order_);
                ladder.rungs.push_back(std::move(rung));
            }
            begin = end;
        }
        return ladder;
    }

private:
    [[nodiscard]] double width(std::size_t i) const { return ways_[order_[i]].width; }

    const Ways& ways_;
    std::span<const std::uint32_t> order_;
    std::vector<FlowEdge> edges_;
};

}  // namespace

Cut cheapest_cut(const Roles& roles, std::size_t space_count, std::span<const PricedLink> links) {
    const Ways ways(roles, space_count, links);
    const std::vector<std::uint32_t> order = useful_links(ways, links.size());
    Cut cut;
    std::vector<std::uint32_t> fixed;
    for (const std::uint32_t link : order) {
        if (!links[link].price) fixed.push_back(link);
    }
    cut.open_path = way_along(ways, fixed);
    cut.possible = cut.open_path.empty();
    if (!cut.possible) return cut;
    const std::vector<FlowEdge> edges = edges_of(ways, order);
    GrowingFlow flow(ways.nodes(), Ways::outside, Ways::inside, edges);
    flow.open(order.size());
    cut.price = {flow.value()};
    cut.links = links_across(ways, flow, edges, order);
    cut.routes = RouteFinder(ways, flow, order).all();
    return cut;
}

CutLadder cut_ladder(const Roles& roles, std::size_t space_count, std::span<const PricedLink> links, std::size_t most_rungs) {
    const Ways ways(roles, space_count, links);
    const std::vector<std::uint32_t> order = widest_first(useful_links(ways, links.size()), links);
    const LadderClimber climber(ways, order);
    if (climber.distinct_widths() <= most_rungs) return climber.climb([](std::size_t) { return true; });
    const CutLadder all = climber.climb([](std::size_t) { return false; });
    const std::size_t count = all.rungs.size();
    if (count <= most_rungs) return climber.climb([](std::size_t) { return true; });
    std::vector<bool> wanted(count, false);
    for (std::size_t i = 0; i < most_rungs; ++i) wanted[i * (count - 1) / (most_rungs - 1)] = true;
    CutLadder ladder = climber.climb([&](std::size_t rung) { return wanted[rung]; });
    std::size_t kept = 0;
    for (std::size_t i = 0; i < count; ++i) {
        if (!wanted[i]) continue;
        if (kept != i) ladder.rungs[kept] = std::move(ladder.rungs[i]);
        ++kept;
    }
    ladder.rungs.resize(kept);
    ladder.left_out = count - kept;
    return ladder;
}

}  // namespace seamward
