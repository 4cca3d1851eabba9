// SPDX-License-Identifier: GPL-3.0-or-later
// What a house file says, as it is read; and what stands for that which it leaves out.
#include <gtest/gtest.h>

#include "house/description.h"
#include "tests/support/cottage.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

HouseDescription parse(const std::string& text) { return parse_house_yaml(text, "house.yaml"); }

/// The cottage with something more at its end.
HouseDescription cottage_and(const std::string& more) { return parse(cottage + more); }

/// The cottage with one more feature.
FeatureDescription feature(const std::string& line) { return cottage_and("  - " + line + "\n").features.back(); }

TEST(ReadDescription, AWholeHouse) {
    const HouseDescription house = parse(cottage);
    EXPECT_EQ(house.file, "house.yaml");
    EXPECT_EQ(house.name, "Cottage");
    ASSERT_EQ(house.assemblies.size(), 2U);
    EXPECT_EQ(house.assemblies[0].id, "stucco-wall");
    ASSERT_EQ(house.assemblies[0].layers.size(), 4U);
    EXPECT_EQ(house.assemblies[0].layers[0].material, "stucco");
    EXPECT_EQ(house.assemblies[0].layers[0].thickness, 0.022);
    EXPECT_TRUE(house.assemblies[0].layers[2].is_air());
    EXPECT_EQ(house.outline, (Loop{{0, 0}, {8, 0}, {8, 6}, {0, 6}}));
    EXPECT_EQ(house.walls, (std::vector<std::string>{"south-wall", "east-wall", "north-wall", "west-wall"}));
    ASSERT_EQ(house.stories.size(), 1U);
    EXPECT_EQ(house.stories[0].height, 2.5);
    ASSERT_EQ(house.partitions.size(), 1U);
    EXPECT_EQ(house.partitions[0].from, (Point2{5, 0}));
    EXPECT_EQ(house.partitions[0].to, (Point2{5, 6}));
    EXPECT_EQ(house.partitions[0].place.line, 12U);
    ASSERT_EQ(house.rooms.size(), 2U);
    EXPECT_EQ(house.rooms[1].id, "bedroom");
    EXPECT_EQ(house.rooms[1].at, (Point2{7, 3}));
    ASSERT_EQ(house.openings.size(), 2U);
    EXPECT_EQ(house.openings[1].in, "middle-wall");
    EXPECT_EQ(house.openings[1].along, 3);
    EXPECT_EQ(house.roof.shape, RoofShape::hip);
    EXPECT_DOUBLE_EQ(house.roof.pitch, 1.0 / 3);
    ASSERT_EQ(house.features.size(), 6U);
    EXPECT_EQ(house.features[1].type->id, "hose-bibb");
    EXPECT_EQ(house.features[1].on, std::vector<std::string>{"north-wall"});
    EXPECT_EQ(house.features[1].along, 5);
    EXPECT_EQ(house.features[1].place.line, 19U);
}

TEST(ReadDescription, DefaultsOfTheFile) {
    const HouseDescription house = parse(cottage_with("name: \"Cottage\"\n", ""));
    EXPECT_EQ(house.name, "");
    EXPECT_EQ(house.outdoors.id, "yard");
    EXPECT_EQ(house.wall_assembly, 0U);
    EXPECT_EQ(house.yard_margin, 3);
    EXPECT_EQ(house.foundation.kind, FoundationKind::slab);
    EXPECT_EQ(house.foundation.above_grade, 0.15);
    EXPECT_EQ(house.foundation.space.id, "") << "solid ground";
    EXPECT_TRUE(house.stud_bays.empty() && house.bulkheads.empty() && house.paving.empty() && house.block_walls.empty());
    const HouseDescription bare = parse(
        "{seamward-house: 1, assemblies: [{id: a, layers: [{of: wood, thick: 1 in}, {air: true, thick: 4 in}, {of: wood, thick: "
        "1 "
        "in}]}], outline: [[0 m, 0 m], [8 m, 0 m], [8 m, 6 m], [0 m, 6 m]], walls: ~, stories: [{height: 2.5 m}], rooms: [{id: "
        "den, "
        "at: [2 m, 3 m]}], roof: {pitch: 4/12}, partitions: [{id: p, from: [5 m, 0 m], to: [5 m, 6 m]}]}");
    EXPECT_EQ(bare.walls, (std::vector<std::string>{"wall-1", "wall-2", "wall-3", "wall-4"}));
    EXPECT_TRUE(bare.features.empty());
    EXPECT_EQ(bare.partitions[0].assembly, 0U) << "the only one";
}

