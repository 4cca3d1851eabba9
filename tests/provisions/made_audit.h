// SPDX-License-Identifier: GPL-3.0-or-later
// Audits as tests need them: small ones of known content, and random ones with whatever files of others may hold.
#pragma once

#include <cstdint>
#include <random>
#include <string>

#include "provisions/bcf.h"

namespace seamward::test {

/// A house of 10 by 8 by 5 m with its corner at the origin: a weep screed above earth on the south side (two parts with a
/// GlobalId, one without), an attic hatch in the middle of the house of which no part is known, and a way in from the west.
[[nodiscard]] Audit small_audit();
[[nodiscard]] BcfSettings small_settings();

/// A provision's result without things.
[[nodiscard]] ProvisionResult result(const std::string& rule, Verdict verdict);

class RandomAudit {
public:
    explicit RandomAudit(std::uint64_t seed) : random_(seed) {}

    /// Names, ids and texts hold control characters, markup, bytes that are no UTF-8, 10,000 letters, nothing; places are no
    /// numbers or beyond all maps; parts, gaps and animals are out of range.
    [[nodiscard]] Audit hostile();
    [[nodiscard]] BcfSettings hostile_settings(const Audit& audit);

    /// A few findings of few provisions and parts in a few meters, so that all ways to know them again come up.
    [[nodiscard]] Audit crowded(std::size_t most);
    /// The same with its findings in another order, and their parts listed in another order with other positions.
    [[nodiscard]] Audit shuffled(const Audit& audit);

    [[nodiscard]] std::size_t below(std::size_t count) { return static_cast<std::size_t>(random_() % count); }
    [[nodiscard]] bool chance(std::size_t one_in) { return below(one_in) == 0; }
    [[nodiscard]] double between(double low, double high);

private:
    [[nodiscard]] std::string text();
    [[nodiscard]] std::string global_id();
    [[nodiscard]] double coordinate();
    [[nodiscard]] Point place();
    [[nodiscard]] std::vector<std::size_t> parts();
    void add_way(Audit& audit);

    std::mt19937_64 random_;
};

}  // namespace seamward::test
