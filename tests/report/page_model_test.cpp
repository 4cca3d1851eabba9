// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/page_model.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <map>

#include "base/document.h"
#include "house/facing.h"
#include "report/plain_shape.h"
#include "tests/exchange/gltf_validator.h"
#include "tests/exchange/sample_parts.h"
#include "tests/report/made_page.h"
#include "tests/support/document_text.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

/// What a model says of one of its nodes; meters, y up.
struct Told {
    std::array<double, 3> low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300};
    std::size_t triangles = 0;
};

double number(Node node) { return std::strtod(std::string(node.text()).c_str(), nullptr); }

/// By coat, or "gap" and its number. The validator sees to it that what is stated of points is so.
std::map<std::string, Told> told_of(const std::string& glb) {
    const auto byte = [&](std::size_t i) { return static_cast<std::size_t>(static_cast<unsigned char>(glb.at(i))); };
    const std::size_t size = byte(12) | byte(13) << 8U | byte(14) << 16U | byte(15) << 24U;
    const Document json = parse_json(std::string_view(glb).substr(20, size), "GLB");
    const Node top = json.root(), nodes = value_of(top, "nodes"), root = item_of(nodes, 0);
    std::map<std::string, Told> all;
    std::size_t at = 0;
    nodes.for_each_item([&](Node node) {
        if (at++ == 0) return;
        const Node extras = value_of(node, "extras"), coat = value_of(extras, "coat");
        Told& told = all[coat.present() ? std::string(coat.text()) : "gap" + std::string(value_of(extras, "gap").text())];
        const Node mesh = item_of(value_of(top, "meshes"), static_cast<std::size_t>(number(value_of(node, "mesh"))));
        value_of(mesh, "primitives").for_each_item([&](Node primitive) {
            const auto accessor = [&](Node which) {
                return item_of(value_of(top, "accessors"), static_cast<std::size_t>(number(which)));
            };
            const Node points = accessor(value_of(value_of(primitive, "attributes"), "POSITION"));
            for (std::size_t axis = 0; axis < 3; ++axis) {
                const double move = number(item_of(value_of(root, "translation"), axis)),
                             scale = number(item_of(value_of(root, "scale"), axis));
                told.low.at(axis) = std::min(told.low.at(axis), move + scale * number(item_of(value_of(points, "min"), axis)));
                told.high.at(axis) = std::max(told.high.at(axis), move + scale * number(item_of(value_of(points, "max"), axis)));
            }
            told.triangles += static_cast<std::size_t>(number(value_of(accessor(value_of(primitive, "indices")), "count"))) / 3;
        });
    });
    return all;
}

House house_of(std::vector<Part> parts) {
    House house;
    house.parts = std::move(parts);
    return house;
}

