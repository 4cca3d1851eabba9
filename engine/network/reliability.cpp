// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/reliability.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <deque>
#include <limits>
#include <map>
#include <optional>
#include <stdexcept>

#include "network/union_find.h"

namespace seamward {

namespace {

constexpr std::uint32_t source = 0, sink = 1;  ///< in every Graph
constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

/// `chance` is the place of its probability on a Tape.
struct Edge {
    std::uint32_t a, b, chance;
};

struct Graph {
    std::uint32_t nodes = 2;
    std::vector<Edge> edges;
};

/// The probabilities of the given edges, then those of the edges that stand for two others: enough to carry slopes
/// back through the reductions by the chain rule (the answer is linear in each probability).
class Tape {
public:
    explicit Tape(std::span<const ChanceEdge> edges) : inputs_(edges.size()) {
        for (const ChanceEdge& edge : edges) chances_.push_back(edge.open);
    }
    [[nodiscard]] double operator[](std::size_t i) const { return chances_[i]; }
    [[nodiscard]] std::size_t size() const { return chances_.size(); }
    std::uint32_t series(std::uint32_t x, std::uint32_t y) { return add({x, y, true}, chances_[x] * chances_[y]); }
    std::uint32_t parallel(std::uint32_t x, std::uint32_t y) {
        return add({x, y, false}, 1 - (1 - chances_[x]) * (1 - chances_[y]));
    }
    /// From the slope of the answer by every entry that a reduced edge uses to the slopes by the given edges.
    [[nodiscard]] std::vector<double> slopes_of_inputs(std::vector<double> slopes) const {
        for (std::size_t i = chances_.size(); i-- > inputs_;) {
            const auto [x, y, is_series] = pairs_[i - inputs_];
            slopes[x] += slopes[i] * (is_series ? chances_[y] : 1 - chances_[y]);
            slopes[y] += slopes[i] * (is_series ? chances_[x] : 1 - chances_[x]);
        }
        slopes.resize(inputs_);
        return slopes;
    }

private:
    struct Pair {
        std::uint32_t x, y;
        bool is_series;
    };
    std::uint32_t add(const Pair& pair, double chance) {
        pairs_.push_back(pair);
        chances_.push_back(chance);
        return static_cast<std::uint32_t>(chances_.size() - 1);
    }