TEST(ReadDescription, DefaultsOfRecords) {
    const HouseDescription house = parse(cottage);
    EXPECT_EQ(house.partitions[0].assembly, 1U) << "the second";
    EXPECT_EQ(house.partitions[0].name, "");
    EXPECT_EQ(house.partitions[0].cavity.id, "");
    EXPECT_EQ(house.partitions[0].story, 0U);
    EXPECT_EQ(house.rooms[0].kind, SpaceKind::living);
    EXPECT_FALSE(house.rooms[0].source);
    EXPECT_EQ(house.openings[0].kind, OpeningKind::door);
    EXPECT_EQ(house.openings[0].sill, 0);
    EXPECT_EQ(house.openings[0].frame.id, "") << "solid";
    EXPECT_EQ(house.roof.overhang, 0.4);
    EXPECT_EQ(house.roof.rake, 0.2);
    EXPECT_EQ(house.roof.parapet, 0.4);
    EXPECT_EQ(house.roof.material, "tile");
    EXPECT_EQ(house.roof.attic.id, "attic");
    EXPECT_EQ(house.roof.eave.id, "eave");
    const auto window = parse(cottage_with("front-door, in", "front-door, kind: window, in")).openings[0];
    EXPECT_EQ(window.kind, OpeningKind::window);
    EXPECT_EQ(window.sill, 0.9);
}

TEST(ReadDescription, Stories) {
    const auto stories = parse(cottage_with("[{height: 2.5 m}]",
                                            "[{height: 9 ft}, {height: 2.5 m, floor: 0.25 m}, {height: 2.4 m, "
                                            "void: {id: void, name: attic floor}, "
                                            "cavities: [[outer, {id: inner, name: x}], lone, []]}]"))
                             .stories;
    ASSERT_EQ(stories.size(), 3U);
    EXPECT_DOUBLE_EQ(stories[0].height, 2.7432);
    EXPECT_EQ(stories[0].floor, 0.3);
    EXPECT_EQ(stories[1].floor, 0.25);
    EXPECT_EQ(stories[1].void_below.id, "joist-void-1");
    EXPECT_EQ(stories[2].void_below.id, "void");
    EXPECT_EQ(stories[2].void_below.name, "attic floor");
    ASSERT_EQ(stories[2].cavities.size(), 3U);
    ASSERT_EQ(stories[2].cavities[0].size(), 2U);
    EXPECT_EQ(stories[2].cavities[0][0].id, "outer");
    EXPECT_EQ(stories[2].cavities[0][1].name, "x");
    ASSERT_EQ(stories[2].cavities[1].size(), 1U);
    EXPECT_EQ(stories[2].cavities[1][0].id, "lone");
    EXPECT_TRUE(stories[2].cavities[2].empty());
}

TEST(ReadDescription, Foundations) {
    const auto foundation = [](const std::string& text) {
        return parse(cottage_with("stories:", "foundation: " + text + "\nstories:")).foundation;
    };
    EXPECT_EQ(foundation("{kind: slab, space: fill}").space.id, "fill");
    EXPECT_EQ(foundation("{kind: slab, space: fill}").height, 0.1);
    const FoundationDescription crawl = foundation("{kind: crawl-space}");
    EXPECT_EQ(crawl.kind, FoundationKind::crawl_space);
    EXPECT_EQ(crawl.space.id, "crawl-space");
    EXPECT_EQ(crawl.above_grade, 0.6);
    EXPECT_EQ(crawl.height, 0.6);
    EXPECT_EQ(foundation("{kind: basement, height: 2.3 m}").space.id, "basement");
    EXPECT_EQ(foundation("{kind: basement, above_grade: 2 ft, space: {id: cellar, name: x}}").space.name, "x");
    EXPECT_DOUBLE_EQ(foundation("{above_grade: 6 in}").above_grade, 0.1524);
}

