// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

#include "base/survey.h"
#include "exchange/read_model.h"

namespace seamward {

/// What the program was told by its parent.
struct ReadTask {
    std::string kind;  ///< the extension: "glb"
    std::optional<ModelUnit> unit;
    std::optional<UpAxis> up;
    std::uint64_t most_file_bytes = 0, most_memory_bytes = 0, most_cpu_seconds = 0;
    std::size_t most_triangles = 0;
};

/// Meters in a unit as a quotient, so that whole millimeters become the doubles nearest to them.
struct UnitRatio {
    double over = 1;
    double under = 1;
};

[[nodiscard]] UnitRatio ratio_of(ModelUnit unit);

/// The frame of a file: how its coordinates become ours.
struct FileFrame {
    UnitRatio unit;
    UpAxis up = UpAxis::z;

    /// Turned without rounding: y up (x, y, z) becomes (x, -z, y), x up (x, y, z) becomes (-y, -z, x); then scaled.
    [[nodiscard]] Point ours(const Point& p) const {
        const Point turned = up == UpAxis::z ? p : up == UpAxis::y ? Point{p.x, -p.z, p.y} : Point{-p.y, -p.z, p.x};
        const auto meters = [&](double at) { return at * unit.over / unit.under; };
        return {meters(turned.x), meters(turned.y), meters(turned.z)};
    }
};

inline UnitRatio ratio_of(ModelUnit unit) {
    switch (unit) {
        case ModelUnit::m: return {1, 1};
        case ModelUnit::cm: return {1, 100};
        case ModelUnit::mm: return {1, 1000};
        case ModelUnit::in: return {254, 10'000};
        case ModelUnit::ft: return {3048, 10'000};
    }
    return {};
}

}  // namespace seamward
