// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace seamward {

/// An edge that is open with a probability, whatever the others are. Parallel edges and loops may occur.
struct ChanceEdge {
    std::uint32_t a, b;  ///< nodes
    double open;         ///< in [0, 1]
};

/// The probability that some path of open edges joins two sets of nodes.
struct OpenChance {
    double chance = 0;
    bool exact = true;         ///< up to rounding; else estimated from random samples
    double low = 0, high = 0;  ///< 95 % interval of Wilson (JASA 22, 1927); both are `chance` when exact
};

struct ReliabilitySettings {
    /// States of the exact method, over all its layers, after which it gives up and samples. At the default, at
    /// most about 0.5 GB and some seconds.
    std::size_t most_states = 4'000'000;
    std::size_t samples = 20'000;  ///< when sampling, at least 1
    /// Fewer samples are taken when samples times edges would be more: at the default, from 2,500 edges that the
    /// reductions leave. Keeps it to some seconds; the interval widens.
    std::size_t most_draws = 50'000'000;
    std::uint64_t seed = 1;  ///< when sampling; the same seed gives the same answer
};

/// The probability that open edges join any of `from` to any of `to` (each set counts as one node): 1 when the sets
/// share a node, 0 when one is empty. Nodes are 0..nodes-1.
///
/// Exact reductions first: certain and impossible edges, edges on no simple path between the sets, series and
/// parallel edges. Then the decision diagram of the edges, whose states are partitions of a frontier of nodes (Sekine
/// and Imai, "A unified approach via BDD to the network reliability and path numbers", 1995; Hardy, Lucet and
/// Limnios, "K-terminal network reliability measures with binary decision diagrams", IEEE Trans. Reliability 56(3),
/// 2007). Exponential in the width of the frontier, linear in the edges; past `most_states`, Monte Carlo in
/// O(samples * edges).
/// Throws std::invalid_argument for a probability outside [0, 1], a node out of range, or no samples.
[[nodiscard]] OpenChance open_chance(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                                     std::span<const std::uint32_t> to, const ReliabilitySettings& settings = {});

/// What each edge matters, in the order of the edges.
struct Importance {
    OpenChance now;
    /// P(joined | edge open) - P(joined | edge shut), in [0, 1] (Birnbaum, "On the importance of different components
    /// in a multicomponent system", 1969).
    std::vector<double> birnbaum;
    std::vector<double> if_shut, if_open;  ///< P(joined | edge shut) and P(joined | edge open)
};

/// All edges at once, by one pass up and one pass down the diagram. Certain and impossible edges stay in it, since
/// they matter too: it can be larger than that of `open_chance`. When it is too large all figures, `now` too, come
/// from the same samples, and `now.exact` is false. Otherwise as `open_chance`.
[[nodiscard]] Importance importance(std::uint32_t nodes, std::span<const ChanceEdge> edges, std::span<const std::uint32_t> from,
                                    std::span<const std::uint32_t> to, const ReliabilitySettings& settings = {});

}  // namespace seamward
