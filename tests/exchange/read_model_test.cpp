// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/read_model.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <optional>
#include <ostream>

#include "exchange/gltf.h"
#include "exchange/obj.h"
#include "tests/exchange/binary_fbx.h"
#include "tests/exchange/model_files.h"
#include "tests/exchange/sample_parts.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

Model model_of(const std::string& name, const std::string& content, const ReadSettings& settings = {}) {
    const ScratchFolder folder;
    return read_model(folder.write(name, content), name, settings, RunContext());
}

std::vector<std::string> ids_of(const std::vector<ModelPart>& parts) {
    std::vector<std::string> ids;
    for (const ModelPart& part : parts) ids.push_back(part.id);
    return ids;
}

bool has_note(const Model& model, const std::string& words) {
    return std::any_of(model.notes.begin(), model.notes.end(),
                       [&](const std::string& note) { return note.find(words) != std::string::npos; });
}

/// The box of all test files with its frame turned and scaled: what must be read.
Bounds box_in(UpAxis up, double over, double under) {
    Bounds bounds;
    for (const Point& p : {box_low, box_high}) {
        const Point turned = up == UpAxis::z ? p : up == UpAxis::y ? Point{p.x, -p.z, p.y} : Point{-p.y, -p.z, p.x};
        bounds.include({turned.x * over / under, turned.y * over / under, turned.z * over / under});
    }
    return bounds;
}

void expect_box(const ModelPart& part, const Bounds& expected, double tolerance = 0) {
    EXPECT_EQ(part.mesh.points.size(), 8U);
    EXPECT_EQ(part.mesh.triangles.size(), 12U);
    EXPECT_EQ(fault_of_solid(part.mesh), "");
    const Bounds found = facts_of(part.mesh).bounds;
    EXPECT_LE(distance(found.lowest, expected.lowest), tolerance);
    EXPECT_LE(distance(found.highest, expected.highest), tolerance);
}

/// A file, and what it says of itself.
struct Kind {
    std::string label;
    ModelFile file;
    std::string id;
    std::optional<UpAxis> up;
    double over = 1, under = 1;
    bool says_unit = true;

    friend std::ostream& operator<<(std::ostream& out, const Kind& kind) { return out << kind.label; }
};