    std::size_t inputs_;
    std::vector<double> chances_;
    std::vector<Pair> pairs_;
};

struct Way {
    std::uint32_t to, edge;
};
using Ways = std::vector<std::vector<Way>>;

/// The ways out of each node, in the order of the edges.
Ways ways_of(const Graph& graph) {
    Ways ways(graph.nodes);
    for (std::uint32_t i = 0; i < graph.edges.size(); ++i) {
        ways[graph.edges[i].a].push_back({graph.edges[i].b, i});
        ways[graph.edges[i].b].push_back({graph.edges[i].a, i});
    }
    return ways;
}

/// Each set of nodes as one node, and no loops; with `fold`, no edges that are certain or impossible. Nothing when
/// the sets share a node.
std::optional<Graph> merged(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                            std::span<const std::uint32_t> to, bool fold) {
    UnionFind sets(std::size_t{nodes} + 2);
    const auto unite = [&](std::uint32_t x, std::uint32_t y) { sets.join(sets.find(x), sets.find(y)); };
    for (const std::uint32_t node : from) unite(nodes, node);
    for (const std::uint32_t node : to) unite(nodes + 1, node);
    for (const ChanceEdge& edge : edges) {
        if (fold && edge.open == 1) unite(edge.a, edge.b);
    }
    if (sets.find(nodes) == sets.find(nodes + 1)) return std::nullopt;
    Graph graph;
    std::vector<std::uint32_t> name(std::size_t{nodes} + 2, none);
    name[sets.find(nodes)] = source;
    name[sets.find(nodes + 1)] = sink;
    const auto name_of = [&](std::uint32_t node) {
        std::uint32_t& its = name[sets.find(node)];
        return its == none ? its = graph.nodes++ : its;
    };
    for (std::uint32_t i = 0; i < edges.size(); ++i) {
        if ((fold && edges[i].open == 0) || sets.find(edges[i].a) == sets.find(edges[i].b)) continue;
        const std::uint32_t a = name_of(edges[i].a);
        graph.edges.push_back({a, name_of(edges[i].b), i});
    }
    return graph;
}

/// Leaves the edges that lie on a simple path from source to sink: the others of the biconnected component of an edge
/// added between the two (Hopcroft and Tarjan, "Algorithm 447", CACM 16(6), 1973). Linear.
void keep_simple_paths(Graph& graph) {
    const Ways ways = ways_of(graph);
    std::vector<std::uint32_t> found(graph.nodes, 0), low(graph.nodes, 0), next(graph.nodes, 0), via(graph.nodes, none);
    std::vector<std::size_t> mark(graph.nodes, 0);
    std::vector<std::uint32_t> kept, path{sink};
    found[source] = low[sink] = 1;
    found[sink] = 2;
    for (std::uint32_t count = 2; !path.empty();) {
        const std::uint32_t node = path.back();
        if (next[node] < ways[node].size()) {
            const auto [to, edge] = ways[node][next[node]++];
            if (edge == via[node]) continue;
            if (found[to] == 0) {
                found[to] = low[to] = ++count;
                via[to] = edge;
                mark[to] = kept.size();
                kept.push_back(edge);
                path.push_back(to);
            } else if (found[to] < found[node]) {
                kept.push_back(edge);
                low[node] = std::min(low[node], found[to]);
            }
            continue;
        }
        path.pop_back();
        if (path.empty()) break;
        if (low[node] >= found[path.back()]) kept.resize(mark[node]);  // what hangs from there
        low[path.back()] = std::min(low[path.back()], low[node]);
    }
    std::vector<Edge> edges;
    std::sort(kept.begin(), kept.end());
    for (const std::uint32_t edge : kept) edges.push_back(graph.edges[edge]);
    graph.edges = std::move(edges);
}

/// Makes one edge of parallel ones and of two in series, as long as there are any. What lies on simple paths goes on
/// doing so. O(edges log edges).
Graph without_series_and_parallel(const Graph& graph, Tape& tape) {
    std::vector<std::map<std::uint32_t, std::uint32_t>> links(graph.nodes);
    const auto add = [&](std::uint32_t a, std::uint32_t b, std::uint32_t chance) {
        const auto [at, is_first] = links[a].try_emplace(b, chance);
        if (!is_first) at->second = tape.parallel(at->second, chance);
        links[b][a] = at->second;
    };
    for (const Edge& edge : graph.edges) add(edge.a, edge.b, edge.chance);
    std::vector<std::uint32_t> to_try;
    for (std::uint32_t node = sink + 1; node < graph.nodes; ++node) to_try.push_back(node);
    while (!to_try.empty()) {
        const std::uint32_t node = to_try.back();
        to_try.pop_back();
        if (node <= sink || links[node].size() != 2) continue;
        const auto [a, x] = *links[node].begin();
        const auto [b, y] = *links[node].rbegin();
        links[node].clear();
        links[a].erase(node);
        links[b].erase(node);
        add(a, b, tape.series(x, y));
        to_try.insert(to_try.end(), {a, b});
    }
    Graph reduced;
    std::vector<std::uint32_t> name(graph.nodes, none);
    for (std::uint32_t node = 0; node < graph.nodes; ++node) {
        if (node <= sink || !links[node].empty()) name[node] = node <= sink ? node : reduced.nodes++;
        for (const auto& [to, chance] : links[node]) {
            if (to < node) reduced.edges.push_back({name[to], name[node], chance});
        }
    }
    return reduced;
}

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

/// The chance, and its slope by every entry of the tape that an edge of the reduced graph uses.
struct Answer {
    OpenChance now;
    std::vector<double> slopes;
};

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

/// splitmix64 (Steele, Lea and Flood 2014): number `i` of the stream `seed`.
std::uint64_t random_bits(std::uint64_t seed, std::uint64_t i) {
    std::uint64_t z = seed + (i + 1) * 0x9e3779b97f4a7c15ULL;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31U);
}

/// Random states of the edges. An edge is drawn when it is looked at, always with the same result within a sample.
class Sampler {
public:
    Sampler(const Graph& graph, const Tape& tape, std::uint64_t seed)
        : graph_(graph), ways_(ways_of(graph)), seed_(seed), marks_(graph.nodes), on_path_(graph.edges.size(), 0) {
        for (const Edge& edge : graph.edges) chances_.push_back(tape[edge.chance]);
    }
    /// Whether source and sink are joined in sample `i`.
    bool draw(std::uint64_t i) {
        stream_ = random_bits(seed_, i);
        from_source_ = ++groups_;
        return flood(source, from_source_, [](std::uint32_t node) { return node == sink; });
    }
    /// After draw(): counts the edges on whose state alone it depends whether the two are joined. These are the open
    /// bridges between them when joined, else the shut edges between the parts that they reach. Linear.
    void count_decisive(bool is_joined, std::vector<std::uint64_t>& counts) {
        if (is_joined) return count_bridges(counts);
        const std::uint64_t from_sink = ++groups_;
        flood(sink, from_sink, [](std::uint32_t) { return false; });
        for (std::size_t i = 0; i < graph_.edges.size(); ++i) {
            const std::uint64_t a = marks_[graph_.edges[i].a].group, b = marks_[graph_.edges[i].b].group;
            if (std::min(a, b) == from_source_ && std::max(a, b) == from_sink) ++counts[i];
        }
    }

private:
    struct Mark {
        std::uint64_t group = 0;  ///< the last that the node was put in
        Way via{};                ///< how it came there: from which node, by which edge
        std::uint32_t place = 0;  ///< on the last path that had the node
    };
    [[nodiscard]] bool is_open(std::uint32_t edge) const {
        return static_cast<double>(random_bits(stream_, edge) >> 11U) * 0x1p-53 < chances_[edge];
    }
    /// Puts all that open edges off the path join to `start` into a group, until `stop(node)`; whether it stopped.
    template <class Stop>
    bool flood(std::uint32_t start, std::uint64_t group, Stop&& stop) {
        queue_.assign(1, start);
        marks_[start].group = group;
        for (std::size_t i = 0; i < queue_.size(); ++i) {
            for (const Way& way : ways_[queue_[i]]) {
                if (marks_[way.to].group == group || on_path_[way.edge] == groups_ || !is_open(way.edge)) continue;
                marks_[way.to].group = group;
                marks_[way.to].via = {queue_[i], way.edge};
                if (stop(way.to)) return true;
                queue_.push_back(way.to);
            }
        }
        return false;
    }
    /// An edge of the path found is a bridge when nothing before it on the path reaches past it by other ways.
    void count_bridges(std::vector<std::uint64_t>& counts) {
        path_.clear();
        for (std::uint32_t node = sink; node != source; node = marks_[node].via.to)
            path_.push_back({node, marks_[node].via.edge});
        std::reverse(path_.begin(), path_.end());  // each edge with the node behind it
        const std::uint64_t group = ++groups_;
        for (std::uint32_t i = 0; i < path_.size(); ++i) {
            marks_[path_[i].to].place = i;
            on_path_[path_[i].edge] = group;
        }
        std::size_t reached = 0;  // nodes of the path behind the source
        const auto visit = [&](std::uint32_t node) {
            const std::size_t place = marks_[node].place;
            if (place < path_.size() && path_[place].to == node) reached = std::max(reached, place + 1);
            return false;
        };
        for (std::size_t i = 0; i < path_.size(); ++i) {
            const std::uint32_t node = i == 0 ? source : path_[i - 1].to;
            reached = std::max(reached, i);
            if (marks_[node].group != group) flood(node, group, visit);
            if (reached == i) ++counts[path_[i].edge];
        }
    }

