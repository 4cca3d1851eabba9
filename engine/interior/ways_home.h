// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "interior/spaces.h"

namespace seamward {

/// The widest ways within the bodies, from any stand to the seed of its body.
class WaysHome {
public:
    WaysHome(const Passages& passages, const Bodies& bodies);

    static constexpr std::uint32_t none = 0xffffffff;
    /// The next stand on the way, or `none` at the seed and at stands of no body.
    [[nodiscard]] std::uint32_t next(std::uint32_t stand) const {
        return next_[stand] == none ? none : passages_.passage(next_[stand]).across(stand);
    }
    /// The passage there.
    [[nodiscard]] std::uint32_t passage(std::uint32_t stand) const { return next_[stand]; }

private:
    const Passages& passages_;
    std::vector<std::uint32_t> next_;  ///< by stand: a passage
};

}  // namespace seamward
