// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "interior/air.h"
#include "interior/contacts.h"

namespace seamward {

/// Which contacts hang together: they touch, or the same air-free stretch lies between them where two parts run into each other.
class JointGroups {
public:
    /// O(n log n) for the cells of the model when `overlaps`; then contacts may be lines where parts run into each other.
    JointGroups(const Air& air, bool overlaps);

    /// For each contact of one pair of parts the first one that it hangs together with.
    [[nodiscard]] std::vector<std::uint32_t> groups_of(std::span<const Contact> contacts) const;

private:
    void join_within(std::span<const Contact> contacts, std::vector<std::uint32_t>& parent) const;
    [[nodiscard]] bool holds(std::uint32_t cell, const Contact& pair) const;

    const Air& air_;
    std::vector<std::vector<std::uint32_t>> parts_;  ///< for each solid cell the parts around it
};

}  // namespace seamward
