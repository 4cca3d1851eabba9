// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/even_random.h"

namespace seamward {

namespace {

constexpr std::uint64_t golden = 0x9e3779b97f4a7c15ULL;

std::uint64_t mixed(std::uint64_t z) {
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
}

}  // namespace

EvenRandom::EvenRandom(std::uint64_t seed, std::uint64_t stream) : state_(mixed(mixed(seed + golden) + stream * golden)) {}

std::uint64_t EvenRandom::next() {
    state_ += golden;
    return mixed(state_);
}

double EvenRandom::share() { return static_cast<double>(next() >> 11) * 0x1p-53; }

std::uint64_t EvenRandom::below(std::uint64_t limit) {
    // What would make small numbers likelier is drawn again.
    const std::uint64_t most = ~std::uint64_t{0} - ~std::uint64_t{0} % limit;
    while (true) {
        const std::uint64_t drawn = next();
        if (drawn < most) return drawn % limit;
    }
}

double EvenRandom::deviation() {
    double sum = -6;
    for (int i = 0; i < 12; ++i) sum += share();
    return sum;
}

double EvenRandom::factor(double spread) {
    // (1 + x / 1024)^1024, which is e^x near enough; the library's exp() may differ in its last digits.
    double power = 1 + spread * deviation() / 1024;
    for (int i = 0; i < 10; ++i) power *= power;
    return power;
}

}  // namespace seamward
