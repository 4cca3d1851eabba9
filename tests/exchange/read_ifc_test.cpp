// SPDX-License-Identifier: GPL-3.0-or-later
// IFC files: one by hand, and buildings of others.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <ostream>
#include <regex>
#include <set>

#include "base/file_io.h"
#include "exchange/model_wire.h"
#include "exchange/read_model.h"
#include "tests/exchange/fixed_addresses.h"
#include "tests/exchange/model_files.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

Model shipped(const std::string& name) {
    return read_model(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "tests/models" / name, name, {}, RunContext());
}

const ModelPart& part_named(const std::vector<ModelPart>& parts, const std::string& id) {
    const auto found = std::find_if(parts.begin(), parts.end(), [&](const ModelPart& part) { return part.id == id; });
    if (found == parts.end()) throw std::out_of_range("no part " + id);
    return *found;
}

using Counts = std::map<std::string, std::size_t>;

Counts classes_of(const std::vector<ModelPart>& parts) {
    Counts counts;
    for (const ModelPart& part : parts) ++counts[part.ifc_class];
    return counts;
}

Counts lost_of(const Model& model) {
    Counts counts;
    for (const LostProducts& lost : model.lost) counts[lost.ifc_class] = lost.in_file - lost.read;
    return counts;
}

TEST(ReadIfc, ProductsRoomsAndLossesOfAFileByHand) {
    const ScratchFolder folder;
    const Model model = read_model(folder.write("a.ifc", ifc_rooms()), "a.ifc", {}, RunContext());
    EXPECT_EQ(classes_of(model.parts), (Counts{{"IfcWall", 1}, {"IfcColumn", 1}}));
    EXPECT_EQ(lost_of(model), (Counts{{"IfcDoor", 1}, {"IfcRoof", 1}}));
    ASSERT_EQ(model.notes.size(), 1U);
    EXPECT_EQ(model.notes[0], "IfcRoof: 1 of 1 without a shape of their own in the file");

    const ModelPart& wall = model.parts[0];
    EXPECT_EQ(wall.name, "Stucco; #1=IFCWALL('quoted')");
    EXPECT_EQ(wall.global_id, "0000000000000000000036");
    const SolidFacts wall_facts = facts_of(wall.mesh);
    EXPECT_TRUE(wall_facts.closed);
    EXPECT_NEAR(wall_facts.volume, 4 * 0.2 * 3 - 1 * 0.2 * 1, 1e-9);
    EXPECT_NEAR(wall_facts.area, 2 * (4 * 3 + 4 * 0.2 + 3 * 0.2) - 2 * 1 + 4 * 0.2, 1e-9);  // with the sides of the opening
    EXPECT_LE(distance(wall_facts.bounds.lowest, {1, 0, 0}), 1e-9);
    EXPECT_LE(distance(wall_facts.bounds.highest, {5, 0.2, 3}), 1e-9);

    const ModelPart& pipe = part_named(model.parts, "column-4711");
    EXPECT_EQ(fault_of_solid(pipe.mesh), "");
    EXPECT_GE(pipe.mesh.points.size(), 64U);
    ASSERT_EQ(model.rooms.size(), 1U);
    EXPECT_EQ(model.rooms[0].id, "101-K-che");
    EXPECT_EQ(model.rooms[0].name, "Küche");
    EXPECT_NEAR(facts_of(model.rooms[0].mesh).volume, 15, 1e-9);
}

TEST(ReadIfc, UnitsAndAxesCanBeOverruled) {
    const ScratchFolder folder;
    const auto path = folder.write("a.ifc", ifc_rooms());
    const Model model = read_model(path, "a.ifc", {.unit = ModelUnit::cm, .up = UpAxis::y}, RunContext());
    const Bounds bounds = facts_of(model.parts.at(0).mesh).bounds;
    EXPECT_LE(distance(bounds.lowest, {10, -30, 0}), 1e-8);
    EXPECT_LE(distance(bounds.highest, {50, 0, 2}), 1e-8);
}