TEST(ReadDescription, RoofsAndPitches) {
    const auto roof = [](const std::string& text) {
        return parse(cottage_with("roof: {shape: hip, pitch: 4/12}", "roof: " + text)).roof;
    };
    EXPECT_DOUBLE_EQ(roof("{pitch: 6/12}").pitch, 0.5);
    EXPECT_DOUBLE_EQ(roof("{pitch: 2.5/10}").pitch, 0.25);
    EXPECT_NEAR(roof("{pitch: 45 deg}").pitch, 1, 1e-15);
    const RoofDescription gable = roof(
        "{shape: gable, pitch: 4/12, gables: [west-wall, east-wall], rake: 1 ft, of: shingle, "
        "attic: loft, eave: {id: soffit, name: soffit void}}");
    EXPECT_EQ(gable.shape, RoofShape::gable);
    EXPECT_EQ(gable.gables, (std::vector<std::size_t>{3, 1}));
    EXPECT_DOUBLE_EQ(gable.rake, 0.3048);
    EXPECT_EQ(gable.material, "shingle");
    EXPECT_EQ(gable.attic.id, "loft");
    EXPECT_EQ(gable.eave.name, "soffit void");
    EXPECT_EQ(roof("{shape: shed, pitch: 1/12, low: north-wall}").low, 2U);
    EXPECT_EQ(roof("{shape: flat}").pitch, 0);
    EXPECT_EQ(roof("{shape: flat, parapet: 1 m}").parapet, 1);
}

TEST(ReadDescription, YardPavingBlockWallsBaysAndBulkheads) {
    const HouseDescription house = cottage_and(
        "outdoors: {id: street, name: the street}\nyard: {margin: 5 m}\n"
        "paving: [{id: walk, name: x, corners: [[0 m, -2 m], [1 m, -2 m], [1 m, 0 m]]}]\n"
        "block_walls: [{id: cells, points: [[8 m, 3 m], [12 m, 3 m]], height: 5 ft}]\n"
        "stud_bays: [{on: middle-wall, spacing: 16 in}, {on: [north-wall, east-wall], spacing: 24 in}]\n"
        "bulkheads: [{id: box, from: [4 m, 5.8 m], to: [1 m, 5 m], drop: 0.3 m}]\n");
    EXPECT_EQ(house.outdoors.id, "street");
    EXPECT_EQ(house.outdoors.name, "the street");
    EXPECT_EQ(house.yard_margin, 5);
    ASSERT_EQ(house.paving.size(), 1U);
    EXPECT_EQ(house.paving[0].corners.size(), 3U);
    ASSERT_EQ(house.block_walls.size(), 1U);
    EXPECT_EQ(house.block_walls[0].points[1], (Point2{12, 3}));
    EXPECT_DOUBLE_EQ(house.block_walls[0].height, 1.524);
    ASSERT_EQ(house.stud_bays.size(), 2U);
    EXPECT_EQ(house.stud_bays[0].on, std::vector<std::string>{"middle-wall"});
    EXPECT_EQ(house.stud_bays[1].on, (std::vector<std::string>{"north-wall", "east-wall"}));
    ASSERT_EQ(house.bulkheads.size(), 1U);
    EXPECT_EQ(house.bulkheads[0].least, (Point2{1, 5})) << "corners in any order";
    EXPECT_EQ(house.bulkheads[0].most, (Point2{4, 5.8}));
}

TEST(ReadDescription, FeaturesLeaveSizesToTheCatalog) {
    const FeatureDescription bare = feature("{id: f, type: dryer-outlet}");
    ASSERT_EQ(bare.gaps.size(), bare.type->gaps.size());
    EXPECT_FALSE(bare.along || bare.up || bare.at || bare.spacing || bare.count);
    EXPECT_TRUE(bare.on.empty() && bare.side.empty() && bare.space.id.empty() && !bare.source);
    EXPECT_EQ(bare.story, 0U);
    for (const FeatureDescription::Sizes& gap : bare.gaps) {
        EXPECT_FALSE(gap.left_out || gap.width || gap.around || gap.length || gap.size);
        EXPECT_EQ(gap.evidence.how, Evidence::How::assumed) << "the catalog's width";
        EXPECT_EQ(gap.evidence.plus_minus, 0);
        EXPECT_TRUE(!gap.closing.cost && gap.closing.never.empty());
    }
}

