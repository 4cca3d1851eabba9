// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that was planted is found, as wide as it was drawn, and nothing else; and the way of every ball is free.
#include <gtest/gtest.h>

#include <cctype>
#include <string>
#include <vector>

#include "interior/find.h"
#include "tests/support/find_check.h"
#include "tests/support/scenes.h"

namespace seamward::test {
namespace {

const std::vector<Scene>& scenes() {
    static const std::vector<Scene> all = all_scenes();
    return all;
}

std::string test_name(const testing::TestParamInfo<std::size_t>& test) {
    std::string name = scenes()[test.param].name;
    for (char& c : name) {
        if (std::isalnum(static_cast<unsigned char>(c)) == 0) c = '_';
    }
    return name;
}

void expect_all_found(const Scene& scene) {
    const Found found = found_in(scene);
    EXPECT_EQ(differences(scene, found), "") << scene.name;
    EXPECT_EQ(faults_of_ways(scene, found), "") << scene.name;
}

class FindInScene : public testing::TestWithParam<std::size_t> {};

TEST_P(FindInScene, FindsWhatIsThere) { expect_all_found(scenes()[GetParam()]); }

INSTANTIATE_TEST_SUITE_P(All, FindInScene, testing::Range(std::size_t{0}, scenes().size()), test_name);

class FindInRandomScene : public testing::TestWithParam<unsigned> {};

TEST_P(FindInRandomScene, FindsWhatIsThere) { expect_all_found(random_scene(GetParam())); }

INSTANTIATE_TEST_SUITE_P(Seeds, FindInRandomScene, testing::Range(1U, 41U), testing::PrintToStringParamName());

}  // namespace
}  // namespace seamward::test
