// SPDX-License-Identifier: GPL-3.0-or-later
// Every row of the table of features, placed by one line on a house that has a place for it: it makes gaps, between two
// different spaces, open in the solids as wide as stated.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "catalog/shipped.h"
#include "house/build_house.h"
#include "tests/support/gap_ruler.h"
#include "tests/support/solid_check.h"

namespace seamward {
namespace {

/// Brick on an air gap over a crawl space, two stories, gables, a block wall that meets the house.
constexpr const char* brick_house = R"(seamward-house: 1
assemblies:
  - {id: brick, layers: [{of: brick, thick: 90 mm}, {air: true, thick: 25 mm}, {of: wood, thick: 12 mm}, {air: true, thick: 140 mm}, {of: drywall, thick: 13 mm}]}
  - {id: partition, layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 0.5 m}, {of: drywall, thick: 13 mm}]}
outline: [[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [0 m, 8 m]]
walls: [south, east, north, west]
foundation: {kind: crawl-space, above_grade: 0.7 m, height: 0.8 m, space: crawl}
stories: [{height: 2.6 m}, {height: 2.6 m, floor: 0.3 m}]
roof: {shape: gable, gables: [east, west], pitch: 7/12, overhang: 0.6 m}
partitions:
  - {id: middle, from: [6 m, 0 m], to: [6 m, 8 m]}
  - {id: middle-up, from: [6 m, 0 m], to: [6 m, 8 m], story: 2}
rooms:
  - {id: left, at: [3 m, 4 m]}
  - {id: right, at: [9 m, 4 m]}
  - {id: left-up, at: [3 m, 4 m], story: 2}
  - {id: right-up, at: [9 m, 4 m], story: 2}
openings:
  - {id: door, kind: door, in: south, along: 3 m, width: 0.91 m, height: 2.03 m}
  - {id: window, kind: window, in: south, along: 9 m, width: 1.2 m, height: 1.1 m, frame: window-frame}
  - {id: solid-window, kind: window, in: north, along: 9 m, width: 1.2 m, height: 1.1 m}
  - {id: slider, kind: sliding-door, in: north, along: 3 m, width: 1.8 m, height: 2.05 m, frame: slider-frame}
  - {id: garage-door, kind: garage-door, in: east, along: 4 m, width: 3 m, height: 2.1 m}
block_walls:
  - {id: block-wall, height: 1.6 m, points: [[0 m, 5 m], [-3 m, 5 m], [-3 m, 9 m]]}
features:
)";

/// Stucco on a slab that has settled, one story, hip roof.
constexpr const char* stucco_house = R"(seamward-house: 1
assemblies:
  - {id: stucco, layers: [{of: stucco, thick: 22 mm}, {of: wood, thick: 11 mm}, {air: true, thick: 140 mm}, {of: drywall, thick: 13 mm}]}
  - {id: partition, layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 0.5 m}, {of: drywall, thick: 13 mm}]}
outline: [[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [0 m, 8 m]]
walls: [south, east, north, west]
foundation: {kind: slab, above_grade: 0.2 m, height: 0.1 m, space: fill}
stories: [{height: 2.6 m}]
roof: {shape: hip, pitch: 6/12, overhang: 0.6 m}
partitions:
  - {id: middle, from: [6 m, 0 m], to: [6 m, 8 m]}
rooms:
  - {id: left, at: [3 m, 4 m]}
  - {id: right, at: [9 m, 4 m]}
openings:
  - {id: door, kind: door, in: south, along: 3 m, width: 0.91 m, height: 2.03 m}
  - {id: window, kind: window, in: south, along: 9 m, width: 1.2 m, height: 1.1 m, frame: window-frame}
  - {id: solid-window, kind: window, in: north, along: 9 m, width: 1.2 m, height: 1.1 m}
  - {id: slider, kind: sliding-door, in: north, along: 3 m, width: 1.8 m, height: 2.05 m, frame: slider-frame}
  - {id: garage-door, kind: garage-door, in: east, along: 4 m, width: 3 m, height: 2.1 m}
block_walls:
  - {id: block-wall, height: 1.6 m, points: [[0 m, 5 m], [-3 m, 5 m], [-3 m, 9 m]]}
features:
)";

bool stands_on(const Feature& feature, Host host) {
    return std::find(feature.hosts.begin(), feature.hosts.end(), host) != feature.hosts.end();
}