TEST(ReadDescription, FeaturesSayWhatTheirGapsDoNot) {
    const FeatureDescription f = feature(
        "{id: f, type: dryer-outlet, name: dryer, on: [north-wall], along: 1 m, up: -6 in, at: [-1 m, 2 m], side: kitchen, "
        "space: duct, source: true, count: 2, spacing: 10 cm, gap: 5 mm, around: 10 cm, length: 1 m, size: [2 m, 3 m], "
        "evidence: {how: measured, plus_minus: 1 mm}, closing: {cost: $3}, note: x, outside: 1/8 in, sheathing: none, inside: ~, "
        "hood: {id: hood, name: the hood, gap: 9 mm, evidence: {how: assumed}, closing: {never: it vents}, note: y}, "
        "collar: {around: 8 cm, length: 2 m, size: [1 m, 1 m]}}");
    EXPECT_EQ(f.name, "dryer");
    EXPECT_DOUBLE_EQ(*f.up, -0.1524);
    EXPECT_EQ(f.at, (Point2{-1, 2}));
    EXPECT_EQ(f.side, "kitchen");
    EXPECT_EQ(f.space.id, "duct");
    EXPECT_TRUE(f.source);
    EXPECT_EQ(f.count, 2U);
    EXPECT_EQ(f.spacing, 0.1);
    const auto gap = [&](const std::string& id) -> const FeatureDescription::Sizes& {
        for (std::size_t i = 0; i < f.gaps.size(); ++i) {
            if (f.type->gaps[i].id == id) return f.gaps[i];
        }
        throw std::out_of_range(id);
    };
    EXPECT_EQ(gap("outside").width, 0.003175);
    EXPECT_EQ(gap("outside").around, 0.1);
    EXPECT_EQ(gap("outside").closing.cost, Money{300});
    EXPECT_EQ(gap("outside").evidence.how, Evidence::How::measured);
    EXPECT_TRUE(gap("sheathing").left_out);
    EXPECT_FALSE(gap("inside").left_out) << "left empty: as the feature says";
    EXPECT_EQ(gap("inside").width, 0.005);
    EXPECT_EQ(gap("inside").length, 1);
    EXPECT_EQ(gap("hood").id, "hood");
    EXPECT_EQ(gap("hood").name, "the hood");
    EXPECT_EQ(gap("hood").width, 0.009);
    EXPECT_EQ(gap("hood").evidence.how, Evidence::How::assumed);
    EXPECT_EQ(gap("hood").evidence.plus_minus, 0) << "evidence is replaced as a whole";
    EXPECT_EQ(gap("hood").closing.never, "it vents");
    EXPECT_FALSE(gap("hood").closing.cost);
    EXPECT_EQ(gap("collar").around, 0.08);
    EXPECT_EQ((*gap("collar").size)[1], 1);
    EXPECT_EQ(gap("collar").width, 0.005);
}

TEST(ReadDescription, ThingsOfUpperStories) {
    const HouseDescription house = parse(cottage_with("[{height: 2.5 m}]", "[{height: 2.5 m}, {height: 2.4 m}]") +
                                         "  - {id: f, type: outlet, on: north-wall, story: 2, along: 1 m}\n");
    EXPECT_EQ(house.features.back().story, 1U);
}

TEST(ReadDescription, FromAFileInYamlOrJson) {
    const ScratchFolder folder;
    const auto yaml = folder.write("house.yaml", cottage);
    EXPECT_EQ(read_house_description(yaml, "shown.yaml", RunContext()).file, "shown.yaml");
    const auto json = folder.write("house.json", R"({"seamward-house": 1,
        "assemblies": [{"id": "a", "layers": [{"of": "wood", "thick": "1 in"}, {"air": true, "thick": "3.5 in"},
                                              {"of": "wood", "thick": "1 in"}]}],
        "outline": [["0 m", "0 m"], ["4 m", "0 m"], ["4 m", "4 m"]], "stories": [{"height": "2.4 m"}],
        "rooms": [{"id": "den", "at": ["3 m", "1 m"], "source": false}], "roof": {"pitch": "18 deg"},
        "features": [{"id": "f", "type": "soffit-vent", "count": 3}]})");
    const HouseDescription house = read_house_description(json, "house.json", RunContext());
    EXPECT_EQ(house.outline.size(), 3U);
    EXPECT_EQ(house.partitions.size(), 0U);
    EXPECT_EQ(house.features[0].count, 3U);
    EXPECT_THROW((void)read_house_description(folder.path() / "none.yaml", "none.yaml", RunContext()), BadInput);
}

}  // namespace
}  // namespace seamward::test