std::vector<Kind> all_kinds() {
    const std::string dae = exported_box("collada");
    const std::string fbx = exported_box("fbxa");
    const std::string up_is = R"("UpAxis", "int", "Integer", "", )";
    const std::string unit_is = R"("UnitScaleFactor", "double", "Number", "", )";
    const std::string inches = with(dae, R"(<unit name="meter" meter="1" />)", R"(<unit name="inch" meter="0.0254"/>)");
    return {
        {"Obj", {"a.obj", "o box\n" + obj_lines(box(box_low, box_high))}, "box", {}, 1, 1, false},
        {"StlText", {"a.stl", exported_box("stl")}, "part-1", {}, 1, 1, false},
        {"StlBinary", {"a.STL", exported_box("stlb")}, "part-1", {}, 1, 1, false},
        {"PlyText", {"a.ply", exported_box("ply")}, "part-1", {}, 1, 1, false},
        {"PlyBinary", {"a.ply", exported_box("plyb")}, "part-1", {}, 1, 1, false},
        {"Collada", {"a.dae", dae}, "box", UpAxis::y},
        {"ColladaInches", {"a.dae", with(inches, "Y_UP", "Z_UP")}, "box", UpAxis::z, 254, 10'000},
        {"ColladaX", {"a.dae", with(dae, "Y_UP", "X_UP")}, "box", UpAxis::x},
        {"Fbx", {"a.fbx", fbx}, "box", UpAxis::y, 1, 100},
        {"FbxInches",
         {"a.fbx", with(with(fbx, up_is + "1", up_is + "2"), unit_is + "1", unit_is + "2.54")},
         "box",
         UpAxis::z,
         254,
         10'000},
        {"ThreeDs", {"a.3ds", exported_box("3ds")}, "", UpAxis::z, 1, 1, false},
        {"Dxf", {"a.dxf", dxf_box(4)}, "box", UpAxis::z, 1, 1000},
        {"DxfFeet", {"a.dxf", dxf_box(2)}, "box", UpAxis::z, 3048, 10'000},
        {"DxfWithoutUnit", {"a.dxf", dxf_box(0)}, "box", UpAxis::z, 1, 1, false},
        {"Gltf", {"a.gltf", gltf_box(R"({"mesh":0,"name":"box"})")}, "box", UpAxis::y},
        {"Glb", {"a.glb", exported_box("glb2")}, "box", UpAxis::y},
    };
}

class ReadModelKind : public testing::TestWithParam<Kind> {};

TEST_P(ReadModelKind, GivesTheBoxInOurFrame) {
    const Kind& kind = GetParam();
    const Model model = model_of(kind.file.name, kind.file.content);
    ASSERT_EQ(model.parts.size(), 1U);
    expect_box(model.parts[0], box_in(kind.up.value_or(UpAxis::y), kind.over, kind.under));
    EXPECT_TRUE(kind.id.empty() || model.parts[0].id == kind.id) << model.parts[0].id;
    EXPECT_EQ(has_note(model, "names no unit"), !kind.says_unit);
    EXPECT_EQ(has_note(model, "which way is up"), !kind.up);
    EXPECT_TRUE(model.lost.empty() && model.rooms.empty());
}

TEST_P(ReadModelKind, IsReadAsTheSettingsSay) {
    const Kind& kind = GetParam();
    for (const UpAxis up : {UpAxis::x, UpAxis::y, UpAxis::z}) {
        const Model model = model_of(kind.file.name, kind.file.content, {.unit = ModelUnit::mm, .up = up});
        ASSERT_EQ(model.parts.size(), 1U);
        expect_box(model.parts[0], box_in(up, 1, 1000));
        EXPECT_TRUE(model.notes.empty());
    }
}

INSTANTIATE_TEST_SUITE_P(All, ReadModelKind, testing::ValuesIn(all_kinds()), [](const auto& each) { return each.param.label; });

TEST(ReadModel, NodesAreTurnedMovedAndScaled) {
    // A quarter turn about y takes (x, y, z) to (z, y, -x).
    const std::string turn = R"("rotation":[0,0.70710678118654752,0,0.70710678118654752])";
    const Model model = model_of("a.gltf", gltf_box(R"({"children":[1],"translation":[10,0,0],)" + turn +
                                                    R"(},{"mesh":0,"name":"b o x","scale":[2,1,1],"translation":[0,0.5,0]})"));
    ASSERT_EQ(model.parts.size(), 1U);
    EXPECT_EQ(model.parts[0].id, "b-o-x");
    EXPECT_EQ(model.parts[0].name, "b o x");
    Bounds expected;  // y up: x from 13 to 19, y from 2.5 to 4.5, z from -10 to -2
    expected.include({13, 2, 2.5});
    expected.include({19, 10, 4.5});
    expect_box(model.parts[0], expected, 1e-5);
}

TEST(ReadModel, MirroredNodesFaceOutward) {
    const Model model = model_of("a.gltf", gltf_box(R"({"mesh":0,"scale":[-1,1,1]})"));
    ASSERT_EQ(model.parts.size(), 1U);
    EXPECT_EQ(model.parts[0].id, "part-1");
    Bounds expected;
    expected.include({-5, -9, 2});
    expected.include({-1, -3, 4});
    expect_box(model.parts[0], expected);
}

TEST(ReadModel, BinaryFbxFilesAreRead) {
    for (const std::uint32_t version : {7400U, 7500U}) {
        const Model model = model_of("a.fbx", binary_fbx(box(box_low, box_high), version));
        ASSERT_EQ(model.parts.size(), 1U);
        EXPECT_EQ(model.parts[0].name, "a wall");
        Bounds expected;
        expected.include({11, 2, 3});
        expected.include({15, 4, 9});
        expect_box(model.parts[0], expected);
        EXPECT_TRUE(model.notes.empty());
    }
}

TEST(ReadModel, EqualNamesGetIdsOfTheirOwn) {
    const Model model = model_of("a.gltf", gltf_box(R"({"children":[1,2,3]},{"mesh":0,"name":"wall"},{"mesh":0,"name":"wall"},)"
                                                    R"({"mesh":0,"name":"wall-2"})"));
    EXPECT_EQ(ids_of(model.parts), (std::vector<std::string>{"wall", "wall-2", "wall-2-2"}));
}

TEST(ReadModel, BuffersAreReadFromTheFolderOfTheFileAndBelow) {
    const ScratchFolder folder;
    folder.write("model/parts/box numbers.bin", gltf_numbers());
    for (const char* name : {"parts/box%20numbers.bin", "./parts/box%20numbers.bin"}) {
        const std::filesystem::path path = folder.write("model/a.gltf", gltf_box(R"({"mesh":0})", name));
        const Model model = read_model(path, "a.gltf", {}, RunContext());
        ASSERT_EQ(model.parts.size(), 1U);
        expect_box(model.parts[0], box_in(UpAxis::y, 1, 1));
    }
}

TEST(ReadModel, BuffersElsewhereAreRefused) {
    const ScratchFolder folder;
    const std::filesystem::path outside = folder.write("box.bin", gltf_numbers());
    folder.write("model/parts/box.bin", gltf_numbers());
    std::filesystem::create_symlink("../box.bin", folder.path() / "model" / "link.bin");
    std::filesystem::create_directory_symlink("..", folder.path() / "model" / "up");
    for (const std::string& name :
         {std::string("../box.bin"), std::string("parts/../../box.bin"), std::string("%2e%2e/box.bin"), outside.string(),
          std::string("link.bin"), std::string("up/box.bin"), std::string("missing.bin"),
          std::string("https://example.com/box.bin"), "file://" + outside.string()}) {
        const std::filesystem::path path = folder.write("model/a.gltf", gltf_box(R"({"mesh":0})", name));
        const std::vector<Diagnostic> faults = faults_of([&] { (void)read_model(path, "a.gltf", {}, RunContext()); });
        EXPECT_TRUE(only_fault(faults, {}, "which is not in its folder", "export the model as .glb")) << name;
    }
}

TEST(ReadModel, ObjectsOfObjFilesStayWholeAcrossGroups) {
    const TriangleMesh one = box({0, 0, 0}, {1, 1, 1});
    const TriangleMesh two = box({3, 0, 0}, {4, 1, 1});
    std::string text = "g all\no garden wall\nusemtl red\n" + obj_lines(one) + "o roof\n" + obj_lines(two, 9);
    text = with(text, "f 2 4 8", "g south\nusemtl blue\nf 2 4 8");
    const Model model = model_of("a.obj", text);
    EXPECT_EQ(ids_of(model.parts), (std::vector<std::string>{"garden-wall", "roof"}));
    for (const ModelPart& part : model.parts) EXPECT_EQ(fault_of_solid(part.mesh), "") << part.id;
}

TEST(ReadModel, GroupsOfObjFilesArePartsWhereThereAreNoObjects) {
    const std::string text = "g wall a\n" + obj_lines(box({0, 0, 0}, {1, 1, 1})) + "g roof\n" +
                             obj_lines(box({3, 0, 0}, {4, 1, 1}), 9) + "g wall a\n" + obj_lines(box({6, 0, 0}, {7, 1, 1}), 17);
    const Model model = model_of("a.obj", text);
    ASSERT_EQ(ids_of(model.parts), (std::vector<std::string>{"wall-a", "roof"}));
    EXPECT_EQ(model.parts[0].mesh.triangles.size(), 24U);
}

TEST(ReadModel, OneMeshIsTakenApartIntoPieces) {
    const TriangleMesh boxes = joined(box({0, 0, 0}, {1, 1, 1}), joined(box({2, 0, 0}, {3, 1, 1}), box({3, 1, 0}, {4, 2, 1})));
    const Model model = model_of("a.obj", obj_lines(boxes));
    ASSERT_EQ(ids_of(model.parts), (std::vector<std::string>{"part-1", "part-2"}));  // the last two share an edge
    EXPECT_EQ(model.parts[0].mesh.triangles.size(), 12U);
    EXPECT_EQ(model.parts[1].mesh.triangles.size(), 24U);
    EXPECT_EQ(model.parts[1].mesh.points.size(), 14U);
}

TEST(ReadModel, WhatIsNoTriangleIsLeftOutAndCounted) {
    const Model model = model_of("a.obj", obj_lines(box({0, 0, 0}, {1, 1, 1})) + "l 1 2\np 3\nf 1 2 2\n");
    ASSERT_EQ(model.parts.size(), 1U);
    EXPECT_EQ(model.parts[0].mesh.triangles.size(), 12U);
    EXPECT_TRUE(has_note(model, "left out"));
}

/// A coordinate of a GLB file is a float from the middle of its part; of an OBJ file it is read as a float.
TEST(ReadModel, OurOwnFilesComeBack) {
    const SampleHouse house = sample_house();
    const std::array<ModelFile, 2> files{ModelFile{"a.glb", gltf_binary(house.parts, house.survey, house.name)},
                                         ModelFile{"a.obj", obj_text(house.parts, house.survey, house.name, "a.mtl")}};
    for (const ModelFile& file : files) {
        const Model model = model_of(file.name, file.content);
        EXPECT_TRUE(model.notes.empty()) << file.name;
        ASSERT_EQ(ids_of(model.parts), (std::vector<std::string>{"north-wall/stucco", "chase", "sills", "pane"})) << file.name;
        for (std::size_t i = 0; i < model.parts.size(); ++i) {
            const TriangleMesh& read = model.parts[i].mesh;
            const TriangleMesh& written = house.parts[i].mesh;
            EXPECT_EQ(fault_of_solid(read), "") << model.parts[i].id;
            EXPECT_EQ(read.triangles.size(), written.triangles.size());
            ASSERT_EQ(read.points.size(), written.points.size());
            for (const Point& point : written.points) {
                const bool there = std::any_of(read.points.begin(), read.points.end(), [&](const Point& other) {
                    return distance(point, other) <= (file.name == "a.glb" ? 4e-7 : 1.7e-6);
                });
                EXPECT_TRUE(there) << file.name << ' ' << model.parts[i].id;
            }
        }
    }
}

TEST(ReadModel, EscapesOfOurOwnObjFilesAreRead) {
    SampleHouse house = sample_house();
    house.parts[1].id = "chase of the flue";
    const Model model = model_of("a.obj", obj_text(house.parts, house.survey, house.name, ""));
    ASSERT_EQ(model.parts.size(), 4U);
    EXPECT_EQ(model.parts[1].name, "chase of the flue");
    EXPECT_EQ(model.parts[1].id, "chase-of-the-flue");
}

}  // namespace
}  // namespace seamward::test