/// The line that places a feature on either house.
std::string line_for(const Feature& feature) {
    std::string begin = "  - {id: it, type: " + feature.id;
    // Joints that run along nothing in particular are as long as the line says.
    for (const FeatureGap& gap : feature.gaps) {
        const bool joint = gap.form == FeatureGap::Form::line || gap.form == FeatureGap::Form::edge;
        const bool level =
            gap.at == FeatureGap::At::through && !stands_on(feature, Host::opening) && !stands_on(feature, Host::rim);
        if (joint && gap.length == 0 && (level || gap.at == FeatureGap::At::top)) begin += ", length: 1 m";
    }
    const std::string up = feature.up > 0 ? "" : ", up: 1.3 m";
    const bool down = std::any_of(feature.gaps.begin(), feature.gaps.end(),
                                  [](const FeatureGap& gap) { return gap.at == FeatureGap::At::bottom; });
    if (feature.id == "exhaust-cap" || feature.id == "chimney-cap")
        return "  - {id: fan, type: bath-fan, at: [3 m, 3.2 m], space: duct}\n" + begin + ", space: duct}";
    if (feature.id == "dryer-floor-duct") return begin + ", on: floor, at: [3 m, 3.2 m]}";
    if (feature.id == "duct-joint")
        return "  - {id: duct, type: dryer-floor-duct, on: floor, at: [3 m, 3.2 m], space: duct}\n" + begin + ", space: duct}";
    if (stands_on(feature, Host::opening) && !stands_on(feature, Host::wall)) {
        const auto has = [&](const char* word) { return feature.id.find(word) != std::string::npos; };
        const char* on = has("garage")                                      ? "garage-door"
                         : has("slider")                                    ? "slider"
                         : has("sash-inner") || has("weep") || has("frame") ? "window"
                         : has("window")                                    ? "solid-window"
                                                                            : "door";
        return begin + ", on: " + on + "}";
    }
    if (stands_on(feature, Host::wall) && !(down && stands_on(feature, Host::partition)))
        return begin + ", on: north, along: 6.7 m" + up + "}";
    if (stands_on(feature, Host::gable)) return begin + ", on: east, along: 4 m, up: 3.4 m}";
    if (stands_on(feature, Host::partition)) return begin + ", on: middle, side: left, along: 3 m" + up + "}";
    if (stands_on(feature, Host::eave)) return begin + "}";
    if (stands_on(feature, Host::block_wall)) return begin + ", on: block-wall}";
    if (stands_on(feature, Host::ceiling)) return begin + ", on: ceiling, at: [3 m, 3.2 m]}";
    if (stands_on(feature, Host::floor)) return begin + ", on: floor, at: [3 m, 3.2 m]}";
    if (stands_on(feature, Host::roof)) return begin + ", at: [6 m, 2.5 m]}";
    if (stands_on(feature, Host::foundation) || stands_on(feature, Host::rim))
        return begin + ", on: north" + (feature.gaps.front().count == 0 ? "}" : ", along: 5 m}");
    return begin + "}";
}

class EveryFeature : public testing::TestWithParam<std::string> {};

TEST_P(EveryFeature, MakesGapsAsWideAsStated) {
    const Feature& feature = *shipped_features().find(GetParam());
    std::string faults;
    std::set<std::string> made;
    for (const char* house : {stucco_house, brick_house}) {
        std::string text = std::string(house) + line_for(feature) + "\n";
        const bool two_stories = house == brick_house;
        if (two_stories && (stands_on(feature, Host::gable) || feature.id == "exhaust-cap" || feature.id == "bath-fan"))
            text.replace(text.rfind('}'), 1, ", story: 2}");
        if (two_stories && feature.id == "exhaust-cap") text.replace(text.find("space: duct}"), 12, "space: duct, story: 2}");
        House built;
        try {
            const RunContext context;
            built = build_house(parse_house_yaml(text, "house.yaml"), {}, Make::solids, context);
        } catch (const BadInput& bad) {
            faults += bad.what();
            continue;
        }
        for (const Part& part : built.parts) EXPECT_EQ(test::fault_of_solid(part.mesh, true), "") << part.id;
        const test::GapRuler ruler(built.parts);
        for (std::uint32_t i = 0; i < built.survey.gaps.size(); ++i) {
            const Gap& gap = built.survey.gaps[i];
            made.insert(gap.id);
            EXPECT_NE(gap.between[0], gap.between[1]) << gap.id;
            EXPECT_NEAR(ruler.width_of({i}).smallest, clear_width(gap.shape), 1e-5) << gap.id;
        }
    }
    // Listed in the table so that surveys can be checked against it; the program refuses to draw them, and says so.
    static const std::set<std::string> not_drawn{"chimney-cap", "fireplace-damper", "window-frame-crack"};
    EXPECT_EQ(made.empty(), not_drawn.contains(feature.id)) << "on neither house:\n" << faults;
    if (not_drawn.contains(feature.id)) {
        EXPECT_NE(faults.find("list it in the job"), std::string::npos) << faults;
    }
}

std::vector<std::string> all_types() {
    std::vector<std::string> ids;
    for (const Feature& feature : shipped_features().rows) ids.push_back(feature.id);
    return ids;
}

INSTANTIATE_TEST_SUITE_P(Catalog, EveryFeature, testing::ValuesIn(all_types()), [](const auto& type) {
    std::string name = type.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

}  // namespace
}  // namespace seamward