TEST(ReadIfc, WithoutAUnitItIsMetersAndSaysSo) {
    const ScratchFolder folder;
    const auto path = folder.write("a.ifc", with(ifc_rooms(), "IFCUNITASSIGNMENT((#6,#7))", "IFCUNITASSIGNMENT((#7))"));
    const Model model = read_model(path, "a.ifc", {}, RunContext());
    EXPECT_NEAR(facts_of(model.parts.at(0).mesh).bounds.highest.z, 3000, 1e-6);
    ASSERT_EQ(model.notes.size(), 2U);
    EXPECT_NE(model.notes[0].find("names no unit"), std::string::npos);
}

TEST(ReadIfc, LaterSchemasAreReadAsIfc4) {
    const ScratchFolder folder;
    const auto path = folder.write("a.ifc", with(ifc_rooms(), "('IFC4')", "('IFC4X3_ADD2')"));
    const Model model = read_model(path, "a.ifc", {}, RunContext());
    EXPECT_EQ(model.parts.size(), 2U);
    EXPECT_EQ(model.notes.at(0), "the file is IFC4X3_ADD2: read as IFC4, without what is new in it");
}

/// A shape that the library drops without a word, and a product that comes after it.
TEST(ReadIfc, ShapesThatAreNotKnownAreCountedAsLost) {
    const ScratchFolder folder;
    const std::string curve =
        "#300=IFCINDEXEDPOLYCURVE(#301,$,.F.);\n#301=IFCCARTESIANPOINTLIST2D(((0.,0.),(4000.,0.),(4000.,200.),"
        "(0.,200.),(0.,0.)));\n#15=";
    std::string text =
        with(ifc_rooms(), "IFCRECTANGLEPROFILEDEF(.AREA.,$,#31,4000.,200.)", "IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#300)");
    const Model model = read_model(folder.write("a.ifc", with(text, "#15=", curve)), "a.ifc", {}, RunContext());
    EXPECT_EQ(classes_of(model.parts), (Counts{{"IfcColumn", 1}}));
    EXPECT_EQ(lost_of(model), (Counts{{"IfcDoor", 1}, {"IfcRoof", 1}, {"IfcWall", 1}}));
}

/// What a building of others has, by class, and what of it has no shape that can be read.
struct Building {
    std::string label, file;
    Counts parts;
    std::size_t rooms = 0;
    Counts lost;

    friend std::ostream& operator<<(std::ostream& out, const Building& building) { return out << building.label; }
};

class ReadIfcBuilding : public testing::TestWithParam<Building> {};

TEST_P(ReadIfcBuilding, EveryProductComesThroughOrIsCounted) {
    const Building& building = GetParam();
    const Model model = shipped(building.file);
    EXPECT_EQ(classes_of(model.parts), building.parts);
    EXPECT_EQ(model.rooms.size(), building.rooms);
    EXPECT_EQ(lost_of(model), building.lost);
}

/// By a second look at the text: each product's GlobalId is read once, or its class is short by it.
TEST_P(ReadIfcBuilding, EveryGlobalIdIsThere) {
    const Building& building = GetParam();
    const Model model = shipped(building.file);
    std::set<std::string> read;
    for (const std::vector<ModelPart>* parts : {&model.parts, &model.rooms}) {
        for (const ModelPart& part : *parts) EXPECT_TRUE(read.insert(part.global_id).second) << part.global_id;
    }
    const auto path = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "tests/models" / building.file;
    const std::string text = read_file(path, building.file, 1 << 24);
    const std::regex line(R"(#\d+= ?(IFC[A-Z]+)\('([0-9A-Za-z_$]{22})')");
    Counts missing;
    std::set<std::string> classes;
    for (const auto& [ifc_class, count] : building.parts) classes.insert(ifc_class);
    for (const auto& [ifc_class, count] : building.lost) classes.insert(ifc_class);
    classes.insert("IfcSpace");
    for (std::sregex_iterator at(text.begin(), text.end(), line); at != std::sregex_iterator(); ++at) {
        for (const std::string& ifc_class : classes) {
            std::string large = ifc_class;
            for (char& c : large) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
            if (large == (*at)[1] && !read.contains((*at)[2])) ++missing[ifc_class];
        }
    }
    EXPECT_EQ(missing, building.lost);
}

