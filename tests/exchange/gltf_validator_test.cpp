// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/gltf_validator.h"

#include <gtest/gtest.h>

#include "exchange/gltf.h"
#include "tests/exchange/sample_parts.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

/// In one test, because the validator has to be fetched before it can be asked.
TEST(GltfValidator, FindsNoErrorInOurFilesAndSomeInBrokenOnes) {
    const ScratchFolder folder;
    const SampleHouse house = sample_house();
    const SampleHouse hostile = hostile_house();
    const std::string bytes = gltf_binary(house.parts, house.survey, house.name);
    const std::vector<Part> no_triangles{part_of("none", {})};
    const Validation ours = validate_glb({folder.write("sample.glb", bytes),
                                          folder.write("hostile.glb", gltf_binary(hostile.parts, hostile.survey, hostile.name)),
                                          folder.write("empty.glb", gltf_binary({}, {}, "")),
                                          folder.write("no-triangles.glb", gltf_binary(no_triangles, {}, "house"))});
    if (!ours.ran) GTEST_SKIP() << ours.words;
    std::cout << ours.words;
    EXPECT_TRUE(ours.valid) << ours.words;
    EXPECT_EQ(ours.words.find("warning:"), std::string::npos) << ours.words;
    EXPECT_NE(ours.words.find("sample.glb: 0 errors, 0 warnings, "), std::string::npos) << ours.words;
    EXPECT_NE(ours.words.find(" 80 triangles"), std::string::npos) << ours.words;

    const auto broken = [&](std::string_view text, std::string_view fault) {
        std::string changed = bytes;
        changed.replace(changed.find(text), text.size(), fault);
        return validate_glb({folder.write("broken.glb", changed)});
    };
    EXPECT_FALSE(broken("\"version\": \"2.0\"", "\"version\": \"7.0\"").valid);
    EXPECT_FALSE(broken("\"POSITION\": 0", "\"POSITION\": 1").valid);
    EXPECT_FALSE(broken("\"BLEND\"", "\"BLUNT\"").words.find("warning:") == std::string::npos);
    EXPECT_FALSE(validate_glb({folder.write("cut.glb", bytes.substr(0, bytes.size() - 4))}).valid);
    EXPECT_FALSE(validate_glb({folder.path() / "missing.glb"}).valid);
}

}  // namespace
}  // namespace seamward::test
