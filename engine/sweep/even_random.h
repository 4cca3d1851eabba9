// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace seamward {

/// Random numbers that are the same on every machine and with every library: SplitMix64 (Steele, Lea, Flood, "Fast splittable
/// pseudorandom number generators", 2014), and distributions out of exact additions and multiplications.
class EvenRandom {
public:
    /// Different streams of one seed are independent.
    EvenRandom(std::uint64_t seed, std::uint64_t stream);

    [[nodiscard]] std::uint64_t next();
    /// From 0 up to but not 1, in steps of 2^-53.
    [[nodiscard]] double share();
    /// A whole number below `limit`, which is not 0.
    [[nodiscard]] std::uint64_t below(std::uint64_t limit);
    [[nodiscard]] bool happens(double chance) { return share() < chance; }
    /// About normal, mean 0 and deviation 1, within 6: the sum of twelve shares less 6.
    [[nodiscard]] double deviation();
    /// A factor whose logarithm is about normal with that deviation.
    [[nodiscard]] double factor(double spread);

private:
    std::uint64_t state_;
};

}  // namespace seamward