Job demo() { return read_job(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios/demo.yaml", RunContext(), Make::solids); }

TEST(PageModel, IsValidAndSmall) {
    const ScratchFolder folder;
    const Job job = demo();
    const std::vector<GapIndex> marked{{0}, {5}, {40}};
    const std::string of_demo = page_model(job.house, marked);
    EXPECT_LT(of_demo.size(), 1'000'000U);
    EXPECT_EQ(of_demo, page_model(job.house, marked));
    const Validation said =
        validate_glb({folder.write("demo.glb", of_demo), folder.write("none.glb", page_model(House{}, {})),
                      folder.write("box.glb", page_model(house_of({part_of("a", box({0, 0, 0}, {1, 2, 3}))}), {}))});
    if (!said.ran) GTEST_SKIP() << said.words;
    EXPECT_TRUE(said.valid) << said.words;
    EXPECT_EQ(said.words.find("warning:"), std::string::npos) << said.words;
}

TEST(PageModel, KeepsEachCoatInItsPlace) {
    const Job job = demo();
    std::map<std::string, Told> parts;
    double longest = 0;
    for (const Part& part : job.house.parts) {
        Told& told = parts[coat_word(coat_of(part.layer))];
        for (const Point& p : part.mesh.points) {
            const std::array at{p.x, p.z, -p.y};
            for (std::size_t axis = 0; axis < 3; ++axis) {
                told.low.at(axis) = std::min(told.low.at(axis), at.at(axis));
                told.high.at(axis) = std::max(told.high.at(axis), at.at(axis));
                longest = std::max(longest, told.high.at(axis) - told.low.at(axis));
            }
        }
    }
    const std::map<std::string, Told> model = told_of(page_model(job.house, {}));
    ASSERT_EQ(model.size(), parts.size());
    for (const auto& [coat, told] : model) {
        for (std::size_t axis = 0; axis < 3; ++axis) {
            EXPECT_NEAR(told.low.at(axis), parts.at(coat).low.at(axis), longest / 65535) << coat;
            EXPECT_NEAR(told.high.at(axis), parts.at(coat).high.at(axis), longest / 65535) << coat;
        }
    }
}

TEST(PageModel, HasAllTrianglesAndThoseOfMarkedGapsOnceMore) {
    Part wall = part_of("wall", box({0, 0, 0}, {4, 0.2, 3}), Layer::cladding),
         pipe = part_of("pipe", box({1, 0, 1}, {1.1, 1, 1.1}), Layer::fixture);
    bind(wall, {7}, {0, 1, 2});
    bind(pipe, {8}, {4});
    const House house = house_of({wall, pipe});
    const std::vector<GapIndex> marked{{7}};
    const std::map<std::string, Told> told = told_of(page_model(house, marked));
    ASSERT_EQ(told.size(), 3U);
    EXPECT_EQ(told.at("walls").triangles, 12U);
    EXPECT_EQ(told.at("fixtures").triangles, 12U);
    EXPECT_EQ(told.at("gap7").triangles, 3U);
}

TEST(Facings, OfTheDemo) {
    const Job job = demo();
    const Facings facings(job.house);
    std::size_t walls = 0;
    for (const Part& part : job.house.parts) {
        const std::optional<Vector> facing = facings.of(part);
        if (part.layer == Layer::roof) {
            ASSERT_TRUE(facing) << part.id;
            EXPECT_EQ(facing->z, 1) << part.id;
        }
        if (part.layer == Layer::fixture || part.layer == Layer::foundation) {
            EXPECT_FALSE(facing) << part.id;
        }
        for (const auto& [side, x, y] : {std::tuple("north-wall/stucco", 0, 1), std::tuple("east-wall/stucco", 1, 0),
                                         std::tuple("south-wall/stucco", 0, -1), std::tuple("west-wall/stucco", -1, 0)}) {
            if (part.id != side) continue;
            ASSERT_TRUE(facing) << part.id;
            EXPECT_NEAR(facing->x, x, 1e-6) << part.id;
            EXPECT_NEAR(facing->y, y, 1e-6) << part.id;
            ++walls;
        }
    }
    EXPECT_EQ(walls, 4U);
}

TEST(PlainPlate, HasTheOutlineAndNoHoles) {
    TriangleMesh screen;  // ten bars side by side, in one plane
    for (int i = 0; i < 10; ++i) screen = joined(screen, box({0.1 * i, 0, 1}, {0.1 * i + 0.05, 0.4, 1.001}));
    const std::optional<TriangleMesh> plate = plain_plate(screen);
    ASSERT_TRUE(plate);
    double six_volumes = 0;
    for (const auto& [a, b, c] : plate->triangles) {
        const Point origin;
        six_volumes += dot(plate->points[a] - origin, cross(plate->points[b] - origin, plate->points[c] - origin));
    }
    EXPECT_NEAR(six_volumes / 6, 0.95 * 0.4 * 0.001, 1e-9);  // closed, and facing outward
    EXPECT_LE(plate->triangles.size(), 24U);
}

TEST(PlainPlate, LeavesOthersAsTheyAre) {
    EXPECT_FALSE(plain_plate(box({0, 0, 0}, {1, 1, 0.001})));  // few triangles
    TriangleMesh thick;
    for (int i = 0; i < 10; ++i) thick = joined(thick, box({0.1 * i, 0, 1}, {0.1 * i + 0.05, 0.4, 1.02}));
    EXPECT_FALSE(plain_plate(thick));
}

}  // namespace
}  // namespace seamward::test