TEST_P(ReadIfcBuilding, WallsAndSlabsAreSolids) {
    for (const ModelPart& part : shipped(GetParam().file).parts) {
        if (part.ifc_class.find("Wall") == part.ifc_class.npos && part.ifc_class != "IfcSlab") continue;
        const SolidFacts facts = facts_of(part.mesh);
        EXPECT_TRUE(facts.closed) << part.id;
        EXPECT_GT(facts.volume, 0) << part.id;
    }
}

/// To the last bit of the last point: what finds are called depends on it, and notes of people on that.
TEST_P(ReadIfcBuilding, IsTheSameEveryTime) {
    if (!may_fix_addresses()) GTEST_SKIP() << "the system does not allow it";
    const auto folder = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "tests/models";
    const std::string first = wire_bytes({.model = shipped(GetParam().file), .what = {}, .mend = {}});
    EXPECT_TRUE(wire_bytes({.model = shipped(GetParam().file), .what = {}, .mend = {}}) == first);

    const auto work_folder = std::filesystem::current_path();
    const ScratchFolder elsewhere;
    std::filesystem::copy_file(folder / GetParam().file, elsewhere.path() / "a.ifc");
    std::filesystem::current_path(elsewhere.path());
    setenv("SEAMWARD_TEST_FILLER", std::string(100'000, 'x').c_str(), 1);
    const ReadSettings settings{.most_memory_bytes = std::uint64_t{123'456'789'000}};
    const std::string again = wire_bytes({.model = read_model("a.ifc", "a.ifc", settings, RunContext()), .what = {}, .mend = {}});
    unsetenv("SEAMWARD_TEST_FILLER");
    std::filesystem::current_path(work_folder);
    EXPECT_TRUE(again == first);
}

INSTANTIATE_TEST_SUITE_P(
    All, ReadIfcBuilding,
    testing::Values(Building{"Duplex",
                             "Duplex_A_20110907.ifc",
                             {{"IfcBeam", 8},
                              {"IfcCovering", 13},
                              {"IfcDoor", 14},
                              {"IfcFooting", 7},
                              {"IfcFurnishingElement", 61},
                              {"IfcMember", 4},
                              {"IfcRailing", 4},
                              {"IfcSlab", 21},
                              {"IfcStairFlight", 2},
                              {"IfcWall", 1},
                              {"IfcWallStandardCase", 56},
                              {"IfcWindow", 24}},
                             21,
                             {{"IfcRoof", 1}, {"IfcStair", 2}}},
                    Building{"TallBuilding",
                             "bimwhale_TallBuilding.ifc",
                             {{"IfcDoor", 5}, {"IfcSlab", 5}, {"IfcWallStandardCase", 24}, {"IfcWindow", 21}},
                             3,
                             {{"IfcRoof", 1}}},
                    Building{"SimpleWall", "bimwhale_SimpleWall.ifc", {{"IfcDoor", 1}, {"IfcWallStandardCase", 1}}, 0, {}},
                    Building{"PcertHouse",
                             "PCERT_Building-Architecture.ifc",
                             {{"IfcBuildingElementProxy", 3}, {"IfcFurniture", 1}, {"IfcSlab", 3}, {"IfcWall", 4}},
                             2,
                             {{"IfcBuildingElementProxy", 2}, {"IfcChimney", 1}, {"IfcRoof", 1}}},
                    Building{"PcertDucts",
                             "PCERT_Building-Hvac.ifc",
                             {{"IfcAirTerminal", 2}, {"IfcBuildingElementProxy", 2}, {"IfcDuctSegment", 1}},
                             0,
                             {{"IfcChimney", 1}}}),
    [](const auto& each) { return each.param.label; });

TEST(ReadShippedModels, ShellsOfGames) {
    const Model obj = shipped("house1_baked.obj");
    EXPECT_EQ(obj.parts.size(), 16U);
    std::size_t triangles = 0;
    for (const ModelPart& part : obj.parts) triangles += part.mesh.triangles.size();
    EXPECT_EQ(triangles, 528U);
    const Model glb = shipped("building-small-a.glb");
    EXPECT_EQ(glb.parts.size(), 12U);
    EXPECT_TRUE(glb.notes.empty());
}

}  // namespace
}  // namespace seamward::test
