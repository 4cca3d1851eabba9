// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <functional>
#include <string>

#include "house/build_house.h"
#include "tests/support/solid_check.h"

namespace seamward::test {

/// A house of one room a story, all of whose sizes are known: 12 m by 8 m, stucco on boards on studs.
struct PlainHouse {
    static constexpr double length = 12, width = 8, height = 2.5;
    static constexpr double stucco = 0.022, boards = 0.011, studs = 0.089, drywall = 0.013;
    static constexpr double cladding = stucco + boards, plate_top = height + drywall;

    std::string outline = "[[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [0 m, 8 m]]";
    std::string roof = "{shape: hip, pitch: 4/12, overhang: 0.6 m}";
    std::string foundation = "{kind: slab, above_grade: 0.15 m}";
    std::string stories = "[{height: 2.5 m}]";
    std::string rooms = "[{id: room, at: [2 m, 2 m]}]";
    std::string more;  ///< further keys

    [[nodiscard]] std::string text() const {
        return "seamward-house: 1\nassemblies:\n  - id: wall\n    layers: [{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}, "
               "{air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]\noutline: " +
               outline + "\nfoundation: " + foundation + "\nstories: " + stories + "\nrooms: " + rooms + "\nroof: " + roof +
               "\nyard: {margin: 2 m}\n" + more;
    }

    [[nodiscard]] House build(Make make = Make::solids) const {
        return build_house(parse_house_yaml(text(), "house.yaml"), {}, make, RunContext());
    }

    /// What it says when it cannot be built; empty when it can.
    [[nodiscard]] std::string faults() const {
        try {
            (void)build();
            return "";
        } catch (const BadInput& bad) {
            return bad.what();
        }
    }
};

inline const Part* part_of(const House& house, const std::string& id) {
    const auto part = std::find_if(house.parts.begin(), house.parts.end(), [&](const Part& p) { return p.id == id; });
    return part == house.parts.end() ? nullptr : &*part;
}

/// Of all parts whose id ends like that, in cubic meters.
inline double volume_of(const House& house, const std::string& end) {
    double volume = 0;
    for (const Part& part : house.parts) {
        if (part.id.ends_with(end)) volume += facts_of(part.mesh).volume;
    }
    return volume;
}

}  // namespace seamward::test
