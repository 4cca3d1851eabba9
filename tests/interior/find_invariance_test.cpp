// SPDX-License-Identifier: GPL-3.0-or-later
// What a file does to solids without moving their surfaces must not change what is found.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <functional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "interior/find.h"
#include "tests/support/find_check.h"
#include "tests/support/scene_changes.h"
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

constexpr double same_width = 0.05 * mm;

/// Some of every group.
constexpr std::array chosen{"slot-0.5-through-22-long-100",
                            "slot-3-through-100-long-1000",
                            "one-solid-slot-6-through-22-long-1000",
                            "slot-tapered-along",
                            "slot-tapered-in-depth-outer-narrow",
                            "slot-waist-sharp",
                            "slot-chamber-40",
                            "slot-stepped",
                            "joint-l-upright-narrower",
                            "shiplap-upright-narrowest",
                            "joint-t",
                            "blind-slots",
                            "slot-shut-inside",
                            "slot-pipes-across",
                            "slot-half-ribs",
                            "hole-round-50-through-22",
                            "hole-square-turned",
                            "holes-three",
                            "ring-centered-2.5",
                            "ring-off-center",
                            "square-hole-pipe-off-center",
                            "tube-plugged",
                            "pipes-overlapping",
                            "hollow-wall",
                            "attic-register-boot",
                            "sealed-layers",
                            "rooms-in-a-row"};

/// One way to say the same solids; widths come out `scale` times as large.
struct Change {
    const char* name;
    std::function<Scene(const Scene&)> of;
    double scale = 1;
};

/// Written in millimeters as single precision, as many files are, and read again.
Scene through_millimeters(const Scene& scene) {
    Scene written = transformed(scene, Frame{}, 1000);
    for (ModelPart& part : written.parts) {
        for (Point& p : part.mesh.points) {
            for (double Point::*c : {&Point::x, &Point::y, &Point::z}) p.*c = static_cast<double>(static_cast<float>(p.*c));
        }
    }
    return transformed(written, Frame{}, 1 / 1000.0);
}

std::vector<Change> changes() {
    const auto moved = [](Vector axis, double angle, const Point& to) {
        return [=](const Scene& scene) { return transformed(scene, turned_frame(axis, angle, to)); };
    };
    return {{"turned", moved({1, 2, 3}, 0.7, {0, 0, 0})},
            {"turned and moved", moved({-2, 0.3, 1}, 2.1, {100, -60, 3})},
            {"turned and moved far", moved({0.1, -1, 0.4}, 4.0, {-90, 100, -100})},
            {"through millimeters", through_millimeters},
            {"three times as large", [](const Scene& scene) { return transformed(scene, Frame{}, 3); }, 3},
            {"refined", [](const Scene& scene) { return refined(scene, 2); }},
            {"retessellated", [](const Scene& scene) { return retessellated(scene, 2, 11); }},
            {"with noise", [](const Scene& scene) { return with_noise(scene, 1e-6, 12); }},
            {"with flipped parts", with_flipped_parts},
            {"with flipped triangles", [](const Scene& scene) { return with_flipped_triangles(scene, 13); }},
            {"with doubled triangles", [](const Scene& scene) { return with_doubled_triangles(scene, 14); }},
            {"with twin parts", with_twin_parts},
            {"with shuffled parts", [](const Scene& scene) { return with_shuffled_parts(scene, 15); }},
            {"as soup", [](const Scene& scene) { return as_soup(scene, 16); }},
            {"as one part", as_one_part}};
}

using Widths = std::vector<std::tuple<std::string, std::string, double>>;

/// Between which spaces, and how wide, as if the scene were of its first size; sorted.
Widths widths_of(const Found& found, double scale) {
    Widths widths;
    for (const FoundGap& gap : found.gaps) {
        std::string one = found.spaces[gap.between[0]].id, other = found.spaces[gap.between[1]].id;
        if (other < one) std::swap(one, other);
        widths.emplace_back(one, other, gap.width / scale);
    }
    std::ranges::sort(widths);
    return widths;
}

void expect_same(const Found& plain, const Found& changed, double scale) {
    EXPECT_EQ(plain.spaces.size(), changed.spaces.size());
    const Widths before = widths_of(plain, 1), after = widths_of(changed, scale);
    ASSERT_EQ(before.size(), after.size()) << testing::PrintToString(after);
    for (std::size_t i = 0; i < before.size(); ++i) {
        const auto& [one, other, width] = before[i];
        EXPECT_EQ(one, std::get<0>(after[i]));
        EXPECT_EQ(other, std::get<1>(after[i]));
        EXPECT_NEAR(width, std::get<2>(after[i]), same_width);
    }
}

class FindInChangedScene : public testing::TestWithParam<std::size_t> {};

TEST_P(FindInChangedScene, FindsTheSame) {
    const std::vector<Scene> all = all_scenes();
    const auto scene = std::ranges::find(all, std::string(chosen[GetParam()]), &Scene::name);
    ASSERT_NE(scene, all.end());
    const Found plain = found_in(*scene);
    for (const Change& change : changes()) {
        SCOPED_TRACE(scene->name + " " + change.name);
        expect_same(plain, found_in(change.of(*scene)), change.scale);
    }
}

std::string test_name(const testing::TestParamInfo<std::size_t>& test) {
    std::string name = chosen[test.param];
    for (char& c : name) {
        if (std::isalnum(static_cast<unsigned char>(c)) == 0) c = '_';
    }
    return name;
}

INSTANTIATE_TEST_SUITE_P(Chosen, FindInChangedScene, testing::Range(std::size_t{0}, chosen.size()), test_name);

}  // namespace
}  // namespace seamward::test
