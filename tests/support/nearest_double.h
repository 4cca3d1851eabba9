// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

namespace seamward::test {

__extension__ using Whole = unsigned __int128;

/// The double nearest to above / below, ties to even, by integers alone: a second opinion that shares no code with
/// the engine's reading of numbers. Both below 2^100; the answer must be a normal number.
inline double nearest_double(Whole above, Whole below) {
    if (above == 0) return 0;
    constexpr Whole least = Whole{1} << 52;
    int exponent = 0;
    while (above / below >= 2 * least) {
        below *= 2;
        ++exponent;
    }
    // Long division: 53 bits, and whether more than, exactly or less than a half is left over.
    Whole quotient = above / below;
    Whole rest = above % below;
    while (quotient < least) {
        quotient *= 2;
        rest *= 2;
        if (rest >= below) {
            rest -= below;
            ++quotient;
        }
        --exponent;
    }
    if (rest * 2 > below || (rest * 2 == below && quotient % 2 == 1)) ++quotient;
    return std::ldexp(static_cast<double>(static_cast<unsigned long long>(quotient)), exponent);
}

}  // namespace seamward::test
