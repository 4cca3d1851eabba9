// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are broken, made to do harm, or no 3D files at all: each ends as one error that says how to mend it.
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <cmath>
#include <cstring>
#include <ostream>
#include <random>
#include <set>
#include <thread>

#include "exchange/read_model.h"
#include "tests/exchange/model_files.h"
#include "tests/exchange/sample_parts.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

namespace fs = std::filesystem;

/// Small limits: no test file needs more.
ReadSettings tight() { return {.most_memory_bytes = 1ULL << 30, .most_cpu_seconds = 5, .most_triangles = 100'000}; }

std::vector<Diagnostic> faults_at(const fs::path& path, const ReadSettings& settings = tight()) {
    return faults_of([&] { (void)read_model(path, path.filename().string(), settings, RunContext()); });
}

std::vector<Diagnostic> faults_in_file(const std::string& name, const std::string& content,
                                       const ReadSettings& settings = tight()) {
    const ScratchFolder folder;
    return faults_at(folder.write(name, content), settings);
}

TEST(HostileModel, WhatIsNoFileOfOurs) {
    const ScratchFolder folder;
    EXPECT_TRUE(only_fault(faults_at(folder.path() / "a.obj"), {}, "no such file", "check the path"));
    EXPECT_TRUE(only_fault(faults_at(folder.path() / "a"), {}, "no such file", "check the path"));
    EXPECT_TRUE(only_fault(faults_at(folder.path()), {}, "is a folder", "name a file in it"));
    fs::create_directory(folder.path() / "b.obj");
    EXPECT_TRUE(only_fault(faults_at(folder.path() / "b.obj"), {}, "is a folder", "name a file in it"));
    mkfifo((folder.path() / "c.obj").c_str(), 0600);
    EXPECT_TRUE(only_fault(faults_at(folder.path() / "c.obj"), {}, "is no ordinary file", ""));
    EXPECT_TRUE(only_fault(faults_at(folder.write("d.stl", "")), {}, "is empty", "export it again"));
    EXPECT_TRUE(only_fault(faults_at(folder.write("e.blend", "x")), {}, "is of no kind",
                           "use one of .gltf, .glb, .obj, .stl, .ply, .3ds, .dae, .fbx, .dxf and .ifc"));
    if (geteuid() != 0) {
        const fs::path closed = folder.write("f.obj", "v 0 0 0\n");
        fs::permissions(closed, fs::perms::none);
        EXPECT_TRUE(only_fault(faults_at(closed), {}, "cannot be opened", "check its permissions"));
    }
}

TEST(HostileModel, LimitsAreKept) {
    const std::string text = obj_lines(box({0, 0, 0}, {1, 1, 1}));
    ReadSettings settings = tight();
    settings.most_file_bytes = 100;
    EXPECT_TRUE(only_fault(faults_in_file("a.obj", text, settings), {}, "is larger than 100 bytes", "split it"));
    settings = tight();
    settings.most_triangles = 11;
    EXPECT_TRUE(only_fault(faults_in_file("a.obj", text, settings), {}, "has more than 11 triangles", "leave out"));
    settings.most_triangles = 12;
    EXPECT_TRUE(faults_in_file("a.obj", text, settings).empty());
}

#ifndef SEAMWARD_SANITIZE  // with the sanitizers, memory is not limited
TEST(HostileModel, MemoryIsLimited) {
    std::string text;
    for (int i = 0; i < 400'000; ++i) text += "v " + std::to_string(i) + " 0 1\n";
    for (int i = 3; i < 400'000; ++i) text += "f 1 " + std::to_string(i) + ' ' + std::to_string(i - 1) + '\n';
    ReadSettings settings = tight();
    settings.most_triangles = 1'000'000;
    settings.most_memory_bytes = 100ULL << 20;
    EXPECT_TRUE(only_fault(faults_in_file("a.obj", text, settings), {}, "needs more memory to read than 100 MiB", "split it"));
}
#endif

TEST(HostileModel, TimeIsLimited) {
    // Each level of blocks doubles what is below.
    std::string nodes = R"({"children":[1,2]})";
    for (int level = 1; level < 60; ++level) {
        const std::string next = std::to_string(2 * level + 1) + ',' + std::to_string(2 * level + 2);
        nodes += ",{\"children\":[" + next + "]},{\"children\":[" + next + "]}";
    }
    nodes += R"(,{"mesh":0},{"mesh":0})";
    ReadSettings settings = tight();
    settings.most_cpu_seconds = 1;
    const auto begin = std::chrono::steady_clock::now();
    EXPECT_EQ(faults_in_file("a.gltf", gltf_box(nodes), settings).size(), 1U);
    EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds(20));
}

TEST(HostileModel, ACancelIsHeard) {
    std::string text;
    for (int i = 0; i < 300'000; ++i) text += "v " + std::to_string(i) + " 0 1\nf 1 -1 -2\n";
    const ScratchFolder folder;
    const fs::path path = folder.write("a.obj", text);
    RunContext context;
    std::thread canceler([&] {
        std::this_thread::sleep_for(std::chrono::milliseconds(50));
        context.cancel();
    });
    EXPECT_THROW((void)read_model(path, "a.obj", {}, context), Cancelled);
    canceler.join();
    EXPECT_EQ(waitpid(-1, nullptr, WNOHANG), -1);
    EXPECT_EQ(errno, ECHILD);
}

struct Broken {
    std::string label;
    ModelFile file;
    std::string what;

    friend std::ostream& operator<<(std::ostream& out, const Broken& broken) { return out << broken.label; }
};

std::vector<Broken> broken_files() {
    const std::string obj = obj_lines(box({0, 0, 0}, {1, 1, 1}));
    std::string stl = exported_box("stlb");
    const std::uint32_t count = 0xFFFFFFFFU;
    std::memcpy(stl.data() + 80, &count, 4);
    std::string not_a_number = exported_box("stlb");
    const float nan = std::nanf("");
    std::memcpy(not_a_number.data() + 84 + 12, &nan, 4);
    const std::string gltf = gltf_box(R"({"mesh":0})");
    return {
        {"PlyWithAHugeCount",
         {"a.ply", with(exported_box("ply"), "element vertex 8", "element vertex 4000000000")},
         "ends before all"},
        {"BinaryPlyWithAHugeCount",
         {"a.ply", with(exported_box("plyb"), "element face 12", "element face 4000000000")},
         "ends before all"},
        {"PlyThatEndsEarly", {"a.ply", exported_box("ply").substr(0, 300)}, "ends before all"},
        {"PlyWithoutAnEndOfItsHeader",
         {"a.ply", with(exported_box("ply"), "end_header", "end_heade")},
         "no end of its PLY header"},
        {"StlWithAHugeCount", {"a.stl", stl}, ""},
        {"StlWithoutNumbers", {"a.stl", not_a_number}, "coordinates that are no numbers"},
        {"ObjWithoutNumbers", {"a.obj", with(obj, "v 0 0 0", "v nan 0 0")}, ""},
        {"ObjBeyondTheEarth", {"a.obj", with(obj, "v 0 0 0", "v 1e30 0 0")}, "makes no sense"},
        {"ObjWithAnIndexOutOfRange", {"a.obj", "v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 4\n"}, ""},
        {"ObjOfLines", {"a.obj", "v 0 0 0\nv 1 0 0\nl 1 2\n"}, ""},
        {"ObjOfText", {"a.obj", "Dear Sir or Madam,\n"}, ""},
        {"GltfWithAHugeAccessor", {"a.gltf", with(gltf, "\"count\":8", "\"count\":4000000000")}, "cannot be read as .gltf"},
        {"GltfWithIndicesOutOfRange", {"a.gltf", with(gltf, "\"byteOffset\":96", "\"byteOffset\":0")}, ""},
        {"GltfOfNothing", {"a.gltf", "{}"}, ""},
        {"GltfWithALoopOfNodes", {"a.gltf", gltf_box(R"({"children":[1]},{"children":[0],"mesh":0})")}, ""},
        {"GlbThatIsJson", {"a.glb", gltf}, ""},
        {"IfcOfText", {"a.ifc", "hello"}, "has no products"},
        {"IfcThatEndsEarly", {"a.ifc", with(ifc_rooms(), "ENDSEC;\nEND-ISO-10303-21;", "")}, "a part of it is missing"},
        {"IfcThatEndsInItsHeader", {"a.ifc", ifc_rooms().substr(0, 100)}, "a part of it is missing"},
        {"IfcWithoutShapes",
         {"a.ifc", with(ifc_rooms(), "IFCEXTRUDEDAREASOLID", "IFCNOSUCHSOLID")},
         "none with a shape that can be read"},
        {"IfcWithALoopOfPlaces", {"a.ifc", with(ifc_rooms(), "IFCLOCALPLACEMENT($,#21)", "IFCLOCALPLACEMENT(#40,#21)")}, ""},
        {"ObjNamedStl", {"a.stl", obj}, ""},
        {"ZeroesNamedFbx", {"a.fbx", std::string(100'000, '\0')}, "cannot be read as .fbx"},
        {"DeepXml", {"a.dae", std::string(200'000, '<')}, ""},
    };
}

class BrokenModel : public testing::TestWithParam<Broken> {};

/// Where `what` is empty, a model of what could be read is as good.
TEST_P(BrokenModel, IsOneErrorOrASoundModel) {
    const Broken& broken = GetParam();
    const std::vector<Diagnostic> faults = faults_in_file(broken.file.name, broken.file.content);
    if (broken.what.empty())
        EXPECT_LE(faults.size(), 1U);
    else
        EXPECT_TRUE(only_fault(faults, {}, broken.what, "")) << listing(faults);
    for (const Diagnostic& fault : faults) EXPECT_FALSE(fault.mend.empty()) << to_text(fault);
}

INSTANTIATE_TEST_SUITE_P(All, BrokenModel, testing::ValuesIn(broken_files()), [](const auto& each) { return each.param.label; });

/// Changes a file as an accident or somebody who tries would.
std::string changed(std::string bytes, std::mt19937& random) {
    const auto below = [&](std::size_t end) { return end == 0 ? 0 : static_cast<std::size_t>(random() % end); };
    for (std::size_t changes = 1 + below(4); changes > 0 && !bytes.empty(); --changes) {
        const std::size_t at = below(bytes.size());
        const std::size_t size = std::min(1 + below(64), bytes.size() - at);
        switch (random() % 8) {
            case 0: bytes[at] = static_cast<char>(bytes[at] ^ (1 << below(8))); break;
            case 1: bytes[at] = static_cast<char>(random()); break;
            case 2: bytes.erase(at, size); break;
            case 3: bytes.insert(below(bytes.size()), bytes.substr(at, size)); break;
            case 4: bytes.insert(at, std::string(size, static_cast<char>(random()))); break;
            case 5: bytes.resize(at); break;
            case 6: {  // a number becomes an extreme one
                const std::size_t digit = bytes.find_first_of("0123456789", at);
                if (digit == std::string::npos) break;
                const std::size_t end = std::min(bytes.find_first_not_of("0123456789.eE+-", digit), bytes.size());
                constexpr std::array<const char*, 8> extremes{"0",     "-1",      "4294967295", "2147483648",
                                                              "1e308", "-1e-320", "nan",        "99999999999999999999"};
                bytes.replace(digit, end - digit, extremes.at(below(extremes.size())));
                break;
            }
            default:  // the same in binary
                for (std::size_t i = at; i < std::min(at + 4, bytes.size()); ++i)
                    bytes[i] = static_cast<char>(random() % 2 == 0 ? 0 : 255);
        }
    }
    return bytes;
}

class ChangedModel : public testing::TestWithParam<std::string> {};

TEST_P(ChangedModel, IsOneErrorOrASoundModel) {
    constexpr int rounds = 100;
    ModelFile file;
    for (const ModelFile& each : one_of_each_kind()) {
        if (fs::path(each.name).extension() == '.' + GetParam()) file = each;
    }
    ReadSettings settings = tight();
    settings.most_cpu_seconds = 1;
    std::mt19937 random(20260202);
    const ScratchFolder folder;
    for (int round = 0; round < rounds; ++round) {
        const fs::path path = folder.write(file.name, changed(file.content, random));
        try {
            const Model model = read_model(path, file.name, settings, RunContext());
            EXPECT_FALSE(model.parts.empty());
            std::set<std::string> ids;
            for (const ModelPart& part : model.parts) {
                EXPECT_TRUE(ids.insert(part.id).second);
                for (const Point& at : part.mesh.points) ASSERT_TRUE(std::isfinite(at.x + at.y + at.z)) << round;
                for (const auto& corners : part.mesh.triangles) {
                    for (const std::uint32_t corner : corners) ASSERT_LT(corner, part.mesh.points.size()) << round;
                }
            }
        } catch (const BadInput& bad) {
            ASSERT_EQ(bad.diagnostics().size(), 1U);
            EXPECT_FALSE(bad.diagnostics()[0].what.empty() || bad.diagnostics()[0].mend.empty());
        }
    }
    EXPECT_EQ(std::distance(fs::directory_iterator(folder.path()), {}), 1);
    EXPECT_EQ(waitpid(-1, nullptr, WNOHANG), -1);
}

INSTANTIATE_TEST_SUITE_P(All, ChangedModel,
                         testing::Values("gltf", "glb", "obj", "stl", "ply", "3ds", "dae", "fbx", "dxf", "ifc"),
                         [](const auto& each) { return "Of_" + each.param; });

}  // namespace
}  // namespace seamward::test
