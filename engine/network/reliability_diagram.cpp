// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/reliability_diagram.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <deque>

namespace seamward::reliability {

namespace {

constexpr std::size_t most_slots = 64;  ///< of a frontier; wider ones have too many partitions anyway

/// An order of the nodes; edges follow in the order in which both ends have come.
struct Order {
    std::vector<std::uint32_t> place;  ///< of each node
    double effort = 0;                 ///< about how many states it costs, to compare orders
};

/// Breadth first, or always the node that widens the frontier least. O(edges) or O(edges * widest frontier).
Order order_from(const Graph& graph, const Ways& ways, std::uint32_t start, bool breadth_first) {
    Order order{.place = std::vector<std::uint32_t>(graph.nodes, none)};
    std::vector<std::uint32_t> to_come(graph.nodes);
    for (std::uint32_t node = 0; node < graph.nodes; ++node) to_come[node] = static_cast<std::uint32_t>(ways[node].size());
    std::deque<std::uint32_t> candidates{start};
    std::vector<bool> is_met(graph.nodes, false);
    is_met[start] = true;
    const auto growth = [&](std::uint32_t node) {
        int grows = to_come[node] > 0 ? 1 : 0;
        for (const Way& way : ways[node]) grows -= order.place[way.to] != none && to_come[way.to] == 1 ? 1 : 0;
        return grows;
    };
    int width = 0;
    for (std::uint32_t count = 0; !candidates.empty(); ++count) {
        auto best = candidates.begin();
        if (!breadth_first) {
            std::vector<int> grows;
            for (const std::uint32_t node : candidates) grows.push_back(growth(node));
            best += std::min_element(grows.begin(), grows.end()) - grows.begin();
        }
        const std::uint32_t node = *best;
        candidates.erase(best);
        constexpr double per_slot = 3;  // states multiply by about so much for every node of the frontier
        order.effort += std::pow(per_slot, width + 1) * static_cast<double>(ways[node].size() - to_come[node] + 1);
        width += growth(node);
        order.place[node] = count;
        for (const Way& way : ways[node]) {
            --to_come[way.to];
            if (!is_met[way.to]) candidates.push_back(way.to);
            is_met[way.to] = true;
        }
    }
    return order;
}

/// Sorts the edges so that the frontier stays narrow: the best of breadth first from the source and, as far as it costs
/// little, narrow first from every node.
void sort_for_narrow_frontier(Graph& graph) {
    constexpr std::size_t most_work = 20'000'000;
    const Ways ways = ways_of(graph);
    Order best = order_from(graph, ways, source, true);
    const std::size_t work = std::size_t{graph.nodes} * graph.edges.size() + 1;
    for (std::uint32_t start = 0; start < std::min<std::size_t>(graph.nodes, most_work / work); ++start) {
        Order order = order_from(graph, ways, start, false);
        if (order.effort < best.effort) best = std::move(order);
    }
    const auto key = [&](const Edge& edge) {
        return std::pair(std::max(best.place[edge.a], best.place[edge.b]), std::min(best.place[edge.a], best.place[edge.b]));
    };
    std::sort(graph.edges.begin(), graph.edges.end(), [&](const Edge& x, const Edge& y) { return key(x) < key(y); });
}

/// Labels of the slots of a frontier, equal for nodes that open edges join. 0 is the source's, 1 the sink's, others by
/// first appearance. Unused slots are 0.
using State = std::array<std::uint8_t, most_slots>;

/// What an edge does to a frontier.
struct Step {
    std::uint8_t a = 0, b = 0;          ///< slots
    std::uint8_t before = 0, with = 0;  ///< slots before, and with the ends of the edge
    State entering{};                   ///< labels of the slots from `before` to `with`
    std::vector<std::uint8_t> staying;  ///< slots
    std::array<bool, 2> has_come{};     ///< source, sink
};

/// Nothing when a frontier gets too wide.
std::optional<std::vector<Step>> plan(const Graph& graph) {
    std::vector<std::uint32_t> last(graph.nodes, 0);
    for (std::uint32_t i = 0; i < graph.edges.size(); ++i) last[graph.edges[i].a] = last[graph.edges[i].b] = i;
    std::vector<Step> steps;
    std::vector<std::uint32_t> frontier;
    std::array<bool, 2> has_come{};
    for (std::uint32_t i = 0; i < graph.edges.size(); ++i) {
        Step step{.before = static_cast<std::uint8_t>(frontier.size())};
        const auto slot_of = [&](std::uint32_t node) {
            const auto slot = static_cast<std::size_t>(std::find(frontier.begin(), frontier.end(), node) - frontier.begin());
            if (slot < frontier.size()) return static_cast<std::uint8_t>(slot);
            if (node <= sink) has_come[node] = true;
            if (slot + 2 < most_slots) step.entering[slot] = static_cast<std::uint8_t>(node <= sink ? node : slot + 2);
            frontier.push_back(node);
            return static_cast<std::uint8_t>(slot);
        };
        step.a = slot_of(graph.edges[i].a);
        step.b = slot_of(graph.edges[i].b);
        if (frontier.size() + 2 >= most_slots) return std::nullopt;
        step.with = static_cast<std::uint8_t>(frontier.size());
        step.has_come = has_come;
        std::vector<std::uint32_t> rest;
        for (std::size_t slot = 0; slot < frontier.size(); ++slot) {
            if (last[frontier[slot]] == i) continue;
            step.staying.push_back(static_cast<std::uint8_t>(slot));
            rest.push_back(frontier[slot]);
        }
        frontier = std::move(rest);
        steps.push_back(std::move(step));
    }
    return steps;
}

/// The states of one layer, each once, numbered as they come.
class Layer {
public:
    explicit Layer(std::size_t slots) : bytes_((slots + 7) / 8 * 8), table_(64, none) {}
    [[nodiscard]] std::uint32_t size() const { return count_; }
    [[nodiscard]] State operator[](std::size_t i) const {
        State state{};
        if (bytes_ > 0) std::memcpy(state.data(), states_.data() + i * bytes_, bytes_);
        return state;
    }
    std::uint32_t number_of(const State& state) {
        if (std::size_t{count_} * 2 >= table_.size()) grow();
        std::uint32_t& place = table_[place_of(state)];
        if (place == none) {
            states_.insert(states_.end(), state.begin(), state.begin() + static_cast<std::ptrdiff_t>(bytes_));
            place = count_++;
        }
        return place;
    }

private:
    [[nodiscard]] std::size_t place_of(const State& state) const {
        std::uint64_t hash = 0;
        for (std::size_t i = 0; i < bytes_; i += 8) {
            std::uint64_t word = 0;
            std::memcpy(&word, state.data() + i, 8);
            hash = (hash ^ word) * 0x9e3779b97f4a7c15ULL;
            hash ^= hash >> 29U;
        }
        for (std::size_t place = hash & (table_.size() - 1);; place = (place + 1) & (table_.size() - 1)) {
            if (table_[place] == none || bytes_ == 0) return place;
            if (std::memcmp(states_.data() + table_[place] * bytes_, state.data(), bytes_) == 0) return place;
        }
    }
    void grow() {
        table_.assign(table_.size() * 2, none);
        for (std::uint32_t i = 0; i < count_; ++i) table_[place_of((*this)[i])] = i;
    }

