// SPDX-License-Identifier: GPL-3.0-or-later
// The shipped houses as other programs read them.
#include <gtest/gtest.h>

#include <iostream>
#include <map>

#include "exchange/gltf.h"
#include "exchange/obj.h"
#include "job_file/job.h"
#include "tests/exchange/assimp_reading.h"
#include "tests/exchange/gltf_validator.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

constexpr std::array shipped{"demo", "two-story", "wall-corner"};

Job shipped_job(const std::string& name) {
    return read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/" + name + ".yaml", RunContext(), Make::solids);
}

std::string glb_of(const Job& job) { return gltf_binary(job.house.parts, job.survey, job.name); }

void expect_bounds(const Bounds& found, const Bounds& expected, double within) {
    EXPECT_LE(distance(found.lowest, expected.lowest), within);
    EXPECT_LE(distance(found.highest, expected.highest), within);
}

Bounds bounds_of(const TriangleMesh& mesh) {
    Bounds bounds;
    for (const auto& corners : mesh.triangles) {
        for (const std::uint32_t corner : corners) bounds.include(mesh.points[corner]);
    }
    return bounds;
}

class ShippedHouseFile : public testing::TestWithParam<const char*> {
protected:
    ShippedHouseFile() : job(shipped_job(GetParam())) {}
    Job job;
};

TEST_P(ShippedHouseFile, IsReadFromGlbPartByPart) {
    const ScratchFolder folder;
    const std::vector<ReadNode> nodes = read_with_assimp(folder.write("house.glb", glb_of(job)));
    ASSERT_EQ(nodes.size(), job.house.parts.size());
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const Part& part = job.house.parts[i];
        SCOPED_TRACE(part.id);
        EXPECT_EQ(nodes[i].name, part.id);
        EXPECT_EQ(nodes[i].above, job.name);
        const TriangleMesh mesh = z_up(nodes[i].mesh);
        EXPECT_EQ(mesh.triangles.size(), part.mesh.triangles.size());
        expect_bounds(bounds_of(mesh), bounds_of(part.mesh), 5e-6);  // it adds floats
    }
}

TEST_P(ShippedHouseFile, IsReadFromObjGroupByGroup) {
    const ScratchFolder folder;
    folder.write("house.mtl", mtl_text(job.house.parts));
    const std::vector<ReadNode> nodes =
        read_with_assimp(folder.write("house.obj", obj_text(job.house.parts, job.survey, job.name, "house.mtl")));
    std::vector<std::pair<std::string, std::size_t>> expected, found;
    Bounds whole, read;
    for (const Part& part : job.house.parts) {
        std::size_t plain = 0;
        std::map<GapIndex, std::size_t> beside;
        for (const GapIndex gap : part.bounds) ++(gap.valid() ? beside[gap] : plain);
        if (plain > 0) expected.emplace_back(part.id, plain);
        for (const auto& [gap, count] : beside) expected.emplace_back("gap_" + job.survey[gap].id, count);
        for (const Point& point : part.mesh.points) whole.include(point);
    }
    for (const ReadNode& node : nodes) {
        found.emplace_back(node.name, node.mesh.triangles.size());
        for (const Point& point : node.mesh.points) read.include(point);
    }
    EXPECT_EQ(found, expected);
    expect_bounds(read, whole, 5e-6);
}

INSTANTIATE_TEST_SUITE_P(Exchange, ShippedHouseFile, testing::ValuesIn(shipped), [](const auto& house) {
    std::string name = house.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

/// In one test, because the validator may have to be fetched before it can be asked.
TEST(ShippedHouseFiles, PassTheValidatorOfTheFormat) {
    const ScratchFolder folder;
    std::vector<std::filesystem::path> files;
    std::size_t triangles = 0;
    for (const char* name : shipped) {
        const Job job = shipped_job(name);
        for (const Part& part : job.house.parts) triangles += part.mesh.triangles.size();
        files.push_back(folder.write(std::string(name) + ".glb", glb_of(job)));
    }
    const Validation validation = validate_glb(files);
    if (!validation.ran) GTEST_SKIP() << validation.words;
    std::cout << validation.words << triangles << " triangles in all\n";
    EXPECT_TRUE(validation.valid) << validation.words;
    EXPECT_EQ(validation.words.find("warning:"), std::string::npos) << validation.words;
}

}  // namespace
}  // namespace seamward::test
