// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <filesystem>

#include "base/file_io.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

const std::string mock_up = SEAMWARD_SOURCE_FOLDER "/scenarios/wall-corner.yaml";

Ran run_export(const std::string& job, const std::filesystem::path& file) {
    return run_shell(SEAMWARD_PROGRAM " export " + shell_word(job) + " -o " + shell_word(file.string()));
}

TEST(Export, WritesBinaryGltf) {
    const ScratchFolder folder;
    const std::filesystem::path file = folder.path() / "house.glb";
    const Ran ran = run_export(mock_up, file);
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    const std::string bytes = read_file(file, "house.glb", 1 << 30);
    EXPECT_EQ(bytes.substr(0, 4), "glTF");
    EXPECT_NE(bytes.find("screed-wall/stucco"), std::string::npos);
    EXPECT_NE(bytes.find("screed-joint"), std::string::npos);
}

TEST(Export, WritesObjWithItsColors) {
    const ScratchFolder folder;
    const Ran ran = run_export(mock_up, folder.path() / "house.obj");
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    const std::string text = read_file(folder.path() / "house.obj", "house.obj", 1 << 30);
    EXPECT_NE(text.find("mtllib house.mtl"), std::string::npos);
    EXPECT_NE(text.find("\no screed-wall/stucco\n"), std::string::npos);
    EXPECT_NE(text.find("gap_screed-joint"), std::string::npos);
    EXPECT_NE(read_file(folder.path() / "house.mtl", "house.mtl", 1 << 20).find("newmtl"), std::string::npos);
}

TEST(Export, SaysWhatIsWrongAndLeavesNothing) {
    const ScratchFolder folder;
    EXPECT_EQ(run_export(mock_up, folder.path() / "house.stl").exit_code, 2);
    const Ran no_house = run_export(SEAMWARD_SOURCE_FOLDER "/tests/tool/jobs/one.yaml", folder.path() / "house.glb");
    EXPECT_EQ(no_house.exit_code, 1);
    EXPECT_NE(no_house.err.find("no described house"), std::string::npos) << no_house.err;
    const Ran no_folder = run_export(mock_up, folder.path() / "nowhere" / "house.glb");
    EXPECT_EQ(no_folder.exit_code, 1);
    EXPECT_NE(no_folder.err.find("nowhere"), std::string::npos) << no_folder.err;
    EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
}

/// A pair of which only one can be written stays as it was.
TEST(Export, LeavesNoMixedPair) {
    const ScratchFolder folder;
    std::filesystem::create_directory(folder.path() / "house.obj");
    folder.write("house.mtl", "old");
    const Ran ran = run_export(mock_up, folder.path() / "house.obj");
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_NE(ran.err.find("is a folder"), std::string::npos) << ran.err;
    EXPECT_EQ(read_file(folder.path() / "house.mtl", "house.mtl", 1 << 20), "old");
    std::filesystem::remove(folder.path() / "house.obj");
    std::filesystem::remove(folder.path() / "house.mtl");
    std::filesystem::create_directory(folder.path() / "house.mtl");
    folder.write("house.obj", "old");
    EXPECT_EQ(run_export(mock_up, folder.path() / "house.obj").exit_code, 1);
    EXPECT_EQ(read_file(folder.path() / "house.obj", "house.obj", 1 << 20), "old");
}

}  // namespace
}  // namespace seamward::test