    const Graph& graph_;
    Ways ways_;
    std::vector<double> chances_;
    std::uint64_t seed_, stream_ = 0, groups_ = 0, from_source_ = 0;
    std::vector<Mark> marks_;             ///< of the nodes
    std::vector<std::uint64_t> on_path_;  ///< the last group whose path has the edge
    std::vector<Way> path_;
    std::vector<std::uint32_t> queue_;
};

Answer sample(const Graph& graph, const Tape& tape, const ReliabilitySettings& settings, bool with_slopes) {
    Sampler sampler(graph, tape, settings.seed);
    std::uint64_t times_joined = 0;
    std::vector<std::uint64_t> decisive(graph.edges.size(), 0);
    const std::size_t samples = std::clamp<std::size_t>(settings.most_draws / graph.edges.size(), 1, settings.samples);
    for (std::size_t i = 0; i < samples; ++i) {
        const bool is_joined = sampler.draw(i);
        if (is_joined) ++times_joined;
        if (with_slopes) sampler.count_decisive(is_joined, decisive);
    }
    const auto n = static_cast<double>(samples);
    const double share = static_cast<double>(times_joined) / n;
    constexpr double z = 1.959963984540054;  // the 97.5 % point of the normal distribution
    const double middle = (share + z * z / (2 * n)) / (1 + z * z / n);
    const double half = z / (1 + z * z / n) * std::sqrt(share * (1 - share) / n + z * z / (4 * n * n));
    Answer answer{.now = {share, false, std::clamp(middle - half, 0.0, share), std::clamp(middle + half, share, 1.0)},
                  .slopes = std::vector<double>(tape.size(), 0)};
    for (std::size_t i = 0; i < decisive.size(); ++i) answer.slopes[graph.edges[i].chance] = static_cast<double>(decisive[i]) / n;
    return answer;
}

void check(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
           std::span<const std::uint32_t> to, const ReliabilitySettings& settings) {
    const auto is_node = [&](std::uint32_t node) { return node < nodes; };
    for (const auto& [a, b, open] : edges) {
        if (!is_node(a) || !is_node(b) || !(open >= 0 && open <= 1))
            throw std::invalid_argument("edges must join nodes, with a probability from 0 to 1");
    }
    if (!std::all_of(from.begin(), from.end(), is_node) || !std::all_of(to.begin(), to.end(), is_node))
        throw std::invalid_argument("both sets must be of nodes");
    if (settings.samples == 0) throw std::invalid_argument("there must be samples");
}

/// The slopes are by the given edges.
Answer solve(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
             std::span<const std::uint32_t> to, const ReliabilitySettings& settings, bool with_slopes) {
    check(nodes, edges, from, to, settings);
    std::optional<Graph> graph = merged(nodes, edges, from, to, !with_slopes);
    Answer answer{.slopes = std::vector<double>(edges.size(), 0)};
    if (!graph) answer.now = {1, true, 1, 1};
    if (graph) keep_simple_paths(*graph);
    if (!graph || graph->edges.empty()) return answer;
    Tape tape(edges);
    *graph = without_series_and_parallel(*graph, tape);
    sort_for_narrow_frontier(*graph);
    const std::optional<Diagram> diagram = make_diagram(*graph, settings.most_states);
    answer = diagram ? read_diagram(*diagram, *graph, tape) : sample(*graph, tape, settings, with_slopes);
    if (with_slopes) answer.slopes = tape.slopes_of_inputs(std::move(answer.slopes));
    return answer;
}

}  // namespace

OpenChance open_chance(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                       std::span<const std::uint32_t> to, const ReliabilitySettings& settings) {
    return solve(nodes, edges, from, to, settings, false).now;
}

Importance importance(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                      std::span<const std::uint32_t> to, const ReliabilitySettings& settings) {
    Answer answer = solve(nodes, edges, from, to, settings, true);
    Importance result{.now = answer.now, .birnbaum = std::move(answer.slopes)};
    for (std::size_t i = 0; i < edges.size(); ++i) {
        double& slope = result.birnbaum[i] = std::clamp(result.birnbaum[i], 0.0, 1.0);
        result.if_shut.push_back(std::clamp(answer.now.chance - edges[i].open * slope, 0.0, 1.0));
        result.if_open.push_back(std::clamp(answer.now.chance + (1 - edges[i].open) * slope, 0.0, 1.0));
    }
    return result;
}

}  // namespace seamward
