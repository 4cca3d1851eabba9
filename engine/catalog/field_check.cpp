// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/field_check.h"

#include <algorithm>
#include <cmath>

namespace seamward {

Message field_check(double width, std::span<const Gauge> gauges) {
    constexpr double same = 5e-6;  // no hand feels five micrometers
    if (gauges.empty()) return {};
    const auto thicker =
        std::find_if(gauges.begin(), gauges.end(), [&](const Gauge& gauge) { return gauge.thickness > width - same; });
    if (thicker == gauges.end()) return message("more than {}", {as_named(gauges.back().name)});
    if (std::abs(thicker->thickness - width) <= same) return as_named(thicker->name);
    if (thicker == gauges.begin()) return message("thinner than {}", {as_named(thicker->name)});
    return message("between {} and {}", {as_named(std::prev(thicker)->name), as_named(thicker->name)});
}

}  // namespace seamward