    std::size_t bytes_;
    std::uint32_t count_ = 0;
    std::vector<std::uint8_t> states_;
    std::vector<std::uint32_t> table_;  ///< open addressing; a power of two
};

constexpr std::uint32_t failed = 0, joined = 1, undecided = 2;

/// `state` after the edge of a step.
std::uint32_t follow(const Step& step, bool is_open, State& state) {
    const std::uint8_t low = std::min(state[step.a], state[step.b]), high = std::max(state[step.a], state[step.b]);
    if (is_open && low == source && high == sink) return joined;
    State rest{}, name{};
    std::array<bool, 2> is_here{};
    for (std::uint8_t slot = 0, names = sink + 1; slot < step.staying.size(); ++slot) {
        std::uint8_t label = state[step.staying[slot]];
        if (is_open && label == high) label = low;
        if (label <= sink)
            is_here[label] = true;
        else if (name[label] == 0)
            name[label] = names++;
        rest[slot] = label <= sink ? label : name[label];
    }
    state = rest;
    return is_here == step.has_come ? undecided : failed;
}

/// States numbered through all layers; the first two are `failed` and `joined`, the third is the root. Successors have
/// greater numbers than what they follow, or are one of the two.
struct Diagram {
    std::vector<std::array<std::uint32_t, 2>> next{{failed, failed}, {joined, joined}};  ///< edge shut, edge open
    std::vector<std::uint32_t> first;                                                    ///< of each layer, one a step
};

/// Nothing when it gets too large.
std::optional<Diagram> make_diagram(const Graph& graph, std::size_t most_states) {
    const std::optional<std::vector<Step>> steps = plan(graph);
    if (!steps || most_states == 0) return std::nullopt;
    most_states = std::min<std::size_t>(most_states, none / 2);
    Diagram diagram;
    Layer layer(0);
    layer.number_of({});
    for (const Step& step : *steps) {
        Layer after(step.staying.size());
        diagram.first.push_back(static_cast<std::uint32_t>(diagram.next.size()));
        const std::uint32_t base = diagram.first.back() + layer.size();
        for (std::uint32_t i = 0; i < layer.size(); ++i) {
            State state = layer[i];
            std::copy_n(step.entering.begin() + step.before, step.with - step.before, state.begin() + step.before);
            std::array<std::uint32_t, 2> next{};
            for (const bool is_open : {false, true}) {
                State then = state;
                const std::uint32_t outcome = follow(step, is_open, then);
                next[is_open ? 1 : 0] = outcome == undecided ? base + after.number_of(then) : outcome;
            }
            diagram.next.push_back(next);
            if (base - undecided + after.size() > most_states) return std::nullopt;
        }
        layer = std::move(after);
    }
    return diagram;
}

/// Up the diagram for the chance of being joined from each state, down for that of coming there: the slope by an edge is
/// the sum over its states. Linear.
Answer read_diagram(const Diagram& diagram, const Graph& graph, const Tape& tape) {
    std::vector<double> joins(diagram.next.size(), 0), comes(diagram.next.size(), 0);
    joins[joined] = comes[undecided] = 1;
    const auto end_of = [&](std::size_t step) {
        return step + 1 < diagram.first.size() ? diagram.first[step + 1] : joins.size();
    };
    for (std::size_t step = graph.edges.size(); step-- > 0;) {
        const double open = tape[graph.edges[step].chance];
        for (std::size_t i = diagram.first[step]; i < end_of(step); ++i)
            joins[i] = (1 - open) * joins[diagram.next[i][0]] + open * joins[diagram.next[i][1]];
    }
    Answer answer{.slopes = std::vector<double>(tape.size(), 0)};
    for (std::size_t step = 0; step < graph.edges.size(); ++step) {
        const double open = tape[graph.edges[step].chance];
        for (std::size_t i = diagram.first[step]; i < end_of(step); ++i) {
            const auto [shut_next, open_next] = diagram.next[i];
            answer.slopes[graph.edges[step].chance] += comes[i] * (joins[open_next] - joins[shut_next]);
            comes[shut_next] += comes[i] * (1 - open);
            comes[open_next] += comes[i] * open;
        }
    }
    answer.now.chance = std::clamp(joins[undecided], 0.0, 1.0);
    answer.now.low = answer.now.high = answer.now.chance;
    return answer;
}

}  // namespace

std::optional<Answer> answer_by_diagram(Graph& graph, const Tape& tape, std::size_t most_states) {
    sort_for_narrow_frontier(graph);
    const std::optional<Diagram> diagram = make_diagram(graph, most_states);
    if (!diagram) return std::nullopt;
    return read_diagram(*diagram, graph, tape);
}

}  // namespace seamward::reliability
