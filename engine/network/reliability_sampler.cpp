// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/reliability_sampler.h"

#include <algorithm>
#include <cmath>

namespace seamward::reliability {

namespace {

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

}  // namespace

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

}  // namespace seamward::reliability
