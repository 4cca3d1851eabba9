// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace seamward::test {

/// A small described house, all of whose sorts of gaps a job may measure anew: slot `sweep`, ring `bibb`, hole
/// `screed-drain-holes`, mesh `vents`. Two rooms, a wall between them, an attic.
inline const std::string cottage = R"(seamward-house: 1
name: "Cottage"
assemblies:
  - id: stucco-wall
    layers: [{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}, {air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]
  - id: partition
    layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]
outline: [[0 m, 0 m], [8 m, 0 m], [8 m, 6 m], [0 m, 6 m]]
walls: [south-wall, east-wall, north-wall, west-wall]
stories: [{height: 2.5 m}]
roof: {shape: hip, pitch: 4/12}
partitions: [{id: middle-wall, from: [5 m, 0 m], to: [5 m, 6 m]}]
rooms: [{id: kitchen, at: [2 m, 3 m]}, {id: bedroom, at: [7 m, 3 m]}]
openings:
  - {id: front-door, in: south-wall, along: 2 m, width: 0.91 m, height: 2.03 m}
  - {id: bedroom-door, in: middle-wall, along: 3 m, width: 0.81 m, height: 2.03 m}
features:
  - {id: screed, type: weep-screed, on: south-wall, joint: 1/16 in}
  - {id: bibb, type: hose-bibb, on: north-wall, along: 5 m, outside: 1/8 in, inside: none}
  - {id: sink, type: sink-drain, on: north-wall, along: 6 m, gap: 4 mm}
  - {id: sweep, type: door-sweep, on: front-door, gap: 4 mm, closing: {cost: $9}}
  - {id: hatch, type: attic-hatch, at: [6.5 m, 4 m], evidence: {how: assumed, plus_minus: 1 mm}}
  - {id: vents, type: soffit-vent, count: 6}
)";

/// The house with another text in place of `part`, which stands in it once.
inline std::string cottage_with(const std::string& part, const std::string& other) {
    std::string text = cottage;
    return text.replace(text.find(part), part.size(), other);
}

}  // namespace seamward::test
