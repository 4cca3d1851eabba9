// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/personality.h>

namespace seamward::test {

/// Whether this system lets a program be started without address randomization; many containers do not.
inline bool may_fix_addresses() {
    const int before = personality(0xFFFFFFFF);
    if (before < 0 || personality(static_cast<unsigned long>(before) | ADDR_NO_RANDOMIZE) < 0) return false;
    return personality(static_cast<unsigned long>(before)) >= 0;
}

}  // namespace seamward::test
