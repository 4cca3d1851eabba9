// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/field_check.h"

#include <algorithm>
#include <cmath>

namespace seamward {

std::string field_check(double width, std::span<const Gauge> gauges) {
    constexpr double same = 5e-6;  // no hand feels five micrometers
    if (gauges.empty()) return "";
    const auto thicker =
        std::find_if(gauges.begin(), gauges.end(), [&](const Gauge& gauge) { return gauge.thickness > width - same; });
    if (thicker == gauges.end()) return "more than " + gauges.back().name;
    if (std::abs(thicker->thickness - width) <= same) return thicker->name;
    if (thicker == gauges.begin()) return "thinner than " + thicker->name;
    return "between " + std::prev(thicker)->name + " and " + thicker->name;
}

}  // namespace seamward
