// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "paths/remaining_ways.h"

namespace seamward {

/// All steps out of a space that end, or from which an end can be reached, best first: by the widths of the step and
/// the best way on after it, then by gap id. Sorted for a space when it is first asked for.
class OrderedSteps {
public:
    /// All arguments must outlive the object.
    OrderedSteps(const Survey& survey, const Network& network, const Roles& roles, const RemainingWays& ways);

    /// Valid as long as the object is.
    [[nodiscard]] std::span<const Step> from(SpaceIndex space);

private:
    const Survey& survey_;
    const Network& network_;
    const Roles& roles_;
    const RemainingWays& ways_;
    std::vector<std::unique_ptr<std::vector<Step>>> steps_;
};

}  // namespace seamward
