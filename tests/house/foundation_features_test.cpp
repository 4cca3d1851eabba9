// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on foundations and on the edges of framed floors: masonry, rims, crawl doors, ducts that run under a floor.
#include <gtest/gtest.h>

#include "house/framing.h"
#include "tests/house/plain_house.h"
#include "tests/support/gap_ruler.h"
#include "tests/support/leak_finder.h"

namespace seamward::test {
namespace {

PlainHouse on_crawl_space(const std::string& features = "") {
    PlainHouse plain;
    plain.foundation = "{kind: crawl-space, above_grade: 0.8 m, height: 0.7 m, space: crawl}";
    plain.more = features.empty() ? "" : "features:\n" + features;
    return plain;
}

/// The same in brick on an air gap.
House brick_house(const std::string& features, bool shut = false) {
    std::string text = on_crawl_space(features).text();
    const std::string stucco = "{of: stucco, thick: 22 mm}", brick = "{of: brick, thick: 90 mm}, {air: true, thick: 25 mm}";
    text.replace(text.find(stucco), stucco.size(), brick);
    const HouseDescription described = parse_house_yaml(text, "house.yaml");
    std::map<std::string, double> widths;
    for (const Gap& gap : build_house(described, {}, Make::survey, RunContext()).survey.gaps)
        if (shut) widths[gap.id] = 0;
    return build_house(described, widths, Make::solids, RunContext());
}

std::string between(const House& house, const std::string& gap) {
    for (const Gap& g : house.survey.gaps) {
        if (g.id == gap) return house.survey[g.between[0]].id + " " + house.survey[g.between[1]].id;
    }
    return "no such gap";
}

void expect_measured(const House& house) {
    const GapRuler ruler(house.parts);
    for (const GapPlace& place : house.places) {
        const Gap& gap = house.survey[place.gap];
        EXPECT_NEAR(ruler.width_of(place.gap).smallest, clear_width(gap.shape), 1e-6) << gap.id;
        EXPECT_TRUE(is_clear(house, place.through)) << gap.id;
    }
}

bool has(const std::string& text, const char* words) { return text.find(words) != std::string::npos; }

constexpr const char* edges =
    "  - {id: sill, type: sill-plate-joint, on: wall-1, gap: 4 mm}\n"
    "  - {id: crack, type: rim-joist-crack, on: wall-2, along: 3 m, gap: 6 mm}\n"
    "  - {id: pipe, type: rim-joist-opening, on: wall-3, along: 3 m, gap: 8 mm}\n"
    "  - {id: under-rim, type: rim-joist-joint, on: wall-4, gap: 2 mm}\n";

TEST(RimFeatures, LeadIntoTheGapBehindBrick) {
    const House house = brick_house(edges);
    EXPECT_EQ(between(house, "sill"), "wall-1-air crawl");
    EXPECT_EQ(between(house, "crack"), "wall-2-air crawl");
    EXPECT_EQ(between(house, "pipe"), "wall-3-air crawl");
    EXPECT_EQ(between(house, "under-rim"), "wall-4-air crawl");
    expect_measured(house);
}

TEST(RimFeatures, LeadOutdoorsThroughOtherCladding) {
    const House house = on_crawl_space(edges).build();
    for (const char* id : {"sill", "crack", "pipe", "under-rim"}) EXPECT_EQ(between(house, id), "yard crawl") << id;
    expect_measured(house);
    const auto crack =
        std::find_if(house.survey.gaps.begin(), house.survey.gaps.end(), [](const Gap& g) { return g.id == "crack"; });
    EXPECT_NEAR(crack->depth.value(), framing::stud + PlainHouse::cladding, 1e-9);
}

TEST(Foundation, CarriesBrickOnALedge) {
    const House house = brick_house("", true);
    const double out = 0.09 + 0.025 + 0.011, low = -0.8 - framing::footing_depth;
    const double foot = -framing::subfloor - framing::joist - framing::plate - framing::overlap;
    const double ring = (PlainHouse::length + 2 * out) * (PlainHouse::width + 2 * out) - PlainHouse::length * PlainHouse::width;
    EXPECT_NEAR(volume_of(house, "/ledge"), ring * (foot - low), 1e-9);
    EXPECT_EQ(volume_of(on_crawl_space().build(), "/ledge"), 0);
    const AirMap air(house, {.pitch = 0.0237});
    EXPECT_TRUE(air.leaks().empty());
    EXPECT_TRUE(air.unseen().empty());
}

TEST(Foundation, SharesAnOpeningOutAmongItsWalls) {
    const House house = on_crawl_space(
                            "  - {id: vents, type: crawl-vent, count: 10}\n"
                            "  - {id: low-vents, type: crawl-vent, on: [wall-1, wall-3], count: 3, up: -0.7 m}\n"
                            "  - {id: flood, type: flood-opening, on: wall-1, along: 4.2 m}\n"
                            "  - {id: main, type: water-main, on: wall-2, along: 3 m}\n")
                            .build();
    for (const char* id : {"vents", "low-vents", "flood", "main"}) EXPECT_EQ(between(house, id), "yard crawl") << id;
    EXPECT_EQ(house.survey.gaps[0].count, 10U);
    EXPECT_EQ(house.survey.gaps[1].count, 3U);
    expect_measured(house);
}

TEST(Foundation, HasCrawlDoors) {
    PlainHouse plain = on_crawl_space(
        "  - {id: corner, type: crawl-door-corner, on: hatch, gap: 25 mm}\n"
        "  - {id: sides, type: crawl-door, on: hatch, gap: 9 mm}\n");
    const auto door = [&](const char* size) {
        PlainHouse with = plain;
        with.more +=
            std::string("openings: [{id: hatch, kind: crawl-door, in: wall-1, along: 3 m, width: 0.7 m, ") + size + "}]\n";
        return with;
    };
    const House house = door("height: 0.4 m").build();
    EXPECT_EQ(between(house, "corner"), "yard crawl");
    EXPECT_EQ(between(house, "sides"), "yard crawl");
    expect_measured(house);
    const Part* leaf = part_of(house, "hatch/leaf");
    ASSERT_NE(leaf, nullptr);
    EXPECT_NEAR(facts_of(leaf->mesh).bounds.lowest.z, -0.75, 0.026);  // 50 mm over the yard, less what the corner lost

    EXPECT_TRUE(has(door("height: 0.9 m").faults(), "hatch does not fit into the foundation, which is 0.51 m high there"))
        << door("height: 0.9 m").faults();
    PlainHouse slab = door("height: 0.4 m");
    slab.foundation = "{kind: slab}";
    EXPECT_TRUE(has(slab.faults(), "hatch leads into no crawl space")) << slab.faults();
    PlainHouse window = door("height: 0.4 m");
    window.more += "  - {id: sides2, type: window-perimeter, on: hatch}\n";
    window.more =
        window.more.substr(0, window.more.find("openings")) + "  - {id: edge, type: window-perimeter, on: hatch}\n" +
        window.more.substr(window.more.find("openings"), window.more.find("  - {id: sides2") - window.more.find("openings"));
    EXPECT_TRUE(has(window.faults(), "hatch has no frame in a wall")) << window.faults();
}

TEST(FloorDuct, RunsFromACollarUnderTheFloorToAHood) {
    constexpr const char* duct =
        "  - {id: dryer, type: dryer-floor-duct, at: [3 m, 2 m], space: duct, through: 5 mm, collar: 2 mm}\n"
        "  - {id: outlet, type: dryer-outlet, on: wall-1, up: -0.13 m, space: duct, outside: 4 mm, hood: 8 mm, sheathing: 3 mm}\n"
        "  - {id: joint, type: duct-joint, space: duct, gap: 9 mm}\n";
    House house = on_crawl_space(duct).build();
    EXPECT_EQ(between(house, "dryer-through"), "room crawl");
    EXPECT_EQ(between(house, "dryer-collar"), "room duct");
    EXPECT_EQ(between(house, "joint"), "crawl duct");
    EXPECT_EQ(between(house, "outlet-outside"), "yard crawl");
    EXPECT_EQ(between(house, "outlet-hood"), "yard duct");
    expect_measured(house);
    house = brick_house(duct);
    EXPECT_EQ(between(house, "outlet-outside"), "yard wall-1-air");
    EXPECT_EQ(between(house, "outlet-sheathing"), "wall-1-air crawl");
    expect_measured(house);
    const House closed = brick_house(duct, true);
    const AirMap air(closed, {.pitch = 0.0237});
    EXPECT_TRUE(air.leaks().empty());
}

TEST(FoundationFeatures, FaultsSayWhatToDo) {
    const auto faults = [](const std::string& feature, const std::string& foundation = "") {
        PlainHouse plain = on_crawl_space("  - {id: f, " + feature + "}\n");
        if (!foundation.empty()) plain.foundation = foundation;
        return plain.faults();
    };
    const std::string slab = "{kind: slab}";
    EXPECT_TRUE(has(faults("type: rim-joist-joint, on: wall-1", slab), "the floor of that story is a slab without a rim"));
    EXPECT_TRUE(has(faults("type: sill-plate-joint, on: wall-1", slab), "no sill plate stands on the foundation"));
    EXPECT_TRUE(has(faults("type: crawl-vent, on: wall-1", slab), "there is no air behind the foundation"));
    EXPECT_TRUE(has(faults("type: crawl-vent, on: wall-1, along: 0.1 m"), "it does not fit on the foundation, which runs along"));
    EXPECT_TRUE(has(faults("type: crawl-vent, on: [wall-1, wall-2], along: 2 m"), "along counts on one wall only"));
    EXPECT_TRUE(has(faults("type: duct-joint, space: nothing"), "no duct of that air comes down through a floor"));
    EXPECT_TRUE(
        has(faults("type: dryer-floor-duct, at: [3 m, 2 m]", slab), "there are no joists under the floor to run between"));
    EXPECT_TRUE(has(faults("type: dryer-floor-duct, at: [-3 m, 2 m]"), "it stands in no room"));
    const std::string duct = "type: dryer-floor-duct, at: [3 m, 2 m], space: d}\n  - {id: g, type: dryer-outlet, space: d, ";
    EXPECT_TRUE(has(faults(duct + "up: -0.13 m, on: wall-1, along: 4 m"), "the duct from f comes out 3.000 m along wall-1"));
    EXPECT_TRUE(has(faults(duct + "up: -0.05 m, on: wall-1"), "it does not fit under the floor at that height"));
    EXPECT_TRUE(has(faults(duct + "up: -0.13 m, on: nowhere"), "goes on an outside wall of the same story"));
    std::string text = on_crawl_space("  - {id: f, type: rim-joist-joint, on: [wall-1, wall-2]}\n").text();
    const std::string stucco = "{of: stucco, thick: 22 mm}", brick = "{of: brick, thick: 90 mm}, {air: true, thick: 25 mm}";
    text.replace(text.find(stucco), stucco.size(), brick);
    try {
        (void)build_house(parse_house_yaml(text, "house.yaml"), {}, Make::survey, RunContext());
        ADD_FAILURE() << "two walls with air of their own make one gap";
    } catch (const BadInput& bad) {
        EXPECT_TRUE(has(bad.what(), "the air is not the same at all of its walls; write one feature for each wall"))
            << bad.what();
    }
}

TEST(Eaves, PartedByGablesMakeOneGapEach) {
    PlainHouse plain;
    plain.roof = "{shape: gable, gables: [wall-2, wall-4], pitch: 4/12, overhang: 0.6 m}";
    plain.more =
        "features:\n"
        "  - {id: vents, type: soffit-vent, count: 7}\n"
        "  - {id: joint, type: soffit-joint, length: 8 m}\n"
        "  - {id: one, type: soffit-vent, on: wall-1, along: 4 m, count: 1}\n";
    const House house = plain.build();
    EXPECT_EQ(between(house, "vents-wall-1"), "yard eave-wall-1");
    EXPECT_EQ(between(house, "vents-wall-3"), "yard eave-wall-3");
    EXPECT_EQ(between(house, "one"), "yard eave-wall-1");
    std::uint32_t vents = 0;
    double length = 0;
    for (const Gap& gap : house.survey.gaps) {
        if (gap.id.starts_with("vents")) vents += gap.count;
        if (gap.id.starts_with("joint")) length += std::get<Slot>(gap.shape).length;
    }
    EXPECT_EQ(vents, 7U);
    EXPECT_NEAR(length, 8, 1e-9);
}

}  // namespace
}  // namespace seamward::test
